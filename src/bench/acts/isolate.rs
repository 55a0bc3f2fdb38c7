//! Plug, tap, hose, lid and its switch, keys and stored charge: making safe and bringing back to life.

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::PanelKey;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::control::io::Key;
use crate::machine::Target;
use crate::say;
use crate::text;

/// Water that runs out of the hose end when it comes off under pressure with the tap open, kg.
const OPEN_HOSE_SPILL_KG: f64 = 5.0;
/// Water left in a hose that was shut but not bled, kg.
const SHUT_HOSE_SPILL_KG: f64 = 0.3;
/// The plant's parameter for how far the tap is closed.
const TAP_SHARE: &str = "inlet.tap_closed_ratio";
/// The place where the lid switch is reached.
pub(super) const LID_SWITCH: &str = "lid_switch";
/// Charge below this is nothing to speak of, V.
const HARMLESS_V: f64 = 34.0;

pub(super) fn already_so(job: &Job, action: &Action) -> Option<Refusal> {
    let same = match action {
        Action::Plug { inserted } => job.machine.plugged() == *inserted,
        // A tap that is turned half shut is not open.
        Action::Tap { open: true } => {
            job.machine.tap_open() && job.machine.plant().params().inlet.tap_closed_ratio <= 0.0
        }
        Action::Tap { open: false } => !job.machine.tap_open(),
        Action::Lid { open } => job.machine.lid_open() == *open,
        Action::BridgeLid { fitted } => job.machine.lid_bridged() == *fitted,
        Action::HouseSwitch { on } => job.bench.isolation.house_off != *on,
        _ => false,
    };
    same.then_some(Refusal::AlreadySo)
}

pub(super) fn cannot_move_hose(job: &Job, attached: bool) -> Option<Refusal> {
    (job.bench.hose_attached == attached).then_some(Refusal::AlreadySo)
}

pub(super) fn cannot_discharge(job: &Job, what: Charged) -> Option<Refusal> {
    match what {
        Charged::PlugPins if job.machine.plugged() => Some(Refusal::NotNow {
            why: text!("the plug is in the socket").to_owned(),
        }),
        Charged::PlugPins => None,
        Charged::RunCapacitor => super::access::cannot_reach_place(job, "run_capacitor"),
    }
}

pub(super) fn cannot_reset(job: &Job) -> Option<Refusal> {
    (!job.machine.supply_tripped()).then_some(Refusal::AlreadySo)
}

pub(super) fn perform(job: &mut Job, action: &Action) -> Vec<Event> {
    match action {
        Action::Plug { inserted } => plug(job, *inserted),
        Action::HouseSwitch { on } => house_switch(job, *on),
        Action::ProveTester => {
            let tick = job.tick();
            job.bench.isolation.tester_shows_live(tick);
        }
        Action::Secure => job.bench.isolation.secured = true,
        Action::Breaker => job.machine.reset_supply(),
        Action::Tap { open } => {
            job.machine.set_tap(*open);
            job.bench.isolation.tap_shut = !open;
            if *open {
                job.bench.isolation.hose_bled = false;
                // Turned fully open, whatever share of it was closed.
                job.bench.healed.insert(Target::Param(TAP_SHARE.to_owned()));
                job.refit_machine();
            }
        }
        Action::BleedHose => job.bench.isolation.hose_bled = job.bench.isolation.tap_shut,
        Action::SupplyHose { attached } => return supply_hose(job, *attached),
        Action::Lid { open } => job.machine.set_lid(*open),
        Action::BridgeLid { fitted } => job.machine.bridge_lid(*fitted),
        Action::Key { key } => {
            press(job, *key);
            job.bench.isolation.switched_off = !job.machine.switched_on();
        }
        Action::Discharge { what, tool } => return discharge(job, *what, *tool),
        _ => {}
    }
    Vec::new()
}

fn press(job: &mut Job, key: PanelKey) {
    match key {
        PanelKey::Power => job.machine.press_power(),
        PanelKey::Start => job.machine.press_key(Key::Start),
        PanelKey::Program => job.machine.press_key(Key::Program),
        PanelKey::Level => job.machine.press_key(Key::Level),
        PanelKey::Service => job.machine.press_key(Key::Service),
    }
}

fn plug(job: &mut Job, inserted: bool) {
    job.machine.set_plugged(inserted);
    if inserted && job.bench.isolation.house_off {
        job.bench.isolation.unplugged = false;
    } else if inserted {
        job.bench.isolation.energise();
    } else {
        job.bench.isolation.unplugged = true;
    }
}

fn house_switch(job: &mut Job, on: bool) {
    job.machine.switch_house(on);
    let isolation = &mut job.bench.isolation;
    if !on {
        isolation.house_off = true;
    } else if isolation.unplugged {
        isolation.house_off = false;
    } else {
        isolation.energise();
    }
}

fn supply_hose(job: &mut Job, attached: bool) -> Vec<Event> {
    let isolation = &job.bench.isolation;
    let spill = if attached || isolation.hose_bled {
        0.0
    } else if isolation.tap_shut {
        SHUT_HOSE_SPILL_KG
    } else {
        OPEN_HOSE_SPILL_KG
    };
    job.bench.hose_attached = attached;
    job.machine.set_hose(attached);
    if spill > 0.0 {
        let why = say!("the supply hose came off under pressure").to_owned();
        return vec![Event::Spill {
            water_kg: spill,
            why,
        }];
    }
    Vec::new()
}

fn discharge(job: &mut Job, what: Charged, tool: DischargeTool) -> Vec<Event> {
    let charge = match what {
        Charged::PlugPins => job.machine.plug_pin_charge(),
        Charged::RunCapacitor => job.machine.run_capacitor_charge(),
    };
    let tick = job.tick();
    match what {
        Charged::PlugPins => {
            job.machine.discharge_plug_pins();
            job.bench.isolation.pins_discharged = Some(tick);
        }
        Charged::RunCapacitor => {
            job.machine.discharge_run_capacitor();
            job.bench.isolation.capacitor_discharged = Some(tick);
        }
    }
    if charge.voltage_v < HARMLESS_V || tool == DischargeTool::BleedResistor {
        return Vec::new();
    }
    let through = say!("the blade of a screwdriver, with a crack and a burnt spot").to_owned();
    vec![Event::Discharge {
        from_v: charge.voltage_v,
        energy_j: charge.energy_j,
        through,
    }]
}
