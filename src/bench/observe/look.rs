//! Looking: what stands out at each place, outside and from above.

use crate::bench::notebook::Seen;
use crate::bench::observe::look_below;
use crate::bench::observe::seen;
use crate::bench::observe::seen_amount;
use crate::machine::Machine;
use crate::text;
use crate::units;

pub(super) fn at(machine: &Machine, place: &str) -> Vec<Seen> {
    match place {
        "tap" => tap(machine),
        "supply_hose" => supply_hose(machine),
        "inlet_filter" => inlet_filter(machine),
        "drain_hose" => drain_hose(machine),
        "under_machine" => under_machine(machine),
        "display" => vec![seen_display(machine)],
        "lid" => vec![lid(machine)],
        "basket" | "tub" => basket(machine),
        "pulsator" => pulsator(machine),
        "floor" => floor(machine),
        "plug" | "socket" => vec![plug(machine)],
        "balance_ring" => balance_ring(machine),
        other => look_below::at(machine, other),
    }
}

fn tap(machine: &Machine) -> Vec<Seen> {
    let closed = machine.plant().params().inlet.tap_closed_ratio;
    vec![if !machine.tap_open() || closed >= 0.99 {
        seen("tap_shut", text!("the tap is shut"))
    } else if closed > 0.5 {
        seen("tap_hardly_open", text!("the tap is hardly open"))
    } else {
        seen("tap_open", text!("the tap is open"))
    }]
}

fn supply_hose(machine: &Machine) -> Vec<Seen> {
    let inlet = &machine.plant().params().inlet;
    let mut list = Vec::new();
    if inlet.hose_kinked_ratio > 0.3 {
        list.push(seen(
            "supply_hose_kinked",
            text!("the supply hose is kinked behind the machine"),
        ));
    }
    if inlet.joint_leak_m3_per_s > 0.0 && machine.tap_open() {
        list.push(seen("supply_joint_drips", text!("drops at the hose nut")));
    }
    list
}

fn inlet_filter(machine: &Machine) -> Vec<Seen> {
    let blocked = machine.plant().params().inlet.strainer_blocked_ratio;
    vec![match blocked {
        b if b >= 0.95 => seen(
            "filter_packed",
            text!("the inlet filter is packed with sand and rust"),
        ),
        b if b >= 0.5 => seen(
            "filter_half_blocked",
            text!("the inlet filter is mostly covered with dirt"),
        ),
        _ => seen("filter_clean", text!("the inlet filter is clean")),
    }]
}

fn drain_hose(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let (now, good) = (&plant.params().drain, &machine.model().plant.drain);
    let mut list = Vec::new();
    let flow = units::l_per_min_from_m3_per_s(plant.readings().flows.drain_m3_per_s);
    if flow > 0.5 {
        list.push(seen_amount(
            "drain_runs",
            flow,
            format!("about {flow:.0} L/min at the hose end"),
        ));
    } else if flow > 0.02 {
        list.push(seen_amount(
            "drain_drips",
            flow,
            text!("a thin trickle at the hose end"),
        ));
    }
    if now.outlet_m > good.outlet_m + 0.1 {
        list.push(seen(
            "drain_hose_high",
            text!("the hose end hangs too high"),
        ));
    } else if now.outlet_m < good.outlet_m - 0.1 {
        list.push(seen("drain_hose_low", text!("the hose end lies too low")));
    }
    if plant.readings().foam_ratio > 0.3 && flow > 0.0 {
        list.push(seen("suds_at_hose", text!("suds come out of the hose end")));
    }
    list
}

fn under_machine(machine: &Machine) -> Vec<Seen> {
    let puddle = machine.plant().readings().puddle_kg;
    vec![match puddle {
        p if p > 1.0 => seen_amount("puddle", p, text!("a puddle under the machine")),
        p if p > 0.02 => seen_amount("damp_floor", p, text!("damp under the machine")),
        _ => seen("dry_floor", text!("dry under the machine")),
    }]
}

