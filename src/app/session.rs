//! A job on the bench: the committed job, a copy of it that lives on while one watches, and what
//! the technician has in hand. Knows no browser.
//!
//! Frames advance the copy only. When the technician acts, the job is brought to the tick shown
//! and acts there; so the job is advanced at log entries alone and replays to the same bits.

mod leads;

use crate::app::suspects;
use crate::app::suspects::SavedSuspect;
use crate::app::view::Lead;
use crate::app::view::NoticeView;
use crate::app::view::Order;
use crate::app::view::Picture;
use crate::app::view::Speed;
use crate::app::view::Thing;
use crate::app::view::Until;
use crate::app::view::meter::Hold;
use crate::app::view::notice;
use crate::app::view::verbs;
use crate::app::waiting::Wait;
use crate::bench::action::Action;
use crate::bench::action::PanelKey;
use crate::bench::job::Job;
use crate::bench::notebook::TICKS_PER_S;
use crate::bench::notebook::Tick;
use crate::bench::recorder::Recorder;
use crate::say;

/// Longest step of real time that is made good, s: what a hidden tab missed is dropped.
const LONGEST_FRAME_S: f64 = 0.25;
/// How long a display takes to settle, s. Common practice: about half a second.
const SETTLE_S: f64 = 0.5;

/// A job on the bench.
pub struct Session {
    job: Job,
    live: Job,
    /// The picture shown.
    pub picture: Picture,
    /// What is in hand.
    pub selected: Option<Thing>,
    /// How the instrument is held.
    pub hold: Hold,
    /// The calm card.
    pub notice: Option<NoticeView>,
    /// Suspects, most likely first.
    pub suspects: Vec<SavedSuspect>,
    /// The clock's speed.
    pub speed: Speed,
    /// A lead is being placed: the pictures show where it can go.
    pub probing: bool,
    /// For the screen reader.
    pub said: String,
    /// The strip-chart recorder.
    pub recorder: Recorder,
    /// It is assessed: rules that are broken are told afterwards.
    pub is_exam: bool,
    wait: Option<Wait>,
    /// Bench time that is due and not yet a whole tick, s.
    due_s: f64,
    settle_s: f64,
}

/// What an order has changed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Changed {
    /// The log has grown, or the suspects changed: save.
    pub save: bool,
}

impl Session {
    /// A session on a job, watched up to `seen`.
    pub fn new(job: Job, seen: Tick, suspects: Vec<SavedSuspect>) -> Self {
        let mut live = job.clone();
        live.advance_to(seen);
        let hold = job
            .bench()
            .meter
            .as_ref()
            .map_or_else(Hold::default, |meter| Hold {
                mode: meter.mode,
                red: meter.red.clone(),
                black: meter.black.clone(),
                lead: Lead::Red,
            });
        Self {
            job,
            live,
            picture: Picture::default(),
            selected: None,
            hold,
            notice: None,
            suspects,
            speed: Speed::default(),
            probing: false,
            said: String::new(),
            recorder: Recorder::default(),
            is_exam: false,
            wait: None,
            due_s: 0.0,
            settle_s: 0.0,
        }
    }

    /// The job as the log has it.
    pub fn job(&self) -> &Job {
        &self.job
    }
    /// The job as it is seen: the same, some ticks later.
    pub fn live(&self) -> &Job {
        &self.live
    }
    /// Time is being let pass until something is so.
    pub fn is_waiting(&self) -> bool {
        self.wait.is_some()
    }
    /// The instrument's display has not settled.
    pub fn is_settling(&self) -> bool {
        self.settle_s > 0.0
    }

    /// Lets real time pass. `true` when the machine has moved on.
    pub fn frame(&mut self, elapsed_s: f64) -> bool {
        let elapsed_s = elapsed_s.clamp(0.0, LONGEST_FRAME_S);
        self.settle_s = (self.settle_s - elapsed_s).max(0.0);
        if self.job.is_over() || self.wait.is_some() {
            return false;
        }
        self.due_s += elapsed_s * self.speed.factor();
        let ticks = (self.due_s * TICKS_PER_S as f64) as Tick;
        self.due_s -= ticks as f64 / TICKS_PER_S as f64;
        self.live.advance(ticks);
        if ticks > 0 {
            self.recorder.look(&self.live);
        }
        ticks > 0
    }

    /// Lets a second of bench time pass while waiting; ends the wait when it is so.
    pub fn wait_a_second(&mut self) {
        let Some(wait) = self.wait.clone() else {
            return;
        };
        self.live.advance(TICKS_PER_S);
        self.recorder.look(&self.live);
        let Some(end) = wait.end(&self.live) else {
            return;
        };
        self.wait = None;
        self.said = end.said(&self.live);
        if end.is_in_vain {
            self.notice = Some(end.notice());
        }
    }

