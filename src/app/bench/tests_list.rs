//! The tests after a repair, in their order: what is done, its value, its limit.

use yew::prelude::*;

use crate::app::bench::selection_bar::verb;
use crate::app::view::MeterView;
use crate::app::view::Order;
use crate::app::view::TestView;
use crate::bench::action::Action;
use crate::say;

/// What the list shows and tells.
#[derive(Properties, PartialEq)]
pub struct TestsListProps {
    /// The tests.
    pub tests: Vec<TestView>,
    /// The instrument, whose leads may be where a test needs them.
    pub meter: MeterView,
    /// The job is over.
    pub over: bool,
    /// Puts the leads where a test needs them.
    pub on_order: Callback<Order>,
}

/// The list.
#[component]
pub fn TestsList(props: &TestsListProps) -> Html {
    html! {
        <section class="tests" aria-label={say!("Tests after the repair")}>
            <p class="tests__about">{ say!("In this order, after the last change to the machine. A later change makes them open again.") }</p>
            <ol class="tests__list">{ for props.tests.iter().map(|test| line(props, test)) }</ol>
        </section>
    }
}

fn line(props: &TestsListProps, test: &TestView) -> Html {
    let (mark, said) = match test.passed {
        None => ("○", say!("not done")),
        Some(true) => ("✓", say!("within the limit")),
        Some(false) => ("!", say!("outside the limit")),
    };
    let class = classes!(
        "tests__line",
        (test.passed == Some(true)).then_some("tests__line--passed"),
        (test.passed == Some(false)).then_some("tests__line--failed")
    );
    html! {
        <li {class}>
            <span class="tests__mark" role="img" aria-label={said}>{ mark }</span>
            <b class="tests__what">{ test.what }</b>
            <span class="tests__value numbers">{ test.value.as_deref().unwrap_or("–") }</span>
            <span class="tests__how">{ test.how }</span>
            <span class="tests__limit">{ format!("{}; {}", test.limit, test.source) }</span>
            if let Some(measure) = test.measure.as_ref().filter(|_| !props.over) {
                { verb(&props.on_order, measure, "button button--small") }
                if test.value.is_none() && is_there(&props.meter, &measure.order) { { note(props) } }
            }
        </li>
    }
}

/// The leads are where this puts them.
fn is_there(meter: &MeterView, order: &Order) -> bool {
    matches!(order, Order::Measure(mode, red, black)
        if meter.mode == *mode && meter.red.as_ref() == Some(red) && meter.black == *black)
}

/// What comes next once the leads are there.
fn note(props: &TestsListProps) -> Html {
    let onclick = props
        .on_order
        .reform(|_: MouseEvent| Order::Do(vec![Action::Note]));
    html! {
        <p class="tests__there" role="status">{ say!("Leads are there: note it.") }{ " " }
            <button type="button" class="button button--main button--small" {onclick}>{ say!("Note it") }</button></p>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;
    use crate::app::shared::Shared;
    use crate::app::view::Lead;
    use crate::bench::action::MeterMode;

    #[test]
    fn a_test_stands_with_its_value_its_limit_and_the_limits_source() {
        let text = as_text::<TestsList>(|| TestsListProps {
            tests: vec![TestView {
                what: "insulation",
                how: "plug out",
                limit: "1 MΩ at least",
                source: "EN 50678 (from memory)",
                value: Some("0.4 MΩ".into()),
                passed: Some(false),
                measure: None,
            }],
            meter: MeterView {
                mode: MeterMode::Insulation,
                red: None,
                black: None,
                lead: Lead::Red,
                points: Shared::new(Vec::new()),
                probing: false,
                sheet: None,
            },
            over: false,
            on_order: Callback::noop(),
        });
        for words in ["0.4 MΩ", "1 MΩ at least; EN 50678", "outside the limit"] {
            assert!(text.contains(words), "{text}");
        }
    }
}
