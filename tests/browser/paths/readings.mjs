// The table of readings and faults: computed while one watches, sorted by mouse and by keys.
import assert from "node:assert/strict";

const head = (page, name) => page.getByRole("columnheader", { name }).first();
const words = (page) => page.locator(".readings tbody tr > th").allInnerTexts();

export async function a_second_click_or_press_turns_a_sorted_column_round({ visit }) {
  const person = await visit();
  const { page } = person;
  await person.go("#/readings");
  await page.getByText(/^\d+ of \d+ faults computed/).waitFor({ timeout: 60_000 });
  await page.getByRole("link", { name: "Save as CSV" }).waitFor({ timeout: 240_000 });
  const what = head(page, /^What is wrong/);
  assert.equal(await what.getAttribute("aria-sort"), "ascending");
  const [sound, ...rising] = await words(page);
  await what.getByRole("button").click();
  assert.equal(await what.getAttribute("aria-sort"), "descending");
  assert.deepEqual(await words(page), [sound, ...rising.toReversed()], "the sound machine stays on top");
  await page.keyboard.press("Enter");
  assert.equal(await what.getAttribute("aria-sort"), "ascending");
  assert.deepEqual(await words(page), [sound, ...rising]);
  // A reading: the largest that differ come first, and last after the second press.
  const reading = page.locator(".readings thead th").nth(1);
  await reading.getByRole("button").click();
  assert.equal(await reading.getAttribute("aria-sort"), "descending");
  assert.equal(await what.getAttribute("aria-sort"), null);
  const falling = await words(page);
  await page.keyboard.press("Space");
  assert.equal(await reading.getAttribute("aria-sort"), "ascending");
  assert.deepEqual((await words(page)).slice(1), falling.slice(1).toReversed());
  await person.accessible();
}
