//! Reads a diary from JSON lines, one entry a line: the plain form that the command line takes, written
//! by hand or exported. Decides what such a file may hold, strictly, and says of each refusal in which
//! line it is and what to put right; a refusal never repeats what the line holds. Leaves to
//! [`crate::progression`] what the entries mean.
//!
//! Two things may be left out of a line, because a hand has little use for them: `id` (then the number
//! of the line, as 32 hexadecimal digits) and `written` (then the same as `happened`).

use std::collections::HashMap;

use serde::{Deserialize, Serialize};

use super::entry::{Content, Entry, EntryId, UsedPart};
use super::store::ENTRY_MOST;
use crate::moment::{Stamp, Uptime};
use crate::programme::check::load;
use crate::programme::strict::{self, StrictError};
use crate::programme::values::Practice;

/// The most lines of one file. Ten years of three sessions a day are 11,000 entries.
pub const LINES_MOST: usize = 100_000;

/// Seconds of a day: the most a part can have been practised.
const DAY: u32 = 24 * 60 * 60;

/// Why a file of lines was refused, and where.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("Line {line}: {why}")]
pub struct LineError {
    /// The line, counted from 1.
    pub line: usize,
    /// What is wrong with it.
    pub why: LineWrong,
}

/// What is wrong with a line. Nothing here holds what stands in it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LineWrong {
    /// Not an entry.
    #[error(transparent)]
    Text(StrictError),
    /// Longer than an entry can be.
    #[error("it is longer than {ENTRY_MOST} bytes; shorten it.")]
    TooLong,
    /// More lines than can be read.
    #[error("a file has at most {LINES_MOST} lines; split it.")]
    TooMany,
    /// Another line has the same id.
    #[error("its id is that of line {other} too; give it another, or leave the line out.")]
    SameId {
        /// The earlier line.
        other: usize,
    },
    /// `of` or `shown` names no entry of an earlier line.
    #[error(
        "`{name}` names no entry of an earlier line; correct it, or put the line below that one."
    )]
    NoSuchEntry {
        /// Which value.
        name: &'static str,
    },
    /// "Did it settle?" about something that is no session.
    #[error("`of` names no session; \"did it settle?\" is asked about a session.")]
    NoSession,
    /// A correction of a correction.
    #[error("`of` names a correction; name the entry that was first written.")]
    OfACorrection,
    /// A correction or strike of a machine's mark.
    #[error("`of` names a mark that Frond writes itself; such a mark cannot be changed.")]
    OfAMark,
    /// A correction of another kind.
    #[error("a correction is of the same kind as what it corrects; strike that one instead.")]
    OtherKind,
    /// Parts of a session.
    #[error("a session has 1 to 6 parts of up to 86400 seconds each; correct `parts`.")]
    Parts,
    /// A trainer session without a size.
    #[error("a trainer session says the size of each part; add `widest_diameter_tenths_mm`.")]
    SizeMissing,
    /// A report without a sign.
    #[error("`signs` is empty; name at least one.")]
    NoSign,
    /// Days off that end before they begin.
    #[error("`to` lies before `from`; correct one of them.")]
    EndBeforeStart,
    /// The programme carried cannot be used.
    #[error("the programme in `carried` cannot be used: {0}")]
    Programme(String),
    /// The programme carried is another one.
    #[error(
        "`programme` and `revision` are not those of the programme in `carried`; correct them."
    )]
    OtherProgramme,
}

/// An entry as a line has it.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    id: Option<EntryId>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    written: Option<Stamp>,
    happened: Stamp,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    uptime: Option<Uptime>,
    what: Content,
}

/// Reads the entries of a file, in the order of its lines. Blank lines are passed over.
///
/// # Errors
/// [`LineError`] for the first line that cannot be read.
pub fn read(text: &[u8]) -> Result<Vec<Entry>, LineError> {
    let mut reader = Reader::default();
    for (index, line) in text.split(|byte| *byte == b'\n').enumerate() {
        let number = index + 1;
        reader.line(number, line).map_err(|why| LineError { line: number, why })?;
    }
    Ok(reader.entries)
}

/// Writes entries as such lines, each ended by a line break.
///
/// # Errors
/// Only if the encoding itself fails.
pub fn write(entries: &[Entry]) -> Result<String, serde_json::Error> {
    let mut text = String::new();
    for entry in entries {
        text.push_str(&serde_json::to_string(entry)?);
        text.push('\n');
    }
    Ok(text)
}

