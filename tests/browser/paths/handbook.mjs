// The handbook: its chapters, and the pages of faults, where plain words come first and no reading is told twice.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";

export async function a_faults_page_has_plain_headings_and_tells_each_difference_once({ visit }) {
  const person = await visit();
  const { page } = person;
  await person.go("#/handbook/faults/P");
  for (const heading of await page.locator("article :is(h1, h2)").allInnerTexts()) assert.match(heading, /^\p{Lu}/u);
  const link = page.getByRole("link", { name: /run capacitor has lost most/ });
  await link.focus();
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { level: 1, name: /^The run capacitor has lost most/ }).waitFor();
  for (const heading of await page.locator("article :is(h1, h2)").allInnerTexts()) {
    assert.match(heading, /^\p{Lu}/u);
    assert.ok(!/\bE\d\d/.test(heading), `a code in a heading: ${heading}`);
  }
  await page.getByText("In tables: E51").waitFor();
  const rows = await page.locator("article table").first().locator("tbody tr").evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => cell.textContent.trim())),
  );
  assert.ok(rows.length > 0);
  const seen = new Set();
  for (const [reading, state, sound, faulty] of rows) {
    assert.notEqual(sound, faulty, `${reading} does not differ`);
    const key = [reading.slice(reading.lastIndexOf("(")), state, sound, faulty].join("|");
    assert.ok(!seen.has(key), `${reading} is told twice`);
    seen.add(key);
  }
  await person.accessible();
}

export async function on_a_telephone_the_chapters_are_folded_away({ visit }) {
  const person = await visit({ size: sizes.telephone });
  const { page } = person;
  await person.go("#/handbook/machine_p");
  const fold = page.getByRole("button", { name: "Chapters" });
  const measuring = page.getByRole("link", { name: "Measuring", exact: true });
  await page.getByRole("heading", { level: 1, name: "How machine P works" }).waitFor();
  assert.ok((await page.locator("h1").boundingBox()).y < sizes.telephone.height / 2, "the chapter is below what is seen first");
  assert.ok(!(await measuring.isVisible()));
  await fold.focus();
  await page.keyboard.press("Enter");
  assert.equal(await fold.getAttribute("aria-expanded"), "true");
  await person.accessible();
  await measuring.click();
  await page.getByRole("heading", { level: 1, name: "Measuring" }).waitFor();
  assert.equal(await fold.getAttribute("aria-expanded"), "false");
  assert.ok(!(await measuring.isVisible()));
}
