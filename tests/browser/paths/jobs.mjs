// The opening job from the list to the debrief, once by mouse, once by keyboard alone, once on a telephone.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { KeyboardHands, MouseHands } from "../hands.mjs";

const look = [
  ["press", "When in the wash does it happen?"],
  ["take", "tap"],
  ["act", "look"],
  // A key of the panel is pressed when it is taken; the self check takes a few seconds.
  ["take", "on/off switch"],
  ["press", "it does something else"],
  ["take", "start and pause key"],
  ["press", "a minute has passed"],
];

const cure = [
  ["take", "tap"],
  ["act", "open the tap"],
  ["press", "a minute has passed"],
];

const state = [
  ["choose", "Cause", "the tap is shut"],
  ["tick", "what was wrong and what was done"],
  ["press", "State it and hand over"],
];

async function opening(person) {
  await person.go("#/jobs");
  await person.page.getByRole("heading", { level: 1 }).waitFor();
  await person.go("#/bench/no_water");
  await person.page.getByRole("group", { name: /^The machine/ }).waitFor();
}

/** Hands over, once more if a second look at what is still open is offered first. */
async function handOver(hands, person) {
  await hands.work([["follow", "Finish"]]);
  await person.page.getByRole("combobox", { name: /Cause/ }).waitFor();
  await hands.work(state);
  const again = person.page.getByRole("button", { name: /hand over/i });
  for (let tries = 0; tries < 3 && !person.page.url().includes("#/debrief"); tries += 1) {
    await person.page.waitForTimeout(400);
    if (await again.count()) await hands.press(await again.first().innerText());
  }
  await person.page.waitForURL(/#\/debrief/);
}

async function debriefed(person) {
  await person.page.getByText("the tap is shut").first().waitFor();
  const words = await person.page.locator("main").innerText();
  assert.match(words, /Repaired/);
  assert.match(words, /target/i);
}

export async function a_whole_job_is_done_by_mouse({ visit }) {
  const person = await visit();
  await opening(person);
  const hands = new MouseHands(person);
  await hands.work([...look, ...cure]);
  await handOver(hands, person);
  await debriefed(person);
}

export async function a_whole_job_is_done_by_keyboard_alone({ visit }) {
  const person = await visit();
  await opening(person);
  const hands = new KeyboardHands(person);
  await hands.work([...look, ...cure]);
  await handOver(hands, person);
  await debriefed(person);
}

export async function the_job_goes_on_after_a_reload({ visit }) {
  const person = await visit();
  await opening(person);
  const hands = new MouseHands(person);
  await hands.work(look);
  const before = await person.page.getByRole("tab", { name: /Notebook/ }).innerText();
  await person.page.waitForTimeout(500);
  await person.page.reload();
  await person.drawn();
  await person.page.getByRole("region", { name: "Instrument in hand" }).waitFor();
  assert.equal(await person.page.getByRole("tab", { name: /Notebook/ }).innerText(), before);
}

export async function the_bench_fits_a_telephone({ visit }) {
  const person = await visit({ size: sizes.telephone, hasTouch: true });
  await opening(person);
  await person.fits();
  await person.accessible();
}

export async function the_socket_reads_what_the_network_gives({ visit }) {
  const person = await visit();
  await opening(person);
  const hands = new MouseHands(person);
  await hands.work([
    ["lead", "red", "SL"],
    ["lead", "black", "SN"],
  ]);
  await hands.settles(/230\.\d V/);
  await hands.work([["press", "Note it"]]);
  assert.match(await person.page.getByRole("tab", { name: /Notebook/ }).innerText(), /1/);
}
