//! What a whole visit asks for beyond the repair: due only in a job whose file describes a visit,
//! and only what that visit made necessary. Common practice.

use std::collections::BTreeSet;

use crate::bench::around::Answer;
use crate::bench::job::Job;
use crate::bench::state::Ending;
use crate::bench::store;
use crate::bench::visit::Advice;
use crate::bench::visit::Condition;
use crate::bench::visit::OfferKind;
use crate::bench::visit::Payer;
use crate::bench::visit::Ready;
use crate::bench::workshop::WorkKind;
use crate::text;

/// Questions on the phone that load a van well.
const PHONED_ENOUGH: u32 = 3;

/// One thing that was due.
pub(super) struct Due {
    /// English; said where it is shown.
    pub what: &'static str,
    pub weight: f64,
    pub done: bool,
}

/// What this visit made necessary.
pub(super) fn due(job: &Job) -> Vec<Due> {
    let scenario = job.scenario();
    if !scenario.visit.is_marked || was_left_for_danger(job) {
        return Vec::new();
    }
    let (bench, around) = (job.bench(), &job.bench().around);
    let mut steps = Vec::new();
    let mut step = |what, weight, done| steps.push(Due { what, weight, done });
    step(
        text!("asked on the phone before driving"),
        1.0,
        around.phoned >= PHONED_ENOUGH,
    );
    if let Some(done) = on_first_visit(job) {
        step(text!("put right on the first visit"), 2.0, done);
    }
    let paid = if scenario.visit.papers.maker_pays() {
        Payer::Maker
    } else {
        Payer::Customer
    };
    step(
        text!("decided rightly who pays"),
        1.0,
        around.payer == Some(paid),
    );
    if let (Some(offer), Some(finding)) = (around.agreed(), bench.findings.last()) {
        let agreed: BTreeSet<&String> = offer.causes.iter().collect();
        let found: BTreeSet<&String> = finding.causes.iter().collect();
        step(
            text!("the price was agreed for what it turned out to be"),
            1.0,
            agreed == found,
        );
    }
    if around.answer() == Some(Answer::Declined) {
        step(
            text!("fee taken after the estimate was declined"),
            1.0,
            around.fee_taken,
        );
    }
    if !around.fitted.is_empty() {
        step(
            text!("old part shown"),
            1.0,
            bench.advice.contains(&Advice::OldPart),
        );
    }
    let lessons = lessons(job);
    if !lessons.is_empty() {
        let taught = lessons.iter().all(|lesson| bench.advice.contains(lesson));
        step(text!("taught what keeps it away"), 1.0, taught);
    }
    if around.noticed.iter().any(|c| c.is_house_defect()) {
        let told = bench.advice.contains(&Advice::HouseWiring);
        step(
            text!("told and wrote down what is wrong with the house"),
            1.0,
            told,
        );
    }
    let reported = around.signed && !around.pictures.is_empty();
    step(text!("report with a picture, signed"), 1.0, reported);
    steps
}

/// What the works done have to teach.
fn lessons(job: &Job) -> BTreeSet<Advice> {
    let workshop = &job.scenario().workshop;
    let works = job.bench().works.iter();
    works
        .filter_map(|(_, id)| workshop.work(id)?.teach)
        .collect()
}

/// One visit was enough; none where a part was needed that the store had not.
fn on_first_visit(job: &Job) -> Option<bool> {
    let scenario = job.scenario();
    let around = &job.bench().around;
    let was_there = around.fitted.iter().all(|fitted| {
        let item = store::item(&scenario.workshop, &fitted.item);
        item.is_some_and(|item| store::ready(scenario, &item) == Ready::Today)
    });
    was_there.then_some(around.n_returns == 0)
}

/// The place was not safe, and the technician made safe and left.
pub(super) fn was_left_for_danger(job: &Job) -> bool {
    let place = &job.scenario().visit.place;
    job.bench().ending == Some(Ending::MadeSafe) && place.iter().any(|c| c.is_danger())
}

/// A scorched socket was put out of use with the machine.
pub(super) fn was_left_for_the_house(job: &Job) -> bool {
    let scorched = job.scenario().visit.has(Condition::ScorchedSocket);
    job.bench().ending == Some(Ending::MadeSafe) && scorched
}

