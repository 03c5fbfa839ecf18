//! "Stop and call": what a person is told when there is a sign, line by line, in a fixed order.
//!
//! This decides which lines there are, their order and their words. Which tier holds is decided by
//! [`super::tier_in_force`], whether a sign is open by the rule engine, and how a line looks by the
//! shell, which keeps the order.
//!
//! Everything is said kindly: no blame, no alarm, stopping is always right. Every screen says that
//! nobody has been told.

use std::fmt;

use serde::Serialize;

use super::contacts::{Contacts, Dial, dialable};
use super::sign::Sign;
use super::tier::Tier;
use crate::words::Words;

/// What the screen is about.
#[derive(Clone, Copy)]
pub struct Call<'a> {
    /// The gravest tier in force among the signs.
    pub tier: Tier,
    /// The open signs. None of them: the clinician's rule has called a pause.
    pub signs: &'a [Sign],
    /// The programme's contacts; none without a programme.
    pub contacts: Option<&'a Contacts>,
    /// When it was, in words that follow "I noticed it": `today at 14:05`. Empty if not known, or
    /// if the sign is a lasting state such as a pregnancy.
    pub when: &'a str,
}

impl fmt::Debug for Call<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Call").finish_non_exhaustive()
    }
}

/// What one line of the screen is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LineKind {
    /// The emergency number, before anything else.
    EmergencyNumberFirst,
    /// Stop now, and how to stop gently.
    StopNow,
    /// Whom to call, when, and what to do if nobody answers.
    WhoToCall,
    /// One sentence to read aloud on the telephone.
    ReadAloud,
    /// Nobody has been told.
    NobodyTold,
    /// What may go on.
    MayContinue,
    /// It was right to stop.
    DidRight,
    /// What to do later: "I spoke with ...".
    Later,
}

/// One line: its purpose, its words, and the numbers that one tap opens.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct Line {
    /// What it is for.
    pub kind: LineKind,
    /// Its words, a paragraph each.
    pub text: Vec<String>,
    /// Numbers to offer below it, in order.
    pub dial: Vec<Dial>,
}

/// The screen's lines, in the order to show and to read them out.
#[derive(Clone, PartialEq, Eq, Serialize)]
pub struct StopAndCall {
    /// The tier it was made for.
    pub tier: Tier,
    /// The lines.
    pub lines: Vec<Line>,
}

// Both say what a person has noticed about her body.
impl fmt::Debug for Line {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Line").finish_non_exhaustive()
    }
}

impl fmt::Debug for StopAndCall {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("StopAndCall").finish_non_exhaustive()
    }
}

impl LineKind {
    /// The lines of a tier, in order.
    pub fn of(tier: Tier) -> &'static [LineKind] {
        use LineKind::*;
        match tier {
            Tier::Emergency => &[
                EmergencyNumberFirst,
                StopNow,
                WhoToCall,
                ReadAloud,
                NobodyTold,
                MayContinue,
                DidRight,
                Later,
            ],
            Tier::Stop | Tier::AskFirst => {
                &[StopNow, WhoToCall, ReadAloud, NobodyTold, MayContinue, DidRight, Later]
            }
            Tier::Note => &[NobodyTold, MayContinue, DidRight],
        }
    }
}

impl StopAndCall {
    /// The screen for `call`, in the language of `words`.
    pub fn new(words: &Words, call: &Call<'_>) -> StopAndCall {
        let say = Say { words, call };
        let lines = LineKind::of(call.tier).iter().map(|kind| say.line(*kind)).collect();
        StopAndCall { tier: call.tier, lines }
    }

    /// The screen where nothing is open and somebody only wants to know whom to call: `whom` in words, with
    /// its numbers. It speaks of no sign and of no pause.
    pub fn whom_only(words: &Words, text: Vec<String>, dial: Vec<Dial>) -> StopAndCall {
        let whom = Line { kind: LineKind::WhoToCall, text, dial };
        let told =
            Line { kind: LineKind::NobodyTold, text: vec![nobody_told(words)], dial: Vec::new() };
        StopAndCall { tier: Tier::Note, lines: vec![whom, told] }
    }

    /// Every number the screen offers, in order.
    pub fn dials(&self) -> impl Iterator<Item = &Dial> {
        self.lines.iter().flat_map(|line| &line.dial)
    }
}

