//! Ten thousand openings through the facade leave nothing behind: the resident memory after the first
//! thousand and after the last differ by less than a bound that any real leak would pass. Linux only:
//! `/proc/self/statm` (proc(5)) counts pages.

#![cfg(target_os = "linux")]
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

mod kit;

use frond_core::screens::Screen;
use frond_core::whole::{Seen, View, WholeRequest};
use kit::{MemoryKeeper, frond, moment};

/// Resident pages, the second number of `/proc/self/statm`.
fn resident_pages() -> u64 {
    let statm = std::fs::read_to_string("/proc/self/statm").unwrap();
    statm.split(' ').nth(1).unwrap().parse().unwrap()
}

#[test]
fn ten_thousand_openings_do_not_grow_memory() {
    // In memory where there is such a place: a disk's syncs are not what is looked at.
    let shm = std::path::Path::new("/dev/shm");
    let folder =
        if shm.is_dir() { tempfile::tempdir_in(shm) } else { tempfile::tempdir() }.unwrap();
    let keeper = MemoryKeeper::new();
    drop(kit::started(folder.path(), keeper.clone()));
    let open = |minute: i64| {
        let frond = frond(folder.path(), keeper.clone());
        let seen: Seen = frond.whole(WholeRequest::Begin, moment(minute)).unwrap();
        assert!(matches!(seen.view, View::Screen(Screen::Today(_) | Screen::FirstRun(_))));
        // As it leaves for the other side, and is freed there.
        assert!(!kit::lowered(seen).is_empty());
    };
    (0..1000).for_each(&open);
    let settled = resident_pages();
    (1000..10_000).for_each(&open);
    let grown = resident_pages().saturating_sub(settled);
    // 9,000 openings in 1,000 pages of 4 KiB: less than half a kilobyte for each.
    assert!(grown < 1000, "{grown} pages more");
}
