// Whole jobs on the machine with a cam timer: one put right at the wall, one with the timer replaced.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";
import { against, dead, handed_over, measured } from "../whole_job.mjs";

const alive = [/^AC volts: 2[23]\d/, /^AC volts: 2[23]\d/, /^AC volts: \d\.\d/];

/** Turns the dial on by fives and ones until it stands at this step. */
async function dialled(hands, step) {
  const panel = hands.page.locator(".caption__panel");
  const shown = async () => Number(/dial at (\d+)/.exec(await panel.innerText())[1]);
  await hands.take("dial and knob");
  for (let turns = 0; turns < 20; turns += 1) {
    const to_go = step - (await shown());
    if (to_go === 0) return;
    const next = (await shown()) + (to_go >= 5 ? 5 : 1);
    await hands.act(to_go >= 5 ? "turn the dial five steps on" : "turn the dial one step on");
    await panel.getByText(`dial at ${next} `).waitFor();
  }
  assert.fail(`the dial does not come to ${step}`);
}

/** Knob pushed in, dial at its start, knob pulled: the machine fills. */
const started = [
  ["take", "dial and knob"],
  ["act", "turn the dial to the start"],
  ["act", "pull the knob out: on"],
];

export async function a_dead_socket_is_found_before_anything_is_opened({ visit }) {
  const person = await visit({ at: "#/bench/nothing_at_all" });
  const { page } = person;
  const hands = new MouseHands(person);
  await hands.work([
    ["press", "Has anyone worked on it or moved it?"],
    ...started,
    ["take", "socket"],
    ["act", "look"],
    ["lead", "red", "SL"],
    ["lead", "black", "SN"],
    ["settles", /^AC volts: 0\.0/],
    ["press", "Note it"],
    ["take", "dial and knob"],
    ["act", "push the knob in: off"],
    ["type", "Price for the whole job", "60"],
    ["press", "Name the price"],
  ]);
  await page.getByText("Put right outside the machine").click();
  await hands.work([
    ["press", "move the plug to a tested socket, without extension lead and check"],
    ...against(["SL", "SN", "SE"], alive),
    ["take", "dial and knob"],
    ["act", "pull the knob out: on"],
    ["wait", "a minute has passed", 6],
  ]);
  await page.getByText(/water swashing/i).first().waitFor();
  await dialled(hands, 21);
  await hands.work([["wait", "a minute has passed", 3], ["act", "push the knob in: off"], ["take", "under the machine"], ["act", "look"]]);
  await handed_over(hands, "the socket is dead on the line side", ["have the house wiring seen to"]);
}

export async function a_timer_that_stands_still_is_measured_replaced_refitted_and_tested({ visit }) {
  const person = await visit({ at: "#/bench/dial_stands_still" });
  const { page } = person;
  const panel = page.locator(".caption__panel");
  const hands = new MouseHands(person);
  await hands.work([
    ["press", "When in the wash does it happen?"],
    ["press", "Does it make a noise it did not make before?"],
    ...started,
    ["wait", "a minute has passed", 12],
    ["act", "listen"],
  ]);
  // It washes, and the dial has not moved.
  await panel.getByText("dial at 1 ").waitFor();
  await hands.work([["act", "push the knob in: off"]]);
  await dialled(hands, 21);
  await hands.work([
    ["act", "pull the knob out: on"],
    ["wait", "a minute has passed", 3],
    ["act", "push the knob in: off"],
    ["take", "socket"],
    ["act", "prove the tester"],
    ["act", "pull the plug"],
    ["act", "keep it in sight"],
    ["take", "tap"],
    ["act", "shut the tap"],
    ["act", "bleed the hose"],
    ["type", "Price for the whole job", "190"],
    ["press", "Name the price"],
    ["take", "cabinet"],
    ["act", "pull forward"],
    ["show", "opened"],
    ["take", "back cover"],
    ["act", "take off"],
    ["take", "run capacitor"],
    ["act", "discharge it with the resistor"],
    ["take", "top cover"],
    ["act", "lift and tie up"],
    ["take", "timer"],
    ["act", "timer panel: take off"],
    ...against(["PL", "PN", "PE"], dead),
    ["take", "socket"],
    ["act", "prove the tester"],
    ["take", "timer motor terminals"],
    ["act", "pull apart"],
    ["mode", "ohms"],
    ["lead", "red", "TM1"],
    ["lead", "black", "TM2"],
    ["settles", /^ohms: OL/],
    ["press", "Note it"],
    ["act", "push home"],
    ["take", "timer"],
    ["act", "repair"],
    ["act", "replace the timer, part for 85 and check"],
    // Back on from the inside out, with the part in hand.
    ["act", "timer panel: refit and check"],
    ["act", "top cover: lower and check"],
    ["take", "back cover"],
    ["act", "refit and check"],
    ["take", "cabinet"],
    ["act", "push back and check"],
    ["show", "outside"],
    ["take", "mains cord with plug"],
    ["act", "look"],
    ["take", "dial and knob"],
    ["act", "pull the knob out: on"],
  ]);
  // Every test of the list: dead first, the knob pulled so that all is reached, then while it runs.
  await page.getByRole("tab", { name: /^Tests/ }).click();
  await measured(hands, "protective conductor", /^earth bond: 0\.\d/);
  await measured(hands, "insulation", /^insulation: \d+.* MΩ/);
  await hands.work([["act", "push the knob in: off"], ["take", "socket"], ["act", "put the plug in"], ["take", "tap"], ["act", "open the tap"], ...started]);
  await measured(hands, "protective-conductor current", /mA$/);
  await measured(hands, "touch current", /mA$/);
  // The dial turns by itself now.
  await hands.wait("a minute has passed", 12);
  assert.ok(Number(/dial at (\d+)/.exec(await panel.innerText())[1]) > 1, "the dial stands");
  await dialled(hands, 21);
  await hands.wait("a minute has passed", 3);
  await dialled(hands, 41);
  await hands.work([
    ["wait", "a minute has passed", 2],
    ["take", "lid"],
    ["act", "open"],
    ["wait", "a minute has passed"],
    ["act", "shut"],
    ["take", "dial and knob"],
    ["act", "push the knob in: off"],
    ["take", "under the machine"],
    ["act", "look"],
  ]);
  const tests = await page.getByRole("tabpanel").getByRole("listitem").allInnerTexts();
  assert.equal(tests.length, 8);
  for (const test of tests) assert.match(test, /✓/, test);
  await handed_over(hands, "the timer motor is open");
}
