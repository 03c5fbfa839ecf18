//! What is removed, hazard by hazard: the list that a new control gets a line in.

mod android;
mod ios;
mod people;
mod practice;
mod rule;
mod signs;
mod summaries;
mod whole;

/// One control, taken away.
#[derive(Clone, Copy, Debug)]
pub struct Removal {
    /// Number of the hazard in the log.
    pub hazard: u32,
    /// What is taken away, in words.
    pub control: &'static str,
    /// Where it stands.
    pub file: &'static str,
    /// The text that is taken away, an expression or whole statements; it stands there once.
    pub from: &'static str,
    /// What stands there instead, of the same type. Where `REMOVED` stands in it, it is the whole text with and without
    /// the control, and `REMOVED` says which.
    pub to: &'static str,
    /// The tests that are said to prove the control: one of them has to fail.
    pub tests: &'static [&'static str],
}

impl Removal {
    /// The number of its switch: made from its name, so that another line in the list changes nothing that was built.
    pub fn number(&self) -> u32 {
        // FNV-1a, 32 bits, by Fowler, Noll and Vo; the constants are from memory, and any spread would do.
        let name = format!("H{} {}", self.hazard, self.control);
        let hash = name
            .bytes()
            .fold(0x811c_9dc5_u32, |hash, byte| (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193));
        // 0 is no removal, and the highest numbers mean something to the switch.
        hash >> 2 | 1
    }
}

/// Every removal, in the order of the log.
pub fn all() -> Vec<Removal> {
    let mut all: Vec<Removal> = [
        android::ALL,
        ios::ALL,
        rule::ALL,
        practice::ALL,
        people::ALL,
        signs::ALL,
        whole::ALL,
        summaries::ALL,
    ]
    .concat();
    all.sort_by_key(|one| one.hazard);
    all
}
