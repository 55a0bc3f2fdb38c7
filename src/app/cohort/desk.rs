//! The review of a cohort: takes files in, has them checked in threads, and shows what they say.

mod aside;

use std::collections::BTreeMap;

use web_sys::File;
use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::cohort::aside::Aside;
use crate::app::cohort::decision;
use crate::app::cohort::drop::Drop;
use crate::app::cohort::hands::Doing;
use crate::app::cohort::hands::Hand;
use crate::app::cohort::hands::Rounds;
use crate::app::cohort::hands::Task;
use crate::app::cohort::hands::hello;
use crate::app::cohort::hands::looks;
use crate::app::cohort::hands::works;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::kept_rulings::Rulings;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::rows::Rows;
use crate::app::cohort::saving;
use crate::app::cohort::shown;
use crate::app::cohort::shown::Looks;
use crate::app::cohort::source::Kind;
use crate::app::cohort::source::Source;
use crate::app::cohort::source::kind;
use crate::app::cohort::source::sources;
use crate::app::lost_points::Marked;
use crate::app::shared::Shared;
use crate::app::sitting;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::assess::assessment_file::AssessmentFile;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::scenario::read::read_back;

/// Threads at most; more than a few only take turns.
const MOST_THREADS: f64 = 8.0;
/// Between two drawings while files come in, ms.
const DRAW_MS: f64 = 250.0;

/// What happens to the desk.
pub enum Msg {
    /// Assessments made in this browser.
    Given(Vec<Given>),
    /// Files were chosen.
    Files(Vec<File>),
    /// They were opened.
    Sources(Vec<Source>, Vec<String>),
    /// A thread gets a text; none when it cannot be read.
    Text(usize, Task, Option<String>),
    /// A thread answers.
    Answer(usize, Answer),
    /// The cohort is worked out.
    Worked(Answer),
    /// A tab.
    Show(usize),
    /// A person, a skill, a job, or back to all.
    Open(Option<Opened>),
    /// A record's work, step by step.
    Replay(usize, usize),
    /// A record as it was written.
    Read(usize, usize),
    /// It is there, or why it is not.
    Aside(Result<Aside, String>),
    /// Back from it.
    Back,
    /// What explains a person's marks.
    Marked(String, Vec<Marked>),
    /// A job is to be voided, or not after all.
    Void(Option<String>),
    /// Something about the rulings.
    Rule(Change),
    /// The running again is stopped.
    Stop,
    /// A file is to be saved.
    Save(&'static str),
}

/// The desk.
pub struct CohortScreen {
    sources: Vec<Source>,
    rows: Rows,
    /// Text and key of each assessment, by its name.
    assessments: BTreeMap<String, (String, String)>,
    files: Vec<AssessmentFile>,
    /// A key that came as a file.
    key: Option<String>,
    hands: Vec<Hand>,
    rounds: Rounds,
    /// What is shown is not of all that is known.
    stale: bool,
    stats: Option<Thread>,
    cohort: Option<Shared<Cohort>>,
    decisions: Shared<Vec<String>>,
    rulings: Rulings,
    told: Vec<String>,
    shown: usize,
    opened: Option<Opened>,
    aside: Option<Aside>,
    /// What explains the marks of the person that is opened.
    marked: Vec<Marked>,
    voiding: Option<String>,
    drawn_ms: f64,
}

impl Component for CohortScreen {
    type Message = Msg;
    type Properties = ();

    fn create(ctx: &Context<Self>) -> Self {
        ctx.link()
            .send_future(async { Msg::Given(Given::all().await) });
        ctx.link()
            .send_future(async { Msg::Rule(Rulings::kept().await) });
        Self {
            sources: Vec::new(),
            rows: Rows::default(),
            assessments: BTreeMap::new(),
            files: Vec::new(),
            key: None,
            hands: Vec::new(),
            rounds: Rounds::default(),
            stale: false,
            stats: None,
            cohort: None,
            decisions: Shared::new(Vec::new()),
            rulings: Rulings::default(),
            told: Vec::new(),
            shown: 0,
            opened: None,
            aside: None,
            marked: Vec::new(),
            voiding: None,
            drawn_ms: 0.0,
        }
    }

