//! One shipped job worked in three ways: skill shows in what each decision was worth, luck does not.

use std::sync::Arc;

use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::job::Entry;
use tubwright::bench::job::Job;
use tubwright::bench::scenario::Scenario;
use tubwright::expert::Decided;
use tubwright::expert::Judged;
use tubwright::expert::Reckoning;
use tubwright::expert::Seen;
use tubwright::scenario::jobs;

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

fn worked(scenario: &Arc<Scenario>, acts: &[(u64, Action)]) -> Reckoning {
    let mut job = Job::new(Arc::clone(scenario), SEED).expect("starts");
    for (wait, action) in acts {
        job.advance(*wait);
        let outcome = job.act(action.clone());
        assert_eq!(outcome.refusal, None, "{action:?}");
    }
    let seen = Seen::of(&job).expect("can be seen");
    let reckoning = Reckoning::of(&seen).expect("can be reckoned up");
    for judged in &reckoning.decisions {
        println!("{judged:?}");
    }
    println!(
        "avoidable {:.1} of {:.1}",
        reckoning.avoidable(),
        reckoning.start
    );
    reckoning
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

#[test]
fn skill_shows_in_what_decisions_were_worth_and_luck_does_not() {
    let scenario = scenario();
    let careful = careful(&scenario);
    let expert = worked(&scenario, &careful);
    assert!(expert.avoidable() < 0.15 * expert.start);
    assert!(justification(&expert) > 0.9);

    // Straight to the right repair: the cheapest of all, and without reason.
    let lucky = worked(&scenario, &guessed(&careful));
    assert!(justification(&lucky) < 0.2);
    assert!(
        lucky.avoidable() > expert.avoidable() + 5.0,
        "{}",
        lucky.avoidable()
    );

    let parts: Vec<Action> = ["replace_control_board", "replace_run_capacitor"]
        .iter()
        .map(|work| Action::Work {
            work: (*work).to_owned(),
            check: true,
        })
        .collect();
    let shotgun = worked(&scenario, &with_more(&guessed(&careful), &parts));
    assert!(shotgun.avoidable() > lucky.avoidable() + 50.0);
    let dearest = shotgun
        .decisions
        .iter()
        .max_by(|a, b| a.avoidable.total_cmp(&b.avoidable));
    let is_board = |d: &Judged| d.decided == Decided::Work("replace_control_board".to_owned());
    assert!(dearest.is_some_and(is_board), "{dearest:?}");
    // A step of the log behind each.
    let works = shotgun.decisions.iter().filter(|d| d.p.is_some());
    assert_eq!(works.count(), 3);
}
