//! Nothing that leaves the phone with a reminder hints at health, in any language.

use super::*;
use crate::programme::values::Token;
use crate::screens::{Amiss, CodeScreen, Covered, FormField, FormWords, NoDiaryScreen, Problem};

/// Beginnings of words that would give the person away, language by language. A language that is
/// offered without a list here fails the test.
const HEALTH_WORDS: &[(&str, &[&str])] = &[
    (
        "en",
        &[
            "ache",
            "anat",
            "anus",
            "appointment",
            "birth",
            "bleed",
            "blood",
            "bod",
            "breath",
            "cancer",
            "care",
            "clinic",
            "cramp",
            "diary",
            "dilat",
            "discomfort",
            "doctor",
            "dose",
            "exercise",
            "fertil",
            "floor",
            "frond",
            "genit",
            "gyn",
            "health",
            "heal",
            "hospital",
            "hurt",
            "ill",
            "insert",
            "intercourse",
            "intim",
            "medic",
            "menopaus",
            "midwi",
            "muscle",
            "nurse",
            "pain",
            "patient",
            "pelv",
            "period",
            "physio",
            "pill",
            "plan",
            "practi",
            "pregnan",
            "program",
            "rate",
            "rating",
            "relax",
            "rehab",
            "scar",
            "session",
            "sex",
            "sick",
            "sign",
            "size",
            "spasm",
            "step",
            "stretch",
            "symptom",
            "tampon",
            "tense",
            "therap",
            "touch",
            "train",
            "treat",
            "urin",
            "uter",
            "vagi",
            "visit",
            "vulv",
            "womb",
            "wom",
            "worr",
        ],
    ),
    (
        "es",
        &[
            "abdom",
            "anal",
            "anatom",
            "ano",
            "ansied",
            "aparato",
            "atención",
            "biops",
            "cancer",
            "cicatriz",
            "cita",
            "clinic",
            "clínic",
            "coito",
            "consult",
            "contrac",
            "cuerp",
            "cuid",
            "cura",
            "cáncer",
            "diari",
            "dilat",
            "disciplin",
            "distens",
            "doctor",
            "dol",
            "dosis",
            "débil",
            "ejerci",
            "embaraz",
            "enferm",
            "entren",
            "escal",
            "espasm",
            "especialist",
            "estir",
            "examen",
            "fisio",
            "flujo",
            "frond",
            "fértil",
            "genit",
            "ginec",
            "herida",
            "hospital",
            "incomod",
            "inserta",
            "intim",
            "medic",
            "medid",
            "menopaus",
            "menstru",
            "molest",
            "muscul",
            "médic",
            "músc",
            "múscul",
            "nota",
            "obstet",
            "orin",
            "ovar",
            "paciente",
            "parto",
            "paso",
            "pastilla",
            "pelv",
            "plan",
            "practi",
            "pregun",
            "preocup",
            "program",
            "progreso",
            "prueb",
            "práct",
            "psic",
            "pélv",
            "píldora",
            "quirur",
            "radio",
            "regla",
            "rehab",
            "relaj",
            "respir",
            "revisi",
            "riesgo",
            "salud",
            "sangr",
            "sesi",
            "sex",
            "sintom",
            "suelo",
            "síntom",
            "tamaño",
            "tampon",
            "tampón",
            "tens",
            "tensión",
            "tera",
            "tocar",
            "trat",
            "urin",
            "uter",
            "vagin",
            "valora",
            "vejiga",
            "vientre",
            "visita",
            "vulv",
            "íntim",
            "úter",
        ],
    ),
];

/// The list of a language; of the language it is made from, where it is made from another.
fn health_words(language: &crate::words::Language) -> &'static [&'static str] {
    let list = HEALTH_WORDS.iter().find(|(one, _)| *one == language.rules);
    list.unwrap_or_else(|| {
        panic!("no list for {}: put one into HEALTH_WORDS of {}", language.tag, file!())
    })
    .1
}

