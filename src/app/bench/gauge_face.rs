//! The scale of an instrument that needs no circuit: a dial, a column, two columns, a bubble or a
//! rule, with what it shows in large digits beside it.

use yew::prelude::*;

use crate::bench::gauge::Gauge;
use crate::language::said;
use crate::say;

/// What a scale shows.
#[derive(Properties, PartialEq)]
pub struct GaugeFaceProps {
    /// The instrument.
    pub gauge: Gauge,
    /// Digits or words.
    pub value: AttrValue,
    /// Unit.
    pub unit: AttrValue,
    /// Share of the scale; none before it was read or when it is off the scale.
    pub share: Option<f64>,
}

/// The scale with its digits.
#[component]
pub fn GaugeFace(props: &GaugeFaceProps) -> Html {
    let label = say!(
        "{label}: {value}",
        label = said(props.gauge.about().name),
        value = format!("{} {}", props.value, props.unit),
    );
    html! {
        <div class="gauge" role="img" aria-label={label}>
            <svg class="gauge__scale" viewBox="0 0 96 64" aria-hidden="true">{ scale(props.gauge, props.share) }</svg>
            <span class="gauge__value numbers">{ &props.value }</span>
            <span class="gauge__unit">{ &props.unit }</span>
        </div>
    }
}

fn scale(gauge: Gauge, share: Option<f64>) -> Html {
    match gauge {
        Gauge::UTube => u_tube(share.unwrap_or(0.0)),
        Gauge::JugAndWatch | Gauge::Thermometer => column(share.unwrap_or(0.0)),
        Gauge::SpiritLevel => bubble(share.unwrap_or(0.0)),
        Gauge::Rule | Gauge::SpringBalance => rule(share),
        Gauge::Watch | Gauge::PressureGauge | Gauge::Tachometer | Gauge::BeltGauge => {
            dial(share.unwrap_or(0.0))
        }
    }
}

/// A half circle with a hand, from left to right.
fn dial(share: f64) -> Html {
    let turn_deg = 180.0 * share - 90.0;
    let tick = |i: u32| {
        let turn = format!("rotate({} 48 52)", 18 * i);
        html! { <line class="gauge__line" x1="6" y1="52" x2="12" y2="52" transform={turn} /> }
    };
    html! {
        <>
            { for (0..=10).map(tick) }
            <path class="gauge__line" d="M6 52 A42 42 0 0 1 90 52" fill="none" />
            <line class="gauge__hand" x1="48" y1="52" x2="48" y2="16" transform={format!("rotate({turn_deg:.1} 48 52)")} />
            <circle class="gauge__knob" cx="48" cy="52" r="4" />
        </>
    }
}

/// A glass with a level.
fn column(share: f64) -> Html {
    let height = 48.0 * share;
    html! {
        <>
            <rect class="gauge__fill" x="38" y={format!("{:.1}", 56.0 - height)} width="20" height={format!("{height:.1}")} />
            <path class="gauge__line" d="M38 6 V56 H58 V6" fill="none" />
            { for (0..=4).map(|i| html! { <line class="gauge__line" x1="58" y1={(8 + 12 * i).to_string()} x2="64" y2={(8 + 12 * i).to_string()} /> }) }
        </>
    }
}

/// Two columns that part by the pressure.
fn u_tube(share: f64) -> Html {
    let half = 20.0 * share;
    let (left, right) = (34.0 - half, 34.0 + half);
    html! {
        <>
            <path class="gauge__water" d={format!("M36 {right:.1} V46 A12 10 0 0 0 60 46 V{left:.1}")} fill="none" />
            <path class="gauge__line" d="M32 6 V46 A16 14 0 0 0 64 46 V6 M40 6 V46 A8 6 0 0 0 56 46 V6" fill="none" />
        </>
    }
}

/// A vial with its bubble.
fn bubble(share: f64) -> Html {
    html! {
        <>
            <rect class="gauge__vial" x="8" y="22" width="80" height="20" rx="10" />
            <line class="gauge__line" x1="38" y1="20" x2="38" y2="44" />
            <line class="gauge__line" x1="58" y1="20" x2="58" y2="44" />
            <ellipse class="gauge__bubble" cx={format!("{:.1}", 48.0 + 30.0 * share)} cy="30" rx="9" ry="6" />
        </>
    }
}

/// A rule with a mark.
fn rule(share: Option<f64>) -> Html {
    let tick = |i: i32| {
        let (x, end) = (8 + 4 * i, if i % 5 == 0 { 34 } else { 28 });
        html! { <line class="gauge__line" x1={x.to_string()} y1="20" x2={x.to_string()} y2={end.to_string()} /> }
    };
    html! {
        <>
            <rect class="gauge__vial" x="4" y="20" width="88" height="26" />
            { for (0..=20).map(tick) }
            if let Some(share) = share {
                <path class="gauge__mark" d={format!("M{x:.1} 18 l-4 -8 h8 z", x = 8.0 + 80.0 * share)} />
            }
        </>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    fn props() -> GaugeFaceProps {
        GaugeFaceProps {
            gauge: Gauge::JugAndWatch,
            value: "12.1".into(),
            unit: "L/min".into(),
            share: Some(0.5),
        }
    }

    #[test]
    fn a_scale_says_in_words_what_it_shows() {
        let text = as_text::<GaugeFace>(props);
        assert!(text.contains("jug and watch: 12.1 L/min"), "{text}");
    }
}
