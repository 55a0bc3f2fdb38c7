// A whole job, from the customer's words to the debrief: a shut tap behind the machine.
//
// The same acts by mouse, by keyboard alone, and by finger on a telephone; each must end the same:
// put right, safe, the evidence ticked, and a debrief that says so.
import assert from "node:assert/strict";
import { shutTap } from "../acts.mjs";
import { sizes } from "../driver.mjs";
import { FingerHands, KeyboardHands, MouseHands } from "../hands.mjs";

async function worked(hands) {
  await hands.work(shutTap);
  await hands.page.waitForURL(/#\/debrief\//);
  await hands.page.getByText("You said").waitFor();
  const words = await hands.page.locator("main").innerText();
  // The same acts, the same marks, however they were done; what was measured is part of them.
  assert.match(words, /Repaired · safe · \d+ of 100 for now/);
  assert.match(words, /You said\s+The tap is shut\s/);
  assert.match(words, /Step 1 of 18/);
  await hands.person.accessible();
  await hands.person.fits();
}

/** Opens the job from the list as a first-time visitor does. */
async function open(person, hands) {
  await hands.follow("No water comes in");
  await person.page.getByRole("region", { name: "In hand", exact: true }).waitFor();
}

export async function a_whole_job_by_mouse({ visit }) {
  const person = await visit();
  const hands = new MouseHands(person);
  await open(person, hands);
  await worked(hands);
}

export async function a_whole_job_by_keyboard_alone({ visit }) {
  const person = await visit();
  const hands = new KeyboardHands(person);
  await open(person, hands);
  await worked(hands);
}

export async function a_whole_job_by_finger_on_a_telephone({ visit }) {
  const person = await visit({ size: sizes.telephone, hasTouch: true, isMobile: true });
  const hands = new FingerHands(person);
  await open(person, hands);
  await worked(hands);
}
