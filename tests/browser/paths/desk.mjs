// The instructor's desk: a story becomes a job, and the job reaches somebody else.
import assert from "node:assert/strict";
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { shutTap } from "../acts.mjs";
import { sizes } from "../driver.mjs";
import { KeyboardHands, MouseHands } from "../hands.mjs";

/** A field of the form by the start of its label. */
const field = (page, name) => page.getByRole("textbox", { name: new RegExp(`^${name}`) });

/** Writes a job by clicks, as an instructor does who knows what is wrong. */
async function write(person) {
  const { page } = person;
  await page.getByRole("link", { name: "Desk" }).click();
  await page.getByRole("button", { name: "Write a new job" }).click();
  await field(page, "Title").fill("No water since the painters");
  await page.getByLabel("Add a fault").selectOption("tap_closed");
  await page.getByLabel("The tap is open").uncheck();
  await field(page, "Name").fill("Mrs Varga");
  await field(page, "Home").fill("first floor");
  await page.getByRole("button", { name: "Use as the complaint" }).click();
  await page.getByText("Everything that a job needs is there.").waitFor();
}

const link = (person) => person.page.getByLabel(/^Link, /).inputValue();

export async function a_job_written_by_clicks_is_shared_by_link_and_solved_in_another_browser_offline({ visit, pullCable }) {
  const instructor = await visit();
  await write(instructor);
  await instructor.accessible();
  assert.match(await field(instructor.page, "Complaint").inputValue(), /no water comes/);
  const address = await link(instructor);
  assert.ok(!/tap/.test(address), "the link shows the answer");

  const apprentice = await visit();
  await apprentice.page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 20_000 });
  await pullCable();
  await apprentice.page.goto(address);
  await apprentice.page.getByRole("heading", { name: "A job for you" }).waitFor();
  await apprentice.accessible();
  await apprentice.page.getByRole("button", { name: "Start this job" }).click();
  await apprentice.page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await new MouseHands(apprentice).work(shutTap);
  await apprentice.page.waitForURL(/#\/debrief\//);
  await apprentice.page.getByText("You said").waitFor();
  assert.match(await apprentice.page.locator("main").innerText(), /Repaired · safe/);
}

export async function nothing_is_lost_on_reload_and_every_change_can_be_undone({ visit }) {
  const person = await visit();
  await write(person);
  await field(person.page, "Water pressure").fill("0,5");
  await field(person.page, "Water pressure").blur();
  await person.page.waitForTimeout(300);
  await person.page.reload();
  await person.drawn();
  const title = field(person.page, "Title");
  await title.waitFor();
  assert.equal(await title.inputValue(), "No water since the painters");
  assert.equal(await field(person.page, "Water pressure").inputValue(), "0.5");
  await field(person.page, "Dry washing in the basket").fill("90");
  await person.page.getByText("must lie between 0 and 20").first().waitFor();
  assert.ok(await person.page.getByRole("button", { name: "Try it" }).isDisabled());
  await person.page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await field(person.page, "Dry washing in the basket").inputValue(), "3");
  await person.page.getByRole("button", { name: "Redo" }).click();
  assert.equal(await field(person.page, "Dry washing in the basket").inputValue(), "90");
}

