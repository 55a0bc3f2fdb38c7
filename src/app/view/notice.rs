//! The calm card: why something could not be done and what would come first; what happened to
//! people and things, computed, with the rule and its source.

use crate::app::format;
use crate::app::view::NoticeView;
use crate::app::view::Order;
use crate::app::view::VerbView;
use crate::app::view::names::name_of;
use crate::app::view::way;
use crate::bench::action::Action;
use crate::bench::event::Event;
use crate::bench::event::Refusal;
use crate::bench::job::Job;
use crate::bench::job::Outcome;
use crate::bench::rules::SafetyFinding;
use crate::bench::safety;
use crate::bench::words;

/// Why hands cannot do it, and one button for what comes first.
pub fn refused(job: &Job, action: &Action, refusal: &Refusal) -> NoticeView {
    let workshop = &job.scenario().workshop;
    let what = match action {
        Action::Meter { .. } => "measure".to_owned(),
        _ => words::act(action, workshop),
    };
    match refusal {
        Refusal::InTheWay { steps } => {
            let steps = way::steps(workshop, steps);
            NoticeView {
                title: "Something is in the way".to_owned(),
                text: way::in_the_way(&steps).into_iter().collect(),
                verbs: way::clear(&steps, Some(action.clone()), &what)
                    .into_iter()
                    .collect(),
                ..NoticeView::default()
            }
        }
        Refusal::Underneath { steps } => underneath(job, action, steps),
        Refusal::AlreadySo => calm("It is so already", &what),
        Refusal::Unknown { name } => calm("There is no such thing on this machine", name),
        Refusal::NotOnBoard { part } => {
            let name = name_of(workshop, part);
            let text = format!("No {name} in the van. A second visit would bring it.");
            calm("Not on board", &text)
        }
        Refusal::JobOver => calm("The job is over", "Nothing more is done to the machine."),
        Refusal::NotNow { why } => NoticeView {
            verbs: first(job, why, action),
            ..calm(
                "Not as things are",
                &format!("{}. {}.", format::sentence(&what), format::sentence(why)),
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
    let names: Vec<String> = steps.iter().map(|s| s.name.clone()).collect();
    let mut acts: Vec<Action> = steps
        .iter()
        .map(|s| Action::Refit {
            step: s.id.clone(),
            check: true,
        })
        .collect();
    acts.push(action.clone());
    NoticeView {
        title: "Something goes back first".to_owned(),
        text: vec![format!("Still off: {}.", format::listed(&names))],
        verbs: vec![VerbView {
            word: "refit and check in order".to_owned(),
            takes: format::seconds(steps.iter().map(|s| s.on_s).sum()),
            hint: String::new(),
            blocked: false,
            order: Order::Do(acts),
        }],
        ..NoticeView::default()
    }
}

/// What would have to be done first, where one act does it.
fn first(job: &Job, why: &str, then: &Action) -> Vec<VerbView> {
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
        word: format!("{word} first"),
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
        word: "plug in by the splitter lead, then clamp".to_owned(),
        takes: String::new(),
        hint: "the machine goes off meanwhile".to_owned(),
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
            notice.title = rule.title.to_owned();
        } else {
            notice.text.push(format::sentence(rule.title));
        }
        notice.text.push(rule.why.to_owned());
        notice.text.push(rule.right_way.to_owned());
        if !sources.contains(&rule.source) {
            sources.push(rule.source);
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
        format!(
            "Done: {}, {}",
            words::act(action, workshop),
            format::duration(outcome.ticks)
        )
    } else {
        given.join(". ")
    }
}

/// Title, sentence, and whether a person or thing came to harm.
pub fn words_of(event: &Event) -> Option<(String, String, bool)> {
    let (title, text, danger) = match event {
        Event::Shock { touch_v, body_a, duration_s, opened_by, zone } => (
            "You had a shock",
            format!(
                "{:.0} V across you drove {} through you for {} until {opened_by}. Effect zone {zone}.",
                touch_v,
                milliamperes(*body_a),
                short_time(*duration_s)
            ),
            true,
        ),
        Event::Discharge { from_v, energy_j, through } => (
            "A charge went off",
            format!("{from_v:.0} V, {energy_j:.1} J, through {through}."),
            true,
        ),
        Event::SupplyTripped { opened_by } => ("The supply went off", format!("{}.", format::sentence(opened_by)), true),
        Event::MeterFuse { why } => ("The meter's fuse blew", format!("{}.", format::sentence(why)), true),
        Event::Spill { water_kg, why } => {
            ("Water on the floor", format!("{water_kg:.1} litres: {why}."), true)
        }
        Event::Caught { speed_rad_per_s, energy_j } => (
            "A moving part caught your hand",
            format!(
                "It turned at {:.0} r/min with {energy_j:.0} J.",
                crate::units::rpm_from_rad_per_s(*speed_rad_per_s)
            ),
            true,
        ),
        Event::Dropped { energy_j, what } => (
            "Something fell",
            format!("{}; {energy_j:.0} J.", format::sentence(what)),
            true,
        ),
        Event::Consent { agreed: true } => {
            ("The customer agrees", "What was agreed, and for how much, stands in the notebook.".to_owned(), false)
        }
        Event::Consent { agreed: false } => (
            "Not agreed",
            "What the customer said stands in the notebook. Name another price, ask whoever pays, or take the fee and leave the machine safe.".to_owned(),
            false,
        ),
        Event::Damage { what, price } if *price <= 0.0 => {
            ("Something was spoilt", format!("{}.", format::sentence(what)), true)
        }
        Event::Damage { what, price } => (
            "Something was spoilt",
            format!("{}. That costs {}.", format::sentence(what), format::money(*price)),
            true,
        ),
        Event::Hurt { what } => ("You hurt yourself", format!("{}.", format::sentence(what)), true),
        Event::BurntOut { what } => (
            "The new part has burnt out",
            format!("The new {what} carried more than it stands: what killed the old one is still there."),
            true,
        ),
        Event::Rule { .. } => return None,
    };
    Some((title.to_owned(), text, danger))
}

fn milliamperes(current_a: f64) -> String {
    format!("{:.0} mA", current_a * 1000.0)
}

fn short_time(time_s: f64) -> String {
    if time_s < 1.0 {
        format!("{time_s:.2} s")
    } else {
        format!("{time_s:.0} s")
    }
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
            opened_by: "the residual current device opened".into(),
            zone: "AC-2".into(),
        };
        let said = words_of(&event)
            .map(|(_, text, _)| text)
            .unwrap_or_default();
        assert_eq!(
            said,
            "230 V across you drove 75 mA through you for 0.03 s until the residual current device opened. Effect zone AC-2."
        );
    }
}
