//! Everything that goes back with something: pieces counted, sealants with their time, and every
//! mistake of an unchecked refit or repair felt by the machine at its next run.

use tubwright::bench::action::Action;
use tubwright::bench::action::PanelKey;
use tubwright::bench::event::Event;
use tubwright::bench::job::Job;
use tubwright::bench::notebook::NoteEntry;
use tubwright::bench::workshop::Effect;
use tubwright::machine::Probe;
use tubwright::plant::harness::Instrument;

use crate::felt::Felt;
use crate::felt::felt;
use crate::scene::do_all;
use crate::scene::does;
use crate::scene::job;
use crate::scene::job_of;
use crate::scene::key;
use crate::scene::make_safe;
use crate::scene::off;
use crate::scene::scenario;

fn refit(step: &str, check: bool) -> Action {
    Action::Refit {
        step: step.to_owned(),
        check,
    }
}

fn work(work: &str, check: bool) -> Action {
    Action::Work {
        work: work.to_owned(),
        check,
    }
}

#[test]
fn each_mistake_of_a_refit_or_repair_is_felt_at_the_next_run() {
    let mut unfelt = Vec::new();
    for id in ["P", "T", "N"] {
        let workshop = scenario(id, &[]).workshop.clone();
        // The usual level and the next two, evenly loaded and not.
        let runs = [(0, 0.3), (1, 0.3), (2, 0.3), (0, 0.6)];
        let sound = runs.map(|run| (run, felt(id, &[], run)));
        let is_felt = |effects: &[Effect]| {
            let differs = |(run, good): &((u32, f64), Felt)| felt(id, effects, *run) != *good;
            sound.iter().any(differs)
        };
        let of_steps = workshop.steps.iter().map(|s| (&s.id, &s.mistakes));
        let of_works = workshop.works.iter().map(|w| (&w.id, &w.mistakes));
        for (name, mistakes) in of_steps.chain(of_works) {
            for mistake in mistakes {
                assert!(!mistake.effects.is_empty(), "{id} {name}: {}", mistake.what);
                if !is_felt(&mistake.effects) {
                    unfelt.push(format!("{id} {name}: {}", mistake.what));
                }
            }
        }
        for sealant in workshop.works.iter().filter_map(|w| w.sealant.as_ref()) {
            if !is_felt(&sealant.effects) {
                unfelt.push(format!("{id}: {:?}", sealant.effects));
            }
        }
    }
    assert!(unfelt.is_empty(), "{unfelt:#?}");
}

#[test]
fn what_the_trade_checks_at_a_refit_can_be_left_wrong_and_is_checked() {
    // Common practice: belt, lever, joints, air hose, earth links, leads, catches.
    let asked = [
        ("belt_off", "belt.tension_n", "mm"),
        ("lever_unhook", "lever.seated_ratio", "link"),
        ("joint_drain", "drain.joint_leak_ratio", "sealed"),
        ("top_cover_up", "trap.lag_s", "pinched"),
        ("back_cover", "RE1", "earth wire"),
        ("plate_off", "RIMB", "leads tied clear"),
        ("tub_cover", "tub.overflow_m", "seated"),
        ("pull_out", "drain.l", "kink"),
        ("lay_down", "site.floor_tilt_rad", "level"),
        ("basket_out", "basket.loose_kg_m", "crosswise"),
        ("pulsator_off", "pulsator.play_rad", "tight"),
    ];
    for machine in ["P", "T", "N"] {
        let workshop = scenario(machine, &[]).workshop.clone();
        for (id, target, checked) in asked {
            let step = workshop.step(id).expect(id);
            assert!(step.refit_check.contains(checked), "{machine} {id}");
            let names = |effect: &Effect| match effect {
                Effect::ElementOpen(name)
                | Effect::ElementValue(name, _)
                | Effect::Param(name, _) => name.starts_with(target),
            };
            let found = step.mistakes.iter().flat_map(|m| &m.effects).any(names);
            assert!(found, "{machine} {id}: {target}");
        }
        // The motor's earth goes with the motor; panels have their catches and plugs.
        let motor = workshop.work("replace_motor").expect("is");
        assert!(motor.check.contains("earth wire"));
        let panel = workshop.step("panel_open").expect("is");
        assert!(!panel.mistakes.is_empty());
    }
}

