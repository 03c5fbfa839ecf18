//! Writes the open summaries of an invented cabinet: `invented_cabinet OUT N SEED`. The same seed writes the
//! same files. Everything in them is invented.

use std::error::Error;
use std::fs;
use std::path::PathBuf;

use frond_tests::invented::Invented;

fn main() -> Result<(), Box<dyn Error>> {
    let mut args = std::env::args().skip(1);
    let usage = "invented_cabinet OUT N SEED";
    let out = PathBuf::from(args.next().ok_or(usage)?);
    let many: u64 = args.next().ok_or(usage)?.parse()?;
    let seed: u64 = args.next().ok_or(usage)?.parse()?;
    fs::create_dir_all(&out)?;
    for number in 0..many {
        fs::write(
            out.join(format!("record-{number:05}.json")),
            Invented::new(number, seed).open_file(),
        )?;
    }
    Ok(())
}
