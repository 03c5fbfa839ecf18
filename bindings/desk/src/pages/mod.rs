//! What every page server of ours needs, and the try-out made with it.
//!
//! [`guard`] decides who may see a page, [`form`] what a form said, [`parts`] what a page is made of,
//! [`look`] how it looks, [`serve`] where it listens and when it stops. What is shown is decided by the
//! core's records; which of them, by [`try_out`].

pub(crate) mod form;
pub(crate) mod guard;
pub(crate) mod look;
pub(crate) mod parts;
pub(crate) mod serve;
pub(crate) mod try_out;
