//! The instrument's leads in a session: when the job learns where they are, and that they are off.

use crate::app::session::Changed;
use crate::app::session::Session;
use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::recorder::Channel;
use crate::bench::state::MeterSetting;

impl Session {
    /// A pen on what the meter reads.
    pub(super) fn follow_meter(&mut self) {
        if let (true, Some(red)) = (self.hold.is_complete(), self.hold.red.clone()) {
            let (mode, black) = (self.hold.mode, self.hold.black.clone());
            self.recorder.follow(Channel::Meter { mode, red, black });
        }
    }

    /// The job learns of the leads once they are placed, or once one of them was and is no longer.
    pub(super) fn place_leads(&mut self) -> Changed {
        let before = self.job.bench().meter.clone();
        if !self.hold.is_complete() && !before.as_ref().is_some_and(is_reading) {
            return Changed::default();
        }
        if self.is_free() && before.as_ref().is_none_or(|m| m.mode != MeterMode::Amps) {
            // Lifted for another instrument: no act of its own, unless a current went through.
            return Changed::default();
        }
        let changed = self.act_all(vec![self.held()]);
        if self.job.bench().meter == before {
            // The leads could not be put there: they are where they were.
            if let Some(meter) = before {
                (self.hold.mode, self.hold.red, self.hold.black) =
                    (meter.mode, meter.red, meter.black);
            } else {
                (self.hold.red, self.hold.black) = (None, None);
            }
        }
        changed
    }

    /// What the job is told before `next`, if leads were lifted and something else than measuring
    /// comes next.
    pub(super) fn lifted(&self, next: Option<&Action>) -> Option<Action> {
        let meter = self.job.bench().meter.as_ref().filter(|m| is_reading(m))?;
        let is_measured = matches!(next, None | Some(Action::Meter { .. }));
        (self.is_free() && !is_measured).then_some(Action::Meter {
            mode: meter.mode,
            red: None,
            black: None,
        })
    }

    /// Leads that came to their places with other acts are held there from now on.
    pub(super) fn hold_as(&mut self, action: &Action) {
        if let Action::Meter {
            mode,
            red: Some(red),
            black,
        } = action
        {
            self.hold.mode = *mode;
            self.hold.red = Some(red.clone());
            self.hold.black.clone_from(black);
        }
    }

    /// Both leads hang free.
    fn is_free(&self) -> bool {
        self.hold.red.is_none() && self.hold.black.is_none()
    }

    /// How the instrument is held, as the job is told.
    fn held(&self) -> Action {
        Action::Meter {
            mode: self.hold.mode,
            red: self.hold.red.clone(),
            black: self.hold.black.clone(),
        }
    }
}

fn is_reading(meter: &MeterSetting) -> bool {
    meter.red.is_some() && (meter.mode.is_clamp() || meter.black.is_some())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::library;
    use crate::app::view::Lead;
    use crate::app::view::Order;
    use crate::bench::job::Job;

    /// Volts at the socket, plug in.
    fn at_the_socket() -> Session {
        let scenario = library::find("no_water").expect("ships");
        let mut session = Session::new(Job::new(scenario, 7).expect("sound"), 0, Vec::new());
        session.order(Order::Put(Lead::Red, Some("SL".to_owned())));
        assert!(session.job().log().is_empty());
        session.order(Order::Put(Lead::Black, Some("SN".to_owned())));
        session
    }

    #[test]
    fn leads_are_placed_once_both_are_somewhere_and_stay_on_the_same_instrument() {
        let mut session = at_the_socket();
        // Within the meter's class.
        let shown = session.live().reading().and_then(|r| r.value);
        assert!((shown.unwrap_or_default() - 230.0).abs() < 2.5, "{shown:?}");
        assert!(session.job().safety().is_empty());
        session.order(Order::Mode(MeterMode::AcVolts));
        assert_eq!(session.job().log().len(), 1, "it was so already");
        session.order(Order::Mode(MeterMode::Ohms));
        assert_eq!(session.hold.red.as_deref(), Some("SL"));
        assert!(!session.job().safety().is_empty(), "ohms at a live socket");
    }

    #[test]
    fn leads_placed_after_what_was_in_the_way_are_held_there() {
        let scenario = library::find("no_water").expect("ships");
        let mut session = Session::new(Job::new(scenario, 7).expect("sound"), 0, Vec::new());
        session.order(Order::Put(Lead::Red, Some("TBL".to_owned())));
        session.order(Order::Put(Lead::Black, Some("TBN".to_owned())));
        let offered = session.notice.take().map(|n| n.verbs).unwrap_or_default();
        let Order::Do(acts) = offered[0].order.clone() else {
            panic!("acts");
        };
        // One at a time: a rule that is broken on the way stops the rest.
        for act in acts {
            session.order(Order::Do(vec![act]));
        }
        assert_eq!(session.hold.red.as_deref(), Some("TBL"));
        assert!(session.live().reading().is_some());
    }

    #[test]
    fn lifting_the_leads_is_told_only_before_something_else_is_done() {
        let mut session = at_the_socket();
        session.order(Order::Mode(MeterMode::Insulation));
        assert_eq!(session.job().log().len(), 1);
        session.order(Order::Do(vec![Action::Lid { open: true }]));
        assert_eq!(session.live().reading(), None);
        assert_eq!(session.job().log().len(), 3);
    }
}
