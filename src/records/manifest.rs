//! Course files for training systems: manifests of SCORM 1.2 and SCORM 2004 4th edition packages,
//! and the course structure of cmi5.
//!
//! Every file of the build is listed, relative to the manifest at the package's root. Whether the
//! pass mark is met is decided by the score that the page sends.

use std::fmt::Write;

use crate::records::markup::escaped;
use crate::records::xapi::segment;

/// What a package offers.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// IRI base of contents, ending in a slash.
    pub base: String,
    /// Name of the assessment or job.
    pub id: String,
    /// As learners see it.
    pub title: String,
    /// A sentence about it.
    pub description: String,
    /// What the page is started with: the name of the assessment's file, without its ending.
    pub start: String,
    /// Marks of 100 that pass; none for practice.
    pub pass_marks: Option<f64>,
    /// Language of the texts, such as `en`.
    pub language: String,
    /// Files of the build, relative, with forward slashes; `index.html` among them.
    pub files: Vec<String>,
}

impl Course {
    fn identifier(&self) -> String {
        // An NCName: letters, digits, dots, dashes, underscores, a letter first.
        let plain = |c: char| if c.is_ascii_alphanumeric() { c } else { '-' };
        format!(
            "tubwright.{}",
            self.id.chars().map(plain).collect::<String>()
        )
    }

    /// The screen that the page opens with.
    fn fragment(&self) -> String {
        format!("#/assessment/{}", self.start)
    }

    fn pass_share(&self) -> Option<f64> {
        self.pass_marks.map(|marks| (marks / 100.0).clamp(0.0, 1.0))
    }

    fn file_list(&self) -> String {
        self.files.iter().fold(String::new(), |mut list, file| {
            // Writing to a text cannot fail.
            let _ = write!(list, "\n      <file href=\"{}\"/>", escaped(&href(file)));
            list
        })
    }
}

/// A path as a relative IRI.
pub fn href(file: &str) -> String {
    file.split('/')
        .map(|part| {
            part.split('.')
                .map(segment)
                .collect::<Vec<String>>()
                .join(".")
        })
        .collect::<Vec<String>>()
        .join("/")
}

/// `imsmanifest.xml` of a SCORM 1.2 package.
pub fn scorm12(course: &Course) -> String {
    let mastery = course.pass_marks.map_or(String::new(), |marks| {
        format!(
            "\n        <adlcp:masteryscore>{:.0}</adlcp:masteryscore>",
            marks.clamp(0.0, 100.0).ceil()
        )
    });
    let title = escaped(&course.title);
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="{id}" version="1.0"
  xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2"
  xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2">
  <metadata><schema>ADL SCORM</schema><schemaversion>1.2</schemaversion></metadata>
  <organizations default="ORG-1">
    <organization identifier="ORG-1">
      <title>{title}</title>
      <item identifier="ITEM-1" identifierref="RES-1" parameters="{fragment}">
        <title>{title}</title>
        <adlcp:datafromlms>{data}</adlcp:datafromlms>{mastery}
      </item>
    </organization>
  </organizations>
  <resources>
    <resource identifier="RES-1" type="webcontent" adlcp:scormtype="sco" href="index.html">{files}
    </resource>
  </resources>
</manifest>
"#,
        id = course.identifier(),
        fragment = escaped(&course.fragment()),
        data = escaped(&course.start),
        files = course.file_list(),
    )
}

