//! The routines of a careful technician: making safe, opening, closing, testing afterwards. Each does
//! what is missing and nothing twice.
//!
//! Order of isolation by EN 50110-1 (from memory): switch off, unplug, secure, prove dead with a
//! tester proved before and after; water shut and bled; charges led off before hands reach them.

use crate::bench::action::Action;
use crate::bench::action::Charged;
use crate::bench::action::DischargeTool;
use crate::bench::action::MeterMode;
use crate::bench::action::PanelKey;
use crate::bench::visit::Condition;
use crate::bench::visit::EmptyBy;
use crate::bench::workshop::Way;
use crate::bench::workshop::Work;
use crate::bench::workshop::WorkKind;
use crate::bench::workshop::Workshop;
use crate::expert::care::Care;
use crate::expert::door::Door;
use crate::expert::seen::Step;

/// Longest a turning part is waited for, ticks.
const STANDS_AFTER: u64 = 900;

/// A technician's hands at a door, with what the acts showed since it was last taken.
pub struct Routine<'a> {
    /// The door.
    pub door: Door<'a>,
    care: Care,
    fresh: Vec<Step>,
}

impl<'a> Routine<'a> {
    /// Before a fresh job.
    pub fn new(door: Door<'a>) -> Self {
        Self::with_care(door, Care::new(0, 1.0))
    }

    /// The same for somebody who leaves steps out.
    pub fn with_care(door: Door<'a>, care: Care) -> Self {
        let fresh = Vec::new();
        Self { door, care, fresh }
    }

    /// Names the price of a work; false when it is not worth it: more than half of a new machine.
    pub fn name_price(&mut self, work: &Work) -> bool {
        let (money, workshop) = (self.door.seen().scenario.money.clone(), self.workshop());
        let part = workshop
            .part(&work.part)
            .filter(|_| work.kind == WorkKind::Replace);
        let price = money.call_out
            + money.labour_per_min * work.work_s / 60.0
            + work.material_price
            + part.map_or(0.0, |p| p.price);
        self.act(Action::Quote { price });
        price <= 0.5 * money.new_machine
    }

    /// What was done and shown since this was last asked.
    pub fn take_fresh(&mut self) -> Vec<Step> {
        std::mem::take(&mut self.fresh)
    }

    /// Does an act; true when it could be done.
    pub fn act(&mut self, action: Action) -> bool {
        let step = self.door.act(action);
        let is_done = step.is_some();
        self.fresh.extend(step);
        is_done
    }

    /// Measures and writes the reading down.
    pub fn measure(&mut self, mode: MeterMode, red: &str, black: Option<&str>) {
        let is_placed = self.act(Action::Meter {
            mode,
            red: Some(red.to_owned()),
            black: black.map(str::to_owned),
        });
        if is_placed {
            self.act(Action::Note);
        }
    }

    /// Measures the socket until it has shown what it must.
    pub fn prove_socket(&mut self) {
        if self.door.bench().isolation.tester_proved.is_some() {
            return;
        }
        let machine = self.door.seen().scenario.machine.clone();
        let [line, neutral, earth] = &machine.roles.socket;
        self.measure(MeterMode::AcVolts, line, Some(neutral));
        self.measure(MeterMode::AcVolts, line, Some(earth));
    }

    /// Holds the tester to the socket, or, where the socket is dead, to a source of its own.
    fn prove_tester(&mut self) {
        let machine = self.door.seen().scenario.machine.clone();
        let [line, neutral, _] = &machine.roles.socket;
        let proved = |hands: &Self| hands.door.bench().isolation.tester_proved;
        let before = proved(self);
        self.show(line, neutral);
        if proved(self) == before {
            self.act(Action::ProveTester);
        }
    }

    fn show(&mut self, red: &str, black: &str) {
        if self.door.hands().plugged {
            self.mop();
        }
        self.act(Action::Meter {
            mode: MeterMode::AcVolts,
            red: Some(red.to_owned()),
            black: Some(black.to_owned()),
        });
    }

    fn workshop(&self) -> std::sync::Arc<Workshop> {
        self.door.seen().scenario.workshop.clone()
    }

