//! The debrief's models from a finished job. The truth is read here and nowhere else in the
//! screens.

use crate::app::format;
use crate::app::view::notice::words_of;
use crate::app::view::open_ends;
use crate::bench::event::Event;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::safety::SafetyFinding;
use crate::bench::scenario::Rules;
use crate::language::said;
use crate::language::worded;
use crate::machine::MachineError;
use crate::say;
use crate::score;
use crate::score::Part;
use crate::score::Report;
use crate::score::StepView;
use crate::score::formula::Minimum;
use crate::score::formula::Verdict;

/// The whole debrief as text.
#[derive(Clone, Debug, PartialEq)]
pub struct DebriefView {
    /// The marks by the bill; the decisions come later.
    pub report: Report,
    /// What was wrong.
    pub causes: Vec<String>,
    /// What the technician stated.
    pub stated: Vec<String>,
    /// How the readings showed it.
    pub shown_by: Vec<String>,
    /// What was known, what a look would have cost, what was accident.
    pub hindsight: Vec<String>,
    /// The timeline.
    pub steps: Vec<StepRow>,
    /// What was left off, apart or shut.
    pub left: Vec<String>,
}

/// What was left undone, and what that means for a repair that was right in itself.
fn left(job: &Job, report: &Report) -> Vec<String> {
    let mut lines = open_ends::still_open(job);
    let is_together = job.bench().off.is_empty() && job.bench().apart.is_empty();
    if !report.fixed && !is_together {
        lines.push(
            say!("So it counts as not repaired: a machine is handed over whole and in its place")
                .to_owned(),
        );
    }
    lines
}

/// A row of the mark sheet.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MarkRow {
    /// Plain name.
    pub name: String,
    /// Points given.
    pub points: f64,
    /// Points possible.
    pub of: f64,
    /// Why.
    pub reasons: Vec<String>,
}

/// A step of the timeline.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StepRow {
    /// Number, from 1.
    pub number: usize,
    /// Time of day.
    pub time: String,
    /// Where on the track, 0..1.
    pub place_ratio: f64,
    /// What was done.
    pub words: String,
    /// Cost so far.
    pub cost: String,
    /// What it gave, and what a sound machine would have given when that is different.
    pub notes: Vec<(String, Option<String>)>,
    /// What happened.
    pub events: Vec<String>,
    /// Rules broken: what, why, source.
    pub rules: Vec<RuleRow>,
}

/// A broken rule.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RuleRow {
    /// What was done.
    pub what: String,
    /// Why it matters.
    pub why: String,
    /// Where the rule comes from.
    pub source: String,
}

impl StepRow {
    /// A rule was broken or somebody came to harm.
    pub fn is_unsafe(&self) -> bool {
        !self.rules.is_empty() || !self.events.is_empty()
    }

    /// It showed a difference from a sound machine.
    pub fn is_telling(&self) -> bool {
        self.notes.iter().any(|(_, sound)| sound.is_some())
    }
}

/// Explains a job.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn debrief(job: &Job) -> Result<DebriefView, MachineError> {
    let report = score::assess(job)?;
    let told = score::debrief(job)?;
    let end = job.tick().max(1) as f64;
    let finding = job.bench().findings.last();
    let stated = finding.map(|f| f.causes.iter().map(|id| what_of(job, id)).collect());
    Ok(DebriefView {
        causes: told
            .causes
            .iter()
            .map(|c| format::sentence(&worded(c)))
            .collect(),
        stated: stated.unwrap_or_default(),
        shown_by: told.shown_by,
        hindsight: told.hindsight,
        steps: told.steps.iter().map(|s| step(job, s, end)).collect(),
        left: left(job, &report),
        report,
    })
}

/// The mark sheet.
pub fn marks(report: &Report) -> Vec<MarkRow> {
    let row = |part: &Part| MarkRow {
        name: said(part.name).to_owned(),
        points: part.points,
        of: part.of,
        reasons: part.reasons.clone(),
    };
    report.parts.iter().map(row).collect()
}

/// What the job still lacks, or that it lacks nothing.
pub fn asked_for(report: &Report) -> String {
    let Verdict::NotYet(missed) = &report.verdict else {
        return say!("All that is asked of a job was shown.").to_owned();
    };
    let word = |minimum: &Minimum| match minimum {
        Minimum::Gate => say!("no rule broken whose breach can kill"),
        Minimum::Safety => say!("safety of 70 %"),
        Minimum::Diagnosis => say!("a diagnosis of 60 %"),
        Minimum::Procedure => say!("a procedure of 60 % with run and electrical tests"),
        Minimum::Evidence => say!("evidence of 50 %"),
        Minimum::Total => say!("65 of 100 in all"),
    };
    let words: Vec<&str> = missed.iter().map(word).collect();
    say!("Still missing: {what}.", what = words.join("; "))
}

