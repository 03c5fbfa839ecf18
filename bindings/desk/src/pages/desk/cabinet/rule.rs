//! Another rule on one diary, side by side with the one in force. Nothing is saved; what it finds can be taken to the
//! composer as a new revision.

use axum::response::Response;
use frond_core::programme::check::check;
use frond_core::programme::draft::Draft;
use frond_core::programme::plan::Programme;
use frond_core::programme::read::{MOST_BYTES, read};
use frond_core::programme::readback::read_back_rule;
use frond_core::programme::rule::Rule;
use frond_core::programme::strict;
use frond_core::screens::{WhatIfLine, WhatIfScreen};
use frond_core::words::{Value, Words};

use super::super::compose;
use super::super::visit::{Shown, Visit, see};
use super::Opened;
use crate::clinic::programmes::Programmes;
use crate::pages::form::{Fields, Problem};
use crate::pages::parts::{Choice, Field, Form, How, Kind, Look, Page, Part, Press, Table};
use crate::pages::upload::Upload;

/// The most that such a form carries, in bytes.
pub(super) const MOST: usize = 2 * MOST_BYTES;

pub(super) fn ask(visit: &mut Visit<'_>, named: &str) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, digest) = visit.diary(&opened, named)?;
    let received = visit.received(&opened, digest.summary)?;
    let own = received.summary.plan().and_then(|plan| plan.rule);
    let text = own.as_ref().map(written).unwrap_or_default();
    asked(visit, &opened, &format!("/people/{diary}"), &text, vec![])
}

/// The page that asks which rule.
fn asked(
    visit: &Visit<'_>,
    opened: &Opened,
    back: &str,
    text: &str,
    problems: Vec<Problem>,
) -> Shown {
    let words = &visit.words;
    let submit = words.text("cabinet-what-if-compare", &[]);
    let form = form(words, &desks(visit, opened)?, &format!("{back}/rule"), text, submit);
    Ok(Page::new(&visit.frame, words.text("cabinet-what-if", &[]))
        .problems(problems)
        .text([
            words.text("cabinet-what-if-about", &[]),
            words.text("cabinet-what-if-not-saved", &[]),
        ])
        .form(form)
        .presses(vec![Press::go(words.text("cabinet-visit-back", &[]), "/people")])
        .answer())
}

/// Which rule is tried: a file, or the rule itself.
pub(super) fn form(
    words: &Words,
    desks: &[DesksRule],
    to: &str,
    text: &str,
    submit: String,
) -> Form {
    let file =
        Kind::Line { input: "file", value: String::new(), mode: "", offers: vec![], short: false };
    let mut form = Form::to(to, submit);
    form.upload = true;
    if !desks.is_empty() {
        let choice = |one: &DesksRule| Choice {
            value: one.id.clone(),
            label: one.label.clone(),
            chosen: false,
        };
        let choices = Kind::One(desks.iter().map(choice).collect());
        form.fields.push(Field::new("plan", words.text("cabinet-what-if-desks", &[]), choices));
    }
    form.fields.extend([
        Field::new("file", words.text("cabinet-what-if-file", &[]), file),
        Field::new(
            "text",
            words.text("cabinet-what-if-text", &[]),
            Kind::Passage { value: text.to_owned() },
        )
        .hint(words.text("cabinet-what-if-text-hint", &[])),
    ]);
    form
}

/// A rule that the desk has: of a finished plan, or of a draft that could be finished.
pub(super) struct DesksRule {
    id: String,
    label: String,
    rule: Rule,
}

/// The rules that the desk has. Steps' own rules are not among them: a tried rule is for every step.
pub(super) fn desks(visit: &Visit<'_>, opened: &Opened) -> Result<Vec<DesksRule>, Response> {
    let trouble = |error| compose::trouble(visit, error);
    let listed = Programmes::of(&opened.clinic).and_then(|all| all.list()).map_err(trouble)?;
    let words = &visit.words;
    let drafts = listed.drafts.iter().filter_map(|(id, kept)| {
        // A review day that has passed says nothing about the rule.
        let then = kept.earlier().map_or(visit.moment.now, |earlier| earlier.issued_at);
        let programme = kept.check(then).programme?;
        let label = words.text("cabinet-rule-of-draft", &about(&programme));
        Some(DesksRule { id: id.as_str().to_owned(), label, rule: programme.rule? })
    });
    let finished = listed.finished.iter().filter_map(|one| {
        let label = words.text("cabinet-rule-of-plan", &about(&one.programme));
        let rule = one.programme.rule.clone()?;
        Some(DesksRule { id: one.file.as_str().to_owned(), label, rule })
    });
    Ok(drafts.chain(finished).collect())
}

