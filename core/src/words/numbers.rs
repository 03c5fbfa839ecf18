//! How a number is written in a language: its digits, its decimal mark, its thousands.
//!
//! The rules and signs are CLDR's, by way of ICU4X. A thousands mark is written where the language has
//! one: "1,234" in English, "1234" and "12.345" in Spanish.

use fluent_bundle::FluentValue;
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_locale_core::Locale;
use intl_memoizer::Memoizable;
use intl_memoizer::concurrent::IntlLangMemoizer;
use unic_langid::LanguageIdentifier;

/// The number rules of one language, looked up once for a bundle.
struct Numbers(DecimalFormatter);

impl Memoizable for Numbers {
    type Args = ();
    type Error = ();

    fn construct(language: LanguageIdentifier, (): ()) -> Result<Self, ()> {
        let locale = Locale::try_from_str(&language.to_string()).map_err(|_| ())?;
        let rules = DecimalFormatter::try_new((&locale).into(), Default::default());
        rules.map(Numbers).map_err(|_| ())
    }
}

/// The text of a number; none for what is not a number, which then goes in as it is.
///
/// A language without rules of its own would show plain digits; a test holds that none does.
pub(super) fn written(value: &FluentValue<'_>, rules: &IntlLangMemoizer) -> Option<String> {
    let FluentValue::Number(number) = value else { return None };
    let plain: Decimal = number.as_string().parse().ok()?;
    rules.with_try_get::<Numbers, _, _>((), |one| one.0.format(&plain).to_string()).ok()
}
