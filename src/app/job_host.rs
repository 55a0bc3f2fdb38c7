//! The one component that owns a job: loads it, lets its copy live, takes orders, saves, and
//! gives every screen of the job its models.

use gloo::events::EventListener;
use wasm_bindgen_futures::spawn_local;
use web_sys::VisibilityState;
use yew::prelude::*;

use crate::app::bench::contexts::Bench;
use crate::app::bench::contexts::Door;
use crate::app::bench::contexts::Live;
use crate::app::bench::screen::BenchScreen;
use crate::app::crash;
use crate::app::debrief::DebriefScreen;
use crate::app::finding::FindingScreen;
use crate::app::frames::Frames;
use crate::app::keeping;
use crate::app::loading;
use crate::app::loading::LoadError;
use crate::app::loading::Loaded;
use crate::app::painter::Painter;
use crate::app::report::ReportScreen;
use crate::app::route::JobScreen;
use crate::app::session::Session;
use crate::app::settings::Settings;
use crate::app::shared::Shared;
use crate::app::sheets::SheetsScreen;
use crate::app::sitting;
use crate::app::sound::Ears;
use crate::app::store::Claim;
use crate::app::store::Holder;
use crate::app::store::SavedJob;
use crate::app::store::StorageError;
use crate::app::training_system;
use crate::app::view::Order;
use crate::app::view::build;
use crate::app::view::build::Kept;
use crate::bench::job::Job;
use crate::bench::notebook::Reading;
use crate::language::said;
use crate::say;

/// Real time between two models of what moves, s: ten a second.
const PUBLISH_S: f64 = 0.1;
/// Between two savings of how far the clock has run without an act, s.
const SAVE_S: f64 = 10.0;
/// Real time between two readings of the instrument, s: a hand meter updates three times a second.
const READ_S: f64 = 0.33;
/// Real time a frame may spend on letting bench time pass, ms.
const WAIT_BUDGET_MS: f64 = 8.0;

/// Which job, which screen.
#[derive(Properties, PartialEq)]
pub struct JobHostProps {
    /// Name of the scenario.
    pub id: String,
    /// Screen.
    pub screen: JobScreen,
}

/// What happens to the host.
pub enum Msg {
    /// The job was found and replayed, or not.
    Loaded(Box<Result<Loaded, LoadError>>),
    /// Someone asks for something.
    Order(Order),
    /// A frame: milliseconds since the page was opened.
    Frame(f64),
    /// Who writes this job.
    Holder(Holder),
    /// A save has ended.
    Saved(Result<(), StorageError>),
    /// The page is put away.
    Hidden,
    /// A person has set something; what is heard follows at the next frame.
    Settings(Settings),
}

/// Everything that exists once the job is loaded.
struct Open {
    session: Session,
    saved: SavedJob,
    kept: Kept,
    bench: Bench,
    live: Live,
    reading: Option<Reading>,
    state: String,
    /// The job as far as its log goes, for report and debrief.
    finished: Shared<Job>,
}

/// The host.
pub struct JobHost {
    open: Option<Open>,
    trouble: Option<LoadError>,
    storage: Option<StorageError>,
    /// What to say when nothing outlives the page.
    warning: Option<&'static str>,
    holder: Holder,
    claim: Claim,
    door: Door,
    frames: Frames,
    last_ms: Option<f64>,
    since_publish_s: f64,
    since_save_s: f64,
    since_read_s: f64,
    painter: Painter,
    ears: Ears,
    _hidden: EventListener,
}

impl Component for JobHost {
    type Message = Msg;
    type Properties = JobHostProps;

    fn create(ctx: &Context<Self>) -> Self {
        let link = ctx.link();
        let id = ctx.props().id.clone();
        link.send_future(async move { Msg::Loaded(Box::new(loading::load(&id).await)) });
        let hidden = link.callback(|()| Msg::Hidden);
        Self {
            open: None,
            trouble: None,
            storage: None,
            warning: None,
            holder: Holder::Asking,
            claim: Claim::ask(&ctx.props().id, link.callback(Msg::Holder)),
            door: Door(link.callback(Msg::Order)),
            frames: Frames::start(link.callback(Msg::Frame)),
            last_ms: None,
            since_publish_s: 0.0,
            since_save_s: 0.0,
            since_read_s: 0.0,
            painter: Painter::default(),
            ears: Ears::of(link, Msg::Settings),
            _hidden: EventListener::new(&gloo::utils::document(), "visibilitychange", move |_| {
                if gloo::utils::document().visibility_state() == VisibilityState::Hidden {
                    hidden.emit(());
                }
            }),
        }
    }

