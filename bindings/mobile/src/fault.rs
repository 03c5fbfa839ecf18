//! A fault of the program in the middle of a request: it ends with the request, and nothing of it reaches a phone's log.
//! Its message could hold what somebody wrote (the standard library's own say which text was cut). Decides that outside a
//! request everything stays as it was, since the process is not ours alone.

use std::cell::Cell;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Once;

thread_local! {
    /// Whether a request is under way on this thread.
    static INSIDE: Cell<bool> = const { Cell::new(false) };
}

static QUIET: Once = Once::new();

/// Whatever came of it; `None` after a fault, of which nothing is told.
pub(crate) fn caught<T>(act: impl FnOnce() -> T) -> Option<T> {
    QUIET.call_once(|| {
        let before = std::panic::take_hook();
        std::panic::set_hook(Box::new(move |fault| {
            if !INSIDE.get() {
                before(fault);
            }
        }));
    });
    INSIDE.set(true);
    let done = catch_unwind(AssertUnwindSafe(act));
    INSIDE.set(false);
    // What was thrown is dropped unread.
    done.ok()
}
