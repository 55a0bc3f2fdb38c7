//! Every reader of foreign bytes, fed files that were changed on the way: none may panic, and whatever
//! is refused is refused by name, with a remedy.
//!
//! Changes are those of a file format fuzzer (bits, bytes, cuts, copies, splices of two files, words and
//! numbers that readers trip over), drawn from a seed, so that a failure can be repeated. They start from
//! sound files and from inputs in `tests/fixtures/foreign_bytes`, which runs guided by coverage have found
//! (`make fuzz-guided`); every such input is also read as it is. `make fuzz` runs ten million changes.
//! Readers that only the screens have are tried the same way in `src/app/foreign.rs`.

#[path = "foreign_bytes/change.rs"]
mod change;
#[path = "foreign_bytes/reader.rs"]
mod reader;
#[path = "foreign_bytes/readers.rs"]
mod readers;
#[path = "foreign_bytes/trial.rs"]
mod trial;
#[path = "foreign_bytes/typed.rs"]
mod typed;

use trial::SHORT;
use trial::run_all;

/// Runs of all readers together in `make fuzz`, unless `TUBWRIGHT_RUNS` says otherwise.
const LONG: u64 = 10_000_000;

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
    run_all(readers::all(), |reader| SHORT / reader.slowness, 0);
}

#[test]
#[ignore = "minutes: make fuzz"]
fn ten_million_changed_files() {
    let runs = std::env::var("TUBWRIGHT_RUNS").ok();
    let runs = runs.and_then(|text| text.parse().ok()).unwrap_or(LONG);
    let shares: u64 = readers::all().iter().map(|r| 1_000 / r.slowness).sum();
    let runs_of = |reader: &reader::Reader| runs * (1_000 / reader.slowness) / shares + 1;
    let all = run_all(readers::all(), runs_of, 1 << 32);
    println!("{all:>12} in all");
}
