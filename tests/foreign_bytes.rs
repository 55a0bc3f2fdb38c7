//! Every reader of foreign bytes, fed files that were changed on the way: none may panic, and whatever
//! is refused is refused by name, with a remedy.
//!
//! Changes are those of a file format fuzzer (bits, bytes, cuts, copies, splices of two files, words and
//! numbers that readers trip over), drawn from a seed, so that a failure can be repeated; they are not
//! guided by coverage, which needs an unstable compiler. `make fuzz` runs ten million.

#[path = "foreign_bytes/change.rs"]
mod change;
#[path = "foreign_bytes/readers.rs"]
mod readers;

use std::panic::AssertUnwindSafe;
use std::panic::catch_unwind;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use rayon::prelude::*;

use readers::Reader;

/// Runs of each reader in the suite; slow ones get fewer.
const SHORT: u64 = 10_000;
/// Runs of all readers together in `make fuzz`, unless `TUBWRIGHT_RUNS` says otherwise.
const LONG: u64 = 10_000_000;

/// One changed file given to its reader.
fn run(reader: &Reader, seed: u64) -> Result<(), String> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let pick = |rng: &mut ChaCha8Rng| &reader.seeds[rng.next_u32() as usize % reader.seeds.len()];
    let (sound, other) = (pick(&mut rng), pick(&mut rng));
    let bytes = change::changed(sound, other, &mut rng);
    let said = catch_unwind(AssertUnwindSafe(|| (reader.read)(&bytes)));
    let what = || {
        format!(
            "{}, seed {seed}: {:?}",
            reader.name,
            String::from_utf8_lossy(&bytes)
        )
    };
    match said {
        Err(_) => Err(format!("panicked: {}", what())),
        Ok(Err(complaint)) => Err(format!("{complaint}: {}", what())),
        Ok(Ok(())) => Ok(()),
    }
}

fn run_all(runs_of: impl Fn(&Reader) -> u64, from: u64) -> u64 {
    let mut all = 0;
    for reader in readers::all() {
        let runs = runs_of(&reader);
        let wrong = (from..from + runs)
            .into_par_iter()
            .find_map_first(|seed| run(&reader, seed).err());
        assert_eq!(wrong, None);
        println!("{:>12} {}", runs, reader.name);
        all += runs;
    }
    all
}

#[test]
fn sound_files_are_taken() {
    for reader in readers::all() {
        for seed in &reader.seeds {
            assert!((reader.takes)(seed), "{} refuses a sound file", reader.name);
        }
    }
}

#[test]
fn changed_files_never_panic_and_are_refused_by_name() {
    run_all(|reader| SHORT / reader.slowness, 0);
}

#[test]
#[ignore = "minutes: make fuzz"]
fn ten_million_changed_files() {
    let runs = std::env::var("TUBWRIGHT_RUNS").ok();
    let runs = runs.and_then(|text| text.parse().ok()).unwrap_or(LONG);
    let shares: u64 = readers::all().iter().map(|r| 1_000 / r.slowness).sum();
    let all = run_all(
        |reader| runs * (1_000 / reader.slowness) / shares + 1,
        1 << 32,
    );
    println!("{all:>12} in all");
}
