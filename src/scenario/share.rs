//! A job as letters for a link, and a trainee's copy of a job as a file.
//!
//! ```text
//! letters = "1" + base64url( check (4 bytes) + keystream( deflate( JSON ) ) )
//! ```
//! Deflate starts from a fixed text that holds what jobs have in common, which halves the link.
//! The keystream keeps the answer from the eye, not from a determined person: its key is below.
//! `check` is the start of the JSON's SHA-256; it finds links that were cut or changed.

use std::collections::BTreeMap;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD as LETTERS;
use miniz_oxide::deflate::core as deflate;
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core as inflate;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use serde::Deserialize;
use serde::Serialize;
use sha2::Digest;
use sha2::Sha256;

use crate::language::said;
use crate::say;
use crate::scenario::check_job::check_job;
use crate::scenario::fault_file::CatalogueFile;
use crate::scenario::job_file::JobFile;
use crate::scenario::machine_file::MachineFile;
use crate::scenario::problem::FileError;
use crate::scenario::problem::Problem;
use crate::scenario::problem::quoted;
use crate::scenario::read::read;
use crate::scenario::set_file::SetFile;
use crate::scenario::shipped;
use crate::text;

/// The format of a trainee's copy.
pub const SEALED_FORMAT: &str = "tubwright-sealed-job-1";
/// What jobs have in common. Never changed: every link of version 1 was made with it.
const COMMON: &str = include_str!("share_common_1.txt");
/// First letter of a link's data.
const VERSION: char = '1';
/// Length of the check, bytes.
const CHECK: usize = 4;
/// Largest job a link may unfold to, bytes: fifty times a long one.
const MOST_BYTES: usize = 200_000;
/// Longest data taken, letters.
const MOST_LETTERS: usize = 200_000;
/// Level of compression: the most there is.
const LEVEL: i32 = 10;
/// Raw deflate, no header around it.
const RAW: i32 = -15;

/// A trainee's copy: what stands on the job card's head, and the whole job in letters.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(not(target_arch = "wasm32"), derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SealedFile {
    /// `tubwright-sealed-job-1`.
    pub format: String,
    /// The job's title.
    pub title: String,
    /// The whole job, as in a link.
    pub sealed: String,
}

/// The job as letters for a link.
pub fn to_letters(job: &JobFile) -> String {
    let json = serde_json::to_vec(job).unwrap_or_default();
    let check = check_of(&json);
    let mut bytes = check.to_vec();
    let mut body = squeezed(&json);
    cover(&mut body, check);
    bytes.append(&mut body);
    format!("{VERSION}{}", LETTERS.encode(bytes))
}

/// A stable name for a job that came from outside: the start of its SHA-256.
pub fn name_of(job: &JobFile) -> String {
    named("own", &serde_json::to_vec(job).unwrap_or_default())
}

/// The same for a training set.
pub fn name_of_set(set: &SetFile) -> String {
    named("set", &serde_json::to_vec(set).unwrap_or_default())
}

fn named(kind: &str, json: &[u8]) -> String {
    let digest = Sha256::digest(json);
    let hex: String = digest
        .iter()
        .take(6)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    format!("{kind}-{hex}")
}

/// A job from the letters of a link, checked whole; `file` is the name errors use.
///
/// # Errors
/// What is wrong with the link, or with the job in it.
pub fn from_letters(file: &str, letters: &str) -> Result<JobFile, FileError> {
    unsealed(
        file,
        letters,
        shipped::machine_files()?,
        shipped::catalogue()?,
    )
}

/// As [`from_letters`], on these machines.
///
/// # Errors
/// What is wrong with the letters, or with the job in them.
pub fn unsealed(
    file: &str,
    letters: &str,
    machines: &[MachineFile],
    catalogue: &CatalogueFile,
) -> Result<JobFile, FileError> {
    let json = json_of(letters).map_err(|remedy| problem(file, "sealed", letters, said(remedy)))?;
    let job: JobFile = read(file, &json)?;
    check_job(file, &job, machines, catalogue)?;
    Ok(job)
}

/// The jobs that travel with a set, open or covered, by name; what cannot be read is left out, as the
/// set's reader has told it.
pub fn travelling(set: &SetFile) -> BTreeMap<String, JobFile> {
    let covered = set.sealed.iter();
    let covered = covered.filter_map(|(id, l)| Some((id.clone(), from_letters(id, l).ok()?)));
    let mut jobs: BTreeMap<String, JobFile> = covered.collect();
    jobs.extend(set.files.clone());
    jobs
}

/// The set with its jobs covered, to be handed to a class.
pub fn covered(set: &SetFile) -> SetFile {
    let letters = set.files.iter();
    let letters = letters.map(|(id, job)| (id.clone(), to_letters(job)));
    SetFile {
        sealed: letters.chain(set.sealed.clone()).collect(),
        files: BTreeMap::new(),
        ..set.clone()
    }
}

/// A trainee's copy as a file's value.
pub fn sealed(job: &JobFile) -> SealedFile {
    SealedFile {
        format: SEALED_FORMAT.to_owned(),
        title: job.title.clone(),
        sealed: to_letters(job),
    }
}

