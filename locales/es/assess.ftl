### assess/assessment_file.rs


### assess/calendar.rs


### assess/decide.rs


### assess/retention.rs

