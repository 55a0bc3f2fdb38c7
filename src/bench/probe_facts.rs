//! What the safety rules look at when leads are put somewhere: what the instrument is, what lies
//! between its leads, and whether the question could have been asked without voltage.

use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::job::Job;
use crate::bench::safety::situation::ProbeMode;
use crate::bench::safety::situation::Situation;
use crate::network::ElementKind;
use crate::plant::harness::model::WireElement;

pub(super) fn probe(job: &Job, action: &Action, s: &mut Situation) {
    let Action::Meter {
        mode,
        red: Some(red),
        black,
    } = action
    else {
        return;
    };
    s.probe.mode = match mode {
        MeterMode::AcVolts
        | MeterMode::LowAcVolts
        | MeterMode::DcVolts
        | MeterMode::Frequency
        | MeterMode::TouchCurrent => ProbeMode::Volts,
        MeterMode::Ohms | MeterMode::Continuity | MeterMode::Capacitance | MeterMode::Diode => {
            ProbeMode::Ohms
        }
        MeterMode::Amps => ProbeMode::Amperes,
        MeterMode::Clamp | MeterMode::Leakage => ProbeMode::Clamp,
        MeterMode::Insulation => ProbeMode::Insulation,
        MeterMode::EarthBond => ProbeMode::EarthBond,
    };
    let around = &job.bench.around;
    s.probe.category = around.instrument.category;
    s.probe.leads_are_damaged = around.instrument.lead_is_cracked;
    // A known source is a check of its own, and the first thing measured may be that source.
    let socket = &job.machine.model().roles.socket;
    let at_socket = |node: &String| socket.contains(node);
    s.probe.was_checked = around.instrument_checked
        || job.bench.isolation.tester_proved.is_some()
        || (at_socket(red) && black.as_ref().is_some_and(at_socket));
    if let Some(black) = black {
        s.probe.voltage_v = job.machine.voltage_between(red, black);
        s.probe.spans_electronics = spans_electronics(job, [red, black]);
        s.probe.dead_test_would_do = is_contact(job, red, black);
    }
}

/// Neither lead lies on earthed metal, and there is a board.
fn spans_electronics(job: &Job, leads: [&String; 2]) -> bool {
    let model = job.machine.model();
    let earthed = |node: &String| {
        let bonds = |e: &WireElement| {
            let [a, b] = e.nodes.map(|n| &model.wiring.nodes[n.index()].name);
            (a == node || b == node) && job.machine.is_earth_link(&e.name)
        };
        model.roles.plug_pins[2] == *node
            || model.roles.socket[2] == *node
            || model.wiring.elements.iter().any(bonds)
    };
    model.roles.lid_sense.is_some() && !leads.into_iter().any(earthed)
}

/// A contact, fuse or protector lies between the leads, and its answer is one of ohms.
fn is_contact(job: &Job, red: &String, black: &String) -> bool {
    let sheet = &job.scenario().workshop.data_sheet;
    let same = |a: &String, b: &String| (a == red && b == black) || (a == black && b == red);
    let wiring = &job.machine.model().wiring;
    let between = |e: &WireElement| {
        let [a, b] = e.nodes.map(|n| &wiring.nodes[n.index()].name);
        matches!(e.kind, ElementKind::Contact { .. }) && same(a, b)
    };
    let dead = |mode: &str| matches!(mode, "ohms" | "continuity");
    wiring.elements.iter().any(between)
        && sheet
            .iter()
            .any(|line| dead(&line.mode) && same(&line.red, &line.black))
}
