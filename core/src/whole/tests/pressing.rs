//! Every action leads somewhere.

use super::kit::*;
use crate::companion::{Refusal, Request, Told, Trouble, Write};
use crate::diary::entry::{Although, Chosen, EntryId};
use crate::handover::Handed;
use crate::screens::{Begin, Covered, Does, FirstRunPage, Screen};
use crate::whole::{View, WholeRequest};

/// One of each sort. A sort that is missing here is missed by [`sort`].
pub(super) fn every_does() -> Vec<Does> {
    let of = EntryId([7; 16]);
    let day = chrono::NaiveDate::from_ymd_opt(2026, 3, 2).unwrap();
    vec![
        Does::Today,
        Does::LogSession,
        Does::Ladder,
        Does::Suggestion,
        Does::Signs,
        Does::StopAndCall,
        Does::Spoke,
        Does::Entries,
        Does::Plan,
        Does::AcceptProgramme,
        Does::NotMine,
        Does::ConfirmStep,
        Does::ConfirmTime,
        Does::StayHere { stay: true },
        Does::FeelsReady,
        Does::Choose { shown: of, chosen: Chosen::Stay },
        Does::Strike { of },
        Does::Keeping,
        Does::NewKeys,
        Does::CodeForm,
        Does::MakePhrase,
        Does::OpenByPhrase,
        Does::MakeCopy,
        Does::Restore,
        Does::RestoreNow,
        Does::RestoreCopy,
        Does::StartNew,
        Does::EraseEntry { of },
        Does::EraseDays { from: day, to: day },
        Does::EraseEntryNow { of },
        Does::EraseDaysNow { from: day, to: day },
        Does::EraseSomeDays,
        Does::FirstRun { page: FirstRunPage::About },
        Does::More,
        Does::Calendar { month: None },
        Does::Day { day },
        Does::Entry { of },
        Does::Correct { of },
        Does::Questions,
        Does::Activities,
        Does::TimeOff,
        Does::LookForward,
        Does::Settled { of },
        Does::Ending,
        Does::Shows,
        Does::Settings,
        Does::Summary,
        Does::Practices,
        Does::Breathing,
        Does::Begin(Begin::Step),
        Does::Practice,
        Does::Rate,
        Does::LogAsPlanned,
        Does::Screening,
        Does::HoldQuestions,
        Does::StepCheck,
        Does::Reminders,
        Does::CalendarFile,
        Does::EraseAll,
        Does::EraseAllNow,
        Does::Lock,
    ]
}

#[test]
fn every_action_leads_to_a_screen_or_says_what_to_put_right() {
    let mut home = Home::begun();
    let told =
        Told::Programme { handed: Handed::File(PLAN.into()), although: vec![Although::Unsigned] };
    let id = home.holder.new_id().unwrap();
    home.ask(Request::Write(Write { id, happened: None, told }));
    for does in every_does() {
        // About an entry that is not there, a copy without words: refused, with what to do.
        let refused = matches!(
            does,
            Does::Choose { .. }
                | Does::Strike { .. }
                | Does::MakeCopy
                | Does::EraseEntry { .. }
                | Does::EraseEntryNow { .. }
                | Does::Entry { .. }
                | Does::Correct { .. }
                | Does::Settled { .. }
        );
        match home.try_press(does) {
            Ok(_) => assert!(!refused, "{does:?}"),
            Err(Trouble::PutRight(_)) => assert!(refused, "{does:?}"),
            Err(other) => panic!("{does:?}: {other}"),
        }
        if does == (Does::EraseDaysNow { from: day(), to: day() }) {
            // The plan stays, what was told of that day went.
            assert!(home.entries().len() <= 5, "{}", home.entries().len());
        }
    }
}

fn day() -> chrono::NaiveDate {
    chrono::NaiveDate::from_ymd_opt(2026, 3, 2).unwrap()
}

/// The variants that have a sentence of their own in the source: none is left out of the list above.
#[test]
fn the_list_of_actions_is_complete() {
    let source = include_str!("../../screens/mod.rs");
    let body = source.split("pub enum Does {").nth(1).unwrap().split("\n}\n").next().unwrap();
    let variants: Vec<&str> = body
        .lines()
        .filter_map(|line| line.strip_prefix("    "))
        .filter(|line| line.starts_with(|first: char| first.is_ascii_uppercase()))
        .map(|line| line.split([' ', ',', '(']).next().unwrap())
        .collect();
    let listed: Vec<String> = every_does()
        .iter()
        .map(|does| format!("{does:?}").split([' ', '(']).next().unwrap().to_owned())
        .collect();
    for variant in &variants {
        assert!(listed.iter().any(|own| own == variant), "{variant}");
    }
    assert_eq!(variants.len(), listed.len());
}

#[test]
fn what_the_shell_covers_is_said_where_it_is_asked() {
    let mut home = Home::begun();
    let text = |view: View| match view {
        View::Screen(Screen::Shows(screen)) => serde_json::to_string(&screen).unwrap(),
        other => panic!("{}", name(&other)),
    };
    let nothing = text(home.press(Does::Shows));
    let covered = Covered { screen: true, keyboard: true, backups: true, ..Covered::default() };
    home.holder.covers(covered);
    assert_ne!(text(home.press(Does::Shows)), nothing);
}

#[test]
fn an_action_pressed_twice_writes_once_and_another_one_in_between_makes_it_new() {
    let mut home = Home::begun();
    let before = home.entries().len();
    let (stay, go) = (Does::StayHere { stay: true }, Does::StayHere { stay: false });
    home.press(stay);
    home.press(stay);
    assert_eq!(home.entries().len(), before + 1);
    home.press(go);
    home.press(stay);
    assert_eq!(home.entries().len(), before + 3);
    home.whole(WholeRequest::Begin);
    home.press(stay);
    assert_eq!(home.entries().len(), before + 4);
    let strike = Does::Strike { of: *home.entries().last().unwrap() };
    home.press(strike);
    assert_eq!(home.entries().len(), before + 5);
    let unknown = home.try_press(Does::Strike { of: EntryId([9; 16]) });
    assert_eq!(unknown.err(), Some(Trouble::PutRight(Refusal::NoSuchEntry)));
}
