//! Decision theory of fault finding: likelihoods of readings, causes weighed by evidence, the worth
//! of a test, the cheapest way to go on, and what a choice cost beside it.
//!
//! Pure and generic: causes, tests, repairs and places are numbers; nothing here knows a machine.
//! Costs are in one unit, information in bits.

pub mod account; // what each step cost beside the best one, and what chance did
pub mod acts; // repairs and tests
pub mod ambiguity; // causes that no test tells apart
pub mod check; // what makes a problem one that can be solved
pub mod epoch; // causes that come and go, and clean runs
pub mod evaluate; // what following a policy costs
pub mod exact; // the cheapest way, for small problems
pub mod frame; // one state of a search, kept without allocation
pub mod information; // bits of a test before and after it
pub mod justify; // was a replacement justified when it was made
pub mod known; // what is known at a moment, and what acts make of it
pub mod leaf; // the cost of repairing in the plain order, as a bound
pub mod look_ahead; // a few steps ahead, the plain order after them
pub mod model; // causes, tests, repairs and places as a problem to solve
pub mod normal; // the normal distribution
pub mod observation; // what is seen or heard, one of a few categories
pub mod one_shot; // one decision, with or without a test before it
pub mod order; // in which order to repair when nothing is tested
pub mod places; // configurations and the cheapest way between them
pub mod play; // runs of a policy drawn from the problem
pub mod policy; // ways of choosing the next act
pub mod posterior; // causes weighed by evidence, in logarithms
pub mod reading; // what a digital instrument shows of a value
pub mod rollout; // a plain policy made better by trying each act before it
pub mod sets; // several faults at once
