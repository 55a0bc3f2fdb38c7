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

export async function a_list_of_verbs_opens_alone_and_shuts_at_esc_and_after_an_act({ visit }) {
  const person = await visit();
  await person.go("#/bench/water_comes_back_up");
  const { page } = person;
  await page.getByRole("group", { name: /^The machine/ }).waitFor();
  const hands = new MouseHands(person);
  const open = () => page.locator(".verb-menu__list:popover-open").count();
  await hands.take("drain hose");
  const key = page.getByRole("button", { name: "repair …", exact: true });
  await key.click();
  assert.equal(await open(), 1);
  const box = await page.locator(".verb-menu__list:popover-open").boundingBox();
  assert.ok(box.x >= 0 && box.x + box.width <= 1366 && box.y >= 0 && box.y + box.height <= 768, JSON.stringify(box));
  await page.keyboard.press("Escape");
  assert.equal(await open(), 0);
  assert.ok(await page.getByRole("heading", { name: "Drain hose" }).isVisible(), "what is in hand stays in hand");
  await key.click();
  await page.mouse.click(24, 22);
  assert.equal(await open(), 0, "a touch outside shuts it");
  assert.match(page.url(), /#\/bench\//, "and does nothing to what lies there");
  await key.click();
  await page.getByRole("button", { name: /^lay the end of the drain hose low enough and check/ }).click();
  assert.equal(await open(), 0);
  await page.getByRole("tab", { name: /Notebook [1-9]/ }).waitFor();
}

export async function a_key_is_pressed_also_with_the_instrument_in_hand({ visit }) {
  const person = await visit();
  await opening(person);
  const hands = new MouseHands(person);
  await hands.work([
    ["mode", "ohms"],
    ["take", "on/off switch"],
  ]);
  await person.page.waitForTimeout(300);
  const safe = await hands.safe();
  assert.ok(safe.some((line) => /^– off/.test(line)), safe.join(" · "));
}

export async function the_keys_that_look_closer_stay_where_they_are({ visit }) {
  const person = await visit({ size: sizes.telephone, hasTouch: true });
  await opening(person);
  const closer = person.page.getByRole("button", { name: "Closer" });
  const before = await closer.boundingBox();
  await closer.click();
  assert.deepEqual(await closer.boundingBox(), before);
}
