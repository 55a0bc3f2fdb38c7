//! The one coordinate world of all views: a room with a machine, one unit is one millimetre.
//!
//! x grows to the right, y downwards, the floor is at `FLOOR`. All views put the cabinet, the
//! tap, the socket and the floor drain in the same places, so that the eye keeps its place when
//! the view changes. Sizes follow the machines' data sheets (basket radius 215 mm, pulsator
//! 165 mm, overflow edge 400 mm over the tub floor, pulleys 60 and 112 mm at 190 mm).

/// Left edge, top edge, width and height of the picture.
pub const VIEW_BOX: (f64, f64, f64, f64) = (0.0, -50.0, 1560.0, 1130.0);

/// The right edge of the picture.
pub const EDGE: f64 = VIEW_BOX.0 + VIEW_BOX.2;
/// How wide a letter of a name is, at the names' usual size.
pub const LETTER: f64 = 12.5;

/// The floor line under the feet.
pub const FLOOR: f64 = 1000.0;
/// Where wall and floor meet, behind the machine.
pub const WALL_FOOT: f64 = 922.0;
/// Left edge of the cabinet.
pub const LEFT: f64 = 440.0;
/// Right edge of the cabinet.
pub const RIGHT: f64 = 980.0;
/// Axis of basket, pulsator and gearbox.
pub const AXIS: f64 = 710.0;
/// Lower edge of the cabinet's sheet metal.
pub const SKIRT: f64 = 972.0;
/// Joint of cabinet and top cover.
pub const SHOULDER: f64 = 262.0;
/// Upper face of the top cover.
pub const DECK: f64 = 212.0;
/// Upper edge of the panel, seen from the front.
pub const CROWN: f64 = 100.0;

/// Half the outer width of the tub.
pub const TUB: f64 = 231.0;
/// Rim of the tub.
pub const TUB_RIM: f64 = 300.0;
/// Inner face of the tub floor: level zero.
pub const TUB_FLOOR: f64 = 720.0;
/// Inner radius of the basket.
pub const BASKET: f64 = 215.0;
/// Upper edge of the basket.
pub const BASKET_RIM: f64 = 322.0;
/// Floor of the basket.
pub const BASKET_FLOOR: f64 = 694.0;
/// Radius of the pulsator.
pub const PULSATOR: f64 = 165.0;

/// Axis of the wash motor.
pub const MOTOR: f64 = 520.0;
/// Middle plane of the belt.
pub const BELT: f64 = 862.0;
/// Radius of the motor pulley.
pub const MOTOR_PULLEY: f64 = 30.0;
/// Radius of the gearbox pulley.
pub const GEARBOX_PULLEY: f64 = 56.0;

/// Height of the pulleys' axes when the machine lies on its front, seen from below.
pub const LYING_AXIS: f64 = 716.0;

/// The tap's outlet.
pub const TAP: (f64, f64) = (1210.0, 300.0);
/// Middle of the wall socket.
pub const SOCKET: (f64, f64) = (1425.0, 330.0);
/// Where the drain water goes: middle of the gully's mouth.
pub const GULLY: (f64, f64) = (1210.0, 876.0);

/// Smallest side of a touchable area: 24 px when the picture is 720 px wide.
pub const SMALLEST_TARGET: f64 = 52.0;

/// One metre in picture units.
pub const METRE: f64 = 1000.0;

/// How far the receding edge of the cabinet runs in the outside view, for the whole depth.
pub const RECEDE: (f64, f64) = (118.0, -68.0);

/// A point of the outside view: x and y in the plane of the front, `depth_ratio` 0 at the front
/// and 1 at the back.
pub fn receded(x: f64, y: f64, depth_ratio: f64) -> (f64, f64) {
    (x + RECEDE.0 * depth_ratio, y + RECEDE.1 * depth_ratio)
}