/// `imsmanifest.xml` of a SCORM 2004 4th edition package.
pub fn scorm2004(course: &Course) -> String {
    let objective = match course.pass_share() {
        Some(share) => format!(
            r#"<imsss:primaryObjective objectiveID="PRIMARY" satisfiedByMeasure="true"><imsss:minNormalizedMeasure>{share}</imsss:minNormalizedMeasure></imsss:primaryObjective>"#
        ),
        None => r#"<imsss:primaryObjective objectiveID="PRIMARY"/>"#.to_owned(),
    };
    let title = escaped(&course.title);
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="{id}" version="1.0"
  xmlns="http://www.imsglobal.org/xsd/imscp_v1p1"
  xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_v1p3"
  xmlns:adlseq="http://www.adlnet.org/xsd/adlseq_v1p3"
  xmlns:adlnav="http://www.adlnet.org/xsd/adlnav_v1p3"
  xmlns:imsss="http://www.imsglobal.org/xsd/imsss">
  <metadata><schema>ADL SCORM</schema><schemaversion>2004 4th Edition</schemaversion></metadata>
  <organizations default="ORG-1">
    <organization identifier="ORG-1" adlseq:objectivesGlobalToSystem="false">
      <title>{title}</title>
      <item identifier="ITEM-1" identifierref="RES-1" parameters="{fragment}">
        <title>{title}</title>
        <adlcp:timeLimitAction>continue,no message</adlcp:timeLimitAction>
        <adlcp:dataFromLMS>{data}</adlcp:dataFromLMS>
        <imsss:sequencing>
          <imsss:objectives>{objective}</imsss:objectives>
          <imsss:deliveryControls completionSetByContent="true" objectiveSetByContent="true"/>
        </imsss:sequencing>
      </item>
      <imsss:sequencing><imsss:controlMode choice="true" flow="true"/></imsss:sequencing>
    </organization>
  </organizations>
  <resources>
    <resource identifier="RES-1" type="webcontent" adlcp:scormType="sco" href="index.html">{files}
    </resource>
  </resources>
</manifest>
"#,
        id = course.identifier(),
        fragment = escaped(&course.fragment()),
        data = escaped(&course.start),
        files = course.file_list(),
    )
}

/// `cmi5.xml`.
pub fn cmi5(course: &Course) -> String {
    let string = |text: &str| {
        let language = escaped(&course.language);
        format!(
            "<langstring lang=\"{language}\">{}</langstring>",
            escaped(text)
        )
    };
    let (move_on, mastery) = match course.pass_share() {
        Some(share) => ("CompletedAndPassed", format!(" masteryScore=\"{share}\"")),
        None => ("Completed", String::new()),
    };
    let (title, description) = (string(&course.title), string(&course.description));
    format!(
        r#"<?xml version="1.0" encoding="UTF-8"?>
<courseStructure xmlns="https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd">
  <course id="{base}course/{id}">
    <title>{title}</title>
    <description>{description}</description>
  </course>
  <au id="{base}course/{id}/au/{id}" moveOn="{move_on}"{mastery} launchMethod="OwnWindow" activityType="http://adlnet.gov/expapi/activities/assessment">
    <title>{title}</title>
    <description>{description}</description>
    <url>index.html?start={start}</url>
    <launchParameters>{parameters}</launchParameters>
  </au>
</courseStructure>
"#,
        base = escaped(&course.base),
        id = segment(&course.id),
        start = segment(&course.start),
        parameters = escaped(&serde_json::json!({"start": course.start}).to_string()),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn course() -> Course {
        Course {
            base: "https://school.example/".to_owned(),
            id: "autumn & \"winter\"".to_owned(),
            title: "Autumn <2031> & more".to_owned(),
            description: "Four jobs.".to_owned(),
            start: "autumn?a=1&b=2".to_owned(),
            pass_marks: Some(65.0),
            language: "en".to_owned(),
            files: vec!["index.html".to_owned(), "a b/é&.js".to_owned()],
        }
    }

    #[test]
    fn hostile_titles_stay_text_and_every_file_is_listed() {
        for text in [scorm12(&course()), scorm2004(&course()), cmi5(&course())] {
            assert!(text.contains("Autumn &lt;2031&gt; &amp; more"));
            assert!(!text.contains("& ") && !text.contains("<2031>"));
        }
        let text = scorm2004(&course());
        assert!(text.contains("<file href=\"a%20b/%C3%A9%26.js\"/>"));
        assert!(text.contains("adlcp:scormType=\"sco\""));
        assert!(text.contains("<imsss:minNormalizedMeasure>0.65</imsss:minNormalizedMeasure>"));
        assert!(scorm12(&course()).contains("adlcp:scormtype=\"sco\""));
        assert!(cmi5(&course()).contains("masteryScore=\"0.65\""));
    }

    #[test]
    fn practice_has_no_pass_mark() {
        let practice = Course {
            pass_marks: None,
            ..course()
        };
        assert!(!scorm12(&practice).contains("masteryscore"));
        assert!(cmi5(&practice).contains("moveOn=\"Completed\""));
    }
}
