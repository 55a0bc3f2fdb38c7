//! Rows about a file of scores: either patterns with counts or one person a line.

use std::collections::BTreeMap;

use tubwright::records::measurement::ability;
use tubwright::records::measurement::ability::Estimate;
use tubwright::records::measurement::calibration::Calibration;
use tubwright::records::measurement::calibration::calibrate;
use tubwright::records::measurement::classical;
use tubwright::records::measurement::conditional::conditional;
use tubwright::records::measurement::grid::Normal;
use tubwright::records::measurement::item::Item;
use tubwright::records::measurement::item_fit;
use tubwright::records::measurement::parameters::SlopeRule;
use tubwright::records::measurement::person_fit::person_fit;
use tubwright::records::measurement::priors::Priors;
use tubwright::records::measurement::responses::Responses;
use tubwright::records::measurement::responses::raw_score;
use tubwright::records::measurement::special::chi_square_tail;
use tubwright::records::measurement::sum_score::sum_score_eap;

use crate::files::fields;
use crate::quantity::pattern;
use crate::quantity::word_and_number;

/// Scores with what was estimated from them so far.
pub struct Cohort {
    responses: Responses,
    people: Vec<String>,
    items: Vec<String>,
    models: BTreeMap<String, Calibration>,
}

impl Cohort {
    pub fn read(text: &str) -> Self {
        let mut lines = text.lines().filter(|line| !line.trim().is_empty());
        let head = fields(lines.next().expect("a header"));
        let has_counts = head.last().is_some_and(|last| last == "count");
        let n_items = head.len() - 1 - usize::from(has_counts);
        let mut rows = Vec::new();
        let mut people = Vec::new();
        for line in lines {
            let fields = fields(line);
            let row: Vec<Option<u8>> = fields[1..=n_items].iter().map(|x| x.parse().ok()).collect();
            let n: usize = if has_counts {
                fields[n_items + 1].parse().expect("a count")
            } else {
                1
            };
            rows.extend(std::iter::repeat_n(row, n));
            people.extend(std::iter::repeat_n(fields[0].clone(), n));
        }
        Self {
            responses: Responses::new(&rows).expect("scores"),
            people,
            items: head[1..=n_items].to_vec(),
            models: BTreeMap::new(),
        }
    }

    /// The models a row can name.
    fn model(&mut self, name: &str) -> Option<&Calibration> {
        let (rule, priors) = match name {
            "rasch1" => (SlopeRule::Fixed, Priors::none()),
            "1pl" | "pcm" => (SlopeRule::Common, Priors::none()),
            "2pl" => (SlopeRule::Free, Priors::none()),
            "rasch_bm" => (
                SlopeRule::Fixed,
                Priors::small_cohort(self.responses.n_items()),
            ),
            _ => return None,
        };
        if !self.models.contains_key(name) {
            let fitted = calibrate(&self.responses, rule, &priors).expect("settled");
            assert!(fitted.is_settled, "{name} did not settle");
            self.models.insert(name.to_owned(), fitted);
        }
        self.models.get(name)
    }

    pub fn merged_score_fit(&mut self, item: usize) -> f64 {
        let model = self.model("1pl").expect("a model").clone();
        item_fit::score_fit(&model, &self.responses, true).expect("pass or fail")[item].chi_square
    }

    pub fn answer(&mut self, quantity: &str) -> Option<f64> {
        if let Some(value) = self.plain(quantity).or_else(|| self.classical(quantity)) {
            return Some(value);
        }
        if let Some(rest) = quantity.strip_prefix("cml_") {
            return self.conditional(rest);
        }
        if let Some(rest) = quantity.strip_prefix("LR_") {
            return self.ratio(rest);
        }
        if let Some(rest) = quantity.strip_prefix("rasch_")
            && (rest.starts_with("infit") || rest.starts_with("outfit"))
        {
            return self.mean_square(rest);
        }
        if let Some(value) = self.person(quantity) {
            return Some(value);
        }
        for name in ["rasch_bm", "rasch1", "1pl", "2pl", "pcm"] {
            if let Some(rest) = quantity.strip_prefix(&format!("{name}_")) {
                let responses = self.responses.clone();
                let names = self.items.clone();
                let people = self.people.clone();
                let model = self.model(name)?;
                return of_model(model, rest, &responses, &names)
                    .or_else(|| graded_person(model, rest, &responses, &people));
            }
        }
        None
    }

    fn plain(&self, quantity: &str) -> Option<f64> {
        let tallies = self.responses.tallies();
        if quantity == "n_persons" {
            return Some(self.responses.n_people() as f64);
        }
        if let Some(item) = quantity.strip_suffix("_total_correct") {
            let (_, item) = word_and_number(item)?;
            return tallies.get(item - 1)?.get(1).copied();
        }
        let ("n_score_", score) = word_and_number(quantity)? else {
            return None;
        };
        let n = self.responses.patterns().iter();
        Some(
            n.filter(|p| raw_score(&p.scores) == score)
                .map(|p| p.count)
                .sum(),
        )
    }

