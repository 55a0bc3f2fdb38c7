//! Reads the program's own source: files, and each line of code without comments and texts.

use std::fs;
use std::path::Path;
use std::path::PathBuf;

/// One source file.
pub struct Source {
    /// Path from `src/`, with `/` between folders.
    pub path: String,
    /// The file as it is.
    pub text: String,
    /// Its lines of code, comments and the insides of texts blanked.
    pub lines: Vec<Line>,
}

/// One line of code.
pub struct Line {
    /// Counted from 1.
    pub number: usize,
    /// The code, comments and the insides of texts blanked.
    pub code: String,
    /// Stands in a test module.
    pub in_test: bool,
}

impl Source {
    /// A source file of this path and text.
    pub fn new(path: &str, text: &str) -> Self {
        let code = without_comments_and_texts(text);
        let in_test = test_lines(&code);
        let whole_file_is_test = path.ends_with("/tests.rs") || path.contains("/tests/");
        let lines = code
            .lines()
            .zip(in_test)
            .enumerate()
            .map(|(index, (code, in_test))| Line {
                number: index + 1,
                code: code.to_owned(),
                in_test: in_test || whole_file_is_test,
            })
            .collect();
        Self {
            path: path.to_owned(),
            text: text.to_owned(),
            lines,
        }
    }

    /// The module at the top that the file belongs to; none for `lib.rs` and `main.rs`.
    pub fn module(&self) -> Option<&str> {
        match self.path.split_once('/') {
            Some((folder, _)) => Some(folder),
            None if self.path == "lib.rs" || self.path == "main.rs" => None,
            None => self.path.strip_suffix(".rs"),
        }
    }

    /// Paths of the files that this one declares as modules for tests only.
    fn test_files(&self) -> Vec<String> {
        let folder = self.path.rsplit_once('/').map_or("", |(folder, _)| folder);
        let declared = self.lines.iter().filter(|line| line.in_test);
        declared
            .map(|line| line.code.trim().trim_start_matches("pub "))
            .filter_map(|code| code.strip_prefix("mod ")?.strip_suffix(';'))
            .map(|name| format!("{folder}/{name}.rs"))
            .collect()
    }

    /// The file in which a top module begins, where `super` would mean the whole crate.
    pub fn is_module_root(&self) -> bool {
        !self.path.contains('/')
            || self.path.matches('/').count() == 1 && self.path.ends_with("/mod.rs")
    }
}

/// Every Rust file under `src/`, in order of path.
pub fn program() -> Vec<Source> {
    let root = root().join("src");
    let mut sources: Vec<Source> = files(&root, "rs")
        .into_iter()
        .map(|file| {
            let path = file.strip_prefix(&root).expect("found under the root");
            let path = path.to_string_lossy().replace('\\', "/");
            Source::new(&path, &fs::read_to_string(&file).expect("source is text"))
        })
        .collect();
    let only_for_tests: Vec<String> = sources.iter().flat_map(Source::test_files).collect();
    for source in &mut sources {
        if only_for_tests.contains(&source.path) {
            source.lines.iter_mut().for_each(|line| line.in_test = true);
        }
    }
    sources
}

