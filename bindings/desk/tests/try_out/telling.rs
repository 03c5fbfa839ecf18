//! What a form tells is written once, comes back when it has to be put right, and is shown as text.

use crate::client::{Server, coded, hidden, id};

#[test]
fn two_tabs_never_lose_or_double_an_entry() {
    let server = Server::entered(&["--empty"]);
    let (first, second) = (server.page("/questions"), server.page("/questions"));
    let (first, second) = (id(&first, "/questions"), id(&second, "/questions"));
    assert_ne!(first, second);
    let send = |id: &str, text: &str| server.told("/questions", &[("id", id), ("text", text)]);
    let kept = send(&first, "From the first tab");
    assert!(kept.contains("<h1>Kept.</h1>"), "{kept}");
    let again = send(&first, "From the first tab");
    assert!(again.contains("<h1>Kept.</h1>"));
    // Sent again with other words, what was kept stays.
    send(&first, "Something else");
    send(&second, "From the second tab");
    let page = server.page("/questions");
    assert_eq!(page.matches("From the first tab").count(), 1);
    assert_eq!(page.matches("From the second tab").count(), 1);
    assert!(!page.contains("Something else"));
    let entries = server.page("/entries");
    assert_eq!(entries.matches("From the").count(), 2);
    // A button carries an id too: pressed twice it tells once.
    server.twelve_words();
    let page = server.page("/keeping/copy");
    let kept = id(&page, "/keeping/copy/kept");
    server.told("/keeping/copy/kept", &[("id", &kept)]);
    server.told("/keeping/copy/kept", &[("id", &kept)]);
    assert_eq!(server.page("/entries").matches("A copy for elsewhere was made").count(), 1);
}

#[test]
fn the_same_session_sent_from_many_sides_at_once_is_one() {
    let server = Server::entered(&["--empty"]);
    let page = server.page("/log");
    let id = id(&page, "/log");
    let fields = [
        ("id", id.as_str()),
        ("practice", "breathing"),
        ("position", "sitting"),
        ("minutes", "7"),
        ("ended", "finished"),
    ];
    std::thread::scope(|scope| {
        let tabs: Vec<_> =
            (0..6).map(|_| scope.spawn(|| server.post("/log", &fields).status)).collect();
        for tab in tabs {
            assert_eq!(tab.join().unwrap(), 303);
        }
    });
    assert_eq!(server.page("/entries").matches("7 minutes, finished").count(), 1);
}

#[test]
fn what_has_to_be_put_right_is_told_first_and_what_was_typed_is_kept() {
    let server = Server::entered(&["--empty"]);
    let page = server.page("/log");
    let id = id(&page, "/log");
    assert!(!page.contains(" checked>"), "nothing is chosen beforehand");
    let typed = [
        ("id", id.as_str()),
        ("practice", "breathing"),
        ("minutes", "soon"),
        ("peak", "3"),
        ("note", "Kept & <shown>"),
    ];
    let answer = server.post("/log", &typed);
    assert_eq!(answer.status, 422);
    let page = answer.text();
    let summary =
        page.split("class=\"problems\"").nth(1).unwrap().split("</section>").next().unwrap();
    for field in ["position", "minutes", "ended"] {
        assert!(summary.contains(&format!("href=\"#{field}\"")), "{field}");
        assert!(page.contains(&format!("id=\"{field}\"")), "{field}");
        assert!(page.contains(&format!("id=\"{field}-problem\"")), "{field}");
    }
    assert!(page.contains("value=\"soon\""));
    assert!(page.contains("name=\"practice\" value=\"breathing\" checked"));
    assert!(page.contains("name=\"peak\" value=\"3\" checked"));
    assert!(page.contains("Kept &#38; &#60;shown&#62;"), "as text");
    assert_eq!(hidden(&page, "/log"), [("id".to_owned(), id.clone())], "under the same id");
    let right = [("position", "sitting"), ("ended", "finished")];
    let mut fields: Vec<_> = typed.into_iter().filter(|(name, _)| *name != "minutes").collect();
    fields.extend(right);
    fields.push(("minutes", "6"));
    assert!(server.told("/log", &fields).contains("<h1>Kept.</h1>"));
}

const HOSTILE: &str = "</textarea><script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

