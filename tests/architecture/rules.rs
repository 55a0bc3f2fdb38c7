//! The rules a line of code can break, each a function from sources to findings.

use crate::source::Source;
use crate::source::is_word;

/// From the bottom to the top: a module may use those before it.
pub const ORDER: [&str; 15] = [
    "units", "language", "network", "control", "plant", "machine", "bench", "scenario", "expert",
    "score", "assess", "records", "drawing", "cli", "app",
];

/// Pairs the order alone would allow: each of these knows nothing of the other.
const STRANGERS: [(&str, &str); 3] = [("control", "network"), ("plant", "control"), ("app", "cli")];

/// One broken rule.
pub struct Finding(String);

impl Finding {
    fn at(source: &Source, line: usize, rule: impl std::fmt::Display) -> Self {
        Self(format!("src/{}:{line}: {rule}", source.path))
    }
}

impl std::fmt::Display for Finding {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.fmt(f)
    }
}

fn rank(module: &str) -> Option<usize> {
    ORDER.iter().position(|&name| name == module)
}

/// `crate::x` only names modules further down; nobody groups or climbs.
pub fn imports(source: &Source) -> Vec<Finding> {
    let mut found = Vec::new();
    let Some(module) = source.module() else {
        return found;
    };
    let Some(own) = rank(module) else {
        return vec![Finding::at(
            source,
            1,
            format!(
                "module '{module}' has no place in the order; add it to ORDER in tests/architecture/rules.rs"
            ),
        )];
    };
    for line in &source.lines {
        for rest in after(&line.code, "crate::") {
            if rest.starts_with('{') {
                found.push(Finding::at(
                    source,
                    line.number,
                    "grouped `crate::{…}`: write one module a line",
                ));
                continue;
            }
            let used: String = rest.chars().take_while(|&c| is_word(c)).collect();
            match rank(&used) {
                Some(other) if other > own => {
                    found.push(Finding::at(
                        source,
                        line.number,
                        format!("'{module}' uses '{used}', which is above it"),
                    ));
                }
                Some(_)
                    if STRANGERS.contains(&(module, &used))
                        || STRANGERS.contains(&(&used, module)) =>
                {
                    found.push(Finding::at(
                        source,
                        line.number,
                        format!("'{module}' uses '{used}'; the two know nothing of each other"),
                    ));
                }
                _ => {}
            }
        }
        if !after(&line.code, "super::super").is_empty() {
            found.push(Finding::at(
                source,
                line.number,
                "`super::super`: write the path from `crate::`",
            ));
        }
        if source.is_module_root() && !line.in_test && !after(&line.code, "super::").is_empty() {
            found.push(Finding::at(
                source,
                line.number,
                "`super::` where it means the whole crate: write `crate::module`",
            ));
        }
    }
    found
}

/// A rule about words: who may write them, and what to say to the others.
struct Ban {
    words: &'static [&'static str],
    allowed_in: &'static [&'static str],
    rule: &'static str,
}

const BANS: [Ban; 7] = [
    Ban {
        words: &[
            "yew",
            "web_sys",
            "gloo",
            "js_sys",
            "wasm_bindgen",
            "wasm_bindgen_futures",
        ],
        allowed_in: &["app"],
        rule: "only app knows a browser",
    },
    Ban {
        words: &["serde", "serde_json", "Serialize", "Deserialize"],
        allowed_in: &[
            "bench", "scenario", "expert", "score", "assess", "records", "cli", "app",
        ],
        rule: "file forms live at the edges: no serde in here",
    },
    Ban {
        words: &[
            "Instant",
            "SystemTime",
            "std::time",
            "getrandom",
            "thread_rng",
            "OsRng",
            "from_entropy",
            "from_os_rng",
        ],
        allowed_in: &["app", "cli"],
        rule: "nobody below app reads a clock or draws at random: take time and seed as arguments",
    },
    Ban {
        words: &[
            "std::fs",
            "std::env",
            "std::process",
            "std::net",
            "std::thread",
            "std::io",
            "println",
            "eprintln",
            "print",
            "eprint",
        ],
        allowed_in: &["cli"],
        rule: "only cli knows the operating system",
    },
    Ban {
        words: &["HashMap", "HashSet", "RandomState", "DefaultHasher"],
        allowed_in: &["app", "cli"],
        rule: "its order or hash differs from run to run: use BTreeMap, BTreeSet or Vec",
    },
    Ban {
        words: &["num_complex", "num_traits", "nalgebra", "faer"],
        allowed_in: &[],
        rule: "only libm and our own arithmetic: the same bits everywhere",
    },
    Ban {
        words: &["panic", "todo", "unimplemented", "unreachable", "dbg"],
        allowed_in: &[],
        rule: "no panic on any input: return a typed error",
    },
];

