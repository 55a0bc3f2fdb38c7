//! A machine in section, running: chosen moments of a program, computed as on the bench.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::collections::BTreeSet;
use std::rc::Rc;

use yew::prelude::*;

use crate::app::bench::picture::still;
use crate::app::bench::picture::tag;
use crate::app::frames::Frames;
use crate::drawing;
use crate::drawing::DrawingInput;
use crate::drawing::Features;
use crate::drawing::Probes;
use crate::drawing::View;
use crate::language::said;
use crate::language::worded;
use crate::machine::Machine;
use crate::machine::Setup;
use crate::say;
use crate::scenario::MachinePack;
use crate::text;

/// Longest way to a moment, s of the machine's time.
const PATIENCE_S: u32 = 3600;
/// Most time a frame may make up for, ticks: a page that was away does not catch up.
const MOST_TICKS: u64 = 5;

/// A moment of a program: its name, and whether a machine is in it.
type Moment = (&'static str, fn(&Machine) -> bool);

const MOMENTS: [Moment; 5] = [
    (text!("at rest"), |_| true),
    (text!("filling"), |m| {
        m.valve_energised() && m.plant().level_m() > 0.08
    }),
    (text!("washing"), |m| {
        m.motor_energised() && m.plant().level_m() > 0.15
    }),
    (text!("draining"), |m| {
        m.draining() && m.plant().level_m() < 0.2
    }),
    (text!("spinning"), |m| {
        m.plant().readings().basket_rad_per_s > 60.0
    }),
];

/// Which machine.
#[derive(Properties, PartialEq)]
pub struct LiveMachineProps {
    /// Its short name.
    pub machine: String,
}

/// The picture with its choice of moments.
#[component]
pub fn LiveMachine(props: &LiveMachineProps) -> Html {
    let moment = use_state(|| 0_usize);
    let pack = crate::scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&props.machine));
    let running = use_memo((*moment, props.machine.clone()), |(index, _)| {
        pack.and_then(|pack| at(pack, *index))
            .map(|m| Rc::new(RefCell::new(m)))
    });
    let (Some(pack), Some(machine)) = (pack, (*running).clone()) else {
        return Html::default();
    };
    {
        let (machine, view) = (machine.clone(), View::Section);
        use_effect_with(*moment, move |moment| {
            let frames = (*moment > 0).then(|| run(machine, view, Features::of(&pack.workshop)));
            move || {
                if let Some(frames) = frames {
                    frames.stop();
                }
            }
        });
    }
    let pose = machine.borrow().pose();
    let input = DrawingInput {
        workshop: &pack.workshop,
        features: Features::of(&pack.workshop),
        removed: &BTreeSet::new(),
        apart: &BTreeSet::new(),
        selected: None,
        probes: Probes::default(),
        pose: &pose,
        names: &drawing::plain_name,
    };
    let svg = still(&drawing::draw(View::Section, &input));
    let key = |(index, (name, _)): (usize, &Moment)| {
        let moment = moment.clone();
        html! {
            <button type="button" class="button button--small" aria-pressed={(*moment == index).to_string()}
                    onclick={move |_: MouseEvent| moment.set(index)}>{ said(name) }</button>
        }
    };
    html! {
        <figure class="live-machine">
            <div class="row" role="group" aria-label={say!("Moment of the program")}>{ for MOMENTS.iter().enumerate().map(key) }</div>
            <div key={*moment} role="img" aria-label={say!("{machine} in section, {moment}", machine = worded(&pack.model.name), moment = said(MOMENTS[*moment].0))}>{ Html::from(tag(&svg)) }</div>
        </figure>
    }
}

/// A sound machine that has come to the moment.
fn at(pack: &MachinePack, index: usize) -> Option<Machine> {
    let mut machine = Machine::new(&pack.model, Setup::default()).ok()?;
    if index == 0 {
        return Some(machine);
    }
    machine.stand_ready();
    machine.start_program();
    let (_, is_there) = MOMENTS[index];
    for _ in 0..PATIENCE_S {
        machine.advance(10);
        if is_there(&machine) {
            return Some(machine);
        }
    }
    None
}

/// Lets it run in real time and writes what moved.
fn run(machine: Rc<RefCell<Machine>>, view: View, features: Features) -> Frames {
    let (last_ms, written) = (RefCell::new(None::<f64>), RefCell::new(BTreeMap::new()));
    Frames::start(Callback::from(move |now_ms: f64| {
        let since_ms = last_ms.borrow().map_or(0.0, |last| now_ms - last);
        if since_ms < 100.0 && last_ms.borrow().is_some() {
            return;
        }
        *last_ms.borrow_mut() = Some(now_ms);
        let mut machine = machine.borrow_mut();
        machine.advance(((since_ms / 100.0) as u64).min(MOST_TICKS));
        let document = gloo::utils::document();
        for change in drawing::animate(view, features, &machine.pose()) {
            let slot = (change.id, change.attribute);
            let mut written = written.borrow_mut();
            if written.get(&slot) == Some(&change.value) {
                continue;
            }
            if let Some(element) = document.get_element_by_id(change.id) {
                // A name from the drawing is a valid attribute name.
                let _ = element.set_attribute(change.attribute, &change.value);
                written.insert(slot, change.value);
            }
        }
    }))
}
