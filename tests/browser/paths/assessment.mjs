// An assessment from the instructor's form to the candidate's sealed file: made, given out, sat, left
// and found again, handed in, and checked by the program on the command line of the tests.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { MouseHands } from "../hands.mjs";
import { sizes } from "../driver.mjs";

/** Makes an assessment of two jobs of the first level; gives its file, link and slips. */
async function made(visit, { aids = [], candidates = "c-1\nc-2, 30", months = "", minutes = "60" } = {}) {
  const person = await visit();
  const { page } = person;
  await person.go("#/assessments");
  await page.getByRole("button", { name: "Make a new one" }).click();
  const todo = page.getByRole("region", { name: "Still to do" });
  assert.match(await todo.innerText(), /Title: must not be empty/);
  await todo.getByRole("button", { name: "Title" }).click();
  assert.equal(await page.evaluate(() => document.activeElement?.id), "field-title");
  await page.getByLabel("Title").fill("Autumn <b>&");
  for (const row of [3, 2]) await page.getByRole("button", { name: `Take off row ${row}` }).click();
  await page.getByLabel("Time for all jobs").fill(minutes);
  for (const aid of aids) await page.getByRole("checkbox", { name: aid }).uncheck();
  await page.getByLabel("Results are erased after").fill(months);
  await page.getByLabel("Candidates", { exact: false }).last().fill(candidates);
  const rows = page.getByRole("region", { name: "Slips" }).locator("tbody tr");
  await rows.first().waitFor();
  const slips = await rows.evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent.trim())));
  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the file" }).click()]);
  const [key] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the key" }).click()]);
  const link = await page.getByLabel(/^Link/).inputValue();
  return { person, slips, file: readFileSync(await file.path(), "utf8"), key: readFileSync(await key.path(), "utf8"), link };
}

/** Fills the start form in and begins. */
async function begun(person, [candidate, code, letters], word = "lake") {
  const { page } = person;
  await page.getByLabel("Your number").fill(candidate);
  await page.getByLabel("Start code").fill(code.toLowerCase());
  await page.getByLabel("The four letters").fill(letters);
  await page.getByLabel("Word for today").fill(word);
  await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await page.getByRole("button", { name: /^Begin/ }).click();
}

