//! One program for each reader of what the pages take, named like it: see `frond::outside`.
#![no_main]

#[path = "../../bindings/desk/tests/outside/given.rs"]
mod given;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    frond::outside::read(env!("CARGO_BIN_NAME"), bytes, given::given());
});
