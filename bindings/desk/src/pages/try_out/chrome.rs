//! What stands around every page of a try-out: whose pages they are, two ways that are never far, and the
//! note that it is a try-out.

use frond_core::words::{Direction, Words};

use super::diary::Diary;
use crate::pages::parts::{Frame, Press};

/// The frame in this language.
pub(super) fn frame(words: &Words, diary: &Diary) -> Frame {
    let say = |id: &str| words.text(id, &[]);
    let banner = if diary.invented {
        words.text("page-invented", &[])
    } else {
        words.text("page-try-out", &[])
    };
    let mut more = vec![words.text("page-stays-here", &[])];
    if diary.is_temporary() {
        more.push(words.text("page-temporary", &[]));
    }
    more.push(words.text("page-phone-does", &[]));
    if !diary.as_on_a_phone() {
        more.push(words.text("page-phone-code", &[]));
    }
    if diary.is_pretended() {
        more.push(words.text("page-pretended", &[]));
    }
    if !words.language().safety_text_reviewed() {
        more.push(words.text("page-not-reviewed", &[]));
    }
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
        nav: vec![Press::go(say(frond_core::message_id!("action-signs")), "/signs")],
        banner_label: words.text("page-banner", &[]),
        banner: Some(banner),
        banner_more: more,
        problems_title: words.text("page-problems", &[]),
    }
}