async function handed_over(person, place) {
  const { page } = person;
  await page.getByRole("link", { name: `Job ${place}`, exact: true }).click();
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  const hands = new MouseHands(person);
  await hands.take("tap");
  await hands.act("look");
  await hands.follow("Finish");
  await hands.tick("There is no fault in the machine");
  await hands.press("State it and hand over");
  await page.waitForURL(/#\/sitting$/);
}

export async function an_assessment_is_made_sat_reloaded_and_handed_in_sealed({ visit }) {
  const { slips, link, person: teacher } = await made(visit);
  await teacher.accessible();
  assert.equal(slips.length, 2);
  // On paper there is a whole slip for each, and nothing else.
  await teacher.page.emulateMedia({ media: "print" });
  const paper = await teacher.page.locator("main").innerText();
  assert.equal(paper.match(/Autumn <b>&/g).length, 2, paper);
  assert.ok(paper.includes(slips[1][1]) && paper.includes("word for today"), paper);
  assert.ok(!/Candidates|Save|Link/.test(paper), paper);
  await teacher.page.emulateMedia({ media: null });
  const person = await visit();
  const { page } = person;
  await person.go(link.slice(link.indexOf("#")));
  await page.getByRole("heading", { name: "Autumn <b>&" }).waitFor();
  await person.accessible();

  // Somebody else's slip is found before the clock starts.
  await begun(person, ["c-2", slips[0][1], slips[0][2]]);
  await page.getByText("The letters do not go with the start code and the number").waitFor();
  await begun(person, slips[0]);
  await page.getByText(/5\d min left/).waitFor();
  await person.accessible();
  await person.fits();

  // Other screens are shut while it runs; so is the debrief.
  for (const shut of ["#/jobs", "#/me", "#/bench/no_water", "#/readings", "#/debrief/sit-1"]) {
    await person.go(shut);
    await page.getByText("Not during the assessment").waitFor();
  }
  await person.go("#/sitting");
  await page.getByRole("link", { name: "Job 1", exact: true }).click();
  await page.getByRole("heading", { name: /^Job 1 of 2 · / }).waitFor();
  assert.equal(await page.locator(".bench__hint").count(), 0, "no hints");
  const hands = new MouseHands(person);
  await hands.take("tap");
  await hands.act("look");
  const notebook = await page.getByRole("tab", { name: /Notebook/ }).innerText();
  await page.waitForTimeout(500);
  await page.reload();
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  assert.equal(await page.getByRole("tab", { name: /Notebook/ }).innerText(), notebook);
  await hands.follow("Finish");
  assert.equal(await page.getByText("A look round").count(), 0);
  await hands.tick("There is no fault in the machine");
  await hands.press("State it and hand over");
  await page.waitForURL(/#\/sitting$/);
  await handed_over(person, 2);
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: "Yes, hand in" }).click();
  await page.getByRole("heading", { name: /^Result: Autumn/ }).waitFor();
  await page.getByText("sealed with the start code").waitFor();
  await page.getByText(/Reliability of 2 jobs: at least 0\.26/).waitFor();
  // Each point that is missing has its step and its reason, of both jobs.
  await page.getByRole("heading", { name: "Where points were lost" }).waitFor();
  for (const place of [1, 2]) {
    const lost = page.getByRole("region", { name: `Job ${place}: where points were lost, a table` });
    await lost.waitFor({ timeout: 120_000 });
    await lost.getByRole("row", { name: /^Diagnosis −\d/ }).first().waitFor();
  }
  await person.accessible();
  await person.fits();
  await person.fits_on_a_telephone();
  const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the file" }).click()]);
  const lines = readFileSync(await saved.path(), "utf8").trim().split("\n").map((line) => JSON.parse(line));
  assert.deepEqual(lines.map((record) => [record.body.candidate, record.body.sitting.place, record.body.sitting.release]), [["c-1", 1, "lake"], ["c-1", 2, "lake"]]);
  assert.equal(lines[1].body.previous, lines[0].link);
  assert.ok(lines.every((record) => record.seal && record.body.notebook.length > 0));
  await page.reload();
  await page.getByRole("heading", { name: /^Result: Autumn/ }).waitFor();
}

export async function what_was_given_out_stays_when_its_form_is_changed_and_what_is_forgotten_comes_back({ visit }) {
  const { person } = await made(visit);
  const { page } = person;
  const out = page.getByText(/^This has been given out/);
  await out.waitFor();
  await person.accessible();
  await page.getByLabel("Border").fill("7");
  await page.getByText(/This is a new one/).waitFor();
  assert.equal(await out.count(), 0);
  const back = page.getByRole("button", { name: "All assessments" });
  await back.click();
  const list = page.getByRole("region", { name: "Made here" });
  await list.getByText(/^autumn_b · .* · given out$/).waitFor();
  const second = list.getByText(/^autumn_b_2 · /);
  await second.waitFor();
  await list.getByRole("button", { name: /^Forget/ }).last().click();
  await page.getByText("“Autumn <b>&” is forgotten.").waitFor();
  await second.waitFor({ state: "detached" });
  await person.accessible();
  await page.getByRole("button", { name: "Take it back" }).click();
  await second.waitFor();
  // A title that is typed letter by letter leaves one name behind.
  await page.getByRole("button", { name: "Make a new one" }).click();
  await page.getByLabel("Title").pressSequentially("Win");
  await page.waitForTimeout(300);
  await back.click();
  await list.getByText(/^win · /).waitFor();
  assert.equal(await list.getByRole("listitem").count(), 3);
  // The way to the cut is tried out and gone back on; what was typed is still there.
  await list.getByRole("button", { name: "Win", exact: true }).click();
  await page.getByLabel("Marks to pass").fill("75");
  await page.getByRole("radio", { name: /^from judges/ }).check();
  await page.getByRole("radio", { name: /^a fixed number/ }).check();
  assert.equal(await page.getByLabel("Marks to pass").inputValue(), "75");
  // So is the assessment itself, where the page is loaded again.
  await page.waitForTimeout(300);
  await page.reload();
  await person.drawn();
  await page.getByLabel("Marks to pass").waitFor();
  assert.equal(await page.getByLabel("Title").inputValue(), "Win");
}

