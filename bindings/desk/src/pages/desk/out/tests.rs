//! Letter and files in this process, without a socket. Everything in them is invented.

use axum::http::StatusCode;
use frond_tests::invented::Invented;

use super::super::cabinet::tests::Desk;
use super::super::tests::run;

fn typed(more: &str) -> String {
    format!(
        "person=Invented+Person&to=Dr+Invented%0D%0ANowhere&from=Ida+Invented&date=2026-05-11&request=Please+look.{more}"
    )
}

async fn desk() -> (Desk, String) {
    let invented = Invented::new(3, 5);
    let desk = Desk::open(&[]).await;
    desk.bring(&[("one.json", invented.open_file())], &[]).await;
    (desk, format!("/people/{}", invented.identity().id))
}

#[test]
fn a_letter_is_looked_at_and_saved_and_nothing_of_it_is_kept() {
    run(async {
        let (desk, person) = desk().await;
        assert!(desk.page(&person).await.contains(&format!("href=\"{person}/out\"")));
        let form = desk.page(&format!("{person}/letter")).await;
        assert!(!form.contains("\" checked"), "agreement is never set beforehand");
        let agreed = typed("&agreed=yes");
        let (status, _, page) = desk.server.told(&format!("{person}/letter"), &agreed).await;
        assert_eq!(status, StatusCode::OK);
        assert!(page.contains("About: Invented Person") && page.contains("Dr Invented<br>Nowhere"));
        let (status, _, copy) = desk
            .server
            .told(&format!("{person}/letter"), &(agreed.clone() + "&reader=person"))
            .await;
        assert_eq!(status, StatusCode::OK);
        assert!(copy.contains("Your copy of a letter about you"));
        let (status, _, saved) = desk.server.told(&format!("{person}/letter/page"), &agreed).await;
        assert_eq!(status, StatusCode::OK);
        assert!(saved.contains("@page") && saved.contains("Invented Person"));
        // Looked for again, nothing of it is there.
        for path in ["", "/out", "/letter"] {
            assert!(!desk.page(&format!("{person}{path}")).await.contains("Invented Person"));
        }
    });
}

#[test]
fn without_agreement_or_with_something_missing_there_is_no_letter() {
    run(async {
        let (desk, person) = desk().await;
        for (body, field) in [
            (typed(""), "agreed"),
            (typed("&agreed=no"), "agreed"),
            (typed("&agreed=yes").replace("Please+look.", "+"), "request"),
            (typed("&agreed=yes").replace("Ida+Invented", "%01"), "from"),
            (typed("&agreed=yes").replace("2026-05-11", "yesterday"), "date"),
        ] {
            for way in ["letter", "letter/pdf", "letter/page"] {
                let (status, _, page) = desk.server.told(&format!("{person}/{way}"), &body).await;
                assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY, "{way} {field}");
                assert!(page.contains(&format!("href=\"#{field}\"")), "{way} {field}");
                assert!(page.contains("Invented Person"), "what was typed is still there");
            }
        }
    });
}

#[test]
fn what_is_typed_stays_text() {
    run(async {
        let (desk, person) = desk().await;
        let script = "%3Cscript%3Ealert(1)%3C%2Fscript%3E";
        let body = typed("&agreed=yes").replace("Invented+Person", script);
        for way in ["letter", "letter/page"] {
            let (status, _, page) = desk.server.told(&format!("{person}/{way}"), &body).await;
            assert_eq!(status, StatusCode::OK);
            assert!(!page.contains("<script>") && page.contains("script"), "{way}");
        }
    });
}

#[test]
fn files_for_other_programs_are_saved_and_an_unknown_diary_has_none() {
    run(async {
        let (desk, person) = desk().await;
        let (status, _, bundle) = desk.server.told(&format!("{person}/out/list"), "").await;
        assert_eq!(status, StatusCode::OK);
        let bundle: serde_json::Value = serde_json::from_str(&bundle).unwrap();
        assert_eq!(bundle["resourceType"], "Bundle");
        let (status, _, table) = desk.server.told(&format!("{person}/out/table"), "").await;
        assert_eq!(status, StatusCode::OK);
        assert!(table.starts_with("entry,happened,"));
        let nobody = format!("/people/{}", "00".repeat(16));
        for way in ["out/list", "out/table", "letter/pdf"] {
            let (status, _, _) =
                desk.server.told(&format!("{nobody}/{way}"), &typed("&agreed=yes")).await;
            assert_eq!(status, StatusCode::NOT_FOUND, "{way}");
        }
    });
}