/// The health words that begin some word of a text.
fn found_in(text: &str, list: &[&'static str]) -> Vec<&'static str> {
    let text = text.to_lowercase();
    let words: Vec<&str> = text.split(|one: char| !one.is_alphabetic()).collect();
    list.iter().copied().filter(|bad| words.iter().any(|word| word.starts_with(bad))).collect()
}

/// The messages of `leaving.ftl`, without comments and ids.
fn leaving(language: &crate::words::Language) -> Vec<(String, String)> {
    let (_, source) = language.files().into_iter().find(|(name, _)| name == "leaving.ftl").unwrap();
    let lines = source.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
    lines
        .map(|line| match line.split_once('=') {
            Some((id, text)) => (id.trim().to_owned(), text.trim().to_owned()),
            None => (String::new(), line.to_owned()),
        })
        .collect()
}

#[test]
fn n10_no_message_that_leaves_holds_a_health_word_in_any_language() {
    for language in Words::offered(false) {
        let list = health_words(language);
        let messages = leaving(language);
        assert!(messages.len() > NeutralWords::ALL.len(), "{}: the scan is broken", language.tag);
        for (id, text) in messages {
            assert!(id.starts_with("leaving-"), "{}: {id} {text:?}", language.tag);
            // Nothing can be put into a message that leaves.
            assert!(!text.contains('{'), "{}: {id}", language.tag);
            assert_eq!(found_in(&text, list), [""; 0], "{}: {text:?}", language.tag);
        }
    }
}

#[test]
fn n10_the_scan_finds_what_it_should() {
    let list = health_words(Words::for_language("en").language());
    for text in [
        "Your exercises",
        "TRAINER 2",
        "Time to breathe",
        "pelvic-floor",
        "See your clinic",
        "Frond",
    ] {
        assert!(!found_in(text, list).is_empty(), "{text}");
    }
    assert!(found_in("A moment for you", list).is_empty());
    let list = health_words(Words::for_language("es").language());
    for text in
        ["Tus ejercicios", "DILATADOR 2", "Hora de respirar", "suelo pélvico", "Ve a tu clínica"]
    {
        assert!(!found_in(text, list).is_empty(), "{text}");
    }
    assert!(found_in("Un momento para ti", list).is_empty());
}

/// What stands around a notification, a shared file and the screen after leaving at once; and the two screens before
/// the lock, which anyone may read.
#[test]
fn no_health_word_stands_where_others_may_look() {
    for language in Words::offered(false) {
        let words = Words::for_language(language.tag);
        let list = health_words(language);
        let form = FormWords::new(&words, Covered::default());
        // How a record names its own parts is no one's word; what it says is.
        let outside = serde_json::to_value(&form.outside).unwrap();
        let empty = NoDiaryScreen::new(&words);
        let wrong = [Amiss::CodeWrong, Amiss::CodeMissing]
            .map(|amiss| Problem::new(&words, FormField::Code, amiss));
        let code = CodeScreen::new(&words, 300_000, wrong.to_vec());
        let mut texts: Vec<String> =
            outside.as_object().unwrap().values().map(|one| one.as_str().unwrap().into()).collect();
        texts.extend([form.frame.leave, form.frame.loading, form.frame.loading_long]);
        texts.extend([form.fields.show_secret, form.fields.hide_secret, form.spoken.to_put_right]);
        texts.extend([form.fields.secret_shown, form.fields.secret_hidden, form.frame.problems]);
        texts.push(empty.title);
        texts.extend(empty.says);
        texts.extend([empty.next.label, code.title, code.code.label, code.submit]);
        texts.extend(empty.actions.into_iter().chain(code.actions).map(|one| one.label));
        texts.extend(code.says.into_iter().chain(code.wait.unwrap().says));
        texts.extend(code.problems.into_iter().map(|one| one.says));
        assert!(texts.len() > 25);
        for text in texts {
            assert_eq!(found_in(&text, list), [""; 0], "{}: {text:?}", language.tag);
        }
    }
}

/// Reminders full of words that must stay inside, next to the same without them.
fn telling() -> (ReminderSettings, ReminderSettings) {
    let make = |practice: &str, routine: &str| {
        let practice = Practice::Other(Token::new(practice).unwrap());
        let after = When::After {
            routine: Line::new(routine).unwrap(),
            days: Weekdays::ALL,
            about: Some(time("21:00")),
        };
        settings(vec![
            daily(practice.clone(), &["09:00"]),
            Reminder { practice, when: after, skip_when_done: true },
        ])
    };
    (make("pelvic-floor-therapy", "my vaginal exercises at the clinic"), make("walk", "tea"))
}

#[test]
fn n10_nothing_of_practice_plan_or_routine_leaves() {
    let (telling, plain) = telling();
    let now = moment("2026-03-02T07:00:00+01:00[Europe/Madrid]");
    for says in NeutralWords::ALL {
        for language in Words::offered(false) {
            let words = Words::for_language(language.tag);
            let with = |base: &ReminderSettings| ReminderSettings { words: says, ..base.clone() };
            let (telling, plain) = (with(&telling), with(&plain));
            let facts = Facts::default();
            let leaves = serde_json::to_string(&plan(&telling, &facts, &now, 3, &words)).unwrap();
            assert_eq!(
                leaves,
                serde_json::to_string(&plan(&plain, &facts, &now, 3, &words)).unwrap()
            );
            let file = calendar(&telling, &facts, &now, &words).unwrap();
            assert!(file == calendar(&plain, &facts, &now, &words).unwrap());
            let list = health_words(language);
            // Names of RFC 5545 itself, and of a zone, are no one's words.
            let own = plan(&telling, &facts, &now, 3, &words).words;
            for text in [own.as_str(), file.name.as_str()] {
                assert_eq!(found_in(text, list), [""; 0], "{text}");
            }
            for line in file.text.replace("\r\n ", "").lines() {
                let value = line.split_once(':').unwrap().1;
                assert_eq!(found_in(value, list), [""; 0], "{line}");
            }
        }
    }
}

#[test]
fn n10_n12_words_beside_the_settings() {
    let words = words();
    let mut said = vec![off_line(&words), calendar_note(&words)];
    said.extend(NeutralWords::ALL.map(|one| one.preview(&words)));
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn debug_text_of_reminders_tells_nothing() {
    let (telling, _) = telling();
    let shown =
        format!("{telling:?} {:?} {:?}", telling.reminders, telling.reminders.get()[1].when);
    assert_eq!(shown, "ReminderSettings(..) ReminderList(..) When(..)");
}
