//! Stop and call: the lines of [`crate::safety::StopAndCall`] as they apply now.

use serde::Serialize;

use super::{Action, Does, Scene, plain};
use crate::practice::stopped::whom_to_call;
use crate::programme::plan::Programme;
use crate::safety::{Call, Contacts, Sign, StopAndCall, Tier};

/// Stop and call.
#[derive(Clone, Serialize)]
pub struct StopScreen {
    /// Heading.
    pub title: String,
    /// What to do, in order.
    pub call: StopAndCall,
    /// What can be done later.
    pub actions: Vec<Action>,
}

impl StopScreen {
    /// The screen for everything that is open, with signs just noted that pause nothing.
    pub(crate) fn new(scene: &Scene<'_>, just_noted: &[Sign]) -> Self {
        let words = scene.words;
        let open = &scene.assessment.open_signs;
        let paused = scene.paused();
        let mut signs: Vec<Sign> = open.iter().map(|open| open.key.sign).collect();
        let tier = match open.iter().map(|open| open.tier).max() {
            Some(tier) => tier,
            None if paused => Tier::Stop,
            None => {
                signs.extend_from_slice(just_noted);
                Tier::Note
            }
        };
        let when = open
            .iter()
            .max_by_key(|open| open.since.millis())
            .map(|open| plain::when(words, open.since, scene.now))
            .unwrap_or_default();
        let contacts = scene.state.rule().programme().map(contacts_of);
        if open.is_empty() && !paused && just_noted.is_empty() {
            let (text, dial) = whom_to_call(words, contacts.as_ref());
            return Self {
                title: words.text("action-stop-and-call", &[]),
                call: StopAndCall::whom_only(words, text, dial),
                actions: vec![
                    Action::new(words.text("action-signs", &[]), Does::Signs),
                    Action::new(words.text("action-today", &[]), Does::Today),
                ],
            };
        }
        let call = Call { tier, signs: &signs, contacts: contacts.as_ref(), when: when.as_str() };
        let mut actions = Vec::new();
        if paused {
            actions.push(Action::new(words.text("action-spoke", &[]), Does::Spoke));
        }
        actions.push(Action::new(words.text("action-today", &[]), Does::Today));
        Self {
            title: if paused {
                words.text("stop-title", &[])
            } else {
                words.text("stop-title-note", &[])
            },
            call: StopAndCall::new(words, &call),
            actions,
        }
    }
}

/// Whom the plan says to call.
pub(super) fn contacts_of(plan: &Programme) -> Contacts {
    let owned = |text: &str| text.to_owned();
    Contacts {
        clinician: owned(plan.clinician.name.as_str()),
        contact: format!("{}, {}", plan.contact.name, plan.contact.phone),
        contact_phone: Some(owned(plan.contact.phone.as_str())),
        hours: owned(plan.contact.hours.as_str()),
        out_of_hours: owned(plan.out_of_hours.what_to_do.as_str()),
        out_of_hours_phone: plan.out_of_hours.phone.as_ref().map(|phone| owned(phone.as_str())),
        if_nobody_answers: Some(owned(plan.contact.if_nobody_answers.as_str())),
        emergency_number: owned(plan.emergency.number.as_str()),
        emergency_country: owned(plan.emergency.country.as_str()),
    }
}