/// The customer would not have it repaired, and it would have cost more than it is worth to them.
pub(super) fn was_rightly_declined(job: &Job) -> bool {
    let scenario = job.scenario();
    let around = &job.bench().around;
    let chose_new = matches!(around.answer(), Some(Answer::Agreed(OfferKind::NewMachine)));
    let ended = job.bench().ending.is_some();
    let no_part = around.fitted.is_empty();
    let declined = around.answer() == Some(Answer::Declined) && around.fee_taken;
    ended
        && no_part
        && (declined || chose_new)
        && repair_price(job) > scenario.visit.person.limit_price
}

/// What the dearest part at fault and its work cost, money unit: less is not to be had.
fn repair_price(job: &Job) -> f64 {
    let scenario = job.scenario();
    let workshop = &scenario.workshop;
    let part_price = |id: &str| {
        let part = workshop.part(id)?;
        let work = workshop
            .works
            .iter()
            .find(|w| w.kind == WorkKind::Replace && w.part == *id)?;
        let way_s: f64 = workshop
            .closure(&work.needs)
            .iter()
            .map(|s| s.off_s + s.on_s)
            .sum();
        let item = store::item(workshop, &part.id)?;
        let labour = scenario.money.labour_per_min * (work.work_s + way_s) / 60.0;
        Some(store::price(scenario, &item) + labour + scenario.money.call_out)
    };
    let faults = scenario.faults.iter();
    faults
        .filter_map(|f| scenario.machine.fault(&f.id))
        .filter_map(|fault| part_price(&fault.part))
        .fold(0.0, f64::max)
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::bench::action::Action;
    use crate::bench::visit::Manner;
    use crate::machine::ActiveFault;
    use crate::scenario::job;

    /// A winding is open in a machine of a customer who pays so much at most; nobody haggles.
    fn begun(limit_price: f64) -> Job {
        let shipped = job("no_spin_since_cousin").expect("sound").expect("ships");
        let mut scenario = (*shipped).clone();
        scenario.faults = vec![ActiveFault::constant("winding_1_open")];
        scenario.visit.person.manner = Manner::Honest;
        scenario.visit.person.limit_price = limit_price;
        scenario.money.labour_per_min = 2.0;
        Job::new(Arc::new(scenario), 1).expect("starts")
    }

    /// Asks for so much and does the rest.
    fn quoted(limit_price: f64, rest: &[Action]) -> Job {
        let mut job = begun(limit_price);
        let quote = Action::Quote { price: 900.0 };
        for act in [quote].iter().chain(rest) {
            assert_eq!(job.act(act.clone()).refusal, None, "{act:?}");
        }
        job
    }

    #[test]
    fn a_repair_costs_its_part_the_work_the_way_there_and_back_and_the_call() {
        let job = begun(60.0);
        let workshop = &job.scenario().workshop;
        let work = workshop.work("replace_motor").expect("listed");
        let way = workshop.closure(&work.needs);
        let way_s = way.iter().fold(0.0, |s, step| s + step.off_s + step.on_s);
        let motor = workshop.part("motor").expect("listed").price;
        let wanted = motor + 2.0 * (work.work_s + way_s) / 60.0 + 30.0;
        assert!(way_s > 0.0 && motor > 0.0);
        assert!((repair_price(&job) - wanted).abs() < 1e-9);
    }

    #[test]
    fn a_repair_is_rightly_declined_where_it_is_beyond_its_worth_and_the_fee_is_taken() {
        let price = repair_price(&begun(60.0));
        let all = [Action::TakeFee, Action::Close];
        assert!(was_rightly_declined(&quoted(price - 1.0, &all)));
        assert!(
            !was_rightly_declined(&quoted(price + 1.0, &all)),
            "worth it"
        );
        assert!(!was_rightly_declined(&quoted(price, &all)), "just worth it");
        assert!(
            !was_rightly_declined(&quoted(price - 1.0, &all[..1])),
            "open"
        );
        assert!(
            !was_rightly_declined(&quoted(price - 1.0, &all[1..])),
            "no fee"
        );
        assert!(
            !was_rightly_declined(&begun(price - 1.0)),
            "nothing was asked"
        );
    }

    #[test]
    fn a_scorched_socket_is_left_only_by_making_safe() {
        let left = |place: Vec<Condition>, end: Action| {
            let mut scenario = (**begun(60.0).scenario()).clone();
            scenario.visit.place = place;
            let mut job = Job::new(Arc::new(scenario), 1).expect("starts");
            job.act(end);
            was_left_for_the_house(&job)
        };
        let scorched = || vec![Condition::ScorchedSocket];
        assert!(left(scorched(), Action::MakeSafeAndLeave));
        assert!(!left(scorched(), Action::Close));
        assert!(!left(Vec::new(), Action::MakeSafeAndLeave));
    }
}
