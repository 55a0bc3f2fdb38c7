//! Writing a zip archive: deflated entries, the list of contents at the end, no times (PKWARE's
//! application note 6.3, sections 4.3.7, 4.3.12 and 4.3.16). The same files give the same bytes,
//! natively and in a browser.

use miniz_oxide::deflate::compress_to_vec;
use thiserror::Error;

use crate::say;

/// How hard it looks for repetitions, 0 to 10: what programs for archives use when not told.
const LEVEL: u8 = 6;
/// Version of the format that an entry needs: 2.0, deflated.
const VERSION: u16 = 20;
/// Names are UTF-8.
const UTF_8: u16 = 1 << 11;
/// The first day there is, 1 January 1980, since no times are kept.
const NO_DAY: u16 = 0x21;

/// The format has no room for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[error("{}", say!("a zip file takes 65,535 files and 4 GB at most"))]
pub struct TooMuch;

/// An archive being written.
#[derive(Clone, Debug, Default)]
pub struct Zip {
    bytes: Vec<u8>,
    contents: Vec<u8>,
    n_files: u16,
}

impl Zip {
    /// One file more.
    ///
    /// # Errors
    /// When the format has no room for it; the archive is as it was.
    pub fn add(&mut self, name: &str, data: &[u8]) -> Result<(), TooMuch> {
        let deflated = compress_to_vec(data, LEVEL);
        let (method, packed): (u16, &[u8]) = if deflated.len() < data.len() {
            (8, &deflated)
        } else {
            (0, data)
        };
        let at = narrow(self.bytes.len())?;
        narrow(self.bytes.len() + packed.len())?;
        let name_length = u16::try_from(name.len()).map_err(|_| TooMuch)?;
        let n_files = self.n_files.checked_add(1).ok_or(TooMuch)?;
        // What both the entry and the list of contents say of it.
        let mut facts = Vec::new();
        for word in [VERSION, UTF_8, method, 0, NO_DAY] {
            facts.extend(word.to_le_bytes());
        }
        for long in [crc_32(data), narrow(packed.len())?, narrow(data.len())?] {
            facts.extend(long.to_le_bytes());
        }
        facts.extend(name_length.to_le_bytes());
        facts.extend([0; 2]); // nothing beside the name

        self.bytes.extend(b"PK\x03\x04");
        self.bytes.extend(&facts);
        self.bytes.extend(name.as_bytes());
        self.bytes.extend(packed);

        self.contents.extend(b"PK\x01\x02");
        self.contents.extend(VERSION.to_le_bytes());
        self.contents.extend(&facts);
        self.contents.extend([0; 10]); // no comment, one volume, no attributes
        self.contents.extend(at.to_le_bytes());
        self.contents.extend(name.as_bytes());
        self.n_files = n_files;
        Ok(())
    }

    /// The whole archive.
    ///
    /// # Errors
    /// When the format has no room for the list of contents.
    pub fn close(mut self) -> Result<Vec<u8>, TooMuch> {
        let (at, size) = (narrow(self.bytes.len())?, narrow(self.contents.len())?);
        self.bytes.extend(&self.contents);
        self.bytes.extend(b"PK\x05\x06");
        self.bytes.extend([0; 4]); // one volume
        self.bytes.extend(self.n_files.to_le_bytes());
        self.bytes.extend(self.n_files.to_le_bytes());
        self.bytes.extend(size.to_le_bytes());
        self.bytes.extend(at.to_le_bytes());
        self.bytes.extend([0; 2]); // no comment
        Ok(self.bytes)
    }
}

fn narrow(length: usize) -> Result<u32, TooMuch> {
    u32::try_from(length).map_err(|_| TooMuch)
}

/// Remainders of each byte; polynomial 0x04C11DB7, bits reversed. Published: ISO 3309.
static REMAINDERS: [u32; 256] = {
    let mut all = [0; 256];
    let mut byte = 0;
    while byte < 256 {
        let mut rest = byte as u32;
        let mut bit = 0;
        while bit < 8 {
            rest = if rest & 1 == 1 {
                (rest >> 1) ^ 0xEDB8_8320
            } else {
                rest >> 1
            };
            bit += 1;
        }
        all[byte] = rest;
        byte += 1;
    }
    all
};

fn crc_32(data: &[u8]) -> u32 {
    !data.iter().fold(!0, |sum, byte| {
        REMAINDERS[usize::from(sum as u8 ^ byte)] ^ (sum >> 8)
    })
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use std::io::Read;

    use super::*;

    #[test]
    fn checksums_are_as_published() {
        // Published: the check value of CRC-32, of the nine digits.
        assert_eq!(crc_32(b"123456789"), 0xCBF4_3926);
        assert_eq!(crc_32(b""), 0);
    }

    /// Read by another program's reader, which compares the checksums.
    #[test]
    fn what_is_packed_here_another_program_unpacks() {
        let noise: Vec<u8> = (0u32..5000)
            .map(|n| (n.wrapping_mul(2_654_435_761) >> 13) as u8)
            .collect();
        let files = [
            ("empty.txt", Vec::new()),
            ("a/é.json", b"{\"a\": 1}".repeat(1000)),
            ("noise.bin", noise),
        ];
        let mut zip = Zip::default();
        for (name, data) in &files {
            zip.add(name, data).expect("room");
        }
        let bytes = zip.close().expect("room");
        assert!(bytes.len() < 8000, "{} bytes: repetitions go", bytes.len());
        let mut archive = zip::ZipArchive::new(std::io::Cursor::new(&bytes)).expect("an archive");
        assert_eq!(archive.len(), 3);
        for (name, data) in &files {
            let mut found = Vec::new();
            let mut entry = archive.by_name(name).expect("there");
            entry.read_to_end(&mut found).expect("whole");
            assert_eq!(&found, data, "{name}");
        }
        // And by the reader beside this.
        let own = crate::records::unzip::entries(&bytes).expect("an archive");
        for (entry, (name, data)) in own.iter().zip(&files) {
            assert_eq!(entry.name, *name);
            let found = crate::records::unzip::unpacked(&bytes, entry);
            assert_eq!(found.as_ref(), Some(data));
        }
    }

    #[test]
    fn a_name_that_has_no_room_is_refused_and_the_rest_stays() {
        let mut zip = Zip::default();
        zip.add("a", b"a").expect("room");
        assert_eq!(zip.add(&"n".repeat(70_000), b""), Err(TooMuch));
        let bytes = zip.close().expect("room");
        let own = crate::records::unzip::entries(&bytes).expect("an archive");
        assert_eq!(own.len(), 1);
    }
}
