//! What has become of the files somebody gave: what was opened, what is wrong, what was passed over.

use yew::prelude::*;

use crate::app::file_kind::Untaken;
use crate::say;
use crate::scenario::FileError;

/// As many as this are listed at once; more are unfolded.
const LISTED: usize = 8;

/// A sentence for each file, by what has become of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Told {
    /// Opened.
    pub opened: Vec<String>,
    /// Ours, but something is wrong.
    pub wrong: Vec<String>,
    /// Something else.
    pub passed: Vec<String>,
}

impl Told {
    /// Notes why a file was not taken.
    pub fn not_taken(&mut self, untaken: Untaken) {
        match untaken {
            Untaken::Passed(words) => self.passed.push(words),
            Untaken::Damaged(words) => self.wrong.push(words),
        }
    }

    /// Notes all that is wrong in a file.
    pub fn not_sound(&mut self, error: &FileError) {
        let problems = error.problems.iter();
        self.wrong.extend(problems.map(ToString::to_string));
    }
}

/// What is told.
#[derive(Properties, PartialEq)]
pub struct ToldFilesProps {
    /// It.
    pub told: Told,
}

/// The lists, read out as they change.
#[component]
pub fn ToldFiles(props: &ToldFilesProps) -> Html {
    let Told {
        opened,
        wrong,
        passed,
    } = &props.told;
    html! {
        <div role="status" class="opened__told">
            { list(opened) }
            { folded(&say!("Not opened, since something is wrong: {n}", n = wrong.len()), wrong) }
            { folded(&say!("Passed over: {n}", n = passed.len()), passed) }
        </div>
    }
}

fn list(lines: &[String]) -> Html {
    html! {
        if !lines.is_empty() {
            <ul>{ for lines.iter().map(|line| html! { <li>{ line }</li> }) }</ul>
        }
    }
}

fn folded(title: &str, lines: &[String]) -> Html {
    html! {
        if lines.len() > LISTED {
            <details><summary>{ title }</summary>{ list(lines) }</details>
        } else if !lines.is_empty() {
            <p>{ title }</p>
            { list(lines) }
        }
    }
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use super::*;
    use crate::app::as_text::as_text;

    #[test]
    fn each_file_stands_under_what_has_become_of_it() {
        let text = as_text::<ToldFiles>(|| ToldFilesProps {
            told: Told {
                opened: vec!["a.json: opened".to_owned()],
                wrong: Vec::new(),
                passed: vec!["<b>.png is a picture".to_owned()],
            },
        });
        assert!(
            text.contains("a.json: opened") && text.contains("Passed over: 1"),
            "{text}"
        );
        assert!(
            !text.contains("Not opened") && text.contains("&lt;b&gt;.png"),
            "{text}"
        );
    }

    #[test]
    fn a_long_list_is_folded() {
        let text = as_text::<ToldFiles>(|| ToldFilesProps {
            told: Told {
                passed: (0..20).map(|n| format!("{n}.png is a picture")).collect(),
                ..Told::default()
            },
        });
        assert!(text.contains("<summary>Passed over: 20"), "{text}");
    }
}
