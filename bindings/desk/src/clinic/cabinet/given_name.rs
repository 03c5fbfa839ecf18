//! What a file that came from outside is called on a page. Decides that nothing in a name can lead anywhere,
//! reorder a line or fill the page: it is shown and never used.

/// The most characters that are shown.
const MOST: usize = 80;

/// The name as it is shown; `None` where nothing is left of it.
pub(crate) fn given_name(given: &str) -> Option<String> {
    let last = given.rsplit(['/', '\\']).next().unwrap_or_default();
    let shown: String = last
        .chars()
        .map(|own| if own.is_whitespace() { ' ' } else { own })
        .filter(|own| !own.is_control() && !is_unseen(*own))
        .collect();
    let words: Vec<&str> = shown.split(' ').filter(|word| !word.is_empty()).collect();
    let mut name = words.join(" ");
    if name.chars().count() > MOST {
        name = name.chars().take(MOST - 1).chain(['…']).collect();
    }
    let tells = name.chars().any(|own| own.is_alphanumeric());
    tells.then_some(name)
}

/// Characters that are not seen and change how others are: direction marks, joiners, tags, private ones.
fn is_unseen(own: char) -> bool {
    matches!(
        u32::from(own),
        0x00ad | 0x034f | 0x061c | 0x115f..=0x1160 | 0x17b4..=0x17b5 | 0x180b..=0x180f
            | 0x200b..=0x200f | 0x2028..=0x202e | 0x2060..=0x206f | 0x3164 | 0xe000..=0xf8ff
            | 0xfe00..=0xfe0f | 0xfeff | 0xffa0 | 0xfff0..=0xfffb | 0xe0000..=0x10ffff
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_leads_nowhere_and_is_one_short_line() {
        for (given, shown) in [
            ("record-2026-03-01.age", Some("record-2026-03-01.age")),
            ("../../etc/passwd", Some("passwd")),
            ("..\\..\\windows\\system.ini", Some("system.ini")),
            ("/", None),
            ("..", None),
            ("", None),
            ("a\u{202e}gpj.exe", Some("agpj.exe")),
            ("a\0b\nc\td\u{1b}[31m", Some("ab c d[31m")),
            ("\u{200b}\u{feff}", None),
            ("<script>alert(1)<.age", Some("<script>alert(1)<.age")),
            ("<script>alert(1)</script>.age", Some("script>.age")),
            ("registro de María.age", Some("registro de María.age")),
            ("سجل.age", Some("سجل.age")),
        ] {
            assert_eq!(given_name(given).as_deref(), shown, "{given:?}");
        }
        let long = given_name(&"x".repeat(5000)).unwrap();
        assert_eq!(long.chars().count(), MOST);
    }
}
