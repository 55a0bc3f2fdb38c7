### records/as_written.rs


### records/chain.rs


### records/check.rs


### records/cohort/mod.rs


### records/course.rs


### records/practice.rs

work-safely-1551597e = trabajar con seguridad

### records/record.rs


### records/rulings.rs


### records/seal.rs


### records/sift.rs


### records/sitting.rs


### records/zip.rs

