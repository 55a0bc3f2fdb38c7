//! The decision theory on random small problems: Bayes by brute force, what must not matter, bounds,
//! and every search against a plain exhaustive one.

#[path = "expert_theory/problem.rs"]
mod problem;

use problem::Plain;
use problem::problem;
use problem::pump;
use problem::row;
use proptest::prelude::*;
use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use tubwright::expert::theory::account::Happened;
use tubwright::expert::theory::account::walk;
use tubwright::expert::theory::acts::Repair;
use tubwright::expert::theory::acts::Test;
use tubwright::expert::theory::evaluate::Evaluator;
use tubwright::expert::theory::exact::Exact;
use tubwright::expert::theory::information;
use tubwright::expert::theory::justify;
use tubwright::expert::theory::known::Act;
use tubwright::expert::theory::known::Known;
use tubwright::expert::theory::known::cost_of;
use tubwright::expert::theory::look_ahead::LookAhead;
use tubwright::expert::theory::model::Model;
use tubwright::expert::theory::order::Candidates;
use tubwright::expert::theory::play::play;
use tubwright::expert::theory::policy::Greedy;
use tubwright::expert::theory::policy::Policy;
use tubwright::expert::theory::policy::RepairOnly;
use tubwright::expert::theory::policy::ToGo;
use tubwright::expert::theory::posterior::Posterior;
use tubwright::expert::theory::rollout::Rollout;
use tubwright::expert::theory::sets::Sets;

const NEAR: f64 = 1e-9;

