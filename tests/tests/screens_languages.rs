//! Every screen in every language, those for trying out too: worded to the end, and worded by messages
//! only. The plan and what is told are invented.

use frond_core::companion::{Request, Told};
use frond_core::diary::entry::{FeelsReady, Reason, Settings};
use frond_core::handover::Handed;
use frond_core::practice::timed::Event;
use frond_core::programme::values::{Line, Passage};
use frond_core::safety::{FullList, Sign};
use frond_core::screens::{Begin, Covered, FirstRunPage};
use frond_core::summary::Selection;
use frond_core::words::{Direction, Isolation, Language, Words};
use frond_tests::home::{Home, PLAN, session, stopped};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";
const DAY: i64 = 24;
/// What was told, and the names in the plan, which no language changes.
const OWN: &[&str] = &["a walk by the river", "Ana", "Is this normal?"];

/// The text of one place of a screen.
type Leaf = (String, String);

/// What is shown in the situations that word most, screen after screen.
fn shown(language: &Language) -> Vec<Leaf> {
    let mut home = Home::new(START);
    let settings = Settings {
        language: Line::new(language.tag).ok(),
        numbers_open: true,
        ..Settings::default()
    };
    home.tell(Told::Settings(settings));
    assert_eq!(home.companion.words().language().tag, language.tag);
    let mut said = Vec::new();
    look("no plan", &mut home, &mut said);
    home.tell(Told::unsigned(PLAN));
    look("plan not confirmed", &mut home, &mut said);
    home.tell(Told::ConfirmStep);
    look("first day", &mut home, &mut said);
    for _ in 0..3 {
        home.pass(DAY);
        home.tell(Told::Session(session(140, 8, Some(2))));
    }
    home.tell(Told::LookForward(Passage::new(OWN[0]).unwrap()));
    home.tell(Told::Question(Passage::new(OWN[2]).unwrap()));
    home.tell(Told::FeelsReady(FeelsReady::Yes));
    look("ready", &mut home, &mut said);
    home.pass(DAY);
    home.tell(Told::Session(session(140, 8, None)));
    home.tell(Told::Session(stopped(145, 1, Reason::Upset)));
    look("unrated and stopped", &mut home, &mut said);
    home.tell(Told::Signs { signs: vec![Sign::SeverePain, Sign::Fever], note: None });
    look("signs", &mut home, &mut said);
    home.pass(40 * DAY);
    look("long after", &mut home, &mut said);
    said
}

fn look(situation: &str, home: &mut Home, said: &mut Vec<Leaf>) {
    let id = home.companion.entries().unwrap().last().map(|entry| entry.id);
    let mut requests = vec![
        ("today", Request::Today),
        ("log", Request::LogSession),
        ("plan", Request::Plan),
        ("ladder", Request::Ladder),
        ("suggestion", Request::Suggestion),
        ("signs", Request::Signs),
        ("stop and call", Request::StopAndCall),
        ("spoke", Request::Spoke),
        ("entries", Request::Entries),
        ("keeping", Request::Keeping),
        ("erase all", Request::EraseAll),
        ("home", Request::Home),
        ("practices", Request::Practices),
        ("breathing", Request::Breathing),
        ("begin", Request::Begin(Begin::Step)),
        ("practice", Request::Practice),
        ("begin part", Request::During(Event::Begin { part: 0 })),
        ("stop", Request::During(Event::Stop)),
        ("rate", Request::Rate),
        ("as planned", Request::LogAsPlanned),
        ("screening", Request::Screening { so_far: FullList::default(), sent: true }),
        ("hold questions", Request::HoldQuestions),
        ("accept", Request::Accept(Handed::text(PLAN))),
        ("step check", Request::StepCheck),
        ("reminders", Request::Reminders),
        ("more", Request::More),
        ("calendar", Request::Calendar { month: None }),
        ("day", Request::Day(home.moment.now.day())),
        ("questions", Request::Questions),
        ("activities", Request::Activities),
        ("time off", Request::TimeOff),
        ("look forward", Request::LookForward),
        ("ready", Request::Ready),
        ("ending", Request::Ending),
        ("settings", Request::Settings),
        ("summary", Request::Summary(Selection::default())),
    ];
    requests.extend(FirstRunPage::ALL.map(|page| ("first run", Request::FirstRun(page))));
    for covered in [false, true] {
        let covered = Covered {
            screen: covered,
            pictures: covered,
            keyboard: covered,
            backups: covered,
            reminders: covered,
            leaves: covered,
        };
        requests.push(("shows", Request::Shows(covered)));
    }
    if let Some(id) = id {
        requests.push(("entry", Request::Entry(id)));
        requests.push(("correct", Request::Correct(id)));
        requests.push(("settled", Request::Settled(id)));
    }
    for (name, request) in requests {
        // Some situations have no such screen; what is said instead is a screen's words too.
        let (name, screen) =
            (format!("{situation}, {name}"), home.companion.ask(request, &home.moment));
        match screen {
            Ok(answer) => leaves(&name, &serde_json::to_value(answer.screen).unwrap(), said),
            Err(trouble) => said.push((name, trouble.say(home.companion.words()))),
        }
    }
}

