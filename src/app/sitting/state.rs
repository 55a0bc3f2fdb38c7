//! An assessment as it is being sat: who, which one, how much time is used, when the page was left,
//! and in the end its records. Knows no browser and no clock.

use serde::Deserialize;
use serde::Serialize;

use crate::app::sitting::room::RoomPauses;
use crate::records::record::Person;
use crate::records::record::Record;
use crate::scenario::read::read_back;

/// The format this version keeps and reads.
pub const FORMAT: &str = "tubwright-sitting-1";
/// A moment off the page shorter than this is none, ms.
const SHORTEST_AWAY_MS: f64 = 1500.0;
/// Longest time that a gap between two visits may count, s: a day; a clock set wrong counts no more.
const LONGEST_GAP_S: f64 = 86_400.0;

/// What is kept of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sitting {
    /// `tubwright-sitting-1`.
    pub format: String,
    /// Version of the engine; another one cannot go on with it.
    pub engine: String,
    /// The assessment's file.
    pub text: String,
    /// Number or pseudonym.
    pub candidate: String,
    /// Name, where one was given.
    pub person: Option<Person>,
    /// The number of the learner for whom a training system has started it; none where none has.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub learner: Option<String>,
    /// Code released at the start.
    pub release: String,
    /// Start code, as letters; none for practice.
    pub code: Option<String>,
    /// Extra time, min. Never shown.
    pub extra_min: u32,
    /// It began, ms since 1970 by the browser's clock.
    pub started_ms: f64,
    /// Time used, s.
    pub used_s: f64,
    /// Last seen running, ms since 1970.
    pub seen_ms: f64,
    /// The candidate has stopped the clock.
    pub paused: bool,
    /// Pauses of the whole room, by the instructor’s codes.
    #[serde(default)]
    pub room: RoomPauses,
    /// When the page was left and found again, ms since it began.
    pub away_ms: Vec<[f64; 2]>,
    /// When each job was first opened, ms since 1970.
    pub opened_ms: Vec<(u32, f64)>,
    /// The records, once it is handed in.
    pub records: Vec<Record>,
    /// Handing in was asked for: from then on it goes on by itself, after a reload too.
    #[serde(default)]
    pub closing: bool,
    /// It is handed in.
    pub handed_in: bool,
    /// Its records are not here: there was no room for them where it was kept.
    #[serde(default)]
    pub is_bare: bool,
}

impl Sitting {
    /// One that begins now.
    pub fn new(text: String, candidate: String, engine: &str, now_ms: f64) -> Self {
        Self {
            format: FORMAT.to_owned(),
            engine: engine.to_owned(),
            text,
            candidate,
            person: None,
            learner: None,
            release: String::new(),
            code: None,
            extra_min: 0,
            started_ms: now_ms,
            used_s: 0.0,
            seen_ms: now_ms,
            paused: false,
            room: RoomPauses::default(),
            away_ms: Vec::new(),
            opened_ms: Vec::new(),
            records: Vec::new(),
            closing: false,
            handed_in: false,
            is_bare: false,
        }
    }

    /// Reads what was kept; `None` for anything else.
    pub fn read(text: &str) -> Option<Self> {
        let read: Self = read_back(text)?;
        let numbers = [read.started_ms, read.used_s, read.seen_ms];
        (read.format == FORMAT && numbers.iter().all(|n| n.is_finite())).then_some(read)
    }

    /// The candidate is at work and the clock matters.
    pub fn is_running(&self) -> bool {
        !self.handed_in
    }

    /// The clock stands, by the candidate or for the whole room, or since it is being handed in.
    pub fn stands(&self) -> bool {
        self.paused || self.closing || self.room.is_paused()
    }

    /// It is the very same sitting, however far each of them has got.
    pub fn is_same(&self, other: &Self) -> bool {
        let began = |own: &Self| own.started_ms.to_bits();
        (began(self), &self.candidate, &self.text) == (began(other), &other.candidate, &other.text)
    }

    /// Of the same sitting this one has got at least as far.
    pub fn is_as_far_as(&self, other: &Self) -> bool {
        self.handed_in || (!other.handed_in && self.used_s >= other.used_s)
    }

    /// Time has passed on the page, by a clock that only goes forward. Once it is handed in nothing
    /// changes any more: when it ended is told to stores, and each time the same.
    pub fn pass(&mut self, elapsed_s: f64, now_ms: f64) {
        if !self.is_running() {
            return;
        }
        if !self.stands() {
            self.used_s += elapsed_s.clamp(0.0, LONGEST_GAP_S);
        }
        self.seen_ms = now_ms;
    }

    /// The page was closed or hidden from `left_ms` on and is back. `counts` says that the clock was
    /// not running meanwhile. A clock that was set back counts as no time.
    pub fn back(&mut self, left_ms: f64, now_ms: f64, counts: bool) {
        if !self.is_running() {
            return;
        }
        let gap_ms = now_ms - left_ms;
        if gap_ms >= SHORTEST_AWAY_MS && !self.stands() {
            let since = |ms: f64| (ms - self.started_ms).max(0.0);
            self.away_ms.push([since(left_ms), since(now_ms)]);
        }
        if counts {
            self.pass(gap_ms / 1000.0, now_ms);
        }
    }

    /// Time left, s; `limit_min` is the assessment's.
    pub fn left_s(&self, limit_min: f64) -> f64 {
        ((limit_min + f64::from(self.extra_min)) * 60.0 - self.used_s).max(0.0)
    }

    /// When a job was first opened, ms since 1970.
    pub fn opened(&self, place: u32) -> Option<f64> {
        let found = self.opened_ms.iter().find(|(at, _)| *at == place);
        found.map(|(_, ms)| *ms)
    }

