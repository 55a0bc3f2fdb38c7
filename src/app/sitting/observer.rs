//! The observer's sheet: a page to print for a witnessed practical, since no result of a simulation
//! says anything about hands.

use yew::prelude::*;

use crate::language::said;
use crate::say;
use crate::text;

/// What a witness looks at, by heading. Common practice.
const LOOKED_AT: [(&str, &[&str]); 4] = [
    (
        text!("Making safe"),
        &[
            text!("switches off, unplugs, keeps the plug in sight"),
            text!("shuts the tap and bleeds the hose"),
            text!("waits, discharges, proves the tester before and after"),
            text!("proves dead where the hands will be"),
        ],
    ),
    (
        text!("Hands and tools"),
        &[
            text!("takes covers off without harm to edges, clips and wires"),
            text!("holds and places probes with dry, steady hands"),
            text!("pulls connectors by their body, never by the wire"),
            text!("lifts and lays down with help or a strap"),
        ],
    ),
    (
        text!("Putting back"),
        &[
            text!("seats belt, hoses and lever, and checks each by hand"),
            text!("refits the earth first and leaves no fastener over"),
            text!("earth bond, insulation and leakage measured and written down"),
            text!("runs the machine, looks for leaks, times the brake"),
        ],
    ),
    (
        text!("The customer"),
        &[
            text!("asks, listens, names the price before the work"),
            text!("leaves the place dry and clean, shows what was done"),
        ],
    ),
];

/// The sheet.
#[component]
pub fn ObserverScreen() -> Html {
    // A browser that does not print says so itself.
    let print = Callback::from(|_: MouseEvent| drop(gloo::utils::window().print()));
    let blank =
        |words: &'static str| html! { <div class="sheet__line"><dt>{ words }</dt><dd></dd></div> };
    html! {
        <main class="page page--narrow sheet" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Observer’s sheet") }</h1>
                <p class="page__lead">{ say!("For a practical on a real machine, before a witness. The simulation tells of finding faults, order of work and decisions about safety; this sheet tells of hands.") }</p>
            </header>
            <dl class="sheet__head">{ blank(say!("Candidate’s number")) }{ blank(say!("Machine and fault set")) }{ blank(say!("Place and date")) }{ blank(say!("Observer")) }</dl>
            { for LOOKED_AT.iter().map(|(heading, lines)| html! {
                <section>
                    <h2>{ said(heading) }</h2>
                    <table class="table sheet__table">
                        <thead><tr><th scope="col">{ say!("Seen") }</th><th scope="col">{ say!("yes") }</th><th scope="col">{ say!("with help") }</th><th scope="col">{ say!("no") }</th><th scope="col">{ say!("note") }</th></tr></thead>
                        <tbody>{ for lines.iter().map(|line| html! { <tr><th scope="row">{ said(line) }</th><td></td><td></td><td></td><td></td></tr> }) }</tbody>
                    </table>
                </section>
            }) }
            <p>{ say!("A step that endangers anybody ends the practical: stop, make safe, write it down.") }</p>
            <dl class="sheet__head">{ blank(say!("May work alone: yes, or what comes first")) }{ blank(say!("Signature of the observer")) }{ blank(say!("Signature of the candidate")) }</dl>
            <p class="no-print"><button type="button" class="button button--main" onclick={print}>{ say!("Print") }</button></p>
        </main>
    }
}
