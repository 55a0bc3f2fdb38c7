//! XML as text, for the manifests that training systems read.

/// Text inside an element or a quoted attribute; characters XML 1.0 cannot hold are left out.
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&apos;"),
            '\t' | '\n' | '\r' => out.push(' '),
            c if c < ' ' || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
            c => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markup_in_a_name_stays_a_name() {
        assert_eq!(
            escaped("<b a=\"1\">'&\u{0}\u{ffff}"),
            "&lt;b a=&quot;1&quot;&gt;&apos;&amp;"
        );
    }
}
