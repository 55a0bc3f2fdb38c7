//! The facts of a job as the safety rules look at them: one act, and what is so around it.

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::MeterMode;
use crate::bench::action::PanelKey;
use crate::bench::action::Sense;
use crate::bench::action::Turnable;
use crate::bench::acts::surface_k;
use crate::bench::acts::touched_nodes;
use crate::bench::after_repair;
use crate::bench::gauge::Gauge;
use crate::bench::job::Job;
use crate::bench::notebook::NoteEntry;
use crate::bench::probe_facts;
use crate::bench::safety::situation::Act;
use crate::bench::safety::situation::DeadProof;
use crate::bench::safety::situation::Situation;
use crate::bench::store;
use crate::bench::visit::Advice;
use crate::bench::visit::Condition;
use crate::bench::workshop::Effect;

/// Resistance of the bleed tool, Ω; of a blade, Ω.
const BLEED_OHM: f64 = 10_000.0;
const BLADE_OHM: f64 = 0.05;
/// Water density for a volume, kg/m³.
const WATER_KG_PER_M3: f64 = 998.2;
/// Water on the floor that wets the shoes, kg.
const WET_FLOOR_KG: f64 = 0.5;

/// The situation of an act about to begin.
pub fn situation(job: &Job, action: &Action) -> Situation {
    let act = act_of(job, action);
    let mut s = Situation::orderly(act);
    water(job, action, &mut s);
    supply(job, action, &mut s);
    proof(job, action, &mut s);
    touched(job, action, &mut s);
    probe_facts::probe(job, action, &mut s);
    machine(job, &mut s);
    surroundings(job, action, &mut s);
    tests(job, &mut s);
    s
}

pub(in crate::bench) fn act_of(job: &Job, action: &Action) -> Act {
    let workshop = &job.scenario().workshop;
    match action {
        Action::TakeOff { step, .. } => match workshop.step(step) {
            Some(step) if step.lays_down => Act::Tilt,
            Some(step) if step.lets_water_out => Act::PullDrainHose,
            Some(step) if step.opens_live_parts => Act::OpenCover,
            Some(step) if step.moves_machine => Act::Other,
            _ => Act::ReachInside,
        },
        Action::PullApart { .. } | Action::PushTogether { .. } => Act::PullConnector,
        Action::Work { work, .. } => match workshop.work(work) {
            Some(work) if work.needs.is_empty() => Act::Other,
            _ => Act::TakeOff,
        },
        Action::PutOldBack { .. } => Act::TakeOff,
        Action::DryOut => Act::ReachInside,
        Action::Sense {
            sense: Sense::Feel,
            place,
        } => match workshop.place(place) {
            Some(place) if place.needs.is_empty() => Act::Other,
            _ => Act::ReachInside,
        },
        Action::Turn {
            what: Turnable::Basket | Turnable::Pulsator,
        } => Act::ReachIntoBasket,
        Action::Turn {
            what: Turnable::Tub,
        } => Act::Other,
        Action::Turn { .. } => Act::ReachInside,
        Action::Meter { red: Some(_), .. } => Act::Measure,
        Action::Discharge { .. } => Act::Discharge,
        Action::BridgeLid { fitted: true } => Act::BridgeLid,
        Action::BridgeLid { fitted: false } => Act::ReachInside,
        Action::Plug { inserted: true } => Act::PlugIn,
        Action::Key {
            key: PanelKey::Power,
        } if !job.machine.switched_on() => Act::SwitchOn,
        Action::Key {
            key: PanelKey::Start,
        } => Act::Start,
        Action::Breaker => Act::ResetDevice,
        Action::Gauge { gauge, place } => gauge_act(job, *gauge, place),
        Action::HouseSwitch { on: true } if job.machine.plugged() => Act::PlugIn,
        Action::SupplyHose { attached: false } => Act::PullInletHose,
        Action::Tap { open: true } => Act::OpenTap,
        Action::Empty { .. } => Act::PullDrainHose,
        Action::MendHouse => Act::WorkOnHouseWiring,
        Action::MakeSafeAndLeave | Action::LeaveUntil { .. } => Act::LeaveUntil,
        Action::Close => Act::HandOver,
        _ => Act::Other,
    }
}

