//! Finding a job in a long list: words, machine, level, skill, and the part to practise.

use web_sys::HtmlInputElement;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::job_tile::JobTile;
use crate::say;

/// The id of the field for words.
pub const FIND: &str = "jobs-find";

/// What is looked for; empty fields ask for nothing.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct JobFilter {
    /// Words that all occur in the card.
    pub text: String,
    /// Machine.
    pub machine: String,
    /// Level, 1 to 5, as text.
    pub level: String,
    /// Skill.
    pub skill: String,
    /// Part.
    pub part: String,
}

impl JobFilter {
    /// The card is one of those looked for.
    pub fn keeps(&self, tile: &JobTile) -> bool {
        let is = |wanted: &String, value: &str| wanted.is_empty() || wanted == value;
        is(&self.machine, &tile.machine)
            && is(&self.level, &tile.level.to_string())
            && (self.skill.is_empty() || tile.skills.contains(&self.skill))
            && (self.part.is_empty() || tile.parts.contains(&self.part))
            && self.has_words(tile)
    }

    fn has_words(&self, tile: &JobTile) -> bool {
        let card = [&tile.title, &tile.quote, &tile.who, &tile.machine];
        let card: Vec<String> = card.into_iter().chain(&tile.skills).cloned().collect();
        let card = card.join(" ").to_lowercase();
        self.text
            .to_lowercase()
            .split_whitespace()
            .all(|word| card.contains(word))
    }
}

/// What the bar needs.
#[derive(Properties, PartialEq)]
pub struct FilterBarProps {
    /// All cards, for the choices.
    pub tiles: Vec<JobTile>,
    /// What is looked for now.
    pub filter: JobFilter,
    /// How many cards are shown.
    pub n_shown: usize,
    /// Look for something else.
    pub on_change: Callback<JobFilter>,
}

/// The bar.
#[component]
pub fn FilterBar(props: &FilterBarProps) -> Html {
    let choose = |name: &'static str,
                  choices: Vec<String>,
                  chosen: &String,
                  set: fn(&mut JobFilter, String)| {
        let (filter, on_change) = (props.filter.clone(), props.on_change.clone());
        let onchange = Callback::from(move |event: Event| {
            let mut filter = filter.clone();
            set(
                &mut filter,
                event.target_unchecked_into::<HtmlSelectElement>().value(),
            );
            on_change.emit(filter);
        });
        select(name, choices, chosen, onchange)
    };
    let oninput = {
        let (filter, on_change) = (props.filter.clone(), props.on_change.clone());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            on_change.emit(JobFilter {
                text,
                ..filter.clone()
            });
        })
    };
    let filter = &props.filter;
    let of = |list: fn(&JobTile) -> Vec<String>| sorted(&props.tiles, list);
    html! {
        <section class="jobs__filters" aria-label={say!("Find a job")}>
            <label class="field">
                <span class="field__label">{ say!("Find") }</span>
                <input id={FIND} type="search" value={filter.text.clone()} {oninput} />
            </label>
            { choose(say!("Machine"), of(|t| vec![t.machine.clone()]), &filter.machine, |f, v| f.machine = v) }
            { choose(say!("Level"), of(|t| vec![t.level.to_string()]), &filter.level, |f, v| f.level = v) }
            { choose(say!("Skill"), of(|t| t.skills.clone()), &filter.skill, |f, v| f.skill = v) }
            { choose(say!("Part to practise (tells where to look)"), of(|t| t.parts.clone()), &filter.part, |f, v| f.part = v) }
            <p class="jobs__count" role="status">{ say!("{shown} of {n} jobs", shown = props.n_shown, n = props.tiles.len()) }</p>
        </section>
    }
}

fn sorted(tiles: &[JobTile], list: fn(&JobTile) -> Vec<String>) -> Vec<String> {
    let mut all: Vec<String> = tiles.iter().flat_map(list).collect();
    all.sort();
    all.dedup();
    all
}

fn select(
    name: &'static str,
    choices: Vec<String>,
    chosen: &str,
    onchange: Callback<Event>,
) -> Html {
    let option = |choice: String| {
        let selected = choice == chosen;
        html! { <option value={choice.clone()} {selected}>{ choice }</option> }
    };
    html! {
        <label class="field">
            <span class="field__label">{ name }</span>
            <select {onchange}>
                <option value="" selected={chosen.is_empty()}>{ say!("all") }</option>
                { for choices.into_iter().map(option) }
            </select>
        </label>
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;

    fn tile() -> JobTile {
        JobTile {
            title: "It hums and stands".into(),
            quote: "It makes a deep hum".into(),
            who: "Ms Petrov".into(),
            machine: "P".into(),
            level: 2,
            skills: vec!["turn by hand".into()],
            parts: vec!["run capacitor".into()],
            ..JobTile::default()
        }
    }

    #[test]
    fn every_word_must_occur_somewhere_on_the_card() {
        let finds = |text: &str| {
            let text = text.to_owned();
            JobFilter {
                text,
                ..JobFilter::default()
            }
            .keeps(&tile())
        };
        assert!(finds("") && finds("HUM petrov") && finds("turn"));
        assert!(!finds("hum kowalska"));
        assert!(!finds("capacitor"), "words do not tell the part");
    }

    #[test]
    fn each_choice_narrows_the_list() {
        let with = |set: fn(&mut JobFilter)| {
            let mut filter = JobFilter::default();
            set(&mut filter);
            filter.keeps(&tile())
        };
        assert!(with(|f| f.machine = "P".into()) && !with(|f| f.machine = "N".into()));
        assert!(with(|f| f.level = "2".into()) && !with(|f| f.level = "3".into()));
        assert!(with(|f| f.skill = "turn by hand".into()) && !with(|f| f.skill = "belt".into()));
        assert!(with(|f| f.part = "run capacitor".into()) && !with(|f| f.part = "belt".into()));
    }
}
