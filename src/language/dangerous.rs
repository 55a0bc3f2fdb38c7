//! What is wrong in a language's file in a way that its parser does not survive: it is found before.

/// Brackets inside brackets that a message may have at most: the parser follows each by a call of its own.
const DEEPEST: usize = 50;

/// Where such a thing stands.
pub fn place(text: &str) -> Option<usize> {
    too_deep(text).or_else(|| cut_escape(text))
}

/// Where brackets stand too deep inside brackets. Those in comments, in quotes and in plain text are none.
fn too_deep(text: &str) -> Option<usize> {
    let (mut depth, mut before, mut is_comment, mut is_quoted) = (0_usize, b'\n', false, false);
    text.bytes().position(|byte| {
        match byte {
            b'\n' => (is_comment, is_quoted) = (false, false),
            b'#' if before == b'\n' => is_comment = true,
            _ if is_comment => {}
            b'"' if depth > 0 && !(is_quoted && before == b'\\') => is_quoted = !is_quoted,
            _ if is_quoted => {}
            b'{' => depth += 1,
            b'(' if depth > 0 => depth += 1,
            b'}' | b')' => depth = depth.saturating_sub(1),
            _ => {}
        }
        // A backslash after a backslash stands for itself.
        let is_escaped = is_quoted && before == b'\\';
        before = if is_escaped { 0 } else { byte };
        depth > DEEPEST
    })
}

/// Where an escape such as `\u00e9` lacks digits and a letter of several bytes follows, which the parser
/// would cut in two.
fn cut_escape(text: &str) -> Option<usize> {
    let is_cut = |at: &usize| {
        let rest = &text.as_bytes()[at + 1..];
        let n = match rest.first() {
            Some(b'u') => 4,
            Some(b'U') => 6,
            _ => return false,
        };
        let mut after = rest[1..].iter().take(n);
        let next = after.find(|byte| !byte.is_ascii_hexdigit());
        next.is_some_and(|byte| !byte.is_ascii())
    };
    let mut escapes = text.match_indices('\\').map(|(at, _)| at);
    escapes.find(is_cut)
}

#[cfg(test)]
mod tests {
    use crate::language::Catalogue;
    use crate::language::CatalogueError;

    fn is_refused(text: &str) -> bool {
        let error = Catalogue::read("es", text, '.').err();
        matches!(&error, Some(CatalogueError::Syntax { near, .. }) if near.starts_with("wild-00000001"))
    }

    #[test]
    fn brackets_without_end_are_refused_and_not_followed() {
        for open in ["{", "{ F(", "{ F(\"\\\\\", "] {
            let wild = open.repeat(200_000);
            assert!(
                is_refused(&format!("fine-00000000 = yes\nwild-00000001 = {wild}")),
                "{open}"
            );
        }
    }

    #[test]
    fn brackets_in_plain_text_and_in_quotes_are_no_brackets() {
        let text = "fine-00000000 = :( { \"{\" }\n# {{{{\n".repeat(200);
        assert!(Catalogue::read("es", &text, '.').is_ok());
    }

    #[test]
    fn an_escape_without_its_digits_is_refused() {
        for wrong in ["\\uñ", "\\u00eñ", "\\U01F60ñ"] {
            assert!(
                is_refused(&format!("wild-00000001 = {{ \"{wrong}\" }}\n")),
                "{wrong}"
            );
        }
        let sound = "fine-00000000 = { \"\\u00e9\" }é\n";
        assert!(Catalogue::read("es", sound, '.').is_ok());
    }
}
