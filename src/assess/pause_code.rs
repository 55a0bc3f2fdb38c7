//! A pause code as it is read out and typed: eight letters and digits in two groups, such as
//! `K7QF-2M9D`.

/// No I, L, O, U, which are misread (Crockford's base 32).
const LETTERS: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";
/// Letters in a code; five bits each.
const N_LETTERS: usize = 8;

/// The first 40 bits of a hash as a code.
pub fn of_bytes(bytes: &[u8; 32]) -> String {
    let mut number = [0; 8];
    number[3..].copy_from_slice(&bytes[..5]);
    let number = u64::from_be_bytes(number);
    let letter = |at: usize| {
        let index = (number >> (5 * (N_LETTERS - 1 - at))) & 31;
        char::from(LETTERS[index as usize])
    };
    grouped((0..N_LETTERS).map(letter))
}

/// A code as it was typed: any case, spaces and dashes, O for 0, I and L for 1. `None` when it has other
/// letters, or too many or too few.
pub fn read(typed: &str) -> Option<String> {
    let kept = typed.chars().filter(|c| !c.is_whitespace() && *c != '-');
    let letters: Vec<char> = kept
        .take(N_LETTERS + 1)
        .map(|c| match c.to_ascii_uppercase() {
            'O' => '0',
            'I' | 'L' => '1',
            other => other,
        })
        .collect();
    let known = |c: &char| u8::try_from(*c).is_ok_and(|byte| LETTERS.contains(&byte));
    (letters.len() == N_LETTERS && letters.iter().all(known)).then(|| grouped(letters.into_iter()))
}

/// It is written as a code is.
pub fn is_code(text: &str) -> bool {
    read(text).as_deref() == Some(text)
}

fn grouped(letters: impl Iterator<Item = char>) -> String {
    let mut code = String::with_capacity(N_LETTERS + 1);
    for (at, letter) in letters.enumerate() {
        if at == N_LETTERS / 2 {
            code.push('-');
        }
        code.push(letter);
    }
    code
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn forty_bits_are_eight_letters() {
        assert_eq!(of_bytes(&[0; 32]), "0000-0000");
        assert_eq!(of_bytes(&[255; 32]), "ZZZZ-ZZZZ");
        let mut bytes = [0; 32];
        // The last ten of the forty bits: 00001 00001.
        bytes[4] = 0b0010_0001;
        assert_eq!(of_bytes(&bytes), "0000-0011");
    }

    #[test]
    fn a_code_is_read_as_people_type_it_and_nothing_else_is_one() {
        assert_eq!(read(" k7qf 2m9d ").as_deref(), Some("K7QF-2M9D"));
        assert_eq!(read("o0il-2m9d").as_deref(), Some("0011-2M9D"));
        for wrong in ["", "K7QF-2M9", "K7QF-2M9DD", "K7QF-2M9U", "K7QF-2M9Ä"] {
            assert_eq!(read(wrong), None, "{wrong}");
        }
        assert!(is_code("K7QF-2M9D") && !is_code("k7qf-2m9d") && !is_code("K7QF2M9D"));
    }
}