    fn update(&mut self, ctx: &Context<Self>, msg: Msg) -> bool {
        match msg {
            Msg::Loaded(loaded) => self.loaded(*loaded),
            Msg::Frame(now_ms) => {
                self.save_now_and_then(ctx);
                return self.frame(now_ms, ctx.props().screen);
            }
            Msg::Order(order) => self.order(ctx, order),
            Msg::Holder(holder) => {
                self.holder = holder;
                self.publish_all();
            }
            Msg::Saved(result) => {
                let trouble = result.err();
                if trouble == self.storage {
                    return false;
                }
                self.storage = trouble;
                self.publish_all();
            }
            Msg::Hidden => {
                self.ears.hush();
                self.save(ctx);
                return false;
            }
            Msg::Settings(settings) => {
                self.ears.settings = settings;
                return false;
            }
        }
        true
    }

    fn changed(&mut self, _ctx: &Context<Self>, _old: &JobHostProps) -> bool {
        // Another screen of the job draws its own pictures: nothing in them is known to be written.
        self.painter.forget();
        true
    }

    fn view(&self, ctx: &Context<Self>) -> Html {
        if let Some(trouble) = &self.trouble {
            return loading::trouble_page(trouble, &ctx.props().id, &self.door);
        }
        let Some(open) = &self.open else {
            return html! { <main class="page" id="main"><h1 class="visually-hidden">{ say!("Bench") }</h1><p role="status">{ say!("Opening the job …") }</p></main> };
        };
        let screen = match ctx.props().screen {
            JobScreen::Bench => html! { <BenchScreen /> },
            JobScreen::Finding => html! { <FindingScreen /> },
            JobScreen::Report => html! { <ReportScreen job={open.finished.clone()} /> },
            JobScreen::Sheets => html! { <SheetsScreen job={open.finished.clone()} /> },
            JobScreen::Debrief => html! { <DebriefScreen job={open.finished.clone()} /> },
        };
        html! {
            <ContextProvider<Bench> context={open.bench.clone()}>
                <ContextProvider<Live> context={open.live.clone()}>
                    <ContextProvider<Door> context={self.door.clone()}>{ screen }</ContextProvider<Door>>
                </ContextProvider<Live>>
            </ContextProvider<Bench>>
        }
    }

    fn destroy(&mut self, ctx: &Context<Self>) {
        self.frames.stop();
        self.save(ctx);
    }
}

impl JobHost {
    fn loaded(&mut self, loaded: Result<Loaded, LoadError>) {
        match loaded {
            Ok(loaded) => {
                self.trouble = None;
                let kept = Kept::of(&loaded.session);
                let reading = loaded.session.live().reading();
                let mut bench = build::bench(&loaded.session, &kept);
                sitting::limit(&mut bench);
                let bench = Shared::new(bench);
                let live = Shared::new(build::live(&loaded.session, reading.as_ref()));
                let state = loaded.session.live().machine().state_words();
                let Loaded {
                    session,
                    saved,
                    warning,
                } = loaded;
                self.warning = warning;
                let finished = Shared::new(session.job().clone());
                self.open = Some(Open {
                    session,
                    saved,
                    kept,
                    bench,
                    live,
                    reading,
                    state,
                    finished,
                });
                self.publish_all();
            }
            Err(error) => self.trouble = Some(error),
        }
    }

    fn order(&mut self, ctx: &Context<Self>, order: Order) {
        self.ears.wake();
        let is_allowed = |open: &Open| sitting::allows(&open.session, &order);
        if !self.open.as_ref().is_none_or(is_allowed) {
            return;
        }
        match order {
            Order::TakeOver => self.claim.take(),
            Order::StartAgain => return self.start_again(ctx),
            Order::TryFrom(step) => return self.turn_back(ctx, |saved| saved.try_from(step)),
            Order::BackToWhole => return self.turn_back(ctx, SavedJob::back_to_whole),
            _ => {}
        }
        let Some(open) = &mut self.open else { return };
        let changed = open.session.order(order);
        open.reading = open.session.live().reading();
        if changed.save {
            self.save(ctx);
        }
        self.publish_all();
    }

