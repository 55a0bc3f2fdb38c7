//! Files that use each other in a circle: found by who names whose paths, test modules left out.
//!
//! A name that a module passes on (`pub use`) counts as a use of the file it comes from, and passing
//! on is no use.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::source::Source;
use crate::source::is_word;

/// By file, the files it uses and the names it uses of them.
type Uses = BTreeMap<String, BTreeMap<String, BTreeSet<String>>>;

/// Files each of which reaches each other one, and what they use of each other.
pub struct Circle {
    /// The files, in order.
    pub files: Vec<String>,
    uses: Vec<String>,
}

impl std::fmt::Display for Circle {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(
            f,
            "{} import each other in a circle; move what is shared to the lower one:\n  {}",
            self.files.join(", "),
            self.uses.join("\n  ")
        )
    }
}

/// All circles of a program.
pub fn circles(sources: &[Source]) -> Vec<Circle> {
    let uses = uses(sources);
    let reached: BTreeMap<&String, BTreeSet<&String>> = uses
        .keys()
        .map(|file| (file, reached(&uses, file)))
        .collect();
    let mut found = Vec::new();
    let mut seen = BTreeSet::new();
    for file in uses.keys() {
        let others = &reached[file];
        if !others.contains(file) || seen.contains(file) {
            continue;
        }
        let files: Vec<&String> = others
            .iter()
            .copied()
            .filter(|other| reached.get(other).is_some_and(|back| back.contains(file)))
            .collect();
        seen.extend(files.iter().copied());
        let pairs = files
            .iter()
            .flat_map(|a| files.iter().map(move |b| (*a, *b)));
        let told = pairs.filter_map(|(a, b)| {
            let names: Vec<&str> = uses[a].get(b)?.iter().map(String::as_str).collect();
            Some(format!("src/{a} uses src/{b}: {}", names.join(", ")))
        });
        found.push(Circle {
            uses: told.collect(),
            files: files.into_iter().cloned().collect(),
        });
    }
    found
}

/// What a file uses, directly or by others; itself only where it stands in a circle.
fn reached<'a>(uses: &'a Uses, file: &str) -> BTreeSet<&'a String> {
    let mut found = BTreeSet::new();
    let mut waiting: Vec<&str> = vec![file];
    while let Some(file) = waiting.pop() {
        for other in uses.get(file).into_iter().flat_map(BTreeMap::keys) {
            if found.insert(other) {
                waiting.push(other);
            }
        }
    }
    found
}

fn uses(sources: &[Source]) -> Uses {
    let program = Program::of(sources);
    let mut uses = Uses::new();
    for source in sources {
        let module = module_of(&source.path);
        for path in paths(source).into_iter().filter(|path| !path.is_passed_on) {
            let Some((file, name)) = program.resolve(&path.full(&module), 0) else {
                continue;
            };
            if file != source.path {
                let of = uses.entry(source.path.clone()).or_default();
                of.entry(file).or_default().insert(name);
            }
        }
    }
    uses
}

/// The modules by their paths, and what they pass on.
struct Program {
    files: BTreeMap<Vec<String>, String>,
    passed_on: BTreeMap<Vec<String>, Vec<String>>,
}

impl Program {
    fn of(sources: &[Source]) -> Self {
        let files = sources.iter();
        let files = files.map(|source| (module_of(&source.path), source.path.clone()));
        let mut passed_on = BTreeMap::new();
        for source in sources {
            let module = module_of(&source.path);
            for path in paths(source).into_iter().filter(|path| path.is_passed_on) {
                let full = path.full(&module);
                let name = full.last().into_iter().cloned();
                passed_on.insert(module.iter().cloned().chain(name).collect(), full);
            }
        }
        Self {
            files: files.collect(),
            passed_on,
        }
    }

    /// The file a path leads to, and the name it has there.
    fn resolve(&self, path: &[String], depth: usize) -> Option<(String, String)> {
        let n = (1..=path.len())
            .rev()
            .find(|n| self.files.contains_key(&path[..*n]))?;
        let further = path.get(..=n).and_then(|name| self.passed_on.get(name));
        if let Some(full) = further.filter(|_| depth < 8) {
            let whole: Vec<String> = full.iter().chain(&path[n + 1..]).cloned().collect();
            return self.resolve(&whole, depth + 1);
        }
        let name = path.get(n).cloned().unwrap_or_else(|| path[n - 1].clone());
        Some((self.files[&path[..n]].clone(), name))
    }
}

/// A path as it stands in a file.
struct Path {
    /// From the crate, from the module above, or from the file's own module.
    from: &'static str,
    names: Vec<String>,
    /// It stands in a `pub use`.
    is_passed_on: bool,
}

