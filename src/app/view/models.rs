//! Plain models of the bench's parts: text in the order it is shown.

use crate::app::shared::Shared;
use crate::app::view::ExamView;
use crate::app::view::hints::Guide;
use crate::app::view::orders::Lead;
use crate::app::view::orders::Picture;
use crate::app::view::orders::Speed;
use crate::app::view::orders::VerbView;
use crate::app::view::tool_models::FaceView;
use crate::app::view::tool_models::GaugeFaceView;
use crate::app::view::tool_models::GaugeView;
use crate::app::view::tool_models::RecorderView;
use crate::app::view::tool_models::TestView;
use crate::app::worker::Worked;
use crate::bench::action::MeterMode;
use crate::bench::hint::Rung;
use crate::drawing::svg::Element;

/// The job card.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CardView {
    /// Title of the job.
    pub title: String,
    /// Name of the customer.
    pub customer: String,
    /// Customer and where they live.
    pub who: String,
    /// The complaint in the customer's words.
    pub complaint: String,
    /// Machine, place, van: name and text.
    pub facts: Vec<(String, String)>,
    /// What was asked and answered so far.
    pub asked: Vec<AskedView>,
    /// Questions that can still be asked.
    pub questions: Vec<QuestionView>,
    /// What can be put right outside the machine.
    pub outside: Vec<VerbView>,
}

/// A question and its answer.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AskedView {
    /// Name of the question.
    pub id: String,
    /// As asked.
    pub question: String,
    /// In the customer's words.
    pub answer: String,
    /// It can be asked once more in other words.
    pub again: bool,
}

/// A question that can be asked.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct QuestionView {
    /// Name of the question.
    pub id: String,
    /// As asked.
    pub text: String,
}

/// A cause a technician can name, in the list they choose from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CauseView {
    /// Name in the catalogue.
    pub id: String,
    /// The part it belongs to, plain name.
    pub part: String,
    /// What is wrong, plain words.
    pub what: String,
}

/// A suspect on the card.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SuspectView {
    /// Name of the cause.
    pub id: String,
    /// Plain words.
    pub what: String,
    /// How sure, 1 to 3.
    pub sure: u8,
    /// Struck out.
    pub struck: bool,
}

/// What kind of line it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum NoteKind {
    /// A reading.
    Reading,
    /// Seen, felt or smelt.
    #[default]
    Look,
    /// Heard.
    Sound,
    /// Said by the customer.
    Customer,
    /// Done.
    Act,
}

impl NoteKind {
    /// The ending of the line's class.
    pub fn class(self) -> &'static str {
        match self {
            Self::Reading => "notebook__line--reading",
            Self::Look => "notebook__line--look",
            Self::Sound => "notebook__line--sound",
            Self::Customer => "notebook__line--customer",
            Self::Act => "notebook__line--act",
        }
    }
}

/// One line of the notebook.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NoteView {
    /// Number, from 1.
    pub number: u32,
    /// Time of day.
    pub time: String,
    /// Kind of line.
    pub kind: NoteKind,
    /// What was measured, looked at, asked or done.
    pub text: String,
    /// What it gave, for readings.
    pub value: Option<String>,
    /// What the data sheet says of a good machine.
    pub sheet: Option<String>,
    /// What the machine was doing.
    pub state: String,
    /// The instrument's own warning.
    pub warning: Option<String>,
    /// A price that was named, with its answer.
    pub is_price: bool,
}

/// How far a step of making safe has got.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SafeState {
    /// Not done.
    #[default]
    Open,
    /// Done, which proves nothing.
    Done,
    /// Proved by a tester.
    Proved,
}

/// One step of making safe.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SafeItem {
    /// The word, such as `unplugged`.
    pub word: String,
    /// How far.
    pub state: SafeState,
    /// Where or what, for a proof.
    pub detail: String,
}

/// A point a lead can be put on.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PointView {
    /// Name of the node, or of the conductor for a clamp.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// What is in the way, plain words.
    pub blocked: Option<String>,
}

/// The instrument as it is set.
#[derive(Clone, Debug, PartialEq)]
pub struct MeterView {
    /// Mode.
    pub mode: MeterMode,
    /// Point under the red lead, or in the jaws.
    pub red: Option<String>,
    /// Point under the black lead.
    pub black: Option<String>,
    /// The lead in hand.
    pub lead: Lead,
    /// Points the leads can go to.
    pub points: Shared<Vec<PointView>>,
    /// A lead is being placed: the pictures show where it can go.
    pub probing: bool,
    /// What the data sheet says here.
    pub sheet: Option<String>,
}

/// What is in hand.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SelectionView {
    /// Plain name.
    pub name: String,
    /// One sentence about it.
    pub about: String,
    /// What is in the way, plain words.
    pub blocked: Option<String>,
    /// Does the missing steps in order.
    pub clear_way: Option<VerbView>,
    /// What can be done.
    pub verbs: Vec<VerbView>,
    /// Where a lead can go here.
    pub points: Vec<VerbView>,
    /// What puts something right.
    pub repairs: Vec<VerbView>,
}

