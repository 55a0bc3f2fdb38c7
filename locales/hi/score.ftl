### score/behaviour.rs

it-takes-ages-to-fill-ae608234 = भरने में ज़माना लगा देती है।
it-washes-with-too-little-water-1c1e6d70 = बहुत कम पानी में धोती है।

### score/debrief.rs


### score/decisions.rs


### score/diagnosis.rs


### score/economy.rs


### score/evidence.rs


### score/fairness/alike.rs


### score/fairness/bars.rs


### score/fairness/customer.rs


### score/functional.rs

water-level-4f73ca56 = पानी का लेवल

### score/hindsight.rs


### score/matrix.rs


### score/matrix_columns.rs


### score/procedure.rs


### score/safety.rs


### score/visit.rs

