// The page starts: from any folder, at every size, with nothing wrong in the console.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";

export async function the_first_screen_opens_at_every_size({ visit }) {
  for (const size of Object.values(sizes)) {
    const person = await visit({ size });
    await person.page.getByRole("heading", { level: 1 }).first().waitFor();
    await person.fits();
    await person.accessible();
  }
}

export async function without_javascript_a_sentence_says_what_is_needed({ visit, browser, url }) {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(url);
  assert.match(await page.locator("noscript").innerText(), /needs JavaScript and WebAssembly/);
  await context.close();
}

export async function the_page_opens_again_with_the_cable_pulled({ visit, pullCable }) {
  const person = await visit();
  await person.page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 20_000 });
  await pullCable();
  await person.page.reload();
  await person.drawn();
}
