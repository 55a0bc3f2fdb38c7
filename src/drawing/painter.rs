//! What moves in a picture, as attributes of elements.
//!
//! The painter of a frame compares with the last list and writes only what differs; a fresh
//! drawing gets the same list applied, so that both agree. Seen from the side, a point on a
//! turning part at angle a stands at R sin a and is turned towards us when cos a > 0. The water
//! surface stands at the height the model computes; wire, valve and lever move true to size.

use core::f64::consts::PI;

use crate::drawing::input::{Drain, Features, View};
use crate::drawing::outside::dial_middle;
use crate::drawing::section::moving::{
    COLUMN_STEP_RAD, COLUMNS, GEARBOX_MARKS, MOTOR_MARKS, RIB_STEP_RAD, RIBS,
};
use crate::drawing::svg::{Element, num};
use crate::drawing::world::{
    AXIS, BASKET, BELT, GEARBOX_PULLEY, LYING_AXIS, METRE, MOTOR, MOTOR_PULLEY, TUB_FLOOR,
};
use crate::machine::Pose;

/// One attribute of one element.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// The element's `id`.
    pub id: &'static str,
    /// Name of the attribute.
    pub attribute: &'static str,
    /// Its value for this pose.
    pub value: String,
}

/// Basket speed above which single holes can no longer be seen, rad/s. Design choice.
const BLUR_RAD_PER_S: f64 = 25.0;
/// Flow that fills a hose or stream in the picture, m³/s (12 L/min). Design choice.
const FULL_FLOW_M3_PER_S: f64 = 2.0e-4;
/// Belt tension below which the belt is drawn hanging, N. Design choice.
const HANGING_BELT_N: f64 = 5.0;
/// Belt tension of a well set belt, N.
const GOOD_BELT_N: f64 = 65.0;
/// Free play between wire and lever, m.
const LEVER_PLAY_M: f64 = 0.002;

/// Everything that differs between two poses in this view.
pub fn animate(view: View, features: Features, pose: &Pose) -> Vec<Change> {
    let mut frame = Frame {
        changes: Vec::with_capacity(64),
    };
    frame.room(pose);
    match view {
        View::Outside => frame.outside(pose),
        View::Opened => {
            frame.outside(pose);
            frame.drain(pose, features);
            frame.drive(pose);
            frame.face_on(pose);
        }
        View::Section => {
            frame.outside(pose);
            frame.tub(pose);
            frame.drain(pose, features);
            frame.drive(pose);
        }
        View::Water => {
            frame.tub(pose);
            frame.drain(pose, features);
        }
    }
    frame.changes
}

/// Writes the changes into a drawing. Ids that this drawing does not have are passed over.
pub fn apply(drawing: &mut Element, changes: &[Change]) {
    drawing.walk_mut(&mut |element| {
        let Some(id) = element.attribute("id").map(str::to_owned) else {
            return;
        };
        for change in changes.iter().filter(|change| change.id == id) {
            element.set(change.attribute, change.value.clone());
        }
    });
}

struct Frame {
    changes: Vec<Change>,
}

impl Frame {
    fn set(&mut self, id: &'static str, attribute: &'static str, value: impl Into<String>) {
        self.changes.push(Change {
            id,
            attribute,
            value: value.into(),
        });
    }

    fn show(&mut self, id: &'static str, shown: bool) {
        self.set(id, "display", if shown { "inline" } else { "none" });
    }

    fn shift(&mut self, id: &'static str, x: f64, y: f64) {
        self.set(id, "transform", format!("translate({} {})", num(x), num(y)));
    }

    fn turn(&mut self, id: &'static str, angle_rad: f64, x: f64, y: f64) {
        let degrees = angle_rad * 180.0 / PI;
        let degrees = degrees - 360.0 * libm::floor(degrees / 360.0);
        self.set(
            id,
            "transform",
            format!("rotate({} {} {})", num(degrees), num(x), num(y)),
        );
    }

    fn room(&mut self, pose: &Pose) {
        let tilt_rad = pose.tilt_rad;
        self.turn("machine", tilt_rad, AXIS, 1000.0);
        self.turn(
            "tap-handle",
            if pose.tap_open { 0.0 } else { PI / 2.0 },
            1210.0,
            245.0,
        );
        self.turn(
            "hot-tap-handle",
            if pose.tap_open { 0.0 } else { PI / 2.0 },
            1284.0,
            245.0,
        );
        self.show("plug-on", pose.plugged);
        self.show("plug-off", !pose.plugged);
        self.show("cord-on", pose.plugged);
        self.show("cord-off", !pose.plugged);
        self.show("supply-on", pose.hose_attached);
        self.show("supply-off", !pose.hose_attached);
        let inflow = share(pose.inflow_m3_per_s, FULL_FLOW_M3_PER_S);
        let outflow = share(pose.outflow_m3_per_s, 2.0 * FULL_FLOW_M3_PER_S);
        self.set("inflow-hose", "opacity", num(inflow));
        self.set("outflow-hose", "opacity", num(outflow));
        self.set("outflow", "opacity", num(outflow));
        // A puddle grows by area: a film of about 3 mm.
        let radius = 1000.0 * (pose.puddle_kg.max(0.0) / (3.0 * PI)).sqrt();
        self.set("puddle", "rx", num(radius.min(620.0)));
        self.set("puddle", "ry", num((radius * 0.08).min(46.0)));
    }

