//! The facade's lints allow what UniFFI's macros write. What is written by hand here is looked through instead.

#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

#[test]
fn nothing_unsafe_is_written_by_hand() {
    let mut folders = vec![std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    let mut looked = 0;
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let text = std::fs::read_to_string(&path).unwrap();
            let words = text.split(|c: char| !c.is_alphanumeric() && c != '_');
            assert!(!words.into_iter().any(|word| word == "unsafe"), "{}", path.display());
            looked += 1;
        }
    }
    assert!(looked > 5, "only {looked} files were found");
}
