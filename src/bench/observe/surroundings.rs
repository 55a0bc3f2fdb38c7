//! What is out of the ordinary about the place: where it can be seen, smelt or heard of.

use crate::bench::action::Sense;
use crate::bench::job::Job;
use crate::bench::notebook::Seen;
use crate::bench::observe::seen;
use crate::bench::visit::Condition;
use crate::text;

/// What a sense notices at a place; noticed things are kept.
pub(super) fn notice(job: &mut Job, sense: Sense, place: &str) -> Vec<Seen> {
    let found: Vec<Condition> = job
        .scenario()
        .visit
        .place
        .iter()
        .copied()
        .filter(|condition| shows(*condition, sense, place))
        .collect();
    job.bench.around.noticed.extend(&found);
    found.into_iter().map(words).collect()
}

/// What talking brings out: a threat is felt by whoever asks, gas and house are told of.
pub fn notice_by_asking(job: &mut Job, question: &str) {
    let told: Vec<Condition> = job
        .scenario()
        .visit
        .place
        .iter()
        .copied()
        .filter(|condition| match condition {
            Condition::Threat | Condition::Child | Condition::Dog => true,
            Condition::GasSmell => question == "smell",
            Condition::ExtensionReel | Condition::Adaptor => question == "power",
            _ => false,
        })
        .collect();
    job.bench.around.noticed.extend(told);
}

fn shows(condition: Condition, sense: Sense, place: &str) -> bool {
    let at_socket = sense == Sense::Look && matches!(place, "socket" | "plug");
    let at_floor = sense == Sense::Look && matches!(place, "floor" | "under_machine");
    match condition {
        Condition::GasSmell => sense == Sense::Smell,
        Condition::Flood | Condition::DelicateFloor => at_floor,
        Condition::ScorchedSocket
        | Condition::Adaptor
        | Condition::ExtensionReel
        | Condition::NoResidualDevice => at_socket,
        Condition::BareEdges => sense == Sense::Look && place == "cabinet",
        Condition::HotWater => {
            matches!(sense, Sense::Feel | Sense::Look) && matches!(place, "basket" | "tub")
        }
        Condition::Threat | Condition::Child | Condition::Dog => sense == Sense::Look,
    }
}

fn words(condition: Condition) -> Seen {
    match condition {
        Condition::GasSmell => seen("gas", text!("it smells of gas")),
        Condition::Flood => seen(
            "flood",
            text!("water stands in the room, more than a machine holds"),
        ),
        Condition::Threat => seen("threat", text!("somebody stands in the door and shouts")),
        Condition::ScorchedSocket => seen("socket_scorched", text!("the socket is brown and soft")),
        Condition::Adaptor => seen(
            "adaptor",
            text!("the plug sits in an adaptor with other plugs"),
        ),
        Condition::ExtensionReel => {
            seen("reel", text!("the plug sits in a rolled-up extension reel"))
        }
        Condition::NoResidualDevice => seen(
            "no_residual_device",
            text!("no residual current device in the board beside it"),
        ),
        Condition::Child => seen("child", text!("a small child comes to look")),
        Condition::Dog => seen("dog", text!("a dog lies in front of the machine")),
        Condition::DelicateFloor => seen("soft_floor", text!("a soft floor that marks easily")),
        Condition::BareEdges => seen("bare_edges", text!("the cut edges of the sheet are bare")),
        Condition::HotWater => seen("hot_water", text!("steam rises from the water")),
    }
}
