//! What surrounds the repair: before the drive, coming to terms, care, a second visit, the report.

use crate::app::format;
use crate::app::view::Order;
use crate::app::view::QuestionView;
use crate::app::view::StockView;
use crate::app::view::VerbView;
use crate::app::view::VisitView;
use crate::bench::action::Action;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::kept;
use crate::bench::ledger::ticks_of;
use crate::bench::notebook::NoteEntry;
use crate::bench::questions::PHONE_QUESTIONS;
use crate::bench::store;
use crate::bench::visit::Payer;
use crate::bench::visit::PictureOf;
use crate::bench::visit::Ready;
use crate::language::said;
use crate::language::worded;
use crate::say;

/// The visit as it stands.
pub fn visit(job: &Job) -> VisitView {
    VisitView {
        marked: job.scenario().visit.is_marked,
        before: job.is_before_visit() && !job.is_over(),
        asked: asked(job),
        questions: questions(job),
        stock: stock(job),
        groups: groups(job),
    }
}

fn asked(job: &Job) -> Vec<(String, String)> {
    let answers = job.notebook().iter().filter_map(|note| match &note.entry {
        NoteEntry::Answer { question, text } => {
            let asked = PHONE_QUESTIONS.iter().find(|q| q.id == question)?;
            Some((said(asked.text).to_owned(), kept::answer(text)))
        }
        _ => None,
    });
    answers.collect()
}

fn questions(job: &Job) -> Vec<QuestionView> {
    let known = asked(job);
    PHONE_QUESTIONS
        .iter()
        .filter(|q| known.iter().all(|(text, _)| text != said(q.text)))
        .map(|q| QuestionView {
            id: q.id.to_owned(),
            text: said(q.text).to_owned(),
        })
        .collect()
}

fn stock(job: &Job) -> Vec<StockView> {
    let scenario = job.scenario();
    let van = &job.bench().around.van;
    store::items(&scenario.workshop)
        .map(|item| StockView {
            in_van: van.contains(&item.id()),
            name: worded(item.name()).into_owned(),
            price: format::money(store::price(scenario, &item)),
            today: store::ready(scenario, &item) == Ready::Today,
            orderable: store::ready(scenario, &item) != Ready::Never,
            id: item.id(),
        })
        .collect()
}

/// What can be done now, by what it is about.
fn groups(job: &Job) -> Vec<(&'static str, Vec<VerbView>)> {
    let back: Vec<(String, Action)> = job
        .bench()
        .around
        .fitted
        .iter()
        .filter_map(|fitted| store::item(&job.scenario().workshop, &fitted.item))
        .map(|item| {
            let part = item.part.id.clone();
            let word = say!("put the old {part} back", part = worded(&item.part.name));
            (word, Action::PutOldBack { part })
        })
        .collect();
    let gloves = !job.bench().around.gloves_on;
    let all = [
        (
            say!("Instrument"),
            vec![
                does(
                    say!("look it over, probes together"),
                    Action::CheckInstrument,
                ),
                does(say!("take the spare one"), Action::SpareInstrument),
            ],
        ),
        (
            say!("Who pays"),
            vec![
                does(say!("read receipt and rating plate"), Action::CheckPapers),
                does(
                    say!("the maker pays"),
                    Action::Warranty {
                        payer: Payer::Maker,
                    },
                ),
                does(
                    say!("the customer pays"),
                    Action::Warranty {
                        payer: Payer::Customer,
                    },
                ),
                does(say!("telephone the landlord"), Action::AskPayer),
                does(say!("take the fee for finding the fault"), Action::TakeFee),
            ],
        ),
        (
            say!("With care"),
            vec![
                does(
                    if gloves {
                        say!("gloves on")
                    } else {
                        say!("gloves off")
                    },
                    Action::Gloves { on: gloves },
                ),
                does(say!("blanket on the floor"), Action::ProtectFloor),
                does(say!("keep the room free"), Action::KeepClear),
                does(say!("mop the floor"), Action::MopFloor),
                does(say!("cold water into the tub"), Action::CoolWater),
                does(say!("work on the house wiring"), Action::MendHouse),
            ],
        ),
        (say!("Parts on trial"), back),
        (
            say!("Report"),
            vec![
                does(
                    say!("picture from outside"),
                    Action::TakePicture {
                        of: PictureOf::Outside,
                    },
                ),
                does(
                    say!("picture opened"),
                    Action::TakePicture {
                        of: PictureOf::Opened,
                    },
                ),
                does(say!("have it signed"), Action::Sign),
            ],
        ),
    ];
    all.into_iter()
        .map(|(name, acts)| {
            let verbs = acts
                .into_iter()
                .filter_map(|(word, act)| verb(job, word, act));
            (name, verbs.collect::<Vec<_>>())
        })
        .filter(|(_, verbs)| !verbs.is_empty())
        .collect()
}

fn does(word: &str, act: Action) -> (String, Action) {
    (word.to_owned(), act)
}

fn verb(job: &Job, word: String, act: Action) -> Option<VerbView> {
    let (blocked, hint) = match job.refusal(&act) {
        None => (false, String::new()),
        Some(Refusal::AlreadySo | Refusal::JobOver) => return None,
        Some(Refusal::NotNow { why }) => (true, worded(&why).into_owned()),
        Some(_) => (true, String::new()),
    };
    let ticks = ticks_of(&act, &job.scenario().workshop, job.machine().water_kg());
    Some(VerbView {
        word,
        takes: format::duration(ticks),
        hint,
        blocked,
        order: Order::Do(vec![act]),
    })
}
