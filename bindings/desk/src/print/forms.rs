//! The forms, as text to read; answering them is the commands' part.

use frond_core::screens::{LogSessionScreen, SignChoice, SignsScreen, SpokeScreen};

use super::Page;
use super::press::actions;

/// The questions of a session, as a reminder of what can be told.
pub(super) fn log(page: &mut Page, screen: &LogSessionScreen) {
    page.title(&screen.title);
    if let Some(current) = &screen.current {
        page.paragraph(&current.when);
        for says in current.says.iter().chain(&current.signs) {
            page.point(says);
        }
    }
    let mut ask = |label: &str, answers: Vec<&str>| {
        page.paragraph(label);
        for answer in answers {
            page.point(answer);
        }
        page.gap();
    };
    ask(&screen.practice_label, screen.practices.iter().map(|c| c.label.as_str()).collect());
    if !screen.sizes.is_empty() {
        ask(&screen.size_label, screen.sizes.iter().map(|c| c.label.as_str()).collect());
    }
    ask(&screen.position_label, screen.positions.iter().map(|c| c.label.as_str()).collect());
    ask(&screen.minutes_label, Vec::new());
    ask(&screen.ended_label, screen.ended.iter().map(|c| c.label.as_str()).collect());
    for rating in &screen.ratings {
        ask(&rating.question, Vec::new());
    }
    ask(&screen.signs_label, Vec::new());
    ask(&screen.note_label, Vec::new());
    page.paragraph(&screen.note_caution);
    actions(page, None, &screen.actions);
}

/// The cautions under their headings, each with the word that reports it.
pub(super) fn signs(page: &mut Page, screen: &SignsScreen) {
    page.title(&screen.title);
    page.paragraph(&screen.how);
    for (group, signs) in by_group(&screen.signs) {
        page.heading(group);
        for sign in signs {
            page.inside(2, &sign.question);
            page.inside(6, &format!("frond sign --sign {}", code(sign)));
        }
    }
    page.gap().paragraph(&screen.nobody_told);
    actions(page, None, &screen.actions);
}

/// The cautions by their group, in the order of the screen.
pub(crate) fn by_group(signs: &[SignChoice]) -> Vec<(&str, &[SignChoice])> {
    signs
        .chunk_by(|one, next| one.group == next.group)
        .filter_map(|group| Some((group.first()?.group.as_str(), group)))
        .collect()
}

/// The stored name of a sign, as the command line takes it.
fn code(sign: &SignChoice) -> String {
    serde_json::to_value(sign.sign)
        .ok()
        .and_then(|value| value.as_str().map(str::to_owned))
        .unwrap_or_default()
}

pub(super) fn spoke(page: &mut Page, screen: &SpokeScreen) {
    page.title(&screen.title);
    if let Some(empty) = &screen.empty {
        page.paragraph(empty);
    }
    page.beside(&screen.with_label, "--with NAME", 40);
    page.beside(&screen.when_label, "--on DAY", 40);
    for open in &screen.signs {
        page.point(&open.text);
        let sign = serde_json::to_value(open.key.sign).ok();
        let sign = sign.as_ref().and_then(|sign| sign.as_str()).unwrap_or_default();
        page.inside(6, &format!("--sign {}:{sign}", open.key.entry));
    }
    if screen.signs.len() > 1 {
        page.inside(6, "--all-signs");
    }
    if let Some(pause) = &screen.pause {
        page.beside(pause, "--go-on", 40);
    }
    page.gap().paragraph(&screen.note);
    actions(page, None, &screen.actions);
}
