//! The texts in the source: what `say!` and `text!` hold, found in the tokens, inside other macros too.

use std::path::Path;
use std::path::PathBuf;
use std::str::FromStr;

use proc_macro2::Delimiter;
use proc_macro2::TokenStream;
use proc_macro2::TokenTree;

use crate::message::Message;
use crate::message::values;
use tubwright::language::Key;

/// One `say!` or `text!`.
pub struct Call {
    /// File, below `src`.
    pub place: String,
    /// The text.
    pub text: String,
    /// Its meaning, where it has several.
    meaning: Option<String>,
    /// Names of the values it gets, sorted.
    pub given: Vec<String>,
    /// It stands in a table: its values are given elsewhere.
    pub is_in_table: bool,
}

impl Call {
    /// Names of the values in the text, sorted.
    pub fn named(&self) -> Vec<String> {
        match self.given.is_empty() {
            // Without values braces are letters.
            true => Vec::new(),
            false => values(&self.text),
        }
    }

    fn message(&self) -> Message {
        let key = match &self.meaning {
            Some(meaning) => Key::with_meaning(&self.text, meaning),
            None => Key::of(&self.text),
        };
        Message {
            key,
            english: self.text.clone(),
            meaning: self.meaning.clone(),
            place: self.place.clone(),
            has_values: !self.given.is_empty()
                || (self.is_in_table && !values(&self.text).is_empty()),
        }
    }
}

/// All texts of the source with the file of `locales/en` they belong in: one a top-level module.
pub fn messages() -> Vec<(String, Message)> {
    let of = |call: &Call| {
        let module = call.place.split('/').next().unwrap_or_default();
        (module.trim_end_matches(".rs").to_owned(), call.message())
    };
    calls().iter().map(of).collect()
}

/// All calls, in the order of files and lines.
pub fn calls() -> Vec<Call> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    collect(&root, &mut files);
    files.sort_unstable();
    let mut calls = Vec::new();
    for file in files {
        let place = file.strip_prefix(&root).expect("a file below src");
        let place = place.to_str().expect("a name in UTF-8").replace('\\', "/");
        if place.starts_with("language/") {
            continue;
        }
        let text = std::fs::read_to_string(&file).expect("a source file");
        let tokens = TokenStream::from_str(&text).expect("tokens of a file that compiles");
        find(tokens, &place, &mut calls);
    }
    calls
}

fn collect(folder: &Path, files: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a source folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            collect(&path, files);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            files.push(path);
        }
    }
}

fn find(tokens: TokenStream, place: &str, calls: &mut Vec<Call>) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = token else {
            continue;
        };
        let is_call = group.delimiter() == Delimiter::Parenthesis
            && at >= 2
            && matches!(&tokens[at - 1], TokenTree::Punct(bang) if bang.as_char() == '!')
            && matches!(&tokens[at - 2], TokenTree::Ident(name) if name == "say" || name == "text");
        if is_call && let Some(mut call) = read(group.stream(), place) {
            call.is_in_table = tokens[at - 2].to_string() == "text";
            calls.push(call);
        }
        find(group.stream(), place, calls);
    }
}

/// A call by its arguments; none where they do not begin with a text, as in another macro's rule.
fn read(arguments: TokenStream, place: &str) -> Option<Call> {
    let tokens: Vec<TokenTree> = arguments.into_iter().collect();
    let text = literal(tokens.first()?)?;
    let meaning = match (tokens.get(1), tokens.get(2)) {
        (Some(TokenTree::Ident(word)), Some(meaning)) if word == "as" => literal(meaning),
        _ => None,
    };
    let mut given: Vec<String> = tokens
        .windows(2)
        .filter_map(|pair| match pair {
            [TokenTree::Punct(comma), TokenTree::Ident(name)] if comma.as_char() == ',' => {
                Some(name)
            }
            _ => None,
        })
        .map(ToString::to_string)
        .collect();
    given.sort_unstable();
    Some(Call {
        place: place.to_owned(),
        text,
        meaning,
        given,
        is_in_table: false,
    })
}

fn literal(token: &TokenTree) -> Option<String> {
    let TokenTree::Literal(literal) = token else {
        return None;
    };
    syn::parse_str::<syn::LitStr>(&literal.to_string())
        .ok()
        .map(|text| text.value())
}
