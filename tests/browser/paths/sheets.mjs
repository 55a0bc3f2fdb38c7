// Job card and pictures of the machine on clean sheets, from the bench.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";
import { sizes } from "../driver.mjs";

/** Runs ahead of the page: asking to print is noted, and no dialogue opens. */
const noting = () => {
  globalThis.print = () => {
    globalThis.printed = true;
  };
};

const height = async (page, selector) => (await page.locator(selector).first().boundingBox())?.height ?? 0;

export async function job_card_and_pictures_print_on_sheets_of_their_own({ visit }) {
  const person = await visit({ before: noting });
  const { page } = person;
  await person.go("#/bench/no_water");
  await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  const hands = new MouseHands(person);
  await hands.take("tap");
  await hands.act("look");
  await page.getByRole("tab", { name: "Papers" }).click();
  await page.getByRole("link", { name: "Print job card and pictures" }).click();
  await page.getByRole("heading", { name: "Sheets to print" }).waitFor();
  for (const size of Object.values(sizes)) {
    await page.setViewportSize(size);
    await person.fits();
  }
  await person.accessible();
  const words = ["outside", "opened", "section", "wiring", "water"];
  for (const word of words) await page.getByRole("img", { name: `The machine, ${word}` }).waitFor();
  await page.getByRole("checkbox", { name: "water" }).uncheck();
  assert.equal(await page.getByRole("img", { name: "The machine, water" }).count(), 0);
  await page.getByRole("button", { name: "Print", exact: true }).click();
  assert.equal(await page.evaluate(() => globalThis.printed), true);

  await page.setViewportSize({ width: 1040, height: 720 });
  await page.emulateMedia({ media: "print" });
  for (const left of [".top-bar", "h1", "fieldset", "main button"]) assert.equal(await height(page, left), 0, `${left} is left out`);
  assert.ok((await height(page, ".job-card__quote")) > 0, "the customer’s words");
  assert.ok((await height(page, ".sheet__line")) > 0, "lines to write on");
  const sheets = page.locator(".sheets__sheet--picture");
  assert.equal(await sheets.count(), 4);
  for (const caption of await sheets.locator("figcaption").allInnerTexts()) assert.match(caption, /, (outside|opened|section|wiring)\. .+\d\d:\d\d\.$/);
  assert.equal(await page.locator(".sheets__picture").first().evaluate((one) => getComputedStyle(one).filter), "grayscale(1)");
  assert.equal(await page.locator(".sheets__sheet--picture [tabindex]").count(), 0, "a picture on paper is not touched");
}
