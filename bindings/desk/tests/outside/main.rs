//! What the pages take from outside, over the corpus that the fuzzer found, whose every crash once found is kept
//! there too: `tests/fuzz/corpus/NAME`.

mod given;

use frond::outside::{names, read};
use frond_tests::outside::corpus;
use given::given;

#[test]
fn every_reader_takes_every_file_of_its_corpus() {
    corpus::every_file(names(), |name, bytes| read(name, bytes, given()));
}

#[test]
fn every_reader_takes_changed_files_of_its_corpus() {
    corpus::changed_files(names(), |name, bytes| read(name, bytes, given()));
}
