//! A programme that arrives, at the door: who signed it, which key is known, what has to be chosen knowingly.
//! Stands beside H4 and H5 of the hazard log.

use std::collections::BTreeSet;

use frond_core::companion::{Refusal, Request, Told, Trouble};
use frond_core::diary::entry::{Although, Content, KeyStood, SignedBy};
use frond_core::handover::{HandOver, HandOverError, Handed, LinkTo, SpokenWords};
use frond_core::ports::sim::SeededRandom;
use frond_core::screens::{AcceptScreen, ReadingPartKind, ReadingScreen, Screen};
use frond_core::sealing::{Follows, SigningKey};
use frond_core::summary::{Selection, open_summary};
use frond_tests::home::{Home, PLAN};
use zeroize::Zeroizing;

const START: &str = "2026-03-03T18:00:00+00:00[Europe/London]";

fn key(byte: u8) -> SigningKey {
    SigningKey::from_seed(&Zeroizing::new([byte; 32]))
}

/// The plan with another revision and another instruction.
fn plan(revision: u32, instruction: &str) -> String {
    let mut plan: serde_json::Value = serde_json::from_str(PLAN).unwrap();
    plan["revision"] = revision.into();
    plan["steps"][0]["instruction"] = instruction.into();
    plan.to_string()
}

fn signed(plan: &str, by: &SigningKey, follows: Option<Follows>) -> Handed {
    let handed = HandOver::sign(plan.as_bytes(), by, follows).unwrap();
    Handed::File(handed.file().into())
}

/// Signed with the key of the seed `by`, which follows none.
fn by(by: u8, revision: u32) -> Handed {
    signed(&plan(revision, "As agreed."), &key(by), None)
}

fn shown(home: &mut Home, handed: &Handed) -> AcceptScreen {
    match home.ask(Request::Accept(handed.clone())) {
        Screen::Accept(screen) => screen,
        _ => panic!("another screen"),
    }
}

fn told(handed: &Handed, although: &[Although]) -> Told {
    Told::Programme { handed: handed.clone(), although: although.to_vec() }
}

/// How the programme accepted last was signed, and what was chosen knowingly.
fn last(home: &Home) -> (Option<SignedBy>, Vec<Although>) {
    let entries = home.companion.entries().unwrap();
    let found = entries.into_iter().rev().find_map(|entry| match entry.what {
        Content::ProgrammeAccepted { signed, although, .. } => Some((signed, although)),
        _ => None,
    });
    let (signed, although) = found.unwrap();
    (signed.map(|signed| *signed), although)
}

fn pinned(home: &Home) -> Option<[u8; 32]> {
    home.companion.state().pinned().map(|key| key.to_bytes())
}

fn public(byte: u8) -> Option<[u8; 32]> {
    Some(key(byte).verify_key().to_bytes())
}

/// Every subset of choices but those with all that is needed is refused, and nothing is written.
fn needs(home: &mut Home, handed: &Handed, needed: &[Although]) {
    let before = home.companion.entries().unwrap().len();
    let shown = shown(home, handed);
    let asked: Vec<Although> = shown.knowing.iter().map(|one| one.although).collect();
    assert_eq!(asked, needed);
    for chosen in 0..16u8 {
        let given: BTreeSet<Although> = Although::ALL
            .into_iter()
            .enumerate()
            .filter(|(at, _)| chosen >> at & 1 == 1)
            .map(|(_, one)| one)
            .collect();
        let missing = needed.iter().find(|one| !given.contains(one));
        let given: Vec<Although> = given.into_iter().collect();
        if let Some(missing) = missing {
            let trouble = home.refused(None, told(handed, &given));
            assert_eq!(trouble, Trouble::PutRight(Refusal::Although(*missing)));
        }
    }
    assert_eq!(home.companion.entries().unwrap().len(), before);
}

