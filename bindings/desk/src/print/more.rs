//! The screens of a patient's day that have no command of their own, as text to read.

use frond_core::screens::{
    ActivitiesScreen, CalendarScreen, CorrectForm, CorrectScreen, EndingScreen, EntryScreen,
    FirstRunScreen, LanguageForm, LookForwardScreen, MoreScreen, QuestionsScreen, ReadyScreen,
    Section, SettingsScreen, SettledScreen, ShowsScreen, SummaryFormScreen, TimeOffScreen,
};

use super::Page;
use super::press::{actions, command_of};

/// A heading and what stands under it.
fn opening(page: &mut Page, title: &str, says: &[String], empty: Option<&String>) {
    page.title(title);
    for says in says.iter().chain(empty) {
        page.paragraph(says);
    }
}

fn sections(page: &mut Page, sections: &[Section]) {
    for section in sections {
        page.heading(&section.title);
        for says in &section.says {
            page.inside(2, says);
        }
        for line in section.actions.iter().filter_map(command_of) {
            page.inside(2, &line);
        }
    }
}

fn languages(page: &mut Page, form: &LanguageForm) {
    page.heading(&form.label);
    for language in &form.languages {
        let mark = if language.present { "> " } else { "  " };
        page.beside(&format!("{mark}{}", language.name), &language.reviewed, 20);
    }
}

pub(super) fn first_run(page: &mut Page, screen: &FirstRunScreen) {
    opening(page, &screen.title, &screen.says, None);
    if let Some(form) = &screen.language {
        languages(page, form);
    }
    actions(page, Some(&screen.next), &screen.actions);
}

pub(super) fn more(page: &mut Page, screen: &MoreScreen) {
    page.title(&screen.title);
    sections(page, &screen.groups);
    actions(page, None, &screen.actions);
}

/// The days on which something was; the others would be a column of nothing.
pub(super) fn calendar(page: &mut Page, screen: &CalendarScreen) {
    page.title(&format!("{} · {}", screen.title, screen.month));
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    for day in screen.weeks.iter().flatten().filter(|day| day.in_month && !day.done.is_empty()) {
        page.paragraph(&day.label);
        page.inside(4, &day.done.join(" · "));
    }
    let beside = screen.earlier.iter().chain(&screen.later).cloned();
    let all: Vec<_> = beside.chain(screen.actions.iter().cloned()).collect();
    actions(page, None, &all);
}

pub(super) fn entry(page: &mut Page, screen: &EntryScreen) {
    page.title(&format!("{} · {}", screen.title, screen.when)).sentences(&screen.says);
    page.gap();
    for note in screen.notes.iter().chain(&screen.nobody_told) {
        page.paragraph(note);
    }
    if !screen.versions.is_empty() {
        page.heading(&screen.versions_title);
    }
    for version in &screen.versions {
        page.paragraph(&version.written).sentences(&version.says);
    }
    actions(page, None, &screen.actions);
}

pub(super) fn correct(page: &mut Page, screen: &CorrectScreen) {
    opening(page, &screen.title, &screen.says, None);
    page.point(&screen.was);
    page.beside(&screen.when_label, &screen.when, 20);
    match &screen.form {
        CorrectForm::Question(field) | CorrectForm::LookForward(field) => {
            page.paragraph(&field.label);
        }
        CorrectForm::Function { ask, current } => {
            page.beside(&ask.question, &current.get().to_string(), 20);
        }
        CorrectForm::Goal { ask, current } => {
            page.paragraph(&ask.question);
            let now = ask.choices.iter().filter(|choice| choice.reached == *current);
            now.for_each(|choice| {
                page.point(&choice.label);
            });
        }
        CorrectForm::TimeOff(days) => {
            page.paragraph(&days.from).paragraph(&days.to);
        }
        CorrectForm::Signs { signs, current, .. } => {
            let now = signs.iter().filter(|choice| current.contains(&choice.sign));
            now.for_each(|choice| {
                page.point(&choice.question);
            });
        }
        CorrectForm::Nothing => {}
    }
    if let Some(nobody) = &screen.nobody_told {
        page.paragraph(nobody);
    }
    actions(page, None, &screen.actions);
}