impl Path {
    fn full(&self, module: &[String]) -> Vec<String> {
        let above = match self.from {
            "crate::" => &[],
            "super::" => &module[..module.len().saturating_sub(1)],
            _ => module,
        };
        above.iter().chain(&self.names).cloned().collect()
    }
}

fn module_of(path: &str) -> Vec<String> {
    let path = path.strip_suffix(".rs").unwrap_or(path);
    let path = path.strip_suffix("/mod").unwrap_or(path);
    path.split('/').map(str::to_owned).collect()
}

/// All paths that a file names outside of its tests.
fn paths(source: &Source) -> Vec<Path> {
    let lines = source.lines.iter().filter(|line| !line.in_test);
    let code: Vec<&str> = lines.map(|line| line.code.as_str()).collect();
    let code = code.join("\n");
    let mut found = Vec::new();
    for from in ["crate::", "super::", "use "] {
        for (at, _) in code.match_indices(from) {
            let before = &code[..at];
            if before.ends_with(|c: char| is_word(c) || c == '$' || c == ':') {
                continue;
            }
            let rest = &code[at + from.len()..];
            let is_own = from == "use ";
            if is_own && (rest.starts_with("crate::") || rest.starts_with("super::")) {
                continue;
            }
            let line = before.rsplit('\n').next().unwrap_or_default().trim_start();
            let is_passed_on = line.starts_with("pub") && (is_own || line.ends_with("use "));
            // Without `pub`, what begins with neither is of another crate or of this very file.
            if is_own && !is_passed_on {
                continue;
            }
            let rest = rest.strip_prefix("self::").unwrap_or(rest);
            for names in tree(rest).0 {
                found.push(Path {
                    from,
                    names,
                    is_passed_on,
                });
            }
        }
    }
    found
}

/// The paths that begin here, groups taken apart, and how long the text of them is.
fn tree(text: &str) -> (Vec<Vec<String>>, usize) {
    let name: String = text.chars().take_while(|&c| is_word(c)).collect();
    let mut at = name.len();
    if let Some(rest) = text[at..].strip_prefix("::").filter(|_| !name.is_empty()) {
        let (below, taken) = tree(rest);
        let below = below.into_iter().map(|mut path| {
            path.insert(0, name.clone());
            path
        });
        return (below.collect(), at + 2 + taken);
    }
    if !text.starts_with('{') {
        let own = (!name.is_empty() && name != "self").then_some(name);
        return (vec![own.into_iter().collect()], at);
    }
    let mut all = Vec::new();
    at = 1;
    while at < text.len() && !text[at..].starts_with('}') {
        let (below, taken) = tree(&text[at..]);
        if taken > 0 {
            all.extend(below);
        }
        at += taken.max(text[at..].chars().next().map_or(1, char::len_utf8).min(1));
    }
    (all, at + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(files: &[(&str, &str)]) -> Vec<String> {
        let sources: Vec<Source> = files
            .iter()
            .map(|(path, text)| Source::new(path, text))
            .collect();
        circles(&sources).iter().map(ToString::to_string).collect()
    }

    #[test]
    fn two_files_that_use_each_other_are_named_with_what_they_use() {
        let told = found(&[
            ("plant/tub.rs", "use crate::plant::drain::Hose;\n"),
            ("plant/drain.rs", "use crate::plant::tub::{self, Tub};\n"),
            ("plant/load.rs", "use crate::plant::tub::Tub;\n"),
        ]);
        assert_eq!(
            told,
            [
                "plant/drain.rs, plant/tub.rs import each other in a circle; move what is shared to the lower one:\n  \
                 src/plant/drain.rs uses src/plant/tub.rs: Tub, tub\n  \
                 src/plant/tub.rs uses src/plant/drain.rs: Hose"
            ]
        );
    }

    #[test]
    fn a_name_passed_on_leads_to_the_file_it_comes_from() {
        let told = found(&[
            ("plant/mod.rs", "mod tub;\npub use tub::Tub;\n"),
            ("plant/tub.rs", "fn f() { crate::plant::load::g(); }\n"),
            ("plant/load.rs", "use crate::plant::Tub;\n"),
        ]);
        assert_eq!(told.len(), 1, "{told:?}");
        assert!(told[0].starts_with("plant/load.rs, plant/tub.rs "));
    }

    #[test]
    fn a_tree_and_a_test_that_looks_up_are_no_circle() {
        let told = found(&[
            (
                "plant/mod.rs",
                "mod tub;\npub use tub::Tub;\nuse crate::plant::tub::Tub;\n",
            ),
            (
                "plant/tub.rs",
                "use crate::units;\n#[cfg(test)]\nmod tests {\n    use crate::plant::load::Load;\n}\n",
            ),
            ("plant/load.rs", "use super::tub::Tub;\n"),
        ]);
        assert!(told.is_empty(), "{told:?}");
    }
}
