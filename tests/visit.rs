//! The whole visit: both ways through one job, the good one and the poor one, and what each act
//! around a repair needs, does and costs.

mod visit {
    pub mod acts;
    pub mod bench;
    pub mod place;
    pub mod runs;
}
