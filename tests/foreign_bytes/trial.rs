//! How a reader is tried: with changed files drawn from a seed, and with what was kept.

use std::panic::AssertUnwindSafe;
use std::panic::catch_unwind;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use rayon::prelude::*;

use super::change;
use super::reader::Reader;

/// Runs of each reader in the suite; slow ones get fewer.
pub const SHORT: u64 = 10_000;

/// Every kept input as it is, then changed files.
pub fn run_all(readers: Vec<Reader>, runs_of: impl Fn(&Reader) -> u64, from: u64) -> u64 {
    let mut all = 0;
    for reader in readers {
        let runs = runs_of(&reader);
        let kept = reader.kept();
        let wrong = kept
            .par_iter()
            .find_map_first(|bytes| read(&reader, bytes, "kept").err());
        assert_eq!(wrong, None);
        let first: Vec<&Vec<u8>> = reader.seeds.iter().chain(&kept).collect();
        let wrong = (from..from + runs)
            .into_par_iter()
            .find_map_first(|seed| run(&reader, &first, seed).err());
        assert_eq!(wrong, None);
        println!("{:>12} {}", runs, reader.name);
        all += runs;
    }
    all
}

/// One changed file given to its reader. Two of three are of sound files.
fn run(reader: &Reader, first: &[&Vec<u8>], seed: u64) -> Result<(), String> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let pick = |rng: &mut ChaCha8Rng| {
        let n = match rng.next_u32() % 3 {
            0 => first.len(),
            _ => reader.seeds.len(),
        };
        first[rng.next_u32() as usize % n]
    };
    let (one, other) = (pick(&mut rng), pick(&mut rng));
    let bytes = change::changed(one, other, &mut rng);
    read(reader, &bytes, &format!("seed {seed}"))
}

fn read(reader: &Reader, bytes: &[u8], which: &str) -> Result<(), String> {
    let said = catch_unwind(AssertUnwindSafe(|| (reader.read)(bytes)));
    let what = || {
        let name = reader.name;
        format!("{name}, {which}: {:?}", String::from_utf8_lossy(bytes))
    };
    match said {
        Err(_) => Err(format!("panicked: {}", what())),
        Ok(Err(complaint)) => Err(format!("{complaint}: {}", what())),
        Ok(Ok(())) => Ok(()),
    }
}
