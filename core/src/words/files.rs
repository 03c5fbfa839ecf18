//! The Fluent files of a language as the build script left them: packed, to be unpacked when a language is asked
//! for.

use crate::packed::unpacked;

/// Where the Fluent files of a language are.
#[derive(Clone, Copy)]
pub(super) enum Files {
    /// Packed by the build script, see `build.rs`.
    Packed(&'static [u8]),
    /// Written out: name and text.
    #[cfg(test)]
    Plain(&'static [(&'static str, &'static str)]),
}

impl Files {
    /// Name and text of each file, in the order of their names. Packed ones that cannot be read are none; a test
    /// compares them with the files.
    pub(super) fn read(self) -> Vec<(String, String)> {
        match self {
            Files::Packed(packed) => parts(packed).unwrap_or_default(),
            #[cfg(test)]
            Files::Plain(files) => {
                files.iter().map(|(name, text)| ((*name).into(), (*text).into())).collect()
            }
        }
    }
}

fn parts(packed: &[u8]) -> Option<Vec<(String, String)>> {
    let text = String::from_utf8(unpacked(packed)?).ok()?;
    let mut parts = text.split_terminator('\0').map(str::to_owned);
    let mut files = Vec::new();
    while let (Some(name), Some(text)) = (parts.next(), parts.next()) {
        files.push((name, text));
    }
    Some(files)
}

#[cfg(test)]
mod tests {
    use std::fs;
    use std::path::{Path, PathBuf};

    use super::super::Words;

    fn words() -> PathBuf {
        Path::new(env!("CARGO_MANIFEST_DIR")).join("src/words")
    }

    /// A folder of Fluent files that nothing names is spoken to nobody.
    #[test]
    fn every_folder_of_words_is_a_language() {
        let known: Vec<&str> = Words::offered(false).iter().map(|one| one.tag).collect();
        let there = fs::read_dir(words()).unwrap().map(|entry| entry.unwrap().path());
        for folder in there.filter(|path| path.join("safety.ftl").exists()) {
            let tag = folder.file_name().unwrap().to_str().unwrap();
            assert!(known.contains(&tag), "{tag} stands in no ALL of words/language.rs");
        }
    }

    #[test]
    fn what_is_unpacked_is_each_file_to_the_byte() {
        for language in Words::offered(false).into_iter().filter(|one| one.pseudo.is_none()) {
            let folder = words().join(language.tag);
            let files = language.files();
            let there = fs::read_dir(&folder)
                .unwrap()
                .filter(|entry| entry.as_ref().unwrap().path().extension().unwrap() == "ftl");
            assert_eq!(files.len(), there.count());
            assert!(files.len() > 20 && files.is_sorted());
            for (name, text) in files {
                let there = fs::read_to_string(folder.join(&name)).unwrap();
                assert!(
                    text == there,
                    "{} {name} is packed otherwise than it stands",
                    language.tag
                );
            }
        }
    }
}
