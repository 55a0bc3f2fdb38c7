//! What is timed. A budget is a promise about the user's machine; a case without one is there to compare.

use crate::measure::Case;
use tubwright::drawing::Command;
use tubwright::drawing::Drain;
use tubwright::drawing::Features;
use tubwright::drawing::View;
use tubwright::drawing::animate;
use tubwright::machine::Pose;
use tubwright::plant::Plant;
use tubwright::plant::PlantInputs;
use tubwright::plant::params::PlantParams;

/// Every case, from the bottom of the program to its top.
pub fn all() -> Vec<Case> {
    vec![
        yardstick(),
        three_minutes_of_filling(),
        an_hour_of_rest(),
        one_frame_of_the_section(),
    ]
}

/// Work that never changes, so that figures from two machines, or two days, can be compared.
fn yardstick() -> Case {
    Case::new("yardstick: 1,000 x libm::sin and libm::exp", None, || {
        (0..1_000)
            .map(|n| libm::sin(f64::from(n)) + libm::exp(-f64::from(n) * 0.01))
            .sum()
    })
}

fn three_minutes_of_filling() -> Case {
    let empty = Plant::new(PlantParams::typical());
    let filling = PlantInputs {
        is_valve_energised: true,
        ..PlantInputs::IDLE
    };
    Case::new("plant: three minutes of filling", None, move || {
        let mut plant = empty.clone();
        plant.advance(1_800, &filling);
        plant.level_m()
    })
}

fn an_hour_of_rest() -> Case {
    let mut full = Plant::new(PlantParams::typical());
    full.pour_kg(40.0);
    Case::new("plant: an hour of rest with a full tub", None, move || {
        let mut plant = full.clone();
        plant.rest(36_000);
        plant.level_m()
    })
}

fn one_frame_of_the_section() -> Case {
    let features = Features {
        drain: Drain::Gravity,
        command: Command::Board,
        hot_inlet: false,
        filter_and_fuse: true,
        switch: true,
    };
    let mut pose = Pose {
        level_m: 0.2,
        rim_m: 0.4,
        basket_rad_per_s: 3.0,
        ..Pose::default()
    };
    Case::new(
        "drawing: what moves in one frame of the section",
        None,
        move || {
            pose.basket_rad += 0.05;
            animate(View::Section, features, &pose).len() as f64
        },
    )
}
