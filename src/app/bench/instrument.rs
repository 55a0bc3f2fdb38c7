//! The instrument in hand: display, modes, where its leads are, what the data sheet says here.
//!
//! It stays where it is while pictures and drawers change.

use yew::prelude::*;

use crate::app::bench::point_picker::PointPicker;
use crate::app::bench::roving;
use crate::app::hooks::focus_first;
use crate::app::view::FaceView;
use crate::app::view::Lead;
use crate::app::view::MeterView;
use crate::app::view::Order;
use crate::bench::action::Action;
use crate::bench::action::MeterMode;
use crate::bench::words::mode_name;
use crate::say;

/// What the instrument shows and tells.
#[derive(Properties, PartialEq)]
pub struct InstrumentProps {
    /// How it is set.
    pub meter: MeterView,
    /// Its display.
    pub face: FaceView,
    /// The job is over: nothing is measured any more.
    #[prop_or_default]
    pub over: bool,
    /// Turns it, moves its leads, notes its reading.
    pub on_order: Callback<Order>,
}

/// The instrument.
#[component]
pub fn Instrument(props: &InstrumentProps) -> Html {
    let meter = &props.meter;
    let clamp = meter.mode.is_clamp();
    let note = props
        .on_order
        .reform(|_: MouseEvent| Order::Do(vec![Action::Note]));
    html! {
        <section class={classes!("instrument", own_class(meter.mode))} aria-label={say!("Instrument in hand")}>
            <h2 class="instrument__name">{ instrument_name(meter.mode) }</h2>
            if let Some(about) = about(meter.mode) { <p class="instrument__about">{ about }</p> }
            <Face face={props.face.clone()} mode={meter.mode} />
            if !props.over {
                { lead(props, Lead::Red) }
                if !clamp { { lead(props, Lead::Black) } }
            }
            if let Some(sheet) = &meter.sheet {
                <p class="instrument__sheet">{ say!("data sheet") }{ " " }<b class="numbers">{ sheet }</b></p>
            }
            if !props.over {
                <button type="button" id="note-it" class="instrument__note button button--main button--wide" onclick={note}>
                    { say!("Note it") }
                </button>
                { modes(props) }
            }
        </section>
    }
}

/// What the display needs.
#[derive(Properties, PartialEq)]
pub struct FaceProps {
    /// The digits.
    pub face: FaceView,
    /// The mode, for its name.
    pub mode: MeterMode,
}

/// The display with its digits.
#[component]
pub fn Face(props: &FaceProps) -> Html {
    let face = &props.face;
    let class = classes!(
        "instrument__display",
        face.settling.then_some("instrument__display--settling"),
        face.overload.then_some("instrument__display--overload")
    );
    let value = format!("{} {}", face.value, face.unit);
    let label = say!("{label}: {value}", label = mode_name(props.mode), value);
    html! {
        <>
            <div {class} role="img" aria-label={label}>
                <span class="instrument__value numbers">{ &face.value }</span>
                <span class="instrument__unit">{ &face.unit }</span>
                <span class="instrument__flag">{ face.flag }</span>
            </div>
            if let Some(warning) = &face.warning { <p class="instrument__warning">{ warning }</p> }
        </>
    }
}

fn modes(props: &InstrumentProps) -> Html {
    let here = MeterMode::ALL
        .iter()
        .position(|m| *m == props.meter.mode)
        .unwrap_or(0);
    // Arrows only lead there: a dial that measured at each step would do so with the leads in place.
    let onkeydown = roving::on_arrows(
        MeterMode::ALL.len(),
        Callback::from(|there: usize| {
            focus_first(&format!(".instrument__mode[data-mode='{there}']"));
        }),
    );
    let key = |index: usize| mode_key(props, index, index == here);
    html! {
        <div role="radiogroup" aria-label={say!("Instrument and mode")} {onkeydown}>
            <div class="instrument__modes" role="presentation">{ for (0..MULTIMETER).map(key) }</div>
            <p class="instrument__heading" aria-hidden="true">{ say!("other tools") }</p>
            <div class="instrument__others" role="presentation">{ for (MULTIMETER..MeterMode::ALL.len()).map(key) }</div>
        </div>
    }
}

