//! Before the program is compiled: the handbook's Markdown files become plain lines.

#[path = "build/chapter.rs"]
mod chapter;

use std::fs;
use std::io;
use std::path::Path;

fn main() -> io::Result<()> {
    println!("cargo::rerun-if-changed=handbook");
    println!("cargo::rerun-if-changed=build");
    let out = std::env::var("OUT_DIR").map_err(io::Error::other)?;
    for entry in fs::read_dir("handbook")? {
        let path = entry?.path();
        // The page of all checks stands beside the chapters and ships as it is.
        if path.extension().is_none_or(|extension| extension != "md") {
            continue;
        }
        let Some(stem) = path.file_stem().and_then(|stem| stem.to_str()) else {
            continue;
        };
        let text = fs::read_to_string(&path)?;
        fs::write(
            Path::new(&out).join(format!("{stem}.txt")),
            chapter::lines(&text),
        )?;
    }
    Ok(())
}
