// The bench itself: work outlives a reload, a telephone shows all of it, readings come from the network.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { MouseHands } from "../hands.mjs";

const look = [
  ["press", "When in the wash does it happen?"],
  ["take", "tap"],
  ["act", "look"],
  ["take", "on/off switch"],
  ["take", "start and pause key"],
  ["press", "a minute has passed"],
];

async function opening(person) {
  await person.go("#/bench/no_water");
  await person.page.getByRole("group", { name: /^The machine/ }).waitFor();
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
  await hands.settles(/2(2[789]|3[012])\.\d V/);
  await hands.work([["press", "Note it"]]);
  assert.match(await person.page.getByRole("tab", { name: /Notebook/ }).innerText(), /1/);
}
