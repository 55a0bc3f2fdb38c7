//! The program's two entries: natively the command line, in a browser the screens.

#[cfg(target_arch = "wasm32")]
fn main() {
    tubwright::app::start();
}

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    tubwright::cli::run()
}
