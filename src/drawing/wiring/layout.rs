//! What a layout is made of: where wires, points, symbols and blocks are on the sheet.

/// Which conductor a wire is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Conductor {
    /// Line, brown.
    Line,
    /// Neutral, blue.
    Neutral,
    /// Protective earth, green and yellow.
    Earth,
    /// Another mains conductor, black.
    Black,
    /// Another mains conductor, grey.
    Grey,
    /// A track on a board or a low-voltage wire.
    Track,
}

/// Kinds of symbols.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Resistor: a box.
    Resistor,
    /// Fuse: a box with the conductor through it.
    Fuse,
    /// Capacitor: two plates.
    Capacitor,
    /// Coil of a valve or actuator: a box with a diagonal.
    Coil,
    /// Winding: half circles.
    Winding,
    /// Contact that closes.
    Make,
    /// Contact that opens.
    Break,
    /// Electronic switch: a contact in a box.
    Electronic,
    /// Small motor: M in a circle.
    Motor,
    /// Supply: a wave in a circle.
    Source,
    /// Thermal protector: a break contact with its bimetal.
    Protector,
    /// Rectifier and regulator.
    Rectifier,
    /// Oscillator on a board.
    Oscillator,
}

/// Where the name of an outline stands: away from its wires.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NameSide {
    /// Inside, on top.
    Top,
    /// Below.
    Below,
    /// To the left.
    Left,
}

/// Which way a symbol's leads run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// From top to bottom.
    Down,
    /// From left to right.
    Across,
}

/// One piece of a layout. Coordinates as in the machine drawings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Piece {
    /// A wire of a node, in SVG path language.
    Wire {
        /// The node.
        node: &'static str,
        /// Its conductor.
        conductor: Conductor,
        /// Path.
        data: &'static str,
    },
    /// A place a probe can reach.
    Point {
        /// The node.
        node: &'static str,
        /// Across.
        x: f64,
        /// Down.
        y: f64,
    },
    /// A symbol.
    Part {
        /// Kind.
        kind: Kind,
        /// Element of the wiring; decides whether a contact is drawn closed.
        element: &'static str,
        /// Middle.
        x: f64,
        /// Middle.
        y: f64,
        /// Leads.
        way: Way,
        /// Part it belongs to, as an id; its name is written beside it. Empty for none.
        part: &'static str,
        /// Where the name goes, from the middle.
        name_at: (f64, f64),
    },
    /// A connector pin or push-on terminal.
    Pin {
        /// Element of the wiring that is open while it is apart.
        element: &'static str,
        /// Middle.
        x: f64,
        /// Middle.
        y: f64,
        /// Leads.
        way: Way,
        /// Plug and pin, such as "3.1"; empty for a terminal.
        number: &'static str,
    },
    /// The outline of a board, a motor or a switch with several contacts.
    Block {
        /// Left.
        x: f64,
        /// Top.
        y: f64,
        /// Width.
        width: f64,
        /// Height.
        height: f64,
        /// Part, as an id.
        part: &'static str,
        /// What of it, plain words; may be empty.
        which: &'static str,
        /// A motor's outline is a circle.
        round: bool,
        /// Where the name stands.
        name: NameSide,
    },
    /// Wires that are joined where they meet.
    Joint {
        /// Across.
        x: f64,
        /// Down.
        y: f64,
    },
    /// The earth symbol, its lead upwards.
    Ground {
        /// Across.
        x: f64,
        /// Down.
        y: f64,
    },
    /// A few words.
    Note {
        /// Across.
        x: f64,
        /// Down.
        y: f64,
        /// The words.
        words: &'static str,
    },
}

impl Piece {
    /// Lowest edge.
    pub fn bottom(&self) -> f64 {
        match self {
            Piece::Wire { .. } => f64::NEG_INFINITY,
            Piece::Point { y, .. }
            | Piece::Part { y, .. }
            | Piece::Pin { y, .. }
            | Piece::Joint { y, .. }
            | Piece::Ground { y, .. }
            | Piece::Note { y, .. } => y + 40.0,
            Piece::Block { y, height, .. } => y + height,
        }
    }
}

