//! What stands around every page of the desk: the ways that are never far, and what the desk is and is not.

use frond_core::words::{Direction, Words};

use crate::pages::parts::{Frame, Press};

/// The frame in this language; a locked desk leads nowhere.
pub(super) fn frame(words: &Words, open: bool) -> Frame {
    let say = |id: &str| words.text(id, &[]);
    let mut more =
        vec![words.text("page-stays-here", &[]), words.text("desk-decides-nothing", &[])];
    if !words.language().safety_text_reviewed() {
        more.push(words.text("page-not-reviewed", &[]));
    }
    let nav = if open {
        vec![
            Press::go(say(frond_core::message_id!("compose-list-title")), "/programmes"),
            Press::go(say(frond_core::message_id!("cabinet-people")), "/people"),
            Press::go(say(frond_core::message_id!("desk-keys")), "/keys"),
        ]
    } else {
        vec![]
    };
    Frame {
        lang: words.language().tag.to_owned(),
        dir: match words.language().direction {
            Direction::LeftToRight => "ltr",
            Direction::RightToLeft => "rtl",
        },
        skip: words.text("page-skip", &[]),
        name: words.text("page-name", &[]),
        home: "/",
        nav_label: words.text("page-nav", &[]),
        nav,
        banner_label: words.text("desk-banner", &[]),
        banner: Some(words.text("desk-banner-says", &[])),
        banner_more: more,
        problems_title: words.text("page-problems", &[]),
    }
}
