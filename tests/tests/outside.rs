//! Every reader of bytes from outside over the corpus that the fuzzer found: each file of
//! `fuzz/corpus/NAME`, whose every crash once found is kept there too. Those of the pages are run in the desk's crate.

use frond_tests::outside::{READERS, corpus, read};

fn names() -> impl Iterator<Item = &'static str> {
    READERS.iter().map(|(name, _)| *name)
}

#[test]
fn every_reader_takes_every_file_of_its_corpus() {
    corpus::every_file(names(), read);
}

/// A few changes of each file more, without a fuzzer: the same in every run.
#[test]
fn every_reader_takes_changed_files_of_its_corpus() {
    corpus::changed_files(names(), read);
}
