// The review of results: files of many people taken in, checked in threads, looked through, ruled on,
// and saved. The records are played by the program itself, one a file and many in an archive.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const program = process.env.TUBWRIGHT_PROGRAM ?? "target/debug/tubwright";
const hostile = '=HYPERLINK("x")<img src=x onerror=alert(1)>';

/** Practice records of some people at some jobs, as files. */
function played() {
  const folder = mkdtempSync(join(tmpdir(), "tubwright-cohort-"));
  mkdirSync(join(folder, "in"));
  const people = [hostile, "\u202Eشادي", "c-03"];
  for (const job of ["no_water", "hums_and_stands"]) {
    people.forEach((candidate, n) => {
      const words = ["play", job, `tests/jobs/${job}.json`, "--record", join(folder, "in", `${job}_${n}.json`), "--candidate", candidate];
      execFileSync(program, words);
    });
  }
  return readdirSync(join(folder, "in")).map((name) => ({ name, mimeType: "application/json", buffer: readFileSync(join(folder, "in", name)) }));
}

/** The same record as an older version would have written it for somebody, whole in itself. */
function older(file, candidate) {
  const text = file.buffer.toString();
  const [start, end] = [text.indexOf('"body":') + '"body":'.length, text.lastIndexOf(',"link":"')];
  const body = text.slice(start, end).replace(/"engine":"[^"]*"/, '"engine":"0.0.7"').replace(/"candidate":"[^"]*"/, `"candidate":"${candidate}"`);
  const hash = (label, parts) => {
    const length = (part) => { const bytes = Buffer.alloc(8); bytes.writeBigUInt64LE(BigInt(part.length)); return bytes; };
    return createHash("sha256").update(Buffer.concat([Buffer.from(`${label}\n`), ...parts.flatMap((part) => [length(part), part])])).digest();
  };
  const link = hash("tubwright link 1", [Buffer.from(JSON.parse(body).previous, "hex"), hash("tubwright record 1", [Buffer.from(body)])]);
  const written = `${text.slice(0, start)}${body},"link":"${link.toString("hex")}"}\n`;
  return { ...file, name: "old.json", buffer: Buffer.from(written) };
}