/// A calm card: what happened, the rule, its source, what can be done now.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NoticeView {
    /// One line.
    pub title: String,
    /// What happened, computed; one paragraph an entry.
    pub text: Vec<String>,
    /// Where a rule comes from.
    pub source: Option<String>,
    /// A person or thing came to harm.
    pub danger: bool,
    /// What can be done about it.
    pub verbs: Vec<VerbView>,
}

/// A line of the parts store.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StockView {
    /// Name in the log: `part` or `part:variant`.
    pub id: String,
    /// Plain name.
    pub name: String,
    /// Price.
    pub price: String,
    /// The store has it today.
    pub today: bool,
    /// The store can get it.
    pub orderable: bool,
    /// It is in the van.
    pub in_van: bool,
}

/// What surrounds the repair.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct VisitView {
    /// The whole visit is marked, not the bench work alone.
    pub marked: bool,
    /// Nobody has driven there yet.
    pub before: bool,
    /// Asked on the phone: question and answer.
    pub asked: Vec<(String, String)>,
    /// What can still be asked on the phone.
    pub questions: Vec<QuestionView>,
    /// The parts store.
    pub stock: Vec<StockView>,
    /// What can be done now, by what it is about.
    pub groups: Vec<(&'static str, Vec<VerbView>)>,
}

/// One line of the papers.
#[derive(Clone, Debug, PartialEq)]
pub struct PaperLine {
    /// What it is about.
    pub what: String,
    /// What it says.
    pub text: String,
}

/// The papers a technician has along.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PapersView {
    /// Short name of the machine, for the way into the handbook.
    pub machine: String,
    /// The data sheet.
    pub sheet: Vec<PaperLine>,
    /// The way to each thing.
    pub access: Vec<PaperLine>,
}

/// What changes while one watches, about ten times a second.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LiveView {
    /// Time of day.
    pub clock: String,
    /// Minutes on site.
    pub on_site: String,
    /// Cost so far.
    pub cost: String,
    /// What is heard, in words.
    pub caption: String,
    /// What the machine's display or lamps show.
    pub panel: String,
    /// The instrument's face.
    pub face: FaceView,
    /// The clock's speed.
    pub speed: Speed,
    /// Time is being let pass until something is so.
    pub waiting: bool,
    /// For the screen reader.
    pub said: String,
    /// The recorder's strip.
    pub recorder: RecorderView,
}

/// Hints that can be asked for, and those asked for since the last other act.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct HelpView {
    /// The job gives hints and is not over.
    pub allowed: bool,
    /// The next rung; none once all are used up.
    pub next: Option<Rung>,
    /// Rungs used since the last other act.
    pub used: usize,
    /// Skills that the job practises.
    pub skills: Vec<String>,
    /// The job up to there, as the thread is told of it.
    pub worked: Worked,
}

/// What changes when something is done or taken in hand.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchView {
    /// Name of the scenario.
    pub id: String,
    /// The picture shown.
    pub picture: Picture,
    /// Its tree.
    pub svg: Shared<Element>,
    /// The job card.
    pub card: Shared<CardView>,
    /// The notebook.
    pub notes: Shared<Vec<NoteView>>,
    /// Causes that can be suspected or found.
    pub causes: Shared<Vec<CauseView>>,
    /// Suspects.
    pub suspects: Vec<SuspectView>,
    /// What surrounds the repair.
    pub visit: VisitView,
    /// Data sheet and access guide.
    pub papers: Shared<PapersView>,
    /// Making safe.
    pub safe: Vec<SafeItem>,
    /// The instrument.
    pub meter: MeterView,
    /// Instruments that need no circuit.
    pub gauges: Shared<Vec<GaugeView>>,
    /// What one of them showed last.
    pub gauge: Option<GaugeFaceView>,
    /// The tests after a repair.
    pub tests: Vec<TestView>,
    /// What is in hand.
    pub selection: Option<SelectionView>,
    /// The calm card.
    pub notice: Option<NoticeView>,
    /// What to do next, in an opening job.
    pub guide: Option<Guide>,
    /// Ways into a machine that is shut.
    pub ways_in: Vec<VerbView>,
    /// What is still off, apart or shut.
    pub still_open: Vec<String>,
    /// Trouble with saving, plain words.
    pub storage: Option<String>,
    /// Another tab holds the job.
    pub elsewhere: bool,
    /// It is a try from the middle of a finished job: steps taken over.
    pub tried: Option<usize>,
    /// Hints that can be asked for.
    pub help: Shared<HelpView>,
    /// The job is over.
    pub over: bool,
    /// It is assessed.
    pub exam: Option<ExamView>,
}
