//! Answers the questions of `clinic.sql` without SQL, from the summaries themselves and with the core's own
//! statistics, to be compared with what the engines answer: `cargo run -p frond-tests --example clinic_tables --
//! FOLDER`, a folder of open summaries, one a diary. Prints JSON: each view with its rows.

use std::collections::{BTreeMap, BTreeSet};
use std::error::Error;
use std::fs;
use std::path::PathBuf;

use frond_core::insight::{Practised, Spread};
use frond_core::programme::plan::Schedule;
use frond_core::programme::values::Count;
use frond_core::summary::fhir::Texts;
use frond_core::summary::flat::{Flat, Session, Step, With};
use frond_core::summary::open_summary;
use serde_json::{Value, json};

/// Programme, revision, step.
type Key = (String, u32, String);

#[derive(Default)]
struct OnStep {
    diaries: BTreeSet<String>,
    times: u64,
    practised: [u64; 6],
    peaks: Vec<Option<u8>>,
    stops: [u64; 8],
    moves: [u64; 4],
    up_days: Vec<u64>,
    weeks: BTreeMap<i64, [u64; 6]>,
}

fn main() -> Result<(), Box<dyn Error>> {
    let folder = PathBuf::from(std::env::args().nth(1).ok_or("which folder?")?);
    let mut files: Vec<PathBuf> = fs::read_dir(folder)?
        .map(|entry| entry.map(|entry| entry.path()))
        .collect::<Result<_, _>>()?;
    files.sort();
    let mut steps: BTreeMap<Key, OnStep> = BTreeMap::new();
    let mut signs: BTreeMap<&'static str, (u64, BTreeSet<String>, u64, u64)> = BTreeMap::new();
    let mut kept = [0_u64; 6];
    for file in files {
        let received = open_summary(&fs::read(file)?, None)?;
        let flat = Flat::of(&received.summary, With { texts: Texts::LeftOut, nickname: false })?;
        for step in &flat.steps {
            one_step(&mut steps, step, &flat);
        }
        for session in &flat.sessions {
            one_session(&mut steps, session);
        }
        for sign in &flat.signs {
            let row = signs.entry(sign.tier).or_default();
            row.0 += 1;
            row.1.insert(sign.diary.clone());
            row.2 += u64::from(sign.with_session);
            row.3 += u64::from(sign.open);
        }
        let marks = &received.summary.marks;
        let present = &received.summary.present;
        let counts = [
            true,
            received.summary.narrowed.is_narrowed(),
            marks.missing_entries > 0,
            marks.restored > 0,
            present.pause.is_some(),
            !present.open_signs.is_empty(),
        ];
        for (total, count) in kept.iter_mut().zip(counts) {
            *total += u64::from(count);
        }
    }
    println!("{}", tables(&steps, &signs, kept));
    Ok(())
}

fn one_step(steps: &mut BTreeMap<Key, OnStep>, step: &Step, flat: &Flat) {
    let row = steps.entry((step.programme.clone(), step.revision, step.step.clone())).or_default();
    row.diaries.insert(step.diary.clone());
    row.times += 1;
    let day = |text: &str| text.parse::<chrono::NaiveDate>().expect("a day");
    let span = (day(&step.first_day), day(&step.last_day));
    let of = |session: &&Session| session.of_step && session.stretch == Some(step.stretch);
    let sat: Vec<chrono::NaiveDate> = flat
        .sessions
        .iter()
        .filter(of)
        .filter_map(|session| session.counts_on.as_deref().map(day))
        .collect();
    let off: Vec<(chrono::NaiveDate, chrono::NaiveDate)> = span
        .0
        .iter_days()
        .take(usize::try_from(step.days_off).expect("few"))
        .map(|day| (day, day))
        .collect();
    let count = |number: u16| Count::new(u64::from(number)).expect("a count");
    let schedule = Schedule {
        weekly_least: count(step.weekly_least),
        weekly_most: count(step.weekly_most),
        daily_most: count(1),
        rest_days: None,
    };
    // Which days were off does not matter here, only how many.
    let found = Practised::of(&sat, span, &off, &schedule);
    let wide = |number: usize| u64::try_from(number).expect("few");
    let practised = [
        u64::from(found.span),
        u64::from(found.off),
        u64::from(found.planned_least),
        u64::from(found.planned_most),
        wide(found.sessions),
        wide(found.days),
    ];
    for (total, one) in row.practised.iter_mut().zip(practised) {
        *total += one;
    }
    let left = match step.left_for {
        Some("up") => 0,
        Some("back") => 1,
        Some(_) => 2,
        None => 3,
    };
    row.moves[left] += 1;
    if left == 0 && step.began_shown {
        row.up_days.push(step.days);
    }
    for week in flat.weeks.iter().filter(|week| week.stretch == step.stretch) {
        let in_week = |session: &&Session| of(session) && session.week == Some(week.week);
        let days: BTreeSet<&str> = flat
            .sessions
            .iter()
            .filter(in_week)
            .filter_map(|session| session.counts_on.as_deref())
            .collect();
        let open = week.days - week.days_off;
        let counts = [
            1,
            open,
            u64::from(week.weekly_least) * open,
            u64::from(week.weekly_most) * open,
            wide(flat.sessions.iter().filter(in_week).count()),
            wide(days.len()),
        ];
        let total = row.weeks.entry(week.week).or_default();
        for (total, one) in total.iter_mut().zip(counts) {
            *total += one;
        }
    }
}

