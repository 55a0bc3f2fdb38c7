//! Reads the row conditions: numbers with the word before and the unit behind them.

/// One number in a sentence.
#[derive(Debug, Clone, PartialEq)]
struct Number {
    before: String,
    value: f64,
    unit: String,
}

/// A row's conditions, taken apart.
#[derive(Debug, Clone)]
pub struct Prose {
    text: String,
    numbers: Vec<Number>,
}

impl Prose {
    pub fn new(text: &str) -> Self {
        Self {
            text: text.to_owned(),
            numbers: numbers(text),
        }
    }

    pub fn says(&self, words: &str) -> bool {
        self.text.contains(words)
    }

    /// First number with this unit.
    pub fn of(&self, unit: &str) -> Option<f64> {
        self.all(unit).first().copied()
    }

    /// Every number with this unit.
    pub fn all(&self, unit: &str) -> Vec<f64> {
        self.numbers
            .iter()
            .filter(|n| n.unit == unit)
            .map(|n| n.value)
            .collect()
    }

    /// Number right behind a word (`load 4 kg`, `t=0.1 s`, `U 0.19`).
    pub fn after(&self, word: &str) -> Option<f64> {
        self.numbers
            .iter()
            .find(|n| n.before == word)
            .map(|n| n.value)
    }

    /// All numbers in order.
    pub fn values(&self) -> Vec<f64> {
        self.numbers.iter().map(|n| n.value).collect()
    }

    /// Number right behind the number that stands behind `word`, as in `4+4.8 kg`.
    pub fn second_after(&self, word: &str) -> Option<f64> {
        let first = self.numbers.iter().position(|n| n.before == word)?;
        self.numbers.get(first + 1).map(|n| n.value)
    }
}

fn numbers(text: &str) -> Vec<Number> {
    let chars: Vec<char> = text.chars().collect();
    let mut found = Vec::new();
    let mut before = String::new();
    let mut i = 0;
    while i < chars.len() {
        let is_signed =
            matches!(chars[i], '+' | '-') && chars.get(i + 1).is_some_and(char::is_ascii_digit);
        if chars[i].is_alphabetic() {
            let start = i;
            while i < chars.len() && (chars[i].is_alphanumeric()) {
                i += 1;
            }
            before = chars[start..i].iter().collect();
        } else if chars[i].is_ascii_digit() || is_signed {
            let end = number_end(&chars, i);
            let value: String = chars[i..end].iter().collect();
            i = end;
            let mut unit_start = i;
            while chars.get(unit_start) == Some(&' ') {
                unit_start += 1;
            }
            let mut unit = String::new();
            if chars
                .get(unit_start)
                .is_some_and(|c| c.is_alphabetic() || *c == '%')
            {
                let mut j = unit_start;
                while j < chars.len() && !matches!(chars[j], ' ' | ',' | ';' | ')' | '(' | ':') {
                    j += 1;
                }
                unit = chars[unit_start..j].iter().collect();
            }
            let value = value.parse().expect("scanned as a number");
            found.push(Number {
                before: std::mem::take(&mut before),
                value,
                unit,
            });
        } else {
            i += 1;
        }
    }
    found
}

fn number_end(chars: &[char], start: usize) -> usize {
    let mut i = start + 1;
    while i < chars.len() {
        let is_point = chars[i] == '.' && chars.get(i + 1).is_some_and(char::is_ascii_digit);
        let is_exponent = chars[i] == 'e'
            && chars
                .get(i + 1)
                .is_some_and(|c| c.is_ascii_digit() || matches!(c, '-' | '+'))
            && chars.get(i + 2).is_some_and(|c| c.is_ascii_digit());
        if is_exponent {
            i += 2;
        } else if !(chars[i].is_ascii_digit() || is_point) {
            return i;
        }
        i += 1;
    }
    i
}

#[test]
fn sentences_give_up_their_numbers() {
    let p = Prose::new("load 4 kg, 42+10 kg water, on 1.4/off 0.7 s, t=0.1 s");
    assert_eq!(p.after("load"), Some(4.0));
    assert_eq!(p.after("t"), Some(0.1));
    assert_eq!(p.after("on"), Some(1.4));
    assert_eq!(p.values(), vec![4.0, 42.0, 10.0, 1.4, 0.7, 0.1]);
    let p = Prose::new("air leak 1e-10 m3/s/Pa, 52 L standing");
    assert_eq!(p.of("m3/s/Pa"), Some(1e-10));
    assert_eq!(p.of("L"), Some(52.0));
}
