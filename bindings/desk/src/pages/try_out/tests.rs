//! The pages in this process, without a socket: what a fault leaves, and that no page misses what every page
//! has.

use axum::body::{Body, to_bytes};
use axum::http::{Request as HttpRequest, StatusCode};
use clap::Parser;
use tower::ServiceExt;

use super::*;
use crate::args::{Args, Command};

fn app(args: &[&str]) -> App<Diary> {
    let all = ["frond", "try"].into_iter().chain(args.iter().copied());
    let Command::Try(args) = Args::try_parse_from(all).unwrap().command else { panic!("try") };
    let diary = Diary::of(&args).unwrap();
    App::new(diary, Words::for_language("en"))
}

async fn get_page(router: &Router, path: &str) -> (StatusCode, String) {
    let request = HttpRequest::get(path).body(Body::empty()).unwrap();
    let response = router.clone().oneshot(request).await.unwrap();
    let status = response.status();
    let body = to_bytes(response.into_body(), 1 << 20).await.unwrap();
    (status, String::from_utf8(body.to_vec()).unwrap())
}

fn run(test: impl Future<Output = ()>) {
    tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap().block_on(test);
}

#[test]
fn a_fault_becomes_one_sentence_and_the_next_page_is_there() {
    run(async {
        let own = app(&["--empty"]);
        let faulty = Router::new()
            .route("/fault", app::shows::<Diary>(|_| panic!("something private")))
            .with_state(own.clone());
        let router = router(own).merge(faulty);
        for _ in 0..2 {
            let (status, text) = get_page(&router, "/fault").await;
            assert_eq!(status, StatusCode::INTERNAL_SERVER_ERROR);
            assert!(text.starts_with("Something went wrong inside Frond"), "{text}");
            assert!(!text.contains("private") && text.lines().count() == 1);
            let (status, _) = get_page(&router, "/today").await;
            assert_eq!(status, StatusCode::OK);
        }
    });
}

/// Addresses of pages that need nothing named in them.
const PAGES: [&str; 33] = [
    "/today",
    "/log",
    "/log/as-planned",
    "/steps",
    "/suggestion",
    "/ready",
    "/signs",
    "/call",
    "/spoke",
    "/entries",
    "/plan",
    "/plan/add",
    "/summary",
    "/keeping",
    "/keeping/code",
    "/keeping/copy",
    "/restore",
    "/restore/copy",
    "/erase/days",
    "/erase/all",
    "/practices",
    "/breathing",
    "/screening",
    "/hold-questions",
    "/step-check",
    "/reminders",
    "/more",
    "/calendar",
    "/settings",
    "/questions",
    "/look-forward",
    "/time-off",
    "/first/language",
];

#[test]
fn every_page_has_what_every_page_has() {
    run(async {
        for args in [&["--empty"][..], &[][..]] {
            let router = router(app(args));
            for path in PAGES {
                let (status, page) = get_page(&router, path).await;
                // Without a plan there is nothing that could have gone as planned; without twelve words nothing
                // that could open a copy.
                let nothing =
                    (path == "/log/as-planned" && !args.is_empty()) || path == "/keeping/copy";
                let expected =
                    if nothing { StatusCode::UNPROCESSABLE_ENTITY } else { StatusCode::OK };
                assert_eq!(status, expected, "{path}");
                let count = |what: &str| page.matches(what).count();
                assert!(
                    page.starts_with(
                        "<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\" translate=\"no\""
                    ),
                    "{path}"
                );
                assert_eq!(
                    (count("<h1>"), count("<main "), count("class=\"skip\"")),
                    (1, 1, 1),
                    "{path}"
                );
                assert!(page.contains(" · Frond</title>"), "{path}");
                // What is not escaped, or comes from elsewhere, would show here.
                for never in ["<style", "style=", "onclick", "javascript:", "http:", "https:"] {
                    assert!(!page.contains(never), "{path}: {never}");
                }
                assert_eq!(count("<script"), usize::from(path == "/practice"), "{path}");
                labelled(path, &page);
            }
        }
    });
}

/// Every control has a label, every group a legend, and no two things one name.
fn labelled(path: &str, page: &str) {
    let ids: Vec<&str> =
        page.split(" id=\"").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    let mut once = ids.clone();
    once.sort_unstable();
    once.dedup();
    assert_eq!(once.len(), ids.len(), "{path}: an id stands twice");
    for tag in ["<input ", "<textarea "] {
        for rest in page.split(tag).skip(1) {
            let control = rest.split('>').next().unwrap();
            let choice =
                control.contains("type=\"radio\"") || control.contains("type=\"checkbox\"");
            if control.contains("type=\"hidden\"") || choice {
                continue;
            }
            let id = control.split("id=\"").nth(1).and_then(|rest| rest.split('"').next()).unwrap();
            assert!(page.contains(&format!("<label for=\"{id}\">")), "{path}: {id}");
        }
    }
    assert_eq!(page.matches("<fieldset").count(), page.matches("<legend>").count(), "{path}");
    let choices =
        page.matches("type=\"radio\"").count() + page.matches("type=\"checkbox\"").count();
    let labels = page.matches("<label class=\"choice\">").count()
        + page.matches("<label class=\"step\">").count();
    assert_eq!(choices, labels, "{path}");
    for rest in page.split("href=\"#").skip(1) {
        let to = rest.split('"').next().unwrap();
        assert!(ids.contains(&to), "{path}: #{to} leads nowhere");
    }
}

#[test]
fn a_mirrored_page_says_so_and_its_days_have_names() {
    run(async {
        let router = router(app(&["--empty", "--language", "ar-XB"]));
        let (_, page) = get_page(&router, "/calendar").await;
        assert!(
            page.starts_with("<!DOCTYPE html>\n<html lang=\"ar-XB\" dir=\"rtl\" translate=\"no\"")
        );
        let names: Vec<&str> = page
            .split("<th scope=\"col\"><span aria-hidden=\"true\">")
            .skip(1)
            .filter_map(|rest| rest.split('<').next())
            .collect();
        assert_eq!(names.len(), 7);
        assert!(
            names.iter().all(|name| name.chars().filter(|own| own.is_alphanumeric()).count() == 2)
        );
    });
}
