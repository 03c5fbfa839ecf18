//! What things are called in a bundle: LOINC where a code fits, a code system of our own for the rest.

use serde_json::{Value, json};

/// The code system of our own. The domain `invalid` belongs to nobody for good (RFC 2606), and no program will
/// ever reach it: it is a name, not an address.
pub const SYSTEM: &str = "https://frond.invalid/fhir/code";
/// LOINC.
pub const LOINC: &str = "http://loinc.org";

/// Pain severity, 0-10 verbal numeric rating. Source: HL7 Europe's and HL7 Belgium's guides (read).
pub(super) const LOINC_PAIN: (&str, &str) =
    ("72514-3", "Pain severity - 0-10 verbal numeric rating [Score] - Reported");
/// Exercise duration. Source: HL7 US Physical Activity guide 1.0.0 (read).
pub(super) const LOINC_DURATION: (&str, &str) = ("55411-3", "Exercise duration");

/// `Variant: code, display;`
macro_rules! table {
    ($($variant:ident: $code:literal, $display:literal;)+) => {
        /// What our own code system names, besides the signs.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        #[allow(missing_docs, reason = "each has its display")]
        pub enum Code {
            $($variant,)+
        }

        impl Code {
            /// Every code.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// The code. Never changed once published.
            #[must_use]
            pub fn code(self) -> &'static str {
                match self { $(Self::$variant => $code,)+ }
            }

            /// What it means, in English.
            #[must_use]
            pub fn display(self) -> &'static str {
                match self { $(Self::$variant => $display,)+ }
            }
        }
    };
}

table! {
    Record: "record", "How this record was made and what is not in it";
    ShownFrom: "shown-from", "First day that is shown, by the person's choice";
    ShownTo: "shown-to", "Last day that is shown, by the person's choice";
    NotesLeftOut: "notes-left-out", "Notes were left out by the person's choice";
    QuestionsLeftOut: "questions-left-out", "Questions for the visit were left out by the person's choice";
    MissingEntries: "missing-entries", "Entries known to be missing";
    TimesRestored: "times-restored", "Times the diary was restored from a copy";
    TimesErased: "times-erased", "Times something was erased";

    Plan: "plan", "Home programme";
    Goal: "goal", "The person's own goal";
    GoalReached: "goal-reached", "How far a goal is reached, -2 to +2";
    ActivityAbility: "activity-ability", "How able at an activity, 0 unable to 10 able as before";

    Trainer: "trainer", "Practice with a graded trainer";
    Breathing: "breathing", "Slow breathing";
    BellyBreathing: "belly-breathing", "Belly breathing";
    Meditation: "meditation", "Meditation";
    OtherPractice: "other-practice", "Another practice of the programme";
    MainSize: "main-size", "Widest diameter of the trainer used in the main part";
    MainMinutes: "main-minutes", "Time practised on the main part, pauses left out";
    AllMinutes: "all-minutes", "Time practised on all parts, pauses left out";
    PositionUsed: "position-used", "Position used";
    OnBack: "on-back", "Lying on the back";
    SideLying: "side-lying", "Lying on the side";
    Sitting: "sitting", "Sitting";
    Standing: "standing", "Standing";
    OtherPosition: "other-position", "Another position";
    HowEnded: "how-ended", "How it ended";
    Finished: "finished", "Finished";
    Stopped: "stopped", "Stopped early";
    CouldNotStart: "could-not-start", "Could not start";
    WhyStopped: "why-stopped", "Why it was stopped or not started";
    Discomfort: "discomfort", "Discomfort";
    DidNotGoIn: "did-not-go-in", "Did not go in";
    Upset: "upset", "Upset";
    Interrupted: "interrupted", "Something came between";
    OtherReason: "other-reason", "Another reason";
    Peak: "discomfort-peak", "Highest discomfort during, 0 none to 10 worst imaginable";
    Before: "discomfort-before", "Discomfort before, 0 none to 10 worst imaginable";
    After: "discomfort-after", "Discomfort afterwards, 0 none to 10 worst imaginable";
    Worry: "worry", "Worry, 0 none to 10 worst imaginable";
    DidSettle: "did-settle", "Did it settle, asked the day after";
    Yes: "yes", "Yes";
    NotYet: "not-yet", "Not yet";
    RatherNotSay: "rather-not-say", "Rather not say";

    SignNoted: "sign-noted", "Something was not right";
    SignTier: "sign-tier", "How grave it is taken";
    TierEmergency: "tier-emergency", "Call the emergency number now";
    TierStop: "tier-stop", "Stop and contact";
    TierAskFirst: "tier-ask-first", "Ask first";
    TierNote: "tier-note", "Note only";
    Pause: "pause", "Practice with trainers is paused until the clinician was spoken with";

    StepInUse: "step-in-use", "The step of the programme that was in use";
    Outcome: "outcome", "What the clinician's rule said when the record was made";
    OutcomePause: "outcome-pause-and-call", "Pause and call";
    OutcomeBack: "outcome-step-back", "Step back";
    OutcomeHold: "outcome-hold", "Hold";
    OutcomeTalk: "outcome-ready-to-talk", "Ready to talk";
    OutcomeUp: "outcome-step-up", "Step up";
    TimeOff: "time-off", "Time off";
    Question: "question", "A question for the visit";
    Talk: "talk", "A talk that closed something";
}

/// The code system as a FHIR resource, to publish: every code, and every sign under `sign-`.
#[must_use]
pub fn system() -> Value {
    let codes = Code::ALL.iter().map(|one| (one.code().to_owned(), one.display().to_owned()));
    let signs = crate::safety::Sign::ALL.iter().map(|one| (sign(*one), sign_display(*one)));
    let concept: Vec<Value> = codes
        .chain(signs)
        .map(|(code, display)| json!({ "code": code, "display": display }))
        .collect();
    json!({
        "resourceType": "CodeSystem",
        "id": "frond-code",
        "url": SYSTEM,
        "version": "1",
        "name": "FrondCode",
        "title": "What a Frond summary tells",
        "status": "draft",
        "experimental": true,
        "description": "Codes of self-reported home practice for which no published code fits.",
        "caseSensitive": true,
        "content": "complete",
        "count": concept.len(),
        "concept": concept,
    })
}

/// The code of a sign.
pub(super) fn sign(sign: crate::safety::Sign) -> String {
    format!("sign-{}", crate::summary::stored::name(&sign).replace('_', "-"))
}

/// A sign in English, from its stored name: what a person reads is worded elsewhere.
pub(super) fn sign_display(sign: crate::safety::Sign) -> String {
    let name = crate::summary::stored::name(&sign).replace('_', " ");
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().collect::<String>() + letters.as_str()
    })
}
