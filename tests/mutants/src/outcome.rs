//! Decides what is said of the whole, and whether it is good enough: a share killed in each room, and a reason written
//! down for every mutant that survives.

use std::collections::{BTreeMap, BTreeSet};

use crate::chase::Fate;
use crate::copy::ROOMS;

/// A mutant with what became of it.
#[derive(Clone, Debug)]
pub struct Line {
    /// Its number in this run.
    pub number: u32,
    /// The room it lies in.
    pub room: &'static str,
    /// `file function: before => after`: how it is called in the list of reasons.
    pub name: String,
    /// Line in the file.
    pub line: usize,
    /// What became of it.
    pub fate: Fate,
}

/// Least share killed in every room, in percent.
pub const LEAST: usize = 95;

#[derive(Default)]
struct Counts {
    mutants: usize,
    not_buildable: usize,
    killed: usize,
    timed_out: usize,
    survived: usize,
}

impl Counts {
    fn of<'l>(lines: impl Iterator<Item = &'l Line>) -> Self {
        let mut counts = Self::default();
        for line in lines {
            counts.mutants += 1;
            match line.fate {
                Fate::NotBuildable => counts.not_buildable += 1,
                Fate::Killed(_) => counts.killed += 1,
                Fate::TimedOut(_) => counts.timed_out += 1,
                Fate::Survived(_) => counts.survived += 1,
            }
        }
        counts
    }

    fn run(&self) -> usize {
        self.mutants - self.not_buildable
    }

    fn noticed(&self) -> usize {
        self.killed + self.timed_out
    }

    fn row(&self, name: &str) -> String {
        // Tenths, cut and not rounded: 94.96 is not 95.
        let tenths = self.noticed() * 1000 / self.run().max(1);
        format!(
            "| {name} | {} | {} | {} | {} | {} | {}.{} % |\n",
            self.mutants,
            self.not_buildable,
            self.killed,
            self.timed_out,
            self.survived,
            tenths / 10,
            tenths % 10
        )
    }
}

/// The table by room.
pub fn table(lines: &[Line]) -> String {
    let mut text = String::from(
        "| room | mutants | not buildable | killed | timed out | survived | killed or timed out of those built |\n\
         |---|---|---|---|---|---|---|\n",
    );
    for room in ROOMS {
        text += &Counts::of(lines.iter().filter(|line| line.room == room)).row(room);
    }
    text + &Counts::of(lines.iter()).row("all")
}

/// The reasons written down: each mutant's name in backquotes at the beginning of a list item, and text behind it.
pub fn reasons(list: &str) -> BTreeMap<String, String> {
    let mut reasons = BTreeMap::new();
    let mut last: Option<String> = None;
    for line in list.lines() {
        if let Some(item) = line.strip_prefix("- ``").and_then(|rest| rest.split_once("``")) {
            let (name, reason) = item;
            reasons.insert(name.to_owned(), reason.trim_start_matches(':').trim().to_owned());
            last = Some(name.to_owned());
        } else if let (Some(reason), true) =
            (last.as_ref().and_then(|name| reasons.get_mut(name)), line.starts_with("  "))
        {
            reason.push(' ');
            reason.push_str(line.trim());
        } else {
            last = None;
        }
    }
    reasons
}

/// What is wrong with the whole; nothing where it is good enough. `rooms` are those that were run whole.
pub fn faults(lines: &[Line], list: &str, rooms: &[&str]) -> Vec<String> {
    let mut faults = Vec::new();
    for room in rooms {
        let counts = Counts::of(lines.iter().filter(|line| line.room == *room));
        if counts.run() == 0 {
            faults.push(format!("{room}: no mutant was run"));
        } else if counts.noticed() * 100 < counts.run() * LEAST {
            faults.push(format!("{room}: fewer than {LEAST} % were killed"));
        }
    }
    let reasons = reasons(list);
    for line in lines.iter().filter(|line| matches!(line.fate, Fate::Survived(_))) {
        if reasons.get(&line.name).is_none_or(String::is_empty) {
            faults.push(format!(
                "survived, and no reason is written down: {} (line {})",
                line.name, line.line
            ));
        }
    }
    let chased: BTreeMap<&str, &Fate> =
        lines.iter().map(|line| (line.name.as_str(), &line.fate)).collect();
    let all: BTreeSet<&str> = reasons.keys().map(String::as_str).collect();
    for name in all {
        match chased.get(name) {
            Some(Fate::Survived(_)) => {}
            Some(_) => {
                faults.push(format!("a reason is written down, and it did not survive: {name}"))
            }
            // With some rooms left out, what lies there was not looked at.
            None if rooms.len() == ROOMS.len() => {
                faults.push(format!(
                    "a reason is written down for what is no mutant any more: {name}"
                ));
            }
            None => {}
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(name: &str, fate: Fate) -> Line {
        Line { number: 1, room: "safety", name: name.to_owned(), line: 3, fate }
    }

    fn killed(count: usize) -> Vec<Line> {
        (0..count).map(|n| line(&format!("k{n}"), Fate::Killed(String::new()))).collect()
    }

    #[test]
    fn the_share_is_of_those_built_and_is_cut() {
        let mut lines = killed(949);
        lines.push(line("t", Fate::TimedOut(String::new())));
        lines.extend((0..50).map(|n| line(&format!("s{n}"), Fate::Survived(2))));
        lines.extend((0..7).map(|n| line(&format!("n{n}"), Fate::NotBuildable)));
        let table = table(&lines);
        assert!(table.contains("| safety | 1007 | 7 | 949 | 1 | 50 | 95.0 % |"), "{table}");
        let list: String = (0..50).map(|n| format!("- ``s{n}``: the same\n")).collect();
        assert_eq!(faults(&lines, &list, &["safety"]), Vec::<String>::new());
        lines.push(line("s50", Fate::Survived(2)));
        let list = list + "- ``s50``: the same\n";
        assert_eq!(faults(&lines, &list, &["safety"]), ["safety: fewer than 95 % were killed"]);
    }

    #[test]
    fn a_survivor_needs_a_reason_and_a_reason_a_survivor() {
        let mut lines = killed(99);
        lines.push(line("f: a || b => a && b", Fate::Survived(1)));
        assert_eq!(faults(&lines, "", &["safety"]).len(), 1);
        assert_eq!(faults(&lines, "- ``f: a || b => a && b``:\n", &["safety"]).len(), 1);
        assert!(faults(&lines, "- ``f: a || b => a && b``:\n  it is\n", &["safety"]).is_empty());
        let more = "- ``f: a || b => a && b``: it is\n- ``k0``: it is\n";
        assert_eq!(faults(&lines, more, &["safety"]).len(), 1);
        let gone = "- ``f: a || b => a && b``: it is\n- ``gone``: it is\n";
        assert_eq!(faults(&lines, gone, &ROOMS).iter().filter(|f| f.contains("gone")).count(), 1);
    }

    #[test]
    fn nothing_run_is_a_fault() {
        assert_eq!(faults(&[], "", &["practice"]), ["practice: no mutant was run"]);
    }
}
