//! What a person can ask of the diary as a whole. Forms are asked for and answered here too, so that a shell
//! lays out what it is given and sends back what was typed.

use crate::diary::erase::Erase;
use crate::screens::{SummaryClose, SummaryKind};
use crate::summary::Selection;

/// One request about the diary as a whole. Secrets come as typed and are wiped when done with; none of them
/// is ever part of an answer.
pub enum WholeRequest {
    /// The first thing at launch and after unlocking: the open diary, or what stands in its way.
    Begin,
    /// Start a new diary where there is none.
    StartNew,
    /// The code is given.
    GiveCode {
        /// As typed.
        code: String,
    },
    /// The form for choosing, changing and taking away the code.
    CodeForm,
    /// Another code, or the first.
    SetCode {
        /// As typed.
        new: String,
        /// The same once more.
        again: String,
    },
    /// No code from now on.
    RemoveCode {
        /// The code in use.
        code: String,
    },
    /// Put the open diary and its code out of memory; the next look asks for the code.
    Lock,
    /// Twelve new words. They open nothing before some of them were found on the paper.
    NewPhrase,
    /// The words were written down: the form that asks for some of them.
    PhraseWritten,
    /// Some of the twelve words, from the paper.
    CheckPhrase {
        /// In the order in which they were asked.
        words: Vec<String>,
    },
    /// The form for a copy for elsewhere.
    CopyForm,
    /// The copy, as a duty to share it.
    MakeCopy,
    /// Which copy is to be restored.
    RestoreForm,
    /// Look into the newest backup on this device.
    LookIntoBackup,
    /// The form for a copy from elsewhere.
    RestoreCopyForm,
    /// Look into a copy from elsewhere.
    LookIntoCopy {
        /// The file.
        bytes: Vec<u8>,
        /// The twelve words, as typed.
        phrase: String,
    },
    /// Restore the copy that was looked into.
    RestoreNow,
    /// The form for opening with the twelve words.
    OpenByPhraseForm,
    /// Open with the twelve words; the keeper opens it from then on, without a code.
    OpenByPhrase {
        /// As typed.
        phrase: String,
    },
    /// Which days are to be erased.
    EraseDaysForm,
    /// What erasing these days would come to.
    LookEraseDays {
        /// The first, as typed: 2026-05-04.
        from: String,
        /// The last.
        to: String,
    },
    /// Erase, after it was read what that comes to.
    Erase(Erase),
    /// Erase everything, after it was read what that comes to.
    EraseAll,
    /// The form for a plan.
    AddPlanForm,
    /// A plan that came as a file.
    PlanFile {
        /// The file.
        bytes: Vec<u8>,
        /// The spoken words, where the file holds a sealed link; otherwise empty.
        words: String,
    },
    /// A plan that came as a link.
    PlanLink {
        /// Its text.
        link: String,
        /// The spoken words; empty: none.
        words: String,
    },
    /// "This is not mine": the plan that waits is put away.
    PlanNotMine,
    /// A summary as a file, as a duty to share it.
    SummaryFile {
        /// What goes along.
        selection: Selection,
        /// Who can open it; `None`: not chosen yet.
        close: Option<SummaryClose>,
        /// For a passphrase: as typed.
        passphrase: String,
        /// The same once more.
        again: String,
        /// The wish for time alone; only a sealed summary carries it.
        time_alone: bool,
        /// Which file.
        kind: SummaryKind,
    },
    /// Open again what did not open.
    TryAgain,
}
