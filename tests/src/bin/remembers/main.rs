//! Uses one secret as a surface does, drops everything that held it, and then reads its own memory through
//! `/proc/self/mem` to see whether the secret is still there. Used by the test `memory_secrets`; Linux only.
//!
//! `remembers CASE`: prints `looked for N secrets in N bytes`, then a line `NAME in PLACE` for each secret of which
//! twelve bytes or more stand somewhere, and nothing more where there are none. [`cases`] are what is done with a secret,
//! [`memory`] is the looking.

mod cases;
mod memory;

use std::error::Error;

fn main() -> Result<(), Box<dyn Error>> {
    let case = std::env::args().nth(1).ok_or("which case?")?;
    let secrets = cases::run(&case)?;
    let (bytes, found) = memory::search(&secrets)?;
    println!("looked for {} secrets in {bytes} bytes", secrets.len());
    for line in found {
        println!("{line}");
    }
    Ok(())
}
