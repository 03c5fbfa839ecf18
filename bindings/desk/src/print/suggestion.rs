//! The suggestion with its reasons, as text.

use frond_core::screens::{Reason, SuggestionScreen};

use super::Page;
use super::press::actions;

/// The suggestion; `choices` where there is a diary in which a choice can be written down.
pub(crate) fn suggestion(page: &mut Page, screen: &SuggestionScreen, choices: bool) {
    page.title(&screen.title);
    for says in &screen.says {
        page.paragraph(says);
    }
    for bar in &screen.bars {
        page.paragraph(bar);
    }
    if let Some(whose) = &screen.whose {
        page.gap().paragraph(whose);
    }
    for group in &screen.reasons {
        page.heading(&group.heading);
        for reason in &group.reasons {
            self::reason(page, reason);
        }
    }
    page.gap();
    for caution in &screen.cautions {
        page.point(caution);
    }
    if choices {
        actions(page, None, &screen.actions);
    }
}

fn reason(page: &mut Page, reason: &Reason) {
    let missing =
        reason.missing.as_ref().map(|missing| format!(" ({missing})")).unwrap_or_default();
    page.point(&format!("{}: {}{missing}", reason.criterion, reason.verdict_text));
    for looked_at in &reason.looked_at {
        page.inner_point(looked_at);
    }
}
