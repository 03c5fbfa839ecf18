//! The published age test vectors (C2SP/CCTV; provenance in `fixtures/age-testkit/README.md`): each
//! is run through our `open`, or is listed here with the reason why it is not.

use frond_core::ports::Passphrase;
use frond_core::sealing::{Identity, OpenError, OpenWith, open};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::path::Path;

/// Not run: they need a hybrid (post-quantum) secret key, a kind this program does not read.
const HYBRID: [&str; 19] = [
    "armor_hybrid",
    "hybrid",
    "hybrid_and_x25519",
    "hybrid_bad_tag",
    "hybrid_currupted_enc_mlkem",
    "hybrid_currupted_enc_x25519",
    "hybrid_extra_argument",
    "hybrid_grease",
    "hybrid_identity",
    "hybrid_long_file_key",
    "hybrid_long_share",
    "hybrid_low_order",
    "hybrid_multiple_recipients",
    "hybrid_no_match",
    "hybrid_not_canonical_body",
    "hybrid_not_canonical_enc",
    "hybrid_short_share",
    "hybrid_uppercase",
    "hybrid_x25519_arg",
];

/// Run, and the library decides otherwise than the vector asks; its own tests name the same three.
/// It reads a form that early age programs wrote (a stanza whose body ends without its short line): what is
/// opened has still been authenticated. And it refuses armor with white space around it, which costs a
/// person who copied too much one more attempt.
const OTHERWISE: [(&str, bool); 3] = [
    ("stanza_missing_body", true),
    ("stanza_missing_final_line", true),
    ("armor_whitespace_outside", false),
];

/// All vectors of the pinned version; fewer would mean that some were lost.
const ALL: usize = 143;

const MOST: u64 = 32 * 1024 * 1024;

struct Vector {
    expect: String,
    hash: Option<String>,
    keys: Vec<OpenWith>,
    foreign: bool,
    file: Vec<u8>,
}

fn read(path: &Path) -> Vector {
    let bytes = std::fs::read(path).unwrap();
    let end = bytes.windows(2).position(|two| two == b"\n\n").unwrap();
    let mut vector = Vector {
        expect: String::new(),
        hash: None,
        keys: Vec::new(),
        foreign: false,
        file: bytes[end + 2..].to_vec(),
    };
    let mut identities = Vec::new();
    for line in std::str::from_utf8(&bytes[..end]).unwrap().lines() {
        let (name, value) = line.split_once(": ").unwrap();
        match name {
            "expect" => vector.expect = value.to_owned(),
            "payload" => vector.hash = Some(value.to_owned()),
            "identity" if value.starts_with("AGE-SECRET-KEY-PQ-") => vector.foreign = true,
            "identity" => identities.push(Identity::parse(value).unwrap()),
            "passphrase" => {
                let words = Passphrase::new(value.to_owned()).unwrap();
                vector.keys.push(OpenWith::Passphrase(words));
            }
            "compressed" => {
                assert_eq!(value, "zlib");
                vector.file = miniz_oxide::inflate::decompress_to_vec_zlib(&vector.file).unwrap();
            }
            "armored" | "file key" | "comment" => {}
            other => panic!("{}: unknown line {other}", path.display()),
        }
    }
    if !identities.is_empty() || vector.keys.is_empty() {
        vector.keys.push(OpenWith::Identities(identities));
    }
    vector
}

/// Which of our errors a published outcome may be.
fn fits(name: &str, expect: &str, error: OpenError) -> bool {
    use OpenError as E;
    match expect {
        _ if name == "scrypt_work_factor_23" => error == E::TooMuchWork,
        _ if name == "version_unsupported" => error == E::Newer,
        "no match" => {
            matches!(error, E::WrongKey | E::WrongPassphrase | E::NeedsKey | E::NeedsPassphrase)
        }
        "HMAC failure" | "payload failure" => error == E::Damaged,
        "header failure" | "armor failure" => matches!(error, E::Damaged | E::NotAge),
        _ => false,
    }
}

#[test]
fn every_published_vector_is_run_or_listed() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/age-testkit");
    let (mut run, mut listed, mut wrong) = (0, BTreeSet::new(), Vec::new());
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_name().unwrap().to_str().unwrap().to_owned();
        if name == "README.md" {
            continue;
        }
        let vector = read(&path);
        assert_eq!(vector.foreign, HYBRID.contains(&name.as_str()), "{name}: wrongly listed");
        if vector.foreign {
            listed.insert(name);
            continue;
        }
        run += 1;
        let opened: Vec<_> =
            vector.keys.iter().map(|with| open(&vector.file, with, MOST)).collect();
        let otherwise = OTHERWISE.iter().find(|(other, _)| *other == name).map(|(_, opens)| *opens);
        let good = if let Some(opens) = otherwise {
            opened.iter().any(Result::is_ok) == opens
        } else if vector.expect == "success" {
            opened.iter().flatten().any(|plain| {
                let hash = data_encoding::HEXLOWER.encode(&Sha256::digest(plain.as_slice()));
                Some(hash) == vector.hash
            })
        } else {
            opened.iter().all(|one| one.is_err())
                && opened
                    .iter()
                    .flat_map(|one| one.as_ref().err())
                    .any(|e| fits(&name, &vector.expect, *e))
        };
        if !good {
            let got: Vec<_> = opened.iter().map(|one| one.as_ref().map(|p| p.len())).collect();
            wrong.push(format!("{name}: expected {}, got {got:?}", vector.expect));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert_eq!((run, listed.len()), (ALL - HYBRID.len(), HYBRID.len()));
}
