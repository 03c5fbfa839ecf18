//! The diary as a whole, from the first opening to the last erase; one file for each idea, and every request once here.

mod coding;
mod copying;
mod desk;
mod handing;
mod kit;
mod life;
mod pressing;
mod standing;

use super::WholeRequest;
use crate::diary::erase::Erase;
use crate::screens::{SummaryClose, SummaryKind};
use crate::summary::Selection;

/// One of each, none of which is a right secret.
fn requests() -> Vec<WholeRequest> {
    let text = || "1 2".to_owned();
    let day = chrono::NaiveDate::from_ymd_opt(2026, 3, 2).unwrap();
    let close = Some(SummaryClose::Open);
    vec![
        WholeRequest::Begin,
        WholeRequest::StartNew,
        WholeRequest::GiveCode { code: text() },
        WholeRequest::CodeForm,
        WholeRequest::SetCode { new: text(), again: text() },
        WholeRequest::RemoveCode { code: text() },
        WholeRequest::NewPhrase,
        WholeRequest::PhraseWritten,
        WholeRequest::CheckPhrase { words: vec![text()] },
        WholeRequest::CopyForm,
        WholeRequest::MakeCopy,
        WholeRequest::RestoreForm,
        WholeRequest::LookIntoBackup,
        WholeRequest::RestoreCopyForm,
        WholeRequest::LookIntoCopy { bytes: vec![1], phrase: text() },
        WholeRequest::RestoreNow,
        WholeRequest::OpenByPhraseForm,
        WholeRequest::OpenByPhrase { phrase: text() },
        WholeRequest::EraseDaysForm,
        WholeRequest::LookEraseDays { from: text(), to: text() },
        WholeRequest::Erase(Erase::Days { from: day, to: day }),
        WholeRequest::EraseAll,
        WholeRequest::AddPlanForm,
        WholeRequest::PlanFile { bytes: vec![1], words: text() },
        WholeRequest::PlanLink { link: text(), words: text() },
        WholeRequest::PlanNotMine,
        WholeRequest::SummaryFile {
            selection: Selection::default(),
            close,
            passphrase: text(),
            again: text(),
            time_alone: false,
            kind: SummaryKind::Summary,
        },
        WholeRequest::TryAgain,
        WholeRequest::Lock,
    ]
}
