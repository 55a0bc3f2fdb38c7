//! Phone, van, parts, coming to terms: what each act needs, does and costs.

use super::bench::act;
use super::bench::answer;
use super::bench::ask;
use super::bench::broken;
use super::bench::job_with;
use super::bench::last_line;
use super::bench::load;
use super::bench::offer;
use super::bench::open;
use super::bench::phone;
use super::bench::reading;
use super::bench::refused;
use super::bench::sense;
use super::bench::unplug;
use super::bench::visit;
use super::bench::work;
use serde_json::json;
use tubwright::bench::action::Action;
use tubwright::bench::action::MeterMode;
use tubwright::bench::action::PanelKey;
use tubwright::bench::action::Sense;
use tubwright::bench::around::Answer;
use tubwright::bench::event::Event;
use tubwright::bench::visit::OfferKind;
use tubwright::bench::visit::Payer;

#[test]
fn the_phone_takes_no_time_on_site_costs_labour_and_ends_at_the_door() {
    let mut job = visit(json!({"phone": {"phone_since": "Since Sunday."}}));
    let before = job.cost();
    act(&mut job, phone("phone_since"));
    assert!(last_line(&job).contains("Since Sunday."));
    act(&mut job, phone("phone_shown"));
    assert!(last_line(&job).contains("No beep"), "{}", last_line(&job));
    assert_eq!(job.tick(), 0);
    assert!((job.cost() - before - 1.0).abs() < 1e-9, "two half minutes");
    act(&mut job, sense(Sense::Look, "plug"));
    assert!(refused(&job, &phone("phone_stage")).contains("at the customer's"));
    assert!(refused(&job, &load(&[])).contains("at the customer's"));
}

#[test]
fn the_van_has_eight_slots_filled_from_what_the_store_has_today() {
    let mut job = visit(json!({"store": {"motor": {"ready": "tomorrow"}}}));
    assert!(refused(&job, &load(&["motor"])).contains("today"));
    assert!(refused(&job, &load(&["belt"; 9])).contains("eight slots"));
    assert!(refused(&job, &load(&["belt", "belt"])).contains("enough"));
    assert!(refused(&job, &load(&["gearwheel"])).contains("Unknown"));
    act(&mut job, load(&["belt", "run_capacitor:8uf"]));
    unplug(&mut job);
    open(&mut job, &["back_cover"]);
    let refusal = refused(&job, &work("replace_motor"));
    assert!(refusal.contains("NotOnBoard"), "{refusal}");
}

#[test]
fn a_capacitor_of_another_value_fits_and_is_what_it_is() {
    let mut job = visit(json!({}));
    act(&mut job, load(&["run_capacitor:8uf"]));
    act(&mut job, Action::Plug { inserted: false });
    open(&mut job, &["back_cover"]);
    // The windings lie beside it; a wire off, and the meter sees the capacitor alone.
    let connector = "capacitor_terminal_1".to_owned();
    act(&mut job, Action::PullApart { connector });
    let was = reading(&mut job, MeterMode::Capacitance, "C1", "C2");
    let before = job.ledger().material;
    act(&mut job, work("replace_run_capacitor"));
    let is = reading(&mut job, MeterMode::Capacitance, "C1", "C2");
    assert_eq!((was.as_str(), is.as_str()), ("10.0 µF", "8.0 µF"));
    assert!((job.ledger().material - before - 5.0).abs() < 1e-9);
}

#[test]
fn of_two_makes_aboard_the_one_that_is_named_goes_in() {
    for (name, shows) in [
        ("replace_run_capacitor", "10.0 µF"),
        ("replace_run_capacitor:8uf", "8.0 µF"),
    ] {
        let mut job = visit(json!({}));
        act(&mut job, load(&["run_capacitor:8uf", "run_capacitor"]));
        act(&mut job, Action::Plug { inserted: false });
        open(&mut job, &["back_cover"]);
        let connector = "capacitor_terminal_1".to_owned();
        act(&mut job, Action::PullApart { connector });
        let other = refused(&job, &work("replace_run_capacitor:7uf"));
        assert!(other.contains("NotOnBoard"), "{other}");
        act(&mut job, work(name));
        let is = reading(&mut job, MeterMode::Capacitance, "C1", "C2");
        assert_eq!(is, shows, "{name}");
        assert_eq!(job.bench().around.van.len(), 1);
    }
    let job = visit(json!({}));
    assert!(refused(&job, &work("level_feet:8uf")).contains("Unknown"));
}