fn what_of(job: &Job, id: &str) -> String {
    job.scenario()
        .machine
        .fault(id)
        .map_or_else(|| id.to_owned(), |f| format::sentence(&worded(&f.what)))
}

/// Such as `Repaired · safe`.
pub fn in_words(report: &Report) -> String {
    let done = match (report.fixed, report.rightly_left) {
        (_, true) => say!("Rightly made safe and left"),
        (true, false) => say!("Repaired"),
        (false, false) => say!("Not repaired"),
    };
    let safety = match (report.safe, report.shares.safety < 1.0) {
        (false, _) => say!("not safe"),
        (true, true) => say!("safety rules broken"),
        (true, false) => say!("safe"),
    };
    format!("{done} · {safety}")
}

/// The head line; `settled` once the decisions are judged, or cannot be.
pub fn verdict(report: &Report, settled: bool) -> String {
    let (how, marks) = (in_words(report), format!("{:.0}", report.total));
    if settled {
        say!("{how} · {marks} of 100", how, marks)
    } else {
        say!("{how} · {marks} of 100 for now", how, marks)
    }
}

/// What it cost, and why: the job's target, and once the decisions are judged what the best way through
/// costs on average from the complaint alone, what other decisions would have avoided, and chance.
pub fn money(report: &Report, rules: &Rules) -> Vec<(String, String)> {
    let mut rows = vec![(say!("cost"), format::money(report.cost))];
    if report.target_cost > 0.0 {
        let name = match report.avoidable {
            Some(_) => say!("to be expected"),
            None => say!("target"),
        };
        rows.push((name, format::money(report.target_cost)));
    }
    if let Some(avoidable) = report.avoidable {
        rows.push((say!("avoidable"), format::money(avoidable)));
    }
    if let Some(chance) = report.chance() {
        let money = format::money(chance);
        let words = if chance > 0.5 {
            say!("{money} (dearer than could be expected)", money)
        } else if chance < -0.5 {
            say!("{money} (cheaper than could be expected)", money)
        } else {
            money
        };
        rows.push((say!("chance" as "good or bad luck"), words));
    }
    let minutes = format!("{:.0}", report.minutes);
    rows.push((say!("on site"), say!("{minutes} min", minutes)));
    let kept = |is: bool| {
        if is { say!("kept") } else { say!("not kept") }
    };
    if let Some(most) = rules.budget_price {
        let met = kept(report.cost <= most);
        let words = say!("at most {most}: {met}", most = format::money(most), met);
        rows.push((say!("budget"), words));
    }
    if let Some(most) = rules.time_s.map(|most_s| most_s / 60.0) {
        let met = kept(report.minutes <= most);
        let words = say!(
            "at most {most} min: {met}",
            most = format!("{most:.0}"),
            met
        );
        rows.push((say!("time allowed"), words));
    }
    if let Some(least) = rules.pass_ratio.map(|least| 100.0 * least) {
        let met = if report.total >= least {
            say!("reached")
        } else {
            say!("not reached")
        };
        let words = say!(
            "at least {least}: {met}",
            least = format!("{least:.0}"),
            met
        );
        rows.push((say!("marks to reach"), words));
    }
    rows.into_iter()
        .map(|(name, value)| (name.to_owned(), value))
        .collect()
}

fn step(job: &Job, step: &StepView, end: f64) -> StepRow {
    StepRow {
        number: step.number,
        time: format::clock(step.tick),
        place_ratio: step.tick as f64 / end,
        words: format::sentence(&step.words),
        cost: format::money(step.cost),
        notes: step
            .notes
            .iter()
            .map(|n| (n.is.clone(), n.sound.clone()))
            .collect(),
        events: step.events.iter().filter_map(event).collect(),
        rules: job
            .safety()
            .iter()
            .filter(|f| f.step == step.number)
            .map(rule)
            .collect(),
    }
}

fn event(event: &Event) -> Option<String> {
    if matches!(event, Event::Consent { .. }) {
        return None;
    }
    let (title, text, _) = words_of(event)?;
    Some(say!("{label}: {value}", label = title, value = text))
}

fn rule(finding: &SafetyFinding) -> RuleRow {
    match safety::rule(finding.rule) {
        Some(rule) => RuleRow {
            what: said(rule.title).to_owned(),
            why: format!("{} {}", said(rule.why), said(rule.right_way)),
            source: said(rule.source).to_owned(),
        },
        None => RuleRow {
            what: finding.rule.to_owned(),
            ..RuleRow::default()
        },
    }
}
