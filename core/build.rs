//! Packs the words of each language: the Fluent files of a folder of `src/words`, deflated together, for
//! `src/words/files.rs` to unpack. Text is more than two thirds smaller then, which a phone notices; every other
//! file of the crate is compiled as it is.

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};

use flate2::{Compress, Compression, FlushCompress, Status};

fn main() -> Result<(), Box<dyn Error>> {
    let words = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/words");
    let out = PathBuf::from(std::env::var_os("OUT_DIR").ok_or("cargo says where to write")?);
    for language in ["en", "es"] {
        let folder = words.join(language);
        println!("cargo::rerun-if-changed={}", folder.display());
        let mut files: Vec<PathBuf> = fs::read_dir(&folder)?
            .map(|entry| Ok(entry?.path()))
            .collect::<Result<_, std::io::Error>>()?;
        files.retain(|path| path.extension().is_some_and(|ending| ending == "ftl"));
        files.sort();
        let mut together = Vec::new();
        for path in &files {
            let name = path.file_name().and_then(|name| name.to_str()).ok_or("a name is text")?;
            let text = fs::read_to_string(path)?;
            if text.contains('\0') {
                return Err(format!("{}: no file of words holds a NUL", path.display()).into());
            }
            for part in [name, &text] {
                together.extend(part.bytes());
                together.push(0);
            }
        }
        fs::write(out.join(format!("{language}.packed")), packed(&together)?)?;
    }
    Ok(())
}

/// The length before packing, then a raw deflate stream (RFC 1951).
fn packed(text: &[u8]) -> Result<Vec<u8>, Box<dyn Error>> {
    let mut stream = Vec::with_capacity(text.len() + 1024);
    let status = Compress::new(Compression::best(), false).compress_vec(
        text,
        &mut stream,
        FlushCompress::Finish,
    )?;
    if status != Status::StreamEnd {
        return Err("the words were not packed to their end".into());
    }
    let mut whole = u32::try_from(text.len())?.to_le_bytes().to_vec();
    whole.append(&mut stream);
    Ok(whole)
}
