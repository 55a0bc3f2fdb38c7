//! Which element and node of the wiring plays which role, looked up once.

use crate::machine::MachineError;
use crate::machine::model::MachineModel;
use crate::machine::model::SenseInput;
use crate::network::ElementId;
use crate::network::ElementKind;
use crate::network::NodeId;
use crate::plant::harness::WiringModel;
use crate::plant::harness::model::WireElement;

/// Coils in the order they are watched.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Coil {
    /// Inlet valve, cold.
    InletValve = 0,
    /// Inlet valve, hot.
    HotValve = 1,
    /// Drain motor or clutch motor.
    DrainMotor = 2,
    /// Drain pump.
    DrainPump = 3,
    /// Timer motor.
    TimerMotor = 4,
}

/// Number of coils.
pub const COILS: usize = 5;

/// Roles as indices.
#[derive(Clone, Debug, PartialEq)]
pub struct RoleIds {
    /// Mechanical on/off switch.
    pub power_switch: Option<ElementId>,
    /// Contact of the lid switch.
    pub lid_switch: ElementId,
    /// Contact of the out-of-balance switch.
    pub lever_switch: ElementId,
    /// Motor protector.
    pub protector: ElementId,
    /// Contacts each load closes: forward, reverse, cold, hot, drain motor, pump.
    pub outputs: [Vec<ElementId>; 6],
    /// Contacts of a timer by number.
    pub timer: Vec<ElementId>,
    /// Sections of a pressure switch: index of the set pressure, contacts empty, contacts full.
    pub level_sections: Vec<(usize, Vec<ElementId>, Vec<ElementId>)>,
    /// Contacts that each position of the level knob closes.
    pub level_knob: Vec<Vec<ElementId>>,
    /// Elements whose current drives something.
    pub coils: [Option<ElementId>; COILS],
    /// Contacts closed in a sound machine when each coil is driven.
    pub closed_for_coil: [Vec<ElementId>; COILS],
    /// Lid input.
    pub lid_sense: Option<SenseIds>,
    /// Lever input of its own.
    pub lever_sense: Option<SenseIds>,
    /// Cabinet metal.
    pub cabinet: NodeId,
    /// Plug pins: line, neutral, earth.
    pub plug_pins: [NodeId; 3],
    /// Run capacitor terminals.
    pub run_capacitor: [NodeId; 2],
    /// The run capacitor itself: the largest capacitor at those terminals.
    pub capacitor: ElementId,
    /// Socket: line, neutral, earth.
    pub socket: [NodeId; 3],
}

/// A sense input as indices.
#[derive(Clone, Debug, PartialEq)]
pub struct SenseIds {
    /// Measured node, and against which.
    pub nodes: [NodeId; 2],
    /// Mains-frequency input.
    pub is_ac: bool,
    /// Closed above, V.
    pub closed_above_v: f64,
    /// Open below, V.
    pub open_below_v: f64,
}

struct Lookup<'a>(&'a WiringModel);

impl Lookup<'_> {
    fn element(&self, name: &str) -> Result<ElementId, MachineError> {
        self.0
            .element(name)
            .ok_or_else(|| MachineError::UnknownElement {
                name: name.to_owned(),
            })
    }
    fn node(&self, name: &str) -> Result<NodeId, MachineError> {
        self.0.node(name).ok_or_else(|| MachineError::UnknownNode {
            name: name.to_owned(),
        })
    }
    fn elements(&self, names: &[String]) -> Result<Vec<ElementId>, MachineError> {
        names.iter().map(|name| self.element(name)).collect()
    }
    fn optional(&self, name: Option<&String>) -> Result<Option<ElementId>, MachineError> {
        name.map(|name| self.element(name)).transpose()
    }
    fn nodes(&self, names: &[String; 3]) -> Result<[NodeId; 3], MachineError> {
        let [a, b, c] = names;
        Ok([self.node(a)?, self.node(b)?, self.node(c)?])
    }
    fn largest_capacitor(&self, at: [NodeId; 2]) -> Result<ElementId, MachineError> {
        let farad = |e: &WireElement| match e.kind {
            ElementKind::Capacitor { farad } if e.nodes.iter().any(|n| at.contains(n)) => farad,
            _ => 0.0,
        };
        let largest = self
            .0
            .elements
            .iter()
            .enumerate()
            .filter(|(_, e)| farad(e) > 0.0)
            .max_by(|(_, a), (_, b)| farad(a).total_cmp(&farad(b)));
        largest
            .map(|(index, _)| ElementId(index as u32))
            .ok_or_else(|| MachineError::UnknownElement {
                name: "a capacitor at the run capacitor's lugs".to_owned(),
            })
    }
    fn sense(&self, input: Option<&SenseInput>) -> Result<Option<SenseIds>, MachineError> {
        let Some(input) = input else { return Ok(None) };
        Ok(Some(SenseIds {
            nodes: [self.node(&input.node)?, self.node(&input.against)?],
            is_ac: input.is_ac,
            closed_above_v: input.closed_above_v,
            open_below_v: input.open_below_v,
        }))
    }
}

