//! Ten thousand openings through the facade leave nothing behind: the resident memory after the first
//! thousand and after the last differ by less than a bound that any real leak would pass. Linux only:
//! `/proc/self/statm` (proc(5)) counts pages.

#![cfg(target_os = "linux")]
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests may fail loudly")]

mod kit;

use frond_core::companion::Request;
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
    let folder = if shm.is_dir() { tempfile::tempdir_in(shm) } else { tempfile::tempdir() }.unwrap();
    let keeper = MemoryKeeper::new();
    let open = |minute: i64| {
        let seen = frond(folder.path(), keeper.clone()).ask(Request::Home, moment(minute)).unwrap();
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
