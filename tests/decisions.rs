//! One shipped job worked in five ways: skill shows in what each decision was worth and in the marks,
//! luck does not. The same ways as the reference runs `RUN_*` of `tests/expert_rows`.

mod stored;

use std::sync::Arc;
use std::sync::LazyLock;

use rayon::prelude::*;
use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::hint::Rung;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::Decided;
use tubwright::expert::Judged;
use tubwright::expert::Reckoning;
use tubwright::expert::Seen;
use tubwright::expert::Start;
use tubwright::expert::hints;
use tubwright::scenario::jobs;
use tubwright::score::Basis;
use tubwright::score::Report;
use tubwright::score::assess;
use tubwright::score::formula::Minimum;
use tubwright::score::formula::Verdict;

use crate::stored::assert_stands;

const SEED: u64 = 1;
const LOG: &str = include_str!("jobs/washes_will_not_spin.json");
const RIGHT: &str = "push_home_board_plug_3";

fn scenario() -> Arc<Scenario> {
    let all = jobs().expect("shipped files are sound");
    all.into_iter()
        .find(|s| s.id == "washes_will_not_spin")
        .expect("ships")
}

/// Acts with the wait before each, ticks.
fn careful(scenario: &Arc<Scenario>) -> Vec<(u64, Action)> {
    let log: Vec<Entry> = serde_json::from_str(LOG).expect("a log");
    let (_, outcomes) = Job::replay(Arc::clone(scenario), SEED, &log).expect("starts");
    let mut ended = 0;
    log.into_iter()
        .zip(outcomes)
        .map(|(entry, outcome)| {
            let wait = entry.tick.saturating_sub(ended);
            ended = entry.tick + outcome.ticks;
            (wait, entry.action)
        })
        .collect()
}

/// A run with its marks.
struct Run {
    job: Job,
    reckoning: Reckoning,
    report: Report,
}

/// The job's beginning, which all runs share.
static START: LazyLock<Start> = LazyLock::new(|| {
    let seen = Seen::at_the_door(&scenario());
    Start::new(&seen).expect("can be reckoned up")
});

fn worked(scenario: &Arc<Scenario>, acts: &[(u64, Action)]) -> Run {
    let mut job = Job::new(Arc::clone(scenario), SEED).expect("starts");
    for (wait, action) in acts {
        job.advance(*wait);
        let outcome = job.act(action.clone());
        assert_eq!(outcome.refusal, None, "{action:?}");
    }
    let seen = Seen::of(&job).expect("can be seen");
    let (reckoning, _) = START.reckon(&seen, &mut |_| ()).expect("reckoned up");
    marked(job, reckoning)
}

fn marked(job: Job, reckoning: Reckoning) -> Run {
    let report = assess(&job).expect("can be marked");
    let report = report.judged(&job, &reckoning);
    println!(
        "avoidable {:.1} of {:.1}, cost {:.1}, total {:.1} {:?} {:?}",
        reckoning.avoidable(),
        reckoning.start,
        report.cost,
        report.total,
        report.shares,
        report.verdict,
    );
    Run {
        job,
        reckoning,
        report,
    }
}

fn missed(run: &Run) -> &[Minimum] {
    match &run.report.verdict {
        Verdict::NotYet(missed) => missed,
        _ => &[],
    }
}

/// How far the repair that mattered was justified when it was done.
fn justification(reckoning: &Reckoning) -> f64 {
    let is_right = |d: &&Judged| d.decided == Decided::Work(RIGHT.to_owned());
    let right = reckoning.decisions.iter().find(is_right);
    right.and_then(|d| d.justification).expect("it was judged")
}

fn repair_at(acts: &[(u64, Action)]) -> usize {
    let is_right = |a: &Action| matches!(a, Action::Work { work, .. } if work == RIGHT);
    acts.iter()
        .position(|(_, a)| is_right(a))
        .expect("repaired")
}

/// Straight to the repair: made safe, opened, nothing looked at or measured before.
fn guessed(acts: &[(u64, Action)]) -> Vec<(u64, Action)> {
    let at = repair_at(acts);
    let unplugged = acts
        .iter()
        .position(|(_, a)| matches!(a, Action::Plug { inserted: false }));
    let looks = |k: usize, action: &Action| match action {
        Action::Ask { .. } | Action::Note | Action::Sense { .. } | Action::Turn { .. } => true,
        Action::Key { .. } => Some(k) < unplugged,
        Action::Meter { mode, .. } => *mode == MeterMode::Ohms,
        _ => false,
    };
    let kept = acts
        .iter()
        .enumerate()
        .filter(|(k, (_, a))| *k >= at || !looks(*k, a));
    kept.map(|(_, act)| act.clone()).collect()
}

fn with_more(acts: &[(u64, Action)], more: &[Action]) -> Vec<(u64, Action)> {
    let at = repair_at(acts);
    let mut longer = acts[..at].to_vec();
    longer.extend(more.iter().map(|action| (0, action.clone())));
    longer.extend_from_slice(&acts[at..]);
    longer
}

