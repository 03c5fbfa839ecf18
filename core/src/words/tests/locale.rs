//! Numbers, plurals and dates against the tables of `fixtures/locales`, made by another program from
//! Unicode CLDR; its README says how.

use std::path::Path;

use super::*;

/// The rows of a table, without the line that says how it was made.
fn rows(name: &str) -> Vec<Vec<String>> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../fixtures/locales").join(name);
    let text = std::fs::read_to_string(path).unwrap();
    let lines = text.lines().filter(|line| !line.starts_with('#'));
    let rows: Vec<Vec<String>> =
        lines.map(|line| line.split('\t').map(str::to_owned).collect()).collect();
    assert!(rows.len() > 500, "{name} has only {} rows", rows.len());
    rows
}

/// `t-size` and the plural forms in a language's own rules, with words that show what was chosen.
fn probe(rules: &'static str) -> Words {
    const FORMS: &str = "\
t-number = { $n }
t-form = { $n ->
    [zero] zero
    [one] one
    [two] two
    [few] few
    [many] many
   *[other] other
}
";
    let language = Box::leak(Box::new(Language {
        rules,
        files: Files::Plain(&[("safety.ftl", FORMS)]),
        ..REVIEWED_PARTS
    }));
    let bundle = Arc::new(bundle(language, false));
    Words { language, asked_for: None, isolation: Isolation::Never, bundle }
}

/// The rules of every language that is offered, by its tag; a language without rows fails.
fn each_language(rows: &[Vec<String>]) -> Vec<&'static Language> {
    let people = Words::offered(false).into_iter().filter(|one| one.pseudo.is_none());
    people
        .inspect(|one| {
            let there = rows.iter().any(|row| row[0] == one.tag);
            assert!(
                there,
                "no rows for {}: put it into fixtures/locales/generate.mjs, run that",
                one.tag
            );
        })
        .collect()
}

#[test]
fn numbers_are_written_as_cldr_says() {
    let rows = rows("numbers.txt");
    for language in each_language(&rows) {
        let words = probe(language.rules);
        for row in rows.iter().filter(|row| row[0] == language.tag) {
            let (places, number): (u8, f64) = (row[1].parse().unwrap(), row[2].parse().unwrap());
            let said = words.text("t-number", &[("n", Value::decimal(number, places))]);
            assert_eq!(said, row[3], "{row:?}");
            if places == 0 {
                let said = words.text("t-number", &[("n", (number as i64).into())]);
                assert_eq!(said, row[3], "{row:?}");
            }
        }
    }
}

/// Fluent's rules are of an older CLDR, without Spanish's form for whole millions ("un millón de días"). No
/// count here comes near; the form for other numbers is taken, and nothing but those differs.
#[test]
fn plurals_are_chosen_as_cldr_says() {
    let rows = rows("plurals.txt");
    for language in each_language(&rows) {
        let words = probe(language.rules);
        for row in rows.iter().filter(|row| row[0] == language.tag) {
            let number: i64 = row[1].parse().unwrap();
            let millions = row[2] == "many" && number % 1_000_000 == 0;
            let expected = if millions { "other" } else { row[2].as_str() };
            assert_eq!(words.text("t-form", &[("n", number.into())]), expected, "{row:?}");
        }
    }
}

/// Our dates stand inside sentences, so they leave out the comma that CLDR's Spanish has after the weekday.
#[test]
fn dates_are_written_as_cldr_says() {
    use chrono::Datelike;
    let rows = rows("dates.txt");
    for language in each_language(&rows) {
        let words = Words::for_language(language.tag);
        for row in rows.iter().filter(|row| row[0] == language.tag) {
            let day: chrono::NaiveDate = row[1].parse().unwrap();
            let mut values: Vec<(&str, Value)> = vec![
                ("weekday", day.weekday().number_from_monday().into()),
                ("day", day.day().into()),
                ("month", day.month().into()),
            ];
            let short = words.text("reading-day", &values);
            assert_eq!(short, format!("{} {} {}", row[3], day.day(), row[4]), "{row:?}");
            values.push(("year", day.year().to_string().into()));
            assert_eq!(words.text("common-date", &values), row[2].replace(',', ""), "{row:?}");
        }
    }
}

#[test]
fn a_size_is_said_in_the_persons_language() {
    let size =
        |tag, mm| Words::for_language(tag).text("common-size", &[("mm", Value::decimal(mm, 1))]);
    assert_eq!(size("en", 22.5), "22.5 mm");
    assert_eq!(size("es", 22.5), "22,5 mm");
    // What is made from English keeps its digits; only words change.
    assert_eq!(size("en-XA", 22.5), "22.5 ɱɱ");
}

#[test]
fn every_language_finds_its_number_rules() {
    for language in Words::offered(false) {
        let words = probe(language.rules);
        // Five digits and a mark, which in some languages is a space of several bytes.
        let said = words.text("t-number", &[("n", 12_345.into())]);
        assert_eq!(said.chars().count(), 6, "{}: {said}", language.tag);
    }
}

/// In Spanish the person is "tú"; what only the clinician reads says "usted".
#[test]
fn the_clinicians_spanish_says_usted() {
    let familiar =
        [" tú", " tu ", " tus ", " te ", " ti", "contigo", "tuyo", "pregunta,", "menciones"];
    for (name, text) in es::LANGUAGE.files() {
        if !["reading.ftl", "replay.ftl", "insight.ftl"].contains(&name.as_str()) {
            continue;
        }
        for (line, found) in
            text.lines().flat_map(|line| familiar.iter().map(move |one| (line, one)))
        {
            let said = line.to_lowercase();
            let word = |rest: &str| !rest.starts_with(char::is_alphabetic);
            let hit = said.match_indices(*found).any(|(at, one)| word(&said[at + one.len()..]));
            assert!(!hit, "{name}: {found:?} in {line:?}");
        }
    }
}
