// The debrief once its thread has answered: marks by decisions, the expert's way, a try from the middle.
import assert from "node:assert/strict";
import { shutTap } from "../acts.mjs";
import { sizes } from "../driver.mjs";
import { MouseHands } from "../hands.mjs";

const PATIENCE = { timeout: 120_000 };

async function finished(visit) {
  const person = await visit();
  const hands = new MouseHands(person);
  await hands.follow("No water comes in");
  await person.page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await hands.work(shutTap);
  await person.page.waitForURL(/#\/debrief\//);
  await person.page.getByText("go by what could be known when each step was decided").waitFor(PATIENCE);
  return { person, page: person.page };
}

export async function marks_go_by_decisions_and_the_cost_is_explained({ visit }) {
  const { person, page } = await finished(visit);
  const words = await page.locator("main").innerText();
  assert.match(words, /Repaired · safe · \d+ of 100\n/);
  const [cost, target, avoidable, chance] = ["cost", "to be expected", "avoidable", "chance"].map((name) => Number(words.match(new RegExp(`^${name}\\s+(-?\\d+)`, "m"))[1]));
  assert.ok(Math.abs(target + avoidable + chance - cost) <= 2, `${cost} = ${target} + ${avoidable} + ${chance}`);
  assert.match(words, /Likely then/);
  await page.getByRole("button", { name: "Let the expert work it" }).click();
  await page.getByRole("region", { name: "The expert", exact: true }).getByText("Open the tap").first().waitFor(PATIENCE);
  assert.match(await page.getByRole("region", { name: "You", exact: true }).innerText(), /Open the tap/);
  await person.accessible();
  await person.fits();
  await page.getByText("As a table").click();
  await person.fits_on_a_telephone();
  // What is kept for good is marked so too.
  const marks = words.match(/(\d+) of 100/)[1];
  await person.go("#/me");
  const row = page.getByRole("row").filter({ hasText: "No water comes in" });
  await row.waitFor();
  assert.match(await row.innerText(), new RegExp(`\\b${marks}\\b`));
}

export async function a_finished_job_is_tried_again_from_any_step_and_stays_as_it_was({ visit }) {
  const { person, page } = await finished(visit);
  const verdict = await page.getByText(/of 100/).first().innerText();
  await page.getByRole("slider", { name: "Step" }).fill("3");
  await page.getByRole("link", { name: "Try again from before this step" }).click();
  await page.waitForURL(/#\/bench\//);
  await page.getByText("Tried again from after step 3: practice that does not count.").waitFor();
  await person.accessible();
  await person.fits();
  await page.getByRole("link", { name: "Back to the job as you finished it" }).click();
  await page.waitForURL(/#\/debrief\//);
  await page.getByText("go by what could be known when each step was decided").waitFor(PATIENCE);
  assert.equal(await page.getByText(/of 100/).first().innerText(), verdict);
}

export async function a_hint_is_asked_for_by_keyboard_and_climbs({ visit }) {
  const person = await visit({ size: sizes.telephone });
  const { page } = person;
  await new MouseHands(person).follow("No water comes in");
  const hints = page.getByRole("region", { name: "Hints" });
  await hints.getByRole("button", { name: /^Hint: a question back .*5 % of the target/ }).press("Enter");
  await hints.getByText(/\?$/).waitFor(PATIENCE);
  await person.accessible();
  await hints.getByRole("button", { name: /^One more: where to look .*10 %/ }).press("Enter");
  assert.equal(await hints.getByRole("listitem").count(), 2);
  await person.fits();
  // The log knows what was asked for; the words come again from it.
  await page.reload();
  await hints.getByRole("listitem").nth(1).waitFor(PATIENCE);
}