    fn update(&mut self, ctx: &Context<Self>, msg: Msg) -> bool {
        match msg {
            Msg::Given(all) => {
                for given in all {
                    let key = given.key.to_string();
                    self.know(given.text(), key);
                }
            }
            Msg::Files(files) => {
                self.told = vec!["Opening …".to_owned()];
                ctx.link().send_future(async move {
                    let (all, told) = sources(files).await;
                    Msg::Sources(all, told)
                });
            }
            Msg::Sources(all, told) => {
                self.told = told;
                self.sources.extend(all);
                self.rounds.stopped = false;
                self.start(ctx);
            }
            Msg::Text(hand, task, text) => return self.text(ctx, hand, task, text),
            Msg::Answer(hand, answer) => return self.answer(ctx, hand, answer),
            Msg::Worked(answer) => {
                self.stats = None;
                match answer {
                    Answer::Cohort { cohort } => self.worked(read_back(&cohort)),
                    Answer::Failed { why } => self.told = vec![why],
                    _ => return false,
                }
            }
            Msg::Show(tab) => self.shown = tab,
            Msg::Open(opened) => {
                self.opened = opened;
                self.explain(ctx);
            }
            Msg::Replay(source, line) => self.set_aside(ctx, source, line, false),
            Msg::Read(source, line) => self.set_aside(ctx, source, line, true),
            Msg::Aside(Ok(aside)) => self.aside = Some(aside),
            Msg::Aside(Err(why)) => self.told = vec![why],
            Msg::Back => self.aside = None,
            Msg::Marked(candidate, marked) => {
                if self.opened == Some(Opened::Person(candidate)) {
                    self.marked = marked;
                }
            }
            Msg::Void(job) => self.voiding = job,
            Msg::Rule(change) => {
                self.voiding = None;
                self.rulings.change(change);
                self.work_out(ctx);
            }
            Msg::Stop => self.rounds.stopped = true,
            Msg::Save(what) => self.told = vec![saving::save(&self.looks(), what)],
        }
        true
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        let link = ctx.link();
        if let Some(aside) = &self.aside {
            let back = self.opened.as_ref().map_or("Back", Opened::back);
            return aside.page(back, link.callback(|()| Msg::Back));
        }
        html! {
            <main class="page page--wide cohort" id="main" tabindex="-1">
                <header class="page__head no-print"><h1>{ "Results" }</h1>
                    <p class="page__lead">{ "Drop any number of result files. Each is checked here: its seal at once, then its work is run again. Nothing leaves this browser." }</p></header>
                <Drop on_files={link.callback(Msg::Files)} />
                { self.rulings.offer(&link.callback(Msg::Rule)) }
                { shown::progress(&self.looks(), link) }
                { shown::shown(&self.looks(), link) }
            </main>
        }
    }
}

impl CohortScreen {
    fn looks(&self) -> Looks<'_> {
        Looks {
            rows: &self.rows,
            files: &self.files,
            cohort: self.cohort.as_ref(),
            decisions: &self.decisions,
            rulings: &self.rulings,
            told: &self.told,
            tab: self.shown,
            opened: self.opened.as_ref(),
            marked: &self.marked,
            voiding: self.voiding.as_deref(),
            done: self.rounds.done(self.sources.len()),
            n_sources: self.sources.len(),
            works: works(&self.hands),
            reckons: self.stats.is_some(),
            stopped: self.rounds.stopped,
        }
    }

    /// Takes an assessment in, with its key if it is known.
    fn know(&mut self, text: String, key: String) -> bool {
        let Ok(read) = sitting::assessment("assessment", &text) else {
            return false;
        };
        let kept = self
            .assessments
            .get(&read.file.id)
            .map_or_else(String::new, |(_, key)| key.clone());
        let key = if key.is_empty() { kept } else { key };
        self.assessments.insert(read.file.id.clone(), (text, key));
        self.files.retain(|file| file.id != read.file.id);
        self.files.push(read.file);
        true
    }

    /// Texts of all assessments, each with the key that may seal it.
    fn against(&self) -> Vec<(String, String)> {
        let any = || self.key.clone().unwrap_or_default();
        let pair = |(text, key): &(String, String)| {
            let key = if key.is_empty() { any() } else { key.clone() };
            (text.clone(), key)
        };
        self.assessments.values().map(pair).collect()
    }

