//! What the invented person does, day by day. Nothing here says what the plan answers.

use frond_core::diary::entry::{Ended, FeelsReady, Reason};
use frond_core::programme::values::Position;
use frond_core::safety::Sign;

/// One thing done, and when.
pub(super) struct Event {
    /// Day and time it is written, local time in London.
    pub(super) at: &'static str,
    /// What is done.
    pub(super) does: Does,
    /// The story's own sentence before it, where it needs one.
    pub(super) story: Option<&'static str>,
}

/// What can be done, as one asks a phone.
pub(super) enum Does {
    /// A programme is read and accepted.
    Accept(&'static str),
    /// The full list of cautions is answered: no to every question.
    EveryQuestionNo,
    /// "Yes, this is what I use now."
    Confirm,
    /// A trainer session.
    Trainer(Trainer),
    /// Slow breathing, so many minutes.
    Breathing(u32),
    /// Belly breathing, so many minutes.
    Belly(u32),
    /// An earlier session is put right.
    PutRight(&'static str, Trainer),
    /// An earlier entry is left out.
    Strike(&'static str),
    /// "Would you like to try the next step?"
    Ready(FeelsReady),
    /// Try what is suggested.
    Try,
    /// "Stay here for now", or no longer.
    StayHere(bool),
    /// Time off.
    TimeOff(&'static str, &'static str),
    /// "I spoke with ...", with everything open named, and the word to go on.
    Spoke { with: &'static str, on: &'static str },
    /// Something to look forward to.
    LookForward(&'static str),
    /// How able she is.
    Able(&'static str, u64),
    /// How far a goal is reached.
    Goal(&'static str, i8),
    /// A question for the visit.
    Question(&'static str),
    /// Looks at what the plan says.
    Look,
}

/// A trainer session.
#[derive(Clone, Copy)]
pub(super) struct Trainer {
    pub(super) name: &'static str,
    pub(super) size: u64,
    pub(super) minutes: u32,
    pub(super) peak: u64,
    pub(super) worry: Option<u64>,
    pub(super) ended: Ended,
    pub(super) sign: Option<Sign>,
    /// When it began, where it is told later.
    pub(super) happened: Option<&'static str>,
    pub(super) position: Position,
}

const fn trainer(size: u64, minutes: u32, peak: u64) -> Trainer {
    Trainer {
        name: "",
        size,
        minutes,
        peak,
        worry: None,
        ended: Ended::Finished,
        sign: None,
        happened: None,
        position: Position::OnBack,
    }
}

impl Trainer {
    const fn named(self, name: &'static str) -> Self {
        Self { name, ..self }
    }
    const fn worry(self, worry: u64) -> Self {
        Self { worry: Some(worry), ..self }
    }
    const fn stopped(self, reason: Reason) -> Self {
        Self { ended: Ended::Stopped(reason), ..self }
    }
    const fn sign(self, sign: Sign) -> Self {
        Self { sign: Some(sign), ..self }
    }
    const fn began(self, happened: &'static str) -> Self {
        Self { happened: Some(happened), ..self }
    }
}

/// The ten weeks.
pub(super) fn events() -> Vec<Event> {
    let mut events = Vec::new();
    let mut then = |at, does| events.push(Event { at, does, story: None });
    let size = trainer;

    // Week 1: the plan, and size 1.
    then("2026-03-02 18:20", Does::Accept(super::FIRST));
    then("2026-03-02 18:26", Does::EveryQuestionNo);
    then("2026-03-02 18:32", Does::Confirm);
    then("2026-03-02 18:34", Does::LookForward("A swim in the sea in June"));
    then("2026-03-02 18:36", Does::Able("Sitting through a film", 4));
    then("2026-03-02 18:37", Does::Able("Using a tampon", 0));
    then("2026-03-02 18:39", Does::Goal("An examination without dread", -2));
    then("2026-03-02 21:40", Does::Breathing(8));
    then("2026-03-03 20:15", Does::Trainer(size(120, 5, 3).worry(6)));
    then("2026-03-04 21:00", Does::Breathing(9));
    then("2026-03-05 20:30", Does::Trainer(size(120, 6, 3).worry(5)));
    then("2026-03-06 20:10", Does::Belly(6));
    then("2026-03-07 10:45", Does::Trainer(size(120, 7, 2).worry(4)));
    then("2026-03-08 11:00", Does::Trainer(size(120, 8, 2).worry(3)));
    then("2026-03-08 11:12", Does::Question("Does it matter which day of the week I practise?"));
    then("2026-03-08 11:15", Does::Strike("Does it matter which day of the week I practise?"));

    // Week 2: not yet, then yes.
    then("2026-03-09 20:40", Does::Ready(FeelsReady::NotYet));
    then("2026-03-10 20:20", Does::Trainer(size(120, 10, 1).worry(2)));
    then("2026-03-11 21:10", Does::Breathing(10));
    then("2026-03-12 20:25", Does::Trainer(size(120, 10, 1).worry(2)));
    then("2026-03-12 20:41", Does::Ready(FeelsReady::Yes));
    then("2026-03-12 20:42", Does::Try);
    then("2026-03-14 11:10", Does::Trainer(size(150, 5, 3).worry(5)));
    then("2026-03-15 10:50", Does::Trainer(size(120, 6, 3).worry(4).named("size")));
    then("2026-03-15 11:04", Does::PutRight("size", size(150, 6, 3).worry(4)));

    // Week 3: size 2.
    then("2026-03-16 20:45", Does::Belly(8));
    then("2026-03-17 20:30", Does::Trainer(size(150, 7, 4).worry(4).named("four")));
    then("2026-03-19 20:15", Does::Trainer(size(150, 7, 2).worry(3)));
    then("2026-03-19 20:31", Does::PutRight("four", size(150, 7, 2).worry(4)));
    then("2026-03-19 20:33", Does::Look);
    then("2026-03-20 21:00", Does::Trainer(size(150, 8, 2).worry(2)));
    then("2026-03-21 10:30", Does::Trainer(size(150, 9, 2).worry(2)));
    then("2026-03-21 10:44", Does::Ready(FeelsReady::Yes));
    then("2026-03-21 10:45", Does::Try);
    then("2026-03-22 12:00", Does::Able("Sitting through a film", 6));

    // Week 4: size 3 is too much. The clocks go forward on the 29th.
    then("2026-03-23 20:40", Does::Trainer(size(180, 5, 5).worry(6)));
    then("2026-03-25 20:35", Does::Trainer(size(180, 2, 7).worry(8).stopped(Reason::Discomfort)));
    then("2026-03-25 21:00", Does::Breathing(10));
    then("2026-03-27 20:30", Does::Trainer(size(180, 5, 6).worry(7)));
    then("2026-03-27 20:44", Does::Try);
    then("2026-03-28 23:30", Does::Belly(10));
    then("2026-03-29 10:20", Does::Trainer(size(150, 6, 3).worry(5)));
    then("2026-03-29 10:35", Does::Question("Is there a size between 2 and 3?"));

    // Week 5: size 2 again, size 1 on a tired day; Easter is time off.
    then("2026-03-31 20:20", Does::Trainer(size(150, 6, 2).worry(4)));
    then("2026-04-01 20:50", Does::Trainer(size(120, 8, 1).worry(2)));
    then("2026-04-02 20:10", Does::Trainer(size(150, 7, 2).worry(3)));
    then("2026-04-02 20:22", Does::TimeOff("2026-04-03", "2026-04-06"));

    // Week 6 is empty. Week 7: back, carefully; then something is not right.
    then("2026-04-14 20:00", Does::EveryQuestionNo);
    then("2026-04-14 20:30", Does::Trainer(size(150, 5, 3).worry(5)));
    then("2026-04-16 20:25", Does::Trainer(size(150, 6, 3).worry(4)));
    then(
        "2026-04-18 10:40",
        Does::Trainer(
            size(150, 3, 4).worry(6).stopped(Reason::Discomfort).sign(Sign::PainThatStays),
        ),
    );
    then("2026-04-18 21:30", Does::Breathing(8));
    then("2026-04-19 21:00", Does::Look);

    // Week 8: the talk, and a revised plan.
    then(
        "2026-04-20 18:00",
        Does::Spoke { with: "Ida Marlowe (invented)", on: "2026-04-20 16:40" },
    );
    then("2026-04-21 19:30", Does::Accept(super::SECOND));
    then("2026-04-21 19:36", Does::EveryQuestionNo);
    then("2026-04-21 19:41", Does::Confirm);
    then("2026-04-22 20:15", Does::Trainer(size(150, 5, 2).worry(4)));
    then("2026-04-23 20:30", Does::Belly(7));
    then("2026-04-24 20:20", Does::Trainer(size(150, 6, 2).worry(3)));
    then("2026-04-26 11:00", Does::Trainer(size(150, 7, 2).worry(3)));

    // Week 9: everything says up; she stays a few days longer, then goes.
    then("2026-04-28 20:10", Does::Trainer(size(150, 8, 1).worry(2)));
    then("2026-04-28 20:24", Does::Ready(FeelsReady::Yes));
    then("2026-04-28 20:25", Does::StayHere(true));
    then("2026-04-28 20:26", Does::Look);
    then("2026-04-30 20:30", Does::Trainer(size(150, 9, 1).worry(2)));
    then("2026-05-01 19:00", Does::StayHere(false));
    then("2026-05-01 19:01", Does::Ready(FeelsReady::Yes));
    then("2026-05-01 19:02", Does::Try);
    then("2026-05-02 10:30", Does::Trainer(size(165, 5, 3).worry(4)));
    then("2026-05-03 11:15", Does::Breathing(10));

    // Week 10: the size in between. One session is told two days late.
    then("2026-05-04 20:20", Does::Trainer(size(165, 6, 2).worry(3)));
    then("2026-05-07 20:10", Does::Trainer(size(165, 6, 2).worry(3).began("2026-05-05 20:30")));
    then("2026-05-07 20:30", Does::Trainer(size(165, 7, 2).worry(2)));
    then("2026-05-08 20:40", Does::Trainer(size(165, 8, 2).worry(2)));
    then("2026-05-09 10:20", Does::Able("Sitting through a film", 8));
    then("2026-05-09 10:21", Does::Able("Using a tampon", 2));
    then("2026-05-09 10:23", Does::Goal("An examination without dread", 0));
    then("2026-05-10 19:10", Does::Trainer(size(165, 9, 1).worry(1)));
    then("2026-05-10 19:28", Does::Ready(FeelsReady::Yes));

    tell(&mut events);
    events
}

/// The story's own sentences, by the time of the event they stand before.
const STORY: &[(&str, &str)] = &[
    (
        "2026-03-02 18:20",
        "Wren comes home from the first visit with a plan. She reads it and says it is hers.",
    ),
    ("2026-03-08 11:15", "She no longer needs to ask that, and takes it back."),
    ("2026-03-09 20:40", "Would she like to try the next step? Not yet."),
    ("2026-03-12 20:41", "Would she like to now? Yes."),
    ("2026-03-15 11:04", "She wrote the wrong size, and puts it right the same morning."),
    (
        "2026-03-19 20:31",
        "She lowers Tuesday's rating, two days later. The diary keeps both, and the plan does not count it.",
    ),
    ("2026-03-21 10:44", "Yes, she would like to go on."),
    ("2026-03-23 20:40", "Size 3 turns out to be too much."),
    ("2026-03-28 23:30", "In the night the clocks go forward."),
    ("2026-04-01 20:50", "A tired day: she takes size 1. That is always fine."),
    ("2026-04-14 20:00", "Easter was time off. The week after it is empty, and nobody counts it."),
    ("2026-04-18 10:40", "Something is not right, and she stops."),
    ("2026-04-20 18:00", "She rang the clinic. They talked, and she may go on."),
    ("2026-04-21 19:30", "A revised plan: a size in between, as she asked."),
    ("2026-04-28 20:25", "Then she would rather stay a while. She need not say why."),
    ("2026-05-01 19:00", "Now she would like to."),
    (
        "2026-05-07 20:10",
        "Tuesday's session, told on Thursday. It is kept, marked as late, and earns no step.",
    ),
];

fn tell(events: &mut [Event]) {
    for (at, story) in STORY {
        if let Some(event) = events.iter_mut().find(|event| event.at == *at) {
            event.story = Some(story);
        }
    }
}

/// Whether every sentence of the story stands before an event.
#[cfg(test)]
pub(super) fn every_sentence_is_told() -> bool {
    let told = events().iter().filter(|event| event.story.is_some()).count();
    told == STORY.len()
}
