// The program comes in two parts: a first job is worked with the first alone, and where the rest is needed and
// cannot be had, a calm page says so.
import assert from "node:assert/strict";
import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { shutTap } from "../acts.mjs";
import { workshop } from "../driver.mjs";
import { MouseHands } from "../hands.mjs";

/** The site without the rest of the program: whoever asks for it hears that it is not there. */
async function withoutRest(folder, visited) {
  const copy = mkdtempSync(join(tmpdir(), "parts-"));
  cpSync(folder, copy, { recursive: true });
  const rest = readdirSync(copy).find((name) => /^rest-\w+\.wasm$/.test(name));
  assert.ok(rest, "the site holds the program in two parts");
  rmSync(join(copy, rest));
  const site = await workshop(copy);
  let asked = 0;
  // At the server, since threads ask too.
  site.server.on("request", (request) => (asked += Number(request.url.endsWith(rest))));
  const person = await site.visit({ at: "#/bench/no_water", serviceWorkers: "block" });
  await visited(person, () => asked);
  person.wrong = person.wrong.filter((line) => !line.includes(rest) && !/Failed to load resource|registration blocked/.test(line));
  await site.close();
  rmSync(copy, { recursive: true });
  return person;
}

export async function a_first_job_needs_the_first_part_alone({ folder }) {
  const person = await withoutRest(folder, async (person, asked) => {
    const { page } = person;
    await page.getByRole("region", { name: "Instrument in hand" }).waitFor();
    await new MouseHands(person).work(shutTap);
    await page.waitForURL(/#\/debrief\//);
    await page.getByText("You said").waitFor();
    await page.waitForFunction(() => !/ of 100 for now/.test(document.querySelector("main").innerText));
    for (let waited = 0; asked() === 0 && waited < 100; waited += 1) await page.waitForTimeout(200);
    assert.equal(asked(), 1, "once in good time, and never in need");
  });
  person.quiet();
}

export async function where_the_rest_cannot_be_had_a_calm_page_leads_back({ folder }) {
  await withoutRest(folder, async (person) => {
    const { page } = person;
    const isCalm = () => page.getByRole("heading", { name: "A part of the program is missing" }).waitFor();
    await page.evaluate(() => (location.hash = "#/cohort"));
    await isCalm();
    await person.accessible();
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Try again" }).click()]);
    await isCalm();
    await page.getByRole("button", { name: "To the jobs" }).click();
    await page.waitForURL(/#\/jobs$/);
    await page.getByRole("searchbox").waitFor();
  });
}
