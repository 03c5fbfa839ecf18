//! Every screen around the practice answers on an empty diary and on a full one, refuses what is not there,
//! and is reached from Today by what can be pressed.

use std::collections::BTreeSet;

use frond_core::companion::{Refusal, Request, Told, Trouble, Write};
use frond_core::diary::entry::{Content, EntryId, Settled};
use frond_core::diary::erase::Erase;
use frond_core::diary::state::State;
use frond_core::programme::values::Passage;
use frond_core::screens::{Action, Covered, Does, FirstRunPage, Screen};
use frond_core::summary::Selection;
use frond_tests::home::{Home, session};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

fn looks(of: EntryId) -> Vec<Request> {
    let day = "2026-03-02".parse().unwrap();
    let mut looks = vec![
        Request::More,
        Request::Calendar { month: None },
        Request::Calendar { month: Some((2026, 13)) },
        Request::Day(day),
        Request::Questions,
        Request::Activities,
        Request::TimeOff,
        Request::LookForward,
        Request::Ending,
        Request::Shows(Covered::default()),
        Request::Settings,
        Request::Summary(Selection::default()),
    ];
    looks.extend(FirstRunPage::ALL.map(Request::FirstRun));
    looks.extend([Request::Entry(of), Request::Correct(of), Request::Settled(of)]);
    looks
}

#[test]
fn every_screen_answers_on_an_empty_diary_and_writes_nothing() {
    let mut home = Home::new(START);
    for look in looks(EntryId([7; 16])) {
        let about_an_entry =
            matches!(look, Request::Entry(_) | Request::Correct(_) | Request::Settled(_));
        match home.companion.ask(look, &home.moment) {
            Ok(_) => assert!(!about_an_entry),
            Err(trouble) => {
                assert_eq!(trouble, Trouble::PutRight(Refusal::NoSuchEntry));
                assert!(about_an_entry);
            }
        }
    }
    assert_eq!(home.companion.state().count(), 0);
}

#[test]
fn every_screen_answers_on_a_diary_with_every_thing_in_it() {
    let mut home = Home::with_plan(START);
    let of = home.tell(Told::Session(session(140, 8, Some(3)))).0;
    home.tell(Told::Question(Passage::new("may I swim?").unwrap()));
    home.tell(Told::Settled { of, answer: Settled::Yes });
    let before = home.companion.state().count();
    for look in looks(of) {
        home.ask(look);
    }
    assert_eq!(home.companion.state().count(), before);
}

#[test]
fn every_kind_of_entry_opens_and_says_whether_it_can_be_put_right() {
    let mut home = Home::with_plan(START);
    home.tell(Told::Session(session(140, 8, Some(3))));
    home.tell(Told::StayHere(true));
    home.tell(Told::TimeConfirmed);
    home.tell(Told::CopyKept);
    home.ask(Request::Suggestion);
    for entry in home.companion.entries().unwrap() {
        home.ask(Request::Entry(entry.id));
        home.ask(Request::Correct(entry.id));
    }
}

#[test]
fn what_is_not_there_or_upside_down_is_refused() {
    let mut home = Home::with_plan(START);
    let question = home.tell(Told::Question(Passage::new("may I swim?").unwrap())).0;
    let of = home.tell(Told::Session(session(140, 8, Some(3)))).0;
    home.tell(Told::Strike { of });
    for look in [Request::Settled(question), Request::Settled(of)] {
        let refused = home.companion.ask(look, &home.moment).err();
        assert_eq!(refused, Some(Trouble::PutRight(Refusal::NoSession)));
    }
    let selection = Selection {
        from: "2026-03-02".parse().ok(),
        to: "2026-03-01".parse().ok(),
        ..Selection::default()
    };
    let refused = home.companion.ask(Request::Summary(selection), &home.moment).err();
    assert_eq!(refused, Some(Trouble::PutRight(Refusal::EndBeforeStart)));
}

/// What a shell turns an action into, where it only looks at something.
fn request(does: Does) -> Option<Request> {
    Some(match does {
        Does::Today => Request::Today,
        Does::LogSession => Request::LogSession,
        Does::Ladder => Request::Ladder,
        Does::Signs => Request::Signs,
        Does::StopAndCall => Request::StopAndCall,
        Does::Spoke => Request::Spoke,
        Does::Entries => Request::Entries,
        Does::Plan => Request::Plan,
        Does::Keeping => Request::Keeping,
        Does::EraseEntry { of } => Request::Erase(Erase::Entry(of)),
        Does::EraseAll => Request::EraseAll,
        Does::FirstRun { page } => Request::FirstRun(page),
        Does::More => Request::More,
        Does::Calendar { month } => Request::Calendar { month },
        Does::Day { day } => Request::Day(day),
        Does::Entry { of } => Request::Entry(of),
        Does::Correct { of } => Request::Correct(of),
        Does::Questions => Request::Questions,
        Does::Activities => Request::Activities,
        Does::TimeOff => Request::TimeOff,
        Does::LookForward => Request::LookForward,
        Does::Settled { of } => Request::Settled(of),
        Does::Ending => Request::Ending,
        Does::Shows => Request::Shows(Covered::default()),
        Does::Settings => Request::Settings,
        Does::Summary => Request::Summary(Selection::default()),
        _ => return None,
    })
}