impl RoleIds {
    /// Looks all roles up.
    ///
    /// # Errors
    /// When the wiring has no element or node of a name.
    pub fn of(model: &MachineModel) -> Result<Self, MachineError> {
        let find = Lookup(&model.wiring);
        let roles = &model.roles;
        let outputs = [
            find.elements(&roles.outputs.motor_forward)?,
            find.elements(&roles.outputs.motor_reverse)?,
            find.elements(&roles.outputs.inlet_valve)?,
            find.elements(&roles.outputs.hot_valve)?,
            find.elements(&roles.outputs.drain_motor)?,
            find.elements(&roles.outputs.drain_pump)?,
        ];
        let coils = [
            Some(find.element(&roles.coils.inlet_valve)?),
            find.optional(roles.coils.hot_valve.as_ref())?,
            Some(find.element(&roles.coils.drain_motor)?),
            find.optional(roles.coils.drain_pump.as_ref())?,
            find.optional(roles.coils.timer_motor.as_ref())?,
        ];
        let level = roles.level_switch.clone().unwrap_or_default();
        let (a, b) = &roles.run_capacitor;
        Ok(Self {
            power_switch: find.optional(roles.power_switch.as_ref())?,
            lid_switch: find.element(&roles.lid_switch)?,
            lever_switch: find.element(&roles.lever_switch)?,
            protector: find.element(&roles.protector)?,
            closed_for_coil: closed_for_coils(&find, model)?,
            outputs,
            timer: find.elements(&roles.outputs.timer)?,
            level_sections: level
                .sections
                .iter()
                .map(|s| {
                    let (empty, full) = (find.elements(&s.empty)?, find.elements(&s.full)?);
                    Ok((s.set_index, empty, full))
                })
                .collect::<Result<_, MachineError>>()?,
            level_knob: level
                .knob
                .iter()
                .map(|(_, closed)| find.elements(closed))
                .collect::<Result<_, MachineError>>()?,
            coils,
            lid_sense: find.sense(roles.lid_sense.as_ref())?,
            lever_sense: find.sense(roles.lever_sense.as_ref())?,
            cabinet: find.node(&roles.cabinet)?,
            plug_pins: find.nodes(&roles.plug_pins)?,
            socket: find.nodes(&roles.socket)?,
            run_capacitor: [find.node(a)?, find.node(b)?],
            capacitor: find.largest_capacitor([find.node(a)?, find.node(b)?])?,
        })
    }
}

/// States of the wiring in which each coil is driven, as the machine's file lists them.
fn closed_for_coils(
    find: &Lookup<'_>,
    model: &MachineModel,
) -> Result<[Vec<ElementId>; COILS], MachineError> {
    let state = |name: &str| {
        model
            .wiring
            .state(name)
            .map(|s| s.closed.clone())
            .ok_or_else(|| MachineError::UnknownState {
                name: name.to_owned(),
            })
    };
    let with = |name: &str, more: &[String]| -> Result<Vec<ElementId>, MachineError> {
        let mut closed = state(name)?;
        closed.extend(find.elements(more)?);
        Ok(closed)
    };
    let outputs = &model.roles.outputs;
    Ok([
        with("filling", &outputs.inlet_valve)?,
        with("filling", &outputs.hot_valve)?,
        with("spinning", &outputs.drain_motor)?,
        with("draining", &outputs.drain_pump)?,
        with("draining", &[])?,
    ])
}
