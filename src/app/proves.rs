//! What a result shows and what not, and how far it can be relied on: the same words on the
//! candidate's own result and on the instructor's sheet.

use yew::prelude::*;

use crate::assess::decide;
use crate::language::decimals;
use crate::records::check::ENGINE;
use crate::say;

/// Equal marks tell of no spread, of 100.
const LEAST_SE: f64 = 0.05;

/// What is stated of one person's result.
#[derive(Properties, PartialEq)]
pub struct ProvesProps {
    /// Jobs asked for.
    pub n_jobs: usize,
    /// Marks of the jobs that count.
    pub marks: Vec<f64>,
    /// Who computed it and who decides, after the engine's version.
    pub computed: AttrValue,
}

/// The statement.
#[component]
pub fn Proves(props: &ProvesProps) -> Html {
    html! {
        <section aria-labelledby="proves">
            <h2 id="proves">{ say!("What this result shows") }</h2>
            <p>{ say!("Finding faults, the order of work, and decisions about safety. It does not show hands: for that there is the practical before a witness, with the observer’s sheet.") }</p>
            <ul>{ for how_sure(props.n_jobs, &props.marks).into_iter().map(|line| html! { <li>{ line }</li> }) }</ul>
            <p>{ say!("Computed by version {version} of the program, from everything that was done; {computed}", version = ENGINE, computed = props.computed) }</p>
        </section>
    }
}

/// How sure it is, in sentences.
fn how_sure(n_jobs: usize, marks: &[f64]) -> Vec<String> {
    let least = decide::least_reliability(n_jobs);
    let (n, is_enough) = (n_jobs, least >= 0.8);
    let least = decimals(format!("{least:.2}"));
    let length = if is_enough {
        say!(
            "Reliability of {n} jobs: at least {least} of 1, enough for a decision about one person.",
            n,
            least
        )
    } else {
        say!(
            "Reliability of {n} jobs: at least {least} of 1, too little for a decision about one person by itself: take it together with other sittings and the practical.",
            n,
            least
        )
    };
    let spread = match decide::marks_se(marks) {
        Some(se) if se >= LEAST_SE => say!(
            "From job to job the marks lie apart: the mean is sure to about ±{marks}.",
            marks = format!("{:.0}", (2.0 * se).max(1.0))
        ),
        Some(_) => {
            say!("The marks of these jobs are equal: from so few no spread can be told.").to_owned()
        }
        None => say!("One job tells of no spread: how sure its marks are is not known.").to_owned(),
    };
    vec![length, spread]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_marks_and_a_single_job_are_not_called_exact() {
        for marks in [&[70.0, 70.0, 70.0][..], &[70.0], &[]] {
            let lines = how_sure(3, marks).join(" ");
            assert!(!lines.contains('±'), "{lines}");
        }
        let lines = how_sure(3, &[60.0, 70.0, 80.0]).join(" ");
        assert!(lines.contains("±12"), "{lines}");
    }
}
