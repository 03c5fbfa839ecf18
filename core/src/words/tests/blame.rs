//! Nothing presses, promises, blames, praises pressing on, or assumes a partner, in any language.

use super::*;

/// What no message says, language by language, in lower case. A language without a list fails. `!` and
/// `¡` stand in every list: nothing is shouted.
const BANNED: &[(&str, &[&str])] = &[
    (
        "en",
        &[
            "!",
            "streak",
            "intercourse",
            "penetrat",
            "husband",
            "your wife",
            "boyfriend",
            "girlfriend",
            "your partner",
            "push through",
            "press on",
            "keep going",
            "keep it up",
            "hang in there",
            "no pain",
            "no gain",
            "be brave",
            "brave",
            "be strong",
            "grit",
            "tough",
            "well done",
            "good job",
            "great job",
            "congrat",
            "proud",
            "amazing",
            "awesome",
            "will help",
            "guarantee",
            "cure",
            "you failed",
            "failure",
            "you missed",
            "missed day",
            "should have",
            "you forgot",
            "your fault",
            "lazy",
            "behind schedule",
            "fall behind",
            "overdue",
            "relapse",
            "normal sex",
            "virgin",
        ],
    ),
    (
        "es",
        &[
            "!",
            "¡",
            "racha",
            "coito",
            "penetraci",
            "marido",
            "esposo",
            "esposa",
            "novio",
            "novia",
            "tu pareja",
            "aguanta el dolor",
            "aguanta un poco",
            "resiste",
            "sigue así",
            "no te rindas",
            "ánimo,",
            "vamos,",
            "valiente",
            "sé fuerte",
            "esfuérzate",
            "esfuerzo",
            "enhorabuena",
            "felicidades",
            "felicit",
            "bien hecho",
            "buen trabajo",
            "orgull",
            "increíble",
            "genial",
            "sin dolor no",
            "te ayudará",
            "garantiza",
            "garantía",
            "cura ",
            "curar",
            "curará",
            "fracas",
            "fallaste",
            "has fallado",
            "te saltaste",
            "te has saltado",
            "deberías",
            "debiste",
            "tendrías que",
            "olvidaste",
            "has olvidado",
            "tu culpa",
            "pereza",
            "atrasad",
            "retraso",
            "recaída",
            "sexo normal",
            "virgen",
        ],
    ),
];

/// Where a word of the list is meant otherwise.
const MEANT_OTHERWISE: &[(&str, &str)] = &[];

fn banned(language: &Language) -> &'static [&'static str] {
    let list = BANNED.iter().find(|(tag, _)| *tag == language.rules);
    list.unwrap_or_else(|| {
        panic!("no list for {}: put one into BANNED of {}", language.tag, file!())
    })
    .1
}

/// The banned words of a text.
fn found(said: &str, list: &[&'static str]) -> Vec<&'static str> {
    let said = said.to_lowercase();
    list.iter().copied().filter(|word| said.contains(word)).collect()
}

#[test]
fn nothing_presses_promises_or_assumes_in_any_language() {
    let mut excused = 0;
    for language in Words::offered(false) {
        for (name, source) in language.files() {
            for line in source.lines().filter(|line| !line.starts_with('#')) {
                let found = found(line, banned(language));
                let meant = |word| {
                    MEANT_OTHERWISE.iter().any(|(id, said)| line.starts_with(id) && *said == word)
                };
                excused += found.iter().filter(|word| meant(**word)).count();
                let wrong: Vec<_> = found.into_iter().filter(|word| !meant(*word)).collect();
                assert!(wrong.is_empty(), "{} {name}: {wrong:?} in {line:?}", language.tag);
            }
        }
    }
    assert!(excused >= MEANT_OTHERWISE.len(), "an excuse that no message needs");
}

#[test]
fn the_scan_finds_what_it_should() {
    for (language, said) in [
        (&en::LANGUAGE, "Keep going, you are nearly there"),
        (&en::LANGUAGE, "You missed two days"),
        (&en::LANGUAGE, "This will help"),
        (&en::LANGUAGE, "A streak of 5"),
        (&es::LANGUAGE, "Sigue así"),
        (&es::LANGUAGE, "¡Muy bien!"),
        (&es::LANGUAGE, "Te saltaste dos días"),
        (&es::LANGUAGE, "Esto te ayudará"),
    ] {
        assert!(!found(said, banned(language)).is_empty(), "{said}");
    }
    assert!(found("Stopping is always right.", banned(&en::LANGUAGE)).is_empty());
}
