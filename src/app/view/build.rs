//! The bench's models from a session.

use std::collections::BTreeSet;

use crate::app::format;
use crate::app::session::Session;
use crate::app::shared::Shared;
use crate::app::view::BenchView;
use crate::app::view::CardView;
use crate::app::view::CauseView;
use crate::app::view::GaugeView;
use crate::app::view::HelpView;
use crate::app::view::LiveView;
use crate::app::view::MeterView;
use crate::app::view::NoteView;
use crate::app::view::PapersView;
use crate::app::view::Picture;
use crate::app::view::PointView;
use crate::app::view::SuspectView;
use crate::app::view::card;
use crate::app::view::gauges;
use crate::app::view::hints;
use crate::app::view::meter;
use crate::app::view::names::name_of;
use crate::app::view::open_ends;
use crate::app::view::papers;
use crate::app::view::safe;
use crate::app::view::selection::selection;
use crate::app::view::visit;
use crate::app::view::way;
use crate::bench::job::Job;
use crate::bench::kept;
use crate::bench::notebook::Reading;
use crate::bench::observe;
use crate::drawing;
use crate::drawing::DrawingInput;
use crate::drawing::Features;
use crate::drawing::Probes;
use crate::drawing::View;
use crate::drawing::svg::Element;
use crate::drawing::wiring::Symbol;
use crate::drawing::wiring::WiringElement;
use crate::drawing::wiring::WiringInput;
use crate::language::worded;
use crate::machine::Pose;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::say;

/// Models that only change when the log grows, kept from one order to the next.
#[derive(Clone)]
pub struct Kept {
    entries: usize,
    clamp: bool,
    card: Shared<CardView>,
    notes: Shared<Vec<NoteView>>,
    points: Shared<Vec<PointView>>,
    causes: Shared<Vec<CauseView>>,
    gauges: Shared<Vec<GaugeView>>,
    help: Shared<HelpView>,
    papers: Shared<PapersView>,
}

impl Kept {
    /// Builds them anew.
    pub fn of(session: &Session) -> Self {
        let (job, clamp) = (session.job(), session.hold.mode.is_clamp());
        Self {
            entries: job.log().len(),
            clamp,
            card: Shared::new(card::card(job)),
            notes: Shared::new(card::notes(job)),
            points: Shared::new(meter::points(job, clamp)),
            causes: Shared::new(card::causes(job.scenario())),
            gauges: Shared::new(gauges::gauges(job)),
            help: Shared::new(hints::help(job)),
            papers: Shared::new(papers::papers(
                &job.scenario().machine.id,
                &job.scenario().workshop,
            )),
        }
    }

    /// Brings them up to date, keeping what has not changed.
    pub fn refresh(&mut self, session: &Session) {
        let (job, clamp) = (session.job(), session.hold.mode.is_clamp());
        if self.entries != job.log().len() {
            *self = Self {
                causes: self.causes.clone(),
                papers: self.papers.clone(),
                ..Self::of(session)
            };
        } else if self.clamp != clamp {
            self.clamp = clamp;
            self.points = Shared::new(meter::points(job, clamp));
        }
    }
}

/// What changes when something is done or taken in hand.
pub fn bench(session: &Session, kept: &Kept) -> BenchView {
    let job = session.live();
    BenchView {
        id: job.scenario().id.clone(),
        picture: session.picture,
        svg: Shared::new(picture(session)),
        card: kept.card.clone(),
        notes: kept.notes.clone(),
        causes: kept.causes.clone(),
        suspects: suspects(session, &kept.causes),
        visit: visit::visit(job),
        papers: kept.papers.clone(),
        safe: safe::items(
            &job.bench().isolation,
            &job.scenario().workshop,
            open_ends::tap_known(job),
        ),
        meter: MeterView {
            probing: session.probing,
            ..meter::meter(job, &session.hold, kept.points.clone())
        },
        gauges: kept.gauges.clone(),
        gauge: gauges::face(job),
        tests: gauges::tests(job),
        selection: session
            .selected
            .as_ref()
            .map(|thing| selection(job, thing, session.hold.lead)),
        notice: session.notice.clone(),
        guide: hints::guide(job),
        ways_in: way::ways_in(job),
        still_open: open_ends::still_open(job),
        storage: None,
        elsewhere: false,
        tried: None,
        help: kept.help.clone(),
        over: job.is_over(),
        exam: None,
    }
}

/// What changes while one watches. `reading` is taken a few times a second, as a display does.
pub fn live(session: &Session, reading: Option<&Reading>) -> LiveView {
    let job = session.live();
    // Leads that were lifted read nothing, whatever the job still knows of them.
    let reading = reading.filter(|_| session.hold.is_complete());
    LiveView {
        clock: format::clock_with_seconds(job.tick()),
        on_site: format::on_site(job.tick()),
        cost: format::money(job.cost()),
        caption: format::sentence(&observe::caption(job.machine())),
        panel: kept::panel(&job.machine().display_words()),
        face: meter::face(reading, session.hold.mode, session.is_settling()),
        speed: session.speed,
        waiting: session.is_waiting(),
        said: session.said.clone(),
        recorder: gauges::recorder(job, &session.recorder),
    }
}

fn suspects(session: &Session, causes: &[CauseView]) -> Vec<SuspectView> {
    session
        .suspects
        .iter()
        .filter_map(|s| {
            let cause = causes.iter().find(|c| c.id == s.cause)?;
            Some(SuspectView {
                id: s.cause.clone(),
                what: say!("{label}: {value}", label = cause.part, value = cause.what),
                sure: s.confidence,
                struck: s.struck,
            })
        })
        .collect()
}

