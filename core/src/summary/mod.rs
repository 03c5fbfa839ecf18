//! Decides what leaves the phone when the person hands over how it has been: which entries, in which
//! form, signed by her diary, sealed or open; and what may be believed of such a file when it comes back.
//!
//! Leaves to [`crate::screens`] how it is worded, for her before it leaves and for the clinician who
//! reads it; to [`crate::progression`] what the rule says; to the surface where the file goes.
//!
//! Three layers, outermost first: sealing (age), the envelope ([`envelope`]), the summary ([`Summary`]).
//! Beside it stand forms for other programs: the CSV ([`table`]), FHIR R4 ([`fhir`]) and flat lines ([`flat`]).

mod digest;
pub mod envelope;
mod export;
pub mod facts;
pub mod fhir;
pub mod flat;
mod form;
mod identity;
mod lacks;
pub(crate) mod looked;
mod names;
mod present;
mod receive;
mod select;
mod step_times;
mod stored;
pub(crate) mod stretch;
pub mod table;

pub use digest::{Digest, SummaryId};
pub use export::{ExportError, TimeAlone, to_clinician};
pub use facts::Facts;
pub use form::{Form, Marks, Narrowed, Summary, VERSION};
pub use identity::{DiaryId, DiaryIdentity, Pin};
pub use lacks::Lacking;
pub use names::{FileKind, file_name};
pub use present::{BackFinding, Findings, PauseFinding, PauseNow, Present, StepNow, UpFinding};
pub use receive::{MOST_BYTES, Received, SummaryError, open_summary, read_bounded};
pub use select::Selection;
pub use step_times::{Kind, Left, StepTime, StepTimes};
