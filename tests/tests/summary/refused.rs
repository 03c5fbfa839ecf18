//! What a reader refuses, and in which words.

use super::*;

#[test]
fn every_byte_of_a_summary_is_under_its_signature() {
    let bytes = open(&made(&Selection::default()));
    let begins = bytes.windows(11).position(|at| at == b"\"summary\":{").unwrap();
    // Every place in turn would take minutes; a prime stride visits all kinds of places.
    for at in (begins + 10..bytes.len() - 2).step_by(37) {
        let mut altered = bytes.clone();
        altered[at] ^= 1;
        let error = open_summary(&altered, None).unwrap_err();
        assert!(
            matches!(
                error,
                SummaryError::Signature | SummaryError::Garbled { .. } | SummaryError::NotASummary
            ),
            "{at}: {error}"
        );
    }
    // White space inside is a change too.
    let text = String::from_utf8(bytes.clone()).unwrap();
    let spaced = text.replacen("\"summary\":{", "\"summary\":{ ", 1);
    assert_eq!(open_summary(spaced.as_bytes(), None).unwrap_err(), SummaryError::Signature);
    let other = signs(b"invented diary 1", 8);
    let theirs: serde_json::Value =
        serde_json::from_slice(&made(&Selection::default()).open_form(&other).unwrap()).unwrap();
    let key = theirs["key"].as_str().unwrap();
    let ours: serde_json::Value = serde_json::from_slice(&bytes).unwrap();
    let swapped = text.replacen(ours["key"].as_str().unwrap(), key, 1);
    assert_eq!(open_summary(swapped.as_bytes(), None).unwrap_err(), SummaryError::Signature);
}

#[test]
fn another_diary_or_another_key_is_noticed_against_what_was_pinned() {
    let bytes = open(&made(&Selection::default()));
    let pin = identity().pin();
    assert_eq!(pin.to_string().parse(), Ok(pin));
    assert!(received(&bytes).pinned(&pin).is_ok());
    let moved = signs(b"invented diary 1", 8);
    let other = signs(b"invented diary 2", 7);
    let summary = made(&Selection::default());
    let of = |identity: &DiaryIdentity| received(&summary.open_form(identity).unwrap());
    assert_eq!(of(&moved).pinned(&pin).unwrap_err(), SummaryError::OtherKey);
    assert_eq!(of(&other).pinned(&pin).unwrap_err(), SummaryError::OtherDiary);
}

#[test]
fn every_refusal_is_one_sentence_that_says_what_to_do() {
    let bytes = open(&made(&Selection::default()));
    let text = String::from_utf8(bytes).unwrap();
    let said = |bytes: &[u8]| open_summary(bytes, None).unwrap_err().to_string();
    let said = [
        said(b""),
        said(b"a letter"),
        said(b"{\"a\":1}"),
        said(b"[1,2]"),
        said(&[0xff; 10]),
        said(&text.as_bytes()[..text.len() / 2]),
        said(text.replacen("frond summary 1", "frond summary 2", 1).as_bytes()),
        said(text.replacen("{", "{\"more\":1,", 1).as_bytes()),
        said(text.replacen("\"peak\":{\"rated\":2}", "\"peak\":{\"rated\":1}", 1).as_bytes()),
        said(format!("{text}{text}").as_bytes()),
        said(&vec![b' '; 33 * 1024 * 1024]),
        SummaryError::Sealed.to_string(),
        SummaryError::Seal(OpenError::WrongPassphrase).to_string(),
        SummaryError::Unreadable.to_string(),
        SummaryError::Form.to_string(),
        SummaryError::OtherDiary.to_string(),
        SummaryError::OtherKey.to_string(),
    ];
    for said in &said {
        assert!(!said.contains('\n') && said.ends_with('.'), "{said}");
    }
    insta::assert_snapshot!("summary_refusals", said.join("\n"));
}

/// A gigabyte of opening brackets, made as it is read; and as much of it as is let in.
#[test]
fn a_gigabyte_of_nesting_is_refused_without_being_read_to_its_end() {
    use std::io::Read;
    let mut gigabyte = std::io::repeat(b'[').take(1 << 30);
    assert_eq!(read_bounded(&mut gigabyte).unwrap_err(), SummaryError::TooLong);
    let read = (1 << 30) - gigabyte.limit();
    assert!(read <= frond_core::summary::MOST_BYTES as u64 + 64 * 1024, "{read} bytes were read");
    let most = vec![b'['; frond_core::summary::MOST_BYTES];
    assert!(matches!(open_summary(&most, None).unwrap_err(), SummaryError::NotASummary));
    let mut inside =
        b"{\"signed\":\"frond summary 1\",\"key\":\"\",\"signature\":\"\",\"summary\":".to_vec();
    inside.resize(frond_core::summary::MOST_BYTES, b'[');
    assert!(matches!(open_summary(&inside, None).unwrap_err(), SummaryError::Garbled { .. }));
}

#[test]
fn a_summary_whose_signature_holds_is_still_read_strictly() {
    let mut summary = made(&Selection::default());
    summary.version = 2;
    assert_eq!(open_summary(&open(&summary), None).unwrap_err(), SummaryError::Newer);
    let mut summary = made(&Selection::default());
    summary.entries.push(frond_core::diary::entry::Entry {
        id: EntryId([9; 16]),
        what: Content::ProgrammeAccepted {
            programme: token("invented"),
            revision: revision(3),
            carried: "{}".into(),
            signed: None,
            although: vec![],
        },
        ..summary.entries[0].clone()
    });
    assert_eq!(open_summary(&open(&summary), None).unwrap_err(), SummaryError::Form);
}
