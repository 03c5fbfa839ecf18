//! Which fields stand on which page, in order.

use frond_core::message_id;
use frond_core::programme::draft::RuleDraft;
use frond_core::words::Words;

use super::super::visit::Visit;
use super::Open;
use super::fields::Asks;
use super::page::Leaf;
use crate::pages::parts::{Button, Field, Kind};

/// The fields of a page.
pub(super) fn fields(asks: &Asks<'_>, leaf: Leaf) -> Vec<Field> {
    match leaf {
        Leaf::Who => who(asks),
        Leaf::Steps => steps(asks),
        Leaf::Step(at) => step(asks, at),
        Leaf::Practices => vec![practices(asks)],
        Leaf::Rule => rule_page(asks),
        Leaf::Signs => signs(asks),
        Leaf::Texts => texts(asks),
    }
}

/// What is said back beside a page.
pub(super) fn said(visit: &Visit<'_>, draft: &Open, leaf: Leaf) -> Vec<String> {
    let own = &draft.kept.draft;
    let checked = draft.kept.check(visit.moment.now);
    let said = own.said(&checked, &visit.words);
    let said = said.into_iter().filter(|said| leaf.said().contains(&said.part));
    let mut sentences: Vec<String> = said.flat_map(|said| said.sentences).collect();
    // What is unusual here is said here as well; it keeps nothing back.
    for notice in checked.notices.iter().filter(|notice| leaf.holds(&notice.place)) {
        let values = [
            ("at", own.place_said(&notice.place, &visit.words).into()),
            ("says", notice.say(own, &visit.words).into()),
            ("why", notice.why(&visit.words).into()),
        ];
        sentences.push(visit.words.text("compose-page-unusual", &values));
    }
    sentences
}

fn who(asks: &Asks<'_>) -> Vec<Field> {
    let tags: Vec<String> =
        Words::offered(false).into_iter().map(|one| one.tag.to_owned()).collect();
    vec![
        asks.line("for_whom"),
        asks.choice("intended_for"),
        asks.offering("language", tags),
        asks.line("clinician.name"),
        asks.line("clinician.clinic"),
        asks.together(
            "contact",
            asks.words.text("compose-page-contact", &[]),
            vec![
                asks.line("contact.name"),
                asks.phone("contact.phone"),
                asks.line("contact.hours"),
            ],
        ),
        asks.passage("contact.if_nobody_answers"),
        asks.passage("out_of_hours.what_to_do"),
        asks.phone("out_of_hours.phone"),
        asks.together(
            "emergency",
            asks.words.text("compose-page-emergency", &[]),
            vec![asks.phone("emergency.number"), asks.line("emergency.country")],
        ),
        asks.day("review_by"),
    ]
}

/// The ladder: each step leads to a page of its own.
fn steps(asks: &Asks<'_>) -> Vec<Field> {
    let words = asks.words;
    let rungs = (0..asks.tree.len("steps")).map(|index| {
        let at = format!("steps.{index}");
        let mut item = asks.item(&at, asks.about(&at), Vec::new());
        if let Kind::Group { buttons, .. } = &mut item.kind {
            let open = Button {
                then: format!("open:{at}"),
                label: words.text("compose-open-step", &[]),
                about: Some(asks.about(&at)),
            };
            buttons.insert(0, open);
        }
        item
    });
    let rungs: Vec<Field> = rungs.collect();
    let add = vec![asks.button("add:steps", words.text("compose-add-step", &[]))];
    let any = !rungs.is_empty();
    let mut fields = vec![asks.list("steps", rungs, add)];
    if any {
        fields.push(asks.choice("start_at"));
    }
    fields
}

