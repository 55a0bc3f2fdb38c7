//! Changes that a file suffers: on the way, by another program, by somebody who means it.

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;

/// Words and numbers that readers trip over.
const WORDS: [&str; 24] = [
    "null",
    "true",
    "-1",
    "0",
    "1e308",
    "-1e308",
    "1e-320",
    "18446744073709551616",
    "9007199254740993",
    "NaN",
    "Infinity",
    "\"\"",
    "\"\\u0000\"",
    "\"\\ud800\"",
    "[]",
    "{}",
    "[[[[[[[[",
    "\"<script>\"",
    "\u{202e}",
    "../../x",
    ",",
    ":",
    "\"format\":",
    "\u{feff}",
];

/// Nested deeper than any recursion should follow.
const DEEP: usize = 20_000;

/// One to four changes of a sound file, now and then spliced with another.
pub fn changed(sound: &[u8], other: &[u8], rng: &mut ChaCha8Rng) -> Vec<u8> {
    let mut bytes = sound.to_vec();
    for _ in 0..=rng.next_u32() % 4 {
        change(&mut bytes, other, rng);
    }
    bytes
}

fn below(rng: &mut ChaCha8Rng, limit: usize) -> usize {
    (rng.next_u64() % limit.max(1) as u64) as usize
}

fn change(bytes: &mut Vec<u8>, other: &[u8], rng: &mut ChaCha8Rng) {
    let at = below(rng, bytes.len());
    let len = 1 + below(rng, 64).min(bytes.len().saturating_sub(at));
    let end = (at + len).min(bytes.len());
    match rng.next_u32() % 12 {
        0 if at < bytes.len() => bytes[at] ^= 1 << (rng.next_u32() % 8),
        1 if at < bytes.len() => bytes[at] = rng.next_u32() as u8,
        2 => bytes.truncate(at),
        3 => drop(bytes.drain(at..end)),
        4 => {
            let copy = bytes[at..end].to_vec();
            let to = below(rng, bytes.len());
            bytes.splice(to..to, copy);
        }
        5 => {
            let from = below(rng, other.len());
            let tail = other[from..].to_vec();
            bytes.truncate(at);
            bytes.extend(tail);
        }
        6 => {
            let mut depth = vec![b'['; DEEP];
            bytes.splice(at..at, depth.drain(..));
        }
        7 | 8 => replace_value(bytes, at, rng),
        9 => swap_names(bytes, at, rng),
        _ => {
            let word = WORDS[below(rng, WORDS.len())];
            bytes.splice(at..end, word.bytes());
        }
    }
}

/// Another value where a number, a word or a text stands behind the next colon.
fn replace_value(bytes: &mut Vec<u8>, at: usize, rng: &mut ChaCha8Rng) {
    let Some(colon) = bytes[at..].iter().position(|b| *b == b':') else {
        return;
    };
    let start = at + colon + 1;
    let len = bytes[start..].iter().position(|b| b",}]\n".contains(b));
    let end = start + len.unwrap_or(bytes.len() - start);
    bytes.splice(start..end, WORDS[below(rng, WORDS.len())].bytes());
}

/// The next two texts in quotes change places.
fn swap_names(bytes: &mut Vec<u8>, at: usize, rng: &mut ChaCha8Rng) {
    let quotes: Vec<usize> = bytes
        .iter()
        .enumerate()
        .skip(at)
        .filter(|(_, b)| **b == b'"')
        .map(|(i, _)| i)
        .take(40)
        .collect();
    if quotes.len() < 4 {
        return;
    }
    let first = below(rng, quotes.len() / 2 - 1) * 2;
    let (a, b) = (quotes[first], quotes[first + 1]);
    let (c, d) = (quotes[first + 2], quotes[first + 3]);
    let swapped = [&bytes[c..=d], &bytes[b + 1..c], &bytes[a..=b]].concat();
    bytes.splice(a..=d, swapped);
}