export async function a_practice_sitting_says_that_it_proves_nothing_and_leaving_is_noted({ visit }) {
  const { file } = await made(visit, { aids: ["the wiring diagram", "the data sheet", "the handbook"] });
  // Another zone and language of the browser change nothing that is recorded.
  const person = await visit({ timezoneId: "Pacific/Kiritimati", locale: "ar" });
  const { page } = person;
  await person.go("#/assessment");
  await page.getByLabel("Open files").setInputFiles({ name: "autumn.json", mimeType: "application/json", buffer: Buffer.from(file) });
  await page.getByLabel("Your number").fill("\u202Eشادي <img src=x>");
  await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await page.getByRole("button", { name: "Begin as practice" }).click();
  await page.getByRole("link", { name: "Job 1", exact: true }).click();
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  assert.equal(await page.getByRole("tab", { name: "wiring", exact: true }).count(), 0);
  await page.keyboard.press("4");
  assert.equal(await page.getByRole("tab", { name: "outside", exact: true }).getAttribute("aria-selected"), "true");
  // Another program in front: the page is hidden, then seen again.
  const seen = (state) => page.evaluate((to) => {
    Object.defineProperty(document, "visibilityState", { value: to, configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
  }, state);
  await seen("hidden");
  await page.waitForTimeout(2200);
  await seen("visible");
  const hands = new MouseHands(person);
  await hands.take("tap");
  await hands.act("look");
  await person.go("#/handbook");
  await page.getByText("Not during the assessment").waitFor();
  await person.go("#/sitting");
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: "Yes, hand in with 2 jobs open" }).click();
  await page.getByText("practice: not sealed, proves nothing to others").waitFor();
  const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the file" }).click()]);
  const [record] = readFileSync(await saved.path(), "utf8").trim().split("\n").map((line) => JSON.parse(line));
  assert.equal(record.seal, undefined);
  assert.equal(record.body.away_s.length, 1);
  assert.ok(record.body.away_s[0][1] - record.body.away_s[0][0] >= 2);
  assert.equal(record.body.result.ending, "open");
  assert.match(record.body.started, /Z$/);
  assert.ok(Math.abs(Date.parse(record.body.started) - Date.now()) < 120_000);
}

/** A practice sitting in one tab, and a second tab that was told so. */
async function twoTabs(visit) {
  const { file } = await made(visit);
  const person = await visit();
  const { page } = person;
  await person.go("#/assessment");
  await page.getByLabel("Open files").setInputFiles({ name: "autumn.json", mimeType: "application/json", buffer: Buffer.from(file) });
  await page.getByLabel("Your number").fill("c-7");
  await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await page.getByRole("button", { name: "Begin as practice" }).click();
  await page.getByRole("button", { name: "Hand in" }).waitFor();
  const second = await person.context.newPage();
  person.watch(second);
  await second.goto(`${person.url}#/sitting`);
  await second.getByRole("heading", { name: "This assessment is open in another tab" }).waitFor();
  return { person, page, second };
}

