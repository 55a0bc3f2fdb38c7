//! What a person sets on the panel; the board keeps it without power.

use crate::control::io::Key;
use crate::control::model::ControlModel;

/// Water chosen for the wash.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WaterChoice {
    /// Cold valve.
    Cold,
    /// Both valves.
    Warm,
    /// Hot valve.
    Hot,
}

/// What a person has set on the panel; kept without power.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Settings {
    /// Index of the program.
    pub program: usize,
    /// Index of the level target.
    pub level: usize,
    /// Water of the wash.
    pub water: WaterChoice,
    /// Delayed start, min; 0 = none. A customer may have left it on.
    pub delay_min: u32,
    /// Key lock. A customer may have left it on.
    pub keys_locked: bool,
}

impl Settings {
    /// First program, highest level, cold, no delay, keys free.
    pub fn fresh(model: &ControlModel) -> Settings {
        Settings {
            program: 0,
            level: model.level.targets.len().saturating_sub(1),
            water: WaterChoice::Cold,
            delay_min: 0,
            keys_locked: false,
        }
    }

    /// A choice on the waiting panel.
    pub(crate) fn choose(&mut self, key: Key, model: &ControlModel) {
        match key {
            Key::Program => self.program = next_index(self.program, model.programs.len()),
            Key::Level => self.level = next_index(self.level, model.level.targets.len()),
            Key::Temperature if model.has_hot_valve => {
                self.water = match self.water {
                    WaterChoice::Cold => WaterChoice::Warm,
                    WaterChoice::Warm => WaterChoice::Hot,
                    WaterChoice::Hot => WaterChoice::Cold,
                };
            }
            Key::Delay => {
                let hours = self.delay_min / 60 + 1;
                self.delay_min = if hours > 24 { 0 } else { hours * 60 };
            }
            _ => {}
        }
    }

    /// Hands the settings to `sink`, in a fixed order.
    pub fn hash_into(&self, sink: &mut impl FnMut(u64)) {
        sink(self.program as u64);
        sink(self.level as u64);
        sink(self.water as u64);
        sink(u64::from(self.delay_min) << 1 | u64::from(self.keys_locked));
    }
}

fn next_index(index: usize, n_entries: usize) -> usize {
    if index + 1 < n_entries { index + 1 } else { 0 }
}