fn rng(seed: u64) -> impl FnMut() -> f64 {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    move || (rng.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn the_search_finds_what_trying_everything_finds(plain in problem(2)) {
        let model = plain.model();
        let left: Vec<usize> = (0..plain.test.len()).collect();
        let brute = plain.cheapest(&plain.prior, &left, 0);
        let start = Known::at_start(&model);
        let exact = Exact::new(&model).to_go(&start);
        prop_assert!((exact - brute).abs() < NEAR * brute, "{exact} {brute}");
        // Deep enough, looking ahead is exhaustive too.
        let depth = plain.prior.len() + plain.test.len();
        if depth <= 5 {
            let deep = LookAhead::new(&model, depth).to_go(&start);
            prop_assert!((deep - brute).abs() < NEAR * brute, "{deep} {brute}");
        }
    }

    #[test]
    fn no_policy_is_cheaper_than_the_best_and_none_than_knowing(plain in problem(2)) {
        let model = plain.model();
        let start = Known::at_start(&model);
        let best = Exact::new(&model).to_go(&start);
        let one_step = Evaluator::new(&model, LookAhead::new(&model, 1)).to_go(&start);
        let others = [
            one_step,
            Evaluator::new(&model, LookAhead::new(&model, 2)).to_go(&start),
            Evaluator::new(&model, Greedy::new(&model, 0.9)).to_go(&start),
            Evaluator::new(&model, RepairOnly::new(&model)).to_go(&start),
        ];
        for cost in others {
            prop_assert!(cost >= best - NEAR * best, "{cost} {best}");
        }
        let rollout = Evaluator::new(&model, Rollout::of_one_step(&model)).to_go(&start);
        prop_assert!(rollout >= best - NEAR * best && rollout <= one_step + NEAR * best);
        let knowing: f64 = plain.prior.iter().zip(&plain.repair).map(|(p, (cost, _))| p * cost).sum();
        prop_assert!(best >= knowing - NEAR);
    }

    /// The plain order's cost, computed for a policy by following it and in one go.
    #[test]
    fn the_plain_order_costs_what_following_it_costs(plain in problem(2)) {
        let model = plain.model();
        let start = Known::at_start(&model);
        let leaf = RepairOnly::new(&model).to_go(&start);
        let followed = Evaluator::new(&model, RepairOnly::new(&model)).to_go(&start);
        prop_assert!((leaf - followed).abs() < NEAR * leaf, "{leaf} {followed}");
    }

    #[test]
    fn one_more_test_never_costs_and_a_dearer_act_never_saves(plain in problem(1), more in 0.1..20.0_f64) {
        let cost = |plain: &Plain| {
            let model = plain.model();
            Exact::new(&model).to_go(&Known::at_start(&model))
        };
        let all = cost(&plain);
        let mut fewer = plain.clone();
        if fewer.test.pop().is_some() {
            prop_assert!(cost(&fewer) >= all - NEAR);
        }
        let mut dearer = plain.clone();
        dearer.repair[0].0 += more;
        prop_assert!(cost(&dearer) >= all - NEAR);
    }

    /// V is concave: knowing which of two situations one is in never costs.
    #[test]
    fn mixed_beliefs_cost_at_least_the_mean(plain in problem(1), mix in 0.05..0.95_f64, seed in any::<u64>()) {
        let model = plain.model();
        let mut draw = rng(seed);
        let other: Vec<f64> = plain.prior.iter().map(|_| 0.01 + draw()).collect();
        let sum: f64 = other.iter().sum();
        let mixed = plain.prior.iter().zip(&other).map(|(a, b)| mix * a + (1.0 - mix) * b / sum);
        let mut exact = Exact::new(&model);
        let mut v = |p: Vec<f64>| exact.to_go(&Known::new(p, 0));
        let (together, a, b) = (v(mixed.collect()), v(plain.prior.clone()), v(other.clone()));
        prop_assert!(together >= mix * a + (1.0 - mix) * b - NEAR * together);
    }

    #[test]
    fn evidence_averages_out(plain in problem(1)) {
        let model = plain.model();
        let start = Known::at_start(&model);
        for t in 0..plain.test.len() {
            let (mut mean, mut gain, mut surprise) = (vec![0.0; plain.prior.len()], 0.0, 0.0);
            for (_, z, after) in start.after_test(&model, t) {
                mean.iter_mut().zip(after.p()).for_each(|(m, p)| *m += z * p);
                gain += z * information::gain(start.p(), after.p());
                surprise += z * information::surprise(start.p(), after.p());
            }
            for (m, p) in mean.iter().zip(start.p()) {
                prop_assert!((m - p).abs() < 1e-12);
            }
            let expected = information::expected_gain(start.p(), &model.tests()[t]);
            prop_assert!(expected >= 0.0);
            prop_assert!((gain - expected).abs() < NEAR && (surprise - expected).abs() < NEAR);
        }
    }

    /// Bayes by brute force: joint probabilities of cause and all evidence, scaled.
    #[test]
    fn the_posterior_is_the_scaled_joint_and_order_does_not_matter(
        prior in row(5), evidence in prop::collection::vec(row(5), 0..6),
    ) {
        let mut forward = Posterior::new(&prior);
        let mut backward = Posterior::new(&prior);
        evidence.iter().for_each(|e| forward.observe(e));
        evidence.iter().rev().for_each(|e| backward.observe(e));
        let joint: Vec<f64> = (0..5)
            .map(|h| prior[h] * evidence.iter().map(|e| e[h]).product::<f64>())
            .collect();
        let sum: f64 = joint.iter().sum();
        let p = forward.probabilities();
        prop_assert!((p.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        for h in 0..5 {
            prop_assert!((p[h] - joint[h] / sum).abs() < 1e-12);
            prop_assert!((p[h] - backward.probabilities()[h]).abs() < 1e-12);
        }
    }

    #[test]
    fn names_of_causes_do_not_matter(plain in problem(2)) {
        let n = plain.prior.len();
        let turned = Plain {
            prior: (0..n).map(|h| plain.prior[(h + 1) % n]).collect(),
            repair: (0..n).map(|h| plain.repair[(h + 1) % n]).collect(),
            test: plain
                .test
                .iter()
                .map(|(c, at, rows)| (*c, *at, (0..n).map(|h| rows[(h + 1) % n].clone()).collect()))
                .collect(),
            ways: plain.ways.clone(),
        };
        let (a, b) = (plain.model(), turned.model());
        let cost = |m: &Model| Exact::new(m).to_go(&Known::at_start(m));
        prop_assert!((cost(&a) - cost(&b)).abs() < NEAR * cost(&a));
    }

    #[test]
    fn cost_is_target_and_avoidable_and_chance(plain in problem(2), seed in any::<u64>()) {
        let model = plain.model();
        let start = Known::at_start(&model);
        let mut exact = Exact::new(&model);
        let mut draw = rng(seed);
        // Any policy: a random act each time.
        let mut wild = Wild { model: &model, seed };
        let happened = play(&model, &mut wild, &start, &mut draw);
        let walked = walk(&model, &start, &happened, &mut exact);
        let chance: f64 = walked.account.steps.iter().map(|s| s.chance()).sum();
        let sum = walked.account.start + walked.account.avoidable() + chance;
        prop_assert!((walked.account.paid() - sum).abs() < NEAR * sum, "{} {sum}", walked.account.paid());
        prop_assert!((walked.account.chance() - chance).abs() < NEAR * sum);
        // The best policy avoids all that can be.
        let happened = play(&model, &mut Exact::new(&model), &start, &mut draw);
        prop_assert!(walk(&model, &start, &happened, &mut exact).account.avoidable() < NEAR * sum);
    }

    #[test]
    fn a_repeat_is_worth_nothing_and_costs_itself(plain in problem(1)) {
        prop_assume!(!plain.test.is_empty());
        let model = plain.model();
        let start = Known::at_start(&model);
        let once = Happened::Test { test: 0, outcome: 0 };
        let walked = walk(&model, &start, &[once, once], &mut Exact::new(&model));
        prop_assert!((walked.account.steps[1].avoidable() - plain.test[0].0).abs() < NEAR * 100.0);
        prop_assert_eq!(walked.before[1].as_ref(), walked.last.as_ref());
    }

    #[test]
    fn a_repaired_cause_that_did_not_help_is_gone(plain in problem(1), i in 0..2_usize) {
        let model = plain.model();
        let (works, still) = Known::at_start(&model).after_repair(&model, i);
        prop_assert!((works - plain.prior[i]).abs() < 1e-12);
        let p = still.expect("others are possible").p().to_vec();
        prop_assert!(p[i].abs() < 1e-300 && (p.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn without_tests_and_ways_the_rule_is_the_best_order(plain in problem(1)) {
        let p = &plain.prior;
        let cost: Vec<f64> = plain.repair.iter().map(|(c, _)| *c).collect();
        let candidates = Candidates::plain(p, &cost);
        let best = candidates.expected_cost(&candidates.best().expect("few"));
        let by_rule = candidates.expected_cost(&candidates.by_p_over_cost());
        let model = plain.model().without_tests();
        let exact = Exact::new(&model).to_go(&Known::at_start(&model));
        prop_assert!((best - by_rule).abs() < NEAR * best && (exact - best).abs() < NEAR * best);
    }
}

/// Acts at random, tests preferred.
struct Wild<'m> {
    model: &'m Model,
    seed: u64,
}

impl Policy for Wild<'_> {
    fn choose(&mut self, known: &Known) -> Option<Act> {
        let acts: Vec<Act> = known.acts(self.model).collect();
        self.seed = self
            .seed
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1);
        acts.get((self.seed >> 33) as usize % acts.len().max(1))
            .copied()
    }
}

/// The mean avoidable cost of a policy is what it costs beyond the best one.
#[test]
fn avoidable_cost_averages_to_the_excess_of_a_policy() {
    let model = pump();
    let start = Known::at_start(&model);
    let mut exact = Exact::new(&model);
    let excess =
        Evaluator::new(&model, RepairOnly::new(&model)).to_go(&start) - exact.to_go(&start);
    let mut draw = rng(7);
    let n_runs = 4000;
    let mut runs = Vec::new();
    for _ in 0..n_runs {
        let happened = play(&model, &mut RepairOnly::new(&model), &start, &mut draw);
        runs.push(walk(&model, &start, &happened, &mut exact).account);
    }
    let mean = runs.iter().map(|a| a.avoidable()).sum::<f64>() / f64::from(n_runs);
    let square = runs
        .iter()
        .map(|a| (a.avoidable() - mean).powi(2))
        .sum::<f64>();
    let se = (square / f64::from(n_runs)).sqrt() / f64::from(n_runs).sqrt();
    assert!((mean - excess).abs() < 4.0 * se, "{mean} {excess} ± {se}");
    let luck = runs.iter().map(|a| a.chance()).sum::<f64>() / f64::from(n_runs);
    assert!(luck.abs() < 6.0, "{luck}");
}

/// Replacing at once is right from a probability on: the worked example's exact figures.
#[test]
fn the_break_even_of_the_worked_example() {
    let model = pump();
    let (_, silent) = Known::at_start(&model)
        .after_outcome(&model, 0, 0)
        .expect("possible");
    let (_, hums) = Known::at_start(&model)
        .after_outcome(&model, 0, 1)
        .expect("possible");
    let break_even = |known: &Known, cause: usize| {
        justify::break_even_of(|p| {
            let known = known.with_share(cause, p);
            let mut exact = Exact::new(&model);
            let q = cost_of(&model, &known, Act::Repair(cause), &mut |k| exact.to_go(k));
            q - exact.to_go(&known)
        })
    };
    assert!((break_even(&silent, 0) - 0.8523).abs() < 5e-5);
    assert!((break_even(&hums, 1) - 0.4517).abs() < 5e-5);
    assert!((justify::break_even(10.0, 75.0) - 0.8667).abs() < 5e-5);
}

#[test]
fn a_set_of_faults_loses_one_at_each_repair() {
    let sets = Sets::of(&[0.1, 0.2, 0.3], 2);
    let repairs = (0..3).map(|i| Repair {
        cost: 10.0,
        cost_if_not: 0.0,
        place: None,
        after: sets.after(i),
    });
    let model = Model::new(sets.prior.clone(), repairs.collect(), Vec::new()).expect("sound");
    let (works, still) = Known::at_start(&model).after_repair(&model, 0);
    assert!((works - sets.prior[0]).abs() < 1e-12);
    let left = still.expect("others");
    assert!(sets.share(left.p(), 0).abs() < 1e-300);
    assert!(sets.share(left.p(), 1) > sets.prior[1]);
}

#[test]
fn what_cannot_be_solved_is_told() {
    let repair = |after: Vec<Option<usize>>| Repair {
        cost: 1.0,
        cost_if_not: 0.0,
        place: None,
        after,
    };
    let told = |prior: Vec<f64>, repairs: Vec<Repair>, tests: Vec<Test>| {
        Model::new(prior, repairs, tests)
            .expect_err("not sound")
            .to_string()
    };
    let both = vec![repair(vec![None, Some(1)]), repair(vec![Some(0), None])];
    assert!(told(vec![0.5, f64::NAN], both.clone(), Vec::new()).contains("prior of cause 1"));
    assert!(told(vec![0.0, 0.0], both.clone(), Vec::new()).contains("sum of the prior"));
    assert!(told(vec![0.5, 0.5], both[..1].to_vec(), Vec::new()).contains("cause 1"));
    assert!(told(vec![1.0], both.clone(), Vec::new()).contains("what repair 0 leaves"));
    let uneven = Test {
        cost: 1.0,
        place: None,
        n_outcomes: 2,
        likelihood: vec![0.5, 0.5, 0.9, 0.2],
    };
    assert!(told(vec![0.5, 0.5], both.clone(), vec![uneven.clone()]).contains("under cause 1"));
    let nowhere = Test {
        place: Some(3),
        likelihood: vec![0.5; 4],
        ..uneven
    };
    assert!(told(vec![0.5, 0.5], both, vec![nowhere]).contains("place of test 0"));
}
