//! What passes and how well, at the edge of each bar.

use super::*;

const FULL: Shares = Shares {
    safety: 1.0,
    is_gate_open: true,
    diagnosis: 1.0,
    economy: 1.0,
    procedure: 1.0,
    is_proved: true,
    evidence: 1.0,
};

#[test]
fn each_minimum_is_met_at_its_share_and_missed_below_it() {
    type Of = fn(f64) -> Shares;
    let minima: [(Minimum, f64, Of); 4] = [
        (Minimum::Safety, 0.7, |safety| Shares { safety, ..FULL }),
        (Minimum::Diagnosis, 0.6, |diagnosis| Shares {
            diagnosis,
            ..FULL
        }),
        (Minimum::Procedure, 0.6, |procedure| Shares {
            procedure,
            ..FULL
        }),
        (Minimum::Evidence, 0.5, |evidence| Shares {
            evidence,
            ..FULL
        }),
    ];
    let verdict = |shares: Shares, cut| shares.verdict(&WEIGHTS, cut);
    let missed = |minimum| Verdict::NotYet(vec![minimum]);
    for (minimum, least, of) in minima {
        assert!(!matches!(verdict(of(least), 65.0), Verdict::NotYet(_)));
        assert_eq!(verdict(of(least - 1e-6), 65.0), missed(minimum));
    }
    let without_economy = Shares {
        economy: 0.0,
        ..FULL
    };
    assert_eq!(verdict(without_economy, 85.0), Verdict::Passed);
    assert_eq!(verdict(without_economy, 85.001), missed(Minimum::Total));
    let is_proved = false;
    let unproved = verdict(Shares { is_proved, ..FULL }, 65.0);
    assert_eq!(unproved, missed(Minimum::Procedure));
}

#[test]
fn a_pass_is_good_or_excellent_by_its_total_economy_and_evidence() {
    // Procedure gives 15 points and diagnosis 30.
    let of = |procedure, diagnosis, economy, evidence| {
        let shares = Shares {
            procedure,
            diagnosis,
            economy,
            evidence,
            ..FULL
        };
        shares.verdict(&WEIGHTS, PASS_TOTAL)
    };
    assert_eq!(of(1.0, 1.0, 0.8, 0.8), Verdict::Excellent);
    assert_eq!(of(1.0, 1.0, 0.799, 1.0), Verdict::Good);
    assert_eq!(of(1.0, 1.0, 0.5, 1.0), Verdict::Good);
    assert_eq!(of(1.0, 1.0, 0.499, 1.0), Verdict::Passed);
    assert_eq!(of(1.0, 1.0, 1.0, 0.799), Verdict::Passed);
    assert_eq!(of(0.8, 0.767, 1.0, 1.0), Verdict::Excellent);
    assert_eq!(of(0.8, 0.766, 1.0, 1.0), Verdict::Good);
    assert_eq!(of(0.6, 0.767, 0.535, 1.0), Verdict::Good);
    assert_eq!(of(0.6, 0.766, 0.533, 1.0), Verdict::Passed);
}

#[test]
fn a_critical_breach_closes_the_gate_takes_nothing_off_safety_and_caps_the_total() {
    let breach = |gravity| Breach {
        rule: "prove_dead",
        gravity,
        exposure: 1,
    };
    assert_eq!(safety(&[breach(Gravity::Critical)], true), (1.0, false));
    assert!(safety(&[breach(Gravity::Major)], true).1);
    let capped = Shares {
        is_gate_open: false,
        ..FULL
    };
    assert!((capped.total(&WEIGHTS) - CRITICAL_CAP).abs() < 1e-9);
    let missed = vec![Minimum::Gate, Minimum::Total];
    assert_eq!(
        capped.verdict(&WEIGHTS, PASS_TOTAL),
        Verdict::NotYet(missed)
    );
    // Less than the cap stays what it is.
    let little = Shares {
        diagnosis: 0.0,
        evidence: 0.0,
        economy: 0.0,
        ..capped
    };
    assert!((little.total(&WEIGHTS) - 35.0).abs() < 1e-9);
}

#[test]
fn procedure_is_what_was_done_of_what_was_due_by_weight() {
    let due = |weight, done_ratio| Due { weight, done_ratio };
    assert!((procedure(&[due(3.0, 1.0), due(1.0, 0.0)]) - 0.75).abs() < 1e-12);
    assert!(procedure(&[]).abs() < 1e-12, "nothing was due");
}
