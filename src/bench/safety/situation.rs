//! What a safety rule looks at: one act, and the facts around it.
//!
//! Facts are what is so just before the act, unless a field says "after". They are facts of
//! the simulated job, not of buttons pressed: a conductor at 0.3 V is dead whoever switched
//! it off. [`Situation::orderly`] is a job in perfect order; whoever builds a situation
//! starts there and states what differs.

/// The act, as the rules need to tell it apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act {
    /// Anything no rule is about.
    Other,
    /// A hand on a part or conductor inside.
    Touch,
    /// A hand or tool inside, on nothing electrical.
    ReachInside,
    /// A hand in the basket.
    ReachIntoBasket,
    /// A cover or panel comes off.
    OpenCover,
    /// A part comes off.
    TakeOff,
    /// A connector or wire is pulled or pushed on.
    PullConnector,
    /// Probes, clamp or tester are applied.
    Measure,
    /// A capacitor is discharged on purpose.
    Discharge,
    /// A lid or door switch is bridged.
    BridgeLid,
    /// The plug goes in.
    PlugIn,
    /// The machine is switched on.
    SwitchOn,
    /// A program or service step is started.
    Start,
    /// A fuse, breaker or residual current device is set again.
    ResetDevice,
    /// The inlet hose is pulled off.
    PullInletHose,
    /// The drain hose is pulled off or lowered.
    PullDrainHose,
    /// The tap is opened.
    OpenTap,
    /// The machine is laid down or tilted.
    Tilt,
    /// The wiring of the house is worked on.
    WorkOnHouseWiring,
    /// The job is left until a second visit.
    LeaveUntil,
    /// The machine is handed over.
    HandOver,
}

impl Act {
    /// Hands go inside the machine.
    pub const fn is_work_inside(self) -> bool {
        matches!(
            self,
            Act::Touch | Act::ReachInside | Act::TakeOff | Act::PullConnector
        )
    }

    /// The machine gets or may get voltage or motion.
    pub const fn is_energising(self) -> bool {
        matches!(self, Act::PlugIn | Act::SwitchOn | Act::Start)
    }

    /// The technician goes away.
    pub const fn is_leaving(self) -> bool {
        matches!(self, Act::LeaveUntil | Act::HandOver)
    }
}

/// The supply of the machine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    /// The plug is in the socket, or goes in by this act.
    pub is_plugged: bool,
    /// The machine's own switch is on.
    pub is_switched_on: bool,
    /// The pulled plug is in sight or locked, so that nobody puts it back.
    pub is_secured: bool,
    /// A protective device has opened and nobody knows why.
    pub has_tripped_unexplained: bool,
}

/// How somebody came to believe that the work place is dead.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DeadProof {
    /// Not tested.
    None,
    /// A contactless tester or a lamp.
    Contactless,
    /// An ohm or continuity reading.
    Ohms,
    /// A two-pole voltage reading at the work place.
    Volts,
}

/// The proof of dead since the machine was last live.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Proof {
    /// How.
    pub kind: DeadProof,
    /// The tester was proved on a live source before.
    pub tester_proved_before: bool,
    /// The tester was proved again after.
    pub tester_proved_after: bool,
    /// Conductor pairs tested, of line-neutral, line-earth, neutral-earth.
    pub n_pairs: u32,
}

/// What the hand touches.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Touched {
    /// Conductors can be reached there.
    pub reaches_conductors: bool,
    /// Highest voltage between what the hand touches and where the body stands, V rms.
    pub voltage_v: f64,
    /// It is a capacitor, its lugs or what hangs on them.
    pub is_capacitor: bool,
    /// Voltage left on that capacitor, V.
    pub capacitor_v: f64,
    /// That capacitor's voltage was measured after the last run.
    pub capacitor_measured: bool,
    /// Resistance of the discharge tool, ohm.
    pub discharge_ohm: f64,
    /// Temperature of the surface, K.
    pub temperature_k: f64,
    /// Sheet-metal edges are passed.
    pub has_sharp_edges: bool,
}

/// What a meter is set to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProbeMode {
    /// Volts.
    Volts,
    /// Anything that sends its own current: ohms, continuity, diode, capacitance.
    Ohms,
    /// Current through the leads.
    Amperes,
    /// Current by clamp.
    Clamp,
    /// Insulation test voltage.
    Insulation,
    /// Earth bond test.
    EarthBond,
}

/// A measurement.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Probe {
    /// What the instrument is set to.
    pub mode: ProbeMode,
    /// Voltage between the points before the instrument is applied, V (rms or direct).
    pub voltage_v: f64,
    /// Measurement category written on the meter, 0 = none.
    pub category: u32,
    /// Category the place asks for.
    pub category_needed: u32,
    /// Leads or case are damaged.
    pub leads_are_damaged: bool,
    /// The instrument was looked over and checked on this job.
    pub was_checked: bool,
    /// Electronics lie between the points.
    pub spans_electronics: bool,
    /// The same question could be answered dead.
    pub dead_test_would_do: bool,
}

