//! How much fits into one QR code. The core draws none; it knows only the published capacity of the largest
//! version that a phone's camera is asked to read.

/// The largest version of a QR code that is drawn: 117 by 117 squares.
pub const QR_VERSION_MOST: u8 = 25;

/// The most characters a link may have: what version 25 holds at the lowest level of correction.
pub const LINK_MOST: usize = Correction::Low.characters();

/// How much of a code may be hidden or dirty and it can still be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Correction {
    /// Level M, about 15 %.
    Medium,
    /// Level L, about 7 %.
    Low,
}

impl Correction {
    /// Characters of the alphanumeric mode in version 25.
    ///
    /// Source: ISO/IEC 18004:2015, table 7: 25-M has 1,000 and 25-L 1,276 data codewords, which are 1,451
    /// and 1,853 characters. From memory; worked out from the codewords in a test, and the desk's tests
    /// compare them with the tables of an independent encoder.
    #[must_use]
    pub const fn characters(self) -> usize {
        match self {
            Self::Medium => 1451,
            Self::Low => 1853,
        }
    }

    /// The best level at which a link of so many characters stays within version 25.
    #[must_use]
    pub fn for_link(characters: usize) -> Option<Self> {
        [Self::Medium, Self::Low].into_iter().find(|level| characters <= level.characters())
    }
}
