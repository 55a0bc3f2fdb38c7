// A course package made in the page: the files of the very build, the assessment and a manifest in one archive; also
// without a network, and never one that lacks a file.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inflateRawSync } from "node:zlib";
import { sizes } from "../driver.mjs";

/** The files of an archive in their order, each with its bytes. */
function unpacked(zip) {
  const end = zip.lastIndexOf("PK\x05\x06", undefined, "latin1");
  const files = new Map();
  for (let at = zip.readUInt32LE(end + 16), left = zip.readUInt16LE(end + 10); left > 0; left -= 1) {
    const [name, extra, comment] = [28, 30, 32].map((place) => zip.readUInt16LE(at + place));
    const head = zip.readUInt32LE(at + 42);
    const from = head + 30 + zip.readUInt16LE(head + 26) + zip.readUInt16LE(head + 28);
    const data = zip.subarray(from, from + zip.readUInt32LE(at + 20));
    files.set(zip.toString("utf8", at + 46, at + 46 + name), zip.readUInt16LE(at + 10) === 8 ? inflateRawSync(data) : data);
    at += 46 + name + extra + comment;
  }
  return files;
}

/** The files of a folder, relative to it. */
const filesOf = (folder, under = "") =>
  readdirSync(join(folder, under), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesOf(folder, `${under}${entry.name}/`) : [`${under}${entry.name}`]);

/** An assessment ready to be given out. */
async function opened(visit, options) {
  const person = await visit({ at: "#/assessments", ...options });
  await person.page.getByRole("button", { name: "Make a new one" }).click();
  await person.page.getByLabel("Title").fill("Autumn <b>&");
  await person.page.getByRole("button", { name: "Make the package" }).waitFor();
  return person;
}

async function downloaded({ page }, button) {
  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: button }).click()]);
  return [file.suggestedFilename(), readFileSync(await file.path())];
}

/** Fails unless an archive holds the whole build in `folder`, the assessment's file and the manifest. */
function whole(archive, folder, manifest, assessment) {
  const files = unpacked(archive);
  const build = filesOf(folder);
  assert.deepEqual([...files.keys()].sort(), [...build, manifest, "assessments/autumn_b.json"].sort());
  for (const name of build) assert.ok(files.get(name).equals(readFileSync(join(folder, name))), `${name} is as it was built`);
  assert.ok(files.get("assessments/autumn_b.json").equals(assessment), "the assessment is the saved file");
  const text = files.get(manifest).toString();
  assert.match(text, /Autumn &lt;b&gt;&amp;/);
  return text;
}

export async function packages_of_three_kinds_hold_the_whole_build_and_the_assessment({ visit, folder }) {
  const person = await opened(visit);
  const { page } = person;
  const [, assessment] = await downloaded(person, "Save the file");
  await person.accessible();
  for (const [kind, name] of [["SCORM 1.2", "scorm12"], ["SCORM 2004 4th edition", "scorm2004"]]) {
    await page.getByRole("radio", { name: kind }).check();
    assert.equal(await page.getByLabel("Address that the course").count(), 0);
    const [file, archive] = await downloaded(person, "Make the package");
    assert.equal(file, `autumn_b_${name}.zip`);
    await page.getByText(`${file} is saved`).waitFor();
    const text = whole(archive, folder, "imsmanifest.xml", assessment);
    for (const built of filesOf(folder)) assert.ok(text.includes(`<file href="${built}"/>`), `${built} is listed`);
  }

  await page.getByRole("radio", { name: "cmi5" }).check();
  const base = page.getByLabel("Address that the course");
  assert.equal(await base.inputValue(), person.url);
  await base.fill("our school");
  await page.getByRole("button", { name: "Make the package" }).click();
  await page.getByRole("alert").getByText("“our school” cannot begin names").waitFor();
  await person.accessible();
  await base.fill("https://school.example/workshop");
  const [file, archive] = await downloaded(person, "Make the package");
  assert.equal(file, "autumn_b_cmi5.zip");
  const text = whole(archive, folder, "cmi5.xml", assessment);
  assert.ok(text.includes('<au id="https://school.example/workshop/course/autumn_b/au/autumn_b"'), text);
  assert.ok(text.includes("<url>index.html?start=autumn_b</url>"), text);
}

export async function a_package_is_made_with_the_cable_pulled({ visit, pullCable, folder }) {
  const person = await opened(visit);
  await person.page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 20_000 });
  const [, assessment] = await downloaded(person, "Save the file");
  await pullCable();
  const [, archive] = await downloaded(person, "Make the package");
  whole(archive, folder, "imsmanifest.xml", assessment);
}

/** Each runs in the page ahead of its scripts: one file of the build is lost, or another than it was. */
const losses = [
  [() => {
    const real = globalThis.fetch;
    globalThis.fetch = (...what) => (what[0] === "validation.html" ? Promise.resolve(new Response("", { status: 404 })) : real(...what));
  }, "“validation.html” cannot be had: the server answers 404."],
  [() => {
    const real = globalThis.fetch;
    globalThis.fetch = (...what) => (what[0] === "validation.html" ? Promise.reject(new TypeError("Failed to fetch")) : real(...what));
  }, "“validation.html” cannot be had: nobody answers"],
  [() => {
    const real = globalThis.fetch;
    globalThis.fetch = (...what) => (what[0] === "index.html" ? Promise.resolve(new Response("<!doctype html>")) : real(...what));
  }, "The server has another build of this page by now."],
];

export async function a_file_that_cannot_be_had_is_named_and_nothing_is_saved({ visit }) {
  for (const [before, words] of losses) {
    const person = await opened(visit, { before, size: sizes.telephone });
    const saved = [];
    person.page.on("download", (file) => saved.push(file.suggestedFilename()));
    await person.page.getByRole("button", { name: "Make the package" }).click();
    await person.page.getByRole("alert").getByText(words).waitFor();
    await person.fits();
    assert.deepEqual(saved, []);
  }
}

/** Runs in the page ahead of its scripts: one file never comes. */
const endless = () => {
  const real = globalThis.fetch;
  globalThis.fetch = (...what) => (what[0] === "validation.html" ? new Promise(() => {}) : real(...what));
};

export async function making_a_package_shows_how_far_it_is_and_can_be_cancelled({ visit }) {
  const person = await opened(visit, { before: endless });
  const { page } = person;
  const saved = [];
  page.on("download", (file) => saved.push(file.suggestedFilename()));
  await page.getByRole("button", { name: "Make the package" }).click();
  await page.waitForFunction(() => document.querySelector("progress[aria-label=Packing]")?.value > 0);
  assert.ok(await page.getByRole("radio", { name: "cmi5" }).isDisabled());
  await person.accessible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await page.getByText("Cancelled: nothing is saved.").waitFor();
  await page.getByRole("button", { name: "Make the package" }).waitFor();
  assert.deepEqual(saved, []);
}
