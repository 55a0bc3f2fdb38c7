//! The calm card: why something could not be done and what would come first; what happened to
//! people and things, computed, with the rule and its source.

use crate::app::format;
use crate::app::view::NoticeView;
use crate::app::view::Order;
use crate::app::view::VerbView;
use crate::app::view::names::name_of;
use crate::app::view::shown;
use crate::app::view::way;
use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::safety;
use crate::bench::safety::SafetyFinding;
use crate::bench::words;
use crate::bench::working::Outcome;
use crate::language::decimals;
use crate::language::in_english;
use crate::language::said;
use crate::language::worded;
use crate::say;

/// Why hands cannot do it, and one button for what comes first.
pub fn refused(job: &Job, action: &Action, refusal: &Refusal) -> NoticeView {
    let workshop = &job.scenario().workshop;
    let what = match action {
        Action::Meter { .. } => say!("measure").to_owned(),
        _ => words::act(action, workshop),
    };
    match refusal {
        Refusal::InTheWay { steps } => {
            let steps = way::steps(workshop, steps);
            NoticeView {
                title: say!("Something is in the way").to_owned(),
                text: way::in_the_way(&steps).into_iter().collect(),
                verbs: way::clear(&steps, Some(action.clone()), &what)
                    .into_iter()
                    .collect(),
                ..NoticeView::default()
            }
        }
        Refusal::Underneath { steps } => underneath(job, action, steps),
        Refusal::AlreadySo => calm(say!("It is so already"), &what),
        Refusal::Unknown { name } => calm(say!("There is no such thing on this machine"), name),
        Refusal::NotOnBoard { part } => {
            let name = name_of(workshop, part);
            let text = say!(
                "No {part} in the van. A second visit would bring it.",
                part = name,
            );
            calm(say!("Not on board"), &text)
        }
        Refusal::JobOver => calm(
            say!("The job is over"),
            say!("Nothing more is done to the machine."),
        ),
        Refusal::NotNow { why } => NoticeView {
            verbs: first(job, action),
            ..calm(
                say!("Not as things are"),
                &say!(
                    "{what}. {why}.",
                    what = format::sentence(&what),
                    why = format::sentence(&worded(why)),
                ),
            )
        },
    }
}

fn calm(title: &str, text: &str) -> NoticeView {
    NoticeView {
        title: title.to_owned(),
        text: vec![format::sentence(text)],
        ..NoticeView::default()
    }
}

fn underneath(job: &Job, action: &Action, ids: &[String]) -> NoticeView {
    let workshop = &job.scenario().workshop;
    // What came off last goes back first.
    let steps: Vec<_> = way::steps(workshop, ids).into_iter().rev().collect();
    let names = steps.iter().map(|s| worded(&s.name).into_owned());
    let names = format::listed(&names.collect::<Vec<_>>());
    let mut acts: Vec<Action> = steps
        .iter()
        .map(|s| Action::Refit {
            step: s.id.clone(),
            check: true,
        })
        .collect();
    acts.push(action.clone());
    NoticeView {
        title: say!("Something goes back first").to_owned(),
        text: vec![say!("Still off: {names}.", names)],
        verbs: vec![VerbView {
            word: say!("refit and check in order").to_owned(),
            takes: format::seconds(steps.iter().map(|s| s.on_s).sum()),
            hint: String::new(),
            blocked: false,
            order: Order::Do(acts),
        }],
        ..NoticeView::default()
    }
}

/// What would have to be done first, where one act does it.
fn first(job: &Job, then: &Action) -> Vec<VerbView> {
    // The reason is told apart by its English words, whatever the reader's language.
    let Some(Refusal::NotNow { why }) = in_english(|| job.refusal(then)) else {
        return Vec::new();
    };
    if why.contains("splitter lead") {
        return vec![by_splitter(job, then)];
    }
    let before = if why.contains("lid is shut") && !job.machine().lid_open() {
        Action::Lid { open: true }
    } else if why.contains("supply hose") && job.bench().hose_attached {
        Action::SupplyHose { attached: false }
    } else if why.contains("plug is in") && job.machine().plugged() {
        Action::Plug { inserted: false }
    } else {
        return Vec::new();
    };
    let word = words::act(&before, &job.scenario().workshop);
    let order = Order::Do(vec![before, then.clone()]);
    vec![VerbView {
        word: say!("{act} first", act = word),
        takes: String::new(),
        hint: String::new(),
        blocked: false,
        order,
    }]
}

/// The splitter lead goes in with the plug out, and the plug back as it was.
fn by_splitter(job: &Job, then: &Action) -> VerbView {
    let mut acts = vec![Action::Splitter { fitted: true }];
    if job.machine().plugged() {
        acts.insert(0, Action::Plug { inserted: false });
        acts.push(Action::Plug { inserted: true });
    }
    acts.push(then.clone());
    VerbView {
        word: say!("plug in by the splitter lead, then clamp").to_owned(),
        takes: String::new(),
        hint: say!("the machine goes off meanwhile").to_owned(),
        blocked: false,
        order: Order::Do(acts),
    }
}

