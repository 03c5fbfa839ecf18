//! The preview: the person's own screens under the draft, of an invented person, on a day that is chosen.

use frond_core::screens::preview::{Ease, Preview};
use frond_core::words::Words;

use super::super::visit::{Shown, Visit};
use super::Open;
use super::sheet::{Here, tabs, under};
use crate::pages::form::{Fields, code, decode};
use crate::pages::parts::{Look, Page, Part, Press, Tab};
use crate::pages::try_out::looked_at;

/// The days that are offered; any other can be asked for in the address.
const DAYS: [u16; 3] = [0, 7, 30];

pub(super) fn preview(visit: &mut Visit<'_>, open: &Open, query: &Fields) -> Shown {
    let words = &visit.words;
    let day = query.first("day").and_then(|day| day.parse().ok()).unwrap_or(0);
    let ease = query.first("ease").and_then(decode::<Ease>).unwrap_or(Ease::Between);
    let page = Page::new(&visit.frame, words.text("compose-page-preview", &[]))
        .in_window(words.text("compose-window", &[]))
        .under(under(visit, open))
        .part(tabs(visit, open, Here::Other("preview")));
    let Some(programme) = open.kept.check(visit.moment.now).programme else {
        let press = Press::go(words.text("compose-page-check", &[]), open.to("check"));
        let says = vec![words.text("compose-not-yet", &[])];
        return Ok(page
            .part(Part::Notice { says, press: Some(press.looking(Look::Equal)) })
            .answer());
    };
    // As the person reads it: in the plan's own language, where there is one.
    let own = Words::for_language(programme.language.as_str());
    let hers = if own.fell_back().is_some() { words.clone() } else { own };
    let made = match Preview::new(&programme, ease, day, &hers, words) {
        Ok(made) => made,
        Err(_) => return Err(visit.sorry(words.text("compose-no-preview", &[]))),
    };
    let to = |ease: Ease, day: u16| open.to(&format!("preview?ease={}&day={day}", code(&ease)));
    let tab = |label: String, to: String, here: bool| Tab { label, to, here, then: None };
    let eases = Ease::ALL.map(|one| tab(one.say(words), to(one, day), one == ease));
    let days = DAYS.map(|one| {
        let says = words.text("compose-preview-day", &[("day", i64::from(one).into())]);
        tab(says, to(ease, one), one == day)
    });
    let mut page = page
        .part(Part::Tabs { label: words.text("compose-preview-days", &[]), tabs: days.into() })
        .part(Part::Tabs { label: words.text("compose-preview-eases", &[]), tabs: eases.into() })
        .part(Part::Notice { says: made.how, press: None });
    if !made.story.is_empty() {
        page = page.part(Part::Points { points: made.story });
    }
    for shown in made.shown {
        let parts = looked_at::parts(&shown.screen, &hers);
        let lang = hers.language().tag.to_owned();
        let label = words.text("compose-preview-phone", &[("when", shown.when.clone().into())]);
        page =
            page.part(Part::Heading { text: shown.when }).part(Part::Phone { lang, label, parts });
    }
    Ok(page.answer())
}