/// Everything that is looked at or noted once the plug is out comes three times, with long pauses.
fn dawdled(acts: &[(u64, Action)]) -> Vec<(u64, Action)> {
    let out = acts
        .iter()
        .position(|(_, a)| matches!(a, Action::Plug { inserted: false }));
    let mut longer = Vec::new();
    for (k, act) in acts.iter().enumerate() {
        longer.push(act.clone());
        let is_seen = matches!(&act.1, Action::Sense { .. } | Action::Note);
        if is_seen && Some(k) > out && k < repair_at(acts) {
            longer.extend(std::iter::repeat_n((1800, act.1.clone()), 3));
        }
    }
    longer
}

/// All covers off and the plug pushed home while it runs; nothing is proved afterwards.
fn live(acts: &[(u64, Action)]) -> Vec<(u64, Action)> {
    let at = repair_at(acts);
    let is_switch = |(_, a): &(u64, Action)| {
        *a == Action::Key {
            key: PanelKey::Power,
        }
    };
    let off = acts[..at].iter().rposition(is_switch);
    let on = acts[at..].iter().position(is_switch).map(|k| at + k);
    let makes_safe = |action: &Action| {
        matches!(
            action,
            Action::Plug { .. } | Action::Secure | Action::Tap { .. } | Action::BleedHose
        )
    };
    let is_test = |k: usize, a: &Action| k > at && matches!(a, Action::Meter { .. } | Action::Note);
    let kept = acts.iter().enumerate().filter(|(k, (_, a))| {
        let is_left_on = Some(*k) == off || Some(*k) == on;
        !is_left_on && !makes_safe(a) && !is_test(*k, a)
    });
    kept.map(|(_, act)| act.clone()).collect()
}

#[test]
fn skill_shows_in_the_marks_and_luck_does_not() {
    let scenario = scenario();
    let careful = careful(&scenario);
    let guess = guessed(&careful);
    let parts: Vec<Action> = ["replace_control_board", "replace_run_capacitor"]
        .iter()
        .map(|work| Action::Work {
            work: (*work).to_owned(),
            check: true,
        })
        .collect();
    let mut swapped = with_more(&guess, &parts);
    swapped.retain(|(_, a)| !matches!(a, Action::Advise { .. }));
    let asked = with_more(&careful, &[Action::Hint, Action::Hint]);
    let ways = [
        careful.clone(),
        dawdled(&careful),
        live(&careful),
        guess,
        swapped,
        asked,
    ];
    let runs: Vec<Run> = ways
        .par_iter()
        .map(|acts| worked(&scenario, acts))
        .collect();
    let [expert, slow, unsafe_run, lucky, shotgun, asked] = &runs[..] else {
        panic!("six runs");
    };
    assert!(expert.reckoning.avoidable() < 0.15 * expert.reckoning.start);
    assert!(justification(&expert.reckoning) > 0.9);
    assert_eq!(expert.report.basis, Basis::Decisions);
    assert_eq!(expert.report.verdict, Verdict::Excellent);

    assert!(missed(slow).is_empty(), "{:?}", slow.report);
    assert!(slow.report.shares.economy < 0.9 * expert.report.shares.economy);

    assert!(missed(unsafe_run).contains(&Minimum::Gate));
    assert!(unsafe_run.report.total <= 39.0);

    // Straight to the right repair: the cheapest of all, and without reason.
    assert!(justification(&lucky.reckoning) < 0.2);
    assert!(lucky.reckoning.avoidable() > expert.reckoning.avoidable() + 5.0);
    assert!(lucky.report.fixed && lucky.job.cost() < expert.job.cost());
    assert!(missed(lucky).contains(&Minimum::Evidence));
    assert!(lucky.report.shares.diagnosis > 0.9, "it was right");
    assert!(
        lucky.report.shares.effective_diagnosis() < 0.6,
        "and it was a guess"
    );

    assert!(shotgun.reckoning.avoidable() > lucky.reckoning.avoidable() + 50.0);
    let dearest = shotgun
        .reckoning
        .decisions
        .iter()
        .max_by(|a, b| a.avoidable.total_cmp(&b.avoidable));
    let is_board = |d: &Judged| d.decided == Decided::Work("replace_control_board".to_owned());
    assert!(dearest.is_some_and(is_board), "{dearest:?}");
    // A step of the log behind each.
    let works = shotgun.reckoning.decisions.iter().filter(|d| d.p.is_some());
    assert_eq!(works.count(), 3);

    let totals = [expert, slow, lucky, shotgun].map(|run| run.report.total);
    assert!(totals.is_sorted_by(|a, b| a > b), "{totals:?}");
    assert!(missed(shotgun).contains(&Minimum::Total));

    // A hint is avoidable, is not on the bill, and says nothing of the machine.
    let more = asked.reckoning.avoidable() - expert.reckoning.avoidable();
    let due = (Rung::Question.cost_ratio() + Rung::Where.cost_ratio()) * expert.reckoning.start;
    assert!((more - due).abs() < 1e-9, "{more} {due}");
    assert!(asked.report.shares.economy < expert.report.shares.economy);
    assert!((asked.job.cost() - expert.job.cost()).abs() < 1e-9);
    assert!((justification(&asked.reckoning) - justification(&expert.reckoning)).abs() < 1e-9);

    // Every point that is missing is laid at a step, or at what belongs to none.
    for run in &runs {
        for part in &run.report.parts {
            let told: f64 = part.lost.iter().map(|lost| lost.points).sum();
            let missing = part.of - part.points;
            assert!((told - missing).abs() < 1e-6, "{missing} of {part:?}");
            let steps = part.lost.iter().filter_map(|lost| lost.step);
            assert!(steps.into_iter().all(|step| step <= run.job.log().len()));
        }
    }
    let wrong_part = shotgun.report.parts[4].lost.iter();
    let worst = wrong_part.max_by(|a, b| a.points.total_cmp(&b.points));
    let at = worst.and_then(|lost| lost.step).expect("a step");
    assert!(
        matches!(&shotgun.job.log()[at - 1].action, Action::Work { work, .. } if work == "replace_control_board")
    );

    // Cost is target, avoidable and chance, and nothing else.
    for run in [expert, slow, lucky, shotgun] {
        let report = &run.report;
        let sum = report.target_cost
            + report.avoidable.expect("judged")
            + report.chance().expect("judged");
        assert!((sum - report.cost).abs() < 1e-9);
    }
    let names = ["careful", "slow", "unsafe", "lucky", "parts", "asked"];
    stand("decisions", names.into_iter().zip(&runs));
}

