//! Marks of one job as a picture: a dot a person over a line from 0 to 100.

use crate::say;
use yew::prelude::*;

/// Steps of the line into which marks fall; dots in one step stand upon each other.
const STEPS: usize = 50;
/// Dots that have room upon each other; more of them stand closer.
const ROOM: f64 = 60.0;

/// The picture; the table beside it has the same numbers.
pub fn of(marks: &[f64]) -> Html {
    let x = |share: f64| 10.0 + 580.0 * share;
    let mut heights = vec![0_usize; STEPS + 1];
    let places: Vec<(usize, usize)> = marks
        .iter()
        .map(|marks| {
            let at = step(*marks);
            heights[at] += 1;
            (at, heights[at])
        })
        .collect();
    let most = heights.iter().copied().max().unwrap_or(1).max(1) as f64;
    let apart = (ROOM / most).min(9.0);
    html! {
        <figure class="cohort__map">
            <figcaption>{ say!("Marks of 100, a dot for each person. The numbers are in the table.") }</figcaption>
            <svg viewBox="0 0 600 92" role="img" aria-label={say!("Marks of all people on one line; the same numbers stand in the table")}>
                <path d="M10 74H590" class="cohort__axis" />
                { for (0..=10).map(|tenth| html! { <text x={format!("{:.1}", x(f64::from(tenth) / 10.0))} y="88" text-anchor="middle" class="cohort__ink">{ (10 * tenth).to_string() }</text> }) }
                { for places.iter().map(|(at, height)| html! { <circle cx={format!("{:.1}", x(*at as f64 / STEPS as f64))} cy={format!("{:.1}", 74.0 - apart * (*height as f64 - 0.5))} r="3.5" class="cohort__dot" /> }) }
            </svg>
        </figure>
    }
}

/// Which step marks fall into; what is no number falls into the first.
fn step(marks: f64) -> usize {
    (marks.clamp(0.0, 100.0) / 100.0 * STEPS as f64).round() as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_out_of_range_stay_on_the_line() {
        let steps = [-5.0, 0.0, 51.0, 100.0, 900.0, f64::NAN].map(step);
        assert_eq!(steps, [0, 0, 26, STEPS, STEPS, 0]);
    }
}
