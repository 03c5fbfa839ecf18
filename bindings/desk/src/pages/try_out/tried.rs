//! The pages of a diary that nobody keeps, for [`crate::outside`].

use std::path::Path;

use axum::Router;
use frond_core::companion::Ports;
use frond_core::moment::Stamp;
use frond_core::ports::KeyKeeper;

use super::diary::Diary;
use super::router;
use crate::failure::Failure;
use crate::pages::app::App;
use crate::pages::clock::Clock;

/// The pages of a new diary with a plan that waits to be read.
pub(crate) fn pages(
    ports: Ports,
    keeper: Box<dyn KeyKeeper + Send>,
    now: Stamp,
    plan: &[u8],
) -> Result<Router, Failure> {
    let clock = Clock::beginning(Some(now))?;
    let mut diary = Diary::new_in(ports, Path::new("/diary"), keeper, clock)?;
    diary.handed(plan.to_vec())?;
    let words = diary.words().clone();
    Ok(router(App::new(diary, words)))
}