/// "Nobody has been told. Frond sends nothing." For every screen that speaks of a sign.
pub fn nobody_told(words: &Words) -> String {
    words.text("call-nobody-told", &[])
}

/// What may go on while trainers are paused with these signs open, and no emergency among them: quiet breathing;
/// after distress not even that at once.
pub fn while_paused(words: &Words, signs: &[Sign]) -> String {
    if signs.contains(&Sign::Distress) {
        words.text("call-grounding-continues", &[])
    } else {
        words.text("call-breathing-continues", &[])
    }
}

/// Words the lines of one screen.
struct Say<'a> {
    words: &'a Words,
    call: &'a Call<'a>,
}

impl Say<'_> {
    fn line(&self, kind: LineKind) -> Line {
        let (text, dial) = match (kind, self.call.contacts) {
            (LineKind::EmergencyNumberFirst, Some(contacts)) => self.emergency_number(contacts),
            (LineKind::EmergencyNumberFirst, None) => (self.emergency_without_number(), vec![]),
            (LineKind::StopNow, _) => (self.stop_now(), vec![]),
            (LineKind::WhoToCall, Some(contacts)) => self.who_to_call(contacts),
            (LineKind::WhoToCall, None) => (self.who_to_call_without_programme(), vec![]),
            (LineKind::ReadAloud, _) => (vec![self.read_aloud()], vec![]),
            (LineKind::NobodyTold, _) => (vec![nobody_told(self.words)], vec![]),
            (LineKind::MayContinue, _) => (vec![self.may_continue()], vec![]),
            (LineKind::DidRight, _) => (vec![self.did_right()], vec![]),
            (LineKind::Later, _) => (vec![self.words.text("call-later", &[])], vec![]),
        };
        Line { kind, text, dial }
    }

    fn has(&self, sign: Sign) -> bool {
        self.call.signs.contains(&sign)
    }

    fn emergency_number(&self, contacts: &Contacts) -> (Vec<String>, Vec<Dial>) {
        let number = (&contacts.emergency_number).into();
        let country = (&contacts.emergency_country).into();
        let text = vec![
            self.words.text("call-emergency", &[("number", number), ("country", country)]),
            self.words.text("call-emergency-elsewhere", &[]),
        ];
        (text, self.emergency_dial(contacts).into_iter().collect())
    }

    fn emergency_without_number(&self) -> Vec<String> {
        vec![
            self.words.text("call-emergency-unknown", &[]),
            self.words.text("call-emergency-not-guessed", &[]),
        ]
    }

    fn stop_now(&self) -> Vec<String> {
        let mut text = vec![match self.call.tier {
            Tier::Emergency | Tier::Stop => self.words.text("call-stop-now", &[]),
            Tier::AskFirst | Tier::Note => self.words.text("call-pause-now", &[]),
        }];
        if self.has(Sign::TrainerStuckWithPainOrBleeding) || self.has(Sign::CannotBeRemoved) {
            text.push(self.words.text("call-leave-it", &[]));
        }
        if self.has(Sign::ThoughtsOfSelfHarm) || self.has(Sign::DangerAtHome) {
            text.push(self.words.text("call-somewhere-safe", &[]));
        }
        if self.has(Sign::Distress) {
            text.push(self.words.text("call-eyes-open", &[]));
        }
        text
    }

    fn who_to_call(&self, contacts: &Contacts) -> (Vec<String>, Vec<Dial>) {
        let emergency = self.call.tier == Tier::Emergency;
        let mut text = Vec::new();
        if emergency {
            text.push(self.words.text("call-no-answer-emergency", &[]));
        } else if self.call.signs.iter().any(|sign| sign.same_day()) {
            text.push(self.words.text("call-today", &[]));
        }
        let values = [
            ("clinician", (&contacts.clinician).into()),
            ("contact", (&contacts.contact).into()),
            ("hours", (&contacts.hours).into()),
        ];
        text.push(match self.call.tier {
            Tier::Emergency => self.words.text("call-clinician-after", &values),
            Tier::Stop => self.words.text("call-clinician", &values),
            Tier::AskFirst | Tier::Note => self.words.text("call-clinician-ask", &values),
        });
        let out_of_hours = (&contacts.out_of_hours).into();
        text.push(self.words.text("call-out-of-hours", &[("line", out_of_hours)]));
        text.push(match &contacts.if_nobody_answers {
            Some(advice) => self.words.text("call-nobody-answers", &[("advice", advice.into())]),
            None => self.words.text("call-nobody-answers-unsaid", &[]),
        });
        let mut dial = self.contact_dials(contacts);
        if !emergency {
            let number = (&contacts.emergency_number).into();
            let country = (&contacts.emergency_country).into();
            let values = [("number", number), ("country", country)];
            text.push(self.words.text("call-if-worse", &values));
            dial.extend(self.emergency_dial(contacts));
        }
        (text, dial)
    }

    fn who_to_call_without_programme(&self) -> Vec<String> {
        let mut text = Vec::new();
        if self.call.tier == Tier::Emergency {
            text.push(self.words.text("call-no-answer-emergency", &[]));
            text.push(self.words.text("call-own-doctor-after", &[]));
            return text;
        }
        if self.call.signs.iter().any(|sign| sign.same_day()) {
            text.push(self.words.text("call-today", &[]));
        }
        text.push(match self.call.tier {
            Tier::Emergency | Tier::Stop => self.words.text("call-own-doctor", &[]),
            Tier::AskFirst | Tier::Note => self.words.text("call-own-doctor-ask", &[]),
        });
        text.push(self.words.text("call-if-worse-unknown", &[]));
        text
    }

    fn read_aloud(&self) -> String {
        let signs = self.sign_names().into();
        let when = self.call.when.trim();
        let known = !when.is_empty();
        let when = when.into();
        match (self.call.signs.is_empty(), self.call.tier, known) {
            (true, _, _) => self.words.text("call-read-pause", &[]),
            (false, Tier::Emergency, true) => {
                self.words.text("call-read-emergency", &[("signs", signs), ("when", when)])
            }
            (false, Tier::Emergency, false) => {
                self.words.text("call-read-emergency-undated", &[("signs", signs)])
            }
            (false, Tier::Stop, true) => {
                self.words.text("call-read-stop", &[("signs", signs), ("when", when)])
            }
            (false, Tier::Stop, false) => {
                self.words.text("call-read-stop-undated", &[("signs", signs)])
            }
            (false, _, true) => {
                self.words.text("call-read-ask", &[("signs", signs), ("when", when)])
            }
            (false, _, false) => self.words.text("call-read-ask-undated", &[("signs", signs)]),
        }
    }

    /// The signs by name, gravest first, each once.
    fn sign_names(&self) -> String {
        let mut signs = self.call.signs.to_vec();
        signs.sort_by_key(|sign| (std::cmp::Reverse(sign.tier()), *sign));
        signs.dedup();
        let names: Vec<String> =
            signs.iter().map(|sign| self.words.text(sign.name_id(), &[])).collect();
        names.join("; ")
    }

    fn may_continue(&self) -> String {
        match self.call.tier {
            Tier::Emergency => self.words.text("call-nothing-continues", &[]),
            Tier::Stop | Tier::AskFirst => while_paused(self.words, self.call.signs),
            Tier::Note => self.words.text("call-noted", &[]),
        }
    }

    fn did_right(&self) -> String {
        match self.call.tier {
            _ if self.call.signs.is_empty() => self.words.text("call-pause-is-planned", &[]),
            Tier::Emergency | Tier::Stop => self.words.text("call-right-to-stop", &[]),
            Tier::AskFirst => self.words.text("call-right-to-ask", &[]),
            Tier::Note => self.words.text("call-right-to-say", &[]),
        }
    }

    fn emergency_dial(&self, contacts: &Contacts) -> Option<Dial> {
        let number = dialable(&contacts.emergency_number)?;
        let shown = (&contacts.emergency_number).into();
        let country = (&contacts.emergency_country).into();
        let values = [("number", shown), ("country", country)];
        Some(Dial { label: self.words.text("call-dial-emergency", &values), number })
    }

    fn contact_dials(&self, contacts: &Contacts) -> Vec<Dial> {
        let contact = contacts.contact_phone.as_deref().and_then(|phone| {
            let number = dialable(phone)?;
            let clinician = (&contacts.clinician).into();
            let values = [("clinician", clinician), ("number", phone.into())];
            Some(Dial { label: self.words.text("call-dial-clinician", &values), number })
        });
        let closed = contacts.out_of_hours_phone.as_deref().and_then(|phone| {
            let number = dialable(phone)?;
            let values = [("number", phone.into())];
            Some(Dial { label: self.words.text("call-dial-out-of-hours", &values), number })
        });
        contact.into_iter().chain(closed).collect()
    }
}