#[test]
fn hostile_words_are_shown_as_words() {
    let server = Server::entered(&["--empty"]);
    let page = server.page("/questions");
    server.told("/questions", &[("id", &id(&page, "/questions")), ("text", HOSTILE)]);
    let page = server.page("/look-forward");
    server.told("/look-forward", &[("id", &id(&page, "/look-forward")), ("text", HOSTILE)]);
    let page = server.page("/signs");
    let told = server
        .post("/signs", &[("id", &id(&page, "/signs")), ("sign", "fever"), ("note", HOSTILE)]);
    let entries = server.page("/entries");
    let mut addresses: Vec<String> = entries
        .split("href=\"/entry/")
        .skip(1)
        .map(|rest| format!("/entry/{}", rest.split('"').next().unwrap()))
        .collect();
    assert!(addresses.len() >= 3, "{}: {}", told.status, told.text());
    let forms: Vec<String> = addresses.iter().map(|own| format!("{own}/correct")).collect();
    addresses.extend(forms);
    addresses.extend(["/questions", "/entries", "/look-forward", "/today"].map(str::to_owned));
    let mut shown = 0;
    for address in addresses {
        let page = server.page(&address);
        assert!(!page.contains("<script>") && !page.contains("<img"), "{address}");
        shown += page.matches("&#60;script&#62;alert(1)").count();
    }
    assert!(shown >= 6, "{shown}");
    // In an address too.
    let answer = server.get(&format!("/entry/{}", coded(HOSTILE)));
    assert_eq!(answer.status, 404);
    assert!(!answer.text().contains("script>alert"));
}

#[test]
fn a_hostile_plan_is_read_as_text_and_is_hers_only_when_she_says_so() {
    let server = Server::entered(&["--empty"]);
    let text = include_str!("../../src/scenario/programme-1.json");
    let mut plan: serde_json::Value = serde_json::from_str(text).unwrap();
    plan["for"] = HOSTILE.into();
    plan["clinician"]["name"] = HOSTILE.into();
    plan["contact"]["phone"] = "javascript:alert(3)".into();
    plan["steps"][0]["name"] = HOSTILE.into();
    plan["steps"][0]["instruction"] = HOSTILE.into();
    let answer = server.upload("/plan/add", plan.to_string().as_bytes());
    assert_eq!(answer.status, 200, "{}", answer.text());
    let page = answer.text();
    assert!(page.contains("&#60;script&#62;"), "shown");
    let accept = hidden(&page, "/plan/accept");
    assert!(server.page("/plan").contains("There is no plan yet"), "reading accepts nothing");
    let id = &accept.iter().find(|(name, _)| name == "id").unwrap().1;
    server.told("/plan/accept", &[("id", id), ("answer", "yes"), ("although", "unsigned")]);
    // Asked again it is the same answer.
    server.told("/plan/accept", &[("id", id), ("answer", "yes"), ("although", "unsigned")]);
    for address in
        ["/today", "/steps", "/plan", "/call", "/step-check", "/entries", "/more", "/spoke"]
    {
        let page = server.page(address);
        assert!(!page.contains("<script>") && !page.contains("<img"), "{address}");
        assert!(
            !page.contains("href=\"javascript:") && !page.contains("tel:javascript"),
            "{address}"
        );
    }
    assert!(server.page("/today").contains("&#60;script&#62;"));
    // What is no plan is refused with its reasons, and nothing waits.
    let answer = server.upload("/plan/add", b"{\"form\": \"<script>\"}");
    assert_eq!(answer.status, 422);
    assert!(!answer.text().contains("<script>") && answer.text().contains("class=\"problems\""));
}

#[test]
fn a_larger_step_comes_after_its_caution_and_no_address_names_a_step() {
    let server = Server::entered(&[]);
    let changes = || server.page("/entries").matches("Another step").count();
    let before = changes();
    let steps = server.page("/steps");
    for address in steps.split("href=\"/steps/").skip(1) {
        let number = address.split('"').next().unwrap();
        assert!(number.parse::<u8>().is_ok(), "{number}");
    }
    let caution = server.page("/steps/6");
    assert!(caution.contains("class=\"notice\""));
    let fields = hidden(&caution, "/steps");
    let fields: Vec<(&str, &str)> = fields.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
    assert!(fields.contains(&("why", "clinician")));
    server.told("/steps", &fields);
    server.told("/steps", &fields);
    assert_eq!(changes(), before + 1);
    assert_eq!(server.get("/steps/0").status, 404);
    assert_eq!(server.get("/steps/99").status, 404);
    assert_eq!(
        server
            .post(
                "/steps",
                &[("id", &id(&server.page("/questions"), "/questions")), ("why", "own")]
            )
            .status,
        400
    );
}

