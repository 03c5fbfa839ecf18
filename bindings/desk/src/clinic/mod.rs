//! The clinician's side without its pages: one folder on her computer, and the keys that open it.
//!
//! [`folder`] decides where what lies and that one program has it at a time, [`keys`] how the keys are kept
//! and copied, [`programmes`] how drafts and finished programmes are, [`hand_over`] how a signed plan
//! becomes a code. Everything a person wrote lies sealed; file names tell nothing. Leaves to the core what is
//! signed and sealed, and to [`crate::pages::desk`] what is shown.

pub(crate) mod cabinet;
pub(crate) mod folder;
pub(crate) mod hand_over;
pub(crate) mod keys;
pub(crate) mod letter;
pub(crate) mod programmes;

use std::sync::Arc;

use frond_core::ports::Random;
use frond_core::sealing::ClinicKeys;

use folder::Folder;

/// The desk, open.
pub(crate) struct Clinic {
    /// Where everything lies.
    pub(crate) folder: Arc<Folder>,
    /// The keys.
    pub(crate) keys: ClinicKeys,
    /// Random bytes.
    pub(crate) random: Arc<dyn Random>,
    /// The summaries that came back.
    pub(crate) cabinet: cabinet::Shelf,
}
