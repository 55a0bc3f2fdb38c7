//! Controls against a stub tub: whole programs, every alarm, pauses, service test, timer.

mod alarms;
mod cam_timer;
mod pauses;
mod programs;
mod service;
mod stub;