pub(super) fn questions(page: &mut Page, screen: &QuestionsScreen) {
    opening(page, &screen.title, &screen.says, screen.empty.as_ref());
    sections(page, &screen.questions);
    page.gap().beside(&screen.new.label, "frond tell question", 36);
    actions(page, None, &screen.actions);
}

pub(super) fn activities(page: &mut Page, screen: &ActivitiesScreen) {
    opening(page, &screen.title, &screen.says, screen.empty.as_ref());
    for ask in &screen.activities {
        page.heading(&ask.question);
        page.inside(2, &format!("0: {}", ask.least)).inside(2, &format!("10: {}", ask.most));
        page.inside(2, "frond tell able --activity TEXT --rating 0-10");
    }
    for ask in &screen.goals {
        page.heading(&ask.question);
        for choice in &ask.choices {
            page.inside(2, &format!("{}: {}", choice.reached.get(), choice.label));
        }
        page.inside(2, "frond tell goal --goal TEXT --reached -2..2");
    }
    actions(page, None, &screen.actions);
}

pub(super) fn time_off(page: &mut Page, screen: &TimeOffScreen) {
    opening(page, &screen.title, &screen.says, screen.empty.as_ref());
    sections(page, &screen.standing);
    let how = "frond tell time-off --from DAY --to DAY";
    page.gap().beside(&format!("{} … {}", screen.days.from, screen.days.to), how, 30);
    actions(page, None, &screen.actions);
}

pub(super) fn look_forward(page: &mut Page, screen: &LookForwardScreen) {
    opening(page, &screen.title, &screen.says, screen.present.as_ref());
    page.gap().beside(&screen.new.label, "frond tell look-forward", 36);
    actions(page, None, &screen.actions);
}

pub(super) fn settled(page: &mut Page, screen: &SettledScreen) {
    opening(page, &screen.title, &screen.says, None);
    for choice in &screen.answers {
        page.point(&choice.label);
    }
    page.inside(2, &format!("frond tell settled --of {} ANSWER", super::press::short(screen.of)));
    page.paragraph(&screen.nobody_told);
    actions(page, None, &screen.actions);
}

pub(super) fn ready(page: &mut Page, screen: &ReadyScreen) {
    opening(page, &screen.title, &screen.says, None);
    for choice in &screen.answers {
        page.point(&choice.label);
    }
    page.inside(2, "frond suggest --ready yes|not-yet");
    actions(page, None, &screen.actions);
}

pub(super) fn ending(page: &mut Page, screen: &EndingScreen) {
    opening(page, &screen.title, &screen.says, None);
    sections(page, &screen.ways);
    actions(page, None, &screen.actions);
}

pub(super) fn shows(page: &mut Page, screen: &ShowsScreen) {
    opening(page, &screen.title, &screen.says, None);
    for shown in &screen.parts {
        page.heading(&shown.title);
        page.inside(2, &shown.frond).inside(2, &shown.you);
    }
    actions(page, None, &screen.actions);
}

pub(super) fn settings(page: &mut Page, screen: &SettingsScreen) {
    page.title(&screen.title);
    languages(page, &screen.language);
    page.heading(&screen.numbers.label);
    page.inside(
        2,
        if screen.numbers.present.numbers_open {
            &screen.numbers.open
        } else {
            &screen.numbers.folded
        },
    );
    page.inside(2, "frond tell settings --language TAG --numbers-open yes|no");
    sections(page, &screen.parts);
    actions(page, None, &screen.actions);
}

pub(super) fn summary_form(page: &mut Page, screen: &SummaryFormScreen) {
    super::summary(page, &screen.preview);
    for way in &screen.ways {
        page.heading(&way.label);
        for says in &way.says {
            page.inside(2, says);
        }
    }
    actions(page, None, &screen.actions);
}