fn step(asks: &Asks<'_>, index: usize) -> Vec<Field> {
    let words = asks.words;
    let at = format!("steps.{index}");
    let within = |name: &str| format!("{at}.{name}");
    let parts = (0..asks.tree.len(&within("parts"))).map(|part| {
        let at = format!("{at}.parts.{part}");
        let fields = vec![
            asks.line(&format!("{at}.label")),
            asks.decimal(&format!("{at}.size_mm")),
            asks.minutes(&at),
        ];
        asks.item(&at, asks.about(&at), fields)
    });
    let add = vec![asks.button(format!("add:{at}.parts"), words.text("compose-add-part", &[]))];
    let mut fields = vec![
        asks.line(&within("name")),
        asks.choice(&within("practice")),
        asks.list(&within("parts"), parts.collect(), add),
        asks.choice(&within("position")),
        asks.schedule(&at),
        asks.passage(&within("instruction")),
        asks.tick(&within("gate")),
        asks.tick(&within("maintain")),
    ];
    let own = asks.draft.steps.get(index).and_then(|step| step.rule.as_ref());
    match own {
        Some(own) => {
            fields.push(rule(asks, &within("rule"), own, words.text("compose-own-rule", &[])))
        }
        None => {
            let add =
                asks.button(format!("add:{at}.rule"), words.text("compose-add-own-rule", &[]));
            let title = words.text("compose-own-rule", &[]);
            let list = Kind::List { fields: Vec::new(), buttons: vec![add] };
            let hint = words.text("compose-own-rule-hint", &[]);
            fields.push(Field::new(&within("rule"), title, list).hint(hint));
        }
    }
    fields
}

fn practices(asks: &Asks<'_>) -> Field {
    let words = asks.words;
    let items = (0..asks.tree.len("practices")).map(|index| {
        let at = format!("practices.{index}");
        let within = |name: &str| format!("{at}.{name}");
        let phases = ["in_seconds", "hold_in_seconds", "out_seconds", "hold_out_seconds"];
        let phases: Vec<Field> =
            phases.map(|name| asks.decimal(&format!("{at}.breath.{name}"))).into();
        let filled = phases.iter().any(|field| match &field.kind {
            Kind::Line { value, .. } => !value.is_empty(),
            _ => false,
        });
        let title = words.text("compose-page-breath", &[]);
        let fields = vec![
            asks.choice(&within("practice")),
            asks.line(&within("name")),
            asks.minutes(&at),
            asks.schedule(&at),
            Field::new(&within("breath"), title, Kind::Folded { parts: phases, open: filled }),
            asks.passage(&within("instruction")),
        ];
        asks.item(&at, asks.about(&at), fields)
    });
    let add = vec![asks.button("add:practices", words.text("compose-add-practice", &[]))];
    asks.list("practices", items.collect(), add)
}

fn rule_page(asks: &Asks<'_>) -> Vec<Field> {
    let words = asks.words;
    let mut fields = Vec::new();
    match &asks.draft.rule {
        Some(own) => fields.push(rule(asks, "rule", own, words.text("compose-page-rule", &[]))),
        None => {
            let add = asks.button("add:rule", words.text("compose-add-rule", &[]));
            let list = Kind::List { fields: Vec::new(), buttons: vec![add] };
            let title = words.text("compose-page-rule", &[]);
            let hint = words.text("compose-page-no-rule", &[]);
            fields.push(Field::new("rule", title, list).hint(hint));
        }
    }
    fields.push(asks.whole("late_after_hours"));
    fields
}

/// The kinds of condition that may stand in each list of a rule, and what adds one.
const UP: &[(&str, &str)] = &[
    ("days_on_step", message_id!("compose-add-days-on-step")),
    ("sessions", message_id!("compose-add-sessions")),
    ("discomfort_at_most", message_id!("compose-add-discomfort-at-most")),
    ("sign_free_days", message_id!("compose-add-sign-free-days")),
    ("feels_ready", message_id!("compose-add-feels-ready")),
];
const BACK: &[(&str, &str)] = &[
    ("discomfort_at_least", message_id!("compose-add-discomfort-at-least")),
    ("stopped_early", message_id!("compose-add-stopped-early")),
    ("days_without_practice", message_id!("compose-add-days-without-practice")),
];
const PAUSE: &[(&str, &str)] = &[
    ("discomfort_at_least", message_id!("compose-add-discomfort-at-least")),
    ("stopped_early", message_id!("compose-add-stopped-early")),
    ("days_without_practice", message_id!("compose-add-days-without-practice")),
    ("steps_back", message_id!("compose-add-steps-back")),
];

fn rule(asks: &Asks<'_>, at: &str, own: &RuleDraft, title: String) -> Field {
    let words = asks.words;
    let lists = [
        ("step_up", UP, own.step_up.len()),
        ("step_back", BACK, own.step_back.len()),
        ("pause", PAUSE, own.pause.len()),
    ];
    let mut fields = Vec::new();
    for (name, kinds, many) in lists {
        let list = format!("{at}.{name}");
        let items = (0..many).map(|index| condition(asks, &format!("{list}.{index}"), kinds));
        let items = items.collect();
        let add = |(kind, says): &(&str, &str)| {
            let what = words.text(says, &[]).into();
            let says = words.text("compose-add-condition", &[("what", what)]);
            asks.button(format!("add:{list}:{kind}"), says)
        };
        fields.push(asks.list(&list, items, kinds.iter().map(add).collect()));
    }
    fields.push(asks.whole(&format!("{at}.after_gap_days")));
    let remove = Button {
        then: format!("remove:{at}"),
        label: words.text("compose-remove-rule", &[]),
        about: None,
    };
    let hint = words.text("compose-page-rule-hint", &[]);
    Field::new(at, title, Kind::List { fields, buttons: vec![remove] }).hint(hint)
}

