//! The mark sheet: five parts, each with its share, its points and the steps behind them.
//!
//! Safety and procedure follow from the log at once. Economy and evidence, and with evidence what a
//! diagnosis counts for, follow from what each decision was worth; that takes long to work out. Until
//! then, and where nobody works it out, they go by the bill and by the notebook; [`Basis`] says which.

use serde::Serialize;

use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::state::Ending;
use crate::bench::visit::Advice;
use crate::expert::Reckoning;
use crate::expert::target;
use crate::machine::MachineError;
use crate::score::decisions;
use crate::score::diagnosis;
use crate::score::economy;
use crate::score::evidence;
use crate::score::formula;
use crate::score::formula::Shares;
use crate::score::formula::Verdict;
use crate::score::formula::WEIGHTS;
use crate::score::functional;
use crate::score::functional::FunctionCheck;
use crate::score::lost::Lost;
use crate::score::lost::Why;
use crate::score::procedure;
use crate::score::safety;
use crate::score::visit;
use crate::text;

/// One part of the mark sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Part {
    /// Plain name, such as "safety"; English, for [`said`](crate::language::said).
    pub name: &'static str,
    /// What it can give at most, points.
    pub of: f64,
    /// What it gave, points.
    pub points: f64,
    /// Why, in sentences; each names the step it stands on where there is one.
    pub reasons: Vec<String>,
    /// What it is below full, by the steps that cost it.
    pub lost: Vec<Lost>,
}

/// What economy and evidence go by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// The bill and the notebook.
    Bill,
    /// What each decision was worth.
    Decisions,
}

/// A finished job's marks.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Report {
    /// The machine does what it should at hand-over.
    pub fixed: bool,
    /// No critical safety rule was broken.
    pub safe: bool,
    /// The job was left safe without a repair, and that was right.
    pub rightly_left: bool,
    /// 0..100.
    pub total: f64,
    /// What economy and evidence go by.
    pub basis: Basis,
    /// All shares, 0..1.
    pub shares: Shares,
    /// What they come to.
    pub verdict: Verdict,
    /// The five parts.
    pub parts: Vec<Part>,
    /// Cost of the job, money unit.
    pub cost: f64,
    /// What a skilled technician's way costs, money unit; once decisions are judged, what the job
    /// could be expected to cost before anything of it was known.
    pub target_cost: f64,
    /// Cost that other decisions would have avoided, money unit; none until they are judged.
    pub avoidable: Option<f64>,
    /// Time on site, min.
    pub minutes: f64,
    /// How the machine did at hand-over beside a sound one.
    pub function: FunctionCheck,
}

/// Nobody should mend this here: the house must be put right first, or a new machine is the better
/// buy and the customer was told so.
fn is_right_to_leave(job: &Job) -> bool {
    // Who does not know why it is left has not left it rightly.
    if !diagnosis::unnamed(job).is_empty() {
        return false;
    }
    let told = job.bench().advice.contains(&Advice::NewMachine);
    diagnosis::needs_others(job.scenario())
        || (told && diagnosis::not_worth_mending(job.scenario()))
}

fn nothing_stated() -> Vec<Lost> {
    Lost::all(None, Why::NothingStated)
}

/// It was left with nothing looked for, done or said: there is no economy and no evidence to speak of.
fn is_untouched(job: &Job, fixed: bool) -> bool {
    let is_act = |note: &Note| matches!(note.entry, NoteEntry::Act { .. });
    let is_silent = job.bench().findings.is_empty() && job.notebook().iter().all(is_act);
    job.is_over() && !fixed && is_silent && !job.hands_were_on_it()
}