export async function a_second_tab_is_told_that_the_assessment_is_open_elsewhere_and_hands_nothing_in({ visit }) {
  const { person, page, second } = await twoTabs(visit);
  assert.equal(await second.getByRole("button", { name: /hand in/i }).count(), 0);
  // Nor is there a way round by a job's own address.
  await second.goto(`${person.url}#/bench/sit-1`);
  await second.getByRole("heading", { name: "This assessment is open in another tab" }).waitFor();
  assert.equal(await second.getByRole("region", { name: "In hand", exact: true }).count(), 0);

  // The first goes on as if there were no second, and hands in.
  await page.bringToFront();
  const hands = new MouseHands(person);
  await page.getByRole("link", { name: "Job 1", exact: true }).click();
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await hands.take("tap");
  await hands.act("look");
  await person.go("#/sitting");
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: "Yes, hand in with 2 jobs open" }).click();
  await page.getByRole("heading", { name: /^Result: Autumn/ }).waitFor();
  await second.goto(`${person.url}#/sitting`);
  await second.getByRole("button", { name: "Load this page again" }).click();
  await second.getByRole("heading", { name: /^Result: Autumn/ }).waitFor();
}

export async function when_the_first_tab_is_closed_the_second_goes_on({ visit }) {
  const { page, second } = await twoTabs(visit);
  await page.close();
  await second.getByRole("button", { name: "Load this page again" }).click();
  await second.getByRole("button", { name: "Hand in" }).waitFor();
}

/** The pause codes of the assessment that is open, a pair a pause: to stop, to go on. */
async function pauseCodes({ page }) {
  await page.getByText("Show the codes").click();
  const rows = page.getByRole("region", { name: "Pause codes, a table" }).locator("tbody tr");
  return rows.evaluateAll((all) => all.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent.trim())));
}

export async function the_instructor_stops_the_clock_for_the_room_by_a_code_that_is_read_out({ visit }) {
  // So short that the time left is told in seconds.
  const { person: teacher, slips, link, file, key } = await made(visit, { minutes: "2" });
  const codes = await pauseCodes(teacher);
  assert.equal(codes.length, 10);
  await teacher.accessible();
  await teacher.fits();
  const person = await visit();
  const { page } = person;
  await person.go(link.slice(link.indexOf("#")));
  await page.getByText("Your instructor can stop the clock for the whole room").waitFor();
  await begun(person, slips[0]);
  await page.getByText("Pause of the whole room").click();
  const code = page.getByLabel("Pause code");
  await code.fill("lunch now");
  await page.getByRole("button", { name: "Stop the clock for the room" }).click();
  await page.getByText("This is no code of this assessment").waitFor();
  await person.accessible();
  await code.fill(codes[0][0].toLowerCase());
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "The room pauses: the clock stands" }).waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.id), "room-code");
  await person.accessible();
  const left = () => page.getByRole("timer").innerText();
  const before = await left();
  assert.match(before, /^\d+ s left$/);
  assert.equal(await page.getByRole("link", { name: "Job 1", exact: true }).count(), 0);
  await person.go("#/bench/sit-1");
  await page.getByRole("heading", { name: "The clock stands" }).waitFor();
  // Over a reload, too.
  await page.reload();
  await person.go("#/sitting");
  await page.waitForTimeout(2500);
  assert.equal(await left(), before);
  await code.fill(codes[0][0]);
  await page.keyboard.press("Enter");
  await page.getByText("This code was used already").waitFor();
  await code.fill(codes[0][1]);
  await page.getByRole("button", { name: "Go on: the clock starts again" }).click();
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
  await handed_over(person, 1);
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: "Yes, hand in with one job open" }).click();
  const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the file" }).click()]);
  const text = readFileSync(await saved.path(), "utf8");
  const [{ body }] = text.trim().split("\n").map((line) => JSON.parse(line));
  assert.deepEqual(body.pauses.map((pause) => [pause.stop, pause.go]), [codes[0]]);
  assert.ok(Date.parse(body.pauses[0].to) - Date.parse(body.pauses[0].from) >= 2500);

  // Whoever reviews sees it.
  const desk = await visit();
  await desk.go("#/cohort");
  const files = { "autumn.json": file, "autumn.key": key, "c-1.jsonl": text };
  await desk.page.getByLabel("Open files").setInputFiles(Object.entries(files).map(([name, text]) => ({ name, mimeType: "application/json", buffer: Buffer.from(text) })));
  await desk.page.getByText("Records checked: 1; files: 3.").waitFor({ timeout: 60_000 });
  await desk.page.getByRole("button", { name: "c-1", exact: true }).click();
  await desk.page.getByRole("region", { name: "Pauses, a table" }).getByText("the assessment’s").waitFor();
  await desk.accessible();
}