export async function results_are_taken_in_checked_looked_through_ruled_on_and_saved({ visit }) {
  if (!existsSync(program)) return;
  const files = played();
  const old = older(files.find((file) => file.name === "no_water_2.json"), "c-old");
  const edited = { ...files[0], name: "edited.json", buffer: Buffer.from(files[0].buffer.toString().replace('"safe":true', '"safe":false')) };
  const person = await visit();
  const { page } = person;
  await person.go("#/cohort");
  await page.getByLabel("Open files").setInputFiles([...files, edited, old]);
  await page.getByText(`Records checked: ${files.length + 2}; files: ${files.length + 2}.`).waitFor({ timeout: 60_000 });
  await page.getByRole("tab", { name: "People 3" }).waitFor();
  await page.getByRole("tab", { name: "Not accepted 2" }).click();
  await page.getByText("the record was edited").waitFor();
  // What another version wrote is not run again; it is read as it was written.
  await page.getByText("engine 0.0.7 wrote it").waitFor();
  const read = page.getByRole("button", { name: "Read c-old, no_water as it was written" });
  await read.focus();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: /^As written: c-old/ }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.id), "written");
  await page.getByText(/as version 0\.0\.7 of the program wrote it\. It was not worked out again here/).waitFor();
  const shown = page.getByRole("region", { name: "What was done, a table" });
  assert.ok(await shown.locator("tbody tr").count() > 10);
  await shown.getByText(/\d V\b/).first().waitFor();
  await person.accessible();
  await person.fits();
  await page.getByRole("button", { name: "Back" }).click();
  await page.getByRole("tab", { name: "People 3" }).click();
  await page.getByRole("button", { name: hostile, exact: true }).waitFor();
  assert.equal(await page.locator("img").count(), 0, "a name stays text");
  await person.accessible();
  await person.fits();

  // One person, one job, step by step.
  await page.getByRole("button", { name: "c-03", exact: true }).click();
  await page.getByText("practice, no seal, run again").first().waitFor();
  // What the sheet says of itself, on paper too.
  for (const words of [/^Practice, of no assessment; begun on an unknown day$/, /^Reliability of 2 jobs: at least 0\.26/, /It does not show hands/, /^Computed by version \S+ of the program, .* this sheet was made on \d{4}/]) await page.getByText(words).waitFor();
  // Where points were lost, each at its step.
  await page.getByRole("heading", { name: "Where points were lost" }).waitFor();
  await page.getByRole("heading", { name: /^No water comes in: \d+ of 100$/, level: 3 }).waitFor({ timeout: 60_000 });
  await page.getByRole("heading", { name: /: \d+ of 100$/, level: 3 }).nth(1).waitFor({ timeout: 60_000 });
  assert.equal(await page.getByText("no reason can be given").count(), 0);
  await page.getByText(/each; target \d+ min, \d\.\d\d times as much/).waitFor();
  await person.accessible();
  await person.fits();
  await page.getByRole("button", { name: "Read No water comes in as it was written" }).click();
  await page.getByRole("heading", { name: /^As written: c-03/ }).waitFor();
  await page.getByRole("button", { name: "Back to the person" }).click();
  await page.getByRole("button", { name: "Replay No water comes in" }).click();
  await page.getByRole("heading", { name: /^Debrief: c-03/ }).waitFor();
  await page.getByText("As a table").waitFor({ timeout: 60_000 });
  await person.accessible();
  await page.getByRole("button", { name: "Back to the person" }).click();
  await page.getByRole("button", { name: "Override the decision" }).click();
  // Nothing is chosen and nothing is wrong before a try; after it each gap is named.
  assert.equal(await page.getByLabel("What holds").inputValue(), "");
  assert.equal(await page.locator("form .field__error, form [aria-invalid=true]").count(), 0);
  await page.getByRole("button", { name: "It holds from now on" }).click();
  for (const words of ["What holds? Choose one.", "Who rules? Give a name.", "Why? A ruling stands with its reason."]) await page.getByText(words).waitFor();
  assert.equal(await page.locator("form [aria-invalid=true]").count(), 3);
  assert.equal(await page.evaluate(() => document.activeElement.tagName), "SELECT", "what is missing first has the focus");
  await person.accessible();
  await page.getByLabel("What holds").selectOption("passed");
  await page.getByLabel("Who rules").fill("N. Judge");
  await page.getByLabel("Why").fill("heard on appeal");
  await page.getByRole("button", { name: "It holds from now on" }).click();
  await page.getByRole("region", { name: "Decision" }).getByText("Overridden: passed").waitFor();
  await page.getByRole("button", { name: "Back to all" }).click();
  await page.getByRole("cell", { name: "passed, by N. Judge" }).waitFor();

  // What is behind a skill, and a job over all people; both by the keyboard.
  const cell = page.getByRole("button", { name: /^\d of \d, .*, c-03: the jobs behind it$/ }).first();
  await cell.focus();
  await page.keyboard.press("Enter");
  await page.getByRole("region", { name: "Jobs behind the skill, a table" }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.id), "skill");
  await person.accessible();
  await page.getByRole("button", { name: /^Replay / }).first().click();
  await page.getByRole("button", { name: "Back to the skill" }).click();
  await page.getByRole("button", { name: /: how all did at it$/ }).first().click();
  await page.getByRole("heading", { name: "Who did it" }).waitFor();
  await page.getByRole("button", { name: "Back to all" }).click();
  await page.getByRole("tab", { name: "Jobs 2" }).click();
  await page.getByRole("button", { name: "No water comes in: more about this job" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "No water comes in", level: 2 }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.id), "one-job");
  assert.equal(await page.getByRole("region", { name: "People at this job, a table" }).locator("tbody tr").count(), 3);
  // All three were played alike.
  await page.getByText("from so few or equal marks no spread can be told").waitFor();
  for (const name of ["Faults confused", "Safety rules broken"]) await page.getByRole("heading", { name, level: 3 }).waitFor();
  await person.accessible();
  await person.fits();
  await page.getByRole("button", { name: "Replay c-03" }).click();
  await page.getByRole("button", { name: "Back to the job" }).click();
  await page.getByRole("button", { name: "Back to all" }).click();

  // A job is voided for everybody, and all are worked out anew.
  await page.getByRole("tab", { name: "Jobs 2" }).click();
  await page.getByRole("button", { name: "Void No water comes in for everybody" }).click();
  await page.getByLabel("Who rules").fill("N. Judge");
  await page.getByLabel("Why").fill("the tap was drawn open");
  await page.getByRole("button", { name: "It holds from now on" }).click();
  await page.getByRole("tab", { name: "Jobs 1" }).waitFor();
  await page.getByRole("tab", { name: "Rulings 2" }).click();
  await page.getByText("the tap was drawn open").waitFor();
  await person.accessible();

  await page.getByRole("tab", { name: "Save and print" }).click();
  const [csv] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "People, CSV" }).click()]);
  const lines = readFileSync(await csv.path(), "utf8").split("\r\n");
  assert.ok(lines.some((line) => line.startsWith(`"'=HYPERLINK(""x"")`)), lines.join("\n"));
  assert.match(lines[0], /,name,decision,ruling,ruled_by,ruled_on,ruled_why,marks_of_all,jobs_opened,jobs_asked$/);
  assert.ok(lines.some((line) => /^c-03,.*,passed,N\. Judge,\d{4}-\d\d-\d\d,heard on appeal,,1,$/.test(line)), lines.join("\n"));
  // What is printed here are the tables, not the buttons.
  await page.evaluate(() => { globalThis.print = () => {}; });
  await page.getByRole("button", { name: "Print", exact: true }).click();
  await page.emulateMedia({ media: "print" });
  await page.getByRole("heading", { name: /^Results, \d{4}-\d\d-\d\d$/ }).waitFor();
  for (const name of ["People and skills, a table", "Jobs, a table", "Not accepted, a table", "Rulings, a table"]) await page.getByRole("region", { name }).waitFor();
  assert.equal(await page.getByRole("button", { name: "People, CSV" }).isVisible(), false);
  await page.emulateMedia({ media: "screen" });
  const [json] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Everything, JSON" }).click()]);
  const all = JSON.parse(readFileSync(await json.path(), "utf8"));
  assert.equal(all.rulings.length, 2);
  assert.equal(all.refused.length, 2);
  assert.ok(all.cohort.people.every((one) => one.target_minutes > 0 && one.time_to_target > 0 && one.target_cost > 0));
  for (const tab of ["Safety", "Faults confused"]) {
    await page.getByRole("tab", { name: tab }).click();
    await person.accessible();
  }

  // Rulings outlive the page, and are offered, not imposed, to what is dropped next.
  await page.reload();
  await page.getByText("2 rulings made earlier in this browser").waitFor();
  await person.accessible();
  await page.getByRole("button", { name: "Forget them" }).click();
  await page.waitForTimeout(500);
  await page.reload();
  await page.getByRole("heading", { name: "Results" }).waitFor();
  assert.equal(await page.getByText("made earlier in this browser").count(), 0);
}