#[test]
fn the_first_key_is_pinned_at_acceptance_and_the_same_key_passes_quietly() {
    let mut home = Home::new(START);
    let first = by(1, 1);
    let screen = shown(&mut home, &first);
    assert!(screen.knowing.is_empty() && screen.different.is_none());
    let lines = screen.signed.unwrap().lines;
    let words = frond_core::handover::key_words(&key(1).verify_key()).join(" ");
    assert!(lines.iter().any(|line| line.contains(&words)), "to compare");
    assert_eq!(pinned(&home), None, "nothing is pinned by reading");
    home.tell(told(&first, &[]));
    assert_eq!(pinned(&home), public(1));
    let (signed, although) = last(&home);
    let signed = signed.unwrap();
    assert_eq!((signed.stood, although), (KeyStood::First, vec![]));
    let next = by(1, 2);
    let screen = shown(&mut home, &next);
    assert_eq!(screen.signed.unwrap().lines.len(), 1, "quietly");
    assert!(screen.knowing.is_empty());
    home.tell(told(&next, &[]));
    assert_eq!(last(&home).0.unwrap().stood, KeyStood::Same);
    assert_eq!(pinned(&home), public(1));
    let Screen::Plan(plan) = home.ask(Request::Plan) else { panic!() };
    assert!(plan.key.unwrap().contains(&words), "to compare at any time");
}

#[test]
fn what_was_kept_is_the_exact_text_and_its_signature_still_holds() {
    let mut home = Home::new(START);
    home.tell(told(&by(1, 1), &[]));
    let entries = home.companion.entries().unwrap();
    let Content::ProgrammeAccepted { carried, signed, .. } = &entries[0].what else { panic!() };
    let signed = signed.as_ref().unwrap();
    let context = frond_core::sealing::Context::new("frond programme 1");
    signed.key.verify(context, carried.as_bytes(), &signed.signature).unwrap();
}

#[test]
fn a_key_that_follows_the_pinned_one_is_shown_and_accepted() {
    let mut home = Home::new(START);
    home.tell(told(&by(1, 1), &[]));
    let follows = Follows::sign(&key(1), &key(2).verify_key());
    let next = signed(&plan(2, "As agreed."), &key(2), Some(follows));
    let screen = shown(&mut home, &next);
    let words = frond_core::handover::key_words(&key(2).verify_key()).join(" ");
    assert!(screen.signed.unwrap().lines.join(" ").contains(&words), "shown");
    assert!(screen.knowing.is_empty());
    home.tell(told(&next, &[]));
    assert_eq!(last(&home).0.unwrap().stood, KeyStood::Follows);
    assert_eq!(pinned(&home), public(2));
    // From now on the old key is another one, as it would be in the hands of whoever found it.
    needs(&mut home, &by(1, 3), &[Although::OtherKey]);
    // And what follows the old key follows no longer.
    let late = Follows::sign(&key(1), &key(3).verify_key());
    let late = signed(&plan(3, "As agreed."), &key(3), Some(late));
    needs(&mut home, &late, &[Although::OtherKey]);
}

#[test]
fn a_foreign_key_and_a_plan_that_nobody_signed_need_a_deliberate_choice() {
    let mut home = Home::new(START);
    let plain = Handed::text(&plan(1, "As agreed."));
    needs(&mut home, &plain, &[Although::Unsigned]);
    home.tell(told(&plain, &[Although::Unsigned, Although::OtherKey]));
    assert_eq!(last(&home), (None, vec![Although::Unsigned]), "only what was needed is kept");
    assert_eq!(pinned(&home), None);
    home.tell(told(&by(1, 2), &[]));
    assert_eq!(last(&home).0.unwrap().stood, KeyStood::First);
    let foreign = by(9, 3);
    needs(&mut home, &foreign, &[Although::OtherKey]);
    let screen = shown(&mut home, &foreign);
    let said = screen.signed.unwrap().lines.join(" ");
    for seed in [1, 9] {
        let words = frond_core::handover::key_words(&key(seed).verify_key()).join(" ");
        assert!(said.contains(&words), "both keys are shown");
    }
    // Unsigned, the key that is known stays.
    let plain = Handed::text(&plan(3, "As agreed."));
    needs(&mut home, &plain, &[Although::Unsigned]);
    home.tell(told(&plain, &[Although::Unsigned]));
    assert_eq!(pinned(&home), public(1));
    home.tell(told(&by(9, 4), &[Although::OtherKey]));
    assert_eq!(pinned(&home), public(9));
    assert_eq!(last(&home).0.unwrap().stood, KeyStood::Other);
}

