//! Counts of practised days, person by person, for the check on open data: reads lines `id,day number`,
//! writes lines `id,days,span,median_gap,longest_gap`. `fixtures/statistics/open_data.py` compares them.

use std::collections::BTreeMap;
use std::io::Read;

use chrono::{Days, NaiveDate};
use frond_core::insight::{Gaps, Practised};
use frond_core::programme::plan::Schedule;
use frond_core::programme::values::Count;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut text = String::new();
    std::io::stdin().read_to_string(&mut text)?;
    let mut people: BTreeMap<u32, Vec<NaiveDate>> = BTreeMap::new();
    let zero = NaiveDate::from_ymd_opt(2000, 6, 1).ok_or("a day")?;
    for line in text.lines() {
        let (id, day) = line.split_once(',').ok_or("id,day")?;
        // Days before the first of treatment are negative.
        let day = day.parse::<i64>()? + 1000;
        let day = zero.checked_add_days(Days::new(u64::try_from(day)?)).ok_or("a day")?;
        people.entry(id.parse()?).or_default().push(day);
    }
    let daily = Schedule {
        weekly_least: Count::new(7)?,
        weekly_most: Count::new(7)?,
        daily_most: Count::new(1)?,
        rest_days: None,
    };
    println!("id,days,span,median_gap,longest_gap");
    for (id, days) in people {
        let span = days.iter().min().zip(days.iter().max()).map(|(one, other)| (*one, *other));
        let practised = Practised::of(&days, span.ok_or("no day")?, &[], &daily);
        let gaps = Gaps::of(&days).ok_or("one day only")?;
        println!("{id},{},{},{},{}", practised.days, practised.span, gaps.median, gaps.longest);
    }
    Ok(())
}
