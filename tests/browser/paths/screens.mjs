// What holds on every screen at every size: it fits, it is accessible, it has one heading of the first level.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { screens } from "../screens.mjs";

async function each(visit, size) {
  const person = await visit({ size });
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
