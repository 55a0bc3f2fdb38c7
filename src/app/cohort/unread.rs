//! What is no record: one row for a file of which nothing can be read, with a plain sentence first.

use crate::app::file_kind::Kind;
use crate::app::file_kind::OpenedFile;
use crate::app::file_kind::taken;
use crate::language::in_english;
use crate::records::chain::ERASED_FORMAT;
use crate::records::record::RECORD_FORMAT;
use crate::records::seal::Hash;
use crate::records::sift::Sifted;
use crate::records::sift::nothing;
use crate::say;

/// What a text is instead of records, where no line of it can be one.
pub fn strange(name: &str, text: &str) -> Option<Sifted> {
    if [RECORD_FORMAT, ERASED_FORMAT]
        .iter()
        .any(|format| text.contains(*format))
    {
        return None;
    }
    let file = OpenedFile {
        name: name.to_owned(),
        text: Ok(text.to_owned()),
    };
    let why = || Some(taken(&file, &[Kind::Result]).err()?.words());
    Some(unread(in_english(why)?, why()?))
}

/// The row of a file that cannot be read: why, as files have it and as the reader is told it.
pub fn unread(why: String, told: String) -> Sifted {
    Sifted {
        difference: Some(why),
        told: Some(told),
        ..nothing()
    }
}

/// Lines that are no records say so plainly; where none of a file is, the first stands for all.
pub fn plainly(mut list: Vec<Sifted>) -> Vec<Sifted> {
    if list.iter().all(is_none) {
        list.truncate(1);
    }
    for one in list.iter_mut().filter(|one| is_none(one)) {
        let said = |why: String| {
            say!(
                "No whole record: damaged, cut off or of another kind. {why}",
                why
            )
        };
        one.told = one.told.take().map(said);
        one.difference = one.difference.take().map(|why| in_english(|| said(why)));
    }
    list
}

/// Neither a record of any version nor what is left of an erased one.
fn is_none(one: &Sifted) -> bool {
    one.attempt.is_none() && one.engine.is_empty() && one.links[2] == Hash([0; 32])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn none(why: &str) -> Sifted {
        let mut one = unread(why.to_owned(), String::new());
        one.told = None;
        one
    }

    #[test]
    fn a_file_of_which_nothing_can_be_read_is_one_row_that_says_so_first() {
        let list = plainly(vec![none("x.json, line 1: not JSON"), none("line 2")]);
        assert_eq!(list.len(), 1);
        let why = list[0].why().unwrap_or_default();
        assert!(
            why.starts_with("No whole record: damaged, cut off") && why.ends_with("not JSON"),
            "{why}"
        );
        let mut old = none("engine 0.0.7 wrote it");
        old.engine = "0.0.7".to_owned();
        let list = plainly(vec![old.clone(), none("line 2")]);
        assert_eq!(list.len(), 2);
        assert_eq!(list[0], old, "a record of another version stays");
    }

    #[test]
    fn what_holds_no_record_is_named_for_what_it_is() {
        let told = |text: &str| strange("x.json", text).and_then(|one| one.told);
        let words = told("Roses are red").expect("no record");
        assert!(words.contains("x.json") && words.contains("another kind"));
        assert_eq!(told(&format!("{{\"format\":\"{RECORD_FORMAT}\"}}")), None);
    }
}
