//! A result that came as a QR code: made whole again, shown, and saved as a file.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::app::assessments::given::Given;
use crate::app::hand_over;
use crate::app::phrase::HOLES;
use crate::app::phrase::bdi;
use crate::app::phrase::phrase;
use crate::app::sitting;
use crate::records::record::Record;
use crate::records::seal::AssessmentKey;
use crate::records::sift::Against;
use crate::records::sift::Sifted;
use crate::records::slip;
use crate::say;

/// Its letters.
#[derive(Properties, PartialEq)]
pub struct ReceivedProps {
    /// From the address.
    pub letters: AttrValue,
}

/// What came of it.
#[derive(Clone, PartialEq)]
enum Came {
    Looking,
    Whole(Box<Record>, Box<Sifted>),
    Not(String),
}

/// The screen.
#[component]
pub fn ReceivedScreen(props: &ReceivedProps) -> Html {
    let came = use_state(|| Came::Looking);
    let told = use_state_eq(|| "");
    {
        let came = came.clone();
        use_effect_with(props.letters.clone(), move |letters| {
            let letters = letters.clone();
            spawn_local(async move { came.set(read(&letters).await) });
        });
    }
    let body = match &*came {
        Came::Looking => html! { <p role="status">{ say!("Running it again …") }</p> },
        Came::Not(why) => html! { <p role="alert">{ why }</p> },
        Came::Whole(record, sifted) => {
            let name = format!("{}_{}.json", record.link, sifted.place);
            let text = record.write().unwrap_or_default();
            let say = told.clone();
            let save = Callback::from(move |_: MouseEvent| {
                say.set(match hand_over::save(&name, "application/json", &text) {
                    Ok(()) => say!("Saved."),
                    Err(_) => say!("The browser did not let the page save a file."),
                });
            });
            let came_out = match sifted.why() {
                Some(why) => say!("Not accepted: {why}", why),
                None => say!("It is as it was made: run again, everything came out the same.")
                    .to_owned(),
            };
            html! {
                <>
                    <p>{ marks(record, sifted) }</p>
                    <p>{ came_out }</p>
                    <p class="row"><button type="button" class="button button--main" onclick={save}>{ say!("Save the file") }</button><span role="status">{ *told }</span></p>
                </>
            }
        }
    };
    html! {
        <main class="page page--narrow stack" id="main" tabindex="-1">
            <h1>{ say!("A result, from a code") }</h1>
            { body }
        </main>
    }
}

fn marks(record: &Record, sifted: &Sifted) -> Html {
    let sentence = say!(
        "{candidate}, job {n} of {assessment}: {marks} of 100 marks.",
        candidate = HOLES[0],
        n = sifted.place,
        assessment = sifted.assessment,
        marks = format!("{:.0}", record.body.counted().total)
    );
    phrase(&sentence, &[bdi(&record.body.candidate)])
}

async fn read(letters: &str) -> Came {
    let not = |why: &str| Came::Not(why.to_owned());
    let Some(short) = slip::read(letters) else {
        return not(say!(
            "The letters were cut or changed on the way: read the code again."
        ));
    };
    let Ok(library) = sitting::library() else {
        return not(say!("The jobs of this page cannot be read."));
    };
    let kept = Given::all().await;
    let read = |given: &Given| {
        let assessment = sitting::assessment("assessment", &given.text()).ok()?;
        Some((assessment, Some(AssessmentKey::new(given.key.0))))
    };
    let against = Against {
        library: &library,
        assessments: kept.iter().filter_map(read).collect(),
        replays: true,
    };
    let (task, _, _) = match against.task(&short) {
        Ok(found) => found,
        Err(why) => return Came::Not(say!("This browser cannot make it whole: {why}.", why)),
    };
    match slip::whole(short, &task) {
        Some(record) => {
            let sifted = against.record(record.clone());
            Came::Whole(Box::new(record), Box::new(sifted))
        }
        None => not(say!(
            "Run again, it does not come out as it says: it was changed, or made by another version."
        )),
    }
}