    /// Switches off and waits until everything stands.
    pub fn switch_off(&mut self) {
        if self.door.hands().switched_on {
            self.act(Action::Key {
                key: PanelKey::Power,
            });
        }
        let mut waited = 0;
        while self.door.turns() && waited < STANDS_AFTER {
            self.door.wait(10);
            waited += 10;
        }
    }

    /// Makes safe and proves it.
    pub fn isolate(&mut self) {
        self.switch_off();
        if !self.door.hands().plugged {
            return;
        }
        let proves = self.care.is_taken();
        if proves {
            self.prove_tester();
        }
        // Nobody forgets the plug as easily as the rest.
        if self.care.is_taken() || self.care.is_taken() || self.care.is_taken() {
            self.act(Action::Plug { inserted: false });
        }
        for action in [
            Action::Secure,
            Action::Tap { open: false },
            Action::BleedHose,
        ] {
            if self.care.is_taken() {
                self.act(action);
            }
        }
        if proves {
            self.prove_dead();
        }
    }

    fn prove_dead(&mut self) {
        let roles = self.door.seen().scenario.machine.roles.clone();
        let [line, neutral, earth] = &roles.plug_pins;
        self.show(line, neutral);
        self.show(line, earth);
        self.show(neutral, earth);
        self.prove_tester();
    }

    /// Leaves the machine closed and labelled, and comes back with a part: what was proved before no
    /// longer holds. False when there is no such part.
    pub fn fetch(&mut self, part: &str) -> bool {
        self.isolate();
        self.close_up();
        self.mop();
        let label = self.care.is_taken();
        let parts = vec![part.to_owned()];
        if !self.act(Action::LeaveUntil { parts, label }) {
            return false;
        }
        if self.door.hands().plugged {
            self.isolate();
        } else if self.care.is_taken() {
            self.prove_tester();
            self.act(Action::Secure);
            self.prove_dead();
        }
        true
    }

    /// Opens until `needs` are reached.
    pub fn reach(&mut self, needs: &[String]) -> bool {
        let workshop = self.workshop();
        let missing: Vec<_> = workshop
            .closure(needs)
            .into_iter()
            .filter(|s| !self.door.bench().off.contains(&s.id))
            .cloned()
            .collect();
        if missing.is_empty() {
            return true;
        }
        self.isolate();
        for step in missing {
            if step.lays_down || step.needs_dry_tub {
                self.empty();
            }
            if step.lays_down {
                if self.is_floor_delicate() && self.care.is_taken() {
                    self.act(Action::ProtectFloor);
                }
                if self.door.bench().hose_attached {
                    self.act(Action::SupplyHose { attached: false });
                }
            }
            let helped = step.wants_aid() && self.care.is_taken();
            if !self.act(Action::TakeOff {
                step: step.id,
                helped,
            }) {
                return false;
            }
        }
        self.lead_off();
        true
    }

    fn is_floor_delicate(&self) -> bool {
        let scenario = &self.door.seen().scenario;
        scenario.visit.has(Condition::DelicateFloor)
    }

    /// Mops up where water stands on the floor; refused where it is dry.
    pub fn mop(&mut self) {
        if self.door.can(&Action::MopFloor) && self.care.is_taken() {
            self.act(Action::MopFloor);
        }
    }

    /// Takes the water out from above.
    pub fn empty(&mut self) {
        if !self.door.has_water() {
            return;
        }
        let was_open = self.door.hands().lid_open;
        if !was_open {
            self.act(Action::Lid { open: true });
        }
        self.act(Action::Empty {
            how: EmptyBy::Bucket,
        });
        if !was_open {
            self.act(Action::Lid { open: false });
        }
    }

    /// Leads the run capacitor's charge off as soon as it is reached.
    fn lead_off(&mut self) {
        let action = Action::Discharge {
            what: Charged::RunCapacitor,
            tool: DischargeTool::BleedResistor,
        };
        let isolation = &self.door.bench().isolation;
        if isolation.capacitor_discharged.is_none()
            && self.door.can(&action)
            && self.care.is_taken()
        {
            self.act(action);
        }
    }