    /// Does what is asked.
    pub fn order(&mut self, order: Order) -> Changed {
        match order {
            Order::Show(picture) => self.picture = picture,
            Order::Select(thing) => return self.select(thing),
            Order::Do(actions) => return self.act_all(actions),
            Order::Mode(mode) => {
                self.probing = true;
                if mode != self.hold.mode {
                    self.hold.turn(mode);
                    return self.place_leads();
                }
            }
            Order::Measure(mode, red, black) => {
                self.hold.turn(mode);
                (self.hold.red, self.hold.black) = (Some(red), black);
                return self.place_leads();
            }
            Order::Follow(channel) => {
                self.recorder.follow(channel);
            }
            Order::FollowMeter => self.follow_meter(),
            Order::LiftPen(pen) => self.recorder.lift(pen),
            Order::FreshStrip => self.recorder.begin(),
            Order::Put(lead, at) => {
                self.hold.put(lead, at);
                return self.place_leads();
            }
            Order::TakeLead(lead) => {
                self.probing = true;
                self.hold.lead = lead;
            }
            Order::Run(speed) => {
                self.wait = None;
                self.speed = speed;
            }
            Order::Wait(until) => self.wait_until(until),
            Order::CardRead => {
                self.probing = false;
                if self.notice.take().is_none() {
                    self.selected = None;
                }
            }
            Order::Suspect(order) => {
                suspects::change(&mut self.suspects, order);
                return Changed { save: true };
            }
            Order::TakeOver | Order::StartAgain | Order::TryFrom(_) | Order::BackToWhole => {}
        }
        Changed::default()
    }

    /// A key of the panel is pressed when touched; everything else is taken in hand.
    fn select(&mut self, thing: Option<Thing>) -> Changed {
        self.notice = None;
        let key = match &thing {
            Some(Thing::Key(id)) => verbs::key(id),
            Some(Thing::Place(id)) if self.picture == Picture::Outside && id == "on_off_switch" => {
                Some(PanelKey::Power)
            }
            _ => None,
        };
        self.selected = thing;
        match key {
            Some(key) => self.act_all(vec![Action::Key { key }]),
            None => Changed::default(),
        }
    }

    fn wait_until(&mut self, until: Until) {
        if self.job.is_over() {
            return;
        }
        self.notice = None;
        self.wait = Some(Wait::new(until, &self.live));
    }

    /// Does acts in order and stops at the first that cannot be done or that harms.
    fn act_all(&mut self, actions: Vec<Action>) -> Changed {
        let mut changed = Changed::default();
        self.notice = None;
        self.wait = None;
        let lifted = self.lifted(actions.first());
        for action in lifted.into_iter().chain(actions) {
            let done = self.act(action);
            changed.save |= done;
            if !done || self.notice.is_some() {
                break;
            }
        }
        changed
    }

    fn act(&mut self, action: Action) -> bool {
        let mut job = self.job.clone();
        job.advance_to(self.live.tick());
        let broken = job.safety().len();
        let outcome = job.act(action.clone());
        if let Some(refusal) = &outcome.refusal {
            // A refused act is in no log: the job stays where it was.
            let notice = notice::refused(&self.live, &action, refusal);
            let text = notice.text.join(" ");
            self.said = say!("{title}. {text}", title = notice.title, text);
            self.notice = Some(notice);
            return false;
        }
        if matches!(action, Action::Meter { .. }) {
            self.settle_s = SETTLE_S;
            self.hold_as(&action);
        }
        self.said = notice::done(&job, &action, &outcome);
        let rules = job.safety().get(broken..).filter(|_| !self.is_exam);
        self.notice = notice::happened(&outcome.events, rules.unwrap_or_default());
        self.live = job.clone();
        self.job = job;
        self.due_s = 0.0;
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::bench::action::Sense;

    fn session(id: &str) -> Session {
        let scenario = library::find(id).expect("ships");
        Session::new(Job::new(scenario, 7).expect("sound"), 0, Vec::new())
    }

    #[test]
    fn what_was_watched_and_done_is_the_replay_of_its_log_to_the_bit() {
        let mut session = session("no_water");
        let acts = [
            Action::Key {
                key: PanelKey::Power,
            },
            Action::Key {
                key: PanelKey::Start,
            },
            Action::Tap { open: true },
            Action::Sense {
                sense: Sense::Look,
                place: "tap".to_owned(),
            },
        ];
        session.speed = Speed::Ten;
        for act in acts {
            for _ in 0..37 {
                session.frame(0.0163);
            }
            session.order(Order::Do(vec![act]));
        }
        let job = session.job();
        let (again, _) = Job::replay(job.scenario().clone(), job.seed(), job.log()).expect("sound");
        assert_eq!(again.machine().state_hash(), job.machine().state_hash());
        assert_eq!(again.notebook(), job.notebook());
    }

    #[test]
    fn a_refused_act_leaves_the_job_where_it_was_and_offers_what_comes_first() {
        let mut session = session("hums_and_stands");
        session.frame(0.2);
        let hash = session.job().machine().state_hash();
        let changed = session.order(Order::Do(vec![Action::Sense {
            sense: Sense::Look,
            place: "run_capacitor".to_owned(),
        }]));
        assert!(!changed.save);
        assert!(session.job().log().is_empty());
        assert_eq!(session.job().machine().state_hash(), hash);
        let offered = session.notice.take().map(|n| n.verbs).unwrap_or_default();
        session.order(offered[0].order.clone());
        assert!(session.job().bench().off.contains(&"back_cover".to_owned()));
    }

    #[test]
    fn a_hidden_tab_does_not_run_ahead() {
        let mut session = session("no_water");
        session.speed = Speed::Sixty;
        session.frame(3600.0);
        assert!(session.live().tick() <= 150);
    }

    #[test]
    fn waiting_a_minute_takes_a_minute() {
        let mut session = session("no_water");
        session.order(Order::Wait(Until::Minute));
        while session.is_waiting() {
            session.wait_a_second();
        }
        assert_eq!(session.live().tick(), 600);
        assert!(session.job().log().is_empty());
    }
}
