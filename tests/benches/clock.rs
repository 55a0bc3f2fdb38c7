//! Seconds from a clock that only grows: the system's natively, the page's in a browser.

/// Seconds since some moment in the past.
#[cfg(not(target_arch = "wasm32"))]
pub fn now_s() -> f64 {
    use std::sync::OnceLock;
    use std::time::Instant;
    static START: OnceLock<Instant> = OnceLock::new();
    START.get_or_init(Instant::now).elapsed().as_secs_f64()
}

/// Seconds since some moment in the past.
#[cfg(target_arch = "wasm32")]
pub fn now_s() -> f64 {
    use wasm_bindgen::JsCast;
    let performance = js_sys::Reflect::get(&js_sys::global(), &"performance".into())
        .expect("every page has a clock");
    let now = js_sys::Reflect::get(&performance, &"now".into()).expect("the clock has `now`");
    let now: js_sys::Function = now.dyn_into().expect("`now` is a function");
    now.call0(&performance)
        .expect("`now` takes nothing")
        .as_f64()
        .expect("`now` gives a number")
        / 1000.0
}
