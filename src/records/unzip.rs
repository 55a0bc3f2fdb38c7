//! Reading files out of a zip archive: stored or deflated entries, by its list of contents at the end
//! (PKWARE's application note 6.3, sections 4.3.12 and 4.3.16). Foreign bytes: every length is checked.

use miniz_oxide::inflate::decompress_to_vec_with_limit;

/// Largest single file taken out, bytes.
const MOST_BYTES: usize = 64_000_000;
/// Length of the last record without its comment, bytes.
const END: usize = 22;
/// Longest comment after it.
const LONGEST_COMMENT: usize = 65_535;

/// A file in an archive.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// Its path.
    pub name: String,
    method: u16,
    packed: usize,
    header: usize,
}

/// What is in an archive; none when it is no archive, or one larger than 4 GB.
pub fn entries(bytes: &[u8]) -> Option<Vec<Entry>> {
    let from = bytes.len().saturating_sub(END + LONGEST_COMMENT);
    let last = bytes.len().checked_sub(END)?;
    let end = (from..=last)
        .rev()
        .find(|at| bytes[*at..].starts_with(b"PK\x05\x06"))?;
    let n = usize::from(u16_at(bytes, end + 10)?);
    let mut at = u32_at(bytes, end + 16)?;
    let mut all = Vec::new();
    for _ in 0..n {
        if !bytes.get(at..)?.starts_with(b"PK\x01\x02") {
            return None;
        }
        let method = u16_at(bytes, at + 10)?;
        let packed = u32_at(bytes, at + 20)?;
        let lengths = [28, 30, 32].map(|place| u16_at(bytes, at + place).map(usize::from));
        let [name, extra, comment] = [lengths[0]?, lengths[1]?, lengths[2]?];
        let header = u32_at(bytes, at + 42)?;
        let text = bytes.get(at + 46..at + 46 + name)?;
        all.push(Entry {
            name: String::from_utf8_lossy(text).into_owned(),
            method,
            packed,
            header,
        });
        at = at + 46 + name + extra + comment;
    }
    Some(all)
}

/// A file's bytes; none when the archive is damaged or packs it in another way.
pub fn unpacked(bytes: &[u8], entry: &Entry) -> Option<Vec<u8>> {
    let head = bytes.get(entry.header..)?;
    if !head.starts_with(b"PK\x03\x04") {
        return None;
    }
    let skip = 30 + usize::from(u16_at(head, 26)?) + usize::from(u16_at(head, 28)?);
    let data = head.get(skip..skip.checked_add(entry.packed)?)?;
    match entry.method {
        0 => Some(data.to_vec()),
        8 => decompress_to_vec_with_limit(data, MOST_BYTES).ok(),
        _ => None,
    }
}

fn u16_at(bytes: &[u8], at: usize) -> Option<u16> {
    let pair = bytes.get(at..at.checked_add(2)?)?;
    Some(u16::from_le_bytes([pair[0], pair[1]]))
}

fn u32_at(bytes: &[u8], at: usize) -> Option<usize> {
    let low = u16_at(bytes, at)?;
    let high = u16_at(bytes, at.checked_add(2)?)?;
    usize::try_from(u32::from(high) << 16 | u32::from(low)).ok()
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use std::io::Write;

    use super::*;

    /// Packed by the crate that makes course packages.
    fn archive() -> Vec<u8> {
        let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
        let stored = zip::write::SimpleFileOptions::default()
            .compression_method(zip::CompressionMethod::Stored);
        for (name, options) in [
            ("a/é.json", zip::write::SimpleFileOptions::default()),
            ("b.json", stored),
        ] {
            zip.start_file(name, options).expect("starts");
            zip.write_all(&name.repeat(100).into_bytes())
                .expect("writes");
        }
        zip.finish().expect("closes").into_inner()
    }

    #[test]
    fn what_another_program_packed_comes_out_again() {
        let bytes = archive();
        let all = entries(&bytes).expect("an archive");
        assert_eq!(all.len(), 2);
        for entry in &all {
            let text = unpacked(&bytes, entry).expect("whole");
            assert_eq!(text, entry.name.repeat(100).into_bytes());
        }
    }

    #[test]
    fn damaged_archives_are_refused_and_never_a_panic() {
        let bytes = archive();
        for cut in 0..bytes.len() {
            for at in entries(&bytes[..cut]).unwrap_or_default() {
                let _ = unpacked(&bytes[..cut], &at);
            }
        }
        for at in 0..bytes.len() {
            let mut other = bytes.clone();
            other[at] ^= 0xff;
            for entry in entries(&other).unwrap_or_default() {
                let _ = unpacked(&other, &entry);
            }
        }
        assert_eq!(entries(b"PK no archive"), None);
    }
}