    fn outside(&mut self, pose: &Pose) {
        let (x, y) = dial_middle();
        self.turn("dial", pose.dial_rad, x, y);
        self.show("lid-open", pose.lid_open);
        self.show("lid-shut", !pose.lid_open);
        self.set("display", "class", lamp(pose.display_lit));
        self.set(
            "on-off-key",
            "class",
            if pose.switched_on {
                "key key--in"
            } else {
                "key"
            },
        );
        self.shift(
            "lid-switch-lever",
            0.0,
            if pose.lid_open { -5.0 } else { 0.0 },
        );
    }

    fn tub(&mut self, pose: &Pose) {
        let swing = METRE * (pose.swing_m * libm::sin(pose.basket_rad) + pose.lean_m);
        self.shift("tub-swing", swing, 0.0);
        for (id, side) in [("rod-left", -1.0), ("rod-right", 1.0)] {
            let top = AXIS + side * 257.0;
            let foot = AXIS + side * 251.0 + swing;
            self.set(id, "d", format!("M{} 284 L{} 800", num(top), num(foot)));
        }
        self.shift("spring-left", swing, 0.0);
        self.shift("spring-right", swing, 0.0);
        for (index, id) in RIBS.iter().enumerate() {
            let angle = pose.pulsator_rad + RIB_STEP_RAD * index as f64;
            let across = libm::cos(angle);
            self.set(
                id,
                "transform",
                format!("translate({} 692) scale({} 1)", num(AXIS), num(across)),
            );
        }
        self.basket(pose);
        self.water(pose);
    }

    fn basket(&mut self, pose: &Pose) {
        let speed = libm::fabs(pose.basket_rad_per_s);
        let blur = share(speed, BLUR_RAD_PER_S);
        self.set("basket-streaks", "opacity", num(0.5 * blur));
        for (index, id) in COLUMNS.iter().enumerate() {
            let angle = pose.basket_rad + COLUMN_STEP_RAD * index as f64;
            let (side, away) = (libm::sin(angle), libm::cos(angle));
            self.set(
                id,
                "transform",
                format!(
                    "translate({} 0) scale({} 1)",
                    num(AXIS + (BASKET - 6.0) * side),
                    num(libm::fabs(away).max(0.05))
                ),
            );
            // We look at the far wall only: the near one is cut away.
            let seen = if away > 0.0 { 1.0 - blur } else { 0.0 };
            self.set(id, "opacity", num(seen));
        }
        let angle = pose.basket_rad;
        let seen = if libm::cos(angle) > 0.0 {
            1.0 - 0.8 * blur
        } else {
            0.0
        };
        self.set(
            "lint-filter",
            "transform",
            format!(
                "translate({} 0) scale({} 1)",
                num(AXIS + (BASKET - 6.0) * libm::sin(angle)),
                num(libm::cos(angle).max(0.05))
            ),
        );
        self.set("lint-filter", "opacity", num(seen));
        self.show("load", pose.load_kg > 0.05);
        // Wet textile heaps up with the cube root of its mass.
        let heap = libm::cbrt(pose.load_kg.max(0.0) / 4.0).min(1.4);
        self.set(
            "load",
            "transform",
            format!("translate(0 690) scale(1 {}) translate(0 -690)", num(heap)),
        );
    }

    fn water(&mut self, pose: &Pose) {
        let rim_m = if pose.rim_m > 0.0 { pose.rim_m } else { 0.42 };
        let level = METRE * pose.level_m.clamp(0.0, rim_m);
        let surface = TUB_FLOOR - level;
        self.set("water", "y", num(surface));
        self.set("water", "height", num(level));
        // The machine leans; its water does not.
        let degrees = -pose.tilt_rad * 180.0 / PI;
        let upright = format!("rotate({} {} {})", num(degrees), num(AXIS), num(surface));
        self.set("water", "transform", upright);
        self.set("water-line", "y1", num(surface));
        self.set("water-line", "y2", num(surface));
        self.set("water-line", "opacity", if level > 1.0 { "1" } else { "0" });
        let foam = 70.0 * pose.foam_ratio.clamp(0.0, 1.0);
        self.set("foam", "y", num(surface - foam));
        self.set("foam", "height", num(foam));
        let falls = (surface - 268.0).max(0.0);
        let inflow = share(pose.inflow_m3_per_s, FULL_FLOW_M3_PER_S);
        self.set("inflow", "height", num(falls));
        self.set(
            "inflow",
            "opacity",
            num(if inflow > 0.0 {
                0.35 + 0.65 * inflow
            } else {
                0.0
            }),
        );
        // Air trapped in the chamber lets water rise a little only.
        let rise = (level - 20.0).clamp(0.0, 6.0);
        self.set("air-chamber-water", "y", num(697.0 - rise));
        self.set("air-chamber-water", "height", num(rise));
        self.set(
            "drain-water",
            "opacity",
            if level > 1.0 { "1" } else { "0" },
        );
    }