/// Words of [`BANS`] that are macros: followed by `!`, since elsewhere they are plain words.
const MACROS: [&str; 9] = [
    "println",
    "eprintln",
    "print",
    "eprint",
    "panic",
    "todo",
    "unimplemented",
    "unreachable",
    "dbg",
];

/// Words only some modules may write; test modules are free.
pub fn words(source: &Source) -> Vec<Finding> {
    let mut found = Vec::new();
    let module = source.module().unwrap_or("");
    for line in source.lines.iter().filter(|line| !line.in_test) {
        for ban in &BANS {
            if ban.allowed_in.contains(&module) || module.is_empty() {
                continue;
            }
            for word in ban.words {
                let hit = after(&line.code, word).iter().any(|rest| {
                    if MACROS.contains(word) {
                        rest.starts_with('!')
                    } else {
                        !rest.starts_with(is_word)
                    }
                });
                if hit {
                    found.push(Finding::at(
                        source,
                        line.number,
                        format!("`{word}`: {}", ban.rule),
                    ));
                }
            }
        }
    }
    found
}

/// Methods of f64 whose result differs between machines, or whose order of operations is free.
const INEXACT: [&str; 26] = [
    "sin", "cos", "tan", "sin_cos", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh",
    "asinh", "acosh", "atanh", "exp", "exp2", "exp_m1", "ln", "ln_1p", "log", "log2", "log10",
    "powf", "powi", "cbrt", "hypot",
];

/// Below app only `+ - * / sqrt` and the crate libm; test modules are free.
pub fn same_bits(source: &Source) -> Vec<Finding> {
    let mut found = Vec::new();
    if matches!(source.module(), None | Some("app")) {
        return found;
    }
    for line in source.lines.iter().filter(|line| !line.in_test) {
        for method in INEXACT.iter().chain(&["mul_add"]) {
            // Without an argument, `log` is somebody's log.
            let called = after(&line.code, &format!(".{method}"))
                .iter()
                .any(|rest| rest.starts_with('(') && !(*method == "log" && rest.starts_with("()")));
            let named = after(&line.code, &format!("f64::{method}"))
                .iter()
                .any(|rest| !rest.starts_with(is_word));
            if called || named {
                found.push(Finding::at(
                    source,
                    line.number,
                    format!("`{method}` of std differs between machines: call libm"),
                ));
            }
        }
    }
    found
}

/// An `#[allow]` says why.
pub fn allowances(source: &Source) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, line) in source.lines.iter().enumerate() {
        if !line.code.contains("#[allow(") && !line.code.contains("#![allow(") {
            continue;
        }
        // Up to the line that closes it.
        let rest = &source.lines[index..];
        let last = rest
            .iter()
            .position(|line| line.code.contains(")]"))
            .unwrap_or(0);
        if !rest[..=last]
            .iter()
            .any(|line| !after(&line.code, "reason").is_empty())
        {
            found.push(Finding::at(
                source,
                line.number,
                "`#[allow]` without `reason = \"…\"`",
            ));
        }
    }
    found
}

