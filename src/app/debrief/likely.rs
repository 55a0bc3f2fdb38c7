//! What the notes pointed at, step by step: a row a cause, a bar a step, as high as it was likely.

use yew::prelude::*;

use crate::app::view::likely::LikelyRow;
use crate::say;

/// Width of a row of bars in picture units.
const WIDTH: f64 = 1000.0;
/// Height of a row.
const HEIGHT: f64 = 24.0;
/// Steps with a number at most: more would run into each other.
const MOST_NUMBERED: usize = 16;

/// What the chart shows and tells.
#[derive(Properties, PartialEq)]
pub struct LikelyProps {
    /// Causes, the likeliest at the end first.
    pub rows: Vec<LikelyRow>,
    /// Place of the step shown, from 0.
    pub shown: usize,
}

/// The chart, with a table behind it.
#[component]
pub fn Likely(props: &LikelyProps) -> Html {
    html! {
        <section class="likely" aria-labelledby="likely">
            <h2 id="likely">{ say!("What your notes pointed at") }</h2>
            <div class="likely__chart" aria-hidden="true">
                { steps(props.rows.first().map_or(0, |row| row.shares.len())) }
                { for props.rows.iter().map(|row| bars(row, props.shown)) }
            </div>
            if !props.rows.iter().any(|row| row.is_true) {
                <p class="field__hint">{ say!("What was wrong is not among these: your notes never made it one of the likeliest.") }</p>
            }
            <details>
                <summary>{ say!("As a table") }</summary>
                { table(&props.rows) }
            </details>
        </section>
    }
}

/// Numbers of the steps over their bars, and of the last over what stands at the end of each row.
fn steps(n: usize) -> Html {
    let every = n.div_ceil(MOST_NUMBERED).max(1);
    let number = |step: usize| html! { <span>{ if (step - 1).is_multiple_of(every) { step.to_string() } else { String::new() } }</span> };
    html! {
        <div class="likely__row">
            <span>{ say!("After step") }</span>
            <span class="likely__steps numbers">{ for (1..=n).map(number) }</span>
            <span class="likely__now numbers">{ n }</span>
        </div>
    }
}

fn bars(row: &LikelyRow, shown: usize) -> Html {
    let step = WIDTH / row.shares.len().max(1) as f64;
    let last = row.shares.last().copied().unwrap_or_default();
    let bar = |(index, share): (usize, &f64)| {
        let share = share.clamp(0.0, 1.0);
        let class = classes!(
            "likely__bar",
            (index == shown).then_some("likely__bar--shown")
        );
        html! {
            <rect {class} x={format!("{:.1}", step * index as f64)} width={format!("{:.1}", (step * 0.85).max(1.0))}
                y={format!("{:.1}", HEIGHT * (1.0 - share))} height={format!("{:.1}", HEIGHT * share)} />
        }
    };
    html! {
        <div class={classes!("likely__row", row.is_true.then_some("likely__row--true"))}>
            <span class="likely__name">{ &row.name }</span>
            <svg class="likely__bars" viewBox={format!("0 0 {WIDTH} {HEIGHT}")} preserveAspectRatio="none">
                { for row.shares.iter().enumerate().map(bar) }
            </svg>
            <span class="likely__now numbers">{ percent(last) }</span>
        </div>
    }
}

fn table(rows: &[LikelyRow]) -> Html {
    let steps = rows
        .iter()
        .map(|row| row.shares.len())
        .max()
        .unwrap_or_default();
    html! {
        <div class="table__wrap" tabindex="0" role="region" aria-label={say!("Likely causes after each step")}>
            <table class="table numbers">
                <thead><tr>
                    <th scope="col">{ say!("After step") }</th>
                    { for rows.iter().map(|row| html! { <th scope="col">{ &row.name }</th> }) }
                </tr></thead>
                <tbody>{ for (0..steps).map(|step| html! {
                    <tr>
                        <th scope="row">{ step + 1 }</th>
                        { for rows.iter().map(|row| html! { <td>{ row.shares.get(step).map(|share| percent(*share)) }</td> }) }
                    </tr>
                }) }</tbody>
            </table>
        </div>
    }
}

/// Such as `97 %`; what is not nothing never reads as nothing.
pub fn percent(share: f64) -> String {
    match share * 100.0 {
        p if p > 0.0 && p < 1.0 => say!("under 1 %").to_owned(),
        p if p > 99.0 && p < 100.0 => say!("over 99 %").to_owned(),
        p => format!("{p:.0} %"),
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    fn props(is_true: bool) -> LikelyProps {
        LikelyProps {
            rows: vec![LikelyRow {
                name: "The belt is worn".to_owned(),
                shares: vec![0.25, 0.5, 0.75],
                is_true,
            }],
            shown: 0,
        }
    }

    #[test]
    fn the_last_value_stands_at_the_end_and_a_cause_that_is_not_there_is_told() {
        let text = as_text::<Likely>(|| props(true));
        let numbered = "<span>1</span><span>2</span><span>3</span>";
        assert!(text.contains(numbered), "{text}");
        assert!(text.contains("numbers\">75 %"), "{text}");
        assert!(!text.contains("not among these"), "{text}");
        assert!(as_text::<Likely>(|| props(false)).contains("not among these"));
    }

    #[test]
    fn a_small_chance_never_reads_as_none_nor_a_great_one_as_certain() {
        assert_eq!(percent(0.004), "under 1 %");
        assert_eq!(percent(0.9999), "over 99 %");
        assert_eq!(percent(0.0), "0 %");
        assert_eq!(percent(1.0), "100 %");
        assert_eq!(percent(0.425), "42 %");
    }
}
