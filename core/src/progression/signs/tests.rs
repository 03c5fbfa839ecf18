//! What of the signs a trimmed fold keeps. All are invented.

use chrono::FixedOffset;

use super::*;

#[test]
fn only_open_signs_are_kept_and_the_latest_day_speaks_for_the_rest() {
    let at = Stamp::from_millis(0, FixedOffset::east_opt(0).unwrap(), None).unwrap();
    let key = |number: u8| ([number; 16], Sign::Fever);
    let mut signs = Signs::default();
    for number in 1..=3 {
        signs.note(key(number), Tier::Stop, Place::from(number), &at, i32::from(number));
    }
    signs.note(key(4), Tier::Note, 4, &at, 4);
    signs.close(key(1), 5, 7);
    signs.close(key(3), 6, 5);
    signs.trim();
    assert_eq!(signs.known.keys().copied().collect::<Vec<_>>(), [key(2)]);
    assert_eq!(signs.open().len(), 1);
    assert_eq!(signs.latest(), Some((7, [1; 16])));
    signs.close(key(2), 7, 8);
    assert_eq!((signs.any_open(), signs.latest()), (false, Some((8, [2; 16]))));
}