/** Runs ahead of the page: it is seventy days later. */
const later = () => {
  const real = Date.now;
  Date.now = () => real() + 70 * 86_400_000;
};

export async function results_past_their_time_are_told_and_erased_at_the_desk_and_the_others_stay_whole({ visit }) {
  const { slips, link, file, key } = await made(visit, { months: "2" });
  const texts = [];
  for (const slip of slips) {
    const person = await visit();
    const { page } = person;
    await person.go(link.slice(link.indexOf("#")));
    await page.getByText("is to erase them 2 months after the day they began").waitFor();
    await begun(person, slip);
    for (const place of [1, 2]) await handed_over(person, place);
    await page.getByRole("button", { name: "Hand in" }).click();
    await page.getByRole("button", { name: "Yes, hand in" }).click();
    const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the file" }).click()]);
    texts.push(readFileSync(await saved.path(), "utf8"));
  }
  const all = [["autumn.json", file], ["autumn.key", key], ["c-1.jsonl", texts[0]], ["c-2.jsonl", texts[1]]];
  const payload = (pairs) => pairs.map(([name, text]) => ({ name, mimeType: "application/json", buffer: Buffer.from(text) }));
  const now = await visit();
  await now.go("#/cohort");
  await now.page.getByLabel("Open files").setInputFiles(payload(all));
  await now.page.getByText("Records checked: 4; files: 4.").waitFor({ timeout: 120_000 });
  await now.page.getByRole("tab", { name: "Erase", exact: true }).click();
  await now.page.getByText("No result here is past the time").waitFor();
  await now.accessible();

  const person = await visit({ before: later });
  const { page } = person;
  await person.go("#/cohort");
  await page.getByLabel("Open files").setInputFiles(payload(all));
  await page.getByText("Records checked: 4; files: 4.").waitFor({ timeout: 120_000 });
  await page.getByRole("tab", { name: "Erase, 2 past their time" }).click();
  await person.accessible();
  await person.fits();
  // One person alone: the others stay.
  await page.getByLabel("Whose results").selectOption("c-1");
  await page.getByRole("button", { name: "Erase everything of c-1" }).click();
  await page.getByRole("button", { name: "Yes, erase everything of c-1" }).click();
  await page.getByText("2 records are erased here").waitFor();
  await page.getByRole("tab", { name: "People 1" }).waitFor();
  const [saved] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save what is left" }).click()]);
  assert.match(saved.suggestedFilename(), /^erased_[0-9a-f]{12}\.jsonl$/);
  const left = readFileSync(await saved.path(), "utf8");
  assert.ok(!left.includes("c-1") && left.trim().split("\n").every((line) => JSON.parse(line).format === "tubwright-erased-1"));
  // Taken in anew, what is left takes its place in the row and breaks nothing.
  const again = await visit();
  await again.go("#/cohort");
  await again.page.getByLabel("Open files").setInputFiles(payload([...all.slice(0, 2), ["left.jsonl", left], all[3]]));
  await again.page.getByText("Records checked: 4; files: 4.").waitFor({ timeout: 120_000 });
  await again.page.getByRole("tab", { name: "Not accepted 2" }).click();
  await again.page.getByText("its place in the row is kept").first().waitFor();
  assert.equal(await again.page.getByText("Rows that are not whole").count(), 0);
}

export async function on_a_telephone_the_forms_fit({ visit }) {
  const person = await visit({ size: sizes.telephone });
  for (const at of ["#/assessment", "#/assessments", "#/observer", "#/sitting", "#/cohort"]) {
    await person.go(at);
    await person.fits();
    await person.accessible();
  }
}