    fn classical(&self, quantity: &str) -> Option<f64> {
        let all = classical::classical(&self.responses)?;
        let item = |n: usize| all.items.get(n - 1);
        match quantity {
            "score_mean" => return Some(all.mean),
            "score_var_pop" => return Some(all.population_variance),
            "score_sd_ddof1" => return Some(all.sd),
            "alpha_KR20" | "cronbach_alpha" | "alpha_from_cov" | "KR20_pop_var" => {
                return Some(all.alpha);
            }
            "KR21" => return Some(all.kr21),
            "SEM" | "SEM_raw_score_ddof1" => return Some(all.sem),
            "spearman_brown_double_length" => {
                return Some(classical::spearman_brown(all.alpha, 2.0));
            }
            _ => {}
        }
        if let Some(name) = quantity.strip_prefix("alpha_if_item") {
            let number = name.strip_suffix("_dropped")?.parse().ok()?;
            return Some(item(number)?.alpha_if_dropped);
        }
        if let Some(name) = quantity.strip_suffix("_rest_corr") {
            return Some(item(word_and_number(name)?.1)?.rest_correlation);
        }
        let index = |name: &str| self.items.iter().position(|item| item == name);
        if let Some(name) = quantity.strip_prefix("rest_corr_") {
            return Some(all.items[index(name)?].rest_correlation);
        }
        let name = quantity.strip_prefix("p_")?;
        Some(all.items[index(name)?].mean)
    }

    fn conditional(&self, rest: &str) -> Option<f64> {
        let fitted = conditional(&self.responses).expect("settled");
        if rest == "logL" {
            return Some(fitted.log_likelihood);
        }
        if let Some(name) = rest.strip_suffix("_sum0") {
            return fitted
                .difficulties
                .get(word_and_number(name)?.1 - 1)
                .copied();
        }
        let ("theta_score", score) = word_and_number(rest)? else {
            return None;
        };
        let items: Vec<Item> = fitted
            .difficulties
            .iter()
            .map(|b| Item::rasch(*b))
            .collect();
        by_raw_score(&items, score).map(|e| e.value)
    }

    /// `1pl_vs_2pl`, with `_p` behind it for the chance.
    fn ratio(&mut self, rest: &str) -> Option<f64> {
        let (pair, is_chance) = match rest.strip_suffix("_p") {
            Some(pair) => (pair, true),
            None => (rest, false),
        };
        let (narrow, wide) = pair.split_once("_vs_")?;
        let (low, n_low) = {
            let model = self.model(narrow)?;
            (model.log_likelihood, model.n_parameters)
        };
        let model = self.model(wide)?;
        let ratio = 2.0 * (model.log_likelihood - low);
        let df = model.n_parameters - n_low;
        Some(if is_chance {
            chi_square_tail(ratio, df as f64)
        } else {
            ratio
        })
    }

    /// Direct sums over people with neither all nor nothing, conditional difficulties, abilities by
    /// maximum likelihood.
    fn mean_square(&self, rest: &str) -> Option<f64> {
        let (word, number) = word_and_number(rest)?;
        let fitted = conditional(&self.responses).expect("settled");
        let items: Vec<Item> = fitted
            .difficulties
            .iter()
            .map(|b| Item::rasch(*b))
            .collect();
        let by_score: Vec<Option<f64>> = (0..=items.len())
            .map(|score| by_raw_score(&items, score).map(|e| e.value))
            .collect();
        let abilities: Vec<Option<f64>> = (0..self.responses.n_people())
            .map(|p| by_score[raw_score(self.responses.person(p))])
            .collect();
        let fit = item_fit::mean_squares(&items, &self.responses, &abilities);
        let fit = fit.get(number - 1)?;
        Some(if word.starts_with("infit") {
            fit.infit
        } else {
            fit.outfit
        })
    }

    /// A person of a small cohort by the file's name for them.
    fn person(&mut self, quantity: &str) -> Option<f64> {
        let responses = self.responses.clone();
        if quantity == "EAP_reliability" {
            let model = self.model("rasch_bm")?;
            let all: Vec<Estimate> = (0..responses.n_people())
                .map(|p| ability::eap(&model.items, responses.person(p), &Normal::STANDARD))
                .collect();
            return ability::reliability(&all);
        }
        let (word, name) = quantity.split_once('_')?;
        if word != "EAP" && word != "SD" {
            return None;
        }
        let person = self.people.iter().position(|p| p == name)?;
        let model = self.model("rasch_bm")?;
        let estimate = ability::eap(&model.items, responses.person(person), &Normal::STANDARD);
        Some(if word == "EAP" {
            estimate.value
        } else {
            estimate.se
        })
    }
}

