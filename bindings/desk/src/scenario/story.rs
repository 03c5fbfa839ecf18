//! Tells the scenario as played, week by week. The sentences about the plan are the screens' own.

use frond_core::companion::Reading;
use frond_core::progression::{OutcomeKind, Verdict};
use frond_core::screens::{ReplayLine, Screen, SuggestionScreen};

use super::PASSPHRASE;
use super::play::{Played, Scene};
use crate::failure::{Failure, LANGUAGE};
use crate::print::{self, Page};

/// The story, ending with the suggestion.
pub(super) fn tell(played: &Played) -> Result<Page, Failure> {
    let replay = Reading::new(played.entries.clone(), LANGUAGE)?.replay(None)?;
    let first = played.scenes.first().map_or(played.end.day(), |scene| scene.at.day());
    let mut page = Page::new();
    page.title("Ten weeks of an invented person");
    page.paragraph(
        "The person, the clinician, the clinic and every entry are invented. The telephone numbers are from \
         a range kept for fiction; 999 is the emergency number of the United Kingdom alone. The numbers of \
         the programme are common practice, without a source, and no recommendation.",
    );
    page.gap().paragraph(&format!(
        "README.txt in the folder says what lies there and how to look at it. The passphrase of the sealed \
         diary in diary/ is invented too, and protects nothing here: {PASSPHRASE}"
    ));
    let (mut week, mut day, mut before) = (0, "", None);
    for scene in &played.scenes {
        let this = scene.at.day().signed_duration_since(first).num_days() / 7 + 1;
        for number in week + 1..=this {
            page.title(&format!("Week {number}"));
            if number < this {
                page.paragraph("(nothing was written)");
            }
        }
        week = this;
        let line = scene.place.and_then(|place| replay.lines.get(place));
        let date = line.map(|line| line.date.as_str());
        if date.is_some_and(|date| date != day) {
            day = date.unwrap_or_default();
            page.heading(day);
        }
        told(&mut page, scene, line);
        if let Some(suggestion) = &scene.suggestion {
            // What was said before is not said at length again.
            says(&mut page, suggestion, before == Some(suggestion.outcome));
            before = Some(suggestion.outcome);
        }
    }
    if let Screen::Suggestion(screen) = &played.last {
        print::suggestion(&mut page, screen, false);
    }
    Ok(page)
}

fn told(page: &mut Page, scene: &Scene, line: Option<&ReplayLine>) {
    if let Some(story) = scene.story {
        page.inside(2, story);
    }
    let time = scene.at.local().format("%H:%M").to_string();
    if let Some(line) = line {
        page.beside(&format!("  {time}"), &line.what, 9);
    }
    if let Some(Screen::StopAndCall(stop)) = &scene.stop {
        page.gap();
        print::stop_lines(page, stop, 9);
    }
}

/// What the plan said, and the part of its reasons that decided.
fn says(page: &mut Page, screen: &SuggestionScreen, again: bool) {
    let reasons = || screen.reasons.iter().flat_map(|group| &group.reasons);
    let mut why: Vec<String> = screen.bars.clone();
    match screen.outcome {
        Some(OutcomeKind::Hold) => {
            why.extend(reasons().filter_map(|reason| reason.missing.clone()))
        }
        Some(OutcomeKind::StepBack | OutcomeKind::StepUp) => why.extend(
            screen
                .reasons
                .iter()
                .filter(|group| group.reasons.iter().any(|reason| reason.verdict == Verdict::Met))
                .flat_map(|group| &group.reasons)
                .filter(|reason| reason.verdict == Verdict::Met)
                .map(|reason| reason.criterion.clone()),
        ),
        _ => {}
    }
    let mut said = std::collections::HashSet::new();
    why.retain(|why| said.insert(why.clone()));
    let sentences = if again { 1 } else { screen.says.len() };
    let says = screen.says.iter().take(sentences).cloned().collect::<Vec<_>>().join(" ");
    page.inside(11, &format!("» {says}"));
    if !why.is_empty() {
        page.inside(
            13,
            &format!(
                "({})",
                why.iter().map(|why| why.trim_end_matches('.')).collect::<Vec<_>>().join("; ")
            ),
        );
    }
}
