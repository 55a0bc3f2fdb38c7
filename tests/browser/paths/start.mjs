// The page starts: from any folder, at every size, with nothing wrong in the console.
import assert from "node:assert/strict";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { sizes, workshop } from "../driver.mjs";

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

export async function a_newer_build_waits_until_it_is_asked_for({ folder }) {
  const copy = mkdtempSync(join(tmpdir(), "newer-"));
  cpSync(folder, copy, { recursive: true });
  const site = await workshop(copy);
  const person = await site.visit({ at: "#/settings" });
  await person.page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 20_000 });
  await person.page.reload();
  await person.page.getByLabel("Show all names on the pictures").check();
  const keeper = join(copy, "offline.js");
  writeFileSync(keeper, readFileSync(keeper, "utf8").replace(/const build = "\w+"/, 'const build = "newer"'));
  await person.page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  const line = person.page.getByText("A newer build of this page is ready.");
  await line.waitFor({ timeout: 20_000 });
  await person.accessible();
  await Promise.all([person.page.waitForEvent("load"), person.page.getByRole("button", { name: "Use it now" }).click()]);
  await person.page.getByRole("heading", { name: "Settings" }).waitFor();
  assert.equal(await line.count(), 0, "the newer build has taken over");
  assert.deepEqual(await person.page.evaluate(() => caches.keys()), ["tubwright-newer"]);
  assert.ok(await person.page.getByLabel("Show all names on the pictures").isChecked(), "settings stay");
  await site.close();
  rmSync(copy, { recursive: true });
}
