//! Everything that a desk leaves in its folder, read as its worst enemy would (`tests/src/sweep`): keys and the mark of
//! their copy, a draft, one that was thrown away, a finished programme, one that was signed, summaries that came back, the
//! keys they are known by, and the index.

use frond_tests::invented::Invented;
use frond_tests::sweep::{self, Kind, Needles, WORDS};

use super::*;

/// What each file in the folder has to be; `None`: there may be no such file.
fn kind(name: &str) -> Option<Kind> {
    let hex = |text: &str, count| {
        text.len() == count && text.bytes().all(|byte| byte.is_ascii_hexdigit())
    };
    Some(match name.split('/').collect::<Vec<_>>()[..] {
        ["keys"] => Kind::Age,
        ["keys-copied" | "lock"] => Kind::Empty,
        ["diaries"] => Kind::Boxed,
        ["drafts", name] if hex(name.trim_end_matches(".away"), 32) => Kind::Boxed,
        ["plans", name] if hex(name, 32) => Kind::Boxed,
        ["summaries", name] if name.strip_suffix(".age").is_some_and(|own| hex(own, 64)) => {
            Kind::Age
        }
        ["index", ..] => Kind::Sled,
        _ => return None,
    })
}

async fn brought(server: &Server, room: &tempfile::TempDir) {
    for number in 0..3 {
        let file = room.path().join(format!("r{number}.json"));
        std::fs::write(file, Invented::new(number, 20).open_file()).unwrap();
    }
    let path = body(&[("path", room.path().to_str().unwrap())]);
    assert_eq!(server.post("/bring", &path).await.0, StatusCode::SEE_OTHER);
    while server.get("/bring/now").await.2.contains("<progress") {
        std::thread::sleep(std::time::Duration::from_millis(50));
    }
}

#[test]
fn nothing_that_a_desk_leaves_can_be_read() {
    run(async {
        let (room, others) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
        let server = desk(&room, &[]).await;
        let plan = programme(0);
        let writing = Writing::new(&server).await;
        writing.write(&plan).await;
        writing.finish().await;
        let draft = Writing::new(&server).await;
        draft.send("who", &[("for_whom", "Quillon Underway")], "save").await;
        let away = Writing::new(&server).await;
        away.send("who", &[("for_whom", "Thrown Awaysson")], "save").await;
        assert_eq!(
            server.post(&format!("{}/throw-away", away.at), "").await.0,
            StatusCode::SEE_OTHER
        );
        brought(&server, &others).await;
        let list = server.get("/people").await.2;
        server.post("/lock", "").await;
        drop(server);

        let whom: Vec<String> = (0..3)
            .map(|of| Invented::new(of, 20).summary().plan().unwrap().for_whom.to_string())
            .collect();
        assert!(whom.iter().all(|one| list.contains(one)), "they came in");
        let mut typed = vec![
            "Quillon Underway",
            "Thrown Awaysson",
            "invented words",
            plan.for_whom.as_str(),
            plan.clinician.name.as_str(),
        ];
        typed.extend(whom.iter().map(String::as_str));
        typed.retain(|text| text.len() >= 6);
        let needles = Needles::new(&WORDS).and(&typed);
        let mut left = sweep::left_in(room.path());
        for one in &mut left {
            // The one room whose documented name is a word of the field, on a clinician's own computer.
            one.name = one.name.replacen("programmes/", "plans/", 1);
        }
        assert_eq!(sweep::faults(&left, &needles, kind), [""; 0]);
        for what in ["keys", "diaries", "drafts/", "plans/", "summaries/", "index/"] {
            let there = |one: &sweep::Left| one.name.starts_with(what) && !one.name.ends_with('/');
            assert!(left.iter().any(there), "there is no {what}, so it was not read: {left:?}");
        }
        assert!(
            left.iter().any(|one| one.name.ends_with(".away")),
            "what was thrown away lies there until the next start"
        );
    });
}