    fn start_again(&mut self, ctx: &Context<Self>) {
        let id = ctx.props().id.clone();
        self.open = None;
        let again = async move { Msg::Loaded(Box::new(loading::afresh(&id).await)) };
        ctx.link().send_future(again);
    }

    /// Puts another log in the job's place and opens it.
    fn turn_back(&mut self, ctx: &Context<Self>, turn: impl FnOnce(&mut SavedJob)) {
        if let Some(Open { mut saved, .. }) = self.open.take() {
            turn(&mut saved);
            let again = async move { Msg::Loaded(Box::new(loading::reopen(&saved).await)) };
            ctx.link().send_future(again);
        }
    }

    /// Keeps the log; the browser answers later.
    fn save(&mut self, ctx: &Context<Self>) {
        let Some(open) = &mut self.open else { return };
        if self.holder == Holder::Other {
            return;
        }
        crash::all_well();
        let kept = keeping::keep(&mut open.saved, &open.session);
        let told = ctx.link().callback(Msg::Saved);
        spawn_local(async move { told.emit(kept.await) });
    }

    /// A clock that runs without an act is kept, too: a reload gives no time back.
    fn save_now_and_then(&mut self, ctx: &Context<Self>) {
        if self.since_save_s < SAVE_S {
            return;
        }
        self.since_save_s = 0.0;
        let has_run = |open: &Open| open.session.live().tick() > open.saved.seen;
        if self.open.as_ref().is_some_and(has_run) {
            self.save(ctx);
        }
    }

    /// One frame: lets time pass, moves what moves, and now and then publishes. `true` to draw.
    fn frame(&mut self, now_ms: f64, screen: JobScreen) -> bool {
        let elapsed_s = self.last_ms.map_or(0.0, |last| (now_ms - last) / 1000.0);
        self.last_ms = Some(now_ms);
        let Some(open) = &mut self.open else {
            return false;
        };
        open.session.frame(elapsed_s);
        let was_waiting = open.session.is_waiting();
        let clock = gloo::utils::window().performance();
        while open.session.is_waiting() {
            open.session.wait_a_second();
            if clock
                .as_ref()
                .is_none_or(|c| c.now() - now_ms > WAIT_BUDGET_MS)
            {
                break;
            }
        }
        let waited = was_waiting && !open.session.is_waiting();
        self.ears.follow(&open.session, screen == JobScreen::Bench);
        if screen == JobScreen::Bench {
            self.painter.paint(&open.session);
        }
        self.since_publish_s += elapsed_s;
        self.since_save_s += elapsed_s;
        self.since_read_s += elapsed_s;
        if waited {
            self.publish_all();
            return true;
        }
        self.since_publish_s >= PUBLISH_S && self.publish()
    }

    /// Publishes what moves, if anything a person can read has moved.
    fn publish(&mut self) -> bool {
        self.since_publish_s = 0.0;
        let Some(open) = &mut self.open else {
            return false;
        };
        if self.since_read_s >= READ_S {
            self.since_read_s = 0.0;
            open.reading = open.session.live().reading();
        }
        let state = open.session.live().machine().state_words();
        if state != open.state {
            self.publish_all();
            return true;
        }
        let live = build::live(&open.session, open.reading.as_ref());
        if live == *open.live {
            return false;
        }
        open.live = Shared::new(live);
        true
    }

    fn publish_all(&mut self) {
        let Some(open) = &mut self.open else { return };
        open.kept.refresh(&open.session);
        if open.session.job().log().len() != open.finished.log().len() {
            open.finished = Shared::new(open.session.job().clone());
        }
        let mut bench = build::bench(&open.session, &open.kept);
        sitting::limit(&mut bench);
        bench.storage = self
            .storage
            .map(|error| error.to_string())
            .or_else(|| self.warning.map(str::to_owned))
            .or_else(|| sitting_trouble(&open.saved));
        bench.elsewhere = self.holder == Holder::Other;
        bench.tried = open.saved.tried.as_ref().map(|tried| tried.steps);
        open.bench = Shared::new(bench);
        open.live = Shared::new(build::live(&open.session, open.reading.as_ref()));
        open.state = open.session.live().machine().state_words();
        self.painter.forget();
    }
}

/// What a candidate should know of the training system while at work.
fn sitting_trouble(saved: &SavedJob) -> Option<String> {
    let trouble = training_system::trouble().filter(|_| sitting::is_sitting(&saved.scenario));
    trouble.map(|words| said(words).to_owned())
}
