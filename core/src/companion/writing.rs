//! Writing an entry down. Decides that a request asked again writes nothing twice, in which order the lines of one
//! request are written, and what is shown when something was kept. What may be written is decided in `check`.

use super::journal::folded_anew;
use super::{Companion, Refusal, Trouble, Write, check};
use crate::diary::entry::{Chosen, Content, Entry, EntryId, Why};
use crate::moment::{Moment, Stamp};
use crate::safety::Sign;
use crate::screens::{KeptScreen, Screen};

impl Companion {
    pub(super) fn write(&mut self, write: Write, moment: &Moment) -> Result<Screen, Trouble> {
        if self.was_written(write.id)? {
            self.written_down(write.id);
            return self.again(write.id, moment);
        }
        let checked = check::checked(write, &check::Facts { companion: self, moment })?;
        let (id, content) = (checked.first().id, checked.first().content.clone());
        for line in checked.lines() {
            self.append(line.id, line.happened, line.content, moment)?;
        }
        self.follow_language();
        self.written_down(id);
        Ok(self.kept(id, &content, moment))
    }

    /// A request asked again: nothing is written twice, and what the first asking did not get to is
    /// written now.
    pub(super) fn again(&mut self, id: EntryId, moment: &Moment) -> Result<Screen, Trouble> {
        let entries = self.entries()?;
        let find = |id: EntryId| entries.iter().find(|entry| entry.id == id);
        let content = &find(id).ok_or(Refusal::NoSuchEntry)?.what;
        if let Content::SuggestionAnswered { shown, chosen: Chosen::Try } = content
            && find(check::second(id)).is_none()
            && let Some(Content::SuggestionShown { to: Some(to), .. }) =
                find(*shown).map(|entry| &entry.what)
        {
            let step = Content::StepChange { to: to.clone(), why: Why::Suggested };
            self.append(check::second(id), moment.now, step, moment)?;
        }
        Ok(self.kept(id, content, moment))
    }

    fn kept(&self, id: EntryId, content: &Content, moment: &Moment) -> Screen {
        let noted: Vec<Sign> = signs_of(content).iter().map(|noted| noted.sign).collect();
        if noted.is_empty() {
            self.show(&moment.now, |scene| Screen::Kept(KeptScreen::new(scene, id, content)))
        } else {
            self.stop_and_call(&moment.now, &noted)
        }
    }

    pub(super) fn was_written(&self, id: EntryId) -> Result<bool, Trouble> {
        let issued = id.0.first_chunk::<4>().map_or(0, |head| u32::from_be_bytes(*head));
        match self.state.has_written(id, u64::from(issued)) {
            Some(known) => Ok(known),
            None => Ok(self.entries()?.iter().any(|entry| entry.id == id)),
        }
    }

    /// Writes one entry; when this returns it would survive a power cut, and the state has followed.
    pub(super) fn append(
        &mut self,
        id: EntryId,
        happened: Stamp,
        what: Content,
        moment: &Moment,
    ) -> Result<(), Trouble> {
        self.back_up_if_due(&moment.now);
        let entry = Entry { id, written: moment.now, happened, uptime: moment.uptime, what };
        let bytes = serde_json::to_vec(&entry).map_err(|_| Trouble::TryAgain)?;
        self.store.append(&bytes)?;
        self.unsaved += 1;
        if self.state.apply(&entry).is_err() {
            self.state = folded_anew(&self.store)?;
        }
        Ok(())
    }
}

fn signs_of(content: &Content) -> &[crate::diary::entry::SignNoted] {
    match content {
        Content::Correction { content, .. } => content.signs(),
        other => other.signs(),
    }
}