/// Fitting a tee opens the supply line; a hand at a place behind covers reaches inside.
fn gauge_act(job: &Job, gauge: Gauge, place: &str) -> Act {
    let is_new = gauge.is_fitted() && !job.bench().fitted.contains(&gauge);
    let is_behind = |id: &str| {
        let place = job.scenario().workshop.place(id);
        place.is_some_and(|place| !place.needs.is_empty())
    };
    match gauge {
        Gauge::PressureGauge if is_new => Act::PullInletHose,
        // Read by its beam, from outside.
        Gauge::Tachometer => Act::Other,
        _ if is_behind(place) => Act::ReachInside,
        _ => Act::Other,
    }
}

fn supply(job: &Job, action: &Action, s: &mut Situation) {
    let goes_in = matches!(action, Action::Plug { inserted: true });
    // A circuit switched off at the board isolates as a pulled plug does.
    let isolation = &job.bench.isolation;
    s.supply.is_plugged = (job.machine.plugged() || goes_in) && !isolation.house_off;
    if matches!(action, Action::MakeSafeAndLeave) {
        // Part of the act: plug out, tap shut, label on.
        s.supply.is_plugged = false;
        s.water.tap_is_open = false;
    }
    s.supply.is_switched_on = job.machine.switched_on();
    s.supply.is_secured = job.bench.isolation.secured;
    s.supply.has_tripped_unexplained = job.machine.supply_tripped();
}

/// What was shown dead counts where it is touched: at the plug or socket, which feed it all, or
/// at the place where the hands go.
fn proof(job: &Job, action: &Action, s: &mut Situation) {
    let isolation = &job.bench.isolation;
    let roles = &job.machine.model().roles;
    let workshop = &job.scenario().workshop;
    let touched = touched_nodes(job, action);
    let place_of = |node: &str| workshop.test_point(node).map(|t| t.place.as_str());
    let counts = |node: &String| {
        let feeds = roles.plug_pins.contains(node) || roles.socket.contains(node);
        let place = place_of(node);
        feeds
            || touched.contains(node)
            || (place.is_some() && touched.iter().any(|t| place_of(t) == place))
    };
    let both = |(a, b): &&(String, String)| counts(a) && counts(b);
    let pairs = isolation.shown_dead.iter().chain(&isolation.proved_dead);
    let n_unproved = isolation.shown_unproved.iter().filter(both).count();
    let n = pairs.filter(both).count() + n_unproved;
    s.proof.kind = if n > 0 {
        DeadProof::Volts
    } else if isolation.pen_dark.iter().any(counts) {
        DeadProof::Contactless
    } else if isolation.ohms_at_pins {
        DeadProof::Ohms
    } else {
        DeadProof::None
    };
    s.proof.tester_proved_before = n_unproved == 0;
    s.proof.tester_proved_after = isolation.shown_dead.is_empty();
    s.proof.n_pairs = n as u32;
}

