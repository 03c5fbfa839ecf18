//! How time goes on in a life: hours pass, and now and then the clock is wrong, the person travels or the
//! device starts anew.

use super::*;

/// Places to be, with their offsets of half and three quarter hours, their days ahead and behind.
const PLACES: [&str; 6] = [
    "2026-03-02T08:00:00+00:00[Europe/London]",
    "2026-03-02T03:00:00-05:00[America/New_York]",
    "2026-03-02T13:45:00+05:45[Asia/Kathmandu]",
    "2026-03-02T22:00:00+14:00[Pacific/Kiritimati]",
    "2026-03-01T21:00:00-11:00[Pacific/Pago_Pago]",
    "2026-03-02T18:30:00+10:30[Australia/Lord_Howe]",
];

impl Life {
    pub(super) fn pass_time(&mut self) {
        let hours = self.dice.pick(&[0i64, 0, 1, 5, 24, 30]);
        self.set_clock(hours * HOUR + 1000);
        if let Some(uptime) = self.moment.uptime.as_mut() {
            uptime.millis = uptime.millis.saturating_add_signed(hours * HOUR + 1000);
        }
        match self.dice.below(50) {
            0..=1 => {
                // The clock alone: by hours, by days, by more than a year, either way.
                let by = self.dice.pick(&[-9600i64, -72, -2, -1, 1, 2, 72, 960]);
                self.set_clock(by * HOUR);
                self.count("clock jumps");
                self.say(&format!("the clock jumps by {by} hours"));
            }
            2..=3 => {
                let place = stamp(self.dice.pick(&PLACES));
                let zone = place.zone().expect("a place has a zone");
                self.moment.now =
                    Stamp::in_zone(self.moment.now.instant(), zone).expect("in range");
                self.count("zone changes");
                self.say("the zone changes");
            }
            4 => {
                if let Some(uptime) = self.moment.uptime.as_mut() {
                    *uptime = Uptime { boot: uptime.boot + 1, millis: 20_000 };
                }
                self.count("device restarts");
                self.say("the device starts anew");
            }
            _ => {}
        }
    }

    /// Sets the clock so many milliseconds on or back, in the zone where it is.
    fn set_clock(&mut self, by: i64) {
        let now = self.moment.now;
        let at = now.millis() + by;
        self.moment.now = match now.zone() {
            Some(zone) => {
                let moved = Stamp::from_millis(at, *now.local().offset(), None).expect("in range");
                Stamp::in_zone(moved.instant(), zone).expect("in range")
            }
            None => Stamp::from_millis(at, *now.local().offset(), None).expect("in range"),
        };
    }
}
