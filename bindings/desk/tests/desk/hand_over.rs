//! `frond hand-over` and `frond accept`: from the clinic's keys to the patient's diary, by commands alone.

use std::fs;

use frond_core::ports::{OsRandom, Passphrase};
use frond_core::sealing::ClinicKeys;

use crate::kit::{Diary, refused, run, said, write_private};

/// Without the breaks that fit lines to a terminal.
fn flat(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// So many words behind these.
fn after(said: &str, words: &str, count: usize) -> String {
    let said = flat(said);
    let rest = said.split_once(words).unwrap_or_else(|| panic!("{words}: {said}")).1;
    rest.split_whitespace().take(count).collect::<Vec<_>>().join(" ")
}

/// A drawing without the squares of its code, which are one path.
fn undrawn(svg: &str) -> String {
    let (before, path) = svg.split_once("<path d=\"").unwrap();
    let (squares, behind) = path.split_once('"').unwrap();
    assert!(squares.chars().all(|c| c.is_ascii_digit() || "Mhvz -".contains(c)));
    [before, behind].concat()
}

#[test]
fn a_plan_is_signed_drawn_and_accepted_with_its_words() {
    let diary = Diary::place();
    let programme = diary.programme();
    let at = |name: &str| diary.base.path().join(name).display().to_string();
    fs::create_dir(at("clinic")).unwrap();
    let keys = ClinicKeys::new(&OsRandom).unwrap();
    let passphrase = Passphrase::new("invented clinic words".to_owned()).unwrap();
    fs::write(at("clinic/keys"), keys.seal(passphrase).unwrap()).unwrap();
    write_private(at("clinic-secret").as_ref(), "invented clinic words\n");

    let (clinic, secret) = (at("clinic"), at("clinic-secret"));
    let hand = ["hand-over", &programme, "--keys", &clinic, "--passphrase-file", &secret];
    let hand_over = |more: &[&str]| run(&[&hand[..], more].concat());
    let (file, drawing) = (at("plan.signed"), at("plan.svg"));
    // Nothing to make is nothing to sign.
    refused(&hand_over(&[]), 2);
    let told = said(&hand_over(&["--file", &file, "--qr", &drawing, "--link"]));
    let key_words = frond_core::handover::key_words(&keys.verify_key()).join(" ");
    assert_eq!(after(&told, "The words of your key:", 6), key_words);
    let spoken = after(&told, "The words that open the code:", 4);
    let link = told.lines().find(|line| line.starts_with("FROND:")).unwrap().to_owned();
    let drawn = fs::read_to_string(&drawing).unwrap();
    assert!(drawn.starts_with("<svg ") && drawn.contains("<title"));
    // Spoken, not drawn: the text of a drawing is the same whatever the words are. To look for the words themselves would
    // find them by chance now and then, since some of them ("code", "image") are used to describe it.
    let again = at("again.svg");
    let told = said(&hand_over(&["--qr", &again]));
    assert_ne!(after(&told, "The words that open the code:", 4), spoken);
    assert_eq!(undrawn(&fs::read_to_string(&again).unwrap()), undrawn(&drawn));
    let checked = said(&run(&["check", &file, "--read-back"]));
    assert!(flat(&checked).contains(&key_words) && checked.contains("written correctly"));
    // What is there is left alone.
    assert!(refused(&hand_over(&["--file", &file]), 2).contains("is there already"));
    let open = said(&hand_over(&["--link", "--open"]));
    assert!(open.contains("It is open"));

    // The link, typed in small letters, with its words in large ones.
    let written = at("link.txt");
    fs::write(&written, link.to_lowercase()).unwrap();
    let started = ["start", "--programme", &written, "--yes"];
    assert!(flat(&refused(&diary.run("02T18:20", &started), 2)).contains("4 words"));
    let words = spoken.to_uppercase();
    diary.say("02T18:20", &[&started[..], &["--words", &words]].concat());
    assert!(flat(&diary.say("02T18:21", &["plan"])).contains(&key_words));
    assert!(
        flat(&refused(&diary.run("02T18:22", &["accept", &file, "--yes"]), 2))
            .contains("You use this plan already")
    );

    // Another clinic's key, and an altered file.
    let other =
        fs::read_to_string(&programme).unwrap().replace("\"revision\": 1", "\"revision\": 2");
    fs::write(at("two.json"), &other).unwrap();
    let passphrase = Passphrase::new("invented clinic words".to_owned()).unwrap();
    let foreign = ClinicKeys::new(&OsRandom).unwrap();
    fs::write(at("clinic/keys"), foreign.seal(passphrase).unwrap()).unwrap();
    let (two, signed) = (at("two.json"), at("two.signed"));
    said(&run(&[
        "hand-over",
        &two,
        "--keys",
        &clinic,
        "--passphrase-file",
        &secret,
        "--file",
        &signed,
    ]));
    let accept = ["accept", &signed, "--yes"];
    assert!(flat(&refused(&diary.run("03T18:20", &accept), 2)).contains("--although other-key"));
    let mut altered = fs::read(&signed).unwrap();
    let middle = altered.len() / 2;
    altered[middle] ^= 1;
    fs::write(at("altered"), &altered).unwrap();
    let altered = ["accept", &at("altered"), "--yes", "--although", "other-key"].map(str::to_owned);
    let altered: Vec<&str> = altered.iter().map(String::as_str).collect();
    assert!(flat(&refused(&diary.run("03T18:21", &altered), 2)).contains("signature does not fit"));
    diary.say("03T18:22", &[&accept[..], &["--although", "other-key"]].concat());
    // Older again.
    let older = ["accept", &file, "--yes", "--although", "other-key"];
    assert!(
        flat(&refused(&diary.run("03T18:23", &older), 2)).contains("--although older-revision")
    );
    // A wrong passphrase signs nothing.
    write_private(at("clinic-secret").as_ref(), "other words\n");
    refused(
        &run(&["hand-over", &two, "--keys", &clinic, "--passphrase-file", &secret, "--link"]),
        2,
    );
}