/** Takes results in and opens a person's form. */
async function ruling(page, files, name) {
  await page.getByLabel("Open files").setInputFiles(files);
  await page.getByText(`Records checked: ${files.length}; files: ${files.length}.`).waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name, exact: true }).click();
  await page.getByRole("button", { name: "Override the decision" }).click();
}

export async function a_ruling_typed_by_half_outlives_another_person_and_a_reload({ visit }) {
  if (!existsSync(program)) return;
  const files = played();
  const person = await visit();
  const { page } = person;
  await person.go("#/cohort");
  await ruling(page, files, "c-03");
  await page.getByLabel("What holds").selectOption("passed");
  await page.getByLabel("Who rules").fill("N. Judge");
  await page.getByLabel("Why").fill("heard on");
  await page.getByText("Rulings are kept in this browser").waitFor();
  await page.getByRole("button", { name: "Back to all" }).click();
  const left = page.getByRole("region", { name: "Rulings typed by half" });
  await left.getByText("c-03").waitFor();
  await person.accessible();
  await page.getByRole("button", { name: hostile, exact: true }).click();
  assert.equal(await page.getByLabel("Who rules").count(), 0, "another person has no form");
  await page.getByRole("button", { name: "Back to all" }).click();
  await page.getByRole("button", { name: "c-03", exact: true }).click();
  assert.equal(await page.getByLabel("Why").inputValue(), "heard on");

  await page.reload();
  await left.getByText("c-03").waitFor();
  await page.getByLabel("Open files").setInputFiles(files);
  await page.getByText(`Records checked: ${files.length};`).waitFor({ timeout: 60_000 });
  await page.getByRole("button", { name: "c-03", exact: true }).click();
  assert.equal(await page.getByLabel("What holds").inputValue(), "passed");
  assert.equal(await page.getByLabel("Who rules").inputValue(), "N. Judge");
  await page.getByLabel("Why").fill("heard on appeal");
  await page.getByRole("button", { name: "It holds from now on" }).click();
  await page.getByRole("button", { name: "Back to all" }).click();
  assert.equal(await left.count(), 0);
  await page.getByRole("tab", { name: "Rulings 1" }).click();
  await page.getByRole("cell", { name: "practice", exact: true }).waitFor();
}

