//! `frond phrase`, `passphrase`, `backup`, `copy`: what opens the diary, and copies of it.

use frond_core::companion::{Recovery, Request, Told};
use frond_core::ports::OsRandom;
use frond_core::sealing::RecoveryPhrase;

use crate::args::{CopyArgs, PassphraseArgs, PhraseArgs, ShowArgs};
use crate::failure::Failure;
use crate::place::Place;
use crate::print::{self, Page};
use crate::{ask, file, secret};

/// Makes a recovery phrase and shows it once. Where somebody is there, two of its words are asked before the
/// diary is put under it, so that nobody loses it on the way to the paper.
pub(crate) fn phrase(args: &PhraseArgs) -> Result<(), Failure> {
    needs_passphrase(args.diary.secret())?;
    if !args.yes && !ask::somebody_there() {
        return Err(Failure::input(
            "There is no terminal to ask whether the words were written down. Give --yes.",
        ));
    }
    let place = args.diary.open()?;
    let random = |_| Failure::Else("There are no random bytes just now. Try again.".to_owned());
    let phrase = RecoveryPhrase::new(&OsRandom).map_err(random)?;
    let mut page = Page::new();
    page.title("Recovery phrase").paragraph(
        "Write these twelve words down, on paper, in this order. They open your diary and every copy of \
         it, without the passphrase. They are not shown again.",
    );
    page.gap();
    for (index, word) in phrase.words().enumerate() {
        page.numbered(index + 1, word);
    }
    page.gap().show();
    if !args.yes {
        written_down(&phrase)?;
    }
    let (companion, moment, keeper) = place.into_parts();
    companion.new_keys(keeper.as_ref(), Recovery::By(&phrase), &moment)?;
    Page::new()
        .paragraph(
            "From now on these words open your diary. Any earlier words do not. Next: frond copy FILE \
             makes a copy to keep elsewhere.",
        )
        .show();
    Ok(())
}

fn written_down(phrase: &RecoveryPhrase) -> Result<(), Failure> {
    for number in [3, 9] {
        let typed = ask::line(&format!("Word {number}, from your paper:"))?;
        if phrase.words().nth(number - 1) != Some(typed.to_lowercase().as_str()) {
            return Err(Failure::input(
                "This is another word. Nothing was changed, and these twelve words open nothing. Say \
                 `frond phrase` again for new ones.",
            ));
        }
    }
    Ok(())
}

/// Puts the diary under a new passphrase.
pub(crate) fn passphrase(args: &PassphraseArgs) -> Result<(), Failure> {
    let place = args.diary.open()?;
    let keeper = secret::new_passphrase(args.new_passphrase_file.as_deref())?;
    let (companion, moment, _) = place.into_parts();
    companion.new_keys(&keeper, Recovery::Keep, &moment)?;
    Page::new()
        .paragraph(
            "The new passphrase opens your diary from now on. The old one opens nothing here.",
        )
        .paragraph("Copies you keep elsewhere still open with what they were made for.")
        .show();
    Ok(())
}

/// Makes a backup on this device.
pub(crate) fn backup(args: &ShowArgs) -> Result<(), Failure> {
    let mut place = args.diary.open()?;
    place.back_up()?;
    let screen = place.ask(Request::Keeping)?;
    print::screen(args.json, &screen)
}

/// Makes a copy for elsewhere.
pub(crate) fn copy(args: &CopyArgs) -> Result<(), Failure> {
    let mut place: Place = args.diary.open()?;
    let sealed = place.companion().copy_for_elsewhere(place.now())?;
    file::write_new(&args.file, &sealed)?;
    place.tell(Told::CopyKept, None)?;
    Page::new()
        .paragraph(&format!(
            "{} is the whole diary, sealed: only your twelve words open it. Keep it away from this \
             device. It was sent nowhere.",
            args.file.display()
        ))
        .show();
    Ok(())
}

/// Where the diary is written anew, it has to be by the keeper that opens it every day.
pub(super) fn needs_passphrase(secret: &crate::secret::SecretArgs) -> Result<(), Failure> {
    if secret.is_phrase() {
        return Err(Failure::input(
            "This needs the passphrase. If it is forgotten, say `frond passphrase --phrase` first: it sets \
             a new one.",
        ));
    }
    Ok(())
}
