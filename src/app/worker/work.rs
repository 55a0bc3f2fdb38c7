//! The questions themselves: known to no browser, so that they are tested without one.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::LazyLock;
use std::sync::Mutex;
use std::sync::PoisonError;

use crate::app::library;
use crate::app::sitting;
use crate::app::worker::likely::hint;
use crate::app::worker::likely::likely;
use crate::app::worker::likely::reckoned;
use crate::app::worker::messages::Answer;
use crate::app::worker::messages::Question;
use crate::bench::job::Job;
use crate::bench::scenario::Scenario;
use crate::expert::crowd::Almanac;
use crate::expert::crowd::Kind;
use crate::expert::crowd::work;
use crate::expert::play;
use crate::machine::FaultDef;
use crate::machine::MachineError;
use crate::records::cohort;
use crate::records::cohort::Attempt;
use crate::records::seal::AssessmentKey;
use crate::records::sift::Against;
use crate::say;
use crate::scenario;
use crate::scenario::read::read_back;
use crate::scenario::share;
use crate::score::Crowd;
use crate::score::Fared;
use crate::score::Judge;
use crate::score::Matrix;
use crate::score::Row;
use crate::score::fared;

/// Answers a question; `told` hears how far it is.
pub fn answer(question: Question, told: &mut dyn FnMut(Answer)) -> Answer {
    match question {
        Question::Sift {
            file,
            text,
            assessments,
            replays,
        } => sift(&file, &text, &assessments, replays),
        Question::Cohort { attempts } => {
            match cohort::cohort(&read_back::<Vec<Attempt>>(&attempts).unwrap_or_default()) {
                Ok(cohort) => Answer::Cohort {
                    cohort: serde_json::to_string(&cohort).unwrap_or_default(),
                },
                Err(error) => Answer::Failed {
                    why: error.to_string(),
                },
            }
        }
        Question::Rows { machine, faults } => rows(&machine, &faults),
        of_a_job => about_a_job(of_a_job, told),
    }
}

fn about_a_job(question: Question, told: &mut dyn FnMut(Answer)) -> Answer {
    let (name, letters) = match &question {
        Question::Likely(worked)
        | Question::Reckoned(worked)
        | Question::Expert(worked)
        | Question::Hint(worked)
        | Question::Fair { worked, .. }
        | Question::Apprentice { worked, .. }
        | Question::Crowd { worked, .. } => (&worked.job, worked.letters.as_ref()),
        Question::Sift { file, .. } => (file, None),
        Question::Rows { machine, .. } => (machine, None),
        Question::Cohort { .. } => (&String::new(), None),
    };
    let own = || {
        let job = share::from_letters(name, letters?).ok()?;
        scenario::job_of(name, &job).ok().map(Arc::new)
    };
    let Some(scenario) = library::find(name).or_else(own) else {
        return Answer::Failed {
            why: say!("There is no job named “{id}”.", id = name),
        };
    };
    let answer = match question {
        Question::Likely(worked) => likely(&scenario, &worked, told),
        Question::Reckoned(worked) => reckoned(&scenario, &worked, told),
        Question::Expert(worked) => expert(&scenario, worked.seed),
        Question::Hint(worked) => hint(&scenario, &worked, told),
        Question::Fair { rows, .. } => fair(&scenario, rows, told),
        Question::Apprentice { worked, kind } => apprentice(&scenario, kind, worked.seed, told),
        Question::Crowd {
            kinds,
            runs,
            worked,
        } => crowd(&scenario, &kinds, runs, worked.seed, told).map(|fared| Answer::Crowd { fared }),
        // These are about no job and were answered above.
        Question::Sift { .. } | Question::Cohort { .. } | Question::Rows { .. } => {
            Ok(Answer::Ready)
        }
    };
    answer.unwrap_or_else(|error| Answer::Failed {
        why: say!(
            "The machine of this job cannot be set up: {why}",
            why = error
        ),
    })
}

