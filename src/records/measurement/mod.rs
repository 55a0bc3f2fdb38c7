//! Measurement: how able people are, how hard jobs are, and how sure one can be of either.
//!
//! Pure functions of scores. Abilities and difficulties are in logits on one scale; a person's
//! ability has the standard normal as its prior where one is needed. Nothing here knows a record,
//! a screen or a clock. Sources of formulas stand in each file.
//!
//! ```text
//! responses ─ calibration ─ items ─┬ ability, sum_score ─ person's estimate and error
//!                                  ├ person_fit, item_fit ─ who and what does not fit
//!                                  └ standard ─ cut scores, linked and equated
//! classical, conditional, functioning, pre_calibration, tracing ─ stand alone
//! ```

pub mod ability; // a person's ability from their scores
pub mod calibration; // item parameters by marginal maximum likelihood
pub mod classical; // alpha, standard error of measurement, item-rest correlation
pub mod conditional; // item difficulties by conditional maximum likelihood
mod counts; // expected counts: the E step
pub mod error; // why something cannot be estimated
pub mod functioning; // does a job treat two groups alike
pub mod grid; // ability as a grid of nodes with weights
pub mod information; // exact standard errors of a calibration
pub mod item; // one job as a partial credit item
pub mod item_fit; // jobs that do not behave as modelled
pub mod linear; // small symmetric systems
mod newton; // the M step
pub mod parameters; // what a calibration estimates
pub mod person_fit; // people whose scores do not fit their ability
pub mod pre_calibration; // difficulty from simulated candidates
pub mod priors; // what is held of difficulties before any data
pub mod responses; // people by jobs, with gaps
pub mod special; // tail probabilities
pub mod standard; // cut scores, linking, equating
pub mod sum_score; // distributions of the raw score
pub mod tracing; // is a skill mastered, chance after chance
