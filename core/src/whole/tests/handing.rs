//! A plan on its way in, and a summary on its way out.

use super::kit::*;
use crate::companion::{Duty, Request, Told, Trouble, Write};
use crate::diary::entry::Although;
use crate::ports::Passphrase;
use crate::screens::{
    AcceptScreen, Does, FormField, Screen, SummaryClose, SummaryKind, WholeScreen,
};
use crate::sealing::{OpenWith, open};
use crate::summary::Selection;
use crate::whole::{View, WholeRequest};

const SEALED: &str = include_str!("../../../../fixtures/handover-v1/sealed.link");
const OPEN: &str = include_str!("../../../../fixtures/handover-v1/open.link");

fn file(bytes: &[u8]) -> WholeRequest {
    WholeRequest::PlanFile { bytes: bytes.to_vec(), words: String::new() }
}

fn link(link: &str, words: &str) -> WholeRequest {
    WholeRequest::PlanLink { link: link.to_owned(), words: words.to_owned() }
}

fn accept(view: View) -> AcceptScreen {
    match view {
        View::Screen(Screen::Accept(screen)) => screen,
        other => panic!("{}", name(&other)),
    }
}

fn problem(view: &View) -> (FormField, &str) {
    match view {
        View::Whole(WholeScreen::AddPlan(screen)) => match screen.problems.as_slice() {
            [one] => (one.field, &screen.link.value),
            other => panic!("{} problems", other.len()),
        },
        other => panic!("{}", name(other)),
    }
}

#[test]
fn a_plan_waits_for_a_diary_and_for_a_code_and_is_read_before_it_is_kept() {
    let mut home = Home::new();
    assert_eq!(name(&home.whole(file(PLAN))), "no diary");
    accept(home.whole(WholeRequest::StartNew));
    accept(home.press(Does::AcceptProgramme));
    let screen = accept(home.begin());
    assert!(home.entries().is_empty());
    let told =
        Told::Programme { handed: screen.handed.unwrap(), although: vec![Although::Unsigned] };
    home.ask(Request::Write(Write { id: screen.id, happened: None, told }));
    assert_eq!(home.entries().len(), 1);
    assert_eq!(name(&home.begin()), "first run", "the plan came first, and waits no more");
    assert_eq!(name(&home.begin()), "today");
    assert_eq!(name(&home.press(Does::AcceptProgramme)), "add plan");
    // The same once more: it is in use already.
    assert!(accept(home.whole(file(PLAN))).handed.is_none());
    assert_eq!(name(&home.press(Does::AcceptProgramme)), "add plan");
    home.whole(set("4711"));
    home.whole(WholeRequest::Lock);
    assert_eq!(name(&home.whole(link(OPEN, ""))), "code");
    accept(home.give("4711"));
    assert_eq!(name(&home.press(Does::NotMine)), "done");
    assert_eq!(name(&home.begin()), "today");
    assert_eq!(home.entries().len(), 1);
}

#[test]
fn what_cannot_be_used_comes_back_with_what_is_wrong_and_where() {
    let mut home = Home::begun();
    assert_eq!(problem(&home.whole(file(b""))), (FormField::File, ""));
    assert_eq!(problem(&home.whole(file(b"no plan"))), (FormField::File, ""));
    assert_eq!(problem(&home.whole(link(" ", ""))), (FormField::Link, ""));
    assert_eq!(problem(&home.whole(link("FROND:NOTHING", ""))).0, FormField::Link);
    let long = "x".repeat(1_000_000);
    assert_eq!(problem(&home.whole(link(&long, ""))), (FormField::Link, ""));
    // A sealed link lacks its words only: it stays in its field.
    let sealed = SEALED.trim();
    assert_eq!(problem(&home.whole(link(sealed, ""))), (FormField::SpokenWords, sealed));
    let wrong = home.whole(link(sealed, "lamp river oven oven"));
    assert_eq!(problem(&wrong), (FormField::SpokenWords, sealed));
    accept(home.whole(link(sealed, "lamp river oven bridge")));
    // The same as a file that holds a link.
    let words = "lamp river oven bridge".to_owned();
    accept(home.whole(WholeRequest::PlanFile { bytes: SEALED.as_bytes().to_vec(), words }));
    assert_eq!(name(&home.whole(WholeRequest::PlanNotMine)), "done");
    assert_eq!(home.entries().len(), 3);
}

