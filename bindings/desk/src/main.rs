//! The program `frond`; everything it does is in the library beside it.

use std::process::ExitCode;

fn main() -> ExitCode {
    frond::run()
}
