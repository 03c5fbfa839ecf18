//! Writes the published JSON Schemas and the FHIR code system anew: `cargo run -p frond-core --example write_schemas`.

use std::fs;
use std::path::Path;

use frond_core::schema;
use frond_core::summary::fhir::code;

fn main() -> std::io::Result<()> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/schema");
    fs::create_dir_all(&folder)?;
    fs::write(folder.join("programme.schema.json"), schema::text(&schema::programme()))?;
    let signed = schema::text(&schema::signed_programme());
    fs::write(folder.join("signed-programme.schema.json"), signed)?;
    fs::write(folder.join("summary.schema.json"), schema::text(&schema::summary()))?;
    fs::write(folder.join("entry.schema.json"), schema::text(&schema::entry()))?;
    fs::write(folder.join("fhir-code-system.json"), schema::text(&code::system()))
}
