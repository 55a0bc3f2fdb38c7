// Frame times of the bench while the machine works: `node frames.mjs DIST`.
//
// The page's processor is slowed four times; the machine fills, washes and spins at 60 times the
// clock. What a frame costs is the time from its first callback until the page is free again:
// callbacks, what they leave to be done at once, style, layout and paint. The gap between frames
// says what a person sees. The machine's clock must have gone on meanwhile, or the row is void.
// A wish, not a test: it prints and never fails.
import { sizes, workshop } from "./driver.mjs";
import { MouseHands } from "./hands.mjs";

const [dist = "dist"] = process.argv.slice(2);
const BUDGET_MS = 16.7;

/** Runs in the page ahead of its scripts: notes what each animation frame takes until the page is free. */
const watch = () => {
  globalThis.frameWork = [];
  globalThis.frameGaps = [];
  let last = null;
  let began = null;
  const free = new MessageChannel();
  // A message sent within a frame arrives once the frame is drawn.
  free.port1.onmessage = () => {
    globalThis.frameWork.push(performance.now() - began);
    began = null;
  };
  const ask = globalThis.requestAnimationFrame.bind(globalThis);
  const each = (now) => {
    if (began === null) {
      began = performance.now();
      free.port2.postMessage(null);
    }
    if (last !== null) globalThis.frameGaps.push(now - last);
    last = now;
    ask(each);
  };
  ask(each);
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

const clock = () => page.locator(".job-bar__clock b").innerText();
const at = (numbers, share) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length * share)] ?? NaN;
const pictures = ["outside", "section", "wiring"];
const speeds = ["1×", "10×", "60×"];
console.log(`${"picture".padEnd(10)} ${"speed".padEnd(5)} ${["frames", "work 50 %", "work 95 %", "gap 95 %", "budget", "clock"].map((word) => word.padStart(10)).join(" ")}`);
for (const picture of pictures) {
  await hands.show(picture);
  for (const speed of speeds) {
    await page.getByRole("button", { name: speed, exact: true }).click();
    await page.waitForTimeout(500);
    await page.evaluate(() => {
      globalThis.frameWork.length = 0;
      globalThis.frameGaps.length = 0;
    });
    const before = await clock();
    await page.waitForTimeout(4000);
    const after = await clock();
    const { work, gaps } = await page.evaluate(() => ({ work: globalThis.frameWork, gaps: globalThis.frameGaps }));
    const slow = at(work, 0.95);
    const row = [work.length, at(work, 0.5).toFixed(1), slow.toFixed(1), at(gaps, 0.95).toFixed(1), BUDGET_MS, before === after ? "stands" : after];
    console.log(`${picture.padEnd(10)} ${speed.padEnd(5)} ${row.map((cell) => String(cell).padStart(10)).join(" ")}${slow > BUDGET_MS ? "  over" : ""}`);
  }
}
await shop.close();
