//! The shape of the program, held by a test: who uses whom, who knows what, how files look.
//!
//! Each rule names the file, the line and what is wrong; DEVELOPERS.md says why it is a rule.

mod circles;
mod rules;
mod source;
mod suffix;

use source::Source;
use std::collections::BTreeSet;
use std::fs;

const LONGEST_FILE: usize = 400;

fn all(rule: impl Fn(&Source) -> Vec<String>) {
    let found: Vec<String> = source::program().iter().flat_map(rule).collect();
    assert!(
        found.is_empty(),
        "{} broken:\n{}",
        found.len(),
        found.join("\n")
    );
}

fn texts(found: Vec<rules::Finding>) -> Vec<String> {
    found.iter().map(ToString::to_string).collect()
}

#[test]
fn imports_point_downwards() {
    all(|source| texts(rules::imports(source)));
}

#[test]
fn files_import_each_other_in_no_circle() {
    let found = circles::circles(&source::program());
    let told: Vec<String> = found.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{}", told.join("\n"));
}

#[test]
fn only_the_edges_know_browser_files_clock_and_chance() {
    all(|source| texts(rules::words(source)));
}

#[test]
fn below_app_only_arithmetic_with_fixed_bits() {
    all(|source| texts(rules::same_bits(source)));
}

#[test]
fn every_allowance_says_why() {
    all(|source| texts(rules::allowances(source)));
}

#[test]
fn physical_fields_end_in_their_unit() {
    all(suffix::findings);
}

#[test]
fn every_file_says_what_it_is() {
    all(|source| {
        let first = source.text.lines().next().unwrap_or_default();
        let said = first
            .strip_prefix("//!")
            .is_some_and(|rest| !rest.trim().is_empty());
        (!said)
            .then(|| format!("src/{}:1: begins without `//!` and a sentence", source.path))
            .into_iter()
            .collect()
    });
}

#[test]
fn no_file_is_longer_than_one_idea() {
    let root = source::root();
    let long: Vec<String> = source::files(&root.join("src"), "rs")
        .into_iter()
        .chain(source::files(&root.join("tests"), "rs"))
        .filter_map(|file| {
            let lines = fs::read_to_string(&file)
                .map(|text| text.lines().count())
                .unwrap_or_default();
            (lines > LONGEST_FILE).then(|| {
                format!(
                    "{}:{lines}: longer than {LONGEST_FILE} lines: split it by idea",
                    file.strip_prefix(&root).unwrap_or(&file).display()
                )
            })
        })
        .collect();
    assert!(long.is_empty(), "{}", long.join("\n"));
}

#[test]
fn no_module_is_a_drawer_for_everything() {
    all(|source| {
        let bad = source
            .path
            .split(['/', '.'])
            .any(|part| matches!(part, "misc" | "utils" | "util" | "helpers" | "common"));
        bad.then(|| {
            format!(
                "src/{}:1: the name says nothing: name the idea",
                source.path
            )
        })
        .into_iter()
        .collect()
    });
}

#[test]
fn the_map_names_every_file_and_no_other() {
    let page = fs::read_to_string(source::root().join("DEVELOPERS.md"))
        .expect("DEVELOPERS.md stands at the top");
    let map = page
        .split("<!-- map -->")
        .nth(1)
        .expect("DEVELOPERS.md holds a map between two <!-- map --> marks");
    let named: BTreeSet<&str> = map
        .split('`')
        .filter(|word| word.ends_with(".rs"))
        .collect();
    let sources = source::program();
    let present: BTreeSet<&str> = sources.iter().map(|source| source.path.as_str()).collect();
    let missing: Vec<_> = present.difference(&named).collect();
    let gone: Vec<_> = named.difference(&present).collect();
    assert!(
        missing.is_empty() && gone.is_empty(),
        "run .ci/map; the map in DEVELOPERS.md lacks {missing:?} and names {gone:?}, which are gone"
    );
}

#[test]
fn the_page_links_every_style_sheet() {
    let root = source::root();
    let page = fs::read_to_string(root.join("index.html")).expect("index.html stands at the top");
    let lost: Vec<_> = source::files(&root.join("styles"), "css")
        .into_iter()
        .map(|file| {
            file.strip_prefix(&root)
                .unwrap_or(&file)
                .to_string_lossy()
                .replace('\\', "/")
        })
        .filter(|sheet| !page.contains(&format!("href=\"{sheet}\"")))
        .collect();
    assert!(lost.is_empty(), "index.html links no {lost:?}");
}
