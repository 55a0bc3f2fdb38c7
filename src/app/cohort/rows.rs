//! All records taken in, and what follows from them: the rows of candidates, what is accepted, what
//! counts. Knows no browser.

use std::collections::BTreeMap;
use std::collections::BTreeSet;

use crate::records::chain;
use crate::records::chain::Erased;
use crate::records::check::ENGINE;
use crate::records::cohort::Attempt;
use crate::records::rulings::Ruling;
use crate::records::rulings::is_void;
use crate::records::seal::Hash;
use crate::records::sift::Sifted;
use crate::say;

/// A record and where it is read again.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Which text.
    pub source: usize,
    /// Which line of it, from 0.
    pub line: usize,
    /// What is known of it.
    pub is: Sifted,
    /// Its log was run again.
    pub replayed: bool,
}

impl Row {
    /// Its attempt; none for what could not be read, or was erased.
    pub fn attempt(&self) -> Option<&Attempt> {
        self.is.attempt.as_ref()
    }

    /// Another engine wrote it: it can be read here, not run again.
    pub fn is_foreign(&self) -> bool {
        self.can_be_read() && self.is.engine != ENGINE
    }

    /// It is a record of some engine, whatever else is wrong with it.
    pub fn can_be_read(&self) -> bool {
        !self.is.engine.is_empty()
    }
}

/// A record that is not accepted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// Whose, and which job; empty where it cannot be read.
    pub who: String,
    /// The first thing that does not hold, as files have it.
    pub why: String,
    /// The same as the reader is told it.
    pub told: String,
    /// Where it can be read as it was written; none for what is no record.
    pub read: Option<(usize, usize)>,
}

/// All of them.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Rows {
    by_source: BTreeMap<usize, Vec<Row>>,
}

impl Rows {
    /// Takes over what came of a text, in place of what was known of it.
    pub fn put(&mut self, source: usize, list: Vec<Sifted>, replayed: bool) {
        let rows = list.into_iter().enumerate().map(|(line, is)| Row {
            source,
            line,
            is,
            replayed,
        });
        self.by_source.insert(source, rows.collect());
    }

    /// All rows.
    pub fn all(&self) -> impl Iterator<Item = &Row> {
        self.by_source.values().flatten()
    }

    /// A text holds records.
    pub fn has(&self, source: usize) -> bool {
        self.by_source
            .get(&source)
            .is_some_and(|rows| !rows.is_empty())
    }

