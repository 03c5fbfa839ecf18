//! What is invented for the readers of what the pages take. The fuzzer takes it from here too.

use std::sync::OnceLock;

use frond::outside::Given;
use frond_core::ports::sim::{SeededRandom, SimDisk};
use frond_tests::home;
use frond_tests::invented::Invented;

/// Three invented diaries and an invented plan; the same in every run.
pub fn given() -> &'static Given {
    static GIVEN: OnceLock<Given> = OnceLock::new();
    GIVEN.get_or_init(|| Given {
        random: |seed| std::sync::Arc::new(SeededRandom::new(seed)),
        ports: || home::ports(&SimDisk::new(), 9),
        keeper: || Box::new(home::keeper()),
        summaries: (0..3).map(|number| Invented::new(number, 5).open_file()).collect(),
        programme: home::PLAN.as_bytes().to_vec(),
    })
}
