//! What is printed from the bench as text and pictures: the job card and the machine as it stands.

use crate::app::format;
use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::CardView;
use crate::app::view::Picture;
use crate::app::view::build;
use crate::app::view::card;
use crate::bench::job::Job;
use crate::drawing::svg::Element;
use crate::language::worded;

/// All sheets of a job.
#[derive(Clone, Debug, PartialEq)]
pub struct SheetsView {
    /// Name of the scenario.
    pub id: String,
    /// The job card.
    pub card: CardView,
    /// Name of the machine.
    pub machine: String,
    /// Time of day after the last act.
    pub clock: String,
    /// The pictures in the order of their tabs; nothing is in hand and no lead is on.
    pub pictures: Vec<(Picture, Shared<Element>)>,
}

/// The sheets of a job as far as it has got; `wiring` says whether the diagram may be seen.
pub fn sheets(job: &Job, wiring: bool) -> SheetsView {
    let mut session = Session::new(job.clone(), job.tick(), Vec::new());
    let may_see = |picture: &Picture| *picture != Picture::Wiring || wiring;
    let draw = |picture: Picture| {
        session.picture = picture;
        (picture, Shared::new(build::picture(&session)))
    };
    let pictures = Picture::ALL.into_iter().filter(may_see).map(draw).collect();
    SheetsView {
        id: job.scenario().id.clone(),
        card: card::card(job),
        machine: worded(&job.scenario().machine.name).into_owned(),
        clock: format::clock(job.tick()),
        pictures,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Action;

    #[test]
    fn every_picture_is_drawn_as_the_machine_stands_and_wiring_only_where_it_is_allowed() {
        let scenario = library::find("no_spin_since_cousin").expect("ships");
        let mut job = Job::new(scenario, 1).expect("starts");
        let before = sheets(&job, true);
        let order: Vec<Picture> = before
            .pictures
            .iter()
            .map(|(picture, _)| *picture)
            .collect();
        assert_eq!(order, Picture::ALL);
        assert_eq!(job.act(Action::Lid { open: true }).refusal, None);
        let after = sheets(&job, false);
        assert!(
            after
                .pictures
                .iter()
                .all(|(picture, _)| *picture != Picture::Wiring)
        );
        assert_ne!(
            *before.pictures[0].1, *after.pictures[0].1,
            "the lid is open now"
        );
        assert!(!after.card.complaint.is_empty() && !after.machine.is_empty());
    }
}
