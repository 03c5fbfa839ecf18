//! The one place that asks the machine for the time, the zone and the running time.
//!
//! The zone is the one named by `TZ` where that is the name of a zone, else the system's, found by the
//! `iana-time-zone` crate (on Linux: what `/etc/localtime` points to). A zone's name is wanted, not
//! only an offset, so that a diary stays right over a change of summer time. Where neither is known the
//! time is taken in UTC, and said so.

use std::time::{SystemTime, UNIX_EPOCH};

use chrono::{DateTime, Utc};
use frond_core::moment::{Moment, NamedZone, Stamp, Uptime};

use crate::failure::Failure;
use crate::print;

/// Now, as this machine tells it.
///
/// # Errors
/// A clock outside the years 1970 to 9999.
#[allow(clippy::disallowed_methods, reason = "the desk's one look at the clock and at TZ")]
pub(crate) fn now() -> Result<Moment, Failure> {
    let wrong = || Failure::input("The clock of this computer is not set. Set it and try again.");
    let since = SystemTime::now().duration_since(UNIX_EPOCH).map_err(|_| wrong())?;
    let millis = i64::try_from(since.as_millis()).map_err(|_| wrong())?;
    let instant = DateTime::<Utc>::from_timestamp_millis(millis).ok_or_else(wrong)?;
    let named = std::env::var("TZ").ok();
    let zone = zone(named.as_deref(), || iana_time_zone::get_timezone().ok());
    if zone.is_none() {
        print::to_stderr(
            "The time zone of this computer is not known, so UTC is used. Set TZ to a zone such as \
             Europe/London.",
        );
    }
    let now = match zone.or_else(|| "UTC".parse().ok()) {
        Some(zone) => Stamp::in_zone(instant, zone),
        None => Stamp::new(instant.fixed_offset(), None),
    };
    let now = now.map_err(|_| wrong())?;
    Ok(Moment { now, uptime: uptime() })
}

fn zone(named: Option<&str>, system: impl Fn() -> Option<String>) -> Option<NamedZone> {
    let named = named.map(|name| name.trim_start_matches(':')).and_then(|name| name.parse().ok());
    named.or_else(|| system()?.parse().ok())
}

/// Linux tells both; elsewhere a moment has no running time, and the clock is trusted a little less.
fn uptime() -> Option<Uptime> {
    let seconds = std::fs::read_to_string("/proc/uptime").ok()?;
    let boot = std::fs::read_to_string("/proc/sys/kernel/random/boot_id").ok()?;
    read_uptime(&seconds, &boot)
}

fn read_uptime(seconds: &str, boot: &str) -> Option<Uptime> {
    let (whole, hundredths) = seconds.split_whitespace().next()?.split_once('.')?;
    let millis = whole.parse::<u64>().ok()?.checked_mul(1000)?;
    let millis = millis.checked_add(hundredths.get(..2)?.parse::<u64>().ok()? * 10)?;
    let digits: String = boot.chars().filter(char::is_ascii_hexdigit).take(16).collect();
    let boot = u64::from_str_radix(&digits, 16).ok()?;
    Some(Uptime { boot, millis })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_zone_is_that_of_tz_then_the_systems_then_none() {
        let system = || Some("Europe/Madrid".to_owned());
        let [london, madrid]: [Option<NamedZone>; 2] =
            ["Europe/London", "Europe/Madrid"].map(|name| Some(name.parse().unwrap()));
        assert_eq!(zone(Some("Europe/London"), system), london);
        assert_eq!(zone(Some(":Europe/London"), system), london);
        assert_eq!(zone(Some("CET-1CEST"), system), madrid);
        assert_eq!(zone(None, system), madrid);
        assert_eq!(zone(None, || None), None);
    }

    #[test]
    fn running_time_and_boot_are_read_as_linux_writes_them() {
        let boot = "0f3c2a1b-4d5e-6f70-8192-a3b4c5d6e7f8\n";
        let read = read_uptime("3120.47 5100.00\n", boot).unwrap();
        assert_eq!((read.boot, read.millis), (0x0f3c_2a1b_4d5e_6f70, 3_120_470));
        assert_eq!(read_uptime("soon", boot), None);
        assert_eq!(read_uptime("3120.47 1.0", ""), None);
    }
}