#[test]
fn a_remark_is_a_line_of_the_notebook_in_ones_own_words() {
    let mut job = visit(json!({}));
    let remark = |text: &str| Action::Remark {
        text: text.to_owned(),
    };
    act(&mut job, remark("  whine as in the wash "));
    assert!(last_line(&job).ends_with("Remark: whine as in the wash"));
    assert!(refused(&job, &remark(" ")).contains("needs words"));
    assert!(refused(&job, &remark(&"x".repeat(301))).contains("300 letters"));
}

#[test]
fn a_capacitor_on_trial_goes_back_in_the_van_and_a_board_is_sold() {
    let mut job = visit(json!({}));
    act(&mut job, load(&["run_capacitor:8uf", "control_board"]));
    act(&mut job, Action::Plug { inserted: false });
    open(&mut job, &["panel_open"]);
    let was = reading(&mut job, MeterMode::Capacitance, "C1", "C2");
    let back = |part: &str| Action::PutOldBack {
        part: part.to_owned(),
    };
    assert!(refused(&job, &back("run_capacitor")).contains("the old one"));
    act(&mut job, work("replace_run_capacitor"));
    act(&mut job, work("replace_control_board"));
    assert!(refused(&job, &back("control_board")).contains("sold"));
    let ticks = act(&mut job, back("run_capacitor")).ticks;
    assert_eq!(ticks, 3000, "as long as fitting it");
    assert_eq!(reading(&mut job, MeterMode::Capacitance, "C1", "C2"), was);
    assert!(
        (job.ledger().material - 110.0).abs() < 1e-9,
        "the board alone"
    );
    assert_eq!(job.bench().around.van, ["run_capacitor:8uf"]);
    assert_eq!(job.ledger().fitted, ["control_board"]);
}

#[test]
fn what_killed_the_old_board_kills_the_new_one() {
    for (chafed, dies) in [(true, true), (false, false)] {
        let mut faults = vec![json!({"id": "clutch_lever_out_of_link", "severity": 1.0})];
        if chafed {
            faults.push(json!({"id": "motor_lead_a_chafed", "severity": 1.0}));
        }
        let mut job = job_with(&json!({"faults": faults, "visit": {}}));
        act(&mut job, load(&["control_board"]));
        act(&mut job, Action::Plug { inserted: false });
        open(&mut job, &["panel_open"]);
        act(&mut job, work("replace_control_board"));
        act(&mut job, Action::Plug { inserted: true });
        for key in [PanelKey::Power, PanelKey::Start] {
            act(&mut job, Action::Key { key });
            job.advance(50);
        }
        job.advance(3600);
        let events = act(&mut job, sense(Sense::Look, "pulsator")).events;
        let burnt = events.iter().any(|e| matches!(e, Event::BurntOut { .. }));
        assert_eq!(burnt, dies, "chafed: {chafed}, {events:?}");
        assert_eq!(job.bench().around.burnt.contains("QA"), dies);
    }
}

#[test]
fn a_part_of_too_low_a_rating_breaks_its_rule_when_it_goes_live() {
    for (item, breaks) in [("run_capacitor:10uf_250v", true), ("run_capacitor", false)] {
        let mut job = visit(json!({}));
        act(&mut job, load(&[item]));
        act(&mut job, Action::Plug { inserted: false });
        open(&mut job, &["back_cover"]);
        act(&mut job, work("replace_run_capacitor"));
        act(&mut job, Action::Plug { inserted: true });
        assert_eq!(
            broken(&job).contains(&"capacitor_underrated"),
            breaks,
            "{item}"
        );
    }
    let mut job = visit(json!({}));
    act(&mut job, load(&["fuse:20a"]));
    act(&mut job, Action::Plug { inserted: false });
    open(&mut job, &["top_cover_up"]);
    act(&mut job, work("replace_fuse"));
    act(&mut job, Action::Plug { inserted: true });
    assert!(broken(&job).contains(&"fuse_oversized"));
}