/// Every text of a screen with its place.
fn leaves(place: &str, value: &serde_json::Value, found: &mut Vec<Leaf>) {
    match value {
        serde_json::Value::String(text) => found.push((place.to_owned(), text.clone())),
        serde_json::Value::Array(items) => {
            for (at, item) in items.iter().enumerate() {
                leaves(&format!("{place}/{at}"), item, found);
            }
        }
        serde_json::Value::Object(fields) => {
            for (name, field) in fields {
                leaves(&format!("{place}/{name}"), field, found);
            }
        }
        _ => {}
    }
}

/// Names and numbers for machines: ids, tags, times, what a button does.
fn is_for_machines(text: &str) -> bool {
    !text.chars().any(char::is_alphabetic)
        || text
            .chars()
            .all(|one| one.is_ascii_lowercase() || one.is_ascii_digit() || "_-".contains(one))
        || text.parse::<frond_core::moment::Stamp>().is_ok()
}

#[test]
fn each_screen_is_worded_to_the_end_in_each_language() {
    let english = shown(Words::for_language("en").language());
    assert!(english.len() > 500, "{} texts: are the screens shown?", english.len());
    for language in Words::offered(false) {
        let said = shown(language);
        let places =
            |said: &[Leaf]| said.iter().map(|(place, _)| place.clone()).collect::<Vec<_>>();
        assert_eq!(places(&said), places(&english), "{}", language.tag);
        for (place, text) in &said {
            // A value that is missing stands in braces; a message that is missing is its id.
            assert!(!text.contains('{'), "{} {place}: {text}", language.tag);
            let id = is_for_machines(text)
                && text.contains('-')
                && text.chars().any(char::is_alphabetic);
            assert!(!id || !place.ends_with("label"), "{} {place}: {text}", language.tag);
        }
    }
}

/// What stays the same in the language that changes every letter was not said by a message.
#[test]
fn each_word_on_a_screen_comes_from_a_message_the_plan_or_the_person() {
    let mut own: Vec<String> = OWN.iter().map(|one| (*one).to_owned()).collect();
    let plan: serde_json::Value = serde_json::from_str(PLAN).unwrap();
    let mut of_plan = Vec::new();
    leaves("", &plan, &mut of_plan);
    own.extend(of_plan.into_iter().map(|(_, text)| text));
    let english = shown(Words::for_language("en").language());
    let longer = shown(Words::for_language("en-XA").language());
    let (mut changed, mut unsaid) = (0, Vec::new());
    for ((place, english), (_, longer)) in english.iter().zip(&longer) {
        changed += usize::from(english != longer);
        // Today's tag of the language itself differs too.
        // Each language is named in itself.
        let name = place.contains("/languages/");
        let same = english == longer && !is_for_machines(english) && !own.contains(english);
        if same && !name {
            unsaid.push(format!("{place}: {english:?}"));
        }
    }
    assert!(unsaid.is_empty(), "said by no message:\n{}", unsaid.join("\n"));
    assert!(changed > 300, "{changed}");
}

/// A right-to-left surface gets each value between its own marks.
#[test]
fn a_surface_that_wants_it_gets_every_value_isolated() {
    let mirrored = Words::for_language("ar-XB").language();
    assert_eq!(mirrored.direction, Direction::RightToLeft);
    let mut home = Home::with_plan(START);
    let settings =
        Settings { language: Line::new("ar-XB").ok(), numbers_open: true, ..Settings::default() };
    home.companion.isolate_values(Isolation::InRightToLeft);
    home.tell(Told::Settings(settings));
    home.tell(Told::Signs { signs: vec![Sign::SeverePain], note: None });
    let screen = home.json(Request::StopAndCall).to_string();
    assert!(screen.matches('\u{2068}').count() > 2, "{screen}");
    assert_eq!(screen.matches('\u{2068}').count(), screen.matches('\u{2069}').count());
    let mut plain = Home::with_plan(START);
    plain.tell(Told::Signs { signs: vec![Sign::SeverePain], note: None });
    assert!(!plain.json(Request::StopAndCall).to_string().contains('\u{2068}'));
}

#[test]
fn dates_sizes_and_plurals_follow_the_language() {
    let spanish = shown(Words::for_language("es").language());
    let has = |part: &str| spanish.iter().any(|(_, text)| text.contains(part));
    assert!(has("14 mm"), "a whole size");
    assert!(has("14,5 mm"), "a decimal comma");
    assert!(!spanish.iter().any(|(_, text)| text.contains("14.5 mm")));
    assert!(has("lunes 2 de marzo de 2026"), "a date");
}
