### scenario/check_job.rs

machine-e103566e = मशीन

### scenario/check_set.rs


### scenario/check_visit.rs


### scenario/pack.rs


### scenario/problem.rs


### scenario/read.rs


### scenario/share.rs