export async function two_tabs_that_rule_both_keep_both_rulings({ visit }) {
  if (!existsSync(program)) return;
  const files = played();
  const person = await visit();
  const { page } = person;
  const second = await person.context.newPage();
  person.watch(second);
  await second.goto(`${person.url}#/cohort`);
  await person.go("#/cohort");
  for (const [tab, name] of [[page, "c-03"], [second, hostile]]) {
    await tab.bringToFront();
    await ruling(tab, files, name);
    await tab.getByLabel("What holds").selectOption("not yet");
    await tab.getByLabel("Who rules").fill("N. Judge");
    await tab.getByLabel("Why").fill(`of ${name.length}`);
    await tab.getByRole("button", { name: "It holds from now on" }).click();
    await tab.getByRole("button", { name: "Back to all" }).click();
    await tab.getByRole("tab", { name: "Rulings 1" }).waitFor();
  }
  // The first tab is offered what the second has ruled, and nothing is in force unasked.
  await page.bringToFront();
  await page.getByText("One ruling made earlier in this browser").waitFor();
  await second.close();
  await page.reload();
  await page.getByText("2 rulings made earlier in this browser").waitFor();
}

/** Runs ahead of the page: the browser keeps nothing. */
const keepsNothing = () => {
  Object.defineProperty(globalThis, "indexedDB", { get: () => null });
  for (const store of ["localStorage", "sessionStorage"]) {
    Object.defineProperty(globalThis, store, {
      get: () => {
        throw new DOMException("no", "SecurityError");
      },
    });
  }
};

export async function where_nothing_can_be_kept_the_form_of_a_ruling_says_so_and_saves_a_file({ visit }) {
  if (!existsSync(program)) return;
  const person = await visit({ before: keepsNothing });
  const { page } = person;
  await person.go("#/cohort");
  await ruling(page, played(), "c-03");
  await page.getByText("This browser does not let the page keep rulings").waitFor();
  assert.equal(await page.getByText("Rulings are kept in this browser").count(), 0);
  await page.getByLabel("What holds").selectOption("passed");
  await page.getByLabel("Who rules").fill("N. Judge");
  await page.getByLabel("Why").fill("heard on appeal");
  await person.accessible();
  const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "It holds; save as a file" }).click()]);
  const [one] = JSON.parse(readFileSync(await saved.path(), "utf8"));
  assert.deepEqual([one.about.candidate, one.holds, one.assessment], ["c-03", "passed", ""]);
  const notice = page.getByRole("alert", { name: "Rulings not kept" });
  await notice.getByText("they are gone when this page is closed").waitFor();
  await person.accessible();
}