/// A wire.
pub const fn wire(node: &'static str, conductor: Conductor, data: &'static str) -> Piece {
    Piece::Wire {
        node,
        conductor,
        data,
    }
}

/// A test point.
pub const fn point(node: &'static str, x: f64, y: f64) -> Piece {
    Piece::Point { node, x, y }
}

/// A symbol with leads from top to bottom, its part's name to the right.
pub const fn down(kind: Kind, element: &'static str, x: f64, y: f64, part: &'static str) -> Piece {
    Piece::Part {
        kind,
        element,
        x,
        y,
        way: Way::Down,
        part,
        name_at: (30.0, 6.0),
    }
}

/// A symbol with leads from left to right, its part's name above.
pub const fn across(
    kind: Kind,
    element: &'static str,
    x: f64,
    y: f64,
    part: &'static str,
) -> Piece {
    Piece::Part {
        kind,
        element,
        x,
        y,
        way: Way::Across,
        part,
        name_at: (0.0, -34.0),
    }
}

/// A connector pin with leads from top to bottom.
pub const fn pin(element: &'static str, x: f64, y: f64, number: &'static str) -> Piece {
    Piece::Pin {
        element,
        x,
        y,
        way: Way::Down,
        number,
    }
}

/// A connector pin with leads from left to right.
pub const fn side_pin(element: &'static str, x: f64, y: f64, number: &'static str) -> Piece {
    Piece::Pin {
        element,
        x,
        y,
        way: Way::Across,
        number,
    }
}

/// An outline of a part with several elements.
pub const fn block(
    part: &'static str,
    which: &'static str,
    (x, y): (f64, f64),
    (width, height): (f64, f64),
) -> Piece {
    Piece::Block {
        x,
        y,
        width,
        height,
        part,
        which,
        round: false,
        name: NameSide::Top,
    }
}

/// The round outline of the motor.
pub const fn motor(part: &'static str, (x, y): (f64, f64), radius: f64) -> Piece {
    Piece::Block {
        x: x - radius,
        y: y - radius,
        width: 2.0 * radius,
        height: 2.0 * radius,
        part,
        which: "",
        round: true,
        name: NameSide::Top,
    }
}

/// An earth symbol.
pub const fn ground(x: f64, y: f64) -> Piece {
    Piece::Ground { x, y }
}

/// A few words.
pub const fn note(x: f64, y: f64, words: &'static str) -> Piece {
    Piece::Note { x, y, words }
}

/// An outline with its name below.
pub const fn lower_named(
    part: &'static str,
    (x, y): (f64, f64),
    (width, height): (f64, f64),
) -> Piece {
    Piece::Block {
        x,
        y,
        width,
        height,
        part,
        which: "",
        round: false,
        name: NameSide::Below,
    }
}

/// An outline with its name on the left.
pub const fn left_named(
    part: &'static str,
    (x, y): (f64, f64),
    (width, height): (f64, f64),
) -> Piece {
    Piece::Block {
        x,
        y,
        width,
        height,
        part,
        which: "",
        round: false,
        name: NameSide::Left,
    }
}

/// A joint of wires.
pub const fn joint(x: f64, y: f64) -> Piece {
    Piece::Joint { x, y }
}

/// A symbol with leads from top to bottom and its part's name at a chosen place.
pub const fn named(
    kind: Kind,
    element: &'static str,
    (x, y): (f64, f64),
    part: &'static str,
    name_at: (f64, f64),
) -> Piece {
    Piece::Part {
        kind,
        element,
        x,
        y,
        way: Way::Down,
        part,
        name_at,
    }
}

/// A symbol with leads from left to right and its part's name at a chosen place.
pub const fn across_named(
    kind: Kind,
    element: &'static str,
    (x, y): (f64, f64),
    part: &'static str,
    name_at: (f64, f64),
) -> Piece {
    Piece::Part {
        kind,
        element,
        x,
        y,
        way: Way::Across,
        part,
        name_at,
    }
}