fn one_session(steps: &mut BTreeMap<Key, OnStep>, session: &Session) {
    let (Some(programme), Some(revision), Some(step), Some(_)) =
        (&session.programme, session.revision, &session.step, session.stretch)
    else {
        return;
    };
    let row = steps.entry((programme.clone(), revision, step.clone())).or_default();
    if session.on_step {
        row.peaks.push(session.peak);
    }
    if session.of_step {
        let why = |reason| session.reason == Some(reason);
        let counts = [
            true,
            session.ended == "stopped",
            session.ended == "could_not_start",
            why("discomfort"),
            why("did_not_go_in"),
            why("upset"),
            why("interrupted"),
            why("other"),
        ];
        for (total, count) in row.stops.iter_mut().zip(counts) {
            *total += u64::from(count);
        }
    }
}

/// Linear between the closest ranks, as the core's own quantiles of ratings are.
fn linear(sorted: &[u64], p: f64) -> f64 {
    let rank = (sorted.len() - 1) as f64 * p;
    let below = rank.floor() as usize;
    let (low, high) = (sorted[below] as f64, sorted[(below + 1).min(sorted.len() - 1)] as f64);
    low + (rank - rank.floor()) * (high - low)
}

fn tables(
    steps: &BTreeMap<Key, OnStep>,
    signs: &BTreeMap<&'static str, (u64, BTreeSet<String>, u64, u64)>,
    kept: [u64; 6],
) -> Value {
    let mut views: BTreeMap<&str, Vec<Value>> = BTreeMap::new();
    for ((programme, revision, step), row) in steps {
        let mut add = |view, cells: Vec<Value>| {
            let key = vec![json!(programme), json!(revision), json!(step)];
            let row: Vec<Value> = key.into_iter().chain(cells).collect();
            views.entry(view).or_default().push(json!(row));
        };
        let numbers = |numbers: &[u64]| numbers.iter().map(|one| json!(one)).collect::<Vec<_>>();
        if row.times > 0 {
            let mut cells = vec![json!(row.diaries.len()), json!(row.times)];
            cells.extend(numbers(&row.practised));
            add("practised", cells);
            add("moves", numbers(&row.moves));
        }
        for (week, counts) in &row.weeks {
            let [weeks, days, least, most, sessions, practised] = *counts;
            let planned = |sevenths: u64| sevenths as f64 / 7.0;
            add(
                "practised_by_week",
                vec![
                    json!(week),
                    json!(weeks),
                    json!(days),
                    json!(planned(least)),
                    json!(planned(most)),
                    json!(sessions),
                    json!(practised),
                ],
            );
        }
        if !row.peaks.is_empty() {
            let (all, rated) = (row.peaks.len(), row.peaks.iter().flatten().count());
            let spread = Spread::of(&row.peaks);
            let of = |value: fn(&Spread) -> f64| spread.as_ref().map(value);
            add(
                "discomfort",
                vec![
                    json!(all),
                    json!(rated),
                    json!((all - rated) as f64 / all as f64),
                    json!(spread.as_ref().map(|one| one.least)),
                    json!(of(|one| one.lower)),
                    json!(of(|one| one.median)),
                    json!(of(|one| one.upper)),
                    json!(spread.as_ref().map(|one| one.most)),
                ],
            );
        }
        if row.stops[0] > 0 {
            add("stops", numbers(&row.stops));
        }
        if !row.up_days.is_empty() {
            let mut days = row.up_days.clone();
            days.sort_unstable();
            let at = |p| json!(linear(&days, p));
            add(
                "days_before_going_up",
                vec![
                    json!(days.len()),
                    json!(days.iter().min()),
                    at(0.25),
                    at(0.5),
                    at(0.75),
                    json!(days.iter().max()),
                ],
            );
        }
    }
    let tiers = signs.iter().map(|(tier, (noted, diaries, with, open))| {
        json!([tier, noted, diaries.len(), with, open])
    });
    views.insert("signs_by_tier", tiers.collect());
    views.insert("kept", vec![json!(kept)]);
    json!(views)
}
