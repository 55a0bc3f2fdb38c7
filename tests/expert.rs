//! The expert: what it is told, what it believes, what it does.

#[path = "expert/belief.rs"]
mod belief;
#[path = "expert/blind.rs"]
mod blind;
#[path = "expert/calibration.rs"]
mod calibration;
#[path = "expert/crowd.rs"]
mod crowd;
#[path = "expert/drawn.rs"]
mod drawn;
#[path = "expert/pars.rs"]
mod pars;
#[path = "expert/play.rs"]
mod play;
#[path = "expert/speed.rs"]
mod speed;
#[path = "expert/symptoms.rs"]
mod symptoms;
