//! What `frond try` leaves while it runs and after it was killed, read as its worst enemy would: the temporary folder of a
//! try-out, and a diary of one's own.

use frond_tests::sweep::{self, Kind, Needles, WORDS};

use crate::client::{Server, id};

const QUESTION: &str = "is a little soreness usual?";

/// What each file in the folder of a try-out has to be.
fn kind(name: &str) -> Option<Kind> {
    // The folder's own name is drawn: `frond-` and six letters or digits.
    let (own, rest) = name.split_once('/')?;
    if !own.starts_with("frond-") {
        return None;
    }
    Some(match rest.split('/').collect::<Vec<_>>()[..] {
        ["diary", "keys"] => Kind::Keys,
        ["diary", "journal"] => Kind::Journal,
        ["diary", "snapshot" | "running"] => Kind::Sealed,
        ["diary", "lock" | "renew"] => Kind::Empty,
        ["diary", "backups", _] => Kind::Backup,
        ["diary.tries"] => Kind::Tries,
        _ => return None,
    })
}

#[test]
fn the_temporary_folder_of_a_try_out_can_be_read_by_nobody() {
    let server = Server::entered(&[]);
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", QUESTION)]);
    // A code, so that tries are counted beside the diary, and one that is wrong.
    server.told("/keeping/code", &[("new", "four small apples"), ("again", "four small apples")]);
    assert_eq!(server.post("/lock", &[]).status, 303);
    server.post("/code", &[("code", "four other apples")]);
    let looks = |temporary: &std::path::Path| {
        let left = sweep::left_in(temporary);
        let needles =
            Needles::new(&WORDS).and(&[QUESTION, "four small apples", "Marlowe", "01632 960"]);
        assert_eq!(sweep::faults(&left, &needles, kind), [""; 0]);
        for what in ["/keys", "/journal", "/diary.tries"] {
            assert!(
                left.iter().any(|one| one.name.ends_with(what)),
                "there is no {what}: {left:?}"
            );
        }
    };
    looks(server.temporary.path());
    // Killed, it cannot clear up; its key was in its memory alone.
    let temporary = server.killed();
    looks(temporary.path());
}