/// A job from the text of a job file or of a trainee's copy, checked whole.
///
/// # Errors
/// Everything that is wrong in the file, each with its field and remedy.
pub fn read_shared(file: &str, text: &str) -> Result<JobFile, FileError> {
    if is_sealed(text) {
        return from_letters(file, &read::<SealedFile>(file, text)?.sealed);
    }
    super::read_job(file, text, shipped::machine_files()?, shipped::catalogue()?)
}

/// The format says that it is a trainee's copy. What is no JSON is told by the job's reader.
fn is_sealed(text: &str) -> bool {
    #[derive(Deserialize)]
    struct Head {
        format: String,
    }
    serde_json::from_str::<Head>(text).is_ok_and(|head| head.format == SEALED_FORMAT)
}

fn problem(file: &str, path: &str, letters: &str, remedy: &str) -> FileError {
    let start: String = letters.chars().take(12).collect();
    let found = say!(
        "{start} and so on, {n} letters",
        start = quoted(&start),
        n = letters.chars().count()
    );
    FileError {
        problems: vec![Problem::new(file, path, found, remedy)],
    }
}

const CUT: &str =
    text!("the letters were cut or changed on the way: copy the whole address or file again");

fn json_of(letters: &str) -> Result<String, &'static str> {
    if letters.len() > MOST_LETTERS {
        return Err(text!("this is longer than any job: ask for it as a file"));
    }
    let Some(data) = letters.strip_prefix(VERSION) else {
        return Err(text!(
            "this version reads letters that begin with 1: ask for the job as a file, or use a newer version"
        ));
    };
    let bytes = LETTERS.decode(data).map_err(|_| CUT)?;
    let (check, body) = bytes.split_first_chunk::<CHECK>().ok_or(CUT)?;
    let mut body = body.to_vec();
    cover(&mut body, *check);
    let json = unfolded(&body).ok_or(CUT)?;
    if check_of(&json) != *check {
        return Err(CUT);
    }
    String::from_utf8(json).map_err(|_| CUT)
}

fn check_of(json: &[u8]) -> [u8; CHECK] {
    let digest = Sha256::digest(json);
    [digest[0], digest[1], digest[2], digest[3]]
}

/// Covers or uncovers the bytes; `check` makes two jobs look different from the first byte on.
fn cover(bytes: &mut [u8], check: [u8; CHECK]) {
    let mut key = *b"tubwright keeps the answer shut.";
    key[..CHECK].copy_from_slice(&check);
    let mut stream = vec![0; bytes.len()];
    ChaCha8Rng::from_seed(key).fill_bytes(&mut stream);
    for (byte, mask) in bytes.iter_mut().zip(stream) {
        *byte ^= mask;
    }
}

/// Deflate whose window already holds the common text.
fn squeezed(json: &[u8]) -> Vec<u8> {
    let flags = deflate::create_comp_flags_from_zip_params(LEVEL, RAW, 0);
    let mut compressor = deflate::CompressorOxide::new(flags);
    // What the common text itself comes to is known to both sides and left out.
    deflate::compress_to_output(
        &mut compressor,
        COMMON.as_bytes(),
        deflate::TDEFLFlush::Sync,
        |_| true,
    );
    let mut out = Vec::new();
    deflate::compress_to_output(
        &mut compressor,
        json,
        deflate::TDEFLFlush::Finish,
        |bytes| {
            out.extend_from_slice(bytes);
            true
        },
    );
    out
}

fn unfolded(bytes: &[u8]) -> Option<Vec<u8>> {
    let start = COMMON.len();
    let mut out = vec![0; start + MOST_BYTES];
    out[..start].copy_from_slice(COMMON.as_bytes());
    let flags = TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
    let mut state = inflate::DecompressorOxide::new();
    let (status, _, written) = inflate::decompress(&mut state, bytes, &mut out, start, flags);
    (status == TINFLStatus::Done).then(|| out[start..start + written].to_vec())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::job_files;

    #[test]
    fn every_shipped_job_survives_a_link_and_a_copy() {
        for job in job_files().expect("sound") {
            let letters = to_letters(&job.file);
            assert_eq!(from_letters("link", &letters).expect(job.id), job.file);
            assert!(
                letters.len() < 1500,
                "{}: {} letters",
                job.id,
                letters.len()
            );
            let copy = serde_json::to_string(&sealed(&job.file)).expect("writes");
            assert_eq!(read_shared("copy.json", &copy).expect(job.id), job.file);
            for fault in &job.file.faults {
                assert!(!copy.contains(&fault.id), "{} shows its cause", job.id);
            }
        }
    }

    #[test]
    fn a_link_that_was_cut_or_changed_says_so() {
        let letters = to_letters(&job_files().expect("sound")[0].file);
        let (half, mut other) = (&letters[..letters.len() / 2], letters.clone());
        other.replace_range(40..41, if &letters[40..41] == "A" { "B" } else { "A" });
        for wrong in [half, &other, "1", "1AAAAA", "1!!!", ""] {
            let error = from_letters("link", wrong).expect_err("wrong").to_string();
            assert!(
                error.contains("again") || error.contains("newer version"),
                "{error}"
            );
        }
    }

    #[test]
    fn a_small_link_cannot_unfold_to_a_flood() {
        let flood = squeezed(&vec![b' '; 10 * MOST_BYTES]);
        assert!(flood.len() < MOST_BYTES && unfolded(&flood).is_none());
    }
}
