//! Addresses of the screens. All of them live behind `#/`, so that any folder of any server, and
//! a training system's frame, can host the page.

/// Which screen of a job.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JobScreen {
    /// The bench.
    Bench,
    /// Stating the cause and handing over.
    Finding,
    /// The printable report.
    Report,
    /// Job card and pictures, to print.
    Sheets,
    /// The explained replay.
    Debrief,
}

/// A screen and what it shows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Route {
    /// The list of jobs.
    Jobs,
    /// The bench of a job.
    Bench(String),
    /// Stating the cause and handing over.
    Finding(String),
    /// The printable report of a visit.
    Report(String),
    /// Job card and pictures of a job, to print.
    Sheets(String),
    /// The explained replay of a finished job.
    Debrief(String),
    /// The handbook, at a chapter or at its contents.
    Handbook(Option<String>),
    /// The instructor's desk: its drafts, or one of them.
    Desk(Option<String>),
    /// A job that came as a link.
    OpenJob(String),
    /// What each reading tells apart on a machine.
    Readings(Option<String>),
    /// The handbook's faults: of which machine, and which one.
    Faults {
        /// Short name of the machine; the first that ships without.
        machine: Option<String>,
        /// Name or number of the fault; the list without.
        fault: Option<String>,
    },
    /// An assessment to be begun: one that lies beside the page, or one to be opened.
    Assessment(Option<String>),
    /// An assessment that came as a link.
    SitLink(String),
    /// The assessment that is being sat, or its result.
    Sitting,
    /// The sheet of a witnessed practical.
    Observer,
    /// A record that came as a QR code.
    Result(String),
    /// Making an assessment.
    MakeAssessment,
    /// Making a training set.
    MakeSet,
    /// Many results together.
    Cohort,
    /// One's own skills, jobs and data.
    Me,
    /// Settings, keys and stored data.
    Settings,
    /// An address that leads nowhere.
    Unknown,
}

impl Route {
    /// Reads the part of an address behind `#`.
    pub fn parse(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_matches('/');
        let path = path.split('?').next().unwrap_or("");
        let mut words = path.split('/');
        let screen = words.next().unwrap_or("");
        let mut next = || {
            words
                .next()
                .filter(|word| !word.is_empty())
                .map(str::to_owned)
        };
        let (subject, machine, fault) = (next(), next(), next());
        if words.next().is_some() {
            return Self::Unknown;
        }
        if screen == "handbook" && subject.as_deref() == Some("faults") {
            return Self::Faults { machine, fault };
        }
        if machine.is_some() {
            return Self::Unknown;
        }
        match (screen, subject) {
            ("" | "jobs", None) => Self::Jobs,
            ("bench", Some(id)) => Self::Bench(id),
            ("finding", Some(id)) => Self::Finding(id),
            ("report", Some(id)) => Self::Report(id),
            ("sheets", Some(id)) => Self::Sheets(id),
            ("debrief", Some(id)) => Self::Debrief(id),
            ("handbook", chapter) => Self::Handbook(chapter),
            ("desk", draft) => Self::Desk(draft),
            ("job", Some(letters)) => Self::OpenJob(letters),
            ("readings", machine) => Self::Readings(machine),
            ("assessment", id) => Self::Assessment(id),
            ("sit", Some(letters)) => Self::SitLink(letters),
            ("sitting", None) => Self::Sitting,
            ("observer", None) => Self::Observer,
            ("result", Some(letters)) => Self::Result(letters),
            ("assessments", None) => Self::MakeAssessment,
            ("sets", None) => Self::MakeSet,
            ("cohort", None) => Self::Cohort,
            ("me", None) => Self::Me,
            ("settings", None) => Self::Settings,
            _ => Self::Unknown,
        }
    }