fn sift(file: &str, text: &str, assessments: &[(String, String)], replays: bool) -> Answer {
    let library = match sitting::library() {
        Ok(library) => library,
        Err(error) => {
            return Answer::Failed {
                why: error.to_string(),
            };
        }
    };
    let read = |(text, key): &(String, String)| {
        let assessment = sitting::assessment("assessment", text).ok()?;
        Some((assessment, AssessmentKey::read(key).ok()))
    };
    let against = Against {
        library: &library,
        assessments: assessments.iter().filter_map(read).collect(),
        replays,
    };
    Answer::Sifted {
        list: serde_json::to_string(&against.file(file, text)).unwrap_or_default(),
    }
}

fn crowd(
    scenario: &Arc<Scenario>,
    kinds: &[Kind],
    runs: u32,
    seed: u64,
    told: &mut dyn FnMut(Answer),
) -> Result<Vec<Fared>, MachineError> {
    let mut of_all = 0;
    let each = runs as usize * kinds.len();
    let crowd = Crowd::new(scenario, &mut |done, of| {
        of_all = of;
        let of = of + each;
        told(Answer::Progress { done, of });
    })?;
    let mut all = Vec::new();
    for (k, kind) in kinds.iter().enumerate() {
        let mut some = Vec::new();
        for n in 0..runs {
            let done = of_all + k * runs as usize + n as usize;
            told(Answer::Progress {
                done,
                of: of_all + each,
            });
            some.push(crowd.run(*kind, seed.wrapping_add(n.into()))?);
        }
        all.push(fared(*kind, &some));
    }
    Ok(all)
}

/// What was read on a type of machine is kept for the next job on it, as long as the thread lives.
static JUDGE: LazyLock<Mutex<Judge>> = LazyLock::new(Mutex::default);

/// The sound machines that rows are held against, each read once as long as the thread lives.
static MATRICES: LazyLock<Mutex<BTreeMap<String, Matrix>>> = LazyLock::new(Mutex::default);

fn rows(machine: &str, faults: &[String]) -> Answer {
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(machine));
    let Some(pack) = pack else {
        return Answer::Failed {
            why: say!("There is no machine named “{machine}”.", machine),
        };
    };
    let mut kept = MATRICES.lock().unwrap_or_else(PoisonError::into_inner);
    if !kept.contains_key(machine) {
        match Matrix::new(&pack.model, &pack.workshop) {
            Ok(matrix) => drop(kept.insert(machine.to_owned(), matrix)),
            Err(error) => {
                return Answer::Failed {
                    why: say!(
                        "The table of this machine cannot be computed: {why}",
                        why = error
                    ),
                };
            }
        }
    }
    let matrix = kept.get(machine);
    let faults = faults.iter().filter_map(|id| pack.model.fault(id));
    let row = |fault: &FaultDef| {
        // A machine that cannot be solved has an empty row, and the next one follows.
        matrix?.row(fault).map_or_else(
            |error| {
                Some(Row {
                    fault: fault.id.clone(),
                    what: format!("{}: {error}", fault.what),
                    cells: Vec::new(),
                })
            },
            Some,
        )
    };
    Answer::Rows {
        rows: faults.filter_map(row).collect(),
    }
}

fn fair(
    scenario: &Arc<Scenario>,
    rows: Vec<Row>,
    told: &mut dyn FnMut(Answer),
) -> Result<Answer, MachineError> {
    let mut fresh = Judge::default();
    let mut kept = JUDGE.lock();
    let judge = kept.as_deref_mut().unwrap_or(&mut fresh);
    judge.take_in(scenario, rows)?;
    let lines = judge.judge(scenario, &mut |done, of| {
        told(Answer::Progress { done, of })
    })?;
    Ok(Answer::Fair { lines })
}

