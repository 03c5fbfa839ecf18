//! Two summaries of one diary that do not follow one another, and how new the news is beside a revision that is
//! being written. All of it is invented.

use axum::http::StatusCode;
use frond_core::summary::{Selection, Summary};
use frond_tests::invented::Invented;

use super::super::super::tests::run;
use super::{Desk, invented, person, whole};

/// A summary of these entries, made at the end of the diary.
fn made_of(of: &Invented, entries: usize) -> Vec<u8> {
    let all = Selection::default();
    let summary = Summary::of(&of.entries[..entries], &of.identity(), &all, &of.end).unwrap();
    summary.open_form(&of.identity()).unwrap()
}

#[test]
fn what_only_an_older_one_holds_is_said_before_anything_else() {
    run(async {
        const SAID: &str = "that are not in this one";
        let desk = Desk::open(&[]).await;
        let one = invented(3);
        let before = one.earlier(9).open_form(&one.identity()).unwrap();
        desk.bring(&[("newest", made_of(&one, 12)), ("before", before)], &[]).await;
        let page = desk.page(&person(&one)).await;
        assert!(!page.contains(SAID), "it goes on from what was before");
        let apart = one.earlier(20).open_form(&one.identity()).unwrap();
        desk.bring(&[("apart", apart)], &[]).await;
        let page = desk.page(&person(&one)).await;
        whole("apart", &page);
        let said = page.find(SAID).expect("it is said");
        assert!(said < page.find("<h2").unwrap(), "before anything else");
        let link =
            page.split("href=\"").find(|rest| rest.contains(">Read the other one<")).unwrap();
        let other = desk.page(link.split('"').next().unwrap()).await;
        assert!(other.contains("This is not the newest summary") && !other.contains(SAID));
    });
}

#[test]
fn a_revision_is_written_with_the_age_of_the_news_beside_it() {
    run(async {
        const TITLE: &str = "What is known by now";
        let desk = Desk::open(&[]).await;
        let (_, to, _) = desk.server.post("/programmes/new", "").await;
        assert!(!desk.page(&to).await.contains(TITLE), "of a first revision there is no news");
        let one = invented(3);
        desk.bring(&[("newest", one.open_file())], &[]).await;
        let (status, to, _) = desk.server.post(&format!("{}/revise", person(&one)), "").await;
        assert_eq!(status, StatusCode::SEE_OTHER);
        let check = to.replace("/who", "/check");
        for path in [&to, &check] {
            let page = desk.page(path).await;
            whole(path, &page);
            assert!(page.contains(TITLE) && page.contains("days old"), "{path}: {page}");
            assert!(page.contains(&format!("href=\"{}\"", person(&one))), "{path}");
            assert!(page.contains("Whatever came after that is not known here"), "{path}");
        }
        assert!(!desk.page(&to.replace("/who", "/rule")).await.contains(TITLE), "where it matters");
        desk.server.post(&format!("{}/remove", person(&one)), "").await;
        let page = desk.page(&check).await;
        assert!(page.contains("No summary of this plan is here"), "{page}");
    });
}