/// The actions anywhere in a screen, found in its JSON by their form.
fn actions(screen: &Screen, found: &mut Vec<String>) {
    fn walk(value: &serde_json::Value, found: &mut Vec<String>) {
        match value {
            serde_json::Value::Array(items) => items.iter().for_each(|item| walk(item, found)),
            serde_json::Value::Object(fields) => {
                if let (Some(_), Some(does)) = (fields.get("label"), fields.get("does")) {
                    found.push(match does {
                        serde_json::Value::String(name) => name.clone(),
                        serde_json::Value::Object(one) => {
                            one.keys().next().cloned().unwrap_or_default()
                        }
                        _ => String::new(),
                    });
                }
                fields.values().for_each(|value| walk(value, found));
            }
            _ => {}
        }
    }
    walk(&serde_json::to_value(screen).unwrap(), found);
}

fn of_today(screen: &Screen) -> Vec<Action> {
    let Screen::Today(today) = screen else { panic!("today") };
    let mut all = today.actions.clone();
    all.push(today.next.clone());
    all.extend(today.notices.iter().filter_map(|notice| notice.action.clone()));
    all
}

#[test]
fn every_screen_is_reached_from_today_in_few_taps() {
    let mut home = Home::with_plan(START);
    let of = home.tell(Told::Session(session(140, 8, Some(3)))).0;
    home.pass(24);
    let mut seen: BTreeSet<String> = BTreeSet::new();
    let today = home.ask(Request::Today);
    let mut next = Vec::new();
    for action in of_today(&today) {
        next.extend(request(action.does));
    }
    let mut found = Vec::new();
    actions(&today, &mut found);
    for request in next {
        actions(&home.ask(request), &mut found);
    }
    // From an entry on: one tap more.
    for request in [Request::Entries, Request::More, Request::Entry(of), Request::Questions] {
        actions(&home.ask(request), &mut found);
    }
    actions(&home.ask(Request::Day(home.moment.now.day().pred_opt().unwrap())), &mut found);
    seen.extend(found);
    for name in [
        "more",
        "calendar",
        "day",
        "entry",
        "correct",
        "questions",
        "activities",
        "time_off",
        "look_forward",
        "settled",
        "ending",
        "shows",
        "settings",
        "summary",
        "first_run",
    ] {
        assert!(seen.contains(name), "{name} is not reached: {seen:?}");
    }
    // Today stays short.
    assert!(of_today(&today).len() <= 14);
}

/// What only the screens look at is the same when it is folded entry by entry and when it is folded from the
/// whole journal, and it survives the snapshot.
#[test]
fn what_the_screens_look_at_is_the_same_however_it_is_folded() {
    let mut home = Home::with_plan(START);
    for peak in [3, 0, 5] {
        home.tell(Told::Session(session(140, 8, Some(peak))));
        home.pass(24);
    }
    let newest = home.companion.state().presence().felt().unwrap();
    home.tell(Told::Settled { of: newest.session, answer: Settled::NotYet });
    let seen = |state: &State| {
        (state.presence().told(), state.presence().felt(), state.presence().rated("cycling"))
    };
    let folded = seen(home.companion.state());
    assert!(folded.1.is_some_and(|felt| felt.answered));
    let mut whole = State::from_history(&home.companion.entries().unwrap()).unwrap();
    assert_eq!(seen(&whole), folded);
    let bytes = whole.encode().unwrap();
    assert_eq!(seen(&State::decode(&bytes).unwrap()), folded);
    // A correction of when the newest happened makes an earlier one the newest.
    let earlier = home.companion.entries().unwrap();
    let first = earlier.iter().find(|entry| matches!(entry.what, Content::Session(_))).unwrap();
    let happened = Some(frond_tests::home::stamp("2026-03-01T08:00:00+00:00[Europe/London]"));
    let told = Box::new(Told::Session(session(140, 8, Some(5))));
    let id = home.companion.new_id().unwrap();
    let told = Told::Correct { of: newest.session, told };
    home.ask(Request::Write(Write { id, happened, told }));
    assert_eq!(home.companion.state().presence().felt().unwrap().session, first.id);
}
