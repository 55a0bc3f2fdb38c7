//! Erasing results: whose are past the time that their assessment sets, what is left of an erased one,
//! and the files to keep in place of those that were taken in.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::app::cohort::rows::Row;
use crate::app::cohort::rows::Rows;
use crate::app::cohort::source::Source;
use crate::assess::assessment_file::AssessmentFile;
use crate::assess::retention::due_day;
use crate::records::chain::Erased;
use crate::records::chain::erase_lines;
use crate::records::zip::TooMuch;
use crate::records::zip::Zip;
use crate::say;

/// Results of one person in one assessment that are past their time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Past {
    /// Number or pseudonym.
    pub candidate: String,
    /// Name of the assessment.
    pub assessment: String,
    /// The day since 1970 on which they were to be erased.
    pub day: i64,
    /// How many records.
    pub n: usize,
}

/// Whose results are to be erased.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Whose {
    /// All that are past their time on this day since 1970.
    Past(i64),
    /// Everything of one person.
    Person(String),
}

/// A text with what was erased in it.
pub struct Text {
    /// Which.
    pub source: usize,
    /// Its name from now on.
    pub name: String,
    /// What is left.
    pub text: String,
    /// Lines and what is left of each.
    pub erased: Vec<(usize, Erased)>,
}

/// The day on which a record is to be erased; none where its assessment does not say.
fn day_of(row: &Row, files: &[AssessmentFile]) -> Option<i64> {
    row.attempt()?;
    let file = files.iter().find(|file| file.id == row.is.assessment)?;
    due_day(&row.is.started, file.erase_after_months?)
}

/// Who is past their time on a day, by person.
pub fn past(rows: &Rows, files: &[AssessmentFile], today: i64) -> Vec<Past> {
    let mut all: BTreeMap<(&str, &str), Past> = BTreeMap::new();
    for row in rows.all() {
        let (Some(attempt), Some(day)) = (row.attempt(), day_of(row, files)) else {
            continue;
        };
        if day > today {
            continue;
        }
        let one = all
            .entry((&attempt.candidate, &row.is.assessment))
            .or_insert_with(|| Past {
                candidate: attempt.candidate.clone(),
                assessment: row.is.assessment.clone(),
                day,
                n: 0,
            });
        one.day = one.day.min(day);
        one.n += 1;
    }
    all.into_values().collect()
}

/// Lines to be erased, by text.
pub fn places(
    rows: &Rows,
    files: &[AssessmentFile],
    whose: &Whose,
) -> BTreeMap<usize, BTreeSet<usize>> {
    let is_asked = |row: &&Row| match whose {
        Whose::Past(today) => day_of(row, files).is_some_and(|day| day <= *today),
        Whose::Person(candidate) => row.attempt().is_some_and(|a| a.candidate == *candidate),
    };
    let mut places: BTreeMap<usize, BTreeSet<usize>> = BTreeMap::new();
    for row in rows.all().filter(is_asked) {
        places.entry(row.source).or_default().insert(row.line);
    }
    places
}

/// What is said once it is done.
pub fn done_words(n: usize) -> String {
    match n {
        0 => say!("Nothing was erased.").to_owned(),
        1 => {
            say!("One record is erased here. Save what is left, and delete the file it came from.")
                .to_owned()
        }
        n => say!(
            "{n} records are erased here. Save what is left, and delete the files they came from.",
            n
        ),
    }
}

/// Erases lines in texts; what could not be read is told, a sentence each.
pub async fn erased(places: Vec<(usize, Source, BTreeSet<usize>)>) -> (Vec<Text>, Vec<String>) {
    let (mut all, mut told) = (Vec::new(), Vec::new());
    for (source, of, lines) in places {
        let name = of.name.clone();
        let Ok(text) = of.text().await else {
            told.push(say!(
                "{file}: it cannot be read any more, so nothing of it was erased: drop it again.",
                file = name
            ));
            continue;
        };
        match erase_lines(&name, &text, &lines) {
            Ok((left, erased)) => all.push(Text {
                source,
                name: name_of(&name, &left, &erased),
                text: left,
                erased,
            }),
            Err(line) => told.push(say!(
                "{file}: line {line} is not the record that was taken in, so nothing of it was erased: drop it again.",
                file = name,
                line
            )),
        }
    }
    (all, told)
}

