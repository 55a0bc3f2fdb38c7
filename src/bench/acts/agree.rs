//! Coming to terms: estimates and their answers, whoever pays, papers, the fee, the warranty.
//!
//! A customer takes a repair up to their limit, haggles once where it is their way, and takes a
//! new machine when the repair is beyond the limit and the machine's price is fair.

use crate::bench::around::Answer;
use crate::bench::around::Offered;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::visit::OfferKind;
use crate::bench::visit::OfferOption;
use crate::bench::visit::Payer;
use crate::say;
use crate::text;

/// A new machine is taken up to this share of its usual price. Common practice.
const FAIR_RATIO: f64 = 1.2;

pub(super) fn cannot_offer(
    job: &Job,
    causes: &[String],
    options: &[OfferOption],
) -> Option<Refusal> {
    let model = &job.scenario().machine;
    if let Some(name) = causes.iter().find(|cause| model.fault(cause).is_none()) {
        return Some(super::way::unknown(name));
    }
    if options.is_empty() {
        return super::way::not_now(text!("an estimate names at least one price"));
    }
    let wrong = options
        .iter()
        .find(|o| !(o.price >= 0.0 && o.price.is_finite()));
    wrong.and_then(|o| super::way::not_now(&say!("{price} is no price", price = o.price)))
}

pub(super) fn cannot_ask_payer(job: &Job) -> Option<Refusal> {
    if !job.scenario().visit.person.is_tenant {
        return super::way::not_now(text!("whoever stands there pays"));
    }
    job.bench.around.payer_asked.then_some(Refusal::AlreadySo)
}

pub(super) fn cannot_take_fee(job: &Job) -> Option<Refusal> {
    if job.bench.around.fee_taken {
        return Some(Refusal::AlreadySo);
    }
    if job.bench.around.answer() != Some(Answer::Declined) {
        return super::way::not_now(text!("no estimate was declined"));
    }
    None
}

pub(super) fn offer(job: &mut Job, causes: &[String], options: &[OfferOption]) -> Vec<Event> {
    let answer = answer(job, options);
    let named: Vec<String> = options
        .iter()
        .map(|o| format!("{} for {:.0}", what(o.what), o.price))
        .collect();
    let text = format!("Price named: {}; {}", named.join(", or "), said(answer));
    job.bench.around.offers.push(Offered {
        tick: job.tick(),
        causes: causes.to_vec(),
        options: options.to_vec(),
        answer,
    });
    job.write(NoteEntry::Act { text });
    vec![Event::Consent {
        agreed: matches!(answer, Answer::Agreed(_)),
    }]
}

fn answer(job: &Job, options: &[OfferOption]) -> Answer {
    let scenario = job.scenario();
    let (person, around) = (&scenario.visit.person, &job.bench.around);
    let price = |kind: OfferKind| options.iter().find(|o| o.what == kind).map(|o| o.price);
    if around.payer == Some(Payer::Maker) && price(OfferKind::Repair).is_some() {
        return Answer::Agreed(OfferKind::Repair);
    }
    if person.is_tenant && !around.payer_asked {
        return Answer::AnotherPays;
    }
    let has_haggled = around
        .offers
        .iter()
        .any(|o| matches!(o.answer, Answer::AsksLess(_)));
    if let Some(price) = price(OfferKind::Repair)
        && person.haggle_ratio > 0.0
        && !has_haggled
    {
        let less = libm::floor(price * (1.0 - person.haggle_ratio));
        return Answer::AsksLess(less);
    }
    let repairs = [OfferKind::Repair, OfferKind::OtherPart];
    let taken = repairs
        .into_iter()
        .find(|kind| price(*kind).is_some_and(|price| price <= person.limit_price));
    let fair = FAIR_RATIO * scenario.money.new_machine;
    let new = price(OfferKind::NewMachine)
        .filter(|price| *price <= fair)
        .map(|_| OfferKind::NewMachine);
    taken.or(new).map_or(Answer::Declined, Answer::Agreed)
}

/// A way out, plain words.
pub fn what(kind: OfferKind) -> &'static str {
    match kind {
        OfferKind::Repair => text!("repair"),
        OfferKind::OtherPart => text!("repair with a part of another make"),
        OfferKind::NewMachine => text!("a new machine instead"),
    }
}

/// What the customer says to an estimate.
fn said(answer: Answer) -> String {
    match answer {
        Answer::Agreed(kind) => format!("customer agreed: {}", what(kind)),
        Answer::AsksLess(price) => format!("customer asks: could you do it for {price:.0}?"),
        Answer::AnotherPays => text!("the tenant cannot agree: the landlord pays").to_owned(),
        Answer::Declined => text!("customer declined").to_owned(),
    }
}

pub(super) fn ask_payer(job: &mut Job) {
    job.bench.around.payer_asked = true;
    let limit = job.scenario().visit.person.limit_price;
    job.write(NoteEntry::Act {
        text: format!("Landlord on the phone: agrees to a repair up to {limit:.0}"),
    });
}

pub(super) fn take_fee(job: &mut Job) {
    job.bench.around.fee_taken = true;
    let fee = job.scenario().money.call_out;
    job.write(NoteEntry::Act {
        text: format!("Fee for finding the fault: {fee:.0}"),
    });
}

pub(super) fn check_papers(job: &mut Job) {
    job.bench.around.papers_seen = true;
    let papers = &job.scenario().visit.papers;
    let bought = match papers.bought_months_ago {
        Some(months) => format!("bought {months} months ago by the receipt"),
        None => text!("no receipt").to_owned(),
    };
    let covered = match papers.covered_months {
        0 => text!("no warranty").to_owned(),
        months => format!("the maker pays for {months} months"),
    };
    let plate = if papers.plate_is_readable {
        text!("rating plate readable and the same number")
    } else {
        text!("rating plate missing or another number")
    };
    let misuse = if papers.is_misused {
        text!("signs of misuse")
    } else {
        text!("no sign of misuse")
    };
    job.write(NoteEntry::Act {
        text: format!("Papers: {bought}; {covered}; {plate}; {misuse}"),
    });
}

pub(super) fn warranty(job: &mut Job, payer: Payer) {
    job.bench.around.payer = Some(payer);
    let text = match payer {
        Payer::Maker => text!("Who pays: the maker, under warranty"),
        Payer::Customer => text!("Who pays: whoever owns the machine"),
    };
    job.write(NoteEntry::Act {
        text: text.to_owned(),
    });
}