/// The visible state, with the machine laid down when it is.
pub fn pose(job: &Job) -> Pose {
    let workshop = &job.scenario().workshop;
    let laid_down = job
        .bench()
        .off
        .iter()
        .any(|id| workshop.step(id).is_some_and(|s| s.lays_down));
    Pose {
        laid_down,
        ..job.machine().pose()
    }
}

/// The tree of the picture shown.
pub fn picture(session: &Session) -> Element {
    let job = session.live();
    let workshop = &job.scenario().workshop;
    let removed: BTreeSet<String> = job.bench().off.iter().cloned().collect();
    let pose = pose(job);
    let names = |id: &str| name_of(workshop, id);
    let probes = Probes {
        red: session.hold.red.as_deref(),
        black: session.hold.black.as_deref(),
    };
    let selected = session.selected.as_ref().map(|thing| thing.id());
    let input = DrawingInput {
        workshop,
        features: Features::of(workshop),
        removed: &removed,
        apart: &job.bench().apart,
        selected,
        probes,
        pose: &pose,
        names: &names,
    };
    match view_of(session.picture) {
        Some(view) => drawing::draw(view, &input),
        None => wiring(job, &input),
    }
}

/// The diagram as printed: contacts at rest, since nobody can see a relay from outside.
fn wiring(job: &Job, input: &DrawingInput) -> Element {
    let scenario = job.scenario();
    let model = &scenario.machine.wiring;
    let name = |node: NodeId| {
        model
            .nodes
            .get(node.index())
            .map_or("", |n| n.name.as_str())
    };
    let elements: Vec<WiringElement> = model
        .elements
        .iter()
        .map(|e| WiringElement {
            name: &e.name,
            symbol: symbol(&e.kind),
            nodes: e.nodes.map(name),
            what: &e.what,
        })
        .collect();
    let points = scenario.workshop.test_points.iter();
    let points: Vec<_> = points.map(|p| (&p.node, worded(&p.name))).collect();
    let points: Vec<(&str, &str)> = points
        .iter()
        .map(|(node, name)| (node.as_str(), &**name))
        .collect();
    let apart = job
        .bench()
        .apart
        .iter()
        .filter_map(|id| scenario.workshop.connector(id));
    let apart: BTreeSet<String> = apart.flat_map(|c| c.elements.iter().cloned()).collect();
    drawing::wiring::draw(&WiringInput {
        layout: &scenario.machine.id,
        elements: &elements,
        points: &points,
        closed: &BTreeSet::new(),
        apart: &apart,
        selected: input.selected,
        probes: input.probes,
        names: input.names,
    })
}

fn symbol(kind: &ElementKind) -> Symbol {
    match kind {
        ElementKind::Resistor { .. } => Symbol::Resistor,
        ElementKind::Capacitor { .. } => Symbol::Capacitor,
        ElementKind::Inductor { .. } => Symbol::Inductor,
        ElementKind::Contact { .. } => Symbol::Contact,
        ElementKind::Source { .. } => Symbol::Source,
    }
}

/// The drawing's view of a picture; the wiring diagram is none of them.
pub fn view_of(picture: Picture) -> Option<View> {
    match picture {
        Picture::Outside => Some(View::Outside),
        Picture::Opened => Some(View::Opened),
        Picture::Section => Some(View::Section),
        Picture::Water => Some(View::Water),
        Picture::Wiring => None,
    }
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::app::library;
    use crate::app::view::Thing;
    use crate::bench::scenario::Scenario;

    fn said(scenario: Scenario, thing: Option<Thing>, picture: Picture) -> String {
        let job = Job::new(Arc::new(scenario), 7).expect("sound");
        let mut session = Session::new(job, 0, Vec::new());
        (session.selected, session.picture) = (thing, picture);
        let kept = Kept::of(&session);
        format!("{:?} {:?}", bench(&session, &kept), live(&session, None))
    }

    #[test]
    fn before_anyone_has_looked_a_faulty_machine_and_a_sound_one_look_the_same() {
        for id in ["hums_and_stands", "washes_will_not_spin", "dark_panel"] {
            let faulty = Scenario::clone(&library::find(id).expect("ships"));
            let sound = Scenario {
                faults: Vec::new(),
                ..faulty.clone()
            };
            for picture in [Picture::Outside, Picture::Wiring] {
                let thing = Some(Thing::Place("run_capacitor".to_owned()));
                let is = said(faulty.clone(), thing.clone(), picture);
                assert_eq!(is, said(sound.clone(), thing, picture), "{id}");
            }
        }
    }

    #[test]
    fn every_job_that_ships_opens_and_every_thing_in_it_can_be_taken_in_hand() {
        for scenario in library::all() {
            let job = Job::new(scenario.clone(), 7).expect("sound");
            let mut session = Session::new(job, 0, Vec::new());
            let workshop = scenario.workshop.clone();
            let places = workshop.places.iter().map(|p| Thing::Place(p.id.clone()));
            let parts = workshop.parts.iter().map(|p| Thing::Place(p.id.clone()));
            let steps = workshop.steps.iter().map(|s| Thing::Step(s.id.clone()));
            let connectors = workshop
                .connectors
                .iter()
                .map(|c| Thing::Connector(c.id.clone()));
            for thing in places.chain(parts).chain(steps).chain(connectors) {
                session.selected = Some(thing.clone());
                let selection = selection(session.live(), &thing, session.hold.lead);
                let leads_on = !selection.verbs.is_empty()
                    || !selection.repairs.is_empty()
                    || !selection.points.is_empty()
                    || selection.clear_way.is_some();
                assert!(leads_on, "{}: {thing:?}", scenario.id);
            }
        }
    }
}