#[derive(Default)]
struct Reader {
    entries: Vec<Entry>,
    /// Line and index of each entry.
    known: HashMap<EntryId, (usize, usize)>,
    /// Entries are known to be missing, so a name may rightly lead nowhere.
    holes: bool,
}

impl Reader {
    fn line(&mut self, number: usize, line: &[u8]) -> Result<(), LineWrong> {
        if line.iter().all(u8::is_ascii_whitespace) {
            return Ok(());
        }
        if number > LINES_MOST {
            return Err(LineWrong::TooMany);
        }
        if line.len() > ENTRY_MOST {
            return Err(LineWrong::TooLong);
        }
        let told: Written = strict::from_slice(line, ENTRY_MOST)
            .map_err(|error| LineWrong::Text(at_line(error, number)))?;
        let id = told.id.unwrap_or_else(|| EntryId((number as u128).to_be_bytes()));
        if let Some((other, _)) = self.known.get(&id) {
            return Err(LineWrong::SameId { other: *other });
        }
        self.check(&told.what)?;
        self.holes |= matches!(told.what, Content::MissingMark { .. });
        self.known.insert(id, (number, self.entries.len()));
        self.entries.push(Entry {
            id,
            written: told.written.unwrap_or(told.happened),
            happened: told.happened,
            uptime: told.uptime,
            what: told.what,
        });
        Ok(())
    }

    fn earlier(&self, id: EntryId, name: &'static str) -> Result<Option<&Entry>, LineWrong> {
        let entry = self.known.get(&id).and_then(|(_, index)| self.entries.get(*index));
        if entry.is_none() && !self.holes {
            return Err(LineWrong::NoSuchEntry { name });
        }
        Ok(entry)
    }

    fn check(&self, what: &Content) -> Result<(), LineWrong> {
        match what {
            Content::Session(session) => {
                let fits = |part: &UsedPart| part.practised_seconds <= DAY;
                if !(1..=6).contains(&session.parts.len()) || !session.parts.iter().all(fits) {
                    return Err(LineWrong::Parts);
                }
                let sized = |part: &UsedPart| part.widest_diameter_tenths_mm.is_some();
                if session.practice == Practice::Trainer && !session.parts.iter().all(sized) {
                    return Err(LineWrong::SizeMissing);
                }
            }
            Content::SignReported { signs, .. } if signs.is_empty() => {
                return Err(LineWrong::NoSign);
            }
            Content::TimeOff { from, to } if to < from => return Err(LineWrong::EndBeforeStart),
            Content::SuggestionAnswered { shown, .. } => {
                self.earlier(*shown, "shown")?;
            }
            Content::Settled { of, .. } => {
                let session = self.earlier(*of, "of")?;
                if session.is_some_and(|session| !matches!(session.what, Content::Session(_))) {
                    return Err(LineWrong::NoSession);
                }
            }
            Content::Strike { of } => {
                let first = self.earlier(*of, "of")?;
                if first.is_some_and(|first| !first.what.is_persons()) {
                    return Err(LineWrong::OfAMark);
                }
            }
            Content::Correction { of, content } => {
                if let Some(first) = self.earlier(*of, "of")? {
                    if matches!(first.what, Content::Correction { .. }) {
                        return Err(LineWrong::OfACorrection);
                    }
                    if !first.what.is_persons() {
                        return Err(LineWrong::OfAMark);
                    }
                    let kind = std::mem::discriminant::<Content>;
                    if kind(&first.what) != kind(content) {
                        return Err(LineWrong::OtherKind);
                    }
                }
                self.check(content)?;
            }
            Content::ProgrammeAccepted { programme, revision, carried, .. } => {
                let (plan, _) = load(carried.as_bytes())
                    .map_err(|error| LineWrong::Programme(error.to_string()))?;
                if plan.id != *programme || plan.revision != *revision {
                    return Err(LineWrong::OtherProgramme);
                }
            }
            _ => {}
        }
        Ok(())
    }
}

/// The places in a refusal, counted in the file and not in the line.
fn at_line(mut error: StrictError, number: usize) -> StrictError {
    match &mut error {
        StrictError::NotUtf8 { at }
        | StrictError::ByteOrderMark { at }
        | StrictError::Syntax { at, .. }
        | StrictError::Trailing { at }
        | StrictError::TooDeep { at, .. }
        | StrictError::Twice { at, .. } => at.line = number,
        StrictError::TooLong { .. } | StrictError::Value { .. } => {}
    }
    error
}

#[cfg(test)]
mod tests {
    use super::*;

    const TOOK_TIME_OFF: &str = r#"{"happened":"2026-04-03T10:00:00+01:00","what":{"kind":"time_off","from":"2026-04-03","to":"2026-04-06"}}"#;