    /// Pulls a connector apart.
    pub fn pull(&mut self, connector: &str) -> bool {
        if self.door.bench().apart.contains(connector) {
            return true;
        }
        self.act(Action::PullApart {
            connector: connector.to_owned(),
        })
    }

    /// Pushes everything home that is apart.
    pub fn push_home(&mut self) {
        let apart: Vec<String> = self.door.bench().apart.iter().cloned().collect();
        for connector in apart {
            let needs = self
                .workshop()
                .connector(&connector)
                .map(|c| c.needs.clone());
            self.reach(&needs.unwrap_or_default());
            self.act(Action::PushTogether { connector });
        }
    }

    /// Puts everything back, each with its check.
    pub fn close_up(&mut self) {
        self.push_home();
        let workshop = self.workshop();
        for step in back_in_order(&workshop, &self.door.bench().off) {
            let stood = workshop.step(&step).is_some_and(|s| s.lays_down);
            let check = self.care.is_taken();
            self.act(Action::Refit { step, check });
            if stood && !self.door.bench().hose_attached {
                self.act(Action::SupplyHose { attached: true });
            }
        }
        if !self.door.bench().hose_attached {
            self.act(Action::SupplyHose { attached: true });
        }
        if self.door.hands().lid_open {
            self.act(Action::Lid { open: false });
        }
    }

    /// Measures earth and insulation, plugs in, opens the tap, measures leakage. False when a test
    /// fails: then the plug stays out.
    pub fn bring_back(&mut self) -> bool {
        self.close_up();
        let machine = self.door.seen().scenario.machine.clone();
        let [line, _, earth] = &machine.roles.plug_pins;
        if !self.door.hands().plugged {
            if self.care.is_taken() {
                self.measure(MeterMode::EarthBond, earth, Some(&machine.roles.cabinet));
                let bond_ohm = self.last_value();
                self.measure(MeterMode::Insulation, line, Some(earth));
                let insulation_ohm = self.last_value();
                if bond_ohm.is_none_or(|ohm| ohm > 0.3) || insulation_ohm.is_some_and(|o| o < 1e6) {
                    return false;
                }
            }
            self.mop();
            self.act(Action::Plug { inserted: true });
        }
        if !self.door.hands().tap_open {
            self.act(Action::Tap { open: true });
        }
        if !self.care.is_taken() {
            return true;
        }
        self.let_sealant_set();
        let line = machine.wiring.supply.line_conductor;
        let name = machine.wiring.elements[line.index()].name.clone();
        self.measure(MeterMode::Leakage, &name, None);
        self.last_value().is_none_or(|amp| amp <= 3.5e-3)
    }

    /// Waits until what was sealed holds water.
    fn let_sealant_set(&mut self) {
        let now = self.door.tick();
        let left = self.door.sealed_at().map(|sets| sets.saturating_sub(now));
        self.door.wait(left.unwrap_or(0));
    }

    /// Value of the last reading written down.
    pub fn last_value(&self) -> Option<f64> {
        self.door
            .notebook()
            .iter()
            .rev()
            .find_map(|note| match &note.entry {
                crate::bench::notebook::NoteEntry::Reading(r) => Some(r.value),
                _ => None,
            })
            .flatten()
    }
}

/// What is off in an order in which it goes back: last off first, but nothing where it would damage
/// what is not yet in place.
fn back_in_order(workshop: &Workshop, off: &[String]) -> Vec<String> {
    let mut left: Vec<&String> = off.iter().rev().collect();
    let mut order = Vec::new();
    while !left.is_empty() {
        let can_go = |id: &String| {
            let is_free = left.iter().all(|other| {
                let above = workshop.step(other);
                above.is_none_or(|step| !step.needs.contains(id))
            });
            let harms = workshop.step(id).map_or(&[][..], |step| &step.harms);
            is_free
                && harms
                    .iter()
                    .filter(|harm| harm.way != Some(Way::Off))
                    .all(|harm| harm.on.iter().all(|on| !left.contains(&on)))
        };
        let next = left.iter().position(|id| can_go(id)).unwrap_or(0);
        order.push(left.remove(next).clone());
    }
    order
}
