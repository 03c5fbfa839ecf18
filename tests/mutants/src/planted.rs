
/// Whether the mutant of this number acts. The number comes from the environment and is read once; where a file is
/// named instead, the numbers that are asked for are written to it, each once.
#[inline]
pub fn mutant(number: u32) -> bool {
    let chosen = planted::CHOSEN.load(std::sync::atomic::Ordering::Relaxed);
    if chosen < planted::RECORDING { chosen == number } else { planted::look(number) }
}

mod planted {
    use std::fs::OpenOptions;
    use std::io::Write;
    use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};

    pub(super) static CHOSEN: AtomicU32 = AtomicU32::new(UNREAD);
    pub(super) const RECORDING: u32 = u32::MAX - 1;
    const UNREAD: u32 = u32::MAX;
    /// More numbers than there are. What lies beyond is written down each time, which is only slow.
    const ROOM: usize = 8192;
    static ASKED: [AtomicBool; ROOM] = [const { AtomicBool::new(false) }; ROOM];

    #[cold]
    pub(super) fn look(number: u32) -> bool {
        let place = usize::try_from(number).ok().and_then(|number| ASKED.get(number));
        // Only set where it is recorded. Asking again is what takes the time of a long test.
        if place.is_some_and(|asked| asked.load(Ordering::Relaxed)) {
            return false;
        }
        let file = std::env::var_os("FROND_MUTANTS_ASKED");
        if CHOSEN.load(Ordering::Relaxed) == UNREAD {
            let chosen = std::env::var("FROND_MUTANT").ok().and_then(|text| text.parse().ok());
            let chosen = if file.is_some() { RECORDING } else { chosen.unwrap_or(0) };
            CHOSEN.store(chosen, Ordering::Relaxed);
            if chosen != RECORDING {
                return chosen == number;
            }
        }
        let new = place.is_none_or(|asked| !asked.swap(true, Ordering::Relaxed));
        if let (true, Some(file)) = (new, file) {
            let opened = OpenOptions::new().create(true).append(true).open(file);
            let written = opened.and_then(|mut file| file.write_all(format!("{number}\n").as_bytes()));
            // Without the record a mutant would pass for one that no test reaches.
            assert!(written.is_ok(), "what was asked could not be recorded");
        }
        false
    }
}
