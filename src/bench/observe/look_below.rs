//! Looking: what stands out inside and from below.

use crate::bench::notebook::Seen;
use crate::bench::observe::seen;
use crate::bench::observe::seen_amount;
use crate::machine::Machine;
use crate::text;

pub(super) fn at(machine: &Machine, place: &str) -> Vec<Seen> {
    match place {
        "belt" => belt(machine),
        "motor_pulley" => motor_pulley(machine),
        "motor" => motor(machine),
        "clutch_lever" => clutch_lever(machine),
        "drain_motor" => drain_motor(machine),
        "drain_valve" => drain_valve(machine),
        "run_capacitor" => capacitor(machine),
        "air_hose" => air_hose(machine),
        "drain_pump" => drain_pump(machine),
        "mechanism" => mechanism(machine),
        "rods" => rods(machine),
        "lid_switch" => lid_switch(machine),
        "balance_switch" => balance_switch(machine),
        _ => Vec::new(),
    }
}

fn belt(machine: &Machine) -> Vec<Seen> {
    let (now, good) = (&machine.plant().params().belt, &machine.model().plant.belt);
    let mut list = Vec::new();
    if now.tension_n < 3.0 {
        list.push(seen("belt_off", text!("the belt is off")));
    } else if now.tension_n < 0.45 * good.tension_n {
        list.push(seen(
            "belt_slack",
            text!("the belt hangs slack; black dust around the pulleys"),
        ));
    } else if now.tension_n > 2.0 * good.tension_n {
        list.push(seen("belt_tight", text!("the belt is tight as a string")));
    } else {
        list.push(seen("belt_sits", text!("the belt sits in line")));
    }
    if now.friction_ratio < 0.5 * good.friction_ratio {
        list.push(seen(
            "belt_oily",
            text!("the belt's flanks are dark and shiny"),
        ));
    }
    if now.cracked_ratio > 0.3 {
        list.push(seen("belt_cracked", text!("the belt is cracked")));
    }
    list
}

fn motor_pulley(machine: &Machine) -> Vec<Seen> {
    if machine.plant().params().belt.pulley_grip_n_m < 5.0 {
        return vec![seen(
            "pulley_mark_off",
            text!("the pulley's mark has moved against the shaft"),
        )];
    }
    Vec::new()
}

fn motor(machine: &Machine) -> Vec<Seen> {
    let mut list = Vec::new();
    if machine.motor_energised() && machine.plant().readings().rotor_rad_per_s.abs() < 1.0 {
        list.push(seen("motor_stands", text!("the motor stands still")));
    }
    if machine.plant().params().heat.fan_w_per_k < 0.5 * machine.model().plant.heat.fan_w_per_k {
        list.push(seen(
            "motor_fluff",
            text!("the motor's slots are full of fluff"),
        ));
    }
    list
}

fn clutch_lever(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let (now, good) = (&plant.params().lever, &machine.model().plant.lever);
    let mut list = Vec::new();
    if now.seated_ratio < 0.5 {
        list.push(seen(
            "lever_out_of_link",
            text!("the clutch lever's end lies beside its link"),
        ));
    } else {
        list.push(seen(
            "lever_in_link",
            text!("the clutch lever sits in its link"),
        ));
    }
    if now.play_m > good.play_m + 0.003 {
        let play_mm = now.play_m * 1e3;
        list.push(seen_amount(
            "lever_play",
            play_mm,
            format!("about {play_mm:.0} mm of play"),
        ));
    }
    if now.bent_m > 0.001 {
        list.push(seen(
            "lever_bent",
            text!("the clutch lever does not go back all the way"),
        ));
    }
    let travel_mm = plant.linkage().lever_m * 1e3;
    if travel_mm > 1.0 {
        list.push(seen_amount(
            "lever_pulled",
            travel_mm,
            format!("pulled about {travel_mm:.0} mm"),
        ));
    }
    list
}

fn drain_motor(machine: &Machine) -> Vec<Seen> {
    let stroke_mm = machine.plant().readings().stroke_m * 1e3;
    vec![if stroke_mm > 0.5 {
        seen_amount(
            "wire_pulled",
            stroke_mm,
            format!("the wire is pulled {stroke_mm:.0} mm"),
        )
    } else {
        seen("wire_at_rest", text!("the wire is at rest"))
    }]
}

