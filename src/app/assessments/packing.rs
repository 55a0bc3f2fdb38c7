//! Packing a course in the page, out of the files of the very build that the page was loaded from.

use crate::app::net;
use crate::records::course::PAGE;
use crate::records::course::Package;
use crate::records::manifest;
use crate::records::zip::TooMuch;
use crate::say;
use crate::scenario::read::read_back;

/// Where the page says which file lists the files of its build.
const LIST: &str = "meta[name=files]";

/// The files of this build, named relative to the page.
///
/// # Errors
/// Why they cannot be told, in words.
pub async fn build() -> Result<Vec<String>, String> {
    let list = list().ok_or_else(|| {
        say!("This page does not say which files it consists of: put it together by “make dist”, or make the package on the command line.")
    })?;
    let text = String::from_utf8_lossy(&fetched(&list).await?).into_owned();
    let mut files = read_back::<Vec<String>>(&text)
        .ok_or_else(|| and_anew(&say!("“{list}” is no list of files.", list)))?;
    files.push(list);
    Ok(files)
}

/// The whole package; none when it was cancelled. `went_on` is told how many files of the build are in
/// it and says whether to go on.
///
/// # Errors
/// The file that cannot be had, or another reason, in words.
pub async fn packed(
    package: &Package,
    went_on: impl Fn(usize) -> bool,
) -> Result<Option<Vec<u8>>, String> {
    let too_much = |error: TooMuch| say!("There is too much in this build: {error}.", error);
    let list = list().unwrap_or_default();
    let mut zip = package.begun().map_err(too_much)?;
    for (at, file) in package.build().iter().enumerate() {
        let bytes = fetched(file).await?;
        if file == PAGE && !names(&bytes, &list) {
            return Err(and_anew(say!(
                "The server has another build of this page by now."
            )));
        }
        zip.add(file, &bytes).map_err(too_much)?;
        if !went_on(at + 1) {
            return Ok(None);
        }
    }
    package.closed(zip).map_err(too_much).map(Some)
}

/// A sentence with what to do then.
fn and_anew(why: &str) -> String {
    let anew = say!("Load this page anew where there is a network, then try again.");
    format!("{why} {anew}")
}

async fn fetched(file: &str) -> Result<Vec<u8>, String> {
    net::bytes_of(&manifest::href(file))
        .await
        .map_err(|why| and_anew(&say!("“{file}” cannot be had: {why}.", file, why)))
}

/// The list's own name, relative to the page.
fn list() -> Option<String> {
    let meta = gloo::utils::document().query_selector(LIST).ok()??;
    let address = meta.get_attribute("content")?;
    let name = address.trim_start_matches("./");
    Some(name.to_owned()).filter(|name| !name.is_empty())
}

/// A page is of the build whose list it names.
fn names(page: &[u8], list: &str) -> bool {
    page.windows(list.len().max(1))
        .any(|window| window == list.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_page_of_another_build_is_told_from_this_one() {
        let page = b"<meta name=\"files\" content=\"./files-01.json\">";
        assert!(names(page, "files-01.json"));
        assert!(!names(page, "files-02.json"));
        assert!(!names(page, ""));
        assert!(!names(b"", "files-01.json"));
    }
}
