//! From the file twins of a machine's `workshop` section to the bench's plain types.

use std::collections::BTreeMap;

use crate::bench::workshop;
use crate::bench::workshop::Workshop;
use crate::scenario::effect_file::EffectFile;
use crate::scenario::effect_file::HarmFile;
use crate::scenario::effect_file::MistakeFile;
use crate::scenario::effect_file::WayFile;
use crate::scenario::workshop_file::ConnectorFile;
use crate::scenario::workshop_file::DataSheetLineFile;
use crate::scenario::workshop_file::PartFile;
use crate::scenario::workshop_file::PlaceFile;
use crate::scenario::workshop_file::StepFile;
use crate::scenario::workshop_file::TestPointFile;
use crate::scenario::workshop_file::VariantFile;
use crate::scenario::workshop_file::WorkFile;
use crate::scenario::workshop_file::WorkKindFile;
use crate::scenario::workshop_file::WorkshopFile;
use crate::units::s_from_min;

/// What an ohmmeter or insulation tester shows at most stands for "no upper limit", Ω.
const NO_UPPER_LIMIT: f64 = 1.0e12;

impl WorkshopFile {
    /// The same as plain types, SI inside.
    pub fn to_plain(&self) -> Workshop {
        Workshop {
            steps: self.steps.iter().map(StepFile::to_plain).collect(),
            parts: self.parts.iter().map(PartFile::to_plain).collect(),
            works: self.works.iter().map(WorkFile::to_plain).collect(),
            connectors: self
                .connectors
                .iter()
                .map(ConnectorFile::to_plain)
                .collect(),
            test_points: self
                .test_points
                .iter()
                .map(TestPointFile::to_plain)
                .collect(),
            places: self.places.iter().map(PlaceFile::to_plain).collect(),
            data_sheet: self
                .data_sheet
                .iter()
                .map(DataSheetLineFile::to_plain)
                .collect(),
            service_steps: self.service_steps.clone(),
            programs: self.programs.clone(),
            conductors: Vec::new(),
        }
    }
}

impl StepFile {
    fn to_plain(&self) -> workshop::Step {
        workshop::Step {
            id: self.id.clone(),
            name: self.name.clone(),
            verb: self.verb.clone(),
            refit_verb: self.refit_verb.clone(),
            needs: self.needs.clone(),
            tools: self.tools.clone(),
            fasteners: self.fasteners.clone(),
            n_fasteners: self.n_fasteners,
            off_s: s_from_min(self.off_min),
            on_s: s_from_min(self.on_min),
            caution: self.caution.clone(),
            refit_check: self.refit_check.clone(),
            while_off: self.while_off.iter().map(EffectFile::to_plain).collect(),
            mistakes: self.mistakes.iter().map(MistakeFile::to_plain).collect(),
            opens_live_parts: self.opens_live_parts,
            moves_machine: self.moves_machine,
            lays_down: self.lays_down,
            lets_water_out: self.lets_water_out,
            needs_dry_tub: self.needs_dry_tub,
            needs_help: self.needs_help,
            needs_support: self.needs_support,
            harms: self.harms.iter().map(HarmFile::to_plain).collect(),
        }
    }
}

impl HarmFile {
    fn to_plain(&self) -> workshop::Harm {
        workshop::Harm {
            way: self.way.map(|way| match way {
                WayFile::Off => workshop::Way::Off,
                WayFile::On => workshop::Way::On,
            }),
            on: self.on.clone(),
            dead: self.dead,
            dry: self.dry,
            what: self.what.clone(),
            effects: self.effects.iter().map(EffectFile::to_plain).collect(),
        }
    }
}

impl MistakeFile {
    fn to_plain(&self) -> workshop::Mistake {
        workshop::Mistake {
            what: self.what.clone(),
            chance_ratio: self.chance,
            effects: self.effects.iter().map(EffectFile::to_plain).collect(),
        }
    }
}

