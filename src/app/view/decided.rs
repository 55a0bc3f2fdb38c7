//! What each decision was worth, in plain words, from the thread's reckoning.

use crate::app::format;
use crate::app::view::likely::name;
use crate::bench::hint;
use crate::bench::job::Job;
use crate::expert::Decided;
use crate::expert::Judged;
use crate::expert::Reckoning;
use crate::expert::StepTold;
use crate::expert::next_words;
use crate::say;
use crate::score::standing;

/// Causes ruled out that are told by name; the others are counted.
const NAMED: usize = 3;
/// Things to practise that are told.
const PRACTISED: usize = 3;
/// An avoidable cost below this is not told, money unit.
const WORTH_TELLING: f64 = 0.5;

/// Sentences by step, and what to practise.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DecidedRows {
    steps: Vec<(usize, String)>,
    /// Number of the step and what would have been better, most worth while first.
    pub practise: Vec<(usize, String)>,
}

impl DecidedRows {
    /// Sentences of a step; number from 1.
    pub fn of_step(&self, number: usize) -> Vec<String> {
        let of = self.steps.iter().filter(|(step, _)| *step == number);
        of.map(|(_, words)| words.clone()).collect()
    }
}

/// The sentences of a job.
pub fn rows(job: &Job, reckoning: &Reckoning) -> DecidedRows {
    let gone = reckoning.told.iter().filter_map(|told| gone(job, told));
    let is_told = |d: &&Judged| d.p.is_some() || d.avoidable >= WORTH_TELLING;
    let decided = reckoning.decisions.iter().filter(is_told);
    let decided = decided.map(|d| (d.step, words(job, d)));
    let mut dear: Vec<&Judged> = reckoning
        .decisions
        .iter()
        .filter(|d| d.avoidable >= WORTH_TELLING)
        .collect();
    dear.sort_by(|a, b| b.avoidable.total_cmp(&a.avoidable));
    // All hints teach the same; the dearest stands for them.
    let mut n_hints = 0;
    dear.retain(|d| {
        n_hints += usize::from(d.decided == Decided::Hint);
        d.decided != Decided::Hint || n_hints == 1
    });
    DecidedRows {
        steps: gone.chain(decided).collect(),
        practise: dear
            .into_iter()
            .take(PRACTISED)
            .map(|d| (d.step, lesson(job, d)))
            .collect(),
    }
}

fn gone(job: &Job, told: &StepTold) -> Option<(usize, String)> {
    let causes = &told.ruled_out;
    if causes.is_empty() || told.step == 0 {
        return None;
    }
    let names: Vec<String> = causes.iter().take(NAMED).map(|c| name(job, &c.0)).collect();
    let more = causes.len().saturating_sub(NAMED);
    let names = names.join("; ");
    let told_words = if more > 0 {
        say!("Ruled out: {names}; and {more} more.", names, more)
    } else {
        say!("Ruled out: {names}.", names)
    };
    Some((told.step, told_words))
}

fn words(job: &Job, decided: &Judged) -> String {
    if decided.decided == Decided::Hint {
        return hint_words(job, decided);
    }
    let known = decided.p.zip(decided.justification).map(|(p, j)| {
        let sure = format!("{:.0}", 100.0 * p);
        say!(
            "What was known then gave it {sure} % to put things right: {standing}.",
            sure,
            standing = standing(j),
        )
    });
    let cost = format::money(decided.cost);
    let money = if decided.avoidable >= WORTH_TELLING {
        // More than its own cost where it led to what a better step would have spared.
        let saved = format::money(decided.avoidable);
        say!(
            "Cost {cost}; deciding otherwise would have saved {saved}.",
            cost,
            saved,
        )
    } else {
        say!("Cost {cost}.", cost)
    };
    in_a_row([known, Some(money), better(job, decided)])
}

/// Those of the sentences that there are.
fn in_a_row<const N: usize>(sentences: [Option<String>; N]) -> String {
    let there: Vec<String> = sentences.into_iter().flatten().collect();
    there.join(" ")
}

/// What was asked for, what it cost, and what it was about.
fn hint_words(job: &Job, decided: &Judged) -> String {
    let rungs = hint::of(job.log());
    let rung = rungs.iter().find(|(step, _)| *step == decided.step);
    let rung = rung.map_or(say!("a hint"), |(_, rung)| rung.words());
    let gave = say!(
        "The hint gave {rung} and counts as avoidable: {money}.",
        rung,
        money = format::money(decided.avoidable),
    );
    let next = decided.better.as_ref();
    let about = next.map(|next| {
        say!(
            "It was about: {step}.",
            step = next_words(next, job.scenario()),
        )
    });
    in_a_row([Some(gave), about])
}

fn better(job: &Job, decided: &Judged) -> Option<String> {
    let next = decided.better.as_ref()?;
    Some(say!(
        "Better then: {step}.",
        step = next_words(next, job.scenario()),
    ))
}

fn lesson(job: &Job, decided: &Judged) -> String {
    let what = match &decided.decided {
        Decided::Try => say!("Ask what a reading can still tell before taking it."),
        Decided::Work(_) => say!("Prove the cause before this repair."),
        Decided::HandOver => say!("Prove that it works before handing over."),
        Decided::Hint => say!("Work on without a hint for one step longer."),
    };
    let cost = say!(
        "It cost {money} more than it had to.",
        money = format::money(decided.avoidable),
    );
    in_a_row([Some(what.to_owned()), Some(cost), better(job, decided)])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Action;
    use crate::expert::Next;
    use crate::expert::Remedy;

    #[test]
    fn a_hint_says_which_rung_it_was_and_what_it_was_about() {
        let mut job = Job::new(library::find("no_water").expect("ships"), 7).expect("starts");
        job.act(Action::Hint);
        job.act(Action::Hint);
        let hint = |step| Judged {
            step,
            decided: Decided::Hint,
            cost: 4.0,
            avoidable: 4.0,
            justification: None,
            p: None,
            promised_bits: 0.0,
            better: Some(Next::Try("look tap".to_owned())),
        };
        let told = rows(
            &job,
            &Reckoning {
                decisions: vec![hint(1), hint(2)],
                ..Reckoning::default()
            },
        );
        assert!(told.of_step(1)[0].starts_with("The hint gave a question back"));
        let second = told.of_step(2).join(" ");
        assert!(
            second.contains("where to look") && second.contains("tap"),
            "{second}"
        );
    }

    #[test]
    fn a_repair_without_reason_says_what_was_known_and_what_was_better() {
        let scenario = library::find("no_water").expect("ships");
        let job = Job::new(scenario, 7).expect("starts");
        let judged = Judged {
            step: 4,
            decided: Decided::Work("any".to_owned()),
            cost: 40.0,
            avoidable: 30.0,
            justification: Some(0.0),
            p: Some(0.03),
            promised_bits: 0.0,
            better: Some(Next::Do(Remedy::HandOver)),
        };
        let told = rows(
            &job,
            &Reckoning {
                decisions: vec![judged],
                ..Reckoning::default()
            },
        );
        let said = told.of_step(4).join(" ");
        assert!(
            said.contains("3 %") && said.contains("not justified"),
            "{said}"
        );
        assert!(said.contains("Better then: hand over."), "{said}");
        assert_eq!(told.practise.len(), 1);
        assert!(told.of_step(3).is_empty());
    }
}