#[test]
fn pieces_are_counted_out_and_in() {
    let mut job = job("P", &[]);
    make_safe(&mut job);
    do_all(
        &mut job,
        ["pull_out", "back_cover", "top_cover_up"].map(off),
    );
    assert_eq!(job.n_pieces_off(), 8 + 4);
    do_all(
        &mut job,
        ["top_cover_up", "back_cover", "pull_out"].map(|step| refit(step, true)),
    );
    assert_eq!(job.n_pieces_off(), 0);
    // The step's own words and its number agree.
    for machine in ["P", "T", "N"] {
        for step in &scenario(machine, &[]).workshop.steps {
            let first: String = step
                .fasteners
                .chars()
                .take_while(char::is_ascii_digit)
                .collect();
            let is_screwed = step.fasteners.contains("screw") || step.fasteners.contains("bolts");
            if is_screwed && !step.fasteners.contains("loosened") {
                assert!(
                    first.parse::<u32>().expect("a number first") <= step.n_fasteners,
                    "{machine} {}: {}",
                    step.id,
                    step.fasteners
                );
            }
        }
    }
}

/// Refits without a count, over many jobs; how often a piece lay on the cloth, how often inside.
fn uncounted(n: u64) -> (usize, usize) {
    let (mut cloth, mut inside) = (0, 0);
    for seed in 0..n {
        let scenario = std::sync::Arc::new(scenario("P", &[]));
        let mut job = Job::new(scenario, seed).expect("starts");
        make_safe(&mut job);
        do_all(&mut job, ["pull_out", "back_cover"].map(off));
        does(&mut job, refit("back_cover", false));
        let told = match &job.notebook().last().expect("noted").entry {
            NoteEntry::Act { text } => text.contains("left over on the cloth"),
            other => panic!("{other:?}"),
        };
        let Some(short) = job.bench().short.get("back_cover").copied() else {
            assert!(!told && job.n_pieces_off() == 0);
            continue;
        };
        assert_eq!(told, !short.is_inside, "what is seen is told");
        assert_eq!(job.n_pieces_off(), 1);
        assert_eq!(job.n_pieces_on_cloth(), u32::from(!short.is_inside));
        let rattles = job.machine().plant().params().suspension.rattle_ratio;
        assert!(rattles > 0.0, "it is heard in the spin");
        do_all(&mut job, [off("back_cover"), refit("back_cover", true)]);
        assert_eq!(job.n_pieces_off(), 0, "found by counting");
        match short.is_inside {
            true => inside += 1,
            false => cloth += 1,
        }
    }
    (cloth, inside)
}

#[test]
fn without_a_count_a_screw_stays_out_now_and_then_and_is_found_by_counting() {
    let (cloth, inside) = uncounted(120);
    assert!((1..30).contains(&cloth), "{cloth}");
    assert!((1..20).contains(&inside), "{inside}");
}

#[test]
fn a_loose_piece_is_heard_in_the_spin_and_a_sound_machine_does_not_rattle() {
    let rattles = |ratio: f64| {
        let effect = Effect::Param("suspension.rattle_ratio".to_owned(), ratio);
        felt("P", &[effect], (0, 0.3))
            .heard
            .iter()
            .any(|kind| kind.starts_with("Rattle"))
    };
    assert!(rattles(1.0));
    assert!(!rattles(0.0));
}

