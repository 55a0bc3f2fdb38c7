//! One reader of foreign bytes, given inputs that are guided by what they reach in the program. The reader
//! is named by `TUBWRIGHT_READER`, as the folder of its inputs is.
//!
//! Half of the changes are the fuzzer's own, half those of the tests, which know what a file looks like.
#![no_main]

#[path = "../../tests/foreign_bytes/change.rs"]
mod change;
// The tests use all of it.
#[allow(dead_code)]
#[path = "../../tests/foreign_bytes/reader.rs"]
mod reader;
#[path = "../../tests/foreign_bytes/readers.rs"]
mod readers;
#[path = "../../tests/foreign_bytes/typed.rs"]
mod typed;

use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use libfuzzer_sys::fuzz_mutator;
use libfuzzer_sys::fuzz_target;
use libfuzzer_sys::fuzzer_mutate;
use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use tubwright::app::foreign;

use reader::Reader;

static READER: LazyLock<Option<Reader>> = LazyLock::new(|| {
    let asked = std::env::var("TUBWRIGHT_READER").ok()?;
    let found = all().into_iter().find(|reader| reader.folder() == asked);
    Some(found.unwrap_or_else(|| panic!("there is no reader '{asked}'")))
});

fn all() -> Vec<Reader> {
    let screens = foreign::all().into_iter().map(|screens| Reader {
        name: screens.name,
        slowness: screens.slowness,
        seeds: screens.seeds,
        read: screens.read,
        takes: screens.takes,
    });
    readers::all().into_iter().chain(screens).collect()
}

/// Writes the sound files of every reader, and what is kept unless `TUBWRIGHT_SOUND` is set, into the folder
/// that `TUBWRIGHT_SEEDS` names.
fn write_seeds() {
    let Ok(folder) = std::env::var("TUBWRIGHT_SEEDS") else {
        return;
    };
    let is_sound_only = std::env::var("TUBWRIGHT_SOUND").is_ok();
    for reader in all() {
        let folder = Path::new(&folder).join(reader.folder());
        fs::create_dir_all(&folder).expect("a folder can be made");
        let kept = if is_sound_only {
            Vec::new()
        } else {
            reader.kept()
        };
        for (at, bytes) in reader.seeds.iter().chain(&kept).enumerate() {
            fs::write(folder.join(format!("seed-{at}")), bytes).expect("a file can be written");
        }
    }
}

fuzz_target!(
    init: write_seeds(),
    |bytes: &[u8]| {
        let Some(reader) = &*READER else { return };
        if let Err(complaint) = (reader.read)(bytes) {
            panic!("{}: {complaint}", reader.name);
        }
    }
);

fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    let mut rng = ChaCha8Rng::seed_from_u64(u64::from(seed));
    let seeds = READER.as_ref().map_or(&[][..], |reader| &reader.seeds);
    if seeds.is_empty() || rng.next_u32().is_multiple_of(2) {
        return fuzzer_mutate(data, size, max_size);
    }
    let other = &seeds[rng.next_u32() as usize % seeds.len()];
    let changed = change::changed(&data[..size], other, &mut rng);
    let n = changed.len().min(max_size);
    data[..n].copy_from_slice(&changed[..n]);
    n
});
