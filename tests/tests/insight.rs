//! The clinician's closer look: what the record holds, from how many values on, and in which words; and
//! time on a step over many diaries. All invented.

mod rule_diary;

use frond_core::insight::{Chart, LEAST_CHARTED, LEAST_COMPARED, LEAST_FOR_TREND, LEAST_PEOPLE};
use frond_core::programme::values::{Position, Practice, Size};
use frond_core::screens::{CabinetInsight, InsightAbout, InsightScreen, StretchInsight};
use frond_core::sealing::SigningKey;
use frond_core::summary::{
    DiaryId, DiaryIdentity, Kind, Left, Selection, StepTime, StepTimes, Summary,
};
use frond_core::words::Words;
use frond_tests::lives::Life;
use rule_diary::*;
use serde_json::json;
use zeroize::Zeroizing;

fn identity() -> DiaryIdentity {
    let key = SigningKey::from_seed(&Zeroizing::new([7; 32]));
    DiaryIdentity { id: DiaryId(*b"invented diary 1"), key }
}

fn summary(diary: &Diary, selection: &Selection, day: i64) -> Summary {
    Summary::of(&diary.0, &identity(), selection, &at(day, 20)).unwrap()
}

fn insight(diary: &Diary, day: i64) -> InsightScreen {
    InsightScreen::of(&summary(diary, &Selection::default(), day), &Words::for_language("en"))
        .unwrap()
}

fn rules() -> serde_json::Value {
    json!({"step_back": [{"when": {"criterion": "discomfort_at_least", "rating": "peak",
        "at_least": 10, "window": {"sessions": 3, "of_last": 3}}, "target": "previous"}]})
}

/// A day's session on step `a`, one a day from `from` on.
fn sessions(diary: &mut Diary, from: i64, size: u16, peaks: &[Option<u8>]) {
    for (day, peak) in peaks.iter().enumerate() {
        diary.sit(at(from + day as i64, 18), sit(size, *peak));
    }
}

/// Three weeks on `a` with an unrated session, a day off and another size; a few days on `b`; `a` again.
fn two_times() -> Diary {
    let mut diary = Diary::begun(&programme(1, ladder(), rules()));
    let first: Vec<Option<u8>> =
        [6, 5, 7, 6, 5, 6, 4, 5, 5, 4, 6, 5, 4, 4, 5, 3, 4, 9, 4, 3, 4].map(Some).to_vec();
    sessions(&mut diary, 1, 150, &first);
    diary.sit(at(22, 18), sit(150, None));
    diary.sit(at(23, 18), sit(180, Some(8)));
    diary.say(at(25, 8), to_step("b"));
    sessions(&mut diary, 25, 180, &[Some(7), Some(8), None]);
    diary.say(at(29, 8), to_step("a"));
    sessions(&mut diary, 30, 150, &[Some(4), Some(3), Some(3), Some(2), Some(3)]);
    diary
}

fn about(of: &StretchInsight) -> Vec<InsightAbout> {
    of.parts.iter().map(|part| part.about).collect()
}

#[test]
fn the_closer_look_in_words() {
    for language in ["en", "es"] {
        let all = summary(&two_times(), &Selection::default(), 36);
        let screen = InsightScreen::of(&all, &Words::for_language(language)).unwrap();
        insta::assert_json_snapshot!(format!("insight_screen_{language}"), screen);
    }
}

#[test]
fn counts_come_first_and_each_number_says_what_it_can_bear() {
    let screen = insight(&two_times(), 36);
    assert_eq!(screen.counts.rows.len(), 3);
    assert!(screen.counts.rows.iter().all(|row| row.len() == screen.counts.columns.len()));
    for stretch in &screen.stretches {
        assert_eq!(about(stretch)[0], InsightAbout::Counts);
        for part in &stretch.parts {
            assert_eq!(part.bears.is_none(), part.about == InsightAbout::TooFew);
        }
    }
    use InsightAbout::*;
    assert_eq!(about(&screen.stretches[2]), [Counts, Ratings, Change, Chart, Trend]);
    assert_eq!(about(&screen.stretches[1]), [Counts, Ratings, TooFew]);
    assert_eq!(about(&screen.stretches[0]), [Counts, Ratings, TooFew]);
}

#[test]
fn an_unrated_session_is_a_gap_and_another_size_is_not_counted_among_the_ratings() {
    let screen = insight(&two_times(), 36);
    let first = &screen.stretches[2].numbers;
    assert_eq!(first.practised.sessions, 23, "with another size too");
    assert_eq!(first.sessions.len(), 22);
    assert_eq!(first.sessions.last().unwrap().peak, None);
    let peak = first.peak.unwrap();
    assert_eq!((peak.rated, peak.unrated, peak.least, peak.most), (21, 1, 3, 9));
    let chart = first.chart.unwrap();
    assert!(chart.beyond(9.0) && !chart.beyond(7.0));
}

