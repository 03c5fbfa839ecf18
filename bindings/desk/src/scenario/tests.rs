//! The scenario against what is common practice in the trade (no source: rules of thumb), and its shape.

use frond_core::programme::check::load;
use frond_core::programme::rule::UpCriterion;
use frond_core::programme::values::Position;

use super::{FIRST, SECOND, days};

#[test]
fn its_numbers_lie_within_common_practice_for_which_there_is_no_source() {
    for text in [FIRST, SECOND] {
        let (plan, warnings) = load(text.as_bytes()).map_err(|e| e.to_string()).unwrap();
        assert_eq!(
            warnings.iter().map(ToString::to_string).collect::<Vec<_>>(),
            Vec::<String>::new()
        );
        for part in plan.steps.iter().flat_map(|step| &step.parts) {
            assert!((5..=15).contains(&part.minutes.least.get()));
            assert!((5..=15).contains(&part.minutes.most.get()));
        }
        // About the diameter of a little finger.
        let first = plan.steps[0].main_size().unwrap().millimetres();
        assert!((10.0..=16.0).contains(&first), "{first}");
        assert_eq!(plan.steps[0].position, Position::OnBack);
        let up = plan.rule.as_ref().unwrap().step_up.as_ref().unwrap();
        let days = up.all_of.iter().find_map(|criterion| match criterion {
            UpCriterion::DaysOnStep { days } => Some(days.get()),
            _ => None,
        });
        assert!((7..=14).contains(&days.unwrap()), "one to two weeks between sizes");
    }
}

#[test]
fn everything_in_it_is_marked_invented_and_no_number_can_reach_anybody() {
    for text in [FIRST, SECOND] {
        let (plan, _) = load(text.as_bytes()).map_err(|e| e.to_string()).unwrap();
        for name in
            [&plan.for_whom, &plan.clinician.name, &plan.clinician.clinic, &plan.contact.name]
        {
            assert!(name.as_str().contains("(invented)"), "{name}");
        }
        // The range Ofcom keeps for drama and fiction.
        for phone in [&plan.contact.phone, plan.out_of_hours.phone.as_ref().unwrap()] {
            assert!(phone.as_str().starts_with("01632 960"), "{phone}");
        }
        assert_eq!(plan.emergency.country.as_str(), "the United Kingdom");
    }
}

#[test]
fn the_second_revision_continues_the_first() {
    let (first, _) = load(FIRST.as_bytes()).map_err(|e| e.to_string()).unwrap();
    let (second, _) = load(SECOND.as_bytes()).map_err(|e| e.to_string()).unwrap();
    assert_eq!(first.id, second.id);
    assert_eq!((first.revision.get(), second.revision.get()), (1, 2));
    for step in &first.steps {
        assert!(second.step(&step.id).unwrap().same_work(step));
    }
}

#[test]
fn the_events_stand_in_order_over_ten_weeks() {
    let events = days::events();
    assert!(events.windows(2).all(|two| two[0].at <= two[1].at));
    assert!(events.first().unwrap().at.starts_with("2026-03-02"));
    assert!(events.last().unwrap().at.starts_with("2026-05-10"));
    assert!(days::every_sentence_is_told());
}
