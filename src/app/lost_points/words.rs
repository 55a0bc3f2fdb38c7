//! Why points went, in words.

use crate::app::format;
use crate::bench::safety;
use crate::score::Why;
use crate::score::formula::CRITICAL_CAP;

/// Such as `left out: insulation measured`.
pub fn why(why: &Why) -> String {
    match why {
        Why::Rule { rule, can_kill } => broken(rule, *can_kill),
        Why::NothingRisked => "nothing was tested or repaired, so nothing was at risk".to_owned(),
        Why::NothingStated => "no cause was stated".to_owned(),
        Why::StatedFirst => "the cause stated first is not what is wrong, or not only".to_owned(),
        Why::StatedLast => "the cause stated last is not what is wrong, or not only".to_owned(),
        Why::Stated => "the cause stated is not what is wrong, or not only".to_owned(),
        Why::NotPutRight => "the machine still fails at hand-over".to_owned(),
        Why::WithoutEvidence => {
            "a right answer counts less where the evidence for it was short".to_owned()
        }
        Why::Avoidable(cost) => {
            let cost = format::money(*cost);
            format!("another decision would have saved {cost}")
        }
        Why::Hint => "a hint was asked for".to_owned(),
        Why::Damage(price) => format!("something was damaged: {} to pay", format::money(*price)),
        Why::Callback(price) => format!("somebody has to come again: {}", format::money(*price)),
        Why::NeedlessPart(price) => {
            format!("the part fitted was sound: {}", format::money(*price))
        }
        Why::AboveTarget { cost, target } => format!(
            "time and what else it took: the job cost {}, its target is {}",
            format::money(*cost),
            format::money(*target)
        ),
        Why::NoTarget => "this job has no target to compare with".to_owned(),
        Why::LeftOut(what) => format!("left out: {what}"),
        Why::NothingDue => "nothing was begun".to_owned(),
        Why::Unjustified { p } => unjustified(*p),
        Why::NothingSpokeForIt => "nothing in the notebook spoke for this part".to_owned(),
        Why::PartWasSound => "the part fitted was sound".to_owned(),
        Why::Offered {
            n_telling,
            n_offered,
        } => offered(*n_telling, *n_offered),
        Why::TooFewReadings => {
            "nothing is wrong with the machine, and too few readings show it".to_owned()
        }
    }
}

fn broken(rule: &str, can_kill: bool) -> String {
    let title = safety::rule(rule).map_or(rule, |rule| rule.title);
    if can_kill {
        format!("{title}: a breach that can kill, at most {CRITICAL_CAP:.0} for the whole job")
    } else {
        format!("safety rule broken: {title}")
    }
}

fn unjustified(p: Option<f64>) -> String {
    p.map_or_else(
        || "the evidence was short of what this decision needs".to_owned(),
        |p| {
            format!(
                "the evidence gave it {:.0} % to put things right, too little",
                100.0 * p
            )
        },
    )
}

fn offered(n_telling: usize, n_offered: usize) -> String {
    match (n_telling, n_offered) {
        (_, 0) => "no line of the notebook was offered for the cause".to_owned(),
        (n, of) => format!("of {of} lines offered for the cause {n} tell it from a sound machine"),
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
