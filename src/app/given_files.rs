//! Files as they are given: chosen or dropped, alone, in folders or in archives. Each comes out with
//! its text, or with the reason why there is none; none is left out without a word.

use js_sys::Promise;
use js_sys::Reflect;
use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::Blob;
use web_sys::DataTransfer;
use web_sys::File;
use web_sys::FileList;
use web_sys::FileSystemDirectoryEntry;
use web_sys::FileSystemEntry;
use web_sys::FileSystemFileEntry;

use crate::app::file_kind;
use crate::app::file_kind::OpenedFile;
use crate::language::said;
use crate::records::unzip;
use crate::say;
use crate::text;

/// Files taken at once.
const MOST_FILES: usize = 500;
/// Largest archive, bytes.
const MOST_ARCHIVE: f64 = 200_000_000.0;
/// All files of one archive together, bytes.
const MOST_UNPACKED: usize = 400_000_000;

/// What a drop or a choice holds, before anything of it is read.
pub enum Given {
    /// A file under its name.
    File(String, File),
    /// A file or folder that was dropped.
    Entry(FileSystemEntry),
}

/// What was chosen.
pub fn chosen(list: Option<FileList>) -> Vec<Given> {
    let files = list
        .iter()
        .flat_map(|list| (0..list.length()).filter_map(|index| list.get(index)));
    files
        .map(|file| Given::File(path_of(&file), file))
        .collect()
}

/// What was dropped. The browser empties the transfer once the event is over.
pub fn dropped(transfer: Option<DataTransfer>) -> Vec<Given> {
    let Some(transfer) = transfer else {
        return Vec::new();
    };
    let items = transfer.items();
    let items = (0..items.length()).filter_map(|index| items.get(index));
    let one = |item: web_sys::DataTransferItem| match item.webkit_get_as_entry() {
        Ok(Some(entry)) => Some(Given::Entry(entry)),
        _ => item
            .get_as_file()
            .ok()
            .flatten()
            .map(|file| Given::File(path_of(&file), file)),
    };
    let found: Vec<Given> = items
        .filter(|item| item.kind() == "file")
        .filter_map(one)
        .collect();
    if found.is_empty() {
        chosen(transfer.files())
    } else {
        found
    }
}

/// Reads all of it: folders and archives opened, each file answered for, by name.
pub async fn read(given: Vec<Given>, most_bytes: f64) -> Vec<OpenedFile> {
    let (mut files, mut opened) = (Vec::new(), Vec::new());
    for one in given {
        match one {
            Given::File(name, file) => files.push((name, file)),
            Given::Entry(entry) => walk(entry, &mut files, &mut opened).await,
        }
    }
    files.sort_by(|(one, _), (other, _)| one.cmp(other));
    let left = files.len().saturating_sub(MOST_FILES);
    for (name, file) in files.into_iter().take(MOST_FILES) {
        if name.to_lowercase().ends_with(".zip") {
            opened.extend(inside(&name, &file, most_bytes).await);
        } else {
            let text = text_of(&file, most_bytes).await;
            opened.push(OpenedFile { name, text });
        }
    }
    if left > 0 {
        let name = say!("{n} more in there", n = left);
        opened.push(OpenedFile::without(name, &too_many()));
    }
    if opened.is_empty() {
        let name = say!("What was given").to_owned();
        opened.push(OpenedFile::without(name, said(EMPTY)));
    }
    opened
}

/// The name of a file with the folders it was chosen in.
fn path_of(file: &File) -> String {
    let path = Reflect::get(file, &JsValue::from_str("webkitRelativePath"));
    path.ok()
        .and_then(|path| path.as_string())
        .filter(|path| !path.is_empty())
        .unwrap_or_else(|| file.name())
}

/// All files in and under an entry; a folder that is empty or shut is told.
async fn walk(
    first: FileSystemEntry,
    files: &mut Vec<(String, File)>,
    opened: &mut Vec<OpenedFile>,
) {
    let mut waiting = vec![first];
    while let Some(entry) = waiting.pop() {
        let path = entry.full_path().trim_start_matches('/').to_owned();
        if entry.is_file() {
            match file_of(entry.unchecked_ref()).await {
                Some(file) => files.push((path, file)),
                None => opened.push(OpenedFile::without(path, said(UNREADABLE))),
            }
            continue;
        }
        match entries_of(entry.unchecked_ref()).await {
            Some(inside) if inside.is_empty() => {
                opened.push(OpenedFile::without(path, said(EMPTY)));
            }
            Some(inside) => waiting.extend(inside),
            None => {
                let why = say!("the browser could not open it");
                opened.push(OpenedFile::without(path, why));
            }
        }
    }
}

const UNREADABLE: &str = text!("the browser could not read it");
const EMPTY: &str = text!("there is no file in it");

/// Why the rest of many files is left shut.
fn too_many() -> String {
    say!("at most {n} are opened at once", n = MOST_FILES)
}

async fn file_of(entry: &FileSystemFileEntry) -> Option<File> {
    let promise = Promise::new(&mut |kept, broken| {
        entry.file_with_callback_and_callback(&kept, &broken);
    });
    JsFuture::from(promise).await.ok()?.dyn_into().ok()
}

/// A folder tells its entries a hundred at a time.
async fn entries_of(folder: &FileSystemDirectoryEntry) -> Option<Vec<FileSystemEntry>> {
    let reader = folder.create_reader();
    let mut all = Vec::new();
    loop {
        let promise = Promise::new(&mut |kept, broken| {
            // A reader that refuses breaks the promise itself.
            let _ = reader.read_entries_with_callback_and_callback(&kept, &broken);
        });
        let some = js_sys::Array::from(&JsFuture::from(promise).await.ok()?);
        if some.length() == 0 {
            return Some(all);
        }
        all.extend(some.iter().map(JsCast::unchecked_into::<FileSystemEntry>));
    }
}