/// The state of the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Machine {
    /// Covers off.
    pub n_covers_off: u32,
    /// Fasteners not refitted.
    pub n_fasteners_left: u32,
    /// Earth links off.
    pub n_earth_links_off: u32,
    /// Water joints opened and not sealed.
    pub n_unsealed_joints: u32,
    /// A joint is seen to weep.
    pub has_weeping_joint: bool,
    /// The lid switch is bridged.
    pub lid_is_bridged: bool,
    /// The lid is open.
    pub lid_is_open: bool,
    /// The basket was seen to spin with the lid open, with no bridge fitted.
    pub was_seen_spinning_open: bool,
    /// Water stands on electrical parts.
    pub has_wet_electrics: bool,
    /// Tools or parts lie loose inside.
    pub has_loose_items: bool,
    /// A fuse above the rated one is fitted, or a bridge in its place.
    pub fuse_is_oversized: bool,
    /// A run capacitor of too low a voltage rating is fitted.
    pub capacitor_is_underrated: bool,
}

/// What moves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Motion {
    /// Basket, rad/s, magnitude.
    pub basket_rad_per_s: f64,
    /// Motor or belt pulley, rad/s, magnitude.
    pub motor_rad_per_s: f64,
}

/// Water in and around the machine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Water {
    /// The tap is open.
    pub tap_is_open: bool,
    /// The inlet hose is on at both ends.
    pub inlet_hose_is_on: bool,
    /// The hose was let down to no pressure.
    pub hose_pressure_is_released: bool,
    /// Water in the tub, m³.
    pub tub_m3: f64,
    /// Its temperature, K.
    pub tub_temperature_k: f64,
    /// A bucket or tray stands under what is opened.
    pub has_catch_tray: bool,
    /// The sealant of the last joint has had its time.
    pub sealant_has_set: bool,
    /// The floor is wet.
    pub floor_is_wet: bool,
}

/// The house and the people in it; what has been seen or measured of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Site {
    /// The socket was measured on this job.
    pub socket_was_tested: bool,
    /// The socket's earth is known to be missing.
    pub earth_is_known_missing: bool,
    /// The socket is seen to be scorched or loose.
    pub socket_is_seen_scorched: bool,
    /// Gas, flood, fire or a threatening person has been noticed.
    pub danger_is_noticed: bool,
    /// A child or an animal is within reach.
    pub has_bystander: bool,
    /// A defect of the house has been seen.
    pub has_seen_house_defect: bool,
    /// The customer was told of it, in writing.
    pub house_defect_was_told: bool,
}

/// How the machine is handled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Handling {
    /// A second person or a strap helps.
    pub has_help_or_strap: bool,
    /// The opened top is propped or tied.
    pub cover_is_supported: bool,
    /// The machine is tilted or lies on an edge.
    pub is_tilted: bool,
    /// Tilted, it is propped.
    pub is_propped: bool,
    /// The floor under it is protected.
    pub floor_is_protected: bool,
    /// Gloves against cuts.
    pub has_gloves: bool,
}

/// Tests since the last work on the machine.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tests {
    /// Something was opened, fitted or disconnected.
    pub work_was_done: bool,
    /// A water joint was opened.
    pub joint_was_opened: bool,
    /// Something that stops the basket or guards the lid was worked on or is in doubt.
    pub lid_stop_matters: bool,
    /// Earth bond read, ohm.
    pub earth_bond_ohm: Option<f64>,
    /// Its limit, ohm.
    pub earth_bond_limit_ohm: f64,
    /// Insulation read, ohm.
    pub insulation_ohm: Option<f64>,
    /// Its limit, ohm.
    pub insulation_limit_ohm: f64,
    /// Leakage read, A.
    pub leakage_a: Option<f64>,
    /// Its limit, A.
    pub leakage_limit_a: f64,
    /// The machine was run through its functions.
    pub function_was_run: bool,
    /// The opened joints were tried with water.
    pub joints_were_tried: bool,
    /// The stop by lid was tried.
    pub lid_stop_was_tried: bool,
    /// The machine is left out of use, and the customer told.
    pub is_put_out_of_use: bool,
    /// Left out of use, it carries a label that says so.
    pub is_labelled: bool,
}

/// One act and the facts around it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Situation {
    /// The act.
    pub act: Act,
    /// The supply.
    pub supply: Supply,
    /// The proof of dead.
    pub proof: Proof,
    /// What is touched.
    pub touched: Touched,
    /// The measurement, when the act is one.
    pub probe: Probe,
    /// The machine.
    pub machine: Machine,
    /// What moves.
    pub motion: Motion,
    /// Water.
    pub water: Water,
    /// House and people.
    pub site: Site,
    /// Handling.
    pub handling: Handling,
    /// Tests since the last work.
    pub tests: Tests,
}
