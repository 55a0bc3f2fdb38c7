//! The rows' own wash controller: it sees level frequency, lever, and whether the basket stands.

use tubwright::plant::drive::MotorInput;
use tubwright::plant::motor_table::MotorTable;
use tubwright::plant::{Plant, PlantInputs, TICK_S, air_trap};

/// One step of the programme, with its level in Pa or its time in s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    Check,
    Fill(f64),
    Agitate(f64),
    Soak(f64),
    Drain,
    Pulses,
    Spin(f64),
    Brake,
    UnbalanceFill,
    UnbalanceAgitate,
    UnbalanceDrain,
    End,
    Alarm(&'static str),
}

const HIGH_PA: f64 = 2624.8;
const LOW_PA: f64 = 1370.0;
const TOP_UP_PA: f64 = 250.0;
const OVERFLOW_HZ: f64 = 21_000.0;

/// Normal programme: wash and two rinses.
fn programme() -> Vec<Step> {
    let high = Step::Fill(HIGH_PA);
    let wash = [
        Step::Check,
        high,
        Step::Agitate(240.0),
        Step::Soak(240.0),
        Step::Agitate(480.0),
    ];
    let mut steps = wash.to_vec();
    steps.extend([Step::Drain, Step::Pulses, Step::Spin(90.0), Step::Brake]);
    for spin_s in [90.0, 300.0] {
        steps.extend([
            high,
            Step::Agitate(180.0),
            Step::Drain,
            Step::Pulses,
            Step::Spin(spin_s),
            Step::Brake,
        ]);
    }
    steps.push(Step::End);
    steps
}

pub struct Controller {
    steps: Vec<Step>,
    at: usize,
    pub now: Step,
    pub since_s: f64,
    pub n_unbalance: u32,
    pub n_topups: u32,
    full_s: f64,
    empty_s: f64,
    is_topping: bool,
    n_retries: u32,
    /// Pump variant: the pump runs with the drain motor.
    pub has_pump: bool,
}

/// What a step does in this tick and whether it is over.
struct Outcome<'a> {
    u: PlantInputs<'a>,
    next: Option<Next>,
}

enum Next {
    Following,
    Unbalanced,
    To(Step),
}

impl Controller {
    pub fn new(has_pump: bool) -> Self {
        Self {
            steps: programme(),
            at: 0,
            now: Step::Check,
            since_s: 0.0,
            n_unbalance: 0,
            n_topups: 0,
            full_s: 0.0,
            empty_s: 0.0,
            is_topping: false,
            n_retries: 0,
            has_pump,
        }
    }

