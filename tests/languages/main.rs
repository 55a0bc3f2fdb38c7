//! Every text a person can meet can be said in every language: the files under `locales/` are compared
//! with the source, the shipped data and the handbook.
//!
//! `make words` writes `locales/en` anew: what translators translate from.

mod data;
mod files;
mod handbook;
mod message;
mod source;

use std::collections::BTreeMap;

use tubwright::language::Catalogue;
use tubwright::language::Key;

use crate::files::Language;
use crate::message::Message;

/// All messages, by the file of `locales/en` they belong in; each text once, where it is met first.
fn messages() -> BTreeMap<String, Vec<Message>> {
    let mut met: BTreeMap<Key, Message> = BTreeMap::new();
    let mut by_file: BTreeMap<String, Vec<Message>> = BTreeMap::new();
    let all = source::messages()
        .into_iter()
        .chain(data::messages())
        .chain(handbook::messages());
    for (file, message) in all {
        if let Some(before) = met.get(&message.key) {
            assert_eq!(
                (&before.english, &before.meaning),
                (&message.english, &message.meaning),
                "two texts have the same key: change one of them by a word"
            );
            continue;
        }
        met.insert(message.key, message.clone());
        by_file.entry(file).or_default().push(message);
    }
    by_file
}

#[test]
fn english_files_hold_what_the_program_says() {
    let by_file = messages();
    if std::env::var_os("TUBWRIGHT_WRITE").is_some() {
        files::write_english(&by_file);
    }
    let stored = files::english();
    for (file, list) in &by_file {
        assert!(
            stored
                .get(file)
                .is_some_and(|text| *text == files::written(list)),
            "locales/en/{file}.ftl does not hold what the program says: run 'make words'"
        );
    }
    for file in stored.keys() {
        assert!(
            by_file.contains_key(file),
            "locales/en/{file}.ftl: nothing says this any more: run 'make words'"
        );
    }
}

#[test]
fn every_text_with_values_gets_the_values_it_names() {
    let wrong: Vec<String> = source::calls()
        .into_iter()
        .filter(|call| call.named() != call.given)
        .map(|call| {
            format!(
                "{}: {:?} names {:?} and gets {:?}",
                call.place,
                call.text,
                call.named(),
                call.given
            )
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn no_language_misses_a_message_or_keeps_an_old_one() {
    let wanted: Vec<Message> = messages().into_values().flatten().collect();
    let mut wrong = Vec::new();
    for language in Language::all() {
        wrong.extend(language.differences(&wanted));
    }
    let shown: Vec<&String> = wrong.iter().take(60).collect();
    assert!(
        wrong.is_empty(),
        "{} in all, the first: {shown:#?}",
        wrong.len()
    );
}

#[test]
fn every_language_can_be_read_and_fills_its_values() {
    let wanted: Vec<Message> = messages().into_values().flatten().collect();
    for language in Language::all() {
        let catalogue = Catalogue::read(&language.code, &language.text(), '.')
            .unwrap_or_else(|error| panic!("locales/{}: {error}", language.code));
        for message in wanted.iter().filter(|message| !message.values().is_empty()) {
            let values = message.values();
            let given: Vec<(&str, &dyn std::fmt::Display)> = values
                .iter()
                .map(|name| (name.as_str(), &7 as &dyn std::fmt::Display))
                .collect();
            let said = catalogue.filled(&message.english, &given);
            assert!(
                said.is_some_and(
                    |said| !said.contains(['{', '}']) || message.english.contains("{{")
                ),
                "locales/{}: {:?} cannot be filled",
                language.code,
                message.english
            );
        }
    }
}

#[test]
fn every_language_says_its_own_name_and_what_stands_while_the_page_opens() {
    for language in Language::all() {
        for key in [
            "language-name",
            "language-numbers",
            "starting-lead",
            "starting-opening",
        ] {
            assert!(
                language.about(key).is_some(),
                "locales/{}/language.ftl: '{key}' is missing",
                language.code
            );
        }
        assert!(
            language.glossary().len() >= 80,
            "locales/{}/glossary.ftl: the words of the trade are missing",
            language.code
        );
    }
}
