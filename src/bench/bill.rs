//! The bill: what was done, what was fitted, who pays. All amounts in the job's money unit.

use crate::bench::around::Answer;
use crate::bench::job::Job;
use crate::bench::store;
use crate::bench::visit::OfferKind;
use crate::bench::visit::Payer;
use crate::language::worded;
use crate::say;

/// One line: what and how much.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Plain words.
    pub what: String,
    /// Amount.
    pub price: f64,
}

/// The lines, the last one what the customer pays.
pub fn lines(job: &Job) -> Vec<Line> {
    let scenario = job.scenario();
    let (rates, around) = (&scenario.money, &job.bench().around);
    let mut lines = Vec::new();
    let mut line = |what: String, price: f64| lines.push(Line { what, price });
    if around.fee_taken {
        line(say!("fee for finding the fault").to_owned(), rates.call_out);
        line(say!("to pay").to_owned(), rates.call_out);
        return lines;
    }
    let minutes = job.tick() as f64 / 600.0;
    line(say!("call-out").to_owned(), rates.call_out);
    let second = job.ledger().second_visits;
    if second > 0 {
        line(
            say!("second visit").to_owned(),
            rates.second_visit * f64::from(second),
        );
    }
    line(
        say!("labour, {n} min", n = format!("{minutes:.0}")),
        rates.labour_per_min * minutes,
    );
    let mut parts = 0.0;
    for fitted in &around.fitted {
        let item = store::item(&scenario.workshop, &fitted.item);
        let name = item.map_or(fitted.item.clone(), |item| item.name().to_owned());
        parts += fitted.price;
        line(say!("part: {name}", name = worded(&name)), fitted.price);
    }
    let small = job.ledger().material - parts;
    if small > 0.005 {
        line(say!("small material").to_owned(), small);
    }
    let sum: f64 = lines.iter().map(|l| l.price).sum();
    lines.push(to_pay(job, sum));
    lines
}

/// What was agreed is paid, whatever it came to; under warranty the maker pays.
fn to_pay(job: &Job, sum: f64) -> Line {
    let around = &job.bench().around;
    if around.payer == Some(Payer::Maker) {
        return Line {
            what: say!("to pay: the maker pays").to_owned(),
            price: 0.0,
        };
    }
    let agreed = around.agreed().and_then(|offer| {
        let Answer::Agreed(kind) = offer.answer else {
            return None;
        };
        let option = offer.options.iter().find(|o| o.what == kind)?;
        (kind != OfferKind::NewMachine).then_some(option.price)
    });
    match agreed {
        Some(price) => Line {
            what: say!("to pay, as agreed").to_owned(),
            price,
        },
        None => Line {
            what: say!("to pay").to_owned(),
            price: sum,
        },
    }
}
