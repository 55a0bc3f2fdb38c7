//! Water that comes from elsewhere or goes by hand: on the floor, into the tub, warm or cold.

use crate::machine::Machine;

impl Machine {
    /// Takes the water off the floor.
    pub fn mop(&mut self) {
        self.plant.mop();
    }

    /// The water in the tub has this temperature, K.
    pub fn warm_bath(&mut self, bath_k: f64) {
        self.plant.warm_bath(bath_k);
    }

    /// Pours water of this temperature into the tub, kg and K.
    pub fn pour(&mut self, water_kg: f64, water_k: f64) {
        self.plant.pour_at(water_kg, water_k);
    }
}