/// Marks a job by the bill. An unfinished job is marked as it stands.
///
/// # Errors
/// When the scenario's machine cannot be set up.
pub fn assess(job: &Job) -> Result<Report, MachineError> {
    let function = functional::function_check(job)?;
    let for_others = job.bench().ending == Some(Ending::MadeSafe) && is_right_to_leave(job);
    let rightly_left = for_others
        || visit::was_left_for_danger(job)
        || visit::was_left_for_the_house(job)
        || visit::was_rightly_declined(job);
    let fixed = function.passed || rightly_left;
    let safety = safety::mark(job);
    let diagnosis = diagnosis::mark(job, fixed, None);
    let callback = job.scenario().money.callback;
    let cost = job.cost() + if fixed { 0.0 } else { callback };
    let mut economy = economy::mark(job, cost);
    let procedure = procedure::mark(job);
    let mut evidence = evidence::mark(job)?;
    if is_untouched(job, fixed) {
        (economy.share, evidence.share) = (0.0, 0.0);
        (economy.lost, evidence.lost) = (nothing_stated(), nothing_stated());
    }
    let shares = Shares {
        safety: safety.share,
        is_gate_open: safety.is_gate_open,
        diagnosis: diagnosis.share,
        economy: economy.share,
        procedure: procedure.share,
        is_proved: procedure.is_proved,
        evidence: evidence.share,
    };
    let part = |name, reasons, lost| Part {
        name,
        of: 0.0,
        points: 0.0,
        reasons,
        lost,
    };
    let report = Report {
        fixed,
        safe: safety.is_gate_open,
        rightly_left,
        total: 0.0,
        basis: Basis::Bill,
        shares,
        verdict: Verdict::Passed,
        parts: vec![
            part(text!("safety"), safety.reasons, safety.lost),
            part(text!("diagnosis"), diagnosis.reasons, diagnosis.lost),
            part(text!("economy"), economy.reasons, economy.lost),
            part(text!("procedure"), procedure.reasons, procedure.lost),
            part(text!("evidence"), evidence.reasons, evidence.lost),
        ],
        cost,
        target_cost: job.scenario().reference.cost,
        avoidable: None,
        minutes: job.tick() as f64 / 600.0,
        function,
    };
    Ok(report.with_shares(shares))
}

impl Report {
    /// The same job marked by what each decision was worth.
    #[must_use]
    pub fn judged(&self, job: &Job, reckoning: &Reckoning) -> Self {
        let marked = decisions::mark(job, reckoning, self.fixed);
        let first = marked.first_repair.as_ref();
        let first = first.map(|(work, j)| (work.as_str(), *j));
        let diagnosis = diagnosis::mark(job, self.fixed, first);
        let mut report = self.clone();
        report.basis = Basis::Decisions;
        report.avoidable = Some(marked.avoidable);
        report.target_cost = target(job.scenario(), reckoning.start);
        let mut shares = Shares {
            diagnosis: diagnosis.share,
            economy: marked.economy,
            ..self.shares
        };
        report.parts[1].reasons = diagnosis.reasons;
        report.parts[1].lost = diagnosis.lost;
        if is_untouched(job, self.fixed) {
            return report.with_shares(Shares {
                economy: 0.0,
                ..shares
            });
        }
        report.parts[2].reasons = marked.economy_reasons;
        report.parts[2].lost = marked.economy_lost;
        // Where nothing was decided by evidence, as before a danger, the notebook stands.
        if let Some(evidence) = marked.evidence {
            shares.evidence = evidence;
            report.parts[4].reasons = marked.evidence_reasons;
            report.parts[4].lost = marked.evidence_lost;
        }
        report.with_shares(shares)
    }

    /// What chance did to the cost, money unit: positive is bad luck. None until decisions are judged.
    ///
    /// ```text
    /// cost = target + avoidable + chance
    /// ```
    pub fn chance(&self) -> Option<f64> {
        let known = self.avoidable.filter(|_| self.target_cost > 0.0);
        known.map(|avoidable| self.cost - self.target_cost - avoidable)
    }

    fn with_shares(mut self, shares: Shares) -> Self {
        let weigh = |weight: f64, share: f64| (100.0 * weight, 100.0 * weight * share);
        let points = [
            weigh(WEIGHTS.safety, shares.safety),
            weigh(WEIGHTS.diagnosis, shares.effective_diagnosis()),
            weigh(WEIGHTS.economy, shares.economy),
            weigh(WEIGHTS.procedure, shares.procedure),
            weigh(WEIGHTS.evidence, shares.evidence),
        ];
        self.lay_diagnosis_at_evidence(shares);
        for (part, (of, points)) in self.parts.iter_mut().zip(points) {
            (part.of, part.points) = (of, points);
            for lost in &mut part.lost {
                lost.points = of * lost.share;
            }
        }
        self.shares = shares;
        self.total = shares.total(&WEIGHTS);
        self.verdict = shares.verdict(&WEIGHTS, formula::PASS_TOTAL);
        self
    }

