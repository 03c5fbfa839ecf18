//! What every page server of ours needs, and the two made with it.
//!
//! [`guard`] decides who may see a page, [`app`] how a request reaches what it is about, [`form`] and
//! [`upload`] what a form said, [`parts`] what a page is made of, [`look`] how it looks, [`clock`] what time
//! it is, [`serve`] where it listens and when it stops, [`connections`] how many are let in and how long they may
//! take. [`try_out`] shows the core's records as the person
//! sees them; [`desk`] is the clinician's side.

pub(crate) mod app;
pub(crate) mod clock;
pub(crate) mod connections;
pub(crate) mod desk;
pub(crate) mod form;
pub(crate) mod guard;
pub(crate) mod look;
pub(crate) mod parts;
pub(crate) mod serve;
pub(crate) mod try_out;
pub(crate) mod upload;