fn seen_display(machine: &Machine) -> Seen {
    let text = machine.display_words();
    if text.is_empty() {
        seen("display_dark", text!("the display is dark"))
    } else {
        seen(
            &format!("display {text}"),
            format!("the display reads “{text}”"),
        )
    }
}

fn lid(machine: &Machine) -> Seen {
    if machine.lid_open() {
        seen("lid_open", text!("the lid is open"))
    } else {
        seen("lid_shut", text!("the lid is shut"))
    }
}

fn basket(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let mut list = Vec::new();
    let level_mm = plant.level_m() * 1e3;
    if level_mm > 15.0 {
        list.push(seen_amount(
            "water_in_tub",
            level_mm,
            format!("water about {level_mm:.0} mm deep"),
        ));
    }
    let rpm = units::rpm_from_rad_per_s(plant.readings().basket_rad_per_s.abs());
    if rpm > 1.0 {
        let key = if rpm < 60.0 {
            "basket_creeps"
        } else {
            "basket_spins"
        };
        list.push(seen_amount(
            key,
            rpm,
            format!("the basket turns, about {rpm:.0} r/min"),
        ));
    }
    if plant.readings().foam_ratio > 0.3 {
        list.push(seen("suds", text!("a thick layer of suds")));
    }
    let swing_mm = plant.readings().rim_m * 1e3;
    if swing_mm > 8.0 {
        list.push(seen_amount(
            "tub_swings",
            swing_mm,
            format!("the tub swings about {swing_mm:.0} mm"),
        ));
    }
    if plant.params().suspension.lean_m > 0.008 {
        list.push(seen("tub_leans", text!("the tub hangs crooked")));
    }
    list
}

fn pulsator(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let rpm = units::rpm_from_rad_per_s(plant.readings().pulsator_rad_per_s);
    let mut list = Vec::new();
    if rpm.abs() > 1.0 {
        let way = if rpm > 0.0 {
            "one way"
        } else {
            "the other way"
        };
        let key = if rpm > 0.0 {
            "pulsator_turns"
        } else {
            "pulsator_turns_back"
        };
        list.push(seen_amount(
            key,
            rpm,
            format!("the pulsator turns {way}, about {:.0} r/min", rpm.abs()),
        ));
    } else if machine.motor_energised() {
        list.push(seen("pulsator_stands", text!("the pulsator stands still")));
    }
    if plant.params().pulsator.play_rad > 0.1 {
        list.push(seen(
            "pulsator_sits_loose",
            text!("the pulsator sits loose"),
        ));
    }
    list
}

fn floor(machine: &Machine) -> Vec<Seen> {
    let site = &machine.plant().params().site;
    let slope_deg = site.floor_tilt_rad.to_degrees();
    let mut list = Vec::new();
    if slope_deg > 0.3 {
        list.push(seen_amount(
            "not_level",
            slope_deg,
            if slope_deg < 1.0 {
                text!("the machine leans a little to one side").to_owned()
            } else {
                format!("the machine leans, about {slope_deg:.0}° to one side")
            },
        ));
    } else {
        list.push(seen("level", text!("the machine stands level")));
    }
    if site.foot_firm_ratio < 0.6 {
        list.push(seen(
            "foot_lifts",
            text!("one foot lifts when a corner is pressed"),
        ));
    }
    list
}

fn plug(machine: &Machine) -> Seen {
    if machine.plugged() {
        seen("plug_in", text!("the plug is in its socket"))
    } else {
        seen("plug_out", text!("the plug is out"))
    }
}

fn balance_ring(machine: &Machine) -> Vec<Seen> {
    if machine.plant().params().ring.fill_ratio < 0.5 {
        return vec![seen(
            "ring_salt_crust",
            text!("a crust of salt on the balance ring"),
        )];
    }
    Vec::new()
}
