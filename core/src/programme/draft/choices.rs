//! What can be chosen in a field of a draft: each answer's stored name and its words.

use super::super::plan::IntendedFor;
use super::super::readback::plain::{capital, name_of, position, rated, sign, tier};
use super::super::rule::Target;
use super::super::values::{Position, Practice, RatingKind, StepId, Token};
use super::Draft;
use super::typed::{Chosen, TargetChoice};
use crate::safety::{Sign, Tier};
use crate::words::Words;

/// The kinds of practice that need no explanation.
const KNOWN: [Practice; 4] =
    [Practice::Trainer, Practice::Breathing, Practice::BellyBreathing, Practice::Meditation];

impl Draft {
    /// What can be chosen in a field, in order; `None` where something is typed.
    #[must_use]
    pub fn choices(&self, name: &str, words: &Words) -> Option<Vec<(String, String)>> {
        let parts: Vec<&str> = name.split('.').collect();
        let one = |code: &dyn Fn() -> String, says: String| (code(), capital(&says));
        let choices = match parts.as_slice() {
            ["intended_for"] => vec![
                one(&|| IntendedFor::Adult.code(), words.text("compose-intended-adult", &[])),
                one(
                    &|| IntendedFor::YoungerSafeguardingConfirmed.code(),
                    words.text("compose-intended-younger", &[]),
                ),
            ],
            ["start_at"] => self.step_choices(words, |id| id.to_string()),
            ["steps", _, "practice"] => {
                let known = KNOWN.into_iter().map(|kind| (kind.code(), name_of(&kind, words)));
                let own = self.practices.iter().filter_map(|plan| match &plan.practice.0 {
                    Some(other @ Practice::Other(_)) => {
                        Some((other.code(), plan.name.trimmed().to_owned()))
                    }
                    _ => None,
                });
                known.chain(own).map(|(code, says)| (code, capital(&says))).collect()
            }
            ["practices", index, "practice"] => {
                let known = KNOWN.into_iter().filter(|kind| *kind != Practice::Trainer);
                let mut choices: Vec<(String, String)> =
                    known.map(|kind| (kind.code(), capital(&name_of(&kind, words)))).collect();
                let plan = index.parse::<usize>().ok().and_then(|at| self.practices.get(at));
                if let Some(id) = plan.and_then(|plan| Token::new(&plan.id).ok()) {
                    let says = words.text("compose-other-practice", &[]);
                    choices.push((Practice::Other(id).code(), says));
                }
                choices
            }
            ["steps", _, "position"] => {
                let all = [
                    Position::OnBack,
                    Position::SideLying,
                    Position::Sitting,
                    Position::Standing,
                    Position::Other,
                ];
                all.map(|one| (one.code(), capital(&position(one, words)))).to_vec()
            }
            ["ratings_asked"] => RatingKind::ALL
                .into_iter()
                .filter(|kind| *kind != RatingKind::Peak)
                .map(|kind| (kind.code(), capital(&rated(kind, words))))
                .collect(),
            ["stricter_signs", _, "sign"] => {
                Sign::asked().map(|own| (own.code(), capital(&sign(own, words)))).collect()
            }
            ["stricter_signs", _, "tier"] => {
                Tier::ALL.map(|own| (own.code(), capital(&tier(own, words)))).to_vec()
            }
            [.., "rating"] => RatingKind::ALL
                .into_iter()
                .map(|kind| (kind.code(), capital(&rated(kind, words))))
                .collect(),
            [.., "target"] => {
                let ways = [
                    (Target::Previous, words.text("readback-to-before", &[])),
                    (Target::First, words.text("readback-to-first", &[])),
                ];
                let ways =
                    ways.into_iter().map(|(way, says)| (TargetChoice(way).code(), capital(&says)));
                ways.chain(self.step_choices(words, |id| TargetChoice(Target::Step(id)).code()))
                    .collect()
            }
            _ => return None,
        };
        Some(choices)
    }

    fn step_choices(
        &self,
        words: &Words,
        code: impl Fn(StepId) -> String,
    ) -> Vec<(String, String)> {
        let ids = self.steps.iter().filter_map(|step| StepId::new(&step.id).ok());
        ids.map(|id| (code(id.clone()), capital(&self.step_named(&id, words)))).collect()
    }
}
