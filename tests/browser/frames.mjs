// Frame times of the bench while the machine works: `node frames.mjs DIST`.
//
// The page's processor is slowed four times; the machine fills, washes and spins at 60 times the
// clock, with the recorder's pens down. What a frame costs is the time its callback runs; the gap
// between frames says what a person sees. A wish, not a test: it prints and never fails.
import { sizes, workshop } from "./driver.mjs";
import { MouseHands } from "./hands.mjs";

const [dist = "dist"] = process.argv.slice(2);
const BUDGET_MS = 16.7;

/** Runs in the page ahead of its scripts: notes what each animation frame's callbacks take. */
const watch = () => {
  globalThis.frameWork = [];
  globalThis.frameGaps = [];
  let last = null;
  const ask = globalThis.requestAnimationFrame.bind(globalThis);
  globalThis.requestAnimationFrame = (callback) =>
    ask((now) => {
      const began = performance.now();
      callback(now);
      globalThis.frameWork.push(performance.now() - began);
      if (last !== null) globalThis.frameGaps.push(now - last);
      last = now;
    });
};

const shop = await workshop(dist);
const person = await shop.visit({ size: sizes.laptop, before: watch });
const { page } = person;
await person.go("#/bench/hums_and_stands");
await page.getByRole("region", { name: "Instrument in hand" }).waitFor();
const hands = new MouseHands(person);
await hands.work([
  ["take", "on/off switch"],
  ["take", "start and pause key"],
]);
const protocol = await person.context.newCDPSession(page);
await protocol.send("Emulation.setCPUThrottlingRate", { rate: 4 });

const at = (numbers, share) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length * share)] ?? NaN;
const pictures = ["outside", "section", "wiring"];
const speeds = ["1×", "10×", "60×"];
console.log(`${"picture".padEnd(10)} ${"speed".padEnd(5)} ${["frames", "work 50 %", "work 95 %", "gap 95 %", "budget"].map((word) => word.padStart(10)).join(" ")}`);
for (const picture of pictures) {
  await hands.show(picture);
  for (const speed of speeds) {
    await page.getByRole("button", { name: speed, exact: true }).click();
    await page.waitForTimeout(500);
    await page.evaluate(() => {
      globalThis.frameWork.length = 0;
      globalThis.frameGaps.length = 0;
    });
    await page.waitForTimeout(4000);
    const { work, gaps } = await page.evaluate(() => ({ work: globalThis.frameWork, gaps: globalThis.frameGaps }));
    const slow = at(work, 0.95);
    const row = [work.length, at(work, 0.5).toFixed(1), slow.toFixed(1), at(gaps, 0.95).toFixed(1), BUDGET_MS];
    console.log(`${picture.padEnd(10)} ${speed.padEnd(5)} ${row.map((cell) => String(cell).padStart(10)).join(" ")}${slow > BUDGET_MS ? "  over" : ""}`);
  }
}
await shop.close();
