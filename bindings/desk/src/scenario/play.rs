//! Plays the scenario: each event is asked of a real companion on a real disk, with a moment of its own, the
//! way a phone asks.

use std::path::Path;

use chrono::{NaiveDate, NaiveDateTime};
use frond_core::companion::{Companion, Ports, Request, SessionTold, Told, Write};
use frond_core::diary::entry::{
    Answer, Asked, Chosen, Entry, EntryId, Goal, Ratings, ScreeningAnswer, UsedPart,
};
use frond_core::moment::{Moment, NamedZone, Stamp, Uptime};
use frond_core::ports::KeyKeeper;
use frond_core::programme::values::{Line, Passage, Position, Practice, Rating, Size};
use frond_core::screens::{Does as Presses, Screen, SuggestionScreen};

use super::days::{Does, Event, Trainer, events};
use crate::failure::{Failure, LANGUAGE};

const ZONE: &str = "Europe/London";

/// What came of one event.
pub(super) struct Scene {
    /// The story's own sentence before it.
    pub(super) story: Option<&'static str>,
    /// The place of the entry it wrote, if it wrote one.
    pub(super) place: Option<usize>,
    /// When.
    pub(super) at: Stamp,
    /// What the plan said then, where it was looked at.
    pub(super) suggestion: Option<SuggestionScreen>,
    /// Stop and call, where it was shown.
    pub(super) stop: Option<Screen>,
}

/// The whole scenario as played.
pub(crate) struct Played {
    pub(super) scenes: Vec<Scene>,
    pub(crate) entries: Vec<Entry>,
    /// The last look at the plan.
    pub(crate) end: Stamp,
    pub(super) last: Screen,
}

/// Plays all of it into a new diary.
pub(super) fn play(
    ports: &Ports,
    folder: &Path,
    keeper: &dyn KeyKeeper,
) -> Result<Played, Failure> {
    let companion = Companion::start(ports, folder, keeper, LANGUAGE)?;
    let mut player = Player { companion, named: Vec::new() };
    let mut scenes = Vec::new();
    let mut end = stamp("2026-03-02 18:00")?;
    for event in events() {
        end = stamp(event.at)?;
        scenes.push(player.event(&event)?);
    }
    let last = player.ask(Request::Suggestion, end)?;
    // Nobody waits any more: the next opening reads one snapshot.
    player.companion.save()?;
    Ok(Played { scenes, entries: player.companion.entries()?, end, last })
}

struct Player {
    companion: Companion,
    named: Vec<(&'static str, EntryId)>,
}

impl Player {
    fn event(&mut self, event: &Event) -> Result<Scene, Failure> {
        let at = stamp(event.at)?;
        let before = self.companion.entries()?.len();
        let mut scene =
            Scene { story: event.story, place: Some(before), at, suggestion: None, stop: None };
        let told = match &event.does {
            Does::Look => None,
            does => Some(self.told(does, at)?),
        };
        // What a look writes down (that a suggestion was shown) comes before the answer upon it.
        scene.place = told.is_some().then_some(self.companion.entries()?.len());
        if let Some(told) = told {
            let (name, happened) = match &event.does {
                Does::Trainer(session) => (session.name, session.happened.map(stamp).transpose()?),
                Does::Question(text) => (*text, None),
                Does::Spoke { on, .. } => ("", Some(stamp(on)?)),
                _ => ("", None),
            };
            let id = self.companion.new_id()?;
            let write = Write { id, happened, told };
            self.named.push((name, id));
            let screen = self.ask(Request::Write(write), at)?;
            if matches!(screen, Screen::StopAndCall(_)) {
                scene.stop = Some(screen);
            }
        }
        // After a session a phone offers what the plan says; so it does after an answer or a choice.
        let looks = matches!(
            event.does,
            Does::Trainer(_) | Does::Look | Does::Ready(_) | Does::Spoke { .. } | Does::Confirm
        );
        if looks
            && scene.stop.is_none()
            && let Screen::Suggestion(screen) = self.ask(Request::Suggestion, at)?
        {
            scene.suggestion = Some(screen);
        }
        Ok(scene)
    }

    fn ask(&mut self, request: Request, at: Stamp) -> Result<Screen, Failure> {
        let answer = self.companion.ask(request, &moment(at));
        answer
            .map(|answer| answer.screen)
            .map_err(|trouble| Failure::of(&trouble, self.companion.words()))
    }