    fn wrong(text: &str) -> String {
        read(text.as_bytes()).unwrap_err().to_string()
    }

    #[test]
    fn a_line_without_id_and_written_takes_its_number_and_its_happening() {
        let entries = read(format!("\n{TOOK_TIME_OFF}\r\n\n{TOOK_TIME_OFF}").as_bytes()).unwrap();
        assert_eq!(entries.len(), 2);
        assert_eq!(entries[0].id.to_string(), "00000000000000000000000000000002");
        assert_eq!(entries[1].id.to_string(), "00000000000000000000000000000004");
        assert_eq!(entries[0].written, entries[0].happened);
    }

    #[test]
    fn what_was_written_reads_back_the_same() {
        let entries = read(TOOK_TIME_OFF.as_bytes()).unwrap();
        assert_eq!(read(write(&entries).unwrap().as_bytes()).unwrap(), entries);
        assert_eq!(read(b"").unwrap(), []);
    }

    #[test]
    fn every_refusal_names_its_line_and_says_what_to_put_right() {
        let line =
            |what: &str| format!(r#"{{"happened":"2026-04-03T10:00:00+01:00","what":{what}}}"#);
        let session = |parts: &str| {
            line(&format!(
                r#"{{"kind":"session","practice":"trainer","parts":{parts},"position":"on_back","ended":"finished"}}"#
            ))
        };
        let first = "00000000000000000000000000000001";
        let second = "00000000000000000000000000000002";
        let of = |kind: &str, of: &str| {
            let content = r#""content":{"kind":"stay_here","stay":true},"#;
            let content = if kind == "correction" { content } else { "" };
            line(&format!(r#"{{"kind":"{kind}",{content}"of":"{of}"}}"#))
        };
        let clock = line(r#"{"kind":"clock_mark","change":"jumped"}"#);
        let stay = line(r#"{"kind":"stay_here","stay":true}"#);
        let mut said = vec![
            wrong("\n{"),
            wrong("\n\u{feff}{}"),
            wrong(&format!("{stay}\n{stay}{stay}")),
            wrong(&stay.replace(r#""stay":true"#, r#""stay":true,"stay":false"#)),
            wrong(&stay.replace("true", "true,\"why\":\"secret words\"")),
            wrong(&stay.replace("\"happened\":\"2026-04-03T10:00:00+01:00\",", "")),
            wrong(&session("[]")),
            wrong(&session(r#"[{"practised_seconds":300}]"#)),
            wrong(&session(r#"[{"widest_diameter_tenths_mm":150,"practised_seconds":86401}]"#)),
            wrong(&line(r#"{"kind":"sign_reported","signs":[]}"#)),
            wrong(&line(r#"{"kind":"time_off","from":"2026-04-06","to":"2026-04-03"}"#)),
            wrong(&of("strike", second)),
            wrong(&format!("{clock}\n{}", of("strike", first))),
            wrong(&format!("{clock}\n{}", of("correction", first))),
            wrong(&format!("{TOOK_TIME_OFF}\n{}", of("correction", first))),
            wrong(&format!("{stay}\n{}\n{}", of("correction", first), of("correction", second))),
            wrong(&format!("{stay}\n{}", stay.replacen('{', &format!("{{\"id\":\"{first}\","), 1))),
            wrong(&line(
                r#"{"kind":"suggestion_answered","shown":"00000000000000000000000000000009","chosen":"try"}"#,
            )),
            wrong(&format!(
                "{stay}\n{}",
                line(&format!(r#"{{"kind":"settled","of":"{first}","answer":"yes"}}"#))
            )),
            wrong(&line(
                r#"{"kind":"programme_accepted","programme":"p","revision":1,"carried":"{}"}"#,
            )),
        ];
        let long = stay.replace("true", &format!("true{}", " ".repeat(ENTRY_MOST)));
        said.push(wrong(&long));
        assert!(!said.concat().contains("secret"), "nothing is repeated from a line");
        insta::assert_snapshot!(said.join("\n"));
    }

    #[test]
    fn a_name_that_leads_nowhere_is_read_where_entries_are_missing() {
        let missing = r#"{"happened":"2026-04-03T10:00:00+01:00","what":{"kind":"missing_mark","entries":2}}"#;
        let strike = r#"{"happened":"2026-04-03T10:00:00+01:00","what":{"kind":"strike","of":"00000000000000000000000000000009"}}"#;
        assert_eq!(read(format!("{missing}\n{strike}").as_bytes()).unwrap().len(), 2);
    }
}
