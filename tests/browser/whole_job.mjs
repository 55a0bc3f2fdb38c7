// What whole jobs have in common, whatever the machine: readings at three points, a test of the list, handing over.
import assert from "node:assert/strict";

/** Three points against each other, each reading written down: a socket tested, or conductors shown dead. */
export const against = (points, readings) =>
  [[0, 1], [0, 2], [1, 2]].flatMap(([one, other], n) => [
    ["lead", "red", points[one]],
    ["lead", "black", points[other]],
    ["settles", readings[n]],
    ["press", "Note it"],
  ]);
export const dead = [/^AC volts: 0\.0/, /^AC volts: 0\.0/, /^AC volts: 0\.0/];

/** One test of the list: its leads, what the display settles at, written down. */
export async function measured(hands, test, reading) {
  const line = hands.page.getByRole("tabpanel").getByRole("listitem").filter({ hasText: test });
  await line.getByRole("button", { name: /^leads there/ }).click();
  await hands.settles(reading);
  await hands.press("Note it");
}

/** Cause, evidence and what the customer is told; then the debrief says that the machine is right. */
export async function handed_over(hands, cause, told = []) {
  await hands.work([
    ["follow", "Finish"],
    ["choose", "Cause", cause],
    ["tick", "Evidence:"],
    ["tick", "what was wrong and what was done"],
    ...told.map((words) => ["tick", words]),
    ["press", "State it and hand over"],
  ]);
  await hands.page.waitForURL(/#\/debrief\//);
  await hands.page.getByText("You said").waitFor();
  assert.match(await hands.page.locator("main").innerText(), /Repaired · safe · \d+ of 100/);
  await hands.person.accessible();
}
