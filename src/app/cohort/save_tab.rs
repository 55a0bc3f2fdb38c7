//! The tab for saving and printing: files for other programs, and on paper all tables one after the other.

use yew::prelude::*;

use crate::app::format;
use crate::say;

/// What the tab gives out.
#[derive(Properties, PartialEq)]
pub struct SaveProps {
    /// Saves something by its name.
    pub on_save: Callback<&'static str>,
    /// The tables for paper; on the screen the other tabs have them.
    pub children: Html,
}

/// The tab.
#[component]
pub fn SaveTab(props: &SaveProps) -> Html {
    let prints = use_state_eq(|| 0_usize);
    // The tables are drawn only to be printed: those of a large cohort take their time.
    use_effect_with(*prints, |prints| {
        if *prints > 0 {
            // A browser that does not print says so itself.
            drop(gloo::utils::window().print());
        }
    });
    let print = {
        let prints = prints.clone();
        Callback::from(move |_: MouseEvent| prints.set(*prints + 1))
    };
    let key = |what: &'static str, words: &'static str| {
        html! { <button type="button" class="button" onclick={props.on_save.reform(move |_: MouseEvent| what)}>{ words }</button> }
    };
    html! {
        <>
            <p class="row no-print">{ key("people", say!("People, CSV")) }{ key("jobs", say!("Jobs, CSV")) }{ key("safety", say!("Safety, CSV")) }{ key("confused", say!("Faults confused, CSV")) }</p>
            <p class="row no-print">{ key("all", say!("Everything, JSON")) }{ key("rulings", say!("Rulings, to go on with later")) }<button type="button" class="button" onclick={print}>{ say!("Print") }</button></p>
            <p class="field__hint no-print">{ say!("The file of rulings takes them to another browser: drop it there with the results.") }</p>
            if *prints > 0 {
                <div class="only-print">
                    <h2>{ say!("Results, {day}", day = format::date(js_sys::Date::now() / 86_400_000.0)) }</h2>
                    { props.children.clone() }
                </div>
            }
        </>
    }
}