    /// Rows that count: accepted so far, the job not voided.
    pub fn counting<'a>(
        &'a self,
        rulings: &'a [Ruling],
    ) -> impl Iterator<Item = (&'a Row, &'a Attempt)> {
        self.all()
            .filter(|row| row.is.difference.is_none())
            .filter_map(|row| {
                let attempt = row.is.attempt.as_ref()?;
                let void = is_void(rulings, &attempt.job, &row.is.assessment);
                (!void).then_some((row, attempt))
            })
    }

    /// Assessments that records are of, by name; practice has an empty one.
    pub fn assessments(&self) -> BTreeSet<String> {
        let with_attempt = self.all().filter(|row| row.is.attempt.is_some());
        with_attempt.map(|row| row.is.assessment.clone()).collect()
    }

    /// Everybody of whom there is a record, by number.
    pub fn people(&self) -> BTreeSet<String> {
        let attempts = self.all().filter_map(Row::attempt);
        attempts.map(|attempt| attempt.candidate.clone()).collect()
    }

    /// People of whom nothing counts since each job that they opened was voided.
    pub fn voided(&self, rulings: &[Ruling]) -> BTreeSet<String> {
        let counted: BTreeSet<&str> = self
            .counting(rulings)
            .map(|(_, attempt)| attempt.candidate.as_str())
            .collect();
        self.counting(&[])
            .map(|(_, attempt)| &attempt.candidate)
            .filter(|candidate| !counted.contains(candidate.as_str()))
            .cloned()
            .collect()
    }

    /// Jobs of which something counts, each with the assessments it counts in.
    pub fn jobs(&self, rulings: &[Ruling]) -> BTreeMap<String, BTreeSet<String>> {
        let mut jobs: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for (row, attempt) in self.counting(rulings) {
            let of = jobs.entry(attempt.job.clone()).or_default();
            of.insert(row.is.assessment.clone());
        }
        jobs
    }

    /// Records of a text were erased: what is left of each takes its place.
    pub fn erase(&mut self, source: usize, erased: &[(usize, Erased)]) {
        for row in self.by_source.entry(source).or_default() {
            if let Some((_, left)) = erased.iter().find(|(line, _)| *line == row.line) {
                row.is = Sifted::erased(left);
            }
        }
    }

    /// Rows that the numbers are of: of several attempts of one person at one job the first.
    pub fn first<'a>(&'a self, rulings: &'a [Ruling]) -> Vec<(&'a Row, &'a Attempt)> {
        let mut seen = BTreeSet::new();
        self.counting(rulings)
            .filter(|(_, a)| seen.insert((a.candidate.as_str(), a.job.as_str())))
            .collect()
    }

    /// Files in which something does not hold: where, and what.
    pub fn refused(&self) -> Vec<Refused> {
        let one = |row: &Row| {
            let why = row.is.difference.clone()?;
            let told = row.is.why().unwrap_or_default().to_owned();
            let who = row
                .is
                .attempt
                .as_ref()
                .map_or_else(String::new, |a| format!("{}, {}", a.candidate, a.job));
            let read = row.can_be_read().then_some((row.source, row.line));
            Some(Refused {
                who,
                why,
                told,
                read,
            })
        };
        self.all().filter_map(one).collect()
    }

    /// Candidates whose records are no unbroken row: one was dropped or added.
    pub fn broken(&self) -> Vec<String> {
        type Group<'a> = BTreeMap<(&'a str, Hash), Vec<(Hash, Hash)>>;
        let mut groups: Group<'_> = BTreeMap::new();
        let mut erased: Vec<(Hash, Hash)> = Vec::new();
        for row in self.all() {
            let [root, previous, link] = row.is.links;
            match &row.is.attempt {
                Some(attempt) if row.is.place > 0 => {
                    groups
                        .entry((&attempt.candidate, root))
                        .or_default()
                        .push((previous, link));
                }
                None if link != Hash([0; 32]) => erased.push((previous, link)),
                _ => {}
            }
        }
        groups
            .into_iter()
            .filter_map(|((candidate, root), mut links)| {
                links.sort_unstable();
                // The same record twice is one.
                links.dedup();
                while let Some(at) = erased.iter().position(|(previous, _)| {
                    *previous == root || links.iter().any(|(_, link)| link == previous)
                }) {
                    links.push(erased.swap_remove(at));
                }
                let broken = chain::order(root, &links).err()?;
                Some(say!("{candidate}: {broken}", candidate, broken))
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::rulings::About;

    fn sifted(candidate: &str, job: &str, place: u32, links: [u8; 3]) -> Sifted {
        let text = format!(
            r#"{{"attempt":{{"candidate":"{candidate}","job":"{job}","skills":[],"truth":[],"result":{{"ending":"closed","fixed":true,"safe":true,"total":80.0,"parts":[],"cost":1.0,"target_cost":1.0,"minutes":1.0,"safety":[],"stated":[]}}}},
            "name":null,"assessment":"a","release":"r","place":{place},"started":"","n_away":0,"difference":null,"seal":null,"links":["{}","{}","{}"]}}"#,
            format!("{:02x}", links[0]).repeat(32),
            format!("{:02x}", links[1]).repeat(32),
            format!("{:02x}", links[2]).repeat(32),
        );
        crate::scenario::read::read_back(&text).expect("fits")
    }

    #[test]
    fn a_dropped_record_is_told_and_one_that_came_twice_is_not() {
        let mut rows = Rows::default();
        let first = sifted("c-1", "j1", 1, [1, 1, 2]);
        let third = sifted("c-1", "j3", 3, [1, 3, 4]);
        rows.put(0, vec![first.clone(), third.clone()], false);
        assert_eq!(rows.broken().len(), 1);
        rows.put(1, vec![sifted("c-1", "j2", 2, [1, 2, 3]), first], false);
        assert!(rows.broken().is_empty(), "{:?}", rows.broken());
        rows.put(2, vec![sifted("c-1", "j9", 2, [1, 2, 9])], false);
        assert_eq!(rows.broken().len(), 1, "one was added");
    }

    #[test]
    fn an_erased_record_keeps_its_place_in_the_row() {
        let mut rows = Rows::default();
        rows.put(
            0,
            vec![
                sifted("c-1", "j1", 1, [1, 1, 2]),
                sifted("c-1", "j3", 3, [1, 3, 4]),
            ],
            false,
        );
        let mut gone = sifted("c-1", "j2", 2, [2, 2, 3]);
        (gone.attempt, gone.place) = (None, 0);
        rows.put(1, vec![gone], false);
        assert!(rows.broken().is_empty(), "{:?}", rows.broken());
    }

    #[test]
    fn what_another_engine_wrote_is_offered_to_be_read_and_what_is_no_record_is_not() {
        let mut old = sifted("c-1", "j1", 1, [1, 1, 2]);
        old.engine = "0.0.7".to_owned();
        old.difference = Some("engine 0.0.7 wrote it".to_owned());
        let mut own = sifted("c-2", "j1", 1, [3, 3, 4]);
        own.engine = ENGINE.to_owned();
        let mut none = sifted("c-3", "j1", 1, [5, 5, 6]);
        none.difference = Some("not JSON".to_owned());
        let mut rows = Rows::default();
        rows.put(3, vec![old, own, none], true);
        let foreign: Vec<bool> = rows.all().map(Row::is_foreign).collect();
        assert_eq!(foreign, [true, false, false]);
        let read: Vec<_> = rows.refused().into_iter().map(|one| one.read).collect();
        assert_eq!(read, [Some((3, 0)), None]);
    }

    #[test]
    fn a_voided_job_counts_for_nobody() {
        let mut rows = Rows::default();
        rows.put(
            0,
            vec![
                sifted("c-1", "j1", 1, [1, 1, 2]),
                sifted("c-2", "j2", 1, [5, 5, 6]),
            ],
            true,
        );
        let void = Ruling::new(
            About::Job("j1".to_owned()),
            "void",
            "N. Judge",
            "2031-03-04",
            "wrong tap",
        )
        .expect("stands");
        let void = [void];
        let left: Vec<String> = rows.counting(&void).map(|(_, a)| a.job.clone()).collect();
        assert_eq!(left, ["j2"]);
        // Whom that leaves with nothing is still known.
        assert_eq!(rows.voided(&void), BTreeSet::from(["c-1".to_owned()]));
        assert!(rows.voided(&[]).is_empty());
    }

    #[test]
    fn a_job_voided_in_one_assessment_counts_in_another() {
        let mut rows = Rows::default();
        let mut spring = sifted("c-2", "j1", 1, [5, 5, 6]);
        spring.assessment = "spring".to_owned();
        rows.put(0, vec![sifted("c-1", "j1", 1, [1, 1, 2]), spring], true);
        let about = About::Job("j1".to_owned());
        let void = Ruling::new(about, "void", "N. Judge", "2031-03-04", "wrong tap")
            .expect("stands")
            .within("a");
        assert_eq!(rows.jobs(&[])["j1"].len(), 2);
        let left = rows.jobs(&[void]);
        assert_eq!(left["j1"], BTreeSet::from(["spring".to_owned()]));
        assert_eq!(rows.assessments().len(), 2);
    }

    #[test]
    fn what_is_erased_here_leaves_the_row_of_the_others_whole() {
        let mut rows = Rows::default();
        let all = [[1, 1, 2], [1, 2, 3], [1, 3, 4]];
        let list = all
            .iter()
            .zip(1..)
            .map(|(links, place)| sifted("c-1", "j", place, *links));
        rows.put(0, list.collect(), true);
        let hash = |byte: u8| Hash([byte; 32]);
        let left = Erased {
            format: chain::ERASED_FORMAT.to_owned(),
            body: hash(9),
            previous: hash(2),
            link: hash(3),
            seal: None,
        };
        rows.erase(0, &[(1, left)]);
        assert!(rows.broken().is_empty(), "{:?}", rows.broken());
        assert_eq!(rows.counting(&[]).count(), 2);
    }

    #[test]
    fn a_second_attempt_at_a_job_is_no_evidence() {
        let mut rows = Rows::default();
        let first = sifted("c-1", "j1", 1, [1, 1, 2]);
        let other = sifted("c-1", "j2", 2, [1, 2, 3]);
        rows.put(0, vec![first, other], true);
        rows.put(1, vec![sifted("c-1", "j1", 1, [7, 7, 8])], true);
        let kept: Vec<(usize, &str)> = rows
            .first(&[])
            .into_iter()
            .map(|(row, a)| (row.source, a.job.as_str()))
            .collect();
        assert_eq!(kept, [(0, "j1"), (0, "j2")]);
    }
}