    fn drain(&mut self, pose: &Pose, features: Features) {
        let stroke = METRE * pose.stroke_m.max(0.0);
        self.shift("pull-wire", stroke, 0.0);
        let lever_play = METRE * LEVER_PLAY_M;
        let follows = if pose.lever_in_link {
            (stroke - lever_play).max(0.0)
        } else {
            0.0
        };
        self.shift("lever", follows, 0.0);
        self.set(
            "link-eye",
            "class",
            if pose.lever_in_link {
                "lever line"
            } else {
                "lever line loose"
            },
        );
        let free = share(follows, 6.0);
        self.shift("band-left", -3.0 * free, 0.0);
        self.shift("band-right", 3.0 * free, 0.0);
        if features.drain == Drain::Gravity {
            self.shift("drain-plunger", stroke, 0.0);
        }
        if features.drain == Drain::Pump {
            let runs = pose.outflow_m3_per_s > 0.0;
            self.set("impeller", "class", if runs { "spinning" } else { "" });
        }
    }

    fn drive(&mut self, pose: &Pose) {
        let gearbox_rad = pose.motor_rad * MOTOR_PULLEY / GEARBOX_PULLEY;
        self.marks(&MOTOR_MARKS, pose.motor_rad, MOTOR, MOTOR_PULLEY - 4.0);
        self.marks(&GEARBOX_MARKS, gearbox_rad, AXIS, GEARBOX_PULLEY - 4.0);
        let (left, right) = (MOTOR - MOTOR_PULLEY, AXIS + GEARBOX_PULLEY);
        let slack = 1.0 - share(pose.belt_tension_n, GOOD_BELT_N);
        let sag = if pose.belt_tension_n < HANGING_BELT_N {
            46.0
        } else {
            10.0 * slack
        };
        let middle = (left + right) / 2.0;
        let run = format!(
            "M{} {BELT} Q{} {} {} {BELT}",
            num(left),
            num(middle),
            num(BELT + 2.0 * sag),
            num(right)
        );
        self.set("belt", "d", run.clone());
        self.set("belt-marks", "d", run);
        let run_m = if pose.slipping { 0.3 } else { 1.0 } * pose.motor_rad * MOTOR_PULLEY;
        let offset = run_m - 24.0 * libm::floor(run_m / 24.0);
        self.set("belt-marks", "stroke-dashoffset", num(-offset));
    }

    fn marks(&mut self, ids: &[&'static str], angle_rad: f64, axis: f64, radius: f64) {
        let step = 2.0 * PI / ids.len() as f64;
        for (index, id) in ids.iter().enumerate() {
            let angle = angle_rad + step * index as f64;
            self.shift(id, axis + radius * libm::sin(angle), 0.0);
            self.set(
                id,
                "opacity",
                if libm::cos(angle) > 0.0 { "1" } else { "0" },
            );
        }
    }

    /// Pulleys, belt, lever and wire seen along their axes, with the machine laid down.
    fn face_on(&mut self, pose: &Pose) {
        let gearbox_rad = pose.motor_rad * MOTOR_PULLEY / GEARBOX_PULLEY;
        self.turn("motor-pulley-face", pose.motor_rad, MOTOR, LYING_AXIS);
        self.turn("gearbox-pulley-face", gearbox_rad, AXIS, LYING_AXIS);
        let slack = 1.0 - share(pose.belt_tension_n, GOOD_BELT_N);
        let sag = if pose.belt_tension_n < HANGING_BELT_N {
            30.0
        } else {
            8.0 * slack
        };
        self.set("belt-face", "d", belt_face(sag));
    }
}

/// The belt round both pulleys seen along their axes, its lower strand sagging.
fn belt_face(sag: f64) -> String {
    let (small, large, y) = (MOTOR_PULLEY, GEARBOX_PULLEY, LYING_AXIS);
    // Tangent points of two circles: the strand leans by asin((R - r) / distance).
    let lean = libm::asin((large - small) / (AXIS - MOTOR));
    let (sine, cosine) = (libm::sin(lean), libm::cos(lean));
    let (x1, x2) = (MOTOR - small * sine, AXIS - large * sine);
    let (up1, up2) = (small * cosine, large * cosine);
    format!(
        "M{x1} {a1} L{x2} {a2} A{large} {large} 0 1 1 {x2} {b2} Q{xm} {bm} {x1} {b1} A{small} {small} 0 1 1 {x1} {a1}Z",
        x1 = num(x1),
        x2 = num(x2),
        xm = num((x1 + x2) / 2.0),
        a1 = num(y - up1),
        a2 = num(y - up2),
        b1 = num(y + up1),
        b2 = num(y + up2),
        bm = num(y + (up1 + up2) / 2.0 + sag),
        large = num(large),
        small = num(small),
    )
}

fn share(value: f64, full: f64) -> f64 {
    (value / full).clamp(0.0, 1.0)
}

fn lamp(lit: bool) -> &'static str {
    if lit { "lamp lamp--lit" } else { "lamp" }
}