#[test]
fn a_customer_takes_what_is_within_their_limit_and_else_a_new_machine_or_nothing() {
    let mut job = visit(json!({"person": {"manner": "honest", "limit": 100.0}}));
    act(&mut job, offer(&[(OfferKind::Repair, 90.0)]));
    assert_eq!(answer(&job), Answer::Agreed(OfferKind::Repair));
    let two = [(OfferKind::Repair, 140.0), (OfferKind::OtherPart, 95.0)];
    act(&mut job, offer(&two));
    assert_eq!(answer(&job), Answer::Agreed(OfferKind::OtherPart));
    let dear = [(OfferKind::Repair, 140.0), (OfferKind::NewMachine, 350.0)];
    act(&mut job, offer(&dear));
    assert_eq!(answer(&job), Answer::Agreed(OfferKind::NewMachine));
    assert!(refused(&job, &Action::TakeFee).contains("no estimate was declined"));
    act(&mut job, offer(&[(OfferKind::Repair, 140.0)]));
    assert_eq!(answer(&job), Answer::Declined);
    act(&mut job, Action::TakeFee);
    assert!(last_line(&job).contains("30"), "{}", last_line(&job));
    assert!(refused(&job, &offer(&[])).contains("at least one"));
    assert!(refused(&job, &offer(&[(OfferKind::Repair, f64::NAN)])).contains("no price"));
}

#[test]
fn a_haggler_asks_once_and_a_tenant_cannot_say_yes_alone() {
    let mut job = visit(json!({"person": {"manner": "honest", "haggles_percent": 20.0}}));
    act(&mut job, Action::Quote { price: 100.0 });
    assert_eq!(answer(&job), Answer::AsksLess(80.0));
    act(&mut job, Action::Quote { price: 100.0 });
    assert_eq!(
        answer(&job),
        Answer::Agreed(OfferKind::Repair),
        "the price was held"
    );

    let mut job = visit(json!({"person": {"manner": "honest", "tenant": true}}));
    act(&mut job, Action::Quote { price: 100.0 });
    assert_eq!(answer(&job), Answer::AnotherPays);
    assert_eq!(act(&mut job, Action::AskPayer).ticks, 3000);
    act(&mut job, Action::Quote { price: 100.0 });
    assert_eq!(answer(&job), Answer::Agreed(OfferKind::Repair));
    let owner = visit(json!({}));
    assert!(refused(&owner, &Action::AskPayer).contains("pays"));
}

#[test]
fn honest_vague_and_mistaken_people_answer_each_in_their_way() {
    let said = |manner: &str, question: &str, again: bool| {
        let mut job = visit(json!({"person": {"manner": manner}}));
        act(&mut job, ask(question, false));
        if again {
            act(&mut job, ask(question, true));
        }
        last_line(&job)
    };
    assert!(said("honest", "since", false).contains("Three weeks"));
    assert!(said("vague", "since", false).contains("does not work as it should"));
    assert!(said("vague", "since", true).contains("Three weeks"));
    assert!(said("mistaken", "worked_on", false).contains("Not really"));
    assert!(said("mistaken", "worked_on", true).contains("My cousin"));
}

#[test]
fn the_maker_pays_in_time_with_a_plate_and_without_misuse_and_then_nobody_haggles() {
    let papers = |months: i64, plate: bool, misused: bool| {
        visit(json!({
            "papers": {"bought_months_ago": months, "plate_readable": plate, "misused": misused, "covered_months": 24},
            "person": {"manner": "honest", "limit": 10.0},
        }))
    };
    for (job, pays) in [
        (papers(10, true, false), true),
        (papers(24, true, false), false),
        (papers(10, false, false), false),
        (papers(10, true, true), false),
    ] {
        assert_eq!(job.scenario().visit.papers.maker_pays(), pays);
    }
    let mut job = papers(10, true, false);
    act(&mut job, Action::CheckPapers);
    assert!(last_line(&job).contains("10 months ago"));
    let payer = Payer::Maker;
    act(&mut job, Action::Warranty { payer });
    act(&mut job, Action::Quote { price: 150.0 });
    assert_eq!(answer(&job), Answer::Agreed(OfferKind::Repair));
}