fn about(programme: &Programme) -> [(&'static str, Value); 2] {
    [("name", programme.for_whom.as_str().into()), ("revision", programme.revision.get().into())]
}

/// A rule as it is written.
pub(super) fn written(rule: &Rule) -> String {
    serde_json::to_string_pretty(rule).unwrap_or_default()
}

/// The rule that a form names.
pub(super) fn named(words: &Words, desks: &[DesksRule], upload: &Upload) -> Result<Rule, Problem> {
    let fields: &Fields = &upload.fields;
    let chosen = fields.first("plan").filter(|_| upload.file.is_empty());
    if let Some(one) = desks.iter().find(|one| Some(one.id.as_str()) == chosen) {
        return Ok(one.rule.clone());
    }
    let typed = fields.first("text").unwrap_or_default();
    let (field, bytes) = if upload.file.is_empty() {
        ("text", typed.as_bytes())
    } else {
        ("file", upload.file.as_slice())
    };
    if bytes.is_empty() {
        return Err(Problem::at("file", words.text("cabinet-what-if-none", &[])));
    }
    let wrong = |why: String| {
        Problem::at(field, words.text("cabinet-what-if-error", &[("why", why.into())]))
    };
    let tree = strict::tree(bytes, MOST_BYTES).map_err(|error| wrong(error.to_string()))?;
    if tree.get("frond_programme").is_some() {
        let plan = read(bytes).map_err(|error| wrong(error.to_string()))?;
        return plan
            .rule
            .ok_or_else(|| Problem::at(field, words.text("cabinet-what-if-no-rule", &[])));
    }
    strict::typed(&tree).map_err(|error| wrong(error.to_string()))
}

/// The plan with this rule for every step.
fn with_rule(plan: &Programme, rule: &Rule) -> Programme {
    let mut plan = plan.clone();
    for step in &mut plan.steps {
        step.rule = None;
    }
    plan.rule = Some(rule.clone());
    plan
}

pub(super) fn compared(visit: &mut Visit<'_>, named_diary: &str, upload: Upload) -> Shown {
    let opened = visit.cabinet()?;
    let (diary, digest) = visit.diary(&opened, named_diary)?;
    let words = &visit.words;
    let back = format!("/people/{diary}");
    let text = upload.fields.first("text").unwrap_or_default().to_owned();
    let desks = desks(visit, &opened)?;
    let rule = match named(words, &desks, &upload) {
        Ok(rule) => rule,
        Err(problem) => return asked(visit, &opened, &back, &text, vec![problem]),
    };
    let received = visit.received(&opened, digest.summary)?;
    let plan = received.summary.plan();
    if let Some(plan) = &plan {
        // What the plan's own checks would refuse is said now, and not when it is to be signed.
        let wrong: Vec<Problem> = check(&with_rule(plan, &rule))
            .errors
            .iter()
            .map(|issue| {
                let why = issue.to_string();
                Problem::at("text", words.text("cabinet-what-if-error", &[("why", why.into())]))
            })
            .collect();
        if !wrong.is_empty() {
            return asked(visit, &opened, &back, &written(&rule), wrong);
        }
    }
    let screen = WhatIfScreen::new(words, &received.summary, &rule)
        .map_err(|_| visit.sorry(words.text("cabinet-cannot-open", &[])))?;
    Ok(page(visit, &screen, &desks, &rule, plan.as_ref(), &back))
}

fn page(
    visit: &Visit<'_>,
    screen: &WhatIfScreen,
    desks: &[DesksRule],
    rule: &Rule,
    plan: Option<&Programme>,
    back: &str,
) -> Response {
    let words = &visit.words;
    let mut page = Page::new(&visit.frame, &screen.title)
        .text(screen.about.clone())
        .text(screen.narrowed.clone())
        .text(screen.counts.clone());
    if let Some(now) = &screen.now {
        page = page.part(Part::Table(table(screen, now.what.clone(), std::slice::from_ref(now))));
    }
    if !screen.first.is_empty() {
        page = page.part(Part::Table(table(screen, screen.first_title.clone(), &screen.first)));
    }
    if !screen.all.is_empty() {
        let all = Part::Table(table(screen, screen.all_title.clone(), &screen.all));
        page = page.part(Part::Fold {
            title: screen.all_title.clone(),
            open: false,
            parts: vec![all],
        });
    }
    if let Some(plan) = plan {
        let points = read_back_rule(rule, plan, words);
        page = page.part(Part::Fold {
            title: words.text("cabinet-what-if-reads", &[]),
            open: false,
            parts: vec![Part::Points { points }],
        });
    }
    let send = |label: String, to: String, look| Press {
        label,
        how: How::Send { to, fields: vec![("text", written(rule))] },
        look,
    };
    let mut again = form(
        words,
        desks,
        &format!("{back}/rule"),
        &written(rule),
        words.text("cabinet-what-if-compare", &[]),
    );
    again.look = Look::Equal;
    page = page.part(Part::Fold {
        title: words.text("cabinet-what-if-choose", &[]),
        open: false,
        parts: vec![Part::Form(again)],
    });
    let over_all = words.text("cabinet-what-if-compare-all", &[]);
    if plan.is_some() {
        let revise = words.text("cabinet-what-if-revise", &[]);
        page = page.quiet([words.text("cabinet-what-if-revise-says", &[])]).presses(vec![send(
            revise,
            format!("{back}/revise"),
            Look::Next,
        )]);
    }
    page.presses(vec![
        send(over_all, "/rules".to_owned(), Look::Equal),
        Press::go(words.text("cabinet-visit-back", &[]), "/people"),
    ])
    .answer()
}

fn table(screen: &WhatIfScreen, caption: String, lines: &[WhatIfLine]) -> Table {
    let [when, what] = screen.columns.clone();
    let row = |line: &WhatIfLine| {
        vec![
            line.when.clone(),
            line.what.clone(),
            line.own.clone(),
            line.tried.clone(),
            line.differs.clone().unwrap_or_default(),
        ]
    };
    Table {
        caption,
        columns: vec![when, what, screen.own.clone(), screen.tried.clone(), screen.differs.clone()],
        rows: lines.iter().map(row).collect(),
    }
}

/// Begins a new revision of the plan in force, with the rule that was tried where one was, and goes on in the
/// composer. This is all that is ever saved here, and it is a draft.
pub(super) fn revise(visit: &mut Visit<'_>, named_diary: &str, fields: &Fields) -> Shown {
    let opened = visit.cabinet()?;
    let (_, digest) = visit.diary(&opened, named_diary)?;
    let received = visit.received(&opened, digest.summary)?;
    let words = &visit.words;
    let no_plan = || {
        let says = words.text("cabinet-no-plan", &[]);
        visit.sorry_as(axum::http::StatusCode::UNPROCESSABLE_ENTITY, says)
    };
    let plan = received.summary.plan().ok_or_else(no_plan)?;
    let rule: Option<Rule> = match fields.first("text") {
        None => None,
        Some(text) => {
            let tree = strict::tree(text.as_bytes(), MOST_BYTES);
            let rule = tree.and_then(|tree| strict::typed(&tree));
            Some(rule.map_err(|_| visit.nothing_here())?)
        }
    };
    let trouble = |error| compose::trouble(visit, error);
    let programmes = Programmes::of(&opened.clinic).map_err(trouble)?;
    let open = received.summary.present.open_signs.iter().map(|sign| (sign.key, sign.since.day()));
    let id = programmes.begin_next(&plan, open, visit.moment.now).map_err(trouble)?;
    let Some(rule) = rule else { return Ok(see(&format!("/programmes/{}/who", id.as_str()))) };
    let mut kept = programmes.draft(&id).map_err(trouble)?;
    kept.draft.rule = Draft::next_of(&with_rule(&plan, &rule)).rule;
    for step in &mut kept.draft.steps {
        step.rule = None;
    }
    programmes.save(&id, &kept).map_err(trouble)?;
    Ok(see(&format!("/programmes/{}/rule", id.as_str())))
}