/// A capacitor, no fault, two causes, a cam timer, a tap, a visit.
const OTHER_JOBS: [&str; 6] = [
    "hums_and_stands",
    "goes_quiet_in_the_middle",
    "takes_its_time_stopping",
    "dial_stands_still",
    "no_water",
    "no_spin_since_cousin",
];

#[test]
fn decisions_of_careful_logs_stand() {
    let runs: Vec<Run> = OTHER_JOBS
        .par_iter()
        .map(|id| {
            let scenario = tubwright::scenario::job(id).expect("shipped files are sound");
            let scenario = scenario.expect("ships");
            let path = format!("{}/tests/jobs/{id}.json", env!("CARGO_MANIFEST_DIR"));
            let text = std::fs::read_to_string(path).expect("each shipped job has a log");
            let log: Vec<Entry> = serde_json::from_str(&text).expect("a log");
            let (job, _) = Job::replay(scenario, SEED, &log).expect("starts");
            let seen = Seen::of(&job).expect("can be seen");
            let reckoning = Reckoning::of(&seen).expect("reckoned up");
            marked(job, reckoning)
        })
        .collect();
    stand("decisions_of_jobs", OTHER_JOBS.into_iter().zip(&runs));
}

/// What was believed of the runs and what their decisions were worth is what it was: sealed marks rest
/// on it.
fn stand<'r>(file: &str, runs: impl Iterator<Item = (&'static str, &'r Run)>) {
    let mut text = String::new();
    for (name, run) in runs {
        let (reckoning, total) = (&run.reckoning, run.report.total);
        let (start, without) = (reckoning.start, reckoning.without_tests);
        text += &format!("{name}: {total:.3}, {start:.3} at the door, {without:.3} untested\n");
        for told in &reckoning.told {
            let n_out = told.ruled_out.len();
            text += &format!("  {} tells {:.4} bits, {n_out} out\n", told.step, told.bits);
        }
        for d in &reckoning.decisions {
            let share = |share: Option<f64>| share.map_or("-".into(), |s| format!("{s:.4}"));
            text += &format!(
                "  {} {:?}: costs {:.3}, avoidable {:.4}, p {}, justified {}\n",
                d.step,
                d.decided,
                d.cost,
                d.avoidable,
                share(d.p),
                share(d.justification),
            );
        }
    }
    assert_stands(file, &text);
}

#[test]
fn hints_climb_from_a_question_to_its_meaning_and_never_read_the_truth() {
    let scenario = scenario();
    let careful = careful(&scenario);
    let mut job = Job::new(Arc::clone(&scenario), SEED).expect("starts");
    for (wait, action) in &careful[..12] {
        job.advance(*wait);
        job.act(action.clone());
    }
    let seen = Seen::of(&job).expect("can be seen");
    let told = hints(&seen, &mut |_, _| ()).expect("can be told");
    for words in &told {
        println!("{words}");
    }
    assert!(told[0].ends_with('?'));
    assert!(told.iter().all(|words| !words.is_empty()));
}

#[test]
fn a_job_without_hints_gives_none() {
    let mut silent = Scenario::clone(&scenario());
    silent.rules.hints = Some(false);
    let mut job = Job::new(Arc::new(silent), SEED).expect("starts");
    assert!(job.act(Action::Hint).refusal.is_some());
    assert!(job.log().is_empty());
}
