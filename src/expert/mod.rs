//! The expert: which causes are likely after each step, what to do next, what a job should cost.
//!
//! It receives [`Seen`]: the log, what was displayed, looked at and answered, and the scenario
//! without its faults. The simulator is its own likelihood: the log runs beside on one machine a
//! cause, and what was seen is weighed against what that machine would have shown.

mod advice; // what to do next, and what a job should cost
mod apart; // what tells two machines apart
mod belief; // probabilities of the causes after each step
#[cfg(all(test, not(target_arch = "wasm32")))]
mod brute; // belief against Bayes' rule by brute force
mod care; // steps of care done and left out
mod cause; // what could explain a job
mod choice; // which trials a plan reckons with
pub mod crowd; // simulated apprentices
mod cut; // the stretch of a log that leads to a decision
mod degrees; // between the degrees that a fault is reckoned with
mod door; // the one door the expert works through
mod drill; // runs of the machine that show most
mod finer; // a degree found more closely where its fault is likely
mod foreseen; // what could have come of a step
mod fresh; // sound machines that others are begun from
mod hint; // what hints say
mod judged; // a decision and what it was worth
mod likely; // the likeliest causes of a moment
mod line; // one cause's machine as the belief keeps it
mod moment; // one moment of a job as a problem to decide
mod next_words; // a next step in plain words
mod parting; // how the expert ends a job
mod period; // faults that come and go
mod plan; // the planning model of a moment, and the best next step
mod play; // whole jobs worked by the expert
mod reckoning; // each decision of a job beside the best one
pub mod remedy; // what puts a fault right
mod routine; // making safe, opening, closing, testing
mod run; // what is seen of one start counts as one thing
mod seen; // all the expert is told
mod stored; // targets of the jobs that ship
mod symptom; // what a customer can notice, and what a machine with a fault would show
pub mod table; // symptoms of each fault, shipped
pub mod theory; // decision theory, pure and generic
mod told; // a customer's words read as symptoms
mod trial; // what could be tried, and what each likely machine would show
mod twin; // one cause's machine, running beside
mod ways; // from one stand to another
mod weigh; // how well what was seen fits what a machine would have shown

pub use advice::Par;
pub use advice::advise;
pub use advice::expected_cost;
pub use advice::par;
pub use advice::target;
pub use apart::Apart;
pub use apart::Shows;
pub use belief::Belief;
pub use belief::Evidence;
pub use cause::Cause;
pub use cause::causes;
pub use foreseen::Foreseen;
pub use hint::hints;
pub use judged::Decided;
pub use judged::Judged;
pub use next_words::next_words;
pub use plan::Candidate;
pub use plan::Next;
pub use plan::Plan;
pub use plan::Remedy;
pub use play::Played;
pub use play::play;
pub use reckoning::Reckoning;
pub use reckoning::Start;
pub use reckoning::StepTold;
pub use seen::Seen;
pub use seen::Step;
pub use stored::StoredPar;
pub use stored::stored_par;
pub use symptom::Symptom;
pub use symptom::Symptoms;
pub use symptom::shown_by;
pub use told::Told;
