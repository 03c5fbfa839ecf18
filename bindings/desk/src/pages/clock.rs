//! What time it is for a page server. Decides that a time that was asked for runs on with the time that really
//! passes. Leaves what the machine says to [`crate::clock`].

use chrono::TimeDelta;
use frond_core::moment::{Moment, Stamp};

use crate::clock;
use crate::failure::Failure;

/// The clock of one server.
pub(crate) struct Clock {
    /// The time asked for, and the moment at which it was that time.
    pretended: Option<(Stamp, Moment)>,
}

impl Clock {
    /// The machine's clock, or one that begins at the time asked for.
    ///
    /// # Errors
    /// The machine's clock is not set.
    pub(crate) fn beginning(at: Option<Stamp>) -> Result<Self, Failure> {
        let pretended = at.map(|at| clock::now().map(|real| (at, real))).transpose()?;
        Ok(Self { pretended })
    }

    /// Whether the time is one that was asked for.
    pub(crate) fn is_pretended(&self) -> bool {
        self.pretended.is_some()
    }

    /// Now.
    ///
    /// # Errors
    /// The machine's clock is not set, or the time runs over the year 9999.
    pub(crate) fn now(&self) -> Result<Moment, Failure> {
        let real = clock::now()?;
        match &self.pretended {
            None => Ok(real),
            Some((began, then)) => shifted(began, then, &real),
        }
    }
}

/// The pretended moment: as far from its beginning as the real one is from its own.
fn shifted(began: &Stamp, then: &Moment, real: &Moment) -> Result<Moment, Failure> {
    let passed = match (then.uptime, real.uptime) {
        (Some(then), Some(now)) if then.boot == now.boot => {
            i64::try_from(now.millis.saturating_sub(then.millis)).unwrap_or(i64::MAX)
        }
        _ => real.now.millis().saturating_sub(then.now.millis()),
    };
    let late = || Failure::input("This time is out of reach. Choose one before the year 9999.");
    let millis = began.millis().checked_add(passed).ok_or_else(late)?;
    let now = match began.zone() {
        Some(zone) => began
            .instant()
            .checked_add_signed(TimeDelta::milliseconds(passed))
            .and_then(|instant| Stamp::in_zone(instant, zone).ok()),
        None => Stamp::from_millis(millis, *began.local().offset(), None).ok(),
    };
    Ok(Moment { now: now.ok_or_else(late)?, uptime: real.uptime })
}

#[cfg(test)]
mod tests {
    use frond_core::moment::Uptime;

    use super::*;

    #[test]
    fn a_pretended_time_runs_on_with_the_time_that_passes() {
        let at = |text: &str, millis| Moment {
            now: text.parse().unwrap(),
            uptime: Some(Uptime { boot: 7, millis }),
        };
        let then = at("2026-11-25T10:00:00Z", 5_000);
        // The wall clock was set in between; running time knows better.
        let real = at("2026-11-25T12:00:00Z", 65_000);
        let began = "2026-03-29T00:59:30+00:00[Europe/London]".parse().unwrap();
        let now = shifted(&began, &then, &real).unwrap();
        assert_eq!(now.now.to_string(), "2026-03-29T02:00:30.000+01:00[Europe/London]");
        assert_eq!(now.uptime, real.uptime);
        let began = "2026-05-04T20:00:00-03:00".parse().unwrap();
        let now = shifted(&began, &Moment::at(then.now), &Moment::at(real.now)).unwrap();
        assert_eq!(now.now.to_string(), "2026-05-04T22:00:00.000-03:00");
    }
}
