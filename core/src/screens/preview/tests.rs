//! A month of an invented person under each fixture: the composer's look ahead goes by the diary's own rule.

use super::*;
use crate::companion::Reading;
use crate::programme::fixtures::{ALL, text};
use crate::programme::read::read;

fn programme(start: &str) -> Programme {
    read(text(start).as_bytes()).unwrap()
}

fn english() -> Words {
    Words::for_language("en")
}

/// A preview in words: how she lives, what happened, and each record as a shell gets it.
fn seen(start: &str, ease: Ease, day: u16) -> String {
    let preview = Preview::new(&programme(start), ease, day, &english(), &english()).unwrap();
    let mut lines = preview.how;
    lines.extend(preview.story);
    for one in preview.shown {
        lines.push(format!("== {}", one.when));
        lines.push(serde_json::to_string_pretty(&one.screen).unwrap());
    }
    lines.join("\n")
}

#[test]
fn a_month_of_an_invented_person() {
    insta::assert_snapshot!("graded-easy-30", seen("1-graded", Ease::Easy, 30));
    insta::assert_snapshot!("careful-hard-7", seen("7-very", Ease::Hard, 7));
}

#[test]
fn every_fixture_can_be_looked_at() {
    for (name, text) in ALL {
        let programme = read(text.as_bytes()).unwrap();
        for ease in Ease::ALL {
            for day in [0, 7, 30] {
                let preview = Preview::new(&programme, ease, day, &english(), &english()).unwrap();
                let kinds: Vec<String> = preview
                    .shown
                    .iter()
                    .map(|one| serde_json::to_value(&one.screen).unwrap()["screen"].to_string())
                    .collect();
                let wanted = ["today", "suggestion", "stop_and_call"];
                for kind in wanted {
                    assert!(kinds.contains(&format!("\"{kind}\"")), "{name} {day}: {kind}");
                }
                assert_eq!(kinds.contains(&"\"accept\"".to_owned()), day == 0, "{name}");
                // The same again: nothing depends on a clock or on chance.
                let again = Preview::new(&programme, ease, day, &english(), &english()).unwrap();
                assert_eq!(preview.story, again.story, "{name}");
            }
        }
    }
}

/// What is shown is what her phone would say of the same diary.
#[test]
fn the_suggestion_is_the_one_of_the_diary() {
    let (programme, words) = (programme("1-graded"), english());
    let text: Arc<str> = text_of(&programme).unwrap().into();
    let mut life = Life::new(&programme, Ease::Easy, &words, &words).unwrap();
    life.accept(&text).unwrap();
    for day in 0..20 {
        life.day(day).unwrap();
    }
    let shown = life.screens(20).unwrap();
    let Screen::Suggestion(own) = &shown[1].screen else { panic!("no suggestion") };
    let reading = Reading::new(life.entries.clone(), "en").unwrap();
    let other = reading.suggestion(&life.now);
    assert_eq!((&own.says, &own.whose, own.outcome), (&other.says, &other.whose, other.outcome));
    assert!(own.reasons == other.reasons && own.bars == other.bars);
}

#[test]
fn easy_goes_up_and_hard_comes_back_or_stays() {
    let words = english();
    let easy = Preview::new(&programme("1-graded"), Ease::Easy, 30, &words, &words).unwrap();
    assert!(easy.story.iter().any(|line| line.contains("the next step")), "{:?}", easy.story);
    let hard = Preview::new(&programme("1-graded"), Ease::Hard, 30, &words, &words).unwrap();
    assert!(hard.story.iter().all(|line| !line.contains("the next step")), "{:?}", hard.story);
    let nothing = Preview::new(&programme("3-breathing"), Ease::Easy, 30, &words, &words).unwrap();
    assert_eq!(nothing.story, Vec::<String>::new());
}

/// She keeps to the least of the schedule, to its days of rest and to its most a day.
#[test]
fn she_keeps_to_the_schedule() {
    for (name, text) in ALL {
        let programme = read(text.as_bytes()).unwrap();
        let words = english();
        let text: Arc<str> = text_of(&programme).unwrap().into();
        let mut life = Life::new(&programme, Ease::Between, &words, &words).unwrap();
        life.accept(&text).unwrap();
        for day in 0..28 {
            life.day(day).unwrap();
        }
        for plan in &programme.practices {
            let done = life.entries.iter().filter(|entry| {
                matches!(&entry.what, Content::Session(one) if one.practice == plan.practice)
            });
            let least = usize::from(plan.schedule.weekly_least.get());
            let steps_too = programme.steps.iter().any(|step| step.practice == plan.practice);
            if plan.schedule.rest_days.is_none() && !steps_too {
                assert_eq!(done.count(), 4 * least, "{name}: {}", plan.name);
            }
        }
    }
}