fn touched(job: &Job, action: &Action, s: &mut Situation) {
    let nodes = touched_nodes(job, action);
    s.touched.reaches_conductors = !nodes.is_empty();
    let voltages = job.machine.touch_sources(&nodes);
    s.touched.voltage_v = voltages
        .iter()
        .map(|(_, seen)| seen.open_v)
        .fold(0.0, f64::max);
    let (a, b) = &job.machine.model().roles.run_capacitor;
    s.touched.is_capacitor = nodes.iter().any(|n| n == a || n == b);
    s.touched.capacitor_v = job.machine.run_capacitor_charge().voltage_v;
    s.touched.capacitor_measured = job.bench.isolation.capacitor_discharged.is_some()
        || job.bench.isolation.capacitor_measured.is_some();
    if let Action::Discharge { what, tool } = action {
        s.touched.discharge_ohm = match tool {
            DischargeTool::BleedResistor => BLEED_OHM,
            DischargeTool::Screwdriver => BLADE_OHM,
        };
        s.touched.capacitor_v = match what {
            Charged::PlugPins => job.machine.plug_pin_charge().voltage_v,
            Charged::RunCapacitor => s.touched.capacitor_v,
        };
    }
    let hot = match action {
        Action::Work { work, .. } => job.scenario().workshop.work(work).map(|w| w.part.clone()),
        Action::Sense { place, .. } => Some(place.clone()),
        _ => None,
    };
    if let Some(place) = hot {
        s.touched.temperature_k = surface_k(job, &place);
    }
    s.touched.has_sharp_edges = job.scenario().visit.has(Condition::BareEdges);
    s.motion.basket_rad_per_s = job.machine.basket_rad_per_s().abs();
    s.motion.motor_rad_per_s = job.machine.plant().state().drive.rotor_rad_per_s.abs();
}

fn machine(job: &Job, s: &mut Situation) {
    let bench = &job.bench;
    let workshop = &job.scenario().workshop;
    let off = bench.off.iter().filter_map(|id| workshop.step(id));
    s.machine.n_covers_off = off.clone().filter(|step| step.opens_live_parts).count() as u32;
    s.machine.n_fasteners_left = job.n_pieces_off();
    s.machine.has_loose_items = bench.short.values().any(|short| short.is_inside);
    s.machine.has_wet_electrics = !bench.wet.is_empty();
    let effects = off
        .flat_map(|step| &step.while_off)
        .chain(bench.left_wrong.values().flatten());
    let mut n_earth = 0;
    let mut n_joints = 0;
    for effect in effects {
        match effect {
            Effect::ElementOpen(name) if job.machine.is_earth_link(name) => n_earth += 1,
            Effect::Param(name, _) if name.contains("joint") => n_joints += 1,
            _ => {}
        }
    }
    let apart = bench.apart.iter().filter_map(|id| workshop.connector(id));
    let pulled = apart.flat_map(|connector| &connector.elements);
    n_earth += pulled
        .filter(|element| job.machine.is_earth_link(element))
        .count() as u32;
    for fitted in &bench.around.fitted {
        let Some(item) = store::item(workshop, &fitted.item) else {
            continue;
        };
        let Some(variant) = item.variant else {
            continue;
        };
        let below =
            |made: Option<f64>, asked: Option<f64>| made.zip(asked).is_some_and(|(m, a)| m < a);
        s.machine.capacitor_is_underrated |= below(variant.rated_v, item.part.rated_v);
        s.machine.fuse_is_oversized |= below(item.part.rated_a, variant.rated_a);
    }
    s.machine.has_weeping_joint = is_seen_weeping(job);
    s.machine.n_earth_links_off = n_earth;
    s.machine.n_unsealed_joints = n_joints;
    s.machine.lid_is_open = job.machine.lid_open();
    s.machine.lid_is_bridged = job.machine.lid_bridged();
    s.machine.was_seen_spinning_open =
        job.machine.milestones().spins_open && !job.machine.lid_bridged();
}

/// The last look at a joint since something was changed showed water.
fn is_seen_weeping(job: &Job) -> bool {
    let since = job.last_change();
    let is_wet = |key: &str| matches!(key, "supply_joint_drips" | "drain_joint_wet");
    job.notebook().iter().any(|note| {
        note.tick >= since
            && matches!(&note.entry, NoteEntry::Observation { seen, .. } if seen.iter().any(|s| is_wet(&s.key)))
    })
}