/// What happened; `None` when nothing did that needs a card.
pub fn happened(events: &[Event], findings: &[SafetyFinding]) -> Option<NoticeView> {
    let mut notice = NoticeView::default();
    for event in events {
        if let Some((title, text, danger)) = words_of(event) {
            if notice.title.is_empty() || (danger && !notice.danger) {
                notice.title = title;
            }
            notice.danger |= danger;
            notice.text.push(text);
        }
    }
    let mut sources = Vec::new();
    for rule in findings
        .iter()
        .filter_map(|finding| safety::rule(finding.rule))
    {
        if notice.title.is_empty() {
            notice.title = said(rule.title).to_owned();
        } else {
            notice.text.push(format::sentence(said(rule.title)));
        }
        notice.text.push(said(rule.why).to_owned());
        notice.text.push(said(rule.right_way).to_owned());
        if !sources.contains(&said(rule.source)) {
            sources.push(said(rule.source));
        }
    }
    if !sources.is_empty() {
        notice.source = Some(sources.join("; "));
    }
    (!notice.title.is_empty()).then_some(notice)
}

/// What a screen reader says after an act: what was done and what it gave.
pub fn done(job: &Job, action: &Action, outcome: &Outcome) -> String {
    let workshop = &job.scenario().workshop;
    let notes = outcome
        .notes
        .iter()
        .filter_map(|n| job.notebook().get(*n as usize - 1));
    let given: Vec<String> = notes.map(|note| words::note(note, workshop)).collect();
    if given.is_empty() {
        say!(
            "Done: {act}, {time}",
            act = words::act(action, workshop),
            time = format::duration(outcome.ticks),
        )
    } else {
        shown::one_after_another(&given)
    }
}

/// Title, sentence, and whether a person or thing came to harm.
pub fn words_of(event: &Event) -> Option<(String, String, bool)> {
    let (title, text) = match event {
        Event::Shock { .. } => (say!("You had a shock"), shock(event)?),
        Event::Discharge {
            from_v,
            energy_j,
            through,
        } => (
            say!("A charge went off"),
            say!(
                "{volts} V, {joules} J, through {what}.",
                volts = format!("{from_v:.0}"),
                joules = decimals(format!("{energy_j:.1}")),
                what = worded(through),
            ),
        ),
        Event::SupplyTripped { opened_by } => (say!("The supply went off"), whole(opened_by)),
        Event::MeterFuse { why } => (say!("The meter's fuse blew"), whole(why)),
        Event::Spill { water_kg, why } => (
            say!("Water on the floor"),
            say!(
                "{litres} litres: {why}.",
                litres = decimals(format!("{water_kg:.1}")),
                why = worded(why),
            ),
        ),
        Event::Caught {
            speed_rad_per_s,
            energy_j,
        } => {
            let speed = crate::units::rpm_from_rad_per_s(*speed_rad_per_s);
            (
                say!("A moving part caught your hand"),
                say!(
                    "It turned at {speed} r/min with {joules} J.",
                    speed = format!("{speed:.0}"),
                    joules = format!("{energy_j:.0}"),
                ),
            )
        }
        Event::Dropped { energy_j, what } => (
            say!("Something fell"),
            say!(
                "{what}; {joules} J.",
                what = format::sentence(&worded(what)),
                joules = format!("{energy_j:.0}"),
            ),
        ),
        Event::Consent { agreed: true } => (
            say!("The customer agrees"),
            say!("What was agreed, and for how much, stands in the notebook.").to_owned(),
        ),
        Event::Consent { agreed: false } => (
            say!("Not agreed"),
            say!("What the customer said stands in the notebook. Name another price, ask whoever pays, or take the fee and leave the machine safe.").to_owned(),
        ),
        Event::Damage { what, price } if *price <= 0.0 => {
            (say!("Something was spoilt"), whole(what))
        }
        Event::Damage { what, price } => (
            say!("Something was spoilt"),
            say!(
                "{what}. That costs {price}.",
                what = format::sentence(&worded(what)),
                price = format::money(*price),
            ),
        ),
        Event::Hurt { what } => (say!("You hurt yourself"), whole(what)),
        Event::BurntOut { what } => (
            say!("The new part has burnt out"),
            say!(
                "The new {part} carried more than it stands: what killed the old one is still there.",
                part = worded(what),
            ),
        ),
        Event::Rule { .. } => return None,
    };
    let is_harm = !matches!(event, Event::Consent { .. });
    Some((title.to_owned(), text, is_harm))
}

/// What happened as a sentence.
fn whole(what: &str) -> String {
    say!("{sentence}.", sentence = format::sentence(&worded(what)))
}

fn shock(event: &Event) -> Option<String> {
    let Event::Shock {
        touch_v,
        body_a,
        duration_s,
        opened_by,
        zone,
    } = event
    else {
        return None;
    };
    let time = if *duration_s < 1.0 {
        decimals(format!("{duration_s:.2}"))
    } else {
        format!("{duration_s:.0}")
    };
    Some(say!(
        "{volts} V across you drove {current} mA through you for {time} s. What opened the circuit: {opened_by}. Effect zone {zone}.",
        volts = format!("{touch_v:.0}"),
        current = format!("{:.0}", body_a * 1000.0),
        time,
        opened_by = worded(opened_by),
        zone,
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_shock_is_told_in_figures_and_without_alarm() {
        let event = Event::Shock {
            touch_v: 230.0,
            body_a: 0.075,
            duration_s: 0.03,
            opened_by: "residual current device".into(),
            zone: "AC-2".into(),
        };
        let said = words_of(&event)
            .map(|(_, text, _)| text)
            .unwrap_or_default();
        assert_eq!(
            said,
            "230 V across you drove 75 mA through you for 0.03 s. What opened the circuit: residual current device. Effect zone AC-2."
        );
    }
}
