//! Results whose bits are fixed: here natively, in `web.rs` in a browser, from one list.

use std::path::Path;

use rayon::prelude::*;

mod bits;

#[test]
fn jobs_and_washes_have_the_bits_that_are_written_down() {
    let computed: Vec<String> = bits::tasks().par_iter().map(|task| task()).collect();
    if std::env::var_os("TUBWRIGHT_WRITE").is_some() {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/fixtures/same_bits.txt");
        std::fs::write(path, computed.join("\n") + "\n").expect("the fixture can be written");
        return;
    }
    let found = bits::differences(&computed);
    assert!(
        found.is_empty(),
        "{} differ; if the physics was meant to change, write them anew (see tests/bits):\n{}",
        found.len(),
        found.join("\n")
    );
}

#[test]
fn every_job_that_ships_is_on_the_list() {
    let listed: Vec<&str> = bits::LOGS.iter().map(|(id, _)| *id).collect();
    let mut shipped: Vec<String> = tubwright::scenario::jobs()
        .expect("shipped jobs are sound")
        .iter()
        .map(|job| job.id.clone())
        .collect();
    shipped.sort();
    assert_eq!(listed, shipped, "LOGS in tests/bits/mod.rs");
}
