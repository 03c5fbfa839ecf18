//! The same holder on a surface that is no phone: a passphrase opens the diary, and what was shown may be pressed
//! again after anything else.

use crate::companion::Trouble;
use crate::ports::{Passphrase, PassphraseKeeper, Stretch};
use crate::screens::{Does, WholeScreen};
use crate::sealing::{RecoveryKeeper, RecoveryPhrase};
use crate::whole::{View, WholeRequest};

use super::kit::{Home, name};

fn keeper(words: &str) -> PassphraseKeeper {
    let words = Passphrase::new(words.to_owned()).unwrap();
    PassphraseKeeper::new(words, Stretch::cheap_for_tests_only())
}

#[test]
fn an_action_pressed_under_its_own_id_writes_once_whatever_lies_between() {
    let mut home = Home::begun();
    let before = home.entries().len();
    let (id, stay) = (home.holder.new_id().unwrap(), Does::StayHere { stay: true });
    let under = |home: &mut Home, does| {
        let (phone, moment) = (home.phone.clone(), home.moment);
        let seen = home.holder.press_under(does, id, &phone, &moment).unwrap();
        assert_eq!(name(&seen.view), "kept");
    };
    under(&mut home, stay);
    home.press(Does::Today);
    home.whole(WholeRequest::Begin);
    under(&mut home, stay);
    assert_eq!(home.entries().len(), before + 1);
    // After the program was killed too.
    home.again();
    home.begin();
    under(&mut home, stay);
    assert_eq!(home.entries().len(), before + 1);
    assert_eq!(home.entries().last(), Some(&id));
}

#[test]
fn another_passphrase_opens_it_from_then_on_and_the_one_before_does_not() {
    let mut home = Home::new();
    let (first, second, moment) = (keeper("first words"), keeper("other words"), home.moment);
    // Nothing is open yet.
    let none = home.holder.another_passphrase(&second, &moment).err();
    assert_eq!(none, Some(Trouble::NotADiary));
    home.holder.whole(WholeRequest::StartNew, &first, &moment).unwrap();
    let done = home.holder.another_passphrase(&second, &moment).unwrap();
    assert_eq!(name(&done.view), "done");
    home.again();
    let seen = home.holder.whole(WholeRequest::Begin, &first, &moment).unwrap();
    assert_eq!(name(&seen.view), "cannot open");
    assert_eq!(home.holder.stuck(), Some(&Trouble::WrongSecret));
    let seen = home.holder.whole(WholeRequest::Begin, &second, &moment).unwrap();
    assert_eq!(name(&seen.view), "today");
    assert_eq!(home.holder.stuck(), None);
}

#[test]
fn with_the_twelve_words_the_passphrase_at_hand_opens_it_again() {
    let mut home = Home::new();
    let (lost, at_hand, moment) = (keeper("lost words"), keeper("words at hand"), home.moment);
    home.holder.whole(WholeRequest::StartNew, &lost, &moment).unwrap();
    let seen = home.holder.whole(WholeRequest::NewPhrase, &lost, &moment).unwrap();
    let View::Whole(WholeScreen::Phrase(screen)) = seen.view else { panic!("no words") };
    let words = vec![screen.words[2].clone(), screen.words[8].clone()];
    let seen = home.holder.whole(WholeRequest::CheckPhrase { words }, &lost, &moment).unwrap();
    assert_eq!(name(&seen.view), "done");
    let phrase = screen.words.join(" ");
    let open = || WholeRequest::OpenByPhrase { phrase: phrase.clone() };

    home.again();
    let seen = home.holder.whole(WholeRequest::Begin, &at_hand, &moment).unwrap();
    assert_eq!(name(&seen.view), "cannot open");
    let seen = home.holder.whole(open(), &at_hand, &moment).unwrap();
    let View::Whole(WholeScreen::Done(done)) = seen.view else { panic!("not opened") };
    let said = done.says.concat();
    assert!(said.contains("passphrase") && !said.contains("code"), "{said}");
    assert!(done.actions.iter().all(|action| action.does != Does::CodeForm));

    home.again();
    let seen = home.holder.whole(WholeRequest::Begin, &at_hand, &moment).unwrap();
    assert_eq!(name(&seen.view), "today");
    // What is only the words themselves opens it, and cannot put it under new keys.
    let by_words = RecoveryKeeper::new(RecoveryPhrase::parse(&phrase).unwrap());
    home.again();
    let seen = home.holder.whole(WholeRequest::Begin, &by_words, &moment).unwrap();
    assert_eq!(name(&seen.view), "today");
    for request in [WholeRequest::NewPhrase, WholeRequest::EraseAll] {
        let seen = home.holder.whole(request, &by_words, &moment).unwrap();
        assert_eq!(name(&seen.view), "sorry");
    }
}
