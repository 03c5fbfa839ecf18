//! What is left where the program breaks: no picture of its memory on the disk, nothing for another program of the
//! same person to look into, and one line that says where in the program it happened. Decides that before anything
//! else runs, so that no key was in memory earlier.
//!
//! What the system swaps to its disk is not in reach; whoever is the administrator of the machine sees everything.

use std::panic::PanicHookInfo;

use rustix::process::{Resource, Rlimit, getrlimit, setrlimit};

use crate::print;

/// From here on. That a system knows one of it not at all is no reason not to go on.
pub(crate) fn leaves_nothing() {
    no_picture();
    std::panic::set_hook(Box::new(|fault| print::to_stderr(&line(fault))));
}

fn no_picture() {
    // Where the system writes a core file itself.
    let most = getrlimit(Resource::Core).maximum;
    let _ = setrlimit(Resource::Core, Rlimit { current: Some(0), maximum: most });
    // Where it hands one to a program of its own, which may keep it, whatever the limit; and nobody traces us.
    #[cfg(target_os = "linux")]
    let _ = rustix::process::set_dumpable_behavior(rustix::process::DumpableBehavior::NotDumpable);
}

/// A fault says where in the program it happened and nothing else: its message could hold what somebody wrote.
fn line(fault: &PanicHookInfo<'_>) -> String {
    let place = fault.location().map(ToString::to_string).unwrap_or_default();
    format!("A fault inside Frond, at {place}.")
}

#[cfg(test)]
mod tests {
    use std::sync::{Arc, Mutex};

    use super::*;

    #[test]
    fn a_fault_says_where_and_never_what() {
        let said = Arc::new(Mutex::new(String::new()));
        let heard = said.clone();
        let before = std::panic::take_hook();
        std::panic::set_hook(Box::new(move |fault| *heard.lock().unwrap() = line(fault)));
        let note = "it was sore, and Wren is away";
        // The standard library's own message holds the text that was cut.
        let cut = std::panic::catch_unwind(|| note.split_at(note.len() + 1).0.len());
        std::panic::set_hook(before);
        assert!(cut.is_err());
        let said = said.lock().unwrap().clone();
        assert!(said.starts_with("A fault inside Frond, at ") && !said.contains("sore"), "{said}");
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn nobody_looks_into_its_memory() {
        no_picture();
        let standing = rustix::process::dumpable_behavior().unwrap();
        assert_eq!(standing, rustix::process::DumpableBehavior::NotDumpable);
        assert_eq!(getrlimit(Resource::Core).current, Some(0));
    }
}
