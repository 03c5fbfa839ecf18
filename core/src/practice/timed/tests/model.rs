//! A second opinion on the timer: it steps second by second, knows one flag and one number a part, and
//! shares nothing with the timer but the sentences of `PRACTICE.md`.

use super::super::{Event, SEEN_EVERY_MILLIS};

#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Model {
    parts: Vec<(u64, u64)>,
    sizes: Vec<u16>,
    pub counted: Vec<u64>,
    pub part: usize,
    pub runs: bool,
    pub waits: bool,
    pub over: Option<&'static str>,
    begun: bool,
    /// Seconds that really passed while the clock was running and the part was not over.
    pub real: u64,
}

impl Model {
    pub fn new(parts: &[(u64, u64)]) -> Self {
        Self {
            parts: parts.to_vec(),
            sizes: (0..parts.len()).map(|index| 200 + 20 * index as u16).collect(),
            counted: vec![0; parts.len()],
            part: 0,
            runs: false,
            waits: true,
            over: None,
            begun: false,
            real: 0,
        }
    }

    fn next_part(&mut self) {
        self.runs = false;
        if self.part + 1 < self.parts.len() {
            self.part += 1;
            self.waits = true;
        } else {
            self.over = Some("finished");
        }
    }

    /// So many seconds pass; `noted` of them are certain.
    fn pass(&mut self, seconds: u64, noted: u64) {
        for second in 0..seconds {
            if !self.runs {
                return;
            }
            self.real += 1;
            if second < noted {
                self.counted[self.part] += 1;
                if self.counted[self.part] == self.parts[self.part].1 {
                    self.next_part();
                }
            }
        }
    }

    /// Something happens `seconds` after what happened last.
    pub fn happens(&mut self, event: Event, seconds: u64) {
        self.pass(seconds, seconds);
        if event == Event::Stop {
            self.over = Some("stopped");
            self.runs = false;
        }
        if self.over.is_some() {
            return;
        }
        match event {
            Event::Begin { part } if self.waits && part == self.part => {
                (self.runs, self.waits, self.begun) = (true, false, true);
            }
            Event::Pause => self.runs = false,
            Event::GoOn if !self.waits => self.runs = true,
            Event::Smaller { part, size } if part == self.part && size.get() < self.sizes[part] => {
                let (least, most) = *self.parts.last().unwrap();
                let last = part + 1 == self.parts.len();
                let left = if last { most - self.counted[part] } else { most };
                // A part that has time stays before the new one; any other gives way to it.
                let before = part + usize::from(self.counted[part] > 0);
                if before < 6 {
                    self.parts.splice(before.., [(least.min(left), left)]);
                    self.sizes.splice(before.., [size.get()]);
                    self.counted.splice(before.., [0]);
                    (self.part, self.runs, self.waits) = (before, false, true);
                }
            }
            Event::Enough { part } if part == self.part => {
                let short = self.counted[part] < self.parts[part].0 || !self.begun;
                self.next_part();
                if self.over.is_some() && short {
                    self.over = Some("stopped");
                }
            }
            _ => {}
        }
    }

    /// The process ended at the last event; it is found after `seconds`, and the person goes on.
    pub fn crashes(&mut self, seconds: u64, same_boot: bool) {
        let certain = same_boot && seconds * 1000 <= SEEN_EVERY_MILLIS;
        self.pass(seconds, if certain { seconds } else { 0 });
    }

    pub fn total(&self) -> u64 {
        self.counted.iter().sum()
    }

    pub fn stage(&self) -> &'static str {
        match (self.over, self.runs, self.waits) {
            (Some(over), _, _) => over,
            (None, true, _) => "running",
            (None, false, true) => "ready",
            (None, false, false) => "paused",
        }
    }
}
