//! `frond check`: is a programme written correctly, what does it say in plain words, and who signed it.

use frond_core::handover::{HandOver, is_signed, key_words};
use frond_core::programme::check::load;
use frond_core::programme::read::MOST_BYTES;
use frond_core::programme::readback::read_back;
use frond_core::words::Words;
use serde::Serialize;

use crate::args::CheckArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::file;
use crate::print::{self, Page};

/// What was found, for a program to read.
#[derive(Serialize)]
struct Found {
    /// Whether the programme can be used.
    usable: bool,
    /// What must be put right, with its place.
    errors: Vec<String>,
    /// What is unusual, with its place and ground.
    warnings: Vec<String>,
    /// Where it is signed and the signature holds: the words of the key.
    #[serde(skip_serializing_if = "Option::is_none")]
    key_words: Option<String>,
    /// The plan in plain sentences, where asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    plan: Option<Vec<String>>,
}

/// Checks a programme.
pub(crate) fn check(args: &CheckArgs) -> Result<(), Failure> {
    // One byte more, so that a file too long is refused in the reader's own words.
    let bytes = file::read(&args.file, MOST_BYTES as u64 * 4)?;
    let signed = is_signed(&bytes).then(|| HandOver::open(&bytes)).transpose();
    let signed = signed.map_err(|error| Failure::input(error.to_string()))?;
    let key_words = signed.as_ref().map(|signed| key_words(&signed.key()).join(" "));
    let found = match load(signed.as_ref().map_or(&bytes, |signed| signed.text().as_bytes())) {
        Ok((plan, warnings)) => Found {
            usable: true,
            errors: Vec::new(),
            key_words,
            warnings: warnings.iter().map(ToString::to_string).collect(),
            plan: args.read_back.then(|| read_back(&plan, &Words::for_language(LANGUAGE))),
        },
        Err(error) => Found {
            usable: false,
            errors: error.to_string().lines().map(str::to_owned).collect(),
            warnings: Vec::new(),
            key_words,
            plan: None,
        },
    };
    if args.json || found.usable {
        print::show(args.json, &found, text)?;
    }
    match found.errors.len() {
        0 => Ok(()),
        // As JSON the errors stand on standard output already.
        _ if args.json => Err(Failure::input("This programme cannot be used as it is.")),
        _ => Err(Failure::input(found.errors.join("\n"))),
    }
}

fn text(page: &mut Page, found: &Found) {
    page.paragraph(if found.warnings.is_empty() {
        "The programme is written correctly."
    } else {
        "The programme is written correctly. Some of it is unusual; look again whether it is meant:"
    });
    for warning in &found.warnings {
        page.point(warning);
    }
    if let Some(key) = &found.key_words {
        page.paragraph(&format!(
            "It is signed, and the signature holds. The words of the key: {key}"
        ));
    }
    if let Some(plan) = &found.plan {
        page.gap().sentences(plan);
    }
}