fn water(job: &Job, action: &Action, s: &mut Situation) {
    let unaided = |step: &String, helped: &bool| {
        let step = job.scenario().workshop.step(step);
        !helped && step.is_some_and(|step| step.lets_water_out)
    };
    s.water.has_catch_tray =
        !matches!(action, Action::TakeOff { step, helped } if unaided(step, helped));
    s.water.sealant_has_set = job.bench.sealing.is_empty();
    s.water.tap_is_open = job.machine.tap_open();
    s.water.inlet_hose_is_on = job.bench.hose_attached;
    s.water.hose_pressure_is_released = job.bench.isolation.hose_bled;
    s.water.tub_m3 = job.machine.water_kg() / WATER_KG_PER_M3;
    s.water.tub_temperature_k = job.machine.plant().state().tub.bath_k;
    s.water.floor_is_wet = job.machine.plant().readings().puddle_kg > WET_FLOOR_KG;
}

fn surroundings(job: &Job, action: &Action, s: &mut Situation) {
    let isolation = &job.bench.isolation;
    s.site.socket_was_tested = isolation.tester_proved.is_some();
    s.site.earth_is_known_missing = isolation.earth_seen_missing;
    let noticed = &job.bench.around.noticed;
    s.site.has_seen_house_defect =
        isolation.earth_seen_missing || noticed.iter().any(|c| c.is_house_defect());
    s.site.socket_is_seen_scorched = noticed.contains(&Condition::ScorchedSocket);
    s.site.danger_is_noticed = noticed.iter().any(|c| c.is_danger());
    let about = job.scenario().visit.place.iter().any(|c| c.is_bystander());
    s.site.has_bystander = about && !job.bench.around.kept_clear;
    s.handling.cover_is_supported = job.bench.unsupported.is_empty();
    s.handling.has_gloves = job.bench.around.gloves_on;
    s.handling.floor_is_protected =
        job.bench.around.floor_protected || !job.scenario().visit.has(Condition::DelicateFloor);
    s.site.house_defect_was_told = job.bench.advice.contains(&Advice::HouseWiring);
    let laid_down = job.bench.off.iter().any(|id| {
        job.scenario()
            .workshop
            .step(id)
            .is_some_and(|step| step.lays_down)
    });
    s.handling.is_tilted = laid_down;
    if let Action::TakeOff { helped, .. } = action {
        s.handling.has_help_or_strap = *helped;
        s.handling.is_propped = *helped;
    }
    if laid_down {
        s.handling.is_propped = job.bench.propped;
    }
}

fn tests(job: &Job, s: &mut Situation) {
    let bench = &job.bench;
    s.tests.work_was_done = job.hands_were_on_it();
    let last = |mode: MeterMode| {
        let reading = after_repair::readings(job, mode).next()?;
        Some(reading.value.unwrap_or(f64::INFINITY))
    };
    s.tests.earth_bond_ohm = last(MeterMode::EarthBond);
    s.tests.insulation_ohm = last(MeterMode::Insulation);
    s.tests.leakage_a = last(MeterMode::Leakage);
    let seen = job.machine.milestones();
    s.tests.function_was_run = seen.all();
    s.tests.joint_was_opened = job.joint_was_opened();
    s.tests.joints_were_tried = seen.filled;
    s.tests.lid_stop_was_tried = seen.lid_stopped;
    s.tests.lid_stop_matters = bench.works.iter().any(|(_, id)| stops_the_basket(job, id));
    s.tests.is_put_out_of_use = s.act == Act::LeaveUntil;
    s.tests.is_labelled = !matches!(
        job.log().last().map(|e| &e.action),
        Some(Action::LeaveUntil { label: false, .. })
    );
}

/// The work was on what stops the basket or guards the lid.
fn stops_the_basket(job: &Job, work: &str) -> bool {
    let workshop = &job.scenario().workshop;
    let lid = &job.machine.model().roles.lid_switch;
    workshop.work(work).is_some_and(|work| {
        let part = workshop.part(&work.part);
        let elements = part.iter().flat_map(|p| &p.elements).chain(&work.elements);
        let params = part.iter().flat_map(|p| &p.params).chain(&work.params);
        elements.into_iter().any(|e| e == lid)
            || params.into_iter().any(|p| p.starts_with("brake."))
    })
}
