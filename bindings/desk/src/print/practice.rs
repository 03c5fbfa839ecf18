//! The screens of practising, in short. A terminal has no clock to follow; `frond try` shows them whole.

use frond_core::screens::{
    AcceptScreen, AnythingNewScreen, BreathingScreen, FoundScreen, HoldQuestionsScreen,
    PracticesScreen, RateScreen, RemindersScreen, RunningScreen, ScreeningScreen, StepCheckScreen,
    StoppedScreen,
};

use super::{Page, press};

pub(super) fn practices(page: &mut Page, screen: &PracticesScreen) {
    page.title(&screen.title).paragraph(&screen.enough);
    for option in &screen.options {
        page.gap().paragraph(&option.name);
        page.sentences(&option.parts).paragraph(&option.instruction);
    }
    page.gap().sentences(&screen.cautions);
    press::actions(page, None, &screen.actions);
}

pub(super) fn anything_new(page: &mut Page, screen: &AnythingNewScreen) {
    page.title(&screen.title).sentences(&screen.grounding);
    for answer in &screen.answers {
        page.paragraph(&answer.label);
    }
    page.paragraph(&screen.not_sure).gap().sentences(&screen.cautions);
    press::actions(page, None, &screen.actions);
}

pub(super) fn breathing(page: &mut Page, screen: &BreathingScreen) {
    page.title(&screen.title).paragraph(&screen.enough);
    for preset in &screen.presets {
        page.gap().paragraph(&preset.name).paragraph(&preset.how).paragraph(&preset.rhythm);
        page.sentences(&preset.notes);
    }
    page.sentences(&screen.refused).gap().paragraph(&screen.belly_title).sentences(&screen.belly);
    press::actions(page, screen.holds.as_ref(), &screen.actions);
}

pub(super) fn running(page: &mut Page, screen: &RunningScreen) {
    page.title(&screen.title).paragraph(&screen.used).paragraph(&screen.clock_spoken);
    page.sentences(screen.line.as_slice()).sentences(&screen.cautions);
    press::actions(page, None, &screen.actions);
}

pub(super) fn found(page: &mut Page, screen: &FoundScreen) {
    page.title(&screen.title).sentences(&screen.lines);
    press::actions(page, None, &screen.actions);
}

pub(super) fn stopped(page: &mut Page, screen: &StoppedScreen) {
    let stopped = &screen.stopped;
    page.title(&stopped.title).sentences(stopped.let_out.as_slice());
    for calm in &stopped.calm {
        page.gap().sentences(&calm.steps);
    }
    page.gap().sentences(&stopped.call);
    page.paragraph(&stopped.nobody_told).paragraph(&stopped.tomorrow);
    press::actions(page, Some(&screen.next), &screen.actions);
}

pub(super) fn rate(page: &mut Page, screen: &RateScreen) {
    page.title(&screen.title).sentences(&screen.what).gap().sentences(&screen.cautions);
    press::actions(page, screen.different.as_ref(), &screen.actions);
}

pub(super) fn screening(page: &mut Page, screen: &ScreeningScreen) {
    page.title(&screen.title).sentences(screen.why.as_slice()).paragraph(&screen.how);
    for group in &screen.groups {
        page.gap().paragraph(&group.name);
        for question in &group.questions {
            page.inside(2, &question.ask);
        }
    }
    page.gap().paragraph(&screen.nobody_told);
    press::actions(page, None, &screen.actions);
}

pub(super) fn hold_questions(page: &mut Page, screen: &HoldQuestionsScreen) {
    page.title(&screen.title).paragraph(&screen.why).paragraph(&screen.caution);
    for question in &screen.questions {
        page.inside(2, &question.ask);
    }
    press::actions(page, None, &screen.actions);
}

pub(super) fn accept(page: &mut Page, screen: &AcceptScreen) {
    page.title(&screen.title).sentences(screen.refused.as_slice());
    for card in screen.signed.iter().chain(&screen.different).chain(&screen.cards) {
        page.gap().paragraph(&card.title).sentences(&card.lines);
    }
    for knowing in &screen.knowing {
        page.gap().paragraph(&knowing.says);
    }
    page.gap().sentences(screen.yours.as_slice());
    press::actions(page, None, &screen.actions);
}

pub(super) fn step_check(page: &mut Page, screen: &StepCheckScreen) {
    page.title(&screen.title);
    page.sentences(screen.empty.as_slice()).sentences(screen.step.as_slice());
    press::actions(page, Some(&screen.next), &screen.actions);
}

pub(super) fn reminders(page: &mut Page, screen: &RemindersScreen) {
    page.title(&screen.title);
    page.sentences(screen.off.as_slice()).sentences(screen.empty.as_slice());
    for line in &screen.reminders {
        page.inside(2, &line.text);
    }
    page.sentences(&screen.coming).paragraph(&screen.says).paragraph(&screen.quiet_line);
    press::actions(page, None, &screen.actions);
}
