//! The invented person hands over a summary, and the invented clinician reads it.

use frond_core::screens::ReadingScreen;
use frond_core::sealing::{Identity, OpenWith, SealTo, SigningKey};
use frond_core::summary::{
    DiaryId, DiaryIdentity, Selection, Summary, TimeAlone, fhir, open_summary, table,
};
use frond_core::words::Words;
use zeroize::Zeroizing;

use super::play::Played;
use crate::failure::{Failure, LANGUAGE};
use crate::print::{self, Page};

/// The invented diary's id and signing key. The key protects nothing: it stands here.
const DIARY: [u8; 16] = *b"invented diary 1";
const SIGNING: [u8; 32] = *b"an invented key, it signs nobody";

/// The invented clinic's secret key, of the words `an invented key, it opens little`. It protects nothing: it
/// is written into the folder.
const KEY: &str = "AGE-SECRET-KEY-1V9HZQ6TWWEJKUAR9VSSXKETE9SSXJAPQDACX2MNNYPKXJAR5D3JSRUDF5S";

/// What is handed over, and how it reads.
pub(super) struct HandedOver {
    /// Files by name.
    pub(super) files: Vec<(&'static str, Vec<u8>)>,
    reading: ReadingScreen,
}

/// Makes the files and reads them back as the clinician does.
pub(super) fn hand_over(played: &Played) -> Result<HandedOver, Failure> {
    let identity =
        DiaryIdentity { id: DiaryId(DIARY), key: SigningKey::from_seed(&Zeroizing::new(SIGNING)) };
    let summary = Summary::of(&played.entries, &identity, &Selection::default(), &played.end)
        .map_err(|_| broken())?;
    let open = summary.open_form(&identity).map_err(|_| broken())?;
    let rows = table::csv(&summary).map_err(|_| broken())?;
    let bundle = fhir::bundle(&summary, fhir::Texts::Carried).map_err(|_| broken())?;
    let bundle = crate::file::json(&bundle)?;
    let clinic = Identity::parse(KEY).map_err(|_| broken())?;
    let recipient = clinic.recipient();
    let to = SealTo::Recipients(vec![recipient.clone()]);
    let sealed = summary.sealed_form(&identity, &to, TimeAlone::Please).map_err(|_| broken())?;
    // The clinician opens the sealed one.
    let with = OpenWith::Identities(vec![clinic]);
    let received =
        open_summary(&sealed, Some(&with)).map_err(|error| Failure::Else(error.to_string()))?;
    let reading = ReadingScreen::new(&received, &Words::for_language(LANGUAGE), false)
        .map_err(|_| broken())?;
    let key_file =
        format!("# Invented: this key protects nothing.\n# public key: {recipient}\n{KEY}\n");
    let files = vec![
        ("summary.json", open),
        ("summary.csv", rows.into_bytes()),
        ("summary.fhir.json", bundle),
        ("summary.age", sealed),
        ("invented-clinic-key.txt", key_file.into_bytes()),
    ];
    Ok(HandedOver { files, reading })
}

impl HandedOver {
    /// The clinician's reading, after the story.
    pub(super) fn tell(&self, page: &mut Page) {
        print::reading(page, &self.reading);
    }
}

fn broken() -> Failure {
    Failure::Else("The invented summary does not fit this Frond. Please report it.".to_owned())
}