    /// The address, from `#` on.
    pub fn href(&self) -> String {
        match self {
            Self::Jobs | Self::Unknown => "#/jobs".to_owned(),
            Self::Bench(id) => format!("#/bench/{id}"),
            Self::Finding(id) => format!("#/finding/{id}"),
            Self::Report(id) => format!("#/report/{id}"),
            Self::Sheets(id) => format!("#/sheets/{id}"),
            Self::Debrief(id) => format!("#/debrief/{id}"),
            Self::Handbook(None) => "#/handbook".to_owned(),
            Self::Handbook(Some(chapter)) => format!("#/handbook/{chapter}"),
            Self::Desk(None) => "#/desk".to_owned(),
            Self::Desk(Some(draft)) => format!("#/desk/{draft}"),
            Self::OpenJob(letters) => format!("#/job/{letters}"),
            Self::Readings(None) => "#/readings".to_owned(),
            Self::Readings(Some(machine)) => format!("#/readings/{machine}"),
            Self::Faults { machine, fault } => {
                let words = [machine, fault].map(|word| word.as_deref().unwrap_or(""));
                format!("#/handbook/faults/{}", words.join("/"))
                    .trim_end_matches('/')
                    .to_owned()
            }
            Self::Assessment(None) => "#/assessment".to_owned(),
            Self::Assessment(Some(id)) => format!("#/assessment/{id}"),
            Self::SitLink(letters) => format!("#/sit/{letters}"),
            Self::Sitting => "#/sitting".to_owned(),
            Self::Observer => "#/observer".to_owned(),
            Self::Result(letters) => format!("#/result/{letters}"),
            Self::MakeAssessment => "#/assessments".to_owned(),
            Self::MakeSet => "#/sets".to_owned(),
            Self::Cohort => "#/cohort".to_owned(),
            Self::Me => "#/me".to_owned(),
            Self::Settings => "#/settings".to_owned(),
        }
    }

    /// The list of faults.
    pub fn faults() -> Self {
        Self::Faults {
            machine: None,
            fault: None,
        }
    }

    /// The list of a machine's faults.
    pub fn faults_of(machine: &str) -> Self {
        Self::Faults {
            machine: Some(machine.to_owned()),
            fault: None,
        }
    }

    /// The page of a fault.
    pub fn fault(machine: &str, fault: &str) -> Self {
        Self::Faults {
            machine: Some(machine.to_owned()),
            fault: Some(fault.to_owned()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_screen_is_found_again_at_its_own_address() {
        for route in [
            Route::Jobs,
            Route::Bench("j1".into()),
            Route::Finding("j1".into()),
            Route::Report("j1".into()),
            Route::Sheets("j1".into()),
            Route::Debrief("j1".into()),
            Route::Handbook(None),
            Route::Handbook(Some("safety".into())),
            Route::faults(),
            Route::faults_of("P"),
            Route::fault("P", "capacitor_low"),
            Route::Assessment(None),
            Route::Assessment(Some("autumn".into())),
            Route::SitLink("AbC-_".into()),
            Route::Sitting,
            Route::Observer,
            Route::Result("AbC".into()),
            Route::MakeAssessment,
            Route::MakeSet,
            Route::Cohort,
            Route::Me,
            Route::Settings,
        ] {
            let href = route.href();
            assert!(href.starts_with("#/"), "{href}");
            assert_eq!(Route::parse(&href), route);
        }
    }

    #[test]
    fn an_empty_address_is_the_list_of_jobs() {
        for text in ["", "#", "#/", "#/jobs/", "#/jobs?from=mail"] {
            assert_eq!(Route::parse(text), Route::Jobs, "{text}");
        }
    }

    #[test]
    fn a_foreign_address_leads_nowhere_instead_of_failing() {
        for text in [
            "#/bench",
            "#/bench/a/b",
            "#top",
            "#/jobs/x",
            "#/💧",
            "#/handbook/faults/a/b/c",
        ] {
            assert_eq!(Route::parse(text), Route::Unknown, "{text}");
        }
    }
}