export async function who_is_left_with_nothing_by_a_voided_job_stays_and_a_ruling_taken_back_is_told({ visit }) {
  if (!existsSync(program)) return;
  const person = await visit();
  const { page } = person;
  await person.go("#/cohort");
  const one = played().filter((file) => file.name === "no_water_2.json");
  const picture = { name: "pic.json", mimeType: "application/json", buffer: Buffer.from("\x89PNG\r\n\x1a\nand\nmany\nlines", "latin1") };
  const cut = { ...one[0], name: "cut.json", buffer: one[0].buffer.subarray(0, 1200) };
  await page.getByLabel("Open files").setInputFiles([...one, picture, cut]);
  // A row a file, in plain words.
  await page.getByRole("tab", { name: "Not accepted 2" }).click({ timeout: 60_000 });
  await page.getByText("pic.json: it is a picture.").waitFor();
  await page.getByText(/^No whole record: damaged, cut off or of another kind\./).waitFor();
  await page.getByRole("tab", { name: "Jobs 1" }).click();
  await page.getByRole("button", { name: "Void No water comes in for everybody" }).click();
  await page.getByLabel("Who rules").fill("N. Judge");
  await page.getByLabel("Why").fill("wrong tap");
  await page.getByRole("button", { name: "It holds from now on" }).click();
  await page.getByRole("tab", { name: "People", exact: true }).click();
  await page.getByText("Of these people nothing counts").waitFor();
  await person.accessible();
  await page.getByRole("button", { name: "c-03", exact: true }).click();
  await page.getByText("the job was voided: it counts for nobody").waitFor();
  await page.getByRole("button", { name: "Back to all" }).click();
  await page.getByRole("tab", { name: "Rulings 1" }).click();
  // Not by a double click.
  await page.getByRole("button", { name: "Take back the ruling about Job no_water" }).dblclick();
  await page.getByRole("cell", { name: "wrong tap" }).waitFor();
  const yes = page.getByRole("button", { name: "Yes, take it back" });
  // Two clicks in one frame ask once, two clicks one after the other ask and take that back.
  if (!(await yes.isVisible())) await page.getByRole("button", { name: "Take back the ruling about Job no_water" }).click();
  await yes.click();
  await page.getByText(/^Taken back: Job no_water, void, by N\. Judge, \d{4}-\d\d-\d\d: wrong tap$/).waitFor();
  await page.getByRole("tab", { name: "People 1" }).waitFor();
}

export async function a_ruling_of_another_assessment_is_shown_as_such_and_not_applied({ visit }) {
  if (!existsSync(program)) return;
  const files = played();
  const of = (assessment) => ({ about: { job: "no_water" }, holds: "void", by: "N. Judge", day: "2031-03-04", why: "wrong tap", ...assessment });
  const rulings = (all) => ({ name: "rulings.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(all)) });
  const person = await visit();
  const { page } = person;
  await person.go("#/cohort");
  await page.getByLabel("Open files").setInputFiles([...files, rulings([of({ assessment: "spring" })])]);
  await page.getByRole("tab", { name: "Rulings 1" }).click({ timeout: 60_000 });
  await page.getByText("spring: not applied, no result here is of it").waitFor();
  await page.getByRole("tab", { name: "Jobs 2" }).waitFor();
  // One that an earlier version wrote names none, and holds.
  await page.getByLabel("Open files").setInputFiles([rulings([of({})])]);
  await page.getByRole("tab", { name: "Jobs 1" }).waitFor();
  await page.getByText("any: it names none").waitFor();
}
