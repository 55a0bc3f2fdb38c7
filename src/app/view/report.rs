//! The report as text and pictures, from a job.

use crate::app::format;
use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::Picture;
use crate::app::view::build;
use crate::app::view::card;
use crate::app::view::shown;
use crate::bench::bill;
use crate::bench::job::Job;
use crate::bench::notebook::Note;
use crate::bench::notebook::NoteEntry;
use crate::bench::visit::PictureOf;
use crate::bench::words;
use crate::drawing::svg::Element;
use crate::language::worded;
use crate::say;

/// One page.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ReportView {
    /// Name of the scenario.
    pub id: String,
    /// Whose machine.
    pub who: String,
    /// Machine, place, time.
    pub facts: Vec<(&'static str, String)>,
    /// Complaint and answers.
    pub said: Vec<String>,
    /// Causes stated.
    pub found: Vec<String>,
    /// Works done and parts fitted.
    pub done: Vec<String>,
    /// Pictures with their time.
    pub pictures: Vec<(String, Shared<Element>)>,
    /// Readings.
    pub numbers: Vec<(String, String)>,
    /// Advice, old part, papers.
    pub told: Vec<String>,
    /// The bill.
    pub bill: Vec<(String, String)>,
    /// Who signed, or that nobody did.
    pub signed: String,
}

/// The report of a job as far as it has got.
pub fn report(job: &Job) -> ReportView {
    let scenario = job.scenario();
    let (bench, workshop) = (job.bench(), &scenario.workshop);
    let works = bench.works.iter().filter_map(|(_, id)| workshop.work(id));
    let causes = bench.findings.last().map(|f| f.causes.as_slice());
    let found = causes.unwrap_or_default().iter();
    ReportView {
        id: scenario.id.clone(),
        who: card::who(scenario),
        facts: vec![
            (say!("Machine"), worded(&scenario.machine.name).into_owned()),
            (say!("Place"), worded(&scenario.site.notes).into_owned()),
            (say!("On site"), format::on_site(job.tick())),
        ],
        said: vec![worded(&scenario.customer.complaint).into_owned()],
        found: found
            .filter_map(|id| scenario.machine.fault(id))
            .map(|fault| format::sentence(&worded(&fault.what)))
            .collect(),
        done: works.map(|w| format::sentence(&worded(&w.name))).collect(),
        pictures: pictures(job),
        numbers: job
            .notebook()
            .iter()
            .filter_map(|n| number(job, n))
            .collect(),
        told: job.notebook().iter().filter_map(|n| told(job, n)).collect(),
        bill: bill::lines(job)
            .into_iter()
            .map(|line| {
                (
                    format::sentence(&worded(&line.what)),
                    format::money(line.price),
                )
            })
            .collect(),
        signed: if bench.around.signed {
            worded(&scenario.customer.name).into_owned()
        } else {
            say!("not yet").to_owned()
        },
    }
}

fn number(job: &Job, note: &Note) -> Option<(String, String)> {
    let NoteEntry::Reading(reading) = &note.entry else {
        return None;
    };
    let (red, black) = (reading.red.as_deref(), reading.black.as_deref());
    let what = words::placed(reading.mode, red, black, &job.scenario().workshop);
    Some((format::sentence(&what), shown::reading(&reading.display)))
}

/// What was told, shown or agreed; the notebook keeps it in English.
fn told(job: &Job, note: &Note) -> Option<String> {
    let NoteEntry::Act { text } = &note.entry else {
        return None;
    };
    let belongs = ["Told", "Shown", "Papers", "Who pays", "Price named"];
    belongs
        .iter()
        .any(|word| text.starts_with(word))
        .then(|| words::note(note, &job.scenario().workshop))
}

/// One replay for all pictures: each is drawn when its act has been done.
fn pictures(job: &Job) -> Vec<(String, Shared<Element>)> {
    let taken = &job.bench().around.pictures;
    if taken.is_empty() {
        return Vec::new();
    }
    let Ok(mut again) = Job::new(job.scenario().clone(), job.seed()) else {
        return Vec::new();
    };
    let mut list = Vec::new();
    for (index, entry) in job.log().iter().enumerate() {
        again.advance_to(entry.tick);
        again.act(entry.action.clone());
        for picture in taken.iter().filter(|p| p.entry == index) {
            let mut session = Session::new(again.clone(), again.tick(), Vec::new());
            session.picture = match picture.of {
                PictureOf::Outside => Picture::Outside,
                PictureOf::Opened => Picture::Opened,
            };
            let svg = Shared::new(build::picture(&session));
            list.push((format::clock(picture.tick), svg));
        }
    }
    list
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Action;

    #[test]
    fn a_picture_shows_the_machine_as_it_was_when_it_was_taken() {
        let scenario = library::find("no_spin_since_cousin").expect("ships");
        let mut job = Job::new(scenario, 1).expect("starts");
        let of = PictureOf::Outside;
        for action in [
            Action::TakePicture { of },
            Action::Lid { open: true },
            Action::TakePicture { of },
        ] {
            assert_eq!(job.act(action).refusal, None);
        }
        let view = report(&job);
        assert_eq!(view.pictures.len(), 2);
        assert_ne!(
            *view.pictures[0].1, *view.pictures[1].1,
            "the lid was opened between"
        );
        assert_eq!(view.signed, "not yet");
        assert!(view.bill.len() >= 3);
    }
}
