//! Numbers as the reader's language writes them.

use super::present;

/// Digits written with a point, such as `1.50`, with the reader's decimal sign.
pub fn decimals(digits: String) -> String {
    match present::decimal() {
        '.' => digits,
        sign => digits.replace('.', sign.encode_utf8(&mut [0; 4])),
    }
}
