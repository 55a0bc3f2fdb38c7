// Work is never lost without a word: a killed tab, a second tab, a full store, a private window.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";

const work = [
  ["press", "When in the wash does it happen?"],
  ["take", "tap"],
  ["act", "look"],
];

async function opening(person) {
  await person.go("#/bench/no_water");
  await person.page.getByRole("region", { name: "Instrument in hand" }).waitFor();
}

const notebook = (page) => page.getByRole("tab", { name: /Notebook/ }).innerText();

export async function a_tab_that_dies_leaves_every_act_behind({ visit }) {
  const person = await visit();
  await opening(person);
  await new MouseHands(person).work(work);
  const before = await notebook(person.page);
  await person.page.waitForTimeout(500);
  // The process is killed: no farewell event runs.
  const protocol = await person.context.newCDPSession(person.page);
  const died = person.page.waitForEvent("crash");
  protocol.send("Page.crash").catch(() => {});
  await died;
  const again = await person.context.newPage();
  await again.goto(`${person.url}#/bench/no_water`);
  await again.getByRole("region", { name: "Instrument in hand" }).waitFor();
  assert.equal(await notebook(again), before);
}

export async function one_tab_writes_and_the_other_is_told({ visit }) {
  const person = await visit();
  await opening(person);
  await new MouseHands(person).work(work);
  const second = await person.context.newPage();
  await second.goto(`${person.url}#/bench/no_water`);
  await second.getByText("This job is open in another tab").waitFor();
  await second.getByRole("button", { name: "Work in this tab" }).click();
  await second.getByText("This job is open in another tab").waitFor({ state: "detached" });
  await person.page.getByText("This job is open in another tab").waitFor();
}

/** Runs in the page ahead of its scripts: every write finds the store full. */
const full = () => {
  const refuse = () => {
    throw new DOMException("no room", "QuotaExceededError");
  };
  IDBObjectStore.prototype.put = refuse;
};

export async function a_full_store_is_said_and_work_goes_on({ visit }) {
  const person = await visit({ before: full });
  await opening(person);
  await new MouseHands(person).work(work);
  await person.page.getByText("This browser has no room left").waitFor();
  assert.match(await notebook(person.page), /2/);
}

/** As in a private window: neither store may be used. */
const refused = () => {
  Object.defineProperty(globalThis, "indexedDB", { get: () => null });
  Object.defineProperty(globalThis, "localStorage", {
    get: () => {
      throw new DOMException("not allowed", "SecurityError");
    },
  });
};

export async function a_private_window_says_that_nothing_is_kept({ visit }) {
  const person = await visit({ before: refused });
  await opening(person);
  await person.page.getByText("does not let the page keep anything").waitFor();
  await new MouseHands(person).work(work);
  assert.match(await notebook(person.page), /2/);
}