/// A file in which nobody is left is not called after anybody.
fn name_of(name: &str, left: &str, erased: &[(usize, Erased)]) -> String {
    match erased.first() {
        Some((_, first)) if left.lines().count() == erased.len() => {
            format!("erased_{}.jsonl", &first.link.to_string()[..12])
        }
        _ => name.to_owned(),
    }
}

/// All files in one archive, none over another.
///
/// # Errors
/// When the format has no room for them.
pub fn packed<'a>(files: impl Iterator<Item = (&'a str, &'a str)>) -> Result<Vec<u8>, TooMuch> {
    let (mut zip, mut names) = (Zip::default(), BTreeSet::new());
    for (at, (name, text)) in files.enumerate() {
        let name = if names.insert(name) {
            name.to_owned()
        } else {
            format!("{}/{name}", at + 1)
        };
        zip.add(&name, text.as_bytes())?;
    }
    zip.close()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::sift::Sifted;
    use crate::records::unzip;

    fn files(months: Option<u32>) -> Vec<AssessmentFile> {
        let text = include_str!("../../../scenarios/assessments/first_visits.json");
        let mut file: AssessmentFile = serde_json::from_str(text).expect("ships");
        file.erase_after_months = months;
        vec![file]
    }

    fn sifted(candidate: &str, assessment: &str, started: &str) -> Sifted {
        let zero = "0".repeat(64);
        let text = format!(
            r#"{{"attempt":{{"candidate":"{candidate}","job":"j","skills":[],"truth":[],"result":{{"ending":"closed","fixed":true,"safe":true,"total":80.0,"parts":[],"cost":1.0,"target_cost":1.0,"minutes":1.0,"safety":[],"stated":[]}}}},
            "name":null,"assessment":"{assessment}","release":"r","place":1,"started":"{started}","n_away":0,"difference":null,"seal":null,"links":["{zero}","{zero}","{zero}"]}}"#
        );
        crate::scenario::read::read_back(&text).expect("fits")
    }

    fn rows() -> Rows {
        let mut rows = Rows::default();
        let old = "2031-03-04T09:00:00Z";
        let list = vec![
            sifted("c-1", "first_visits", old),
            sifted("c-1", "first_visits", "2032-03-04T09:00:00Z"),
            sifted("c-2", "first_visits", old),
            sifted("c-3", "", old),
        ];
        rows.put(4, list, true);
        rows
    }

    #[test]
    fn what_is_past_its_time_is_told_by_person_and_practice_never_is() {
        let day = |started| due_day(started, 12).expect("a day");
        let first = day("2031-03-04T09:00:00Z");
        assert!(past(&rows(), &files(Some(12)), first - 1).is_empty());
        assert!(past(&rows(), &files(None), first + 9999).is_empty());
        let now = past(&rows(), &files(Some(12)), first);
        let who: Vec<_> = now
            .iter()
            .map(|one| (one.candidate.as_str(), one.n))
            .collect();
        assert_eq!(who, [("c-1", 1), ("c-2", 1)]);
        let later = past(&rows(), &files(Some(12)), first + 400);
        assert_eq!(later[0].n, 2);
    }

    #[test]
    fn what_is_past_or_of_one_person_is_found_by_text_and_line() {
        let files = files(Some(12));
        let today = due_day("2031-03-04T09:00:00Z", 12).expect("a day");
        let lines = places(&rows(), &files, &Whose::Past(today));
        assert_eq!(lines, BTreeMap::from([(4, BTreeSet::from([0, 2]))]));
        let one = Whose::Person("c-1".to_owned());
        assert_eq!(places(&rows(), &files, &one)[&4], BTreeSet::from([0, 1]));
        let nobody = Whose::Person("c-9".to_owned());
        assert!(places(&rows(), &files, &nobody).is_empty());
    }

    #[test]
    fn files_of_one_name_lie_side_by_side_in_the_archive() {
        let pairs = [("a.jsonl", "1\n"), ("a.jsonl", "2\n"), ("b.jsonl", "3\n")];
        let bytes = packed(pairs.into_iter()).expect("room");
        let entries = unzip::entries(&bytes).expect("an archive");
        let names: Vec<&str> = entries.iter().map(|entry| entry.name.as_str()).collect();
        assert_eq!(names, ["a.jsonl", "2/a.jsonl", "b.jsonl"]);
        let second = unzip::unpacked(&bytes, &entries[1]);
        assert_eq!(second.as_deref(), Some(&b"2\n"[..]));
    }
}