impl EffectFile {
    fn to_plain(&self) -> workshop::Effect {
        match self {
            EffectFile::Open(element) => workshop::Effect::ElementOpen(element.clone()),
            EffectFile::Value { element, value } => {
                workshop::Effect::ElementValue(element.clone(), *value)
            }
            EffectFile::Param { name, value } => workshop::Effect::Param(name.clone(), *value),
        }
    }
}

impl PartFile {
    fn to_plain(&self) -> workshop::Part {
        workshop::Part {
            id: self.id.clone(),
            name: self.name.clone(),
            designation: self.designation.clone(),
            price: self.price,
            does: self.does.clone(),
            fails: self.fails.clone(),
            elements: self.elements.clone(),
            params: self.params.clone(),
            sold_once_fitted: self.sold_once_fitted,
            rated_v: self.rated_v,
            rated_a: self.rated_a,
            burns_above_a: pairs(&self.burns_above_a),
            variants: self.variants.iter().map(VariantFile::to_plain).collect(),
        }
    }
}

impl VariantFile {
    fn to_plain(&self) -> workshop::Variant {
        workshop::Variant {
            id: self.id.clone(),
            name: self.name.clone(),
            price: self.price,
            values: pairs(&self.values),
            params: pairs(&self.params),
            rated_v: self.rated_v,
            rated_a: self.rated_a,
        }
    }
}

fn pairs(map: &BTreeMap<String, f64>) -> Vec<(String, f64)> {
    map.iter()
        .map(|(name, value)| (name.clone(), *value))
        .collect()
}

impl WorkFile {
    fn to_plain(&self) -> workshop::Work {
        workshop::Work {
            id: self.id.clone(),
            name: self.name.clone(),
            kind: match self.kind {
                WorkKindFile::Replace => workshop::WorkKind::Replace,
                WorkKindFile::Clean => workshop::WorkKind::Clean,
                WorkKindFile::Adjust => workshop::WorkKind::Adjust,
                WorkKindFile::Reseat => workshop::WorkKind::Reseat,
                WorkKindFile::Reseal => workshop::WorkKind::Reseal,
                WorkKindFile::Instruct => workshop::WorkKind::Instruct,
            },
            part: self.part.clone(),
            needs: self.needs.clone(),
            tools: self.tools.clone(),
            fasteners: self.fasteners.clone(),
            n_fasteners: self.n_fasteners,
            work_s: s_from_min(self.work_min),
            material_price: self.material_price,
            caution: self.caution.clone(),
            check: self.check.clone(),
            elements: self.elements.clone(),
            params: self.params.clone(),
            mistakes: self.mistakes.iter().map(MistakeFile::to_plain).collect(),
            sealant: self.sealant.as_ref().map(|sealant| workshop::Sealant {
                sets_s: s_from_min(sealant.sets_min),
                effects: sealant.effects.iter().map(EffectFile::to_plain).collect(),
            }),
            teach: self.teach,
        }
    }
}

impl ConnectorFile {
    fn to_plain(&self) -> workshop::Connector {
        workshop::Connector {
            id: self.id.clone(),
            name: self.name.clone(),
            elements: self.elements.clone(),
            needs: self.needs.clone(),
            place: self.place.clone(),
            harms: self.harms.iter().map(HarmFile::to_plain).collect(),
        }
    }
}

impl TestPointFile {
    fn to_plain(&self) -> workshop::TestPoint {
        workshop::TestPoint {
            node: self.node.clone(),
            name: self.name.clone(),
            needs: self.needs.clone(),
            place: self.place.clone(),
        }
    }
}

impl PlaceFile {
    fn to_plain(&self) -> workshop::Place {
        workshop::Place {
            id: self.id.clone(),
            name: self.name.clone(),
            needs: self.needs.clone(),
            part: self.part.clone(),
        }
    }
}

impl DataSheetLineFile {
    fn to_plain(&self) -> workshop::DataSheetLine {
        workshop::DataSheetLine {
            mode: self.mode.clone(),
            red: self.red.clone(),
            black: self.black.clone(),
            state: self.state.clone(),
            apart: self.apart.clone(),
            low: self.low,
            high: self.high.unwrap_or(NO_UPPER_LIMIT),
            what: self.what.clone(),
        }
    }
}