fn apprentice(
    scenario: &Arc<Scenario>,
    kind: Kind,
    seed: u64,
    told: &mut dyn FnMut(Answer),
) -> Result<Answer, MachineError> {
    let almanac = Almanac::of(scenario, &mut |done, of| {
        told(Answer::Progress { done, of })
    })?;
    let mut job = Job::new(Arc::clone(scenario), seed)?;
    work(&mut job, &almanac, kind, seed);
    Ok(Answer::Expert {
        log: job.log().to_vec(),
    })
}

fn expert(scenario: &Arc<Scenario>, seed: u64) -> Result<Answer, MachineError> {
    let mut job = Job::new(Arc::clone(scenario), seed)?;
    play(&mut job)?;
    Ok(Answer::Expert {
        log: job.log().to_vec(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::worker::likely::NAMED;
    use crate::app::worker::messages::Worked;
    use crate::bench::action::Action;
    use crate::bench::hint::Rung;
    use crate::bench::job::Entry;

    fn worked(job: &str) -> Worked {
        Worked {
            job: job.to_owned(),
            letters: None,
            seed: 7,
            log: Vec::new(),
        }
    }

    #[test]
    fn the_expert_works_the_same_job_from_the_bell() {
        let Answer::Expert { log } = answer(Question::Expert(worked("no_water")), &mut |_| ())
        else {
            panic!("what the expert did");
        };
        let opened = |entry: &Entry| entry.action == Action::Tap { open: true };
        assert!(log.iter().any(opened), "the expert finds the shut tap");
    }

    #[test]
    fn rows_from_the_thread_are_those_of_the_table() {
        let faults = vec!["capacitor_low".to_owned(), "belt_off".to_owned()];
        let question = Question::Rows {
            machine: "P".to_owned(),
            faults: faults.clone(),
        };
        let answer = answer(question, &mut |_| ());
        // As it crosses from the thread to the page.
        let text = serde_json::to_string(&answer).expect("finite");
        let Some(Answer::Rows { rows }) = read_back(&text) else {
            panic!("rows");
        };
        let pack = &scenario::machines().expect("sound")["P"];
        let matrix = Matrix::new(&pack.model, &pack.workshop).expect("solves");
        let should: Vec<Row> = faults
            .iter()
            .filter_map(|id| pack.model.fault(id))
            .map(|fault| matrix.row(fault).expect("solves"))
            .collect();
        assert_eq!(rows, should);
    }

    #[test]
    fn a_hint_says_something_on_every_rung() {
        let Answer::Hint { told } = answer(Question::Hint(worked("no_water")), &mut |_| ()) else {
            panic!("hints");
        };
        assert_eq!(told.len(), Rung::ALL.len());
        assert!(told.iter().all(|words| !words.is_empty()), "{told:?}");
    }

    #[test]
    fn an_untouched_job_is_as_likely_as_its_complaint_makes_it() {
        let mut told = Vec::new();
        let last = answer(Question::Likely(worked("no_water")), &mut |answer| {
            told.push(answer)
        });
        let Answer::Reckoned(reckoning) = last else {
            panic!("what the decisions were worth");
        };
        let [.., Answer::Likely(likely)] = told.as_slice() else {
            panic!("which causes were likely");
        };
        assert!(reckoning.decisions.is_empty() && reckoning.start > 0.0);
        assert!(reckoning.without_tests >= 0.99 * reckoning.start);
        assert_eq!(likely.after.len(), 1);
        assert_eq!(likely.causes.len(), NAMED);
        let sum: f64 = likely.after[0].iter().sum();
        assert!(sum > 0.1 && sum <= 1.0 + 1e-9, "{sum}");
    }

    #[test]
    fn a_job_that_does_not_ship_is_told_by_name() {
        let question = Question::Likely(worked("none_such"));
        let Answer::Failed { why } = answer(question, &mut |_| ()) else {
            panic!("a refusal");
        };
        assert!(why.contains("none_such"), "{why}");
    }
}
