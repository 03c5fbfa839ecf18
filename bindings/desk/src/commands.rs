//! What each command does: opens what it needs, asks the companion, shows the screen.

mod accept;
mod cautions;
mod check;
mod entries;
mod erase;
mod hand_over;
mod keys;
mod letter;
mod lines;
mod log;
mod log_asked;
mod read;
mod replay;
mod restore;
mod show;
mod sign;
mod spoke;
mod step;
mod suggest;
mod summary;
mod tell;

use frond_core::companion::Request;

use crate::args::{Command, ShowArgs};
use crate::failure::Failure;
use crate::pages::desk::desk;
use crate::pages::try_out::try_out;
use crate::{gather, print, scenario};

/// Runs a command.
pub(crate) fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Demo(args) => scenario::demo(&args.out),
        Command::Try(args) => try_out(&args),
        Command::Desk(args) => desk(&args),
        Command::Check(args) => check::check(&args),
        Command::Suggest(args) => suggest::suggest(args),
        Command::Replay(args) => replay::replay(&args),
        Command::Summary(args) => summary::summary(&args),
        Command::Read(args) => read::read(&args),
        Command::Letter(args) => letter::letter(&args),
        Command::Gather(args) => gather::gather(&args),
        Command::Start(args) => accept::start(&args),
        Command::HandOver(args) => hand_over::hand_over(&args),
        Command::Accept(args) => accept::accept(&args),
        Command::Today(args) => look(&args, Request::Today),
        Command::Log(args) => log::log(args),
        Command::Step(args) => step::step(&args),
        Command::Sign(args) => sign::sign(args),
        Command::Call(args) => look(&args, Request::StopAndCall),
        Command::Spoke(args) => spoke::spoke(args),
        Command::Entries(args) => entries::entries(&args),
        Command::Plan(args) => look(&args, Request::Plan),
        Command::Show(args) => show::show(args),
        Command::Tell(args) => tell::tell(args.what),
        Command::Keeping(args) => look(&args, Request::Keeping),
        Command::Phrase(args) => keys::phrase(&args),
        Command::Passphrase(args) => keys::passphrase(&args),
        Command::Backup(args) => keys::backup(&args),
        Command::Copy(args) => keys::copy(&args),
        Command::Restore(args) => restore::restore(&args),
        Command::Erase(args) => erase::erase(&args),
    }
}

fn look(args: &ShowArgs, request: Request) -> Result<(), Failure> {
    let screen = args.diary.open()?.ask(request)?;
    print::screen(args.json, &screen)
}
