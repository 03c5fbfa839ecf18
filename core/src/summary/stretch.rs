//! Which step was in use when: the diary as it counts now, cut where the step or the revision changes.

use crate::diary::entry::{Content, Entry, EntryId, Why};
use crate::diary::resolve::Counted;
use crate::moment::Stamp;
use crate::programme::plan::Step;
use crate::programme::values::{ProgrammeId, Revision, StepId};
use crate::progression::{Fold, FoldError};

/// A time on one step under one revision of the programme.
#[derive(Clone, Debug)]
pub struct Stretch {
    /// The step as that revision has it.
    pub step: Step,
    /// Where on the ladder of that revision it stands, the lowest 0.
    pub place: usize,
    /// The programme.
    pub programme: ProgrammeId,
    /// Its revision.
    pub revision: Revision,
    /// When it began.
    pub began: Stamp,
    /// When the next one began; absent for the last.
    pub ended: Option<Stamp>,
}

/// The stretches, in order. `begins_on` is the first day looked at and the step in use then, where what
/// lies before is not there.
///
/// # Errors
/// [`FoldError`] when a programme cannot be read.
pub(crate) fn stretches(
    counted: &[Counted<'_>],
    begins_on: Option<(Stamp, &StepId)>,
) -> Result<Vec<Stretch>, FoldError> {
    let mut fold = Fold::new(None);
    let mut found: Vec<Stretch> = Vec::new();
    let mut begins_on = begins_on;
    for row in counted.iter().filter(|row| !row.struck) {
        if let Some((day, step)) =
            begins_on.take_if(|(day, _)| row.happened.millis() >= day.millis())
        {
            let to = Content::StepChange { to: step.clone(), why: Why::Asked };
            // No entry of a diary has this id twice: it is written nowhere.
            take(&mut fold, &mut found, EntryId([0; 16]), day, to)?;
        }
        let names =
            matches!(row.content, Content::ProgrammeAccepted { .. } | Content::StepChange { .. });
        if names {
            take(&mut fold, &mut found, row.first.id, row.happened, row.content.clone())?;
        }
    }
    Ok(found)
}

fn take(
    fold: &mut Fold,
    found: &mut Vec<Stretch>,
    id: EntryId,
    at: Stamp,
    what: Content,
) -> Result<(), FoldError> {
    fold.write(&Entry { id, written: at, happened: at, uptime: None, what })?;
    let (Some(step), Some(plan)) = (fold.step(), fold.programme()) else { return Ok(()) };
    let same = found.last().is_some_and(|last| {
        let of_plan = last.programme == plan.id && last.revision == plan.revision;
        of_plan && last.step.id == step.id
    });
    if !same {
        if let Some(last) = found.last_mut() {
            last.ended = Some(at);
        }
        found.push(Stretch {
            step: step.clone(),
            place: plan.steps.iter().position(|one| one.id == step.id).unwrap_or(0),
            programme: plan.id.clone(),
            revision: plan.revision,
            began: at,
            ended: None,
        });
    }
    Ok(())
}

/// The stretch in which something happened.
#[must_use]
pub(crate) fn at<'a>(stretches: &'a [Stretch], happened: &Stamp) -> Option<&'a Stretch> {
    stretches.iter().rfind(|stretch| stretch.began.millis() <= happened.millis())
}