    /// A right answer without evidence counts half: what evidence lacks, diagnosis lacks at the same
    /// steps.
    fn lay_diagnosis_at_evidence(&mut self, shares: Shares) {
        let [_, diagnosis, _, _, evidence] = &mut self.parts[..] else {
            return;
        };
        let half = 0.5 * shares.diagnosis;
        let lacks = evidence.lost.iter().filter(|lost| half * lost.share > 0.0);
        let lacking =
            lacks.map(|lost| Lost::at(lost.step, half * lost.share, Why::WithoutEvidence));
        diagnosis.lost.extend(lacking);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::action::Action;
    use crate::expert::Decided;
    use crate::expert::Judged;
    use crate::language;
    use crate::scenario::job;

    #[test]
    fn cost_is_target_and_avoidable_and_chance() {
        let scenario = job("no_water").expect("sound").expect("ships");
        let job = Job::new(scenario, 1).expect("starts");
        let mut report = assess(&job).expect("runs");
        assert_eq!(report.chance(), None, "nothing is judged yet");
        (report.cost, report.target_cost) = (130.0, 100.0);
        report.avoidable = Some(20.0);
        assert!((report.chance().expect("judged") - 10.0).abs() < 1e-12);
    }

    #[test]
    fn what_is_kept_of_the_marks_does_not_depend_on_the_reader() {
        let scenario = job("no_water").expect("sound").expect("ships");
        let job = Job::new(scenario, 1).expect("starts");
        let english = assess(&job).expect("runs");
        language::speak(Some(language::Catalogue::pseudo()));
        let mut marked = assess(&job).expect("runs");
        language::speak(None);
        for (part, own) in marked.parts.iter_mut().zip(&english.parts) {
            assert_eq!(part.reasons.len(), own.reasons.len());
            assert!(part.reasons.iter().all(|reason| reason.contains('⟦')));
            part.reasons.clone_from(&own.reasons);
        }
        assert_eq!(marked, english);
    }

    #[test]
    fn who_leaves_at_once_without_a_word_is_given_nothing_for_it() {
        for (id, action) in [
            ("nothing_at_all", Action::MakeSafeAndLeave),
            ("no_water", Action::Close),
        ] {
            let scenario = job(id).expect("sound").expect("ships");
            let mut job = Job::new(scenario, 1).expect("starts");
            assert_eq!(job.act(action).refusal, None);
            let report = assess(&job).expect("runs");
            assert!(!report.fixed, "{id}");
            for name in ["economy", "evidence"] {
                let part = report.parts.iter().find(|part| part.name == name);
                let points = part.expect("a part").points;
                assert!(points.abs() < 1e-12, "{id}, {name}: {points}");
            }
        }
    }

    #[test]
    fn judged_marks_stand_in_the_parts_they_belong_to() {
        let scenario = job("no_water").expect("sound").expect("ships");
        let job = Job::new(scenario, 1).expect("starts");
        let by_bill = assess(&job).expect("runs");
        let closing = Judged {
            step: 20,
            decided: Decided::HandOver,
            cost: 0.0,
            avoidable: 40.0,
            justification: Some(0.4),
            p: Some(0.7),
            promised_bits: 0.0,
            better: None,
        };
        let reckoning = Reckoning {
            start: 200.0,
            without_tests: 300.0,
            decisions: vec![closing],
            told: Vec::new(),
        };
        let judged = by_bill.judged(&job, &reckoning);
        let part = |name| judged.parts.iter().find(|part| part.name == name);
        let (economy, evidence) = (part("economy"), part("evidence"));
        let economy = economy.expect("a part");
        assert_eq!(economy.reasons, ["step 20: 40 avoidable"]);
        assert_eq!(economy.lost[0].why, Why::Avoidable(40.0));
        let evidence = evidence.expect("a part");
        assert!((evidence.points - 8.0).abs() < 1e-9);
        assert_eq!(evidence.lost[0].why, Why::Unjustified { p: Some(0.7) });
        assert!(evidence.reasons[0].starts_with("step 20, hand over"));
        for name in ["safety", "diagnosis", "procedure"] {
            let was = by_bill.parts.iter().find(|part| part.name == name);
            assert_eq!(part(name), was, "{name} is marked as before");
        }
        let mut report = judged;
        report.target_cost = 0.0;
        assert_eq!(report.chance(), None, "there is nothing to compare with");
    }
}
