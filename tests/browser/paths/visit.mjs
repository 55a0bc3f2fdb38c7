// A whole visit by mouse: telephone and van before the drive, papers and instrument at the door,
// estimate and consent, pictures, a second visit, and the report signed.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { KeyboardHands, MouseHands } from "../hands.mjs";

const job = "no_spin_since_cousin";

async function at_the_workshop(visit, options = {}) {
  const person = await visit({ at: `#/bench/${job}`, ...options });
  const hands = new MouseHands(person);
  await person.page.getByText("You are still at the workshop.").waitFor();
  return { person, hands, page: person.page };
}

/** Touches a button of the panel and waits until the notebook or the panel has it. */
async function act(page, name) {
  await page.getByRole("region", { name: "The visit" }).getByRole("button", { name }).first().click();
}

export async function a_visit_from_the_telephone_to_the_signature({ visit }) {
  const { person, hands, page } = await at_the_workshop(visit);
  // The telephone comes first, and its side of the card is up.
  await act(page, /^What does it still do/);
  await page.getByText("Then it does not spin.").first().waitFor();
  await page.getByRole("checkbox", { name: /^belt/ }).first().uncheck();
  await page.getByRole("checkbox", { name: /^air hose/ }).first().check();
  await page.getByText("The van is full").waitFor();
  await act(page, "Load the van");

  await act(page, /^read receipt/);
  await page.getByText("You are still at the workshop.").waitFor({ state: "detached" });
  await act(page, /^the customer pays/);
  await act(page, /^look it over/);
  await act(page, /^gloves on/);
  await act(page, /^gloves off/);
  await person.accessible();

  // Consent: the answer stands under the estimate.
  await hands.type("Price for the whole job", "95");
  await hands.type("Or a new machine", "350");
  await hands.press("Name the price");
  await page.locator(".estimate__named").first().waitFor();
  await act(page, /^picture from outside/);

  // Left until another day, with a label; the visit goes on where it stood.
  const region = page.getByRole("region", { name: "The visit" });
  await region.getByText("Second visit: parts to bring").click();
  await act(page, "Leave until the second visit");
  await page.getByRole("tab", { name: /^Notebook/ }).click();
  for (const line of [/no receipt/, /second visit, labelled/, /Picture taken/]) {
    await page.getByRole("region", { name: "Notebook" }).getByText(line).first().waitFor();
  }

  // Nobody signs what they were not told.
  await hands.follow("Finish");
  const signature = page.getByRole("checkbox", { name: /reads the report and signs/ });
  assert.ok(await signature.isDisabled());
  await page.getByRole("checkbox", { name: /^what was wrong and what was done/ }).check();
  assert.ok(await signature.isChecked());
  await person.accessible();
  await page.getByLabel("There is no fault in the machine").check();
  await hands.press("State it and hand over");
  await page.waitForURL(/#\/debrief\//);

  await person.go(`#/report/${job}`);
  const words = await page.locator("main").innerText();
  assert.match(words, /Second visit/);
  assert.match(words, /Signature of the customer:(?! not yet)/);
  assert.equal(await page.locator(".report__pictures figure").count(), 1);
  await person.accessible();
  await person.fits();
}

export async function telephone_and_van_are_one_touch_away_on_a_telephone({ visit }) {
  const { person, page } = await at_the_workshop(visit, { size: sizes.telephone });
  await page.getByRole("button", { name: "Telephone and van" }).click();
  await page.getByRole("region", { name: "The visit" }).getByRole("button", { name: /^Since when/ }).click();
  await page.getByText("Three weeks.", { exact: true }).waitFor();
  await person.accessible();
  await person.fits();
}

export async function a_visit_by_keyboard_alone({ visit }) {
  const person = await visit({ at: `#/bench/${job}` });
  const hands = new KeyboardHands(person);
  const page = person.page;
  await page.getByText("You are still at the workshop.").waitFor();
  await hands.press("What does it still do");
  await page.getByText("Then it does not spin.").first().waitFor();
  // One part out, another in: the spacebar does both.
  await hands.tick("belt");
  await hands.tick("air hose");
  await page.getByText("The van is full").waitFor();
  await hands.press("Load the van");
  await hands.press("look it over");
  await hands.press("read receipt");
  await hands.press("the customer pays");
  await hands.press("gloves on");
  await hands.type("Price for the whole job", "95");
  await hands.press("Name the price");
  await page.locator(".estimate__named").first().waitFor();
  await hands.press("picture from outside");
  await hands.tabTo("summary", /^Second visit/);
  await page.keyboard.press("Enter");
  await hands.press("Leave until the second visit");

  // A remark of one's own, and the papers on the next sides of the card.
  await hands.tabTo("tab", /^Visit/);
  await page.keyboard.press("ArrowRight");
  await page.getByRole("region", { name: "Papers" }).getByText("Data sheet").waitFor();
  await person.accessible();
  for (let n = 0; n < 3; n += 1) await page.keyboard.press("ArrowLeft");
  await hands.type("Remark", "whine as in the wash");
  await page.keyboard.press("Enter");
  await page.getByRole("region", { name: "Notebook" }).getByText("Remark: whine as in the wash").waitFor();
  await person.accessible();

  await hands.follow("Finish");
  await hands.tick("what was wrong and what was done");
  await hands.tabTo("checkbox", /^There is no fault/);
  await page.keyboard.press("Space");
  await hands.press("State it and hand over");
  await page.waitForURL(/#\/debrief\//);
  await person.accessible();
}
