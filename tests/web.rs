//! What must hold inside a real browser: the same bits as natively.
//!
//! Compiled for the web only; `make test` runs it in a headless Chromium.
#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::wasm_bindgen_test;
use wasm_bindgen_test::wasm_bindgen_test_configure;

mod bits;

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
async fn jobs_and_washes_have_the_same_bits_in_a_browser() {
    let mut computed = Vec::new();
    for task in bits::tasks() {
        computed.push(task());
        breathe().await;
    }
    let found = bits::differences(&computed);
    assert!(
        found.is_empty(),
        "{} differ from the native bits:\n{}",
        found.len(),
        found.join("\n")
    );
}

/// Lets the browser answer whoever asks: a page that is silent for half a minute counts as dead.
async fn breathe() {
    let turn = js_sys::Promise::new(&mut |resolve, _| {
        gloo::timers::callback::Timeout::new(0, move || {
            // A promise's own function takes any argument.
            let _ = resolve.call0(&wasm_bindgen::JsValue::NULL);
        })
        .forget();
    });
    // It is always kept.
    let _ = wasm_bindgen_futures::JsFuture::from(turn).await;
}
