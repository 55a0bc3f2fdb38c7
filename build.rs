//! Before the program is compiled: the handbook's Markdown files become plain lines, and the files that
//! ship lose their white space.

#[path = "build/chapter.rs"]
mod chapter;
#[path = "build/dense.rs"]
mod dense;

use std::fs;
use std::io;
use std::path::Path;

fn main() -> io::Result<()> {
    for watched in ["handbook", "scenarios", "build"] {
        println!("cargo::rerun-if-changed={watched}");
    }
    let out = std::env::var("OUT_DIR").map_err(io::Error::other)?;
    let out = Path::new(&out);
    // The page of all checks stands beside the chapters and ships as it is.
    convert(Path::new("handbook"), "md", out, "txt", chapter::lines)?;
    for folder in ["", "jobs", "machines", "sets"] {
        let folder = Path::new("scenarios").join(folder);
        convert(&folder, "json", &out.join(&folder), "json", dense::dense)?;
    }
    Ok(())
}

/// Writes what becomes of each file of a folder that ends in `from`, under the same name, ending in `to`.
fn convert(
    folder: &Path,
    from: &str,
    out: &Path,
    to: &str,
    become_of: fn(&str) -> String,
) -> io::Result<()> {
    fs::create_dir_all(out)?;
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let Some(name) = path.file_name() else {
            continue;
        };
        if path.extension().is_some_and(|extension| extension == from) {
            let text = become_of(&fs::read_to_string(&path)?);
            fs::write(out.join(name).with_extension(to), text)?;
        }
    }
    Ok(())
}
