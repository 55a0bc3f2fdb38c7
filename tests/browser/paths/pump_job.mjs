// Whole jobs on the machine that pumps its water out and has no mains switch: one put right at the
// hose, one with the machine laid down and the pump cleared.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";
import { against, dead, handed_over, measured } from "../whole_job.mjs";

const alive = [/^AC volts: 1[12]\d/, /^AC volts: 1[12]\d/, /^AC volts: \d\.\d/];

/** Lets the machine do one thing after another until its panel says so. */
async function until(hands, words) {
  const panel = hands.page.locator(".caption__panel");
  for (let n = 0; n < 14; n += 1) {
    if (words.test(await panel.innerText())) return;
    await hands.wait("it does something else");
  }
  assert.match(await panel.innerText(), words);
}

/** Switched on and started: a board takes a second before its keys answer. */
async function start(hands, presses_of_program = 0) {
  const panel = hands.page.locator(".caption__panel");
  await hands.take("on/off key");
  await panel.getByText("Ready").waitFor();
  for (let n = 0; n < presses_of_program; n += 1) await hands.take("program key");
  await hands.take("start and pause key");
  await panel.getByText("Filling").waitFor();
}

export async function water_that_siphons_out_through_the_pump_is_found_and_stopped({ visit }) {
  const person = await visit({ at: "#/bench/fills_and_never_gets_full" });
  const { page } = person;
  const hands = new MouseHands(person);
  await hands.work([
    ["press", "When in the wash does it happen?"],
    ["press", "Has anyone worked on it or moved it?"],
  ]);
  await start(hands);
  await hands.work([
    ["wait", "a minute has passed", 3],
    ["take", "drain hose"],
    ["act", "look"],
    ["act", "listen"],
    ["act", "rule: height of its end"],
    ["take", "on/off key"],
    ["type", "Price for the whole job", "70"],
    ["press", "Name the price"],
    ...against(["SL", "SN", "SE"], alive),
    ["take", "socket"],
    ["act", "pull the plug"],
    ["act", "keep it in sight"],
    ["take", "drain hose"],
    ["act", "repair"],
    ["act", "hang the drain hose higher with an air break and check"],
  ]);
  await page.getByRole("tab", { name: /^Tests/ }).click();
  await measured(hands, "protective conductor", /^earth bond: 0\.\d/);
  await measured(hands, "insulation", /^insulation: \d+.* MΩ/);
  await hands.work([["take", "socket"], ["act", "put the plug in"]]);
  await start(hands, 1);
  await measured(hands, "protective-conductor current", /mA$/);
  await measured(hands, "touch current", /mA$/);
  await until(hands, /Washing/);
  await until(hands, /Finished/);
  await hands.work([["take", "under the machine"], ["act", "look"]]);
  await handed_over(hands, "the end of the drain hose lies low and siphons");
}

export async function a_jammed_pump_is_heard_laid_open_cleared_and_tested({ visit }) {
  const person = await visit({ at: "#/bench/hums_and_water_stays" });
  const { page } = person;
  const hands = new MouseHands(person);
  const panel = page.locator(".caption__panel");
  // The service test runs the pump alone: it buzzes, and the water stays.
  await hands.work([["press", "When in the wash does it happen?"], ["take", "on/off key"]]);
  await panel.getByText("Ready").waitFor();
  await hands.work([["take", "display and key foil"], ["act", "press the service key"]]);
  for (let step = 2; step <= 7; step += 1) {
    await hands.act("press start");
    await panel.getByText(new RegExp(`Service test ${step}\\b`)).waitFor();
  }
  await hands.work([["take", "under the machine"], ["act", "listen"], ["take", "drain hose"], ["act", "look"], ["take", "on/off key"]]);
  // Water out, made safe, the hose off, and laid down.
  await hands.work([
    ["type", "Price for the whole job", "95"],
    ["press", "Name the price"],
    ["take", "lid"],
    ["act", "open"],
    ["show", "section"],
    ["take", "outer tub"],
    ["act", "bail the water out"],
    ["take", "lid"],
    ["act", "shut"],
    ["take", "socket"],
    ["act", "prove the tester"],
    ["act", "pull the plug"],
    ["act", "keep it in sight"],
    ["take", "tap"],
    ["act", "shut the tap"],
    ["act", "bleed the hose"],
    ["take", "supply hose"],
    ["act", "take the hose off"],
    ["show", "opened"],
    ["take", "cabinet"],
    ["act", "pull forward"],
    ["act", "lay down, with help"],
    ...against(["PL", "PN", "PE"], dead),
    ["take", "socket"],
    ["act", "prove the tester"],
    ["take", "drain pump"],
    ["act", "repair"],
    ["act", "take the object out of the drain pump and check"],
    ["press", "drain joint: part, then take the object out"],
    ["act", "drain joint: join and check"],
    ["take", "machine"],
    ["act", "stand up and check"],
    ["take", "supply hose"],
    ["act", "screw the hose on"],
    ["take", "cabinet"],
    ["act", "push back and check"],
    ["show", "outside"],
    ["take", "mains cord with plug"],
    ["act", "look"],
  ]);
  // Every test of the list: dead first, then while it runs, the lid at full spin, and dry below.
  await page.getByRole("tab", { name: /^Tests/ }).click();
  await measured(hands, "protective conductor", /^earth bond: 0\.\d/);
  await measured(hands, "insulation", /^insulation: \d+.* MΩ/);
  await hands.work([["take", "socket"], ["act", "put the plug in"], ["take", "tap"], ["act", "open the tap"]]);
  await start(hands, 1);
  await measured(hands, "protective-conductor current", /mA$/);
  await measured(hands, "touch current", /mA$/);
  await until(hands, /Washing/);
  await until(hands, /Filling/);
  await until(hands, /Spinning/);
  await hands.wait("a minute has passed", 2);
  await hands.work([["take", "lid"], ["act", "open"], ["wait", "a minute has passed"], ["act", "shut"], ["take", "on/off key"], ["take", "under the machine"], ["act", "look"]]);
  const tests = await page.getByRole("tabpanel").getByRole("listitem").allInnerTexts();
  assert.equal(tests.length, 8);
  for (const test of tests) assert.match(test, /✓/, test);
  await handed_over(hands, "the drain pump is jammed");
}
