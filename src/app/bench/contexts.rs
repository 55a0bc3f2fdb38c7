//! The three things every part of the bench may ask for: what stands, what moves, and the door.

use yew::prelude::*;

use crate::app::shared::Shared;
use crate::app::view::BenchView;
use crate::app::view::LiveView;
use crate::app::view::Order;

/// What changes when something is done.
pub type Bench = Shared<BenchView>;

/// What changes while one watches.
pub type Live = Shared<LiveView>;

/// Where orders go; the same for the life of a job.
#[derive(Clone, PartialEq)]
pub struct Door(pub Callback<Order>);

/// The present contexts.
///
/// # Panics
/// Outside a job: the host provides them to every screen of a job.
#[hook]
pub fn use_bench() -> Bench {
    use_context().expect("a screen of a job stands inside its host")
}

/// What moves.
///
/// # Panics
/// Outside a job.
#[hook]
pub fn use_live() -> Live {
    use_context().expect("a screen of a job stands inside its host")
}

/// Where orders go.
///
/// # Panics
/// Outside a job.
#[hook]
pub fn use_door() -> Callback<Order> {
    use_context::<Door>()
        .expect("a screen of a job stands inside its host")
        .0
}
