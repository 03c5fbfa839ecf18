//! The invented scenario: ten weeks of one invented person, told by asking the companion one entry at a
//! time, as a phone would. What the person does is written down in [`days`]; what the plan says to it is
//! never written down here: it comes from the companion, as on a phone.
//!
//! The numbers of the invented programme lie within what is common practice in the trade; there is no
//! source for them, and they are no recommendation.

mod days;
mod play;
mod story;
mod summary;
#[cfg(test)]
mod tests;

use std::fs::{self, DirBuilder};
use std::path::Path;

use frond_core::companion::Ports;
use frond_core::diary::lines;
use frond_core::moment::Stamp;
use frond_core::ports::KeyKeeper;

use crate::failure::Failure;
use crate::place::{holds_something, ports};
use crate::print::Page;
use crate::secret;

/// The programme as first issued.
pub(crate) const FIRST: &str = include_str!("programme-1.json");
/// Its second revision.
pub(crate) const SECOND: &str = include_str!("programme-2.json");
/// A more careful rule, to put beside the diary.
pub(crate) const OTHER_RULE: &str = include_str!("another-rule.json");
/// The passphrase of the invented diary. It protects nothing: it is printed.
const PASSPHRASE: &str = "kettle orchard invented lantern";

/// Makes the scenario in a new or empty folder and tells it.
pub(crate) fn demo(out: &Path) -> Result<(), Failure> {
    if holds_something(out) {
        return Err(Failure::input(format!(
            "{} holds something already. Choose a new or an empty folder.",
            out.display()
        )));
    }
    let broken =
        |_| Failure::Else(format!("{} cannot be written. Choose another folder.", out.display()));
    make_folder(out).map_err(broken)?;
    let played = play::play(&ports(), &out.join("diary"), &secret::keeper(PASSPHRASE)?)?;
    let entries = lines::write(&played.entries)
        .map_err(|_| Failure::Else("This cannot be written as JSON.".to_owned()))?;
    let handed = summary::hand_over(&played)?;
    let readme = readme(&played.end.to_string());
    let files = [
        ("programme-1.json", FIRST),
        ("programme.json", SECOND),
        ("another-rule.json", OTHER_RULE),
        ("entries.jsonl", &entries),
        ("README.txt", &readme),
    ];
    for (name, text) in files {
        fs::write(out.join(name), text).map_err(broken)?;
    }
    for (name, bytes) in &handed.files {
        fs::write(out.join(name), bytes).map_err(broken)?;
    }
    let mut page = story::tell(&played)?;
    handed.tell(&mut page);
    page.show();
    Ok(())
}

/// Plays the scenario into a new diary and says when its last evening is.
///
/// # Errors
/// The folder cannot be written.
pub(crate) fn invented(
    ports: &Ports,
    folder: &Path,
    keeper: &dyn KeyKeeper,
) -> Result<Stamp, Failure> {
    Ok(play::play(ports, folder, keeper)?.end)
}

/// The entries of the scenario and its end, played once, for tests of what is made of them.
#[cfg(test)]
pub(crate) fn played() -> &'static (Vec<frond_core::diary::entry::Entry>, Stamp) {
    static PLAYED: std::sync::OnceLock<(Vec<frond_core::diary::entry::Entry>, Stamp)> =
        std::sync::OnceLock::new();
    PLAYED.get_or_init(|| {
        let room = tempfile::tempdir().expect("a folder");
        let keeper = secret::keeper(PASSPHRASE).unwrap_or_else(|failure| panic!("{failure}"));
        let played = play::play(&ports(), &room.path().join("diary"), &keeper);
        let played = played.unwrap_or_else(|failure| panic!("{failure}"));
        (played.entries, played.end)
    })
}

fn make_folder(out: &Path) -> std::io::Result<()> {
    if out.is_dir() {
        return Ok(());
    }
    let mut builder = DirBuilder::new();
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(out)
}

/// What lies in the folder, and that all of it is invented.
fn readme(end: &str) -> String {
    let end = end.split_once('[').map_or(end, |(time, _)| time).replace(".000", "");
    let mut page = Page::new();
    page.title("Frond: an invented diary");
    page.paragraph(
        "Everything in this folder is invented: the person, the clinician, the clinic, every entry. The \
         telephone numbers come from a range that is kept for fiction in the United Kingdom (01632 960000 to \
         960999); 999 is the emergency number there and nowhere else. The numbers of the programme lie \
         within what is common practice. They have no source and are no recommendation for anybody.",
    );
    page.gap();
    for (name, what) in [
        ("programme-1.json", "the programme as first issued"),
        ("programme.json", "its revision 2, in force at the end"),
        ("another-rule.json", "a more careful rule, to put beside it"),
        ("entries.jsonl", "the whole diary in the open, one entry a line"),
        ("diary/", "the same diary, sealed, as the companion keeps it"),
        ("summary.json", "the summary of its last evening, signed, in the open"),
        ("summary.csv", "its sessions as a table"),
        ("summary.fhir.json", "the same for the programs of clinics (FHIR R4)"),
        ("summary.age", "the summary, sealed to the invented clinic, with a wish in it"),
        ("invented-clinic-key.txt", "the key that opens it, invented too"),
    ] {
        page.beside(&format!("  {name}"), what, 28);
    }
    page.gap()
        .paragraph("The passphrase of the invented diary protects nothing, so it stands here:");
    page.gap().inside(4, PASSPHRASE).gap();
    page.paragraph("To look at it, in this folder:").gap();
    for command in [
        "frond check programme.json --read-back".to_owned(),
        format!("frond suggest --entries entries.jsonl --now {end}"),
        "frond replay --entries entries.jsonl".to_owned(),
        "frond replay --entries entries.jsonl --rule another-rule.json".to_owned(),
        format!("frond today --diary diary --now {end}"),
        "frond entries --diary diary".to_owned(),
        "frond read summary.json".to_owned(),
        "frond read summary.age --identity-file invented-clinic-key.txt".to_owned(),
    ] {
        page.line_as_it_is(&format!("    {command}"));
    }
    page.gap().paragraph(
        "--now pretends that it is still the last evening of the story. Without it the diary is opened as \
         of today: much time has passed, and Frond then asks whether the clock is right.",
    );
    page.text().to_owned()
}