/// The repository's top folder.
pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// Every file of this kind under `folder`, in order.
pub fn files(folder: &Path, kind: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let entries = fs::read_dir(folder).map(|entries| {
        entries
            .flatten()
            .map(|entry| entry.path())
            .collect::<Vec<_>>()
    });
    for path in entries.unwrap_or_default() {
        if path.is_dir() {
            found.extend(files(&path, kind));
        } else if path.extension().is_some_and(|extension| extension == kind) {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// Where the reader stands in the text.
enum At {
    Code,
    LineComment,
    BlockComment { depth: usize },
    Text { hashes: Option<usize> },
}

/// The same text, same lines, with comments and the insides of texts and characters replaced by blanks.
fn without_comments_and_texts(text: &str) -> String {
    let chars: Vec<char> = text.chars().collect();
    let next = |at: usize| chars.get(at).copied().unwrap_or('\0');
    let mut out = String::with_capacity(text.len());
    let mut state = At::Code;
    let mut i = 0;
    while i < chars.len() {
        let c = chars[i];
        let mut taken = 1;
        match state {
            At::Code => match c {
                '/' if next(i + 1) == '/' => state = At::LineComment,
                '/' if next(i + 1) == '*' => state = At::BlockComment { depth: 0 },
                '"' => state = At::Text { hashes: None },
                'r' if !out.ends_with(is_word) && raw_hashes(&chars, i).is_some() => {
                    let hashes = raw_hashes(&chars, i).expect("just seen");
                    taken = hashes + 2;
                    state = At::Text {
                        hashes: Some(hashes),
                    };
                }
                // A character, as against a lifetime: 'x' or '\…'.
                '\'' if next(i + 1) == '\\' => {
                    taken = 2 + chars[i + 2..]
                        .iter()
                        .skip(1)
                        .position(|&c| c == '\'')
                        .map_or(0, |n| n + 2)
                }
                '\'' if next(i + 2) == '\'' => taken = 3,
                _ => {}
            },
            At::LineComment if c == '\n' => state = At::Code,
            At::BlockComment { ref mut depth } => {
                if c == '/' && next(i + 1) == '*' {
                    *depth += 1;
                    taken = 2;
                } else if c == '*' && next(i + 1) == '/' {
                    taken = 2;
                    if *depth <= 1 {
                        state = At::Code;
                    } else {
                        *depth -= 1;
                    }
                }
                push_blanks(&mut out, &chars[i..i + taken]);
                i += taken;
                continue;
            }
            At::Text { hashes: None } if c == '\\' => taken = 2,
            At::Text { hashes: None } if c == '"' => state = At::Code,
            At::Text {
                hashes: Some(hashes),
            } if c == '"' && (1..=hashes).all(|n| next(i + n) == '#') => {
                taken = hashes + 1;
                state = At::Code;
            }
            _ => {}
        }
        let plain = matches!(state, At::Code) && taken == 1;
        let end = (i + taken).min(chars.len());
        if plain {
            out.push(c);
        } else {
            push_blanks(&mut out, &chars[i..end]);
        }
        i = end;
    }
    out
}

fn push_blanks(out: &mut String, chars: &[char]) {
    out.extend(chars.iter().map(|&c| if c == '\n' { '\n' } else { ' ' }));
}

/// How many `#` stand before the quotation mark of the raw text that begins at `r`, if one does.
fn raw_hashes(chars: &[char], r: usize) -> Option<usize> {
    let hashes = chars[r + 1..].iter().take_while(|&&c| c == '#').count();
    (chars.get(r + 1 + hashes) == Some(&'"')).then_some(hashes)
}

/// Can the character be part of a name?
pub fn is_word(c: char) -> bool {
    c.is_alphanumeric() || c == '_'
}

/// `#[cfg(test)]`, or `#[cfg(all(test, …))]`.
fn is_for_tests(line: &str) -> bool {
    let condition = line.trim_start().strip_prefix("#[cfg(").unwrap_or_default();
    ["test)", "all(test,", "all(any(test, fuzzing)"]
        .iter()
        .any(|only| condition.starts_with(only))
}

/// For each line of code: does it stand in something marked `#[cfg(test)]`?
fn test_lines(code: &str) -> Vec<bool> {
    let mut depth = 0_usize;
    let mut marked = false;
    let mut until = None;
    let mut lines = Vec::new();
    for line in code.lines() {
        marked |= until.is_none() && is_for_tests(line);
        let mut in_test = marked || until.is_some();
        for c in line.chars() {
            match c {
                '{' => {
                    if marked {
                        until = Some(depth);
                        marked = false;
                    }
                    depth += 1;
                }
                '}' => {
                    depth = depth.saturating_sub(1);
                    if until == Some(depth) {
                        until = None;
                        in_test = true;
                    }
                }
                ';' if marked => marked = false,
                _ => {}
            }
        }
        lines.push(in_test);
    }
    lines
}
