//! Why points went, in words.

use crate::app::format;
use crate::bench::safety;
use crate::language::said;
use crate::language::worded;
use crate::say;
use crate::score::Why;
use crate::score::formula::CRITICAL_CAP;

/// Such as `left out: insulation measured`.
pub fn why(why: &Why) -> String {
    match why {
        Why::Rule { rule, can_kill } => broken(rule, *can_kill),
        Why::NothingRisked => {
            say!("nothing was tested or repaired, so safe working was not shown").to_owned()
        }
        Why::NothingStated => say!("no cause was stated").to_owned(),
        Why::StatedFirst => {
            say!("the cause stated first is not what is wrong, or not only").to_owned()
        }
        Why::StatedLast => {
            say!("the cause stated last is not what is wrong, or not only").to_owned()
        }
        Why::Stated => say!("the cause stated is not what is wrong, or not only").to_owned(),
        Why::NotPutRight => say!("the machine still fails at hand-over").to_owned(),
        Why::WithoutEvidence => {
            say!("a right answer counts less where the evidence for it was short").to_owned()
        }
        Why::Avoidable(cost) => {
            let cost = format::money(*cost);
            say!("another decision would have saved {cost}", cost)
        }
        Why::Hint => say!("a hint was asked for").to_owned(),
        Why::Damage(price) => {
            let price = format::money(*price);
            say!("something was damaged: {price} to pay", price)
        }
        Why::Callback(price) => {
            let price = format::money(*price);
            say!("somebody has to come again: {price}", price)
        }
        Why::NeedlessPart(price) => {
            let price = format::money(*price);
            say!("the part fitted was sound: {price}", price)
        }
        Why::AboveTarget { cost, target } => say!(
            "time and what else it took: the job cost {cost}, its target is {target}",
            cost = format::money(*cost),
            target = format::money(*target)
        ),
        Why::NoTarget => say!("this job has no target to compare with").to_owned(),
        Why::LeftOut(what) => say!("left out: {what}", what = worded(what)),
        Why::NothingDue => say!("nothing was begun").to_owned(),
        Why::Unjustified { p } => unjustified(*p),
        Why::NothingSpokeForIt => say!("nothing in the notebook spoke for this part").to_owned(),
        Why::PartWasSound => say!("the part fitted was sound").to_owned(),
        Why::Offered {
            n_telling,
            n_offered,
        } => offered(*n_telling, *n_offered),
        Why::TooFewReadings => {
            say!("nothing is wrong with the machine, and too few readings show it").to_owned()
        }
    }
}

fn broken(rule: &str, can_kill: bool) -> String {
    let title = safety::rule(rule).map_or(rule, |rule| said(rule.title));
    if can_kill {
        say!(
            "{title}: a breach that can kill, at most {most} for the whole job",
            title,
            most = format!("{CRITICAL_CAP:.0}")
        )
    } else {
        say!("safety rule broken: {title}", title)
    }
}

fn unjustified(p: Option<f64>) -> String {
    p.map_or_else(
        || say!("the evidence was short of what this decision needs").to_owned(),
        |p| {
            say!(
                "the evidence gave it {percent} % to put things right, too little",
                percent = format!("{:.0}", 100.0 * p)
            )
        },
    )
}

fn offered(n_telling: usize, n_offered: usize) -> String {
    match (n_telling, n_offered) {
        (_, 0) => say!("no line of the notebook was offered for the cause").to_owned(),
        (n, of) => say!(
            "of {of} lines offered for the cause {n} tell it from a sound machine",
            of,
            n
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reason_says_what_was_wrong_and_unknown_rules_keep_their_name() {
        let rule = |can_kill| Why::Rule {
            rule: "of_another_version".to_owned(),
            can_kill,
        };
        assert_eq!(why(&rule(false)), "safety rule broken: of_another_version");
        assert!(why(&rule(true)).ends_with("at most 39 for the whole job"));
        assert_eq!(
            why(&Why::Unjustified { p: Some(0.314) }),
            "the evidence gave it 31 % to put things right, too little"
        );
        let none = Why::Offered {
            n_telling: 0,
            n_offered: 0,
        };
        assert_eq!(
            why(&none),
            "no line of the notebook was offered for the cause"
        );
    }
}
