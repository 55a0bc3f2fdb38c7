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

export async function a_machine_with_a_timer_is_run_by_its_dial({ visit }) {
  const person = await visit({ at: "#/bench/nothing_at_all" });
  const { page } = person;
  const hands = new MouseHands(person);
  const caption = page.locator(".caption__panel");
  await hands.work([["take", "socket"], ["act", "look"], ["take", "dial and knob"], ["act", "turn the dial to the start"]]);
  await page.getByText("Done: turn the dial to the start").waitFor();
  assert.match(await caption.innerText(), /dial at 1 /);
  await hands.act("turn the dial five steps on");
  await caption.getByText("dial at 6 ").waitFor();
  // What was pulled can be pushed.
  await hands.act("pull the knob out: on");
  await hands.act("push the knob in: off");
  await hands.take("water level knob");
  await caption.getByText("dial at 6 · level low").waitFor();
  await person.accessible();
}

export async function a_machine_without_a_switch_is_switched_on_by_its_key_and_tests_itself({ visit }) {
  const person = await visit({ at: "#/bench/goes_quiet_in_the_middle" });
  const hands = new MouseHands(person);
  const caption = person.page.locator(".caption__panel");
  await hands.take("on/off key");
  await caption.getByText("Ready").waitFor();
  await hands.take("display and key foil");
  await hands.act("press the service key behind the panel");
  await caption.getByText(/Service test/).waitFor();
}

export async function taking_a_part_in_hand_on_a_telephone_brings_its_verbs_into_sight({ visit }) {
  const person = await visit({ size: sizes.telephone, hasTouch: true, isMobile: true, at: "#/bench/no_water" });
  const { page } = person;
  const hands = new FingerHands(person);
  await hands.take("tap");
  const look = hands.inHand.getByRole("button", { name: "look" });
  await look.waitFor();
  const { bottom } = await look.evaluate((key) => key.getBoundingClientRect());
  const meter = await page.locator(".instrument--bar").evaluate((bar) => bar.getBoundingClientRect().top);
  assert.ok(bottom <= meter, `the verbs end at ${bottom}, under the meter at ${meter}`);
  // The place a screen was scrolled to goes with it.
  await page.evaluate(() => scrollTo(0, 9999));
  await hands.follow("Finish");
  await page.getByRole("heading", { name: "Fault found" }).waitFor();
  await page.waitForFunction(() => scrollY === 0);
}
