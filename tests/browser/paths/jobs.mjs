// The list of jobs: looked through, and never empty without a way on.
import assert from "node:assert/strict";

export async function a_search_that_finds_nothing_says_so_and_shows_all_jobs_again({ visit }) {
  const person = await visit();
  const { page } = person;
  await person.go("#/jobs");
  const tiles = page.locator(".job-tile");
  await tiles.first().waitFor();
  const all = await tiles.count();
  const find = page.getByRole("searchbox", { name: "Find" });
  const level = page.getByRole("combobox", { name: /^Level/ });
  const nothing = page.getByText("No job fits all of that.");
  for (const by of ["mouse", "keys"]) {
    // Chosen to and fro, so that the browser remembers a choice.
    await level.selectOption("1");
    await level.selectOption("");
    await level.selectOption("2");
    await find.fill("no such words anywhere");
    await nothing.waitFor();
    await person.accessible();
    const button = page.getByRole("button", { name: "Show all jobs" });
    if (by === "mouse") await button.click();
    else {
      await button.focus();
      await page.keyboard.press("Enter");
    }
    await nothing.waitFor({ state: "detached" });
    assert.equal(await tiles.count(), all);
    assert.equal(await find.inputValue(), "");
    assert.equal(await level.inputValue(), "");
    assert.equal(await page.evaluate(() => document.activeElement?.id), "jobs-find", "the focus is not lost");
  }
}