/// One condition: only the fields that its kind has.
fn condition(asks: &Asks<'_>, at: &str, kinds: &[(&str, &str)]) -> Field {
    let kind = asks.tree.typed(&format!("{at}.criterion"));
    let says = kinds.iter().find(|(own, _)| *own == kind).map(|(_, says)| *says);
    let title = asks.words.text(
        "compose-page-condition",
        &[
            ("at", asks.about(at).into()),
            ("what", says.map(|says| asks.words.text(says, &[])).unwrap_or_default().into()),
        ],
    );
    let mut fields = Vec::new();
    for name in [
        "rating",
        "at_most",
        "at_least",
        "last",
        "sessions",
        "of_last",
        "times",
        "practised_days",
        "within_days",
        "days",
        "target",
    ] {
        let field = format!("{at}.{name}");
        if asks.tree.has(&field) {
            fields.push(match name {
                "rating" | "target" => asks.choice(&field),
                _ => asks.whole(&field),
            });
        }
    }
    asks.item(at, title, fields)
}

fn signs(asks: &Asks<'_>) -> Vec<Field> {
    let words = asks.words;
    let items = (0..asks.tree.len("stricter_signs")).map(|index| {
        let at = format!("stricter_signs.{index}");
        let fields = vec![asks.choice(&format!("{at}.sign")), asks.choice(&format!("{at}.tier"))];
        asks.item(&at, asks.about(&at), fields)
    });
    let add = vec![asks.button("add:stricter_signs", words.text("compose-add-stricter", &[]))];
    let mut fields = Vec::new();
    if !asks.draft.signs_seen.is_empty() {
        fields.push(signs_seen(asks));
    }
    fields.push(asks.whole("screening_every_days"));
    fields.push(asks.any("ratings_asked"));
    fields.push(asks.list("stricter_signs", items.collect(), add));
    fields.push(asks.tick("spotting_note_only"));
    fields
}

/// Signs of the diary, each named; none is ticked by itself.
fn signs_seen(asks: &Asks<'_>) -> Field {
    let signs = asks.draft.signs_seen.iter().enumerate().map(|(index, one)| {
        let sign = capital(&asks.words.text(one.key.sign.name_id(), &[])).into();
        let says = match one.told {
            Some(day) => {
                let day = asks.words.date(day).into();
                asks.words.text("compose-page-sign-told", &[("sign", sign), ("day", day)])
            }
            None => asks.words.text("compose-page-sign-earlier", &[("sign", sign)]),
        };
        Field::new(&format!("signs_seen.{index}.seen"), says, Kind::Tick { chosen: one.seen })
    });
    asks.list("signs_seen", signs.collect(), Vec::new())
}

fn texts(asks: &Asks<'_>) -> Vec<Field> {
    let words = asks.words;
    let readers = (0..asks.tree.len("recipients")).map(|index| {
        let at = format!("recipients.{index}");
        let fields = vec![asks.line(&format!("{at}.name")), asks.line(&format!("{at}.key"))];
        asks.item(&at, asks.about(&at), fields)
    });
    let add = vec![
        asks.button("add_own_key", words.text("compose-add-own-key", &[])),
        asks.button("add:recipients", words.text("compose-add-recipient", &[])),
    ];
    vec![
        asks.lines("goals", false, words.text("compose-add-goal", &[])),
        asks.lines("activities", false, words.text("compose-add-activity", &[])),
        asks.whole("activities_every_days"),
        asks.lines("own_cautions", true, words.text("compose-add-own-caution", &[])),
        asks.list("recipients", readers.collect(), add),
        asks.together(
            "manner",
            words.text("compose-manner", &[]),
            vec![
                asks.tick("manner.numbers_folded"),
                asks.tick("manner.grounding_first"),
                asks.tick("manner.contact_on_stop"),
            ],
        ),
    ]
}

/// With a capital at the beginning.
fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
