// One's own page: what a finished job leaves there, taken to another browser as one file, and erased.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { shutTap } from "../acts.mjs";
import { MouseHands } from "../hands.mjs";

async function finished_a_job(visit) {
  const person = await visit();
  const hands = new MouseHands(person);
  await hands.follow("No water comes in");
  await person.page.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await hands.work(shutTap);
  await person.page.waitForURL(/#\/debrief\//);
  // Leaving before the debrief's thread has answered would count as a failed request.
  await person.page.getByText("As a table").waitFor();
  await person.go("#/me");
  await person.page.getByRole("heading", { name: "Jobs done" }).waitFor();
  return person;
}

export async function a_finished_job_shows_on_ones_own_page_and_moves_to_another_browser({ visit }) {
  const person = await finished_a_job(visit);
  const { page } = person;
  const row = page.getByRole("row").filter({ hasText: "No water comes in" });
  assert.match(await row.innerText(), /\d{4}-\d\d-\d\d\s+No water comes in\s+\d+/);
  // Every job shows whether one works safely; this one was.
  assert.match(await page.getByRole("row").filter({ hasText: "work safely" }).innerText(), /chance \d+ %.*\s+1 of 1/s);
  await person.accessible();
  await person.fits();
  await person.fits_on_a_telephone();

  const [calendar] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save these days" }).click()]);
  assert.match(readFileSync(await calendar.path(), "utf8"), /^BEGIN:VCALENDAR\r\n.*SUMMARY:Refresher: .*END:VCALENDAR\r\n$/s);

  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save everything" }).click()]);
  const path = await file.path();
  const other = await visit();
  await other.go("#/me");
  await other.page.getByText("Nothing yet").waitFor();
  await other.page.getByLabel("Open files").setInputFiles({ name: "mine.json", mimeType: "application/json", buffer: readFileSync(path) });
  await other.page.getByText(/mine\.json: \d+ entries taken in, \d+ left/).waitFor();
  await other.page.getByRole("row").filter({ hasText: "No water comes in" }).waitFor();
  // The debrief is computed from the log that came with the file.
  await other.page.getByRole("link", { name: "No water comes in" }).last().click();
  await other.page.getByText("You said").waitFor();

  await other.go("#/me");
  await other.page.getByLabel("Open files").setInputFiles({ name: "other.json", mimeType: "application/json", buffer: Buffer.from("{}") });
  await other.page.getByText(/other\.json: this is no file of everything/).waitFor();
}

export async function everything_is_erased_only_when_said_twice({ visit }) {
  const { page } = await finished_a_job(visit);
  // A double click takes back what it asks for, wherever on the button it falls.
  const ask = page.getByRole("button", { name: "Erase everything", exact: true });
  const { width, height } = await ask.boundingBox();
  for (const x of [4, width - 4]) await ask.dblclick({ position: { x, y: height / 2 } });
  await ask.click();
  await page.getByRole("button", { name: "Not after all" }).waitFor();
  await page.getByRole("heading", { name: "Jobs done" }).waitFor();
  await page.getByRole("button", { name: "Yes, erase everything" }).click();
  await page.getByText("Everything is erased.").waitFor();
  await page.getByText("Nothing yet").waitFor();
  await page.reload();
  await page.getByText("Nothing yet").waitFor();
}
