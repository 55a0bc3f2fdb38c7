//! Foreign bytes in: files by name, `-` for standard input, never more than a limit, text only.

use std::fs::File;
use std::io;
use std::io::Read;

use crate::cli::failure::Failure;

/// Most that is read of one file, bytes: a thousand times the longest log a person makes.
const MOST_BYTES: u64 = 64_000_000;

/// The text of a file.
///
/// # Errors
/// When it cannot be read, is larger than the limit, or is not text in UTF-8.
pub fn text(file: &str) -> Result<String, Failure> {
    let failed = |error: io::Error| Failure::File {
        file: file.to_owned(),
        error,
        remedy: "name a file of text in UTF-8, or - for standard input",
    };
    let mut bytes = Vec::new();
    if file == "-" {
        io::stdin()
            .lock()
            .take(MOST_BYTES + 1)
            .read_to_end(&mut bytes)
            .map_err(failed)?;
    } else {
        File::open(file)
            .and_then(|open| open.take(MOST_BYTES + 1).read_to_end(&mut bytes))
            .map_err(failed)?;
    }
    if bytes.len() as u64 > MOST_BYTES {
        let said = format!("longer than {MOST_BYTES} bytes");
        return Err(failed(io::Error::new(io::ErrorKind::InvalidData, said)));
    }
    String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        let said = format!("not text: byte {at} is no UTF-8");
        failed(io::Error::new(io::ErrorKind::InvalidData, said))
    })
}

/// Writes a file anew.
///
/// # Errors
/// When it cannot be written.
pub fn write(file: &str, text: &str) -> Result<(), Failure> {
    std::fs::write(file, text).map_err(|error| Failure::File {
        file: file.to_owned(),
        error,
        remedy: "name a file in a folder that can be written",
    })
}
