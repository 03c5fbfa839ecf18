//! The moment as a shell knows it. Decides that a zone the core does not know keeps the phone's own offset.

use chrono::{DateTime, FixedOffset};
use frond_core::companion::Trouble;
use frond_core::moment::{Moment as CoreMoment, NamedZone, Stamp, StampError, Uptime};

/// When a request is made: what the phone's clocks say.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Moment {
    /// The wall clock, in milliseconds since 1970-01-01T00:00:00Z.
    pub wall_millis: i64,
    /// The time zone's id, as "Europe/Madrid".
    pub zone: String,
    /// Minutes east of UTC now; used where the zone's id is not known to the core.
    pub offset_minutes: i32,
    /// A number that differs between any two starts of the phone.
    pub boot: u64,
    /// Milliseconds since that start, sleep included.
    pub elapsed_millis: u64,
}

impl Moment {
    /// The same moment as the core has it.
    ///
    /// # Errors
    /// [`Trouble::TryAgain`]: the phone's clock is set to a year before 1970 or after 9999, or the offset is
    /// none.
    pub fn stamped(&self) -> Result<CoreMoment, Trouble> {
        self.read().map_err(|_| Trouble::TryAgain)
    }

    fn read(&self) -> Result<CoreMoment, StampError> {
        let now = match self.zone.parse::<NamedZone>() {
            Ok(zone) => {
                let instant = DateTime::from_timestamp_millis(self.wall_millis);
                Stamp::in_zone(instant.ok_or(StampError::OutOfRange)?, zone)?
            }
            Err(_) => {
                let seconds = self.offset_minutes.checked_mul(60).ok_or(StampError::NotATime)?;
                let offset = FixedOffset::east_opt(seconds).ok_or(StampError::NotATime)?;
                Stamp::from_millis(self.wall_millis, offset, None)?
            }
        };
        let uptime = Uptime { boot: self.boot, millis: self.elapsed_millis };
        Ok(CoreMoment { now, uptime: Some(uptime) })
    }
}
