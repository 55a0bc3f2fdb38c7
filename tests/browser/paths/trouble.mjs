// Trouble while a job is worked: tabs that die again and again, writes refused now and then, a clock
// that jumps, a browser without threads. Nothing is lost, and the job ends as it would have.
import assert from "node:assert/strict";
import { shutTap } from "../acts.mjs";
import { MouseHands } from "../hands.mjs";

async function opening(person) {
  await person.go("#/bench/no_water");
  await person.page.getByRole("region", { name: "Instrument in hand" }).waitFor();
}

/** The whole job, by someone whose page runs `before` ahead of its own scripts. */
async function worked(visit, before) {
  const person = await visit({ before });
  await opening(person);
  await new MouseHands(person).work(shutTap);
  return person;
}

/** The debrief says what it says of an untroubled job: right, safe, no step lost. */
async function endsWell({ page }) {
  await page.waitForURL(/#\/debrief\//);
  await page.getByText("You said").waitFor();
  const words = await page.locator("main").innerText();
  assert.match(words, /Repaired · safe · \d+ of 100/);
  assert.match(words, /Step 1 of 18/);
}

/** Kills the process of the page, without a farewell event, and opens the job anew. */
async function killed(person) {
  await person.page.waitForTimeout(400);
  const protocol = await person.context.newCDPSession(person.page);
  const died = person.page.waitForEvent("crash");
  protocol.send("Page.crash").catch(() => {});
  await died;
  person.page = await person.context.newPage();
  person.watch(person.page);
  await opening(person);
}

/** What needs nothing in hand or on the way: a tab can die before it and the act still makes sense. */
const startsAnew = ([what]) => what === "take" || what === "wait";

export async function a_job_whose_tab_dies_again_and_again_ends_the_same({ visit }) {
  const person = await visit();
  await opening(person);
  const last = shutTap.findIndex(([what]) => what === "follow");
  let deaths = 0;
  for (const [index, act] of shutTap.entries()) {
    if (index > 0 && index < last && startsAnew(act)) {
      await killed(person);
      deaths += 1;
    }
    await new MouseHands(person).work([act]);
  }
  assert.ok(deaths >= 8, `${deaths} deaths`);
  await endsWell(person);
}

/** Runs in the page ahead of its scripts: every other write finds the store full. */
const flaky = () => {
  const put = IDBObjectStore.prototype.put;
  let count = 0;
  IDBObjectStore.prototype.put = function (...what) {
    count += 1;
    if (count % 2 === 0) throw new DOMException("no room", "QuotaExceededError");
    return put.apply(this, what);
  };
};

export async function a_write_refused_now_and_then_is_made_good_by_the_next({ visit }) {
  await endsWell(await worked(visit, flaky));
}

/** Runs in the page ahead of its scripts: the clock of the day jumps by a day, back and forth. */
const jumping = () => {
  const now = Date.now;
  let count = 0;
  Date.now = () => now() + (count++ % 2 ? 86_400_000 : -86_400_000);
};

export async function a_clock_that_jumps_changes_nothing_of_the_job({ visit }) {
  await endsWell(await worked(visit, jumping));
}

/** Runs in the page ahead of its scripts: a thread cannot be started. */
const threadless = () => {
  globalThis.Worker = class {
    constructor() {
      throw new DOMException("not allowed", "SecurityError");
    }
  };
};

export async function without_threads_a_job_is_still_worked_and_marked({ visit }) {
  const person = await worked(visit, threadless);
  await endsWell(person);
  await person.page.getByText("This browser has no threads.").first().waitFor();
}

/** Runs in the page ahead of its scripts: a thread dies as soon as it is asked something. */
const mortal = () => {
  const Real = globalThis.Worker;
  globalThis.Worker = class extends Real {
    postMessage(...what) {
      super.postMessage(...what);
      setTimeout(() => {
        this.terminate();
        this.dispatchEvent(new ErrorEvent("error", { message: "out of memory" }));
      }, 50);
    }
  };
};

export async function a_thread_that_dies_is_told_and_the_marks_stand({ visit }) {
  const person = await worked(visit, mortal);
  await endsWell(person);
  await person.page.getByText("The browser has stopped the computation.").first().waitFor();
}