    /// When the page was left during one job, s since that job was opened.
    pub fn away_of(&self, place: u32) -> Vec<[u32; 2]> {
        let Some(opened) = self.opened(place) else {
            return Vec::new();
        };
        let from = opened - self.started_ms;
        let next = self
            .opened_ms
            .iter()
            .map(|(_, ms)| *ms)
            .filter(|other| *other > opened);
        let until = next.fold(f64::INFINITY, f64::min) - self.started_ms;
        let whole_s = |ms: f64| ((ms - from).max(0.0) / 1000.0).round() as u32;
        let mine = |[left, back]: &&[f64; 2]| *back > from && *left < until;
        self.away_ms
            .iter()
            .filter(mine)
            .map(|[left, back]| [whole_s(*left), whole_s(*back)])
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::records::room_pause;
    use crate::records::seal::AssessmentKey;

    fn sitting() -> Sitting {
        Sitting::new("{}".to_owned(), "c-1".to_owned(), "0.1.0", 1_000_000.0)
    }

    #[test]
    fn time_runs_while_the_page_is_there_or_closed_and_stands_while_paused() {
        let mut own = sitting();
        own.pass(60.0, 1_060_000.0);
        own.back(1_060_000.0, 1_120_000.0, true);
        assert!((own.used_s - 120.0).abs() < 1e-9);
        own.paused = true;
        own.pass(600.0, 1_720_000.0);
        own.back(1_720_000.0, 9_000_000.0, true);
        assert!((own.used_s - 120.0).abs() < 1e-9 && own.away_ms.len() == 1);
        own.extra_min = 30;
        assert!((own.left_s(60.0) - 88.0 * 60.0).abs() < 1e-9);
    }

    #[test]
    fn time_that_the_room_pauses_counts_for_nobody_and_outlives_a_reload() {
        let key = AssessmentKey::new([9; 32]);
        let (codes, anchor) = (room_pause::codes(&key), room_pause::anchor(&key));
        let mut own = sitting();
        own.pass(60.0, 1_060_000.0);
        assert_eq!(own.room.enter(&anchor, &codes[0], 1_060_000.0), Ok(()));
        let text = serde_json::to_string(&own).expect("finite");
        let mut own = Sitting::read(&text).expect("reads");
        own.back(1_060_000.0, 1_360_000.0, true);
        own.pass(60.0, 1_420_000.0);
        assert!((own.used_s - 60.0).abs() < 1e-9 && own.away_ms.is_empty());
        assert_eq!(own.room.enter(&anchor, &codes[1], 1_420_000.0), Ok(()));
        own.pass(30.0, 1_450_000.0);
        assert!((own.used_s - 90.0).abs() < 1e-9);
    }

    #[test]
    fn when_it_was_handed_in_stays_as_it_was() {
        let mut own = sitting();
        own.pass(60.0, 1_060_000.0);
        own.handed_in = true;
        own.pass(60.0, 1_120_000.0);
        assert!((own.seen_ms - 1_060_000.0).abs() < 1e-9 && (own.used_s - 60.0).abs() < 1e-9);
    }

    #[test]
    fn a_clock_that_was_set_back_or_wildly_forward_takes_no_more_than_a_day() {
        let mut own = sitting();
        own.back(1_060_000.0, 500_000.0, true);
        assert!(own.used_s.abs() < 1e-9 && own.away_ms.is_empty());
        own.back(500_000.0, 9e12, true);
        assert!((own.used_s - LONGEST_GAP_S).abs() < 1e-9);
    }

    #[test]
    fn leaving_is_told_of_the_job_that_was_open() {
        let mut own = sitting();
        own.opened_ms.push((1, 1_000_000.0));
        own.opened_ms.push((2, 1_100_000.0));
        own.back(1_030_000.0, 1_050_000.0, false);
        own.back(1_110_000.0, 1_111_000.0, false);
        own.back(1_130_000.0, 1_160_000.0, false);
        assert_eq!(own.away_of(1), [[30, 50]]);
        assert_eq!(own.away_of(2), [[30, 60]]);
        assert!(own.away_of(3).is_empty());
    }

    #[test]
    fn a_sitting_kept_by_an_earlier_version_has_no_pauses_of_the_room() {
        let text = serde_json::to_string(&sitting()).expect("finite");
        let old = text.replace(r#""room":{"last":0,"all":[]},"#, "");
        assert_ne!(old, text);
        assert_eq!(Sitting::read(&old), Some(sitting()));
    }

    #[test]
    fn what_was_kept_is_read_back_and_foreign_text_is_nothing() {
        let mut own = sitting();
        own.opened_ms.push((2, 1_100_000.0));
        own.back(1_030_000.0, 1_050_000.0, true);
        let text = serde_json::to_string(&own).expect("finite");
        assert_eq!(Sitting::read(&text), Some(own));
        for text in ["", "{}", "[]"] {
            assert_eq!(Sitting::read(text), None);
        }
    }

    #[test]
    fn what_is_handed_in_is_further_than_anything_that_goes_on() {
        let (mut one, mut other) = (sitting(), sitting());
        other.pass(60.0, 1_060_000.0);
        assert!(one.is_same(&other) && other.is_as_far_as(&one) && !one.is_as_far_as(&other));
        one.handed_in = true;
        assert!(one.is_as_far_as(&other) && !other.is_as_far_as(&one));
        other.started_ms += 1.0;
        assert!(!one.is_same(&other), "another attempt");
    }

    #[test]
    fn while_it_is_being_handed_in_no_time_counts() {
        let mut own = sitting();
        own.closing = true;
        own.pass(60.0, 1_060_000.0);
        own.back(1_060_000.0, 1_120_000.0, true);
        assert!(own.used_s.abs() < 1e-9 && own.away_ms.is_empty());
    }
}