    /// Starts as many threads as there is work for, and sets those that rest to work.
    fn start(&mut self, ctx: &Context<Self>) {
        let cores = gloo::utils::window().navigator().hardware_concurrency();
        let wanted = (cores - 1.0).clamp(1.0, MOST_THREADS) as usize;
        while self.hands.len() < wanted.min(self.sources.len()) {
            let at = self.hands.len();
            let answered = ctx.link().callback(move |answer| Msg::Answer(at, answer));
            let Some(thread) = Thread::ask(&hello(), answered) else {
                self.told
                    .push("This browser has no threads: nothing can be checked in it.".to_owned());
                return;
            };
            self.hands.push(Hand {
                thread,
                doing: Doing::Starting,
            });
        }
        for at in 0..self.hands.len() {
            if self.hands[at].doing == Doing::Resting {
                self.feed(ctx, at);
            }
        }
    }

    /// Gives a thread its next text; `true` when a round is over.
    fn feed(&mut self, ctx: &Context<Self>, at: usize) -> bool {
        let rows = &self.rows;
        let Some(task) = self
            .rounds
            .next(self.sources.len(), |source| rows.has(source))
        else {
            self.hands[at].doing = Doing::Resting;
            let over = !works(&self.hands);
            if over && self.stale {
                self.work_out(ctx);
            }
            return over;
        };
        self.hands[at].doing = Doing::Reading(task);
        if task.replays && self.cohort.is_none() && self.stats.is_none() && !looks(&self.hands) {
            self.work_out(ctx);
        }
        let source = self.sources[task.source].clone();
        ctx.link()
            .send_future(async move { Msg::Text(at, task, source.text().await) });
        false
    }

    fn text(&mut self, ctx: &Context<Self>, at: usize, task: Task, text: Option<String>) -> bool {
        let name = self.sources[task.source].name.clone();
        match text.map(|text| kind(&name, text)) {
            None => self.told.push(format!(
                "{name}: it cannot be read as text, or is too large."
            )),
            Some(Kind::Key(key)) => {
                // A key that came before is looked at once: what follows is checked with it.
                if self.key.as_ref() != Some(&key) {
                    self.key = Some(key);
                    self.rounds.restart();
                }
            }
            Some(Kind::Assessment(text)) => {
                if !self.assessments.values().any(|(known, _)| *known == text) {
                    if self.know(text, String::new()) {
                        self.rounds.restart();
                    } else {
                        self.told.push(format!("{name}: this assessment does not fit the jobs here; open it where assessments are made to see why."));
                    }
                }
            }
            Some(Kind::Rulings(all)) => self.rulings.change(Change::Opened(all)),
            Some(Kind::Records(text)) => {
                let question = Question::Sift {
                    file: name,
                    text,
                    assessments: self.against(),
                    replays: task.replays,
                };
                let hand = &mut self.hands[at];
                hand.doing = Doing::Working(task);
                hand.thread.again(&question);
                return false;
            }
        }
        self.feed(ctx, at);
        true
    }

    fn answer(&mut self, ctx: &Context<Self>, at: usize, answer: Answer) -> bool {
        match (self.hands[at].doing, answer) {
            (Doing::Working(task), Answer::Sifted { list }) => {
                let list = read_back(&list).unwrap_or_default();
                self.rows.put(task.source, list, task.replays);
                self.stale = true;
            }
            (_, Answer::Failed { why }) => self.told.push(why),
            (Doing::Starting, Answer::Sifted { .. }) => {}
            _ => return false,
        }
        let over = self.feed(ctx, at);
        let now_ms = js_sys::Date::now();
        if over || now_ms - self.drawn_ms > DRAW_MS {
            self.drawn_ms = now_ms;
            return true;
        }
        false
    }

    /// Has the cohort worked out anew.
    fn work_out(&mut self, ctx: &Context<Self>) {
        self.stale = false;
        let attempts: Vec<Attempt> = self
            .rows
            .counting(&self.rulings)
            .map(|(_, attempt)| attempt.clone())
            .collect();
        if attempts.is_empty() {
            return self.worked(None);
        }
        let attempts = serde_json::to_string(&attempts).unwrap_or_default();
        let answered = ctx.link().callback(Msg::Worked);
        self.stats = Thread::ask(&Question::Cohort { attempts }, answered);
    }

    fn worked(&mut self, cohort: Option<Cohort>) {
        let said = |cohort| decision::all(cohort, &self.rows, &self.rulings, &self.files);
        self.decisions = Shared::new(cohort.as_ref().map(said).unwrap_or_default());
        self.cohort = cohort.map(Shared::new);
    }
}
