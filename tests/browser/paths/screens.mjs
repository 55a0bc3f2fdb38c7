// What holds on every screen at every size: it fits, it is accessible, it has one heading of the first level.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { screens } from "../screens.mjs";

async function each(visit, size, options = {}, before = async () => {}) {
  const person = await visit({ size, ...options });
  await before(person);
  const broken = [];
  for (const { name, at } of await screens(person)) {
    await person.go(at);
    assert.equal(await person.page.locator("h1").count(), 1, `${name} has not one main heading`);
    for (const check of ["fits", "accessible"]) await person[check]().catch((error) => broken.push(`${name}: ${error.message}`));
  }
  assert.deepEqual(broken, []);
}

export async function on_a_laptop_every_screen_fits_and_is_accessible({ visit }) {
  await each(visit, sizes.laptop);
}

export async function on_a_tablet_every_screen_fits_and_is_accessible({ visit }) {
  await each(visit, sizes.tablet);
}

export async function on_a_telephone_every_screen_fits_and_is_accessible({ visit }) {
  await each(visit, sizes.telephone);
}

export async function in_the_dark_every_screen_is_accessible({ visit }) {
  await each(visit, sizes.laptop, { colorScheme: "dark" });
}

/** Chooses on the settings' screen, as a person would. */
async function choose(person, ...labels) {
  await person.go("#/settings");
  for (const label of labels) await person.page.getByLabel(label, { exact: true }).check();
  await person.page.waitForTimeout(300); // kept
}

export async function with_strong_contrast_by_day_every_screen_is_accessible({ visit }) {
  await each(visit, sizes.laptop, { colorScheme: "dark" }, (person) => choose(person, "Strong contrast", "light"));
}

export async function with_strong_contrast_by_night_every_screen_is_accessible({ visit }) {
  await each(visit, sizes.laptop, {}, (person) => choose(person, "Strong contrast", "dark"));
}

export async function in_colours_given_by_the_system_every_screen_is_accessible({ visit }) {
  await each(visit, sizes.laptop, { forcedColors: "active" });
}

// Twice as large on a small laptop: half as many pixels of the page's own (WCAG 2.2, 1.4.4 and 1.4.10).
export async function at_twice_the_size_every_screen_fits({ visit }) {
  await each(visit, { width: 683, height: 384 });
}

export async function the_colours_chosen_stay({ visit }) {
  const person = await visit({ colorScheme: "light" });
  const ground = () => person.page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  await person.go("#/settings");
  const byDay = await ground();
  await choose(person, "dark");
  assert.notEqual(await ground(), byDay);
  await person.page.reload();
  await person.drawn();
  await person.page.waitForTimeout(300);
  assert.notEqual(await ground(), byDay);
}