/// What follows each place where `word` begins as a word of its own.
fn after<'a>(code: &'a str, word: &str) -> Vec<&'a str> {
    code.match_indices(word)
        .filter(|(at, _)| {
            word.starts_with('.') || !code[..*at].ends_with(|c: char| is_word(c) || c == '$')
        })
        .map(|(at, _)| &code[at + word.len()..])
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn finds(rule: fn(&Source) -> Vec<Finding>, path: &str, text: &str) -> Vec<String> {
        rule(&Source::new(path, text))
            .iter()
            .map(ToString::to_string)
            .collect()
    }

    #[test]
    fn an_import_upwards_is_found_with_file_line_and_rule() {
        let text = "//! X.\nuse crate::units;\nuse crate::bench::Job;\n";
        assert_eq!(
            finds(imports, "plant/water.rs", text),
            ["src/plant/water.rs:3: 'plant' uses 'bench', which is above it"]
        );
        assert!(finds(imports, "expert/par.rs", text).is_empty());
    }

    #[test]
    fn strangers_groups_and_climbing_are_found() {
        assert_eq!(
            finds(imports, "plant/mod.rs", "use crate::control::Cam;\n").len(),
            1
        );
        assert_eq!(
            finds(imports, "plant/a.rs", "use crate::{units, network};\n").len(),
            1
        );
        assert_eq!(
            finds(imports, "plant/a/b.rs", "use super::super::c;\n").len(),
            1
        );
        assert_eq!(
            finds(imports, "plant/mod.rs", "use super::machine;\n").len(),
            1
        );
        assert_eq!(finds(imports, "gadgets/mod.rs", "").len(), 1);
    }

    #[test]
    fn words_count_in_code_and_not_in_comments_texts_or_tests() {
        let quiet = "//! yew\n// HashMap\nconst A: &str = \"serde\"; /* Instant */\nconst B: &str = r#\"yew \"x\"#;\n#[cfg(test)]\nmod tests {\n    use std::time::Instant;\n}\n";
        assert!(
            finds(words, "plant/a.rs", quiet).is_empty(),
            "{:?}",
            finds(words, "plant/a.rs", quiet)
        );
        assert_eq!(
            finds(words, "plant/a.rs", "use std::collections::HashMap;\n").len(),
            1
        );
        assert_eq!(
            finds(words, "machine/a.rs", "#[derive(serde::Serialize)]\n").len(),
            2
        );
        assert!(finds(words, "scenario/a.rs", "#[derive(serde::Serialize)]\n").is_empty());
        assert_eq!(finds(words, "bench/a.rs", "fn f() { panic!() }\n").len(), 1);
        assert_eq!(
            finds(
                words,
                "bench/a.rs",
                "#[cfg(test)]\nmod t { fn g() {} }\nuse yew::Html;\n"
            )
            .len(),
            1
        );
    }

    #[test]
    fn std_transcendentals_are_found_and_libm_is_not() {
        assert_eq!(
            finds(
                same_bits,
                "plant/a.rs",
                "let y = x.exp() + f64::hypot(a, b);\n"
            )
            .len(),
            2
        );
        assert!(
            finds(
                same_bits,
                "plant/a.rs",
                "let y = libm::exp(x) + x.sqrt() + a.exponent();\n"
            )
            .is_empty()
        );
    }

    #[test]
    fn an_allowance_needs_a_reason() {
        assert_eq!(
            finds(allowances, "plant/a.rs", "#[allow(dead_code)]\n").len(),
            1
        );
        let over_lines = "#[allow(\n    clippy::x,\n    reason = \"y\"\n)]\n";
        assert!(finds(allowances, "plant/a.rs", over_lines).is_empty());
        assert!(
            finds(
                allowances,
                "plant/a.rs",
                "#[allow(clippy::x, reason = \"y\")]\n"
            )
            .is_empty()
        );
    }
}