/// One rating less than the least: nothing is said. With it: something is.
#[test]
fn nothing_is_shown_below_the_least_counts() {
    let with = |count: usize| {
        let mut diary = Diary::begun(&programme(1, ladder(), rules()));
        let peaks: Vec<Option<u8>> = (0..count).map(|n| Some((n % 4) as u8)).collect();
        sessions(&mut diary, 1, 150, &peaks);
        insight(&diary, 40).stretches.remove(0).numbers
    };
    assert_eq!((LEAST_FOR_TREND, LEAST_CHARTED, LEAST_COMPARED), (11, 20, 5));
    assert!(with(10).trend.is_none() && with(11).trend.is_some());
    assert!(with(19).chart.is_none() && with(20).chart.is_some());
    assert!(with(5).change.is_none() && with(6).change.is_some());
    assert!(with(0).peak.is_none());
}

#[test]
fn two_times_on_the_same_step_are_compared_and_no_others() {
    let screen = insight(&two_times(), 36);
    assert_eq!(screen.compared.len(), 1);
    let found = screen.compared[0].numbers.unwrap();
    assert_eq!((found.pairs(), found.later), (105, 5));
    // One 2 and three 3 and one 4 against 21 ratings, of which two are 3 and seven are 4.
    assert_eq!((found.below_all, found.above_all), (1, 0));
    assert_eq!((found.higher, found.equal), (2, 3 * 2 + 7));
    assert!(found.tau() < -0.8, "lower: {}", found.tau());
    // Too few in the later time: counts only.
    let mut diary = two_times();
    diary.0.truncate(diary.0.len() - 1);
    let few = insight(&diary, 36);
    assert!(few.compared[0].numbers.is_none());
    assert!(few.compared[0].part.bears.is_none());
}

/// A new revision ends a stretch. What asks for the same is compared over it; another size is not.
#[test]
fn a_new_revision_begins_afresh_and_another_size_is_another_step() {
    let plan = |revision, size| programme(revision, json!([step("a", size)]), rules());
    for (size, compared) in [(150, 1), (160, 0)] {
        let mut diary = Diary::begun(&plan(1, 150));
        sessions(&mut diary, 1, 150, &[Some(5); 6]);
        diary.say(at(10, 8), accept(&plan(2, size)));
        sessions(&mut diary, 10, size, &[Some(3); 6]);
        let screen = insight(&diary, 20);
        assert_eq!(screen.stretches.len(), 2);
        assert!(screen.stretches.iter().all(|one| one.numbers.peak.unwrap().rated == 6));
        assert_eq!(screen.compared.len(), compared);
    }
}

/// Another programme with the same step id and revision number is another plan.
#[test]
fn another_programme_with_the_same_numbers_begins_afresh() {
    let mut other = programme(1, ladder(), rules());
    other["id"] = json!("another-invented");
    let mut diary = Diary::begun(&programme(1, ladder(), rules()));
    sessions(&mut diary, 1, 150, &[Some(5); 6]);
    diary.say(at(10, 8), accept(&other));
    sessions(&mut diary, 10, 150, &[Some(3); 6]);
    let screen = insight(&diary, 20);
    assert_eq!(screen.stretches.len(), 2);
    assert_eq!(screen.compared.len(), 0);
    let times = StepTimes::of(&summary(&diary, &Selection::default(), 20)).unwrap();
    assert_eq!(times.times[0].left, Left::NewPlan);
}

#[test]
fn an_empty_diary_says_only_what_numbers_can_bear() {
    let screen = insight(&Diary::default(), 1);
    assert!(screen.stretches.is_empty() && screen.compared.is_empty());
    assert!(screen.counts.rows.is_empty());
    assert_eq!(screen.says.len(), 3);
}

/// No number is ever worked out from what is no number, and no limit leaves the scale in words.
#[test]
fn random_diaries_give_whole_records_in_every_language() {
    for seed in 0..300 {
        let life = Life::of_seed(seed);
        let Ok(all) = Summary::of(&life.entries, &identity(), &Selection::default(), &life.now)
        else {
            continue;
        };
        for language in ["en", "es"] {
            let screen = InsightScreen::of(&all, &Words::for_language(language)).unwrap();
            let text = serde_json::to_string(&screen).unwrap();
            for broken in ["NaN", "inf,", "insight-", "{$", "null null"] {
                assert!(!text.contains(broken), "seed {seed}: {broken}");
            }
            for stretch in &screen.stretches {
                if let Some(chart) = &stretch.numbers.chart {
                    assert!(chart.lower <= chart.centre && chart.centre <= chart.upper);
                }
            }
        }
        StepTimes::of(&all).unwrap();
    }
}

