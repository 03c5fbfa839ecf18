//! The words of forms and of the phone's own notices.

use frond_core::screens::FormWords;

#[uniffi::remote(Record)]
pub struct FormWords {
    pub name: String,
}
