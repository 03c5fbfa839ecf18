//! Writes the Kotlin and Swift side of the facade for phones from the built library.
//!
//! Decides nothing: it is UniFFI's own program, of exactly the version the library was built with. It is
//! a crate of its own so that the library does not carry the generator's dependencies.

fn main() {
    uniffi::uniffi_bindgen_main();
}