export async function what_is_wrong_is_named_as_on_the_form_and_leads_to_its_field({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  const checks = page.getByRole("region", { name: "Checks" });
  const leads = async (label, words) => {
    const line = checks.getByRole("listitem").filter({ hasText: words });
    await line.waitFor();
    await line.getByRole("button", { name: label }).click();
    return page.evaluate(() => document.activeElement?.id ?? "");
  };
  await field(page, "Slope of the floor").fill("50");
  assert.equal(await leads(/^Slope of the floor$/, "must lie between 0 and 10 degrees"), "field-site-floor-tilt-deg");
  assert.equal(await checks.getByRole("listitem").count(), 1, "told once");
  await field(page, "Slope of the floor").fill("0");
  await field(page, "Severity").fill("3");
  assert.match(await leads(/^Severity \(/, "must lie between 0 and 1"), /^field-faults-0--severity$/);
  await field(page, "Severity").fill("1");
  await page.getByText("Answers to the technician’s questions").click();
  await page.locator("#field-customer-answers-since-0-").fill("");
  await page.getByText("Answers to the technician’s questions").click();
  assert.equal(await leads(/^Answer \(Since when/, "must not be empty"), "field-customer-answers-since-0-", "a folded field is unfolded");
  const told = await checks.innerText();
  assert.ok(!/[_`"]|site\.|customer\./.test(told), `inside words: ${told}`);
  await person.accessible();
}

export async function what_is_no_number_is_kept_as_typed_marked_and_mended({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  const checks = page.getByRole("region", { name: "Checks" });
  const pressure = field(page, "Water pressure");
  for (const typed of ["abc", "-", "1,5x"]) {
    await pressure.fill(typed);
    await pressure.blur();
    assert.equal(await pressure.inputValue(), typed, "the text stays");
    assert.equal(await pressure.getAttribute("aria-invalid"), "true");
    await page.locator("#field-site-water-mpa-error").getByText("a number is needed here").waitFor();
  }
  await checks.getByText(/^Water pressure: a number is needed here.*until then 0\.3 stays/).waitFor();
  assert.ok(await page.getByRole("button", { name: "Try it" }).isDisabled());
  await person.accessible();
  // Another field's change leaves it as it is, and so does its undoing.
  await field(page, "Dry washing in the basket").fill("4");
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await pressure.inputValue(), "1,5x");
  await pressure.fill("0,15");
  await pressure.blur();
  assert.equal(await pressure.inputValue(), "0.15");
  assert.equal(await pressure.getAttribute("aria-invalid"), null);
  await checks.getByText("Everything that a job needs is there.").waitFor();
  // Whole numbers and a landlord are taken, too.
  await field(page, "The maker pays for").fill("24");
  await page.getByLabel("A landlord pays").check();
  await checks.getByText("Everything that a job needs is there.").waitFor();
  assert.equal(await field(page, "The maker pays for").inputValue(), "24");
}

export async function a_pair_of_faults_is_chosen_by_what_is_wrong({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  const pairs = page.getByRole("group", { name: "Pairs that may come together" });
  const add = pairs.getByRole("button", { name: "Add the pair" });
  assert.ok(await add.isDisabled());
  await pairs.getByLabel("One fault").selectOption("capacitor_low");
  await pairs.getByLabel("The fault it may come with").selectOption("belt_off");
  await add.click();
  await pairs.getByText(/^the run capacitor has lost most of its value, and /).waitFor();
  assert.equal(await pairs.getByLabel("One fault").inputValue(), "");
  assert.ok(!/_/.test(await pairs.getByRole("list").innerText()));
  await person.accessible();
  await pairs.getByRole("button", { name: /^Take out: the run capacitor/ }).click();
  assert.equal(await pairs.getByRole("listitem").count(), 0);
}

export async function all_instruments_is_a_plain_choice({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  const bag = page.getByRole("group", { name: "Instruments in the bag" });
  const all = bag.getByRole("radio", { name: "All instruments" });
  const only = bag.getByRole("radio", { name: /^Only those/ });
  assert.ok(await all.isChecked());
  const ticks = bag.getByRole("checkbox");
  const count = await ticks.count();
  await ticks.first().uncheck();
  await ticks.last().uncheck();
  assert.ok(await only.isChecked());
  await all.check();
  for (let n = 0; n < count; n += 1) assert.ok(await ticks.nth(n).isChecked());
  // One step, and one step back.
  await page.getByRole("button", { name: "Undo" }).click();
  assert.ok(!(await ticks.first().isChecked()) && !(await ticks.last().isChecked()) && (await only.isChecked()));
  // By keys.
  await only.focus();
  await page.keyboard.press("ArrowUp");
  assert.ok((await all.isChecked()) && (await ticks.first().isChecked()));
}

export async function a_job_is_tried_on_the_bench_at_once_and_bench_and_debrief_lead_back_to_the_draft({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  const desk = page.url();
  const attempt = async () => {
    await page.getByRole("button", { name: "Try it" }).click();
    await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
    await page.getByText("Mrs Varga").first().waitFor();
  };
  const is_back = async () => {
    await page.waitForURL(desk);
    await field(page, "Title").waitFor();
    assert.equal(await field(page, "Title").inputValue(), "No water since the painters");
  };
  await attempt();
  const back = page.getByRole("link", { name: "Back to the draft" });
  await back.click();
  await is_back();
  await attempt();
  await back.waitFor();
  await person.fits();
  await new KeyboardHands(person).follow("Back to the draft");
  await is_back();
  await attempt();
  await new MouseHands(person).work(shutTap);
  await page.waitForURL(/#\/debrief\//);
  await back.waitFor();
  await person.accessible();
  await new KeyboardHands(person).follow("Back to the draft");
  await is_back();
  // A draft that is gone is no place to go back to.
  await attempt();
  const bench = page.url();
  await person.go("#/desk");
  // Forgotten by mistake, it comes back as it was.
  const forget = page.getByRole("button", { name: /^Forget the draft/ });
  await forget.click();
  await page.getByText("“No water since the painters” is forgotten.").waitFor();
  await person.accessible();
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: "No water since the painters" }).waitFor();
  await forget.click();
  await page.getByText("None yet.").waitFor();
  await page.goto(bench);
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await page.getByRole("link", { name: "Jobs" }).waitFor();
  assert.equal(await back.count(), 0);
}

export async function the_panel_judges_in_a_thread_shows_the_experts_way_and_lets_an_apprentice_be_watched({ visit }) {
  const shots = process.env.TUBWRIGHT_SHOTS;
  const person = await visit();
  const { page } = person;
  await write(person);
  await page.getByText(/^Judged: nothing to mend/).waitFor({ timeout: 240_000 });
  const panel = await page.getByRole("region", { name: "Fairness" }).innerText();
  assert.match(panel, /The customer would notice/);
  assert.match(panel, /The complaint fits/);
  assert.match(panel, /gets it right in \d+ minutes/);
  await page.getByText(/^The expert's way: cost/).click();
  await page.getByRole("cell", { name: "Open the tap" }).first().waitFor();
  await page.getByRole("button", { name: "Take this as the target" }).click();
  assert.match(await page.getByLabel(/^Target cost/).inputValue(), /^\d/);
  for (const who of ["unsure beginner", "in a hurry", "changes parts first", "avoids the meter", "step by step"]) {
    await page.getByRole("button", { name: `Watch one: ${who}` }).waitFor();
  }
  await person.fits();
  if (shots) await page.screenshot({ path: join(shots, "desk-judged.png"), fullPage: true });
  await person.accessible();
  await page.getByText(/“Watch one” shows the first of the 5/).waitFor();
  const row = page.getByRole("row", { name: /^in a hurry/ });
  const safety = await row.getByRole("cell").nth(3).innerText();
  assert.match(safety, /^(none broken|((critical|major|minor) in [1-5](, )?)+)$/);
  await page.getByRole("button", { name: "Watch one: in a hurry" }).click();
  await page.getByRole("heading", { name: /In a hurry · No water/ }).first().waitFor({ timeout: 120_000 });
  await page.getByRole("button", { name: "Back to the desk" }).click();
  assert.equal(await field(page, "Title").inputValue(), "No water since the painters");
  // What the machine's faults read like was worked out once, and the table of readings has it at once.
  await page.getByRole("link", { name: "What each reading tells apart on this machine" }).click();
  await page.getByRole("link", { name: "Save as CSV" }).waitFor({ timeout: 60_000 });
}

export async function a_complaint_that_does_not_fit_is_told_with_its_remedy({ visit }) {
  const person = await visit();
  const { page } = person;
  await write(person);
  await field(page, "Complaint").fill("It tingles when I touch it.");
  await page.getByText(/The complaint speaks of what the machine does not do/).waitFor({ timeout: 240_000 });
  await page.getByRole("button", { name: "Use as the complaint" }).click();
  await page.getByText(/^The complaint fits/).waitFor({ timeout: 240_000 });
}

export async function a_training_set_is_made_handed_to_a_class_and_opens_job_by_job({ visit }) {
  const instructor = await visit();
  await write(instructor);
  await instructor.page.getByRole("link", { name: "All drafts" }).click();
  await instructor.page.getByRole("link", { name: "Make a training set" }).click();
  await field(instructor.page, "Title").fill("Week one");
  await field(instructor.page, "The next job opens from").fill("40");
  const add = instructor.page.getByLabel("Add a job");
  await add.selectOption("says_later");
  await add.selectOption({ label: "No water since the painters" });
  await instructor.page.getByRole("button", { name: "Earlier: No water since the painters" }).click();
  await instructor.accessible();
  await instructor.page.reload();
  await instructor.drawn();
  assert.equal(await field(instructor.page, "Title").inputValue(), "Week one");
  const [download] = await Promise.all([
    instructor.page.waitForEvent("download"),
    instructor.page.getByRole("link", { name: "Set for trainees" }).click(),
  ]);
  const text = readFileSync(await download.path(), "utf8");
  assert.ok(!text.includes("tap_closed") && text.includes("tubwright-set-1"));
  const folder = mkdtempSync(join(tmpdir(), "set-"));
  writeFileSync(join(folder, "week.json"), text);
  writeFileSync(join(folder, "cut.json"), text.replace(/("own-[0-9a-f]+": "1.{60}).{30}/, "$1"));

  const apprentice = await visit();
  const { page } = apprentice;
  await page.getByLabel("Open files").setInputFiles([join(folder, "week.json"), join(folder, "cut.json")]);
  await page.getByText("Week one: 0 of 2 mastered").click();
  assert.match(await page.locator(".opened__told").innerText(), /cut\.json: sealed\.own-.*copy the whole/);
  await apprentice.accessible();
  const set = page.locator("details.jobs__set", { hasText: "Week one" });
  assert.equal(await set.getByRole("link").count(), 1, "only the first job is open");
  await set.getByRole("link", { name: "No water since the painters" }).click();
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await new MouseHands(apprentice).work(shutTap);
  await page.waitForURL(/#\/debrief\//);
  await page.getByText("You said").waitFor();
  await apprentice.go("#/jobs");
  await page.getByText("Week one: 1 of 2 mastered").click();
  assert.equal(await set.getByRole("link").count(), 2, "the next job has opened");
  await page.getByRole("button", { name: "Forget this set: Week one" }).click();
  await page.getByText(/^Week one/).waitFor({ state: "detached" });
}

export async function the_desk_fits_every_size_and_axe_finds_nothing({ visit }) {
  const shots = process.env.TUBWRIGHT_SHOTS;
  for (const [name, size] of Object.entries(sizes)) {
    const person = await visit({ size });
    await write(person);
    await person.page.getByText("Answers to the technician’s questions").click();
    await person.page.getByText("Code for a classroom screen").click();
    await person.fits();
    if (shots) await person.page.screenshot({ path: join(shots, `desk-${name}.png`), fullPage: true });
    await person.accessible();
  }
}

export async function files_are_opened_kept_told_apart_and_forgotten({ visit }) {
  const instructor = await visit();
  await write(instructor);
  const [download] = await Promise.all([
    instructor.page.waitForEvent("download"),
    instructor.page.getByRole("link", { name: "File for trainees" }).click(),
  ]);
  const copy = readFileSync(await download.path(), "utf8");
  assert.ok(!copy.includes("tap_closed") && copy.includes("tubwright-sealed-job-1"));
  const folder = mkdtempSync(join(tmpdir(), "jobs-"));
  writeFileSync(join(folder, "good.json"), copy);
  writeFileSync(join(folder, "bad.json"), copy.replace('"title": "', '"title": "<img src=x onerror=alert(1)>').slice(0, -40));
  writeFileSync(join(folder, "poem.json"), '{"format": "tubwright-job-1", "title": "<script>alert(1)</script>"}');

  const apprentice = await visit();
  const files = ["good.json", "bad.json", "poem.json"].map((name) => join(folder, name));
  await apprentice.page.getByLabel("Open files").setInputFiles(files);
  const listed = apprentice.page.getByRole("link", { name: "No water since the painters" });
  await listed.waitFor();
  const told = await apprentice.page.locator(".opened__told").innerText();
  assert.match(told, /bad\.json/);
  assert.match(told, /poem\.json: .*missing field `level`/);
  assert.match(told, /bad\.json: it is damaged or cut off at line \d+/);
  await apprentice.accessible();
  await apprentice.page.reload();
  await listed.waitFor();
  await apprentice.page.getByRole("button", { name: /^Forget/ }).click();
  await listed.waitFor({ state: "detached" });
}

/** A plain zip of files as they are; its sums are not looked at. */
function archive(files) {
  const local = [];
  const central = [];
  let at = 0;
  for (const [name, text] of Object.entries(files)) {
    const [word, body] = [Buffer.from(name), Buffer.from(text)];
    const head = Buffer.alloc(30);
    head.writeUInt32LE(0x04034b50, 0);
    head.writeUInt32LE(body.length, 18);
    head.writeUInt32LE(body.length, 22);
    head.writeUInt16LE(word.length, 26);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt32LE(body.length, 20);
    entry.writeUInt32LE(body.length, 24);
    entry.writeUInt16LE(word.length, 28);
    entry.writeUInt32LE(at, 42);
    local.push(head, word, body);
    central.push(entry, word);
    at += 30 + word.length + body.length;
  }
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(Object.keys(files).length, 10);
  end.writeUInt32LE(Buffer.concat(central).length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...local, ...central, end]);
}

export async function a_folder_an_archive_and_strange_files_are_all_answered_for({ visit }) {
  const instructor = await visit();
  await write(instructor);
  const [download] = await Promise.all([
    instructor.page.waitForEvent("download"),
    instructor.page.getByRole("link", { name: "File with the answer" }).click(),
  ]);
  const job = readFileSync(await download.path(), "utf8");
  const folder = join(mkdtempSync(join(tmpdir(), "jobs-")), "week");
  mkdirSync(join(folder, "more"), { recursive: true });
  writeFileSync(join(folder, "one.json"), job);
  writeFileSync(join(folder, "more", "two.json"), job.replace("No water since the painters", "Dry since Monday"));
  writeFileSync(join(folder, "plan.png"), Buffer.from("89504e470d0a1a0a0000", "hex"));
  writeFileSync(join(folder, "empty.json"), "");
  writeFileSync(join(folder, "noise.bin"), Buffer.from([0, 159, 146, 150, 255]));
  writeFileSync(join(folder, "list.txt"), "Bring the ladder.");
  writeFileSync(join(folder, "song.json"), JSON.stringify({ tempo: 120, notes: [1, 2] }));
  writeFileSync(join(folder, "all.zip"), archive({ "three.json": job.replace("No water since the painters", "Third one"), "a/sheet.pdf": "%PDF-1.7" }));

  const strange = [
    /plan\.png is no job, set or assessment of this workshop: it is a picture/,
    /empty\.json is no job, .*: it is empty/,
    /noise\.bin is no job, .*: its bytes are no text/,
    /list\.txt is no job, .*: it is a text of another kind/,
    /song\.json is no job, .*“format”/,
    /all\.zip\/a\/sheet\.pdf is no job, .*PDF/,
  ];
  const apprentice = await visit();
  for (const [at, heading, opened] of [["#/jobs", "Jobs", "is on the list"], ["#/desk", "Desk", "is a draft now"]]) {
    await apprentice.go(at);
    await apprentice.page.getByRole("heading", { name: heading, level: 1 }).waitFor();
    await apprentice.page.getByLabel("Open a folder").setInputFiles(folder);
    await apprentice.page.getByText("Passed over: 6").waitFor();
    const told = await apprentice.page.locator(".opened__told").innerText();
    for (const words of strange) assert.match(told, words);
    for (const title of ["No water since the painters", "Dry since Monday", "Third one"]) assert.ok(told.includes(`“${title}” ${opened}`), told);
    assert.ok(!/tempo|notes/.test(told), "another program's fields are not listed");
    await apprentice.accessible();
  }
  // Dropped beside the marked place, the page stays and answers all the same.
  await apprentice.go("#/jobs");
  await apprentice.page.getByRole("heading", { name: "Jobs", level: 1 }).waitFor();
  const transfer = await apprentice.page.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], "dropped.json"));
    transfer.items.add(new File([new Uint8Array([255, 216, 255, 224])], "photo.jpg"));
    return transfer;
  }, job);
  await apprentice.page.locator("h1").first().dispatchEvent("drop", { dataTransfer: transfer });
  await apprentice.page.getByText("Passed over: 1").waitFor();
  const told = await apprentice.page.locator(".opened__told").innerText();
  assert.match(told, /dropped\.json: “No water since the painters” is on the list/);
  assert.match(told, /photo\.jpg is no job, .*picture/);
}

export async function undo_and_redo_by_keys_are_the_drafts_own({ visit }) {
  const person = await visit();
  const { page } = person;
  await person.go("#/desk");
  await page.getByRole("button", { name: "Write a new job" }).click();
  const home = field(page, "Home");
  await home.waitFor();
  await home.fill("2nd floor");
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Redo" }).click();
  await home.focus();
  await page.keyboard.press("Control+z");
  assert.notEqual(await home.inputValue(), "2nd floor");
  await page.keyboard.press("Control+y");
  assert.equal(await home.inputValue(), "2nd floor");
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+Shift+Z");
  assert.equal(await home.inputValue(), "2nd floor");
}
