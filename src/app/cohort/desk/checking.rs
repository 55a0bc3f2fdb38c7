//! The desk's threads: each gets its next text, and what it says of it is taken over.

use yew::prelude::*;

use crate::app::cohort::desk::CohortScreen;
use crate::app::cohort::hands::Doing;
use crate::app::cohort::hands::Hand;
use crate::app::cohort::hands::Task;
use crate::app::cohort::hands::hello;
use crate::app::cohort::hands::looks;
use crate::app::cohort::hands::works;
use crate::app::cohort::kept_rulings::Change;
use crate::app::cohort::message::Msg;
use crate::app::cohort::source::Kind;
use crate::app::cohort::source::kind;
use crate::app::cohort::unread::plainly;
use crate::app::cohort::unread::strange;
use crate::app::cohort::unread::unread;
use crate::app::worker::Answer;
use crate::app::worker::Question;
use crate::app::worker::Thread;
use crate::language::in_english;
use crate::language::worded;
use crate::say;
use crate::scenario::read::read_back;

/// Threads at most; more than a few only take turns.
const MOST_THREADS: f64 = 8.0;
/// Between two drawings while files come in, ms.
const DRAW_MS: f64 = 250.0;

impl CohortScreen {
    /// Starts as many threads as there is work for, and sets those that rest to work.
    pub(super) fn start(&mut self, ctx: &Context<Self>) {
        let cores = gloo::utils::window().navigator().hardware_concurrency();
        let wanted = (cores - 1.0).clamp(1.0, MOST_THREADS) as usize;
        while self.hands.len() < wanted.min(self.sources.len()) {
            let at = self.hands.len();
            let answered = ctx.link().callback(move |answer| Msg::Answer(at, answer));
            let Some(thread) = Thread::ask(&hello(), answered) else {
                let why = say!("This browser has no threads: nothing can be checked in it.");
                self.told.push(why.to_owned());
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

    pub(super) fn text(
        &mut self,
        ctx: &Context<Self>,
        at: usize,
        task: Task,
        text: Result<String, String>,
    ) -> bool {
        let name = self.sources[task.source].name.clone();
        match text.map(|text| kind(&name, text)) {
            Err(what) => {
                let told = |what: &str| say!("{name}: {what}.", name, what);
                let row = unread(in_english(|| told(&what)), told(&worded(&what)));
                self.rows.put(task.source, vec![row], true);
            }
            Ok(Kind::Key(key)) => {
                // A key that came before is looked at once: what follows is checked with it.
                if self.known.take_key(key) {
                    self.rounds.restart();
                }
            }
            Ok(Kind::Assessment(text)) => {
                if !self.known.has(&text) {
                    if self.known.take(text, String::new()) {
                        self.rounds.restart();
                    } else {
                        self.told.push(say!("{file}: this assessment does not fit the jobs here; open it where assessments are made to see why.", file = name));
                    }
                }
            }
            Ok(Kind::Rulings(all)) => {
                if self.ruled_from.insert(task.source) {
                    self.stale = true;
                    self.rule(ctx, Change::Opened(all));
                }
            }
            Ok(Kind::Records(text)) => match strange(&name, &text) {
                Some(row) => self.rows.put(task.source, vec![row], true),
                None => {
                    let question = Question::Sift {
                        file: name,
                        text,
                        assessments: self.known.against(),
                        replays: task.replays,
                    };
                    let hand = &mut self.hands[at];
                    hand.doing = Doing::Working(task);
                    hand.thread.again(&question);
                    return false;
                }
            },
        }
        self.feed(ctx, at);
        true
    }

    pub(super) fn answer(&mut self, ctx: &Context<Self>, at: usize, answer: Answer) -> bool {
        match (self.hands[at].doing, answer) {
            (Doing::Working(task), Answer::Sifted { list }) => {
                let list = read_back(&list).unwrap_or_default();
                self.rows.put(task.source, plainly(list), task.replays);
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
}