async fn bytes_of(file: &File) -> Option<Vec<u8>> {
    let buffer = JsFuture::from(file.unchecked_ref::<Blob>().array_buffer());
    Some(Uint8Array::new(&buffer.await.ok()?).to_vec())
}

async fn text_of(file: &File, most_bytes: f64) -> Result<String, String> {
    if file.size() > most_bytes {
        return Err(said(TOO_LARGE).to_owned());
    }
    let bytes = bytes_of(file)
        .await
        .ok_or_else(|| said(UNREADABLE).to_owned())?;
    file_kind::text(bytes)
}

const TOO_LARGE: &str = text!("it is larger than any that is meant here");

async fn inside(name: &str, file: &File, most_bytes: f64) -> Vec<OpenedFile> {
    if file.size() > MOST_ARCHIVE {
        return vec![OpenedFile::without(name.to_owned(), said(TOO_LARGE))];
    }
    match bytes_of(file).await {
        Some(bytes) => unpacked(name, &bytes, most_bytes as usize, MOST_UNPACKED),
        None => vec![OpenedFile::without(name.to_owned(), said(UNREADABLE))],
    }
}

/// The files in an archive, each under the archive's name and its own; `room` is for all of them.
fn unpacked(archive: &str, bytes: &[u8], most_bytes: usize, mut room: usize) -> Vec<OpenedFile> {
    let Some(entries) = unzip::entries(bytes) else {
        let why =
            say!("this archive cannot be opened: pack it anew as a plain zip, or open the folder");
        return vec![OpenedFile::without(archive.to_owned(), why)];
    };
    let files: Vec<&unzip::Entry> = entries
        .iter()
        .filter(|entry| !entry.name.ends_with('/'))
        .collect();
    // One small archive can unfold to more than there is memory.
    let one = |entry: &&unzip::Entry| OpenedFile {
        name: format!("{archive}/{}", entry.name),
        text: match unzip::unpacked(bytes, entry) {
            None => Err(say!("it cannot be taken out of the archive").to_owned()),
            Some(bytes) if bytes.len() > most_bytes.min(room) => Err(said(TOO_LARGE).to_owned()),
            Some(bytes) => {
                room -= bytes.len();
                file_kind::text(bytes)
            }
        },
    };
    let mut opened: Vec<OpenedFile> = files.iter().take(MOST_FILES).map(one).collect();
    let left = files.len().saturating_sub(MOST_FILES);
    if left > 0 {
        let name = say!("{archive}, {n} more in there", archive, n = left);
        opened.push(OpenedFile::without(name, &too_many()));
    }
    if opened.is_empty() {
        opened.push(OpenedFile::without(archive.to_owned(), said(EMPTY)));
    }
    opened
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use std::io::Write;

    use super::*;

    fn archive(files: &[(&str, &[u8])]) -> Vec<u8> {
        let mut zip = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
        for (name, bytes) in files {
            zip.start_file(*name, zip::write::SimpleFileOptions::default())
                .expect("starts");
            zip.write_all(bytes).expect("writes");
        }
        zip.finish().expect("closes").into_inner()
    }

    #[test]
    fn every_file_of_an_archive_comes_out_or_says_why_not() {
        let bytes = archive(&[
            ("week/", b""),
            ("week/a.json", b"{}"),
            ("week/plan.png", b"\x89PNG...."),
            ("week/long.txt", &[b'x'; 50]),
        ]);
        let opened = unpacked("all.zip", &bytes, 40, 1000);
        let found: Vec<(&str, Result<&str, &str>)> = opened
            .iter()
            .map(|file| {
                let text = file.text.as_ref().map(String::as_str);
                (file.name.as_str(), text.map_err(String::as_str))
            })
            .collect();
        assert_eq!(
            found,
            [
                ("all.zip/week/a.json", Ok("{}")),
                ("all.zip/week/plan.png", Err("it is a picture")),
                ("all.zip/week/long.txt", Err(TOO_LARGE)),
            ]
        );
    }

    #[test]
    fn an_archive_that_unfolds_to_more_than_there_is_room_for_is_taken_in_part() {
        let bytes = archive(&[("a", b"[1, 2]"), ("b", b"[3, 4]"), ("c", b"[5]")]);
        let opened = unpacked("x.zip", &bytes, 40, 10);
        let is_read: Vec<bool> = opened.iter().map(|file| file.text.is_ok()).collect();
        assert_eq!(is_read, [true, false, true]);
    }

    #[test]
    fn an_empty_archive_and_one_that_is_none_say_so() {
        let why = |bytes: &[u8]| {
            let opened = unpacked("x.zip", bytes, 40, 1000);
            assert_eq!(opened.len(), 1);
            opened[0].text.clone().expect_err("no text")
        };
        assert_eq!(why(&archive(&[])), "there is no file in it");
        assert!(why(b"no archive").contains("pack it anew"));
    }

    #[test]
    fn an_archive_of_more_than_can_be_opened_counts_the_rest() {
        let names: Vec<String> = (0..MOST_FILES + 3).map(|n| format!("{n}.json")).collect();
        let files: Vec<(&str, &[u8])> = names.iter().map(|n| (n.as_str(), &b"{}"[..])).collect();
        let opened = unpacked("big.zip", &archive(&files), 40, 10_000);
        assert_eq!(opened.len(), MOST_FILES + 1);
        let last = opened.last().expect("one more");
        assert!(
            last.name.contains("3 more") && last.text.is_err(),
            "{last:?}"
        );
    }
}
