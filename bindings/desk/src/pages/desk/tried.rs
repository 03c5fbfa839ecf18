//! The pages of an open desk that nobody sits at, for [`crate::outside`]: its keys are drawn from bytes that repeat
//! and protect nothing.

use std::path::Path;
use std::sync::Arc;

use axum::Router;
use frond_core::moment::Stamp;
use frond_core::ports::Random;
use frond_core::programme::read::read;
use frond_core::sealing::ClinicKeys;
use frond_core::words::Words;

use super::router;
use super::state::{Desk, Standing};
use crate::args::DeskArgs;
use crate::clinic::cabinet::IndexKind;
use crate::clinic::programmes::Programmes;
use crate::failure::LANGUAGE;
use crate::pages::app::App;

/// The pages of a desk in this folder that draws from this seed. With a plan, one revision of it is finished first,
/// and the next begun.
pub(crate) fn pages(
    folder: &Path,
    random: fn(u64) -> Arc<dyn Random>,
    seed: u64,
    now: Stamp,
    plan: Option<&[u8]>,
) -> Option<Router> {
    let folder = Some(folder.to_path_buf());
    let args = DeskArgs { folder, now: Some(now), language: None, no_open: true, port: None };
    let words = Words::for_language(LANGUAGE);
    let mut desk = Desk::drawing(&args, words.clone(), random(seed)).ok()?;
    // sled keeps a little memory at every opening, and here there are thousands.
    desk.index = IndexKind::Plain;
    // The same keys at every desk: what one sealed, the next opens.
    desk.unlock(ClinicKeys::new(&*random(1)).ok()?);
    if let (Some(plan), Ok(Standing::Open(clinic))) = (plan, desk.stand()) {
        let programmes = Programmes::of(&clinic).ok()?;
        let plan = read(plan).ok()?;
        let draft = programmes.begin_next(&plan, [], now).ok()?;
        let finished = programmes.finish(&draft, now).ok()?;
        programmes.begin_next(&finished.programme, [], now).ok()?;
    }
    Some(router(App::new(desk, words)))
}