    /// Outputs of this tick; the step changes for the next one.
    pub fn tick<'a>(&mut self, plant: &Plant, table: &'a MotorTable) -> PlantInputs<'a> {
        let mut outcome = self.work(plant, table);
        if plant.sensor_hz() < OVERFLOW_HZ && self.since_s > 1.0 && !self.is_over() {
            outcome.next = Some(Next::To(Step::Alarm("Overflow danger")));
        }
        self.since_s += TICK_S;
        match outcome.next {
            None => return outcome.u,
            Some(Next::To(step)) => self.enter(step),
            Some(Next::Following) => {
                self.at += 1;
                self.enter(self.steps[self.at]);
            }
            Some(Next::Unbalanced) => {
                self.n_retries += 1;
                self.n_unbalance += 1;
                while self.steps[self.at] != Step::Pulses {
                    self.at -= 1;
                }
                self.enter(if self.n_retries > 3 {
                    Step::Alarm("Basket keeps swinging")
                } else {
                    Step::UnbalanceFill
                });
                outcome.u = PlantInputs::IDLE;
            }
        }
        outcome.u
    }

    pub fn is_over(&self) -> bool {
        matches!(self.now, Step::End | Step::Alarm(_))
    }

    fn enter(&mut self, step: Step) {
        self.now = step;
        self.since_s = 0.0;
        self.full_s = 0.0;
        self.empty_s = 0.0;
        self.is_topping = false;
    }

    fn work<'a>(&mut self, plant: &Plant, table: &'a MotorTable) -> Outcome<'a> {
        let idle = PlantInputs::IDLE;
        let pulling = PlantInputs {
            is_actuator_energised: true,
            is_pump_energised: self.has_pump,
            ..idle
        };
        let over = |is_over: bool| is_over.then_some(Next::Following);
        match self.now {
            Step::Check => Outcome {
                u: idle,
                next: over(self.since_s >= 3.0),
            },
            Step::Fill(target) => self.fill(plant, target, Next::Following),
            Step::UnbalanceFill => self.fill(plant, LOW_PA, Next::To(Step::UnbalanceAgitate)),
            Step::Agitate(seconds) => self.agitate(plant, table, seconds),
            Step::UnbalanceAgitate => {
                let next = (self.since_s >= 60.0).then_some(Next::To(Step::UnbalanceDrain));
                Outcome {
                    u: PlantInputs {
                        motor: self.pattern(table),
                        ..idle
                    },
                    next,
                }
            }
            Step::Soak(seconds) => Outcome {
                u: idle,
                next: over(self.since_s >= seconds),
            },
            Step::Drain => self.drain(plant, pulling, Next::Following),
            Step::UnbalanceDrain => self.drain(plant, pulling, Next::To(Step::Pulses)),
            Step::Pulses => {
                let is_on = self.since_s > 0.0 && (self.since_s + 1e-9) % 12.0 < 6.0 - 1e-6;
                self.spin(plant, table, pulling, is_on, 60.0)
            }
            Step::Spin(seconds) => self.spin(plant, table, pulling, true, seconds),
            Step::Brake => {
                let is_still = plant.state().drive.basket_rad_per_s.abs() < 0.5;
                let is_done = self.since_s >= 10.0 && is_still;
                if is_done {
                    self.n_retries = 0;
                }
                Outcome {
                    u: idle,
                    next: over(is_done),
                }
            }
            Step::End | Step::Alarm(_) => Outcome {
                u: idle,
                next: None,
            },
        }
    }

    fn fill<'a>(&mut self, plant: &Plant, target_pa: f64, then: Next) -> Outcome<'a> {
        let is_full = plant.state().trap.sensor_pa >= target_pa - 0.5;
        self.full_s = if is_full { self.full_s + TICK_S } else { 0.0 };
        let is_done = self.full_s >= 1.0 - 1e-9;
        let next = if self.since_s > 1200.0 {
            Some(Next::To(Step::Alarm("Fills too slowly")))
        } else {
            is_done.then_some(then)
        };
        Outcome {
            u: PlantInputs {
                is_valve_energised: !is_done,
                ..PlantInputs::IDLE
            },
            next,
        }
    }

    fn agitate<'a>(&mut self, plant: &Plant, table: &'a MotorTable, seconds: f64) -> Outcome<'a> {
        let sensor_pa = plant.state().trap.sensor_pa;
        if !self.is_topping && sensor_pa < HIGH_PA - TOP_UP_PA && self.since_s > 20.0 {
            self.is_topping = true;
            self.n_topups += 1;
        }
        let is_valve_energised = self.is_topping;
        self.is_topping &= sensor_pa < HIGH_PA;
        let is_done = self.since_s >= seconds;
        let motor = if is_done {
            MotorInput::Off
        } else {
            self.pattern(table)
        };
        let u = PlantInputs {
            motor,
            is_valve_energised,
            ..PlantInputs::IDLE
        };
        Outcome {
            u,
            next: is_done.then_some(Next::Following),
        }
    }

    /// 1.4 s forward, 0.7 s off, 1.4 s back, 0.7 s off.
    fn pattern<'a>(&self, table: &'a MotorTable) -> MotorInput<'a> {
        let phase = (self.since_s + 1e-9) % 4.2;
        if phase < 1.4 - 1e-6 {
            MotorInput::On {
                table,
                is_forward: true,
            }
        } else if (2.1 - 1e-6..3.5 - 1e-6).contains(&phase) {
            MotorInput::On {
                table,
                is_forward: false,
            }
        } else {
            MotorInput::Off
        }
    }

    fn drain<'a>(&mut self, plant: &Plant, u: PlantInputs<'a>, then: Next) -> Outcome<'a> {
        let sensor = &plant.params().sensor;
        let empty_hz = air_trap::oscillator_hz(sensor, sensor.coil_h) - 250.0;
        if plant.sensor_hz() >= empty_hz {
            self.empty_s += TICK_S;
        }
        let next = if self.since_s > 600.0 {
            Some(Next::To(Step::Alarm("Drains too slowly")))
        } else {
            (self.empty_s >= 30.0 - 1e-9).then_some(then)
        };
        Outcome { u, next }
    }

    fn spin<'a>(
        &self,
        plant: &Plant,
        table: &'a MotorTable,
        pulling: PlantInputs<'a>,
        is_on: bool,
        seconds: f64,
    ) -> Outcome<'a> {
        let motor = if is_on {
            MotorInput::On {
                table,
                is_forward: true,
            }
        } else {
            MotorInput::Off
        };
        let next = if plant.is_lever_open() {
            Some(Next::Unbalanced)
        } else {
            (self.since_s >= seconds - 1e-6).then_some(Next::Following)
        };
        Outcome {
            u: PlantInputs { motor, ..pulling },
            next,
        }
    }
}