struct Closed {
    close: Option<SummaryClose>,
    new: &'static str,
    again: &'static str,
    kind: SummaryKind,
}

fn summary(home: &mut Home, selection: Selection, closed: &Closed) -> crate::whole::Seen {
    home.seen(WholeRequest::SummaryFile {
        selection,
        close: closed.close,
        passphrase: closed.new.to_owned(),
        again: closed.again.to_owned(),
        time_alone: true,
        kind: closed.kind,
    })
}

#[test]
fn a_summary_says_who_can_open_it_before_there_is_a_file() {
    let mut home = Home::begun();
    let words = ["invented words", "other words"];
    let closed = |close, new, again, kind| Closed { close, new, again, kind };
    let some = Some(SummaryClose::Passphrase);
    for (closed, field) in [
        (closed(None, "", "", SummaryKind::Summary), FormField::Way),
        (closed(some, words[0], words[0], SummaryKind::Table), FormField::Way),
        (closed(some, words[0], words[0], SummaryKind::Bundle), FormField::Way),
        (closed(some, "", "", SummaryKind::Summary), FormField::New),
        (closed(some, words[0], words[1], SummaryKind::Summary), FormField::Again),
        (closed(some, words[0], "", SummaryKind::Summary), FormField::Again),
        // No plan names anybody.
        (closed(Some(SummaryClose::Recipients), "", "", SummaryKind::Summary), FormField::Way),
    ] {
        let seen = summary(&mut home, Selection::default(), &closed);
        let View::Screen(Screen::Summary(form)) = seen.view else { panic!("no form") };
        let fields: Vec<_> = form.problems.iter().map(|problem| problem.field).collect();
        assert_eq!(fields, [field]);
        assert!(seen.duties.is_empty());
    }
    let day = |text: &str| Some(text.parse().unwrap());
    let selection =
        Selection { from: day("2026-03-03"), to: day("2026-03-02"), ..Selection::default() };
    let open_way = |kind| closed(Some(SummaryClose::Open), "", "", kind);
    let seen = summary(&mut home, selection, &open_way(SummaryKind::Summary));
    let View::Screen(Screen::Summary(form)) = seen.view else { panic!("no form") };
    assert_eq!(form.problems[0].field, FormField::To);
}

#[test]
fn a_summary_leaves_as_a_file_that_says_whether_it_is_sealed() {
    let mut home = Home::begun();
    let words = "invented words";
    for (close, kind, name_of, sealed) in [
        (SummaryClose::Passphrase, SummaryKind::Summary, "record-2026-03-02.age", true),
        (SummaryClose::Open, SummaryKind::Summary, "record-2026-03-02.json", false),
        (SummaryClose::Open, SummaryKind::Table, "record-2026-03-02.csv", false),
        (SummaryClose::Open, SummaryKind::Bundle, "record-2026-03-02.list.json", false),
    ] {
        let closed = Closed { close: Some(close), new: words, again: words, kind };
        let seen = summary(&mut home, Selection::default(), &closed);
        assert_eq!(name(&seen.view), "summary");
        let [Duty::ShareFile(file)] = seen.duties.as_slice() else { panic!("no file") };
        assert_eq!((file.name.as_str(), file.sealed), (name_of, sealed));
        if sealed {
            let passphrase = Passphrase::new(words.to_owned()).unwrap();
            let text = open(&file.bytes, &OpenWith::Passphrase(passphrase), 1 << 20).unwrap();
            assert!(text.starts_with(b"{"));
        }
    }
    home.whole(set("4711"));
    home.whole(WholeRequest::Lock);
    let closed =
        Closed { close: Some(SummaryClose::Open), new: "", again: "", kind: SummaryKind::Summary };
    let seen = summary(&mut home, Selection::default(), &closed);
    assert_eq!((name(&seen.view), seen.duties.len()), ("code", 0));
    assert_eq!(home.try_tell(1).err(), Some(Trouble::NotADiary));
}
