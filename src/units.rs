//! Constants with their source, and conversions between SI and what people read.
//!
//! Everything below the edges is SI; only files and screens convert, and they do it here.

/// Standard acceleration of free fall, m/s². Published: ISO 80000-3.
pub const STANDARD_GRAVITY_M_PER_S2: f64 = 9.806_65;
/// Standard atmosphere, Pa. Published: ISO 2533.
pub const STANDARD_ATMOSPHERE_PA: f64 = 101_325.0;
/// Celsius zero in kelvin. Published: ISO 80000-5.
pub const CELSIUS_ZERO_K: f64 = 273.15;

/// Revolutions per minute of an angular speed in rad/s.
pub fn rpm_from_rad_per_s(speed_rad_per_s: f64) -> f64 {
    speed_rad_per_s * 30.0 / core::f64::consts::PI
}

/// Angular speed in rad/s of revolutions per minute.
pub fn rad_per_s_from_rpm(speed_rpm: f64) -> f64 {
    speed_rpm * core::f64::consts::PI / 30.0
}

/// Cubic metres per second of litres per minute.
pub fn m3_per_s_from_l_per_min(flow_l_per_min: f64) -> f64 {
    flow_l_per_min / 60_000.0
}

/// Pascals of megapascals.
pub fn pa_from_mpa(pressure_mpa: f64) -> f64 {
    pressure_mpa * 1.0e6
}

/// Radians of degrees.
pub fn rad_from_deg(angle_deg: f64) -> f64 {
    angle_deg * core::f64::consts::PI / 180.0
}

/// Seconds of minutes.
pub fn s_from_min(time_min: f64) -> f64 {
    time_min * 60.0
}

/// Litres per minute of cubic metres per second.
pub fn l_per_min_from_m3_per_s(flow_m3_per_s: f64) -> f64 {
    flow_m3_per_s * 60_000.0
}