#[test]
fn an_older_revision_or_the_same_number_with_other_content_needs_a_deliberate_choice() {
    let mut home = Home::new(START);
    home.tell(told(&by(1, 3), &[]));
    needs(&mut home, &by(1, 2), &[Although::OlderRevision]);
    needs(&mut home, &by(9, 2), &[Although::OtherKey, Although::OlderRevision]);
    let other = signed(&plan(3, "Something else."), &key(1), None);
    needs(&mut home, &other, &[Although::SameRevision]);
    let different = shown(&mut home, &other).different.unwrap().lines.join("\n");
    assert!(different.contains("Something else.") && different.contains("As agreed."));
    assert_eq!(different.lines().count(), 3, "one line each way, and what it stands to");
    let newer = shown(&mut home, &by(1, 4)).different.unwrap().lines;
    assert_eq!(newer.len(), 1, "a number and a date alone are no difference");
    home.tell(told(&other, &[Although::SameRevision]));
    home.tell(told(&by(1, 2), &[Although::OlderRevision]));
    assert_eq!(last(&home).1, vec![Although::OlderRevision]);
    // The very one, signed again by somebody else, changes nothing.
    let trouble = home.refused(None, told(&by(9, 2), &Although::ALL));
    assert_eq!(trouble, Trouble::PutRight(Refusal::RevisionInUse));
    let screen = shown(&mut home, &by(1, 2));
    assert!(screen.handed.is_none() && screen.yours.is_none(), "nothing to say yes to");
}

#[test]
fn another_programme_is_said_and_is_no_revision() {
    let mut home = Home::new(START);
    home.tell(told(&by(1, 3), &[]));
    let mut another: serde_json::Value = serde_json::from_str(&plan(1, "As agreed.")).unwrap();
    another["id"] = "another".into();
    let handed = signed(&another.to_string(), &key(1), None);
    let screen = shown(&mut home, &handed);
    assert!(screen.knowing.is_empty());
    let different = screen.different.unwrap().lines;
    assert_eq!(different.len(), 1, "said, and not compared line by line");
    assert!(different[0].starts_with("It is another plan, not a new revision of yours."));
    assert!(screen.yours.is_some(), "is this yours stays");
    home.tell(told(&handed, &[]));
    // Back to the first one: an older revision of it than was used before is older all the same.
    needs(&mut home, &by(1, 2), &[Although::OlderRevision]);
    assert_eq!(shown(&mut home, &by(1, 2)).different.unwrap().lines.len(), 2);
    needs(&mut home, &by(1, 4), &[]);
    home.tell(told(&by(1, 2), &[Although::OlderRevision]));
    home.companion.save().unwrap();
    let mut home = home.reopen();
    assert_eq!(home.companion.state().last_revision("another"), Some(1), "from the snapshot");
    needs(&mut home, &by(1, 3), &[]);
}

#[test]
fn a_link_is_accepted_with_its_words_and_each_refusal_says_what_to_do() {
    let mut home = Home::new(START);
    let handed = HandOver::sign(plan(1, "As agreed.").as_bytes(), &key(1), None).unwrap();
    let random = SeededRandom::new(5);
    let words = SpokenWords::new(&random).unwrap();
    let spoken: Vec<&str> = words.words().collect();
    let link = handed.link(LinkTo::Words(&words), &random).unwrap();
    let with = |link: &str, words: &str| Handed::Link { link: link.into(), words: words.into() };
    let cut = &link[..link.len() - 1];
    for (given, asks_words, why) in [
        (with(&link, ""), true, HandOverError::WordsNeeded),
        (with(&link, "able able able able"), true, HandOverError::WrongWords),
        (with(cut, &spoken.join(" ")), false, HandOverError::Garbled),
        (with("https://example.org", ""), false, HandOverError::NotALink),
    ] {
        let screen = shown(&mut home, &given);
        assert_eq!(screen.refused.as_ref(), Some(&why.say(home.companion.words())));
        assert_eq!(screen.asks_words, asks_words);
        assert!(screen.handed.is_none() && screen.cards.is_empty());
        let trouble = home.refused(None, told(&given, &Although::ALL));
        assert_eq!(trouble, Trouble::PutRight(Refusal::HandOver(why)));
    }
    let typed = spoken.join("  ").to_uppercase();
    let right = with(&link.to_lowercase(), &typed);
    assert!(shown(&mut home, &right).yours.is_some());
    home.tell(told(&right, &[]));
    assert_eq!(pinned(&home), public(1));
    assert!(home.companion.entries().unwrap().len() == 1);
}

