//! Writes FHIR bundles of invented diaries into a folder, for the independent validator in `tests/fhir`, and their
//! summaries beside it in FOLDER.summaries, for what else looks at them from outside:
//! `cargo run -p frond-tests --example bundles -- FOLDER [SESSIONS OF TEN YEARS]`.

#[path = "../tests/fhir/made.rs"]
mod made;
#[path = "../tests/rule_diary/mod.rs"]
mod rule_diary;

use std::error::Error;
use std::fs;
use std::path::PathBuf;

use frond_core::summary::Summary;
use frond_core::summary::fhir::{Texts, bundle};

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let folder = PathBuf::from(args.next().ok_or("which folder?")?);
    let sessions = args.next().map_or(Ok(3_650), |sessions| sessions.parse())?;
    fs::create_dir_all(&folder)?;
    let summaries = folder.with_extension("summaries");
    fs::create_dir_all(&summaries)?;
    let write = |name: &str, summary: &Summary, texts| -> Result<(), Box<dyn Error>> {
        let bundle = bundle(summary, texts)?;
        fs::write(summaries.join(format!("{name}.json")), summary.open_form(&made::identity())?)?;
        Ok(fs::write(folder.join(format!("{name}.json")), serde_json::to_vec(&bundle)?)?)
    };
    write("empty-diary", &made::empty(), Texts::Carried)?;
    write("breathing-only", &made::breathing(), Texts::Carried)?;
    write("ten-years", &made::ten_years(sessions), Texts::Carried)?;
    write("hostile-words", &made::hostile(), Texts::Carried)?;
    write("hostile-words-left-out", &made::hostile(), Texts::LeftOut)?;
    write("something-of-everything", &made::plain(), Texts::Carried)?;
    write("clock-put-right", &made::clock_put_right(), Texts::Carried)?;
    write("narrowed", &made::narrowed(), Texts::Carried)?;
    for (number, life) in made::lives(0..20).iter().enumerate() {
        write(&format!("life-{number:02}"), life, Texts::Carried)?;
    }
    Ok(())
}
