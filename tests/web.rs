//! What must hold inside a real browser: the same bits as natively.
//!
//! Compiled for the web only; `make test` runs it in a headless Chromium.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::wasm_bindgen_test;
use wasm_bindgen_test::wasm_bindgen_test_configure;

mod bits;

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn jobs_and_washes_have_the_same_bits_in_a_browser() {
    let computed: Vec<String> = bits::tasks().iter().map(|task| task()).collect();
    let found = bits::differences(&computed);
    assert!(
        found.is_empty(),
        "{} differ from the native bits:\n{}",
        found.len(),
        found.join("\n")
    );
}
