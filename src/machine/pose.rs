//! What a drawing needs to know of a machine's state this moment.
//!
//! Small and flat, so that a painter can compare two of them and change only what moved.

/// The visible state of a machine. Angles grow in the direction the basket spins.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pose {
    /// Angle of the pulsator, rad.
    pub pulsator_rad: f64,
    /// Angle of the basket, rad.
    pub basket_rad: f64,
    /// Angle of the motor pulley, rad.
    pub motor_rad: f64,
    /// Speed of the pulsator, rad/s.
    pub pulsator_rad_per_s: f64,
    /// Speed of the basket, rad/s.
    pub basket_rad_per_s: f64,
    /// Speed of the motor, rad/s.
    pub motor_rad_per_s: f64,
    /// Water level over the tub floor, m.
    pub level_m: f64,
    /// Height of the overflow edge, m.
    pub rim_m: f64,
    /// Suds on the water, 0..1.
    pub foam_ratio: f64,
    /// Flow into the tub, m³/s.
    pub inflow_m3_per_s: f64,
    /// Flow out of the drain hose, m³/s.
    pub outflow_m3_per_s: f64,
    /// Swing of the tub rim, m: amplitude at basket speed.
    pub swing_m: f64,
    /// Static lean of the tub rim, m.
    pub lean_m: f64,
    /// Travel of the drain motor's wire, m.
    pub stroke_m: f64,
    /// Full travel of that wire, m.
    pub full_stroke_m: f64,
    /// The clutch lever follows the wire.
    pub lever_in_link: bool,
    /// Belt tension, N; below a few newtons it hangs off.
    pub belt_tension_n: f64,
    /// The belt or clutch slips.
    pub slipping: bool,
    /// Dry load in the basket, kg.
    pub load_kg: f64,
    /// Water on the floor, kg.
    pub puddle_kg: f64,
    /// Lid open.
    pub lid_open: bool,
    /// Mains plug in its socket.
    pub plugged: bool,
    /// On/off switch pressed in.
    pub switched_on: bool,
    /// How far a timer's dial has come round from the start of its program, rad; 0 without a timer.
    pub dial_rad: f64,
    /// Tap open.
    pub tap_open: bool,
    /// Supply hose screwed to the machine.
    pub hose_attached: bool,
    /// Height of the drain hose's end over the tub's floor, m.
    pub outlet_m: f64,
    /// The machine lies on its front.
    pub laid_down: bool,
    /// Floor slope, rad.
    pub tilt_rad: f64,
    /// Display lit.
    pub display_lit: bool,
}
