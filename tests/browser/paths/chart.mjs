// The recorder's chart: over one axis of time on the bench, and alone on paper, in dark lines of different styles.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";

/** Runs in the page ahead of its scripts: asking to print is noted, and no dialogue opens. */
const noting = () => {
  globalThis.print = () => {
    globalThis.asked = document.documentElement.dataset.print;
  };
};

/** The width and height of the first that fits, 0 when nothing of it is drawn. */
const box = async (page, selector) => (await page.locator(selector).first().boundingBox()) ?? { width: 0, height: 0 };

export async function a_recorded_chart_prints_alone_with_its_axis_and_table({ visit }) {
  const person = await visit({ before: noting });
  const { page } = person;
  await person.go("#/bench/no_water");
  const hands = new MouseHands(person);
  await hands.work([
    ["lead", "red", "SL"],
    ["lead", "black", "SN"],
    ["settles", /^AC volts: 2[23]\d/],
  ]);
  await page.getByText("recorder, 0 of 4 pens").click();
  await hands.press("record the meter");
  await page.getByText("recorder, 1 of 4 pens").waitFor();
  await hands.mode("AC volts, low impedance");
  await hands.press("record the meter");
  await page.getByText("recorder, 2 of 4 pens").waitFor();
  await hands.wait("a minute has passed");
  const times = await page.locator(".recorder__axis span:visible").allInnerTexts();
  assert.equal(times.length, 3);
  assert.ok(times.every((time) => /^\d\d:\d\d:\d\d$/.test(time)), times.join(" "));
  await person.accessible();

  await hands.press("Print the chart");
  assert.equal(await page.evaluate(() => globalThis.asked), "chart");
  await page.setViewportSize({ width: 720, height: 1040 });
  await page.emulateMedia({ media: "print" });
  for (const left of ["#main", "#card", ".safe-strip", ".instrument__display", ".recorder__keys", ".job-bar a"]) {
    assert.equal((await box(page, left)).height, 0, `${left} is left out`);
  }
  assert.ok((await page.locator(".job-bar__title").innerText()).length > 3, "it says whose job");
  await page.getByRole("heading", { name: /^Strip chart, \d+ s$/ }).waitFor();
  assert.ok((await box(page, ".recorder__strip")).width > 500, "it has the width of the paper");
  assert.equal(await page.locator(".recorder__axis span:visible").count(), 5);
  assert.ok((await box(page, ".recorder__table tbody tr")).height > 0, "the table stands below");
  assert.ok(await page.locator(".recorder__table tbody tr").count() > 5);
  const styles = await page.locator(".recorder__strip .recorder__pen").evaluateAll((pens) =>
    pens.map((pen) => [getComputedStyle(pen).stroke, getComputedStyle(pen).strokeDasharray]));
  assert.equal(styles.length, 2);
  assert.deepEqual(styles[0], ["rgb(0, 0, 0)", "none"]);
  assert.notEqual(styles[1][1], "none", "the second line is dashed");
  assert.equal(await page.locator(".recorder__strip").first().evaluate((strip) => getComputedStyle(strip).backgroundColor), "rgb(255, 255, 255)");

  // Afterwards other sheets print as they do.
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  assert.equal(await page.locator("html[data-print]").count(), 0);
}
