//! The job card: the customer's words, the facts, what was asked, what can be asked.

use web_sys::Element as DomElement;
use yew::prelude::*;

use crate::app::bench::aloud::Aloud;
use crate::app::bench::selection_bar::verb;
use crate::app::hooks::focus_on;
use crate::app::shared::Shared;
use crate::app::view::AskedView;
use crate::app::view::CardView;
use crate::app::view::Order;
use crate::app::view::QuestionView;
use crate::bench::action::Action;
use crate::say;

/// What the card shows and tells.
#[derive(Properties, PartialEq)]
pub struct JobCardProps {
    /// The card's text.
    pub card: Shared<CardView>,
    /// The job is over: nobody is asked any more.
    #[prop_or_default]
    pub over: bool,
    /// Asks the customer.
    pub on_order: Callback<Order>,
}

/// The job card.
#[component]
pub fn JobCard(props: &JobCardProps) -> Html {
    let card = &props.card;
    let n_asked = card.asked.len();
    let (answers, n_before) = (use_node_ref(), use_mut_ref(move || n_asked));
    {
        let answers = answers.clone();
        use_effect_with(n_asked, move |n_now| {
            if *n_now > n_before.replace(*n_now) {
                show_last(&answers);
            }
        });
    }
    html! {
        <section class="job-card" aria-label={say!("Job card")}>
            <p class="job-card__who">{ &card.who }</p>
            <blockquote class="job-card__quote">{ &card.complaint }</blockquote>
            <Aloud words={card.complaint.clone()} />
            if !card.asked.is_empty() {
                <h2 class="job-card__heading">{ say!("Asked") }</h2>
                <ol ref={answers} class="job-card__asked">{ for card.asked.iter().map(|asked| answer(props, asked)) }</ol>
            }
            if !props.over {
                <details class="job-card__ask" open=true>
                    <summary id="ask">{ say!("Ask the customer") }</summary>
                    <div class="job-card__questions">
                        { for card.questions.iter().map(|question| ask(props, question)) }
                    </div>
                </details>
            }
            if !props.over && !card.outside.is_empty() {
                <details class="job-card__ask">
                    <summary>{ say!("Put right outside the machine") }</summary>
                    <div class="job-card__questions">
                        { for card.outside.iter().map(|v| verb(&props.on_order, v, "button button--small")) }
                    </div>
                </details>
            }
            <h2 class="job-card__heading">{ say!("Machine and place") }</h2>
            <dl class="job-card__facts">
                { for card.facts.iter().map(|(name, text)| html! { <><dt>{ name }</dt><dd>{ text }</dd></> }) }
            </dl>
        </section>
    }
}

/// Scrolls the card to the answer just given, below the tabs that stay: the questions lie below it.
fn show_last(answers: &NodeRef) {
    let list = answers.cast::<DomElement>();
    let Some(answer) = list.and_then(|list| list.last_element_child()) else {
        return;
    };
    let Ok(Some(side)) = answer.closest(".drawer__body") else {
        return;
    };
    let tabs = side.query_selector(".tabs").ok().flatten();
    let covered = tabs.map_or(0.0, |tabs| tabs.get_bounding_client_rect().height());
    let top = |element: &DomElement| element.get_bounding_client_rect().top();
    side.scroll_by_with_x_and_y(0.0, top(&answer) - top(&side) - covered);
}

fn answer(props: &JobCardProps, asked: &AskedView) -> Html {
    let again = Action::Ask {
        question: asked.id.clone(),
        again: true,
    };
    let onclick = props
        .on_order
        .reform(move |_: MouseEvent| Order::Do(vec![again.clone()]));
    html! {
        <li>
            <span class="job-card__question">{ &asked.question }</span>
            <span class="job-card__answer">{ &asked.answer }</span>
            if asked.again && !props.over {
                <button type="button" class="button button--quiet button--small" {onclick}
                        aria-label={say!("Ask again in other words: {question}", question = asked.question)}>
                    { say!("ask again in other words") }
                </button>
            }
        </li>
    }
}

fn ask(props: &JobCardProps, question: &QuestionView) -> Html {
    let act = Action::Ask {
        question: question.id.clone(),
        again: false,
    };
    let on_order = props.on_order.clone();
    // The button goes with its question; the focus stays with the others.
    let onclick = Callback::from(move |_: MouseEvent| {
        focus_on("ask");
        on_order.emit(Order::Do(vec![act.clone()]));
    });
    html! { <button type="button" class="button button--small" {onclick}>{ &question.text }</button> }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn hostile_words_of_a_customer_stay_words() {
        let text = as_text::<JobCard>(|| JobCardProps {
            card: Shared::new(CardView {
                complaint: "<img src=x onerror=alert(1)>".into(),
                ..CardView::default()
            }),
            over: false,
            on_order: Callback::noop(),
        });
        assert!(text.contains("&lt;img"), "{text}");
        assert!(!text.contains("<img"), "{text}");
    }

    #[test]
    fn every_question_is_a_button_until_the_job_is_over() {
        assert!(as_text::<JobCard>(|| question_props(false)).contains(">When?</button>"));
        assert!(!as_text::<JobCard>(|| question_props(true)).contains("When?"));
    }

    fn question_props(over: bool) -> JobCardProps {
        let questions = vec![QuestionView {
            id: "when".into(),
            text: "When?".into(),
        }];
        JobCardProps {
            card: Shared::new(CardView {
                questions,
                ..CardView::default()
            }),
            over,
            on_order: Callback::noop(),
        }
    }
}