/// A drain joint sealed anew and the machine put back, started so long after.
fn sealed_and_filled_after(ticks: u64) -> Job {
    let mut job = job("P", &["drain_joint_drips"]);
    make_safe(&mut job);
    does(&mut job, Action::SupplyHose { attached: false });
    do_all(&mut job, ["pull_out", "lay_down", "joint_drain"].map(off));
    does(&mut job, work("reseal_drain_joint", true));
    assert!(job.sealed_at().is_some());
    do_all(
        &mut job,
        ["joint_drain", "lay_down", "pull_out"].map(|step| refit(step, true)),
    );
    do_all(
        &mut job,
        [
            Action::SupplyHose { attached: true },
            Action::Tap { open: true },
            Action::Plug { inserted: true },
        ],
    );
    job.advance(ticks);
    does(&mut job, key(PanelKey::Power));
    job.advance(70);
    does(&mut job, key(PanelKey::Start));
    job.advance(18_000);
    job
}

#[test]
fn water_before_its_time_spoils_a_sealed_joint_and_patience_saves_it() {
    let leak = |job: &Job| job.machine().plant().params().drain.joint_leak_ratio;
    let early = sealed_and_filled_after(0);
    assert!(leak(&early) > 0.0, "it drips again");
    assert!(early.safety().iter().any(|f| f.rule == "sealant_not_set"));
    let patient = sealed_and_filled_after(12_000);
    assert!(leak(&patient) <= 0.0, "{}", leak(&patient));
    assert!(patient.safety().iter().all(|f| f.rule != "sealant_not_set"));
    assert_eq!(patient.sealed_at(), None);
    let spoilt = early
        .bench()
        .left_wrong
        .keys()
        .any(|key| key.ends_with("sealant"));
    assert!(spoilt);
}

#[test]
fn a_mistake_stays_whatever_else_is_mended_until_it_is_put_right_itself() {
    let spoilt = (0..60).find_map(|seed| {
        let scenario = std::sync::Arc::new(scenario("P", &[]));
        let mut job = Job::new(scenario, seed).expect("starts");
        make_safe(&mut job);
        do_all(
            &mut job,
            ["pull_out", "back_cover", "top_cover_up"].map(off),
        );
        does(&mut job, work("replace_lid_switch", false));
        job.bench()
            .left_wrong
            .contains_key("replace_lid_switch")
            .then_some(job)
    });
    let mut job = spoilt.expect("one in ten");
    let is_bent = |job: &Job| {
        let left = job.bench().left_wrong.get("replace_lid_switch");
        left.is_some_and(|effects| !effects.is_empty())
    };
    does(&mut job, work("replace_transformer", true));
    assert!(is_bent(&job), "another work does not mend it");
    let van = Action::LeaveUntil {
        parts: vec!["lid_switch".to_owned()],
        label: true,
    };
    does(&mut job, van);
    does(&mut job, work("replace_lid_switch", true));
    assert!(!is_bent(&job));
}

#[test]
fn a_pulsator_under_water_stays_where_it_is_and_a_full_machine_laid_down_gets_wet() {
    for machine in ["P", "T", "N"] {
        let full = || {
            let mut scenario = scenario(machine, &[]);
            scenario.site.water_kg = 30.0;
            let mut job = job_of(scenario);
            make_safe(&mut job);
            does(&mut job, Action::SupplyHose { attached: false });
            job
        };
        let mut job = full();
        let refusal = job.act(off("pulsator_off")).refusal;
        assert!(
            format!("{refusal:?}").contains("under water"),
            "{refusal:?}"
        );
        does(&mut job, off("pull_out"));
        let events = does(&mut job, off("lay_down")).events;
        let spilt = events
            .iter()
            .any(|e| matches!(e, Event::Spill { water_kg, .. } if *water_kg > 25.0));
        assert!(spilt, "{events:?}");
        assert!(job.safety().iter().any(|f| f.rule == "tilted_full"));
        let ohm = |job: &Job| {
            let read = job
                .machine()
                .measure(Probe::Between(Instrument::Insulation, "MA", "PE"));
            read.expect("solvable").value_si.unwrap_or(4e9)
        };
        assert!(ohm(&job) < 1e5, "{machine}: {} ohm", ohm(&job));
        do_all(
            &mut job,
            [refit("lay_down", true), off("back_cover"), Action::DryOut],
        );
        assert!(ohm(&job) > 1e6, "{machine}: {} ohm", ohm(&job));
    }
}