#[test]
fn an_altered_file_is_refused_at_the_door_and_nothing_is_kept() {
    let mut home = Home::new(START);
    let Handed::File(file) = by(1, 1) else { panic!() };
    let mut altered = file.to_vec();
    let at = altered.windows(10).position(|seen| seen == b"As agreed.").unwrap();
    altered[at] = b'a';
    let altered = Handed::File(altered.into());
    let screen = shown(&mut home, &altered);
    let says = HandOverError::NotGenuine.say(home.companion.words());
    assert_eq!(screen.refused, Some(says));
    let trouble = home.refused(None, told(&altered, &Although::ALL));
    assert_eq!(trouble, Trouble::PutRight(Refusal::HandOver(HandOverError::NotGenuine)));
    assert!(home.companion.entries().unwrap().is_empty());
}

/// The pin is a fold of the diary: the same from a snapshot, from the journal, and after a strike.
#[test]
fn the_pin_lives_in_the_diary() {
    let mut home = Home::new(START);
    home.tell(told(&by(1, 1), &[]));
    let (foreign, _) = home.tell(told(&by(9, 2), &[Although::OtherKey]));
    home.companion.save().unwrap();
    let mut home = home.reopen();
    assert_eq!(pinned(&home), public(9), "from the snapshot");
    home.tell(Told::Strike { of: foreign });
    assert_eq!(pinned(&home), public(1), "what was left out pins nothing");
    let home = home.reopen();
    assert_eq!(pinned(&home), public(1), "from the journal");
}

/// What the clinician reads before a visit: of the plan in force, and of those before it.
fn read_before_a_visit(home: &Home) -> (Vec<String>, Vec<String>) {
    let companion = &home.companion;
    let summary = companion.summary(&Selection::default(), &home.moment.now).unwrap();
    let received = open_summary(&summary.open_form(&companion.identity()).unwrap(), None).unwrap();
    let reading = ReadingScreen::new(&received, companion.words(), false).unwrap();
    let of = |part: ReadingPartKind| {
        let part = reading.parts.iter().filter(|one| one.part == part);
        part.flat_map(|part| &part.points).cloned().collect::<Vec<_>>()
    };
    let plan = of(ReadingPartKind::Present).into_iter().filter(|one| one.text.contains("Plan of"));
    let before = of(ReadingPartKind::Kept).into_iter();
    let before = before.flat_map(|one| std::iter::once(one.text).chain(one.inner));
    (plan.flat_map(|one| one.inner).collect(), before.collect())
}

#[test]
fn the_clinician_reads_what_a_plan_was_accepted_in_spite_of() {
    const UNSIGNED: &str = "nobody had signed it";
    const OTHER: &str = "it was signed with another key than the one known before";
    const OLDER: &str = "it is an older revision than the one in use then";
    const SAME: &str = "it has the number of the revision in use then, and says something else";
    let knowingly = |said: &[&str]| -> Vec<String> {
        said.iter().map(|one| format!("accepted knowingly: {one}")).collect()
    };
    let day = |revision| {
        format!(
            "Tue 3 Mar, accepted knowingly: Plan of Ines Abara, revision {revision} of Sun 1 Mar"
        )
    };
    let mut home = Home::new(START);
    home.tell(told(&by(1, 2), &[]));
    home.tell(told(&by(1, 3), &[]));
    assert_eq!(read_before_a_visit(&home), (vec![], vec![]), "what passes quietly is not said");
    let (foreign, _) = home.tell(told(&by(9, 4), &[Although::OtherKey]));
    assert_eq!(read_before_a_visit(&home), (knowingly(&[OTHER]), vec![]));
    home.tell(told(&signed(&plan(4, "Changed."), &key(9), None), &[Although::SameRevision]));
    let before = vec![day(4), OTHER.to_owned()];
    assert_eq!(read_before_a_visit(&home), (knowingly(&[SAME]), before));
    let plain = Handed::text(&plan(1, "As agreed."));
    home.tell(told(&plain, &[Although::Unsigned, Although::OlderRevision]));
    let before = vec![day(4), OTHER.to_owned(), day(4), SAME.to_owned()];
    assert_eq!(read_before_a_visit(&home), (knowingly(&[UNSIGNED, OLDER]), before));
    // Who left it out does not use it.
    home.tell(Told::Strike { of: foreign });
    let (_, before) = read_before_a_visit(&home);
    assert!(before.iter().any(|one| one == SAME) && before.iter().all(|one| one != OTHER));
}