/// Maximum likelihood for a raw score, which for equal slopes is all that counts.
fn by_raw_score(items: &[Item], score: usize) -> Option<Estimate> {
    let scores: Vec<Option<u8>> = (0..items.len())
        .map(|i| Some(u8::from(i < score)))
        .collect();
    ability::maximum_likelihood(items, &scores)
}

fn of_model(
    model: &Calibration,
    rest: &str,
    responses: &Responses,
    names: &[String],
) -> Option<f64> {
    match rest {
        "logL" => return Some(model.log_likelihood),
        "loglik" => return Some(model.log_likelihood),
        "AIC" => return Some(model.aic()),
        "BIC" => return Some(model.bic(responses.n_people())),
        "G2" => return Some(model.g_square(responses)),
        "a" | "sigma" => return Some(model.items[0].slope),
        "se_a" => return Some(model.slope_se(0)),
        _ => {}
    }
    if let Some(name) = rest.strip_prefix("delta_") {
        // Steps on a scale where slopes are 1 and ability has the slope's spread.
        let (item, step) = name.rsplit_once('_')?;
        let item = names.iter().position(|n| n == item)?;
        return Some(model.cut(item, step.parse::<usize>().ok()? - 1));
    }
    if let Some(name) = rest.strip_prefix("SX2_item") {
        let item: usize = name.strip_suffix("_uncollapsed")?.parse().ok()?;
        let fit = item_fit::score_fit(model, responses, false).expect("pass or fail");
        return Some(fit.get(item - 1)?.chi_square);
    }
    if let Some((word, pattern)) = pattern_of(rest, responses.n_items()) {
        return of_pattern(model, word, &pattern, responses.n_people());
    }
    let (word, number) = word_and_number(rest)?;
    let item = number.wrapping_sub(1);
    match word {
        "EAPsum_" => Some(
            sum_score_eap(&model.items, &Normal::STANDARD)
                .get(number)?
                .value,
        ),
        "EAPsumSD_" => Some(
            sum_score_eap(&model.items, &Normal::STANDARD)
                .get(number)?
                .se,
        ),
        "WLE_" => {
            let scores: Vec<Option<u8>> = (0..model.items.len())
                .map(|i| Some(u8::from(i < number)))
                .collect();
            ability::weighted_likelihood(&model.items, &scores).map(|e| e.value)
        }
        "ML_" => by_raw_score(&model.items, number).map(|e| e.value),
        "MLse_" => by_raw_score(&model.items, number).map(|e| e.se),
        _ if item >= model.items.len() => None,
        "d" => Some(-model.cut(item, 0)),
        "se_d" => Some(model.cut_se(item, 0)),
        "b" => Some(model.items[item].steps[0]),
        "se_b" | "se" => Some(model.step_se(item, 0)),
        "a" => Some(model.items[item].slope),
        "se_a" => Some(model.slope_se(item)),
        _ => None,
    }
}

/// `EAP_10110`: a word and one digit an item.
fn pattern_of(rest: &str, n_items: usize) -> Option<(&str, Vec<Option<u8>>)> {
    let (word, digits) = rest.rsplit_once('_')?;
    let fits = digits.len() == n_items && digits.bytes().all(|b| b.is_ascii_digit());
    fits.then(|| (word, pattern(digits)))
}

fn of_pattern(
    model: &Calibration,
    word: &str,
    scores: &[Option<u8>],
    n_people: usize,
) -> Option<f64> {
    let prior = Normal::STANDARD;
    let items = &model.items;
    match word {
        "expfreq" => {
            let posterior = ability::Posterior::new(items, scores, &prior);
            Some(n_people as f64 * posterior.marginal)
        }
        "EAP" => Some(ability::eap(items, scores, &prior).value),
        "EAPsd" => Some(ability::eap(items, scores, &prior).se),
        "MAP" => Some(ability::map(items, scores, &prior).value),
        "MAPse" => Some(ability::map(items, scores, &prior).se),
        "lz_at_EAP" => {
            let at = ability::eap(items, scores, &prior).value;
            person_fit(items, scores, at).map(|fit| fit.l_z)
        }
        _ => None,
    }
}

/// `EAP_c001_3203` or `SD_c001` on the scale where slopes are 1.
fn graded_person(
    model: &Calibration,
    rest: &str,
    responses: &Responses,
    people: &[String],
) -> Option<f64> {
    let mut words = rest.split('_');
    let (word, name) = (words.next()?, words.next()?);
    let person = people.iter().position(|p| p == name)?;
    let estimate = ability::eap(&model.items, responses.person(person), &Normal::STANDARD);
    let sigma = model.items[0].slope;
    match word {
        "EAP" => Some(estimate.value * sigma),
        "SD" => Some(estimate.se * sigma),
        _ => None,
    }
}
