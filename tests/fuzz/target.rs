//! One program for each reader of bytes from outside, named like it: see `frond_tests::outside`.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    frond_tests::outside::read(env!("CARGO_BIN_NAME"), bytes);
});