/// Signed, as a file and as a sealed link.
#[test]
fn a_signed_plan_is_accepted_and_another_key_only_knowingly() {
    use frond_core::handover::{HandOver, LinkTo, SpokenWords, key_words};
    use frond_core::ports::OsRandom;
    use frond_core::sealing::SigningKey;

    let key = |byte| SigningKey::from_seed(&zeroize::Zeroizing::new([byte; 32]));
    let text = include_str!("../../src/scenario/programme-1.json");
    let mut plan: serde_json::Value = serde_json::from_str(text).unwrap();
    let mut signed = |revision: u32, by: u8| {
        plan["revision"] = revision.into();
        HandOver::sign(plan.to_string().as_bytes(), &key(by), None).unwrap()
    };
    let server = Server::entered(&["--empty"]);
    let yes = |page: &str, more: &[(&'static str, &'static str)]| {
        let accept = hidden(page, "/plan/accept");
        let id = accept.iter().find(|(name, _)| name == "id").unwrap().1.clone();
        let mut fields = vec![("id".to_owned(), id), ("answer".to_owned(), "yes".to_owned())];
        fields.extend(more.iter().map(|(name, value)| ((*name).to_owned(), (*value).to_owned())));
        fields
    };
    let sent = |fields: &[(String, String)]| {
        let fields: Vec<(&str, &str)> =
            fields.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
        server.post("/plan/accept", &fields)
    };

    // A sealed link: the words are asked for, and the link is not typed twice.
    let words = SpokenWords::new(&OsRandom).unwrap();
    let spoken: Vec<&str> = words.words().collect();
    let spoken = spoken.join(" ");
    let link = signed(1, 1).link(LinkTo::Words(&words), &OsRandom).unwrap();
    let answer = server.upload_with("/plan/add", b"", &[("link", &link), ("words", "")]);
    assert_eq!(answer.status, 422);
    assert!(answer.text().contains(&link) && answer.text().contains("href=\"#words\""));
    let answer = server.upload_with("/plan/add", b"", &[("link", &link), ("words", &spoken)]);
    assert_eq!(answer.status, 200, "{}", answer.text());
    let page = answer.text();
    assert!(page.contains(&key_words(&key(1).verify_key()).join(" ")));
    assert!(!page.contains("name=\"although\""), "nothing to choose");
    assert_eq!(sent(&yes(&page, &[])).status, 303);

    // Another key.
    let page = server.upload("/plan/add", &signed(2, 9).file()).text();
    assert!(page.contains("value=\"other_key\"") && !page.contains(" checked>"));
    let answer = sent(&yes(&page, &[]));
    assert_eq!(answer.status, 422, "not chosen");
    assert!(answer.text().contains("href=\"#although\""));
    assert_eq!(sent(&yes(&answer.text(), &[("although", "other_key")])).status, 303);
    assert!(server.page("/plan").contains(&key_words(&key(9).verify_key()).join(" ")));

    // Altered on its way.
    let mut altered = signed(3, 9).file();
    let at = altered.len() / 2;
    altered[at] ^= 1;
    let answer = server.upload("/plan/add", &altered);
    assert_eq!(answer.status, 422);
    assert_eq!(server.get("/plan/add").status, 200, "nothing waits, the page is alive");
}

/// The list of what has to be put right.
fn problems(page: &str) -> &str {
    page.split("class=\"problems\"").nth(1).unwrap().split("</section>").next().unwrap()
}

#[test]
fn what_has_to_be_put_right_leads_to_its_field_where_a_page_has_several_forms_too() {
    let server = Server::entered(&[]);
    let page = server.page("/signs");
    let answer = server.post("/signs", &[("id", &id(&page, "/signs"))]);
    assert_eq!(answer.status, 422);
    let page = answer.text();
    assert!(problems(&page).contains("href=\"#sign-0\""), "{}", problems(&page));
    assert!(page.contains("id=\"sign-0\""));

    let page = server.page("/activities");
    let forms = page.matches("action=\"/activities\"").count();
    assert!(forms > 1, "{forms}");
    let fields = hidden(&page, "/activities");
    let fields: Vec<(&str, &str)> = fields.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
    let answer = server.post("/activities", &fields);
    assert_eq!(answer.status, 422);
    assert!(problems(&answer.text()).contains("href=\"#able-0\""));
}

#[test]
fn the_first_number_to_call_stands_before_what_is_read() {
    let server = Server::entered(&[]);
    for sign in ["pain_that_stays", "heavy_bleeding"] {
        let page = server.page("/signs");
        server.told("/signs", &[("id", &id(&page, "/signs")), ("sign", sign)]);
        let call = server.page("/call");
        let (number, read) =
            (call.find("href=\"tel:").unwrap(), call.find("class=\"lead\"").unwrap());
        assert!(number < read, "{sign}");
        let first = call[number..].split('"').nth(1).unwrap();
        assert_eq!(call.matches(first).count(), 1, "{sign}: {first} stands there twice");
    }
}

#[test]
fn before_anything_is_begun_beginning_stands_out_and_afterwards_stop() {
    let server = Server::entered(&["--empty"]);
    let begin = [("what", "breathing"), ("preset", "even"), ("minutes", "5")];
    let loud = |page: &str| -> Vec<String> {
        page.split("<button class=\"press next\">")
            .skip(1)
            .filter_map(|rest| rest.split('<').next())
            .map(str::to_owned)
            .collect()
    };
    let page = server.told("/practice/begin", &begin);
    assert_eq!(loud(&page), ["Begin"]);
    let page = server.told("/practice/during", &[("event", "begin"), ("part", "0")]);
    assert_eq!(loud(&page), ["Stop"]);
    server.told("/practice/during", &[("event", "stop")]);
}