/// So many of the modes are those of the multimeter; the others are instruments of their own.
const MULTIMETER: usize = 9;

fn mode_key(props: &InstrumentProps, index: usize, checked: bool) -> Html {
    let mode = MeterMode::ALL[index];
    let onclick = props
        .on_order
        .reform(move |_: MouseEvent| Order::Mode(mode));
    html! {
        <button type="button" class="instrument__mode" role="radio" aria-checked={checked.to_string()}
                tabindex={roving::stop(checked)} data-mode={index.to_string()} title={mode_name(mode)}
                aria-label={mode_name(mode)} {onclick}>{ short(mode) }</button>
    }
}

fn lead(props: &InstrumentProps, lead: Lead) -> Html {
    let at = match lead {
        Lead::Red => props.meter.red.clone(),
        Lead::Black => props.meter.black.clone(),
    };
    html! {
        <PointPicker {lead} jaws={props.meter.mode.is_clamp()} {at} points={props.meter.points.clone()}
            in_hand={props.meter.lead == lead}
            on_put={props.on_order.reform(move |to| Order::Put(lead, to))}
            on_take={props.on_order.reform(move |()| Order::TakeLead(lead))} />
    }
}

/// What a technician calls the instrument with this mode.
fn instrument_name(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::Clamp => say!("Clamp ammeter"),
        MeterMode::Insulation => say!("Insulation tester"),
        MeterMode::EarthBond => say!("Earth bond tester"),
        MeterMode::Leakage => say!("Leakage clamp"),
        MeterMode::TouchCurrent => say!("Touch current tester"),
        _ => say!("Multimeter"),
    }
}

/// The ending of the class of an instrument with a panel of its own.
fn own_class(mode: MeterMode) -> Option<&'static str> {
    Some(match mode {
        MeterMode::Clamp => "instrument--clamp",
        MeterMode::Leakage => "instrument--leakage",
        MeterMode::TouchCurrent => "instrument--touch",
        MeterMode::Insulation => "instrument--insulation",
        MeterMode::EarthBond => "instrument--bond",
        _ => return None,
    })
}

/// What is printed on such an instrument: how it is used, and the limit it is used for.
fn about(mode: MeterMode) -> Option<&'static str> {
    Some(match mode {
        MeterMode::Clamp => say!("one conductor only: round a whole cord it reads nothing"),
        MeterMode::Leakage => say!("line and neutral together on its own lead · limit 3.5 mA"),
        MeterMode::TouchCurrent => say!("metal to earth through 2 kΩ, running · limit 0.5 mA"),
        MeterMode::Insulation => say!("500 V DC · plug out, its switch or knob on · limit 1 MΩ"),
        MeterMode::EarthBond => say!("0.2 A · plug out, earth pin to metal · limit 0.3 Ω"),
        _ => return None,
    })
}

/// The mark on the key.
fn short(mode: MeterMode) -> &'static str {
    match mode {
        MeterMode::AcVolts => "V~",
        MeterMode::LowAcVolts => say!("V~ low"),
        MeterMode::DcVolts => "V=",
        MeterMode::Ohms => "Ω",
        MeterMode::Continuity => say!("tone"),
        MeterMode::Capacitance => "µF",
        MeterMode::Frequency => "Hz",
        MeterMode::Diode => say!("diode"),
        MeterMode::Amps => "A~",
        MeterMode::Clamp => say!("clamp A"),
        MeterMode::Insulation => say!("insulation"),
        MeterMode::EarthBond => say!("earth bond"),
        MeterMode::Leakage => say!("leakage"),
        MeterMode::TouchCurrent => say!("touch mA"),
    }
}