fn drain_valve(machine: &Machine) -> Vec<Seen> {
    let drain = &machine.plant().params().drain;
    let mut list = Vec::new();
    if drain.open_ratio < 0.5 {
        list.push(seen(
            "drain_lint",
            text!("lint and cloth in the drain valve"),
        ));
    }
    if drain.leak_m3_per_s > 5e-5 || drain.valve_min_open_ratio > 0.02 {
        list.push(seen(
            "drain_seat_leaks",
            text!("the bellows does not close on its seat"),
        ));
    } else if drain.leak_m3_per_s > 0.0 {
        list.push(seen("drain_seat_dirty", text!("dirt on the valve seat")));
    }
    if drain.joint_leak_ratio > 0.0 {
        list.push(seen("drain_joint_wet", text!("the drain joint is wet")));
    }
    list
}

fn capacitor(machine: &Machine) -> Vec<Seen> {
    let ratio = machine.run_capacitor_ratio();
    // A can that has lost much of its value has usually swollen. Common practice.
    if ratio < 0.5 {
        return vec![seen(
            "capacitor_bulged",
            text!("the capacitor's can is swollen"),
        )];
    }
    let rating = machine.run_capacitor_nominal_f() * 1e6;
    vec![seen(
        "capacitor_label",
        format!("the label says {:.0} µF", rating * ratio.max(1.0)),
    )]
}

fn drain_pump(machine: &Machine) -> Vec<Seen> {
    let (now, good) = (
        &machine.plant().params().drain,
        &machine.model().plant.drain,
    );
    if now.pump_head_m < 0.2 * good.pump_head_m {
        return vec![seen(
            "impeller_blocked",
            text!("the impeller does not turn; something sits in it"),
        )];
    }
    vec![seen(
        "impeller_turns",
        text!("the impeller turns with a finger"),
    )]
}

fn air_hose(machine: &Machine) -> Vec<Seen> {
    let (now, good) = (&machine.plant().params().trap, &machine.model().plant.trap);
    let mut list = Vec::new();
    if now.leak_m3_per_s_pa >= 1e-9 {
        list.push(seen("air_hose_off", text!("the air hose is off or split")));
    } else if now.leak_m3_per_s_pa > 0.0 {
        list.push(seen(
            "air_hose_chafed",
            text!("a chafed spot on the air hose"),
        ));
    }
    if now.lag_s > 1e6 {
        list.push(seen(
            "air_hose_pinched",
            text!("the air hose is pinched flat"),
        ));
    } else if now.lag_s > 20.0 * good.lag_s {
        list.push(seen("air_hose_kinked", text!("the air hose has a kink")));
    }
    list
}

fn mechanism(machine: &Machine) -> Vec<Seen> {
    let plant = machine.plant();
    let mut list = Vec::new();
    if plant.params().tub.seal_leak_m3_per_s > 0.0 {
        list.push(seen(
            "seal_rust_track",
            text!("a rusty track of water below the gearbox"),
        ));
    }
    if plant.params().gear.bolts_play_rad > 0.01 {
        list.push(seen(
            "mechanism_loose",
            text!("the gearbox moves against its plate"),
        ));
    }
    list
}

fn rods(machine: &Machine) -> Vec<Seen> {
    let suspension = &machine.plant().params().suspension;
    let good = &machine.model().plant.suspension;
    let mut list = Vec::new();
    if suspension.locked_ratio > 0.5 {
        list.push(seen(
            "transport_pieces",
            text!("the transport pieces are still in"),
        ));
    }
    if suspension.lean_m > 0.03 {
        list.push(seen("rod_unhooked", text!("one rod is out of its seat")));
    } else if suspension.lean_m > 0.008 {
        list.push(seen(
            "rod_sags",
            text!("one spring is shorter than the others"),
        ));
    }
    if suspension.damping_ratio < 0.6 * good.damping_ratio {
        list.push(seen("rods_oily", text!("oil on the rods' cups")));
    }
    list
}

fn lid_switch(machine: &Machine) -> Vec<Seen> {
    let mut list = vec![if machine.lid_open() {
        seen("lid_switch_free", text!("the lid switch is not pressed"))
    } else {
        seen(
            "lid_switch_pressed",
            text!("the lid presses the lid switch"),
        )
    }];
    if machine.lid_bridged() {
        list.push(seen(
            "lid_switch_bridged",
            text!("a wire bridge sits across its terminals"),
        ));
    }
    list
}

fn balance_switch(machine: &Machine) -> Vec<Seen> {
    let gap_mm = machine.plant().params().suspension.lever_gap_m * 1e3;
    vec![if gap_mm < 0.0 {
        seen(
            "lever_pushed",
            text!("the out-of-balance lever is pushed already, with the tub at rest"),
        )
    } else if gap_mm > 100.0 {
        seen(
            "lever_does_not_reach",
            text!("the out-of-balance lever is bent away from the tub"),
        )
    } else {
        seen_amount(
            "lever_gap",
            gap_mm,
            format!("about {gap_mm:.0} mm between lever and tub"),
        )
    }]
}