    fn told(&mut self, does: &Does, at: Stamp) -> Result<Told, Failure> {
        Ok(match does {
            Does::Accept(text) => Told::unsigned(text),
            Does::EveryQuestionNo => Told::Screening {
                asked: Asked::FullList,
                answer: ScreeningAnswer::NothingNew,
                signs: Vec::new(),
            },
            Does::Confirm => Told::ConfirmStep,
            Does::Trainer(session) => Told::Session(session.told()?),
            Does::Breathing(minutes) => breath(Practice::Breathing, *minutes),
            Does::Belly(minutes) => breath(Practice::BellyBreathing, *minutes),
            Does::PutRight(name, session) => {
                let told = Box::new(Told::Session(session.told()?));
                Told::Correct { of: self.named(name)?, told }
            }
            Does::Strike(name) => Told::Strike { of: self.named(name)? },
            Does::Ready(answer) => Told::FeelsReady(*answer),
            Does::Try => {
                let Screen::Suggestion(screen) = self.ask(Request::Suggestion, at)? else {
                    return Err(lost());
                };
                let shown = screen.actions.iter().find_map(|action| match action.does {
                    Presses::Choose { shown, chosen: Chosen::Try } => Some(shown),
                    _ => None,
                });
                Told::Choose { shown: shown.ok_or_else(lost)?, chosen: Chosen::Try }
            }
            Does::StayHere(stay) => Told::StayHere(*stay),
            Does::TimeOff(from, to) => Told::TimeOff { from: day(from)?, to: day(to)? },
            Does::Spoke { with, .. } => {
                let Screen::Spoke(open) = self.ask(Request::Spoke, at)? else {
                    return Err(lost());
                };
                Told::Spoke {
                    with: line(with)?,
                    signs: open.signs.iter().map(|open| open.key).collect(),
                    closes_pause: open.pause.is_some(),
                }
            }
            Does::LookForward(to) => Told::LookForward(passage(to)?),
            Does::Able(activity, able) => Told::Function {
                activity: line(activity)?,
                able: Rating::new(*able).map_err(|_| lost())?,
            },
            Does::Goal(goal, reached) => Told::Goal {
                goal: line(goal)?,
                reached: Goal::try_from(*reached).map_err(|_| lost())?,
            },
            Does::Question(text) => Told::Question(passage(text)?),
            Does::Look => return Err(lost()),
        })
    }

    fn named(&self, name: &str) -> Result<EntryId, Failure> {
        let named = self.named.iter().find(|(own, _)| *own == name);
        named.map(|(_, id)| *id).ok_or_else(lost)
    }
}

impl Trainer {
    fn told(&self) -> Result<SessionTold, Failure> {
        let rated = |number| Rating::new(number).map(Answer::Rated).map_err(|_| lost());
        Ok(SessionTold {
            practice: Practice::Trainer,
            parts: vec![UsedPart {
                widest_diameter_tenths_mm: Some(Size::new(self.size).map_err(|_| lost())?),
                practised_seconds: self.minutes * 60,
            }],
            position: self.position,
            ended: self.ended,
            ratings: Ratings {
                peak: Some(rated(self.peak)?),
                worry: self.worry.map(rated).transpose()?,
                ..Ratings::default()
            },
            signs: self.sign.into_iter().collect(),
            note: None,
        })
    }
}

fn breath(practice: Practice, minutes: u32) -> Told {
    Told::Session(SessionTold {
        practice,
        parts: vec![UsedPart { widest_diameter_tenths_mm: None, practised_seconds: minutes * 60 }],
        position: Position::OnBack,
        ended: frond_core::diary::entry::Ended::Finished,
        ratings: Ratings::default(),
        signs: Vec::new(),
        note: None,
    })
}

/// A phone that has been on since an hour before the story begins.
fn moment(now: Stamp) -> Moment {
    // 2026-03-02T17:00:00Z.
    const STARTED: i64 = 1_772_470_800_000;
    let millis = u64::try_from(now.millis().saturating_sub(STARTED)).unwrap_or(0);
    Moment { now, uptime: Some(Uptime { boot: 1, millis }) }
}

fn stamp(text: &str) -> Result<Stamp, Failure> {
    let local = NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M").map_err(|_| lost())?;
    let zone: NamedZone = ZONE.parse().map_err(|_| lost())?;
    let instant = zone.instants(local).earliest().ok_or_else(lost)?;
    Stamp::in_zone(instant, zone).map_err(|_| lost())
}

fn day(text: &str) -> Result<NaiveDate, Failure> {
    text.parse().map_err(|_| lost())
}

fn line(text: &str) -> Result<Line, Failure> {
    Line::new(text).map_err(|_| lost())
}

fn passage(text: &str) -> Result<Passage, Failure> {
    Passage::new(text).map_err(|_| lost())
}

/// The scenario asks for something the companion did not offer. A test plays it, so nobody should see this.
fn lost() -> Failure {
    Failure::Else("The invented scenario does not fit this Frond. Please report it.".to_owned())
}
