//! When the questions are asked; that nothing is preset and "not sure" counts.

use crate::safety::*;
use crate::words::Words;

const NOW: Revision<'static> = Revision { programme: "p", number: 2 };

fn screening(asked: Option<Asked<'static>>) -> Screening<'static> {
    Screening {
        accepted: Some(NOW),
        asked,
        days_since_session: Some(1),
        gap_days: Some(14),
        every_days: Some(28),
    }
}

fn asked(accepted: Option<Revision<'static>>, days_ago: u32) -> Option<Asked<'static>> {
    Some(Asked { accepted, days_ago })
}

#[test]
fn the_full_list_is_due_at_a_new_programme_or_revision() {
    assert_eq!(screening(None).due(), Some(Why::NewProgramme));
    assert_eq!(screening(asked(None, 0)).due(), Some(Why::NewProgramme));
    let other = Revision { programme: "q", number: 2 };
    assert_eq!(screening(asked(Some(other), 0)).due(), Some(Why::NewProgramme));
    let earlier = Revision { programme: "p", number: 1 };
    assert_eq!(screening(asked(Some(earlier), 0)).due(), Some(Why::NewRevision));
    assert_eq!(screening(asked(Some(NOW), 0)).due(), None);
}

#[test]
fn the_full_list_is_due_by_the_clinicians_interval() {
    assert_eq!(screening(asked(Some(NOW), 27)).due(), None);
    assert_eq!(screening(asked(Some(NOW), 28)).due(), Some(Why::Interval));
    assert_eq!(screening(asked(Some(NOW), u32::MAX)).due(), Some(Why::Interval));
    let without = Screening { every_days: None, ..screening(asked(Some(NOW), 400)) };
    assert_eq!(without.due(), None);
}

/// Day by day: last session on day 0, a gap from day 14 on, the list answered on one of the days.
#[test]
fn the_full_list_is_due_once_after_a_gap() {
    for today in 0..40u32 {
        for answered in 0..=today {
            let facts = Screening {
                days_since_session: Some(today),
                every_days: None,
                ..screening(asked(Some(NOW), today - answered))
            };
            let expected = today >= 14 && answered < 14;
            assert_eq!(facts.due(), expected.then_some(Why::Gap), "{today} {answered}");
        }
        let before =
            Screening { days_since_session: Some(today), ..screening(asked(Some(NOW), today + 5)) };
        assert_eq!(before.due() == Some(Why::Gap), today >= 14, "{today}");
    }
    let none = Screening {
        gap_days: None,
        days_since_session: Some(99),
        ..screening(asked(Some(NOW), 0))
    };
    assert_eq!(none.due(), None);
    let unpractised = Screening { days_since_session: None, ..screening(asked(Some(NOW), 0)) };
    assert_eq!(unpractised.due(), None);
}

#[test]
fn without_a_programme_nothing_is_asked_by_itself() {
    let facts = Screening { accepted: None, days_since_session: Some(99), ..screening(None) };
    assert_eq!(facts.due(), None);
}

#[test]
fn the_full_list_starts_without_answers_and_needs_them_all() {
    let mut list = FullList::default();
    assert!(Sign::ALL.iter().all(|sign| list.answered(*sign).is_none()), "nothing is preset");
    assert_eq!(list.signs(), Err(Unanswered { left: 48 }));
    for sign in Sign::asked() {
        list.answer(sign, Answer::No);
    }
    assert_eq!(list.signs(), Ok(vec![]));
}

#[test]
fn not_sure_counts_as_yes() {
    assert_eq!(Answer::ALL.map(Answer::counts), [true, false, true]);
    for unsure in Sign::asked() {
        let mut list = FullList::default();
        for sign in Sign::asked() {
            list.answer(sign, if sign == unsure { Answer::NotSure } else { Answer::No });
        }
        assert_eq!(list.signs(), Ok(vec![unsure]));
    }
}

#[test]
fn a_group_that_is_not_a_plain_no_opens_its_questions() {
    for answer in [Answer::Yes, Answer::NotSure] {
        let mut list = FullList::default();
        for group in SignGroup::ALL {
            list.answer_group(group, Answer::No);
        }
        assert_eq!(list.signs(), Ok(vec![]));
        list.answer_group(SignGroup::Bleeding, answer);
        let open: Vec<SignGroup> = list.open_groups().collect();
        assert_eq!(open, [SignGroup::Bleeding]);
        let left = SignGroup::Bleeding.signs().len();
        assert_eq!(list.signs(), Err(Unanswered { left }));
        for sign in SignGroup::Bleeding.signs() {
            list.answer(sign, Answer::No);
        }
        list.answer(Sign::Spotting, Answer::Yes);
        assert_eq!(list.signs(), Ok(vec![Sign::Spotting]));
    }
}

/// What was answered so far is what is shown again, none of it worked out.
#[test]
fn what_was_answered_is_told_as_it_was() {
    let mut list = FullList::default();
    assert_eq!(list.group(SignGroup::Bleeding), None);
    list.answer_group(SignGroup::Bleeding, Answer::Yes);
    list.answer(Sign::Spotting, Answer::NotSure);
    assert_eq!(list.group(SignGroup::Bleeding), Some(Answer::Yes));
    assert_eq!(list.groups().iter().collect::<Vec<_>>(), [(&SignGroup::Bleeding, &Answer::Yes)]);
    assert_eq!(list.questions().iter().collect::<Vec<_>>(), [(&Sign::Spotting, &Answer::NotSure)]);
}

#[test]
fn a_yes_stands_even_if_its_group_is_answered_no() {
    let mut list = FullList::default();
    list.answer(Sign::Fever, Answer::Yes);
    for group in SignGroup::ALL {
        list.answer_group(group, Answer::No);
    }
    assert_eq!(list.signs(), Ok(vec![Sign::Fever]));
}

#[test]
fn the_erase_mark_cannot_be_reported_through_the_list() {
    let mut list = FullList::default();
    for group in SignGroup::ALL {
        list.answer_group(group, Answer::No);
    }
    list.answer(Sign::ACaution, Answer::Yes);
    assert_eq!(list.signs(), Ok(vec![]));
}

#[test]
fn one_question_before_a_session_with_trainers() {
    use AfterAnythingNew::*;
    assert_eq!(AnythingNew::ALL.map(AnythingNew::then), [Begin, ShowGroups, Leave]);
}

#[test]
fn words_of_the_questions() {
    let words = Words::for_language("en");
    let mut ids = vec![AnythingNew::question_id()];
    ids.extend(AnythingNew::ALL.map(AnythingNew::word_id));
    ids.push(AnythingNew::not_today_id());
    ids.extend([Why::NewProgramme, Why::NewRevision, Why::Gap, Why::Interval].map(Why::word_id));
    ids.extend(AnythingNew::group_ids());
    ids.extend(Answer::ALL.map(Answer::word_id));
    ids.extend(SignGroup::ALL.map(SignGroup::name_id));
    let said: Vec<String> = ids.into_iter().map(|id| words.text(id, &[])).collect();
    insta::assert_snapshot!(said.join("\n"));
}
