//! `frond restore`: says what a copy holds, asks, and puts it in place of what is there.

use std::path::PathBuf;

use frond_core::companion::{Companion, Copy, CopyFrom, Trouble};
use frond_core::diary::portable::PORTABLE_MOST;
use frond_core::ports::KeyKeeper;
use frond_core::sealing::is_age;

use crate::args::RestoreArgs;
use crate::failure::{Failure, LANGUAGE};
use crate::place::ports;
use crate::print::{self, Page};
use crate::{ask, file, secret};

/// Looks into a copy, or restores it.
pub(crate) fn restore(args: &RestoreArgs) -> Result<(), Failure> {
    let moment = args.diary.moment()?;
    let path = match &args.file {
        Some(path) => path.clone(),
        None => newest(args)?,
    };
    let bytes = file::read(&path, PORTABLE_MOST)?;
    // A copy from elsewhere gets a passphrase of its own here; one of this device keeps the one it had.
    let (copy, keeper): (Copy, Option<Box<dyn KeyKeeper + Send>>) = if is_age(&bytes) {
        let phrase = args.diary.secret().recovery_phrase()?;
        (Copy::read(&ports(), CopyFrom::Elsewhere { bytes: &bytes, phrase: &phrase })?, None)
    } else {
        let keeper = args.diary.secret().keeper()?;
        let from = CopyFrom::Backup { path: &path, keeper: keeper.as_ref() };
        let daily = (!args.diary.secret().is_phrase()).then_some(());
        (Copy::read(&ports(), from)?, daily.map(|()| keeper))
    };
    let present = match &keeper {
        Some(keeper) => opened(args, keeper.as_ref(), &moment)?,
        None => None,
    };
    let screen = copy.screen(present.as_ref(), LANGUAGE, &moment.now)?;
    let mut page = Page::new();
    print::restore(&mut page, &screen);
    page.show();
    if args.look {
        return Ok(());
    }
    ask::sure(args.yes, &screen.title, "Nothing was changed.")?;
    let keeper = match keeper {
        Some(keeper) => keeper,
        None => Box::new(secret::new_passphrase(args.new_passphrase_file.as_deref())?),
    };
    let replaced = present.as_ref().map(|present| present.state().count());
    // It gives back the lock.
    drop(present);
    let folder = args.diary.folder();
    Companion::restore(&ports(), folder, keeper.as_ref(), copy, replaced, LANGUAGE, &moment)?;
    Page::new().gap().paragraph("Restored. Next: frond today").show();
    Ok(())
}

/// The diary in that place, if one opens there. One that another program has open is left alone.
fn opened(
    args: &RestoreArgs,
    keeper: &dyn KeyKeeper,
    moment: &frond_core::moment::Moment,
) -> Result<Option<Companion>, Failure> {
    match Companion::open(&ports(), args.diary.folder(), keeper, LANGUAGE, moment) {
        Ok(companion) => Ok(Some(companion)),
        Err(Trouble::CloseElsewhere) => Err(Trouble::CloseElsewhere.into()),
        Err(_) => Ok(None),
    }
}

/// The newest copy on this device.
fn newest(args: &RestoreArgs) -> Result<PathBuf, Failure> {
    let folder = args.diary.folder().join("backups");
    let numbers = std::fs::read_dir(&folder).into_iter().flatten().flatten();
    let newest = numbers
        .filter_map(|file| file.file_name().to_str()?.parse::<u64>().ok())
        .max()
        .ok_or_else(|| {
            Failure::input("There is no copy on this device. Name one: frond restore FILE.")
        })?;
    Ok(folder.join(newest.to_string()))
}
