//! The page's thread: a program of its own, fetched when first asked, for answers that take seconds.

/// Natively the command line gives the same answers.
fn main() {
    #[cfg(target_arch = "wasm32")]
    tubwright::app::serve();
}
