//! Kaplan and Meier's estimate of how long people stay on a step, from times of which some were not seen
//! to their end.

use serde::Serialize;

use super::distribution::normal_width;
use super::proportion::Interval;

/// Below so many people no curve is shown: common practice, no source.
pub const LEAST_PEOPLE: usize = 10;

/// How near a share must be to a half to count as having reached it: rounding only.
const ROUNDING: f64 = 1e-9;

/// One person's time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Followed {
    /// Days from the beginning to the end, or to when it was last looked at.
    pub days: u32,
    /// Whether its end was seen. Otherwise the time is censored: it lasted at least so long.
    pub ended: bool,
}

/// The estimate from one day on.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SurvivalPoint {
    /// The day, counted from the beginning.
    pub days: u32,
    /// People still followed just before it.
    pub at_risk: u64,
    /// Whose time ended on it.
    pub ended: u64,
    /// Whose time is not known beyond it.
    pub censored: u64,
    /// The estimated share whose time lasts longer than this, 0 to 1; it never rises.
    pub lasting: f64,
    /// Its interval at the level asked for; absent where the share is 0 or 1, where this way gives none.
    pub interval: Option<Interval>,
}

/// The whole estimate.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Survival {
    /// How many people.
    pub people: u64,
    /// How many times were seen to their end.
    pub ended: u64,
    /// A point for each day on which a time ended or was last looked at, in order.
    pub points: Vec<SurvivalPoint>,
    /// The first day from which no more than half of the times last longer; absent where the estimate
    /// never falls so low.
    pub median: Option<u32>,
}

impl Survival {
    /// Of people's times in any order, one a person. Whoever is censored on a day counts as followed on
    /// it. `None` without anybody, or for a level outside 0 to 1. Whether they are enough to be shown is
    /// said by [`LEAST_PEOPLE`].
    ///
    /// Kaplan EL, Meier P (1958). Journal of the American Statistical Association 53:457-481; the variance
    /// is Greenwood's, the interval is made on the scale of log(-log), so that it stays within 0 and 1
    /// (Kalbfleisch JD, Prentice RL (1980). The Statistical Analysis of Failure Time Data). All memory.
    #[must_use]
    pub fn of(times: &[Followed], level: f64) -> Option<Self> {
        let width = normal_width(level)?;
        if times.is_empty() {
            return None;
        }
        let mut sorted = times.to_vec();
        sorted.sort_unstable();
        let people = count(sorted.len());
        let (mut at_risk, mut lasting, mut greenwood) = (people, 1.0_f64, 0.0_f64);
        let (mut points, mut median) = (Vec::new(), None);
        for day in sorted.chunk_by(|one, next| one.days == next.days) {
            let Some(days) = day.first().map(|one| one.days) else { continue };
            let ended = count(day.iter().filter(|one| one.ended).count());
            let left = at_risk - ended;
            lasting *= ratio(left, at_risk);
            greenwood += if left == 0 { 0.0 } else { ratio(ended, at_risk) / whole(left) };
            let interval = (left > 0).then(|| around(lasting, greenwood, width)).flatten();
            let censored = count(day.len()) - ended;
            points.push(SurvivalPoint { days, at_risk, ended, censored, lasting, interval });
            if median.is_none() && lasting <= 0.5 + ROUNDING {
                median = Some(days);
            }
            at_risk = left - censored;
        }
        let ended = points.iter().map(|point| point.ended).sum();
        Some(Self { people, ended, points, median })
    }
}

impl Survival {
    /// What is known at the end of a day: the estimate, its interval, and how many are followed beyond it
    /// or just that long. `None` where nobody was followed so far.
    #[must_use]
    pub fn at(&self, days: u32) -> Option<SurvivalPoint> {
        let at_risk = self.points.iter().find(|point| point.days >= days)?.at_risk;
        let latest = self.points.iter().rfind(|point| point.days <= days);
        let today = latest.filter(|point| point.days == days);
        Some(SurvivalPoint {
            days,
            at_risk,
            ended: today.map_or(0, |point| point.ended),
            censored: today.map_or(0, |point| point.censored),
            lasting: latest.map_or(1.0, |point| point.lasting),
            interval: latest.and_then(|point| point.interval),
        })
    }
}

fn around(lasting: f64, greenwood: f64, width: f64) -> Option<Interval> {
    if lasting <= 0.0 || lasting >= 1.0 {
        return None;
    }
    let log = lasting.ln();
    let middle = (-log).ln();
    let reach = width * greenwood.sqrt() / log.abs();
    let lower = (-(middle + reach).exp()).exp();
    let upper = (-(middle - reach).exp()).exp();
    let fine = lower.is_finite() && upper.is_finite();
    fine.then(|| Interval { lower: lower.clamp(0.0, lasting), upper: upper.clamp(lasting, 1.0) })
}

fn count(number: usize) -> u64 {
    number as u64
}

fn whole(number: u64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "counts of people")]
    let whole = number as f64;
    whole
}

/// People at risk are at least one where this is asked.
fn ratio(some: u64, all: u64) -> f64 {
    whole(some) / whole(all.max(1))
}
