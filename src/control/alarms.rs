//! Alarms and warnings in plain words; there are no codes.
//!
//! No alarm exists for a motor that does not turn, a belt that is off or an open
//! protector: the control has no speed sensor, and the cycle ends "normally" with wet
//! textiles. That forces observation. Source of the list: design choice.

use crate::text;

/// A reason to stop the program and call a person.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Alarm {
    /// The level was not reached in the time allowed.
    FillsTooSlowly,
    /// The tub was not empty in the time allowed.
    DrainsTooSlowly,
    /// One lever trip more than the corrections allowed in one spin block.
    BasketKeepsSwinging,
    /// The lid stayed open too long where it must be shut.
    LidIsOpen,
    /// The level oscillator is outside what a tub can show, or silent.
    LevelNotPlausible,
    /// The level reading says the tub is about to run over.
    OverflowDanger,
}

impl Alarm {
    /// Every alarm, in the order of the list shown to technicians.
    pub const ALL: [Alarm; 6] = [
        Alarm::FillsTooSlowly,
        Alarm::DrainsTooSlowly,
        Alarm::BasketKeepsSwinging,
        Alarm::LidIsOpen,
        Alarm::LevelNotPlausible,
        Alarm::OverflowDanger,
    ];

    /// What the panel says.
    pub const fn words(self) -> &'static str {
        match self {
            Alarm::FillsTooSlowly => text!("Fills too slowly"),
            Alarm::DrainsTooSlowly => text!("Drains too slowly"),
            Alarm::BasketKeepsSwinging => text!("Basket keeps swinging"),
            Alarm::LidIsOpen => text!("Lid is open"),
            Alarm::LevelNotPlausible => text!("Water level reading not plausible"),
            Alarm::OverflowDanger => text!("Overflow danger"),
        }
    }
}

/// A remark that does not end the program.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Warning {
    /// More refills during the wash than a sound tub needs.
    WaterKeepsLeaving,
    /// The supply is outside what the loads can stand.
    SupplyOutOfRange,
}

impl Warning {
    /// What the panel says.
    pub const fn words(self) -> &'static str {
        match self {
            Warning::WaterKeepsLeaving => text!("Water keeps leaving"),
            Warning::SupplyOutOfRange => text!("Supply voltage out of range"),
        }
    }
}
