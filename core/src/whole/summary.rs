//! A summary as a file: who can open it is chosen and never preset, and what has to be put right comes back on the
//! same form. The file leaves as a duty; nothing is sent from here.

use super::{Holder, Seen, View};
use crate::companion::{Companion, Duty, Request, SharedFile, Trouble};
use crate::moment::Moment;
use crate::ports::{KeyKeeper, Passphrase};
use crate::screens::{Amiss, FormField, Problem, Screen, SummaryClose, SummaryKind};
use crate::sealing::{SealTo, Sealing, seal_into};
use crate::summary::{
    FileKind, Selection, Summary, TimeAlone, fhir, file_name, table, to_clinician,
};

/// How it is closed, as it was sent.
pub(super) struct Closing {
    pub(super) close: Option<SummaryClose>,
    pub(super) passphrase: String,
    pub(super) again: String,
    pub(super) time_alone: bool,
    pub(super) kind: SummaryKind,
}

/// What has to be put right, and where.
type Wrong = (FormField, Amiss);

impl Holder {
    /// The file, or the form again.
    pub(super) fn summary_file(
        &mut self,
        selection: Selection,
        closing: Closing,
        keeper: &dyn KeyKeeper,
        moment: &Moment,
    ) -> Result<Seen, Trouble> {
        let Closing { close, passphrase, again, time_alone, kind } = closing;
        let secrets = (Passphrase::new(passphrase).ok(), Passphrase::new(again).ok());
        let backwards =
            matches!((selection.from, selection.to), (Some(from), Some(to)) if to < from);
        // There is nothing to show of days that run backwards: all of them are shown, and what to put right.
        let shown =
            if backwards { Selection { from: None, to: None, ..selection } } else { selection };
        let mut seen = self.asked(Request::Summary(shown), keeper, moment)?;
        let View::Screen(Screen::Summary(form)) = &mut seen.view else { return Ok(seen) };
        let companion = self.companion()?;
        let sealed = if backwards {
            Err((FormField::To, Amiss::EndBeforeStart))
        } else {
            seal_to(companion, close, secrets, kind)
        };
        match sealed {
            Ok(to) => {
                let alone = if time_alone { TimeAlone::Please } else { TimeAlone::NotAsked };
                let is_sealed = to.is_some();
                // Begun before there is a summary, so that what stretches the passphrase does not stand beside it.
                let begun = to.map(|to| seal_into(Vec::new(), &to));
                let begun = begun.transpose().map_err(|_| Trouble::TryAgain)?;
                let summary = companion.summary(&selection, &moment.now)?;
                let (kind, mime, bytes) = made(companion, &summary, begun, alone, kind);
                seen.duties.push(Duty::ShareFile(SharedFile {
                    name: file_name(kind, moment.now.day()),
                    mime: mime.to_owned(),
                    bytes: bytes.ok_or(Trouble::TryAgain)?,
                    sealed: is_sealed,
                }));
            }
            Err((field, amiss)) => {
                form.problems.push(Problem::new(companion.words(), field, amiss));
            }
        }
        Ok(seen)
    }
}

/// To whom it is sealed; nobody where it stays open. A table or a bundle is never sealed, so it needs the open
/// way.
fn seal_to(
    companion: &Companion,
    close: Option<SummaryClose>,
    secrets: (Option<Passphrase>, Option<Passphrase>),
    kind: SummaryKind,
) -> Result<Option<SealTo>, Wrong> {
    match (close, kind) {
        (None, _) => Err((FormField::Way, Amiss::WayMissing)),
        (Some(SummaryClose::Open), _) => Ok(None),
        (Some(_), SummaryKind::Table | SummaryKind::Bundle) => {
            Err((FormField::Way, Amiss::NotSealed))
        }
        (Some(SummaryClose::Recipients), SummaryKind::Summary) => {
            let plan = companion.state().rule().programme();
            let to = plan.and_then(|plan| to_clinician(plan).ok());
            to.map(Some).ok_or((FormField::Way, Amiss::NobodyNamed))
        }
        (Some(SummaryClose::Passphrase), SummaryKind::Summary) => match secrets {
            (None, _) => Err((FormField::New, Amiss::PassphraseMissing)),
            (Some(new), Some(again)) if new.expose() == again.expose() => {
                Ok(Some(SealTo::Passphrase(new)))
            }
            _ => Err((FormField::Again, Amiss::PassphrasesDiffer)),
        },
    }
}

fn made(
    companion: &Companion,
    summary: &Summary,
    begun: Option<Sealing<Vec<u8>>>,
    alone: TimeAlone,
    kind: SummaryKind,
) -> (FileKind, &'static str, Option<Vec<u8>>) {
    let identity = companion.identity();
    match (begun, kind) {
        (Some(file), _) => (
            FileKind::Sealed,
            "application/octet-stream",
            summary.sealed_into(&identity, file, alone).ok(),
        ),
        (None, SummaryKind::Bundle) => {
            let bundle = fhir::bundle(summary, fhir::Texts::Carried).ok();
            let text = bundle.and_then(|bundle| serde_json::to_vec_pretty(&bundle).ok());
            let text = text.map(|mut text| {
                text.push(b'\n');
                text
            });
            (FileKind::Bundle, "application/fhir+json", text)
        }
        (None, SummaryKind::Table) => (
            FileKind::Table,
            "text/csv; charset=utf-8",
            table::csv(summary).ok().map(String::into_bytes),
        ),
        // An open file has no place for the wish.
        (None, SummaryKind::Summary) => {
            (FileKind::Open, "application/json", summary.open_form(&identity).ok())
        }
    }
}
