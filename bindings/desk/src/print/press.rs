//! What a phone would let one press, as the command to type.

use frond_core::diary::entry::{Chosen, EntryId};
use frond_core::screens::{Action, Does, FirstRunPage};

use super::Page;

/// The next thing to do, then what else can be done.
pub(super) fn actions(page: &mut Page, next: Option<&Action>, others: &[Action]) {
    page.gap();
    // What is next need not stand there twice.
    let others = others.iter().filter(|other| next.is_none_or(|next| next.does != other.does));
    let all = next.into_iter().chain(others);
    let widest = all.clone().map(|action| columns(&action.label)).max().unwrap_or(0).min(44) + 3;
    for (index, action) in all.enumerate() {
        let mark = if index == 0 && next.is_some() { "> " } else { "  " };
        page.beside(&format!("{mark}{}", action.label), &command(&action.does), widest + 2);
    }
}

fn columns(text: &str) -> usize {
    textwrap::core::display_width(text)
}

/// The command that does it.
pub(super) fn command(does: &Does) -> String {
    match does {
        Does::Today => "frond today".to_owned(),
        Does::LogSession => "frond log".to_owned(),
        Does::Ladder => "frond step".to_owned(),
        Does::Suggestion => "frond suggest".to_owned(),
        Does::Signs => "frond sign".to_owned(),
        Does::StopAndCall => "frond call".to_owned(),
        Does::Spoke => "frond spoke".to_owned(),
        Does::Entries => "frond entries".to_owned(),
        Does::Plan => "frond plan".to_owned(),
        Does::AcceptProgramme => "frond accept FILE".to_owned(),
        Does::ConfirmStep => "frond step --confirm".to_owned(),
        Does::ConfirmTime => "frond tell time-right".to_owned(),
        Does::StayHere { stay: true } => "frond suggest --stay-here yes".to_owned(),
        Does::StayHere { stay: false } => "frond suggest --stay-here no".to_owned(),
        Does::FeelsReady => "frond suggest --ready yes|not-yet".to_owned(),
        Does::Choose { chosen: Chosen::Try, .. } => "frond suggest --try".to_owned(),
        Does::Choose { chosen: Chosen::Stay, .. } => "frond suggest --stay".to_owned(),
        Does::Strike { of } => format!("frond entries --strike {}", short(*of)),
        Does::Keeping => "frond keeping".to_owned(),
        Does::NotMine => "frond today".to_owned(),
        // A code and its lock are a phone's; here a passphrase takes their place.
        Does::NewKeys | Does::CodeForm => "frond passphrase".to_owned(),
        Does::Lock => "frond keeping".to_owned(),
        Does::EraseSomeDays => "frond erase --from DAY --to DAY".to_owned(),
        Does::MakePhrase => "frond phrase".to_owned(),
        Does::OpenByPhrase => "frond passphrase --phrase".to_owned(),
        Does::MakeCopy => "frond copy FILE".to_owned(),
        Does::Restore | Does::RestoreNow => "frond restore".to_owned(),
        Does::RestoreCopy => "frond restore FILE --phrase".to_owned(),
        Does::StartNew => "frond start".to_owned(),
        Does::EraseEntry { of } | Does::EraseEntryNow { of } => {
            format!("frond erase --entry {}", short(*of))
        }
        Does::EraseDays { from, to } | Does::EraseDaysNow { from, to } => {
            format!("frond erase --from {from} --to {to}")
        }
        Does::EraseAll | Does::EraseAllNow => "frond erase --everything".to_owned(),
        Does::FirstRun { page } => {
            let page = match page {
                FirstRunPage::Breathe => "breathe",
                FirstRunPage::About => "about",
                FirstRunPage::Lock => "lock",
                FirstRunPage::Language => "language",
                FirstRunPage::Copy => "copy",
            };
            format!("frond show first-run {page}")
        }
        Does::More => "frond show more".to_owned(),
        Does::Calendar { month: None } => "frond show calendar".to_owned(),
        Does::Calendar { month: Some((year, month)) } => {
            format!("frond show calendar {year}-{month:02}")
        }
        Does::Day { day } => format!("frond show day {day}"),
        Does::Entry { of } => format!("frond show entry {}", short(*of)),
        Does::Correct { of } => format!("frond show correct {}", short(*of)),
        Does::Questions => "frond show questions".to_owned(),
        Does::Activities => "frond show activities".to_owned(),
        Does::TimeOff => "frond show time-off".to_owned(),
        Does::LookForward => "frond show look-forward".to_owned(),
        Does::Settled { of } => format!("frond tell settled --of {} ANSWER", short(*of)),
        Does::Ending => "frond show ending".to_owned(),
        Does::Shows => "frond show shows".to_owned(),
        Does::Settings => "frond show settings".to_owned(),
        Does::Summary => "frond show summary".to_owned(),
        Does::StepCheck => "frond step --confirm, or frond step STEP".to_owned(),
        Does::Screening => "frond tell cautions".to_owned(),
        Does::LogAsPlanned => "frond log".to_owned(),
        // These need a page with a clock.
        Does::Practices
        | Does::Breathing
        | Does::Begin(_)
        | Does::Practice
        | Does::Rate
        | Does::HoldQuestions
        | Does::Reminders
        | Does::CalendarFile => "frond try".to_owned(),
    }
}

/// What can be done and the command for it, in one line; nothing where it is what was just typed.
pub(crate) fn command_of(action: &Action) -> Option<String> {
    match action.does {
        Does::Today => None,
        does => Some(format!("{}: {}", action.label, command(&does))),
    }
}

/// Enough of an id to find the entry by: its number, and as much chance as there is in eight digits.
pub(super) fn short(id: EntryId) -> String {
    id.to_string().chars().take(16).collect()
}
