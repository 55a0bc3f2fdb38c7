//! The review of a cohort: takes files in, has them checked in threads, and shows what they say.

mod aside;
mod checking;

use std::collections::BTreeSet;

use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::cohort::aside::Aside;
use crate::app::cohort::decision;
use crate::app::cohort::drop::Drop;
use crate::app::cohort::erasing;
use crate::app::cohort::erasing::Whose;
use crate::app::cohort::half_typed;
use crate::app::cohort::hands::Hand;
use crate::app::cohort::hands::Rounds;
use crate::app::cohort::hands::works;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::kept_rulings::Rulings;
use crate::app::cohort::known::Known;
use crate::app::cohort::looks::Looks;
use crate::app::cohort::message::Msg;
use crate::app::cohort::opened::Opened;
use crate::app::cohort::rows::Rows;
use crate::app::cohort::ruling_store;
use crate::app::cohort::rulings;
use crate::app::cohort::rulings::RulingPlace;
use crate::app::cohort::saving;
use crate::app::cohort::shown;
use crate::app::cohort::source::Source;
use crate::app::cohort::source::sources;
use crate::app::lost_points::Marked;
use crate::app::shared::Shared;
use crate::app::store::AcrossTabs;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::records::cohort::Attempt;
use crate::records::cohort::lines::Cohort;
use crate::records::rulings::About;
use crate::say;
use crate::scenario::read::read_back;

/// Before the number of a person whose results were erased, to the other tabs.
const ERASED: &str = "erased ";

/// The desk.
pub struct CohortScreen {
    sources: Vec<Source>,
    rows: Rows,
    known: Known,
    hands: Vec<Hand>,
    rounds: Rounds,
    /// What is shown is not of all that is known.
    stale: bool,
    stats: Option<Thread>,
    cohort: Option<Shared<Cohort>>,
    decisions: Shared<Vec<String>>,
    rulings: Rulings,
    tabs: AcrossTabs,
    /// Texts whose rulings were taken over: once each, whatever is looked at again.
    ruled_from: BTreeSet<usize>,
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
            .send_future(async { Msg::Rule(Change::Tried(ruling_store::try_out().await)) });
        ctx.link()
            .send_future(async { Msg::Rule(Rulings::read().await) });
        Self {
            sources: Vec::new(),
            rows: Rows::default(),
            known: Known::default(),
            hands: Vec::new(),
            rounds: Rounds::default(),
            stale: false,
            stats: None,
            cohort: None,
            decisions: Shared::new(Vec::new()),
            rulings: Rulings::default(),
            tabs: AcrossTabs::open("rulings", ctx.link().callback(Msg::Heard)),
            ruled_from: BTreeSet::new(),
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
                    self.known.take(given.text(), key);
                }
            }
            Msg::Files(files) => {
                self.told = vec![say!("Opening …").to_owned()];
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
                let rules = change.rules();
                if let Change::TakenBack(at) = change {
                    let told = self.rulings.get(at).map(rulings::taken_back);
                    self.told = told.into_iter().collect();
                }
                self.rule(ctx, change);
                if rules {
                    self.voiding = None;
                    self.work_out(ctx);
                }
            }
            Msg::Heard(text) => match text.strip_prefix(ERASED) {
                Some(candidate) => {
                    let gone = Change::Erased(candidate.to_owned());
                    return Component::update(self, ctx, Msg::Rule(gone));
                }
                None => {
                    let read = async { Msg::Rule(Rulings::read().await) };
                    ctx.link().send_future(read);
                    return false;
                }
            },
            Msg::Forget(about) => half_typed::forget(&about),
            Msg::Erase(whose) => self.erase(ctx, whose),
            Msg::Erased(texts, told) => self.erased(ctx, texts, told),
            Msg::Stop => self.rounds.stopped = true,
            Msg::Save(what) => self.told = vec![saving::save(&self.looks(), what)],
        }
        true
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        let link = ctx.link();
        if let Some(aside) = &self.aside {
            let back = self
                .opened
                .as_ref()
                .map_or_else(|| say!("Back"), Opened::back);
            return aside.page(back, link.callback(|()| Msg::Back));
        }
        let on = link.callback(|msg| msg);
        let on_save = link.callback(|()| Msg::Save("rulings"));
        let place = RulingPlace {
            keeping: self.rulings.keeping,
            on_save: on_save.clone(),
        };
        html! {
            <ContextProvider<RulingPlace> context={place}>
            <main class="page page--wide cohort" id="main" tabindex="-1">
                <header class="page__head no-print"><h1>{ say!("Results") }</h1>
                    <p class="page__lead">{ say!("Drop any number of result files. Each is checked here: its seal at once, then its work is run again. Nothing leaves this browser.") }</p></header>
                <Drop on_files={link.callback(Msg::Files)} />
                { self.rulings.offer(&link.callback(Msg::Rule)) }
                { self.rulings.trouble(&on_save.reform(|_: MouseEvent| ())) }
                if self.opened.is_none() && self.voiding.is_none() {
                    { rulings::left(&half_typed::all(), &link.callback(Msg::Forget)) }
                }
                { shown::progress(&self.looks(), &on) }
                { shown::shown(&self.looks(), &on) }
            </main>
            </ContextProvider<RulingPlace>>
        }
    }
}

impl CohortScreen {
    fn looks(&self) -> Looks<'_> {
        Looks {
            rows: &self.rows,
            files: self.known.files(),
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
            left: self.sources.iter().filter_map(Source::here).collect(),
        }
    }

    /// Changes the rulings and keeps the change; the browser answers later.
    fn rule(&mut self, ctx: &Context<Self>, change: Change) {
        let writes = self.rulings.change(change, js_sys::Date::now());
        if writes.is_empty() {
            return;
        }
        let voice = self.tabs.voice();
        ctx.link().send_future(async move {
            let (done, unwritten) = ruling_store::write(writes).await;
            voice.say("changed");
            Msg::Rule(Change::Written(done, unwritten))
        });
    }

    /// Strikes records out of the texts they came in.
    fn erase(&mut self, ctx: &Context<Self>, whose: Whose) {
        let places = erasing::places(&self.rows, self.known.files(), &whose);
        let places: Vec<_> = places
            .into_iter()
            .map(|(source, lines)| (source, self.sources[source].clone(), lines))
            .collect();
        ctx.link().send_future(async move {
            let (texts, told) = erasing::erased(places).await;
            Msg::Erased(texts, told)
        });
    }

    /// What is left takes the place of the texts; rulings about people of whom nothing is left go.
    fn erased(&mut self, ctx: &Context<Self>, texts: Vec<erasing::Text>, mut told: Vec<String>) {
        let before = self.rows.people();
        let n: usize = texts.iter().map(|text| text.erased.len()).sum();
        for text in texts {
            self.rows.erase(text.source, &text.erased);
            self.sources[text.source] = Source::of_text(text.name, &text.text);
        }
        for candidate in before.difference(&self.rows.people()) {
            half_typed::forget(&About::Candidate(candidate.clone()));
            self.rule(ctx, Change::Erased(candidate.clone()));
            self.tabs.voice().say(&format!("{ERASED}{candidate}"));
        }
        told.push(erasing::done_words(n));
        self.told = told;
        self.work_out(ctx);
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
        let said = |cohort| decision::all(cohort, &self.rows, &self.rulings, self.known.files());
        self.decisions = Shared::new(cohort.as_ref().map(said).unwrap_or_default());
        self.cohort = cohort.map(Shared::new);
    }
}
