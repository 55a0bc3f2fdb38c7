//! The bench: one job on one machine, and every act a technician can do to it.

pub mod accuracy; // classes, leads, and each instrument's own error
pub mod action; // every act, as a log keeps it
mod acts; // what each act does
pub mod after_repair; // tests after a repair, their limits, what was shown
pub mod around; // what the acts around a repair have changed
pub mod bill; // what was done, fitted, and who pays
pub mod body; // a person as part of a circuit
pub mod discharge; // a charged capacitor into a hand
pub mod display; // digits and units of the instruments
pub mod event; // what an act can bring besides its purpose
pub mod facts; // a job as the safety rules look at it
pub mod gauge; // instruments that need no circuit
pub mod gauge_scales; // their scales
pub mod hint; // a ladder of hints in practice, and what each costs
mod history; // what the log says of the hands
pub mod instrument; // what instruments need, and what one shows that is not sound
pub mod isolation; // made safe: done and proved
pub mod job; // scenario + seed + log
pub mod kept; // what is kept in English, said in the reader's language
pub mod ledger; // clock and money
pub mod notebook; // readings, looks, answers, acts
pub mod observe; // what senses give, from the machine's state
mod passing; // time that passes on a job
mod probe_facts; // leads put somewhere, as the safety rules look at it
pub mod protection; // residual current devices, breakers, fuses
pub mod questions; // what a customer can be asked
pub mod recorder; // strip-chart recorder
pub mod refitting; // loose pieces counted, sealants and their time
pub mod rules; // the safety rules held against each act
pub mod safety; // safety rules as data and predicates
pub mod scenario; // one customer's call
pub mod shock; // what a current does to a person, and what ends it
pub mod signature; // what a fault makes different, computed
pub mod state; // how the bench around the machine stands
pub mod store; // what the store hands over, and what it costs
pub mod visit; // what surrounds a repair
pub mod words; // plain words for acts and notes
pub mod working; // a job begun, worked, run again
pub mod workshop; // parts, access, connectors, test points of a type of machine