#[test]
fn time_on_a_step_ends_where_the_next_begins() {
    let times = StepTimes::of(&summary(&two_times(), &Selection::default(), 36)).unwrap();
    assert!(!times.unsure);
    let seen: Vec<(u32, Left)> = times.times.iter().map(|one| (one.days, one.left)).collect();
    // `a` from day 0 to 25, `b` from 25 to 29; the second time on `a` is not another person's.
    assert_eq!(seen, [(25, Left::ForLater), (4, Left::ForEarlier)]);
    // What lies ahead of the summary's own day, as after a clock that ran ahead, is not counted on.
    let still = StepTimes::of(&summary(&two_times(), &Selection::default(), 24)).unwrap();
    let seen: Vec<(u32, Left)> = still.times.iter().map(|one| (one.days, one.left)).collect();
    assert_eq!(seen, [(24, Left::StillOn)]);
}

#[test]
fn what_narrowing_hides_is_no_time_on_a_step() {
    let whole = two_times();
    // From within the first time on `a`: nobody sees when it began.
    let from = Selection { from: Some(at(10, 0).day()), ..Selection::default() };
    let times = StepTimes::of(&summary(&whole, &from, 36)).unwrap();
    let seen: Vec<(u32, Left)> = times.times.iter().map(|one| (one.days, one.left)).collect();
    assert_eq!(seen, [(4, Left::ForEarlier)]);
    // From within the time on `b`: it stands there from the first day shown, and began nobody sees when.
    let from = Selection { from: Some(at(27, 0).day()), ..Selection::default() };
    let times = StepTimes::of(&summary(&whole, &from, 36)).unwrap();
    assert!(times.times.is_empty());
    // To within the time on `b`: it is not seen to its end.
    let to = Selection { to: Some(at(27, 0).day()), ..Selection::default() };
    let times = StepTimes::of(&summary(&whole, &to, 36)).unwrap();
    let seen: Vec<(u32, Left)> = times.times.iter().map(|one| (one.days, one.left)).collect();
    assert_eq!(seen, [(25, Left::ForLater), (2, Left::StillOn)]);
}

#[test]
fn a_diary_with_missing_entries_tells_no_time() {
    let mut diary = two_times();
    diary.say(at(35, 8), missing());
    let times = StepTimes::of(&summary(&diary, &Selection::default(), 36)).unwrap();
    assert!(times.unsure && times.times.is_empty());
}

fn kind(size: u64) -> Kind {
    Kind {
        practice: Practice::Trainer,
        size: Some(Size::new(size).unwrap()),
        position: Position::OnBack,
    }
}

fn people(times: &[(u32, Left)]) -> Vec<StepTimes> {
    times
        .iter()
        .map(|(days, left)| StepTimes {
            unsure: false,
            times: vec![StepTime { kind: kind(150), days: *days, left: *left }],
        })
        .collect()
}

fn clinic() -> Vec<StepTimes> {
    use Left::*;
    let mut clinic = people(&[
        (7, ForLater),
        (10, ForLater),
        (14, ForLater),
        (14, ForEarlier),
        (18, ForLater),
        (20, NewPlan),
        (21, ForLater),
        (28, ForLater),
        (30, StillOn),
        (35, ForLater),
        (41, ForLater),
        (44, ForLater),
        (60, StillOn),
    ]);
    clinic[0].times.push(StepTime { kind: kind(220), days: 9, left: StillOn });
    clinic.push(StepTimes { unsure: true, times: Vec::new() });
    clinic
}

#[test]
fn time_on_a_step_over_a_clinic_in_words() {
    for language in ["en", "es"] {
        let screen = CabinetInsight::of(&clinic(), &Words::for_language(language));
        insta::assert_json_snapshot!(format!("insight_cabinet_{language}"), screen);
    }
}

#[test]
fn over_a_clinic_order_does_not_matter_and_few_people_give_counts_only() {
    let words = Words::for_language("en");
    let mut turned = clinic();
    turned.reverse();
    assert!(CabinetInsight::of(&clinic(), &words) == CabinetInsight::of(&turned, &words));
    let few: Vec<(u32, Left)> = vec![(5, Left::ForLater); LEAST_PEOPLE - 1];
    let screen = CabinetInsight::of(&people(&few), &words);
    let of = &screen.kinds[0];
    assert!(of.survival.is_none() && of.table.is_none() && of.went_on.is_none());
    assert_eq!((of.people, of.for_later), (9, 9));
    let enough: Vec<(u32, Left)> = vec![(5, Left::ForLater); LEAST_PEOPLE];
    let screen = CabinetInsight::of(&people(&enough), &words);
    assert!(screen.kinds[0].survival.is_some() && screen.kinds[0].went_on.is_some());
    assert!(CabinetInsight::of(&[], &words).kinds.is_empty());
}

/// NIST/SEMATECH e-Handbook 6.3.2.2, through the crate's own door.
#[test]
fn the_chart_is_reached_from_outside() {
    let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    assert!((Chart::of(&rates).unwrap().upper - 55.8041).abs() < 5e-5);
}
