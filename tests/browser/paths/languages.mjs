// The page speaks the reader's language: chosen or as the device is set, without a network, and everywhere.
import assert from "node:assert/strict";
import { sizes } from "../driver.mjs";
import { screens } from "../screens.mjs";

const languageOf = (person) => person.page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]);

export async function a_language_is_chosen_by_its_own_name_and_back({ visit }) {
  const person = await visit({ at: "#/settings" });
  assert.deepEqual(await languageOf(person), ["en", "ltr"]);
  for (const [name, code, heading] of [
    ["Español", "es", "Ajustes"],
    ["हिन्दी", "hi", "सेटिंग"],
    ["English", "en", "Settings"],
  ]) {
    await Promise.all([person.page.waitForEvent("load"), person.page.getByLabel(name, { exact: true }).check()]);
    await person.drawn();
    assert.deepEqual(await languageOf(person), [code, "ltr"]);
    assert.match(await person.page.getByRole("heading", { level: 1 }).innerText(), new RegExp(heading), name);
    assert.ok(await person.page.getByLabel(name, { exact: true }).isChecked(), name);
    await person.accessible();
  }
}

export async function the_device_s_language_is_spoken_where_the_page_has_it({ visit }) {
  for (const [locale, code] of [["es-MX", "es"], ["hi-IN", "hi"], ["nl-NL", "en"]]) {
    const person = await visit({ locale });
    assert.equal((await languageOf(person))[0], code, locale);
  }
}

export async function while_the_page_opens_it_speaks_the_device_s_language({ browser, url }) {
  for (const [locale, code, opening, lead] of [
    ["es-MX", "es", "Abriendo el taller …", /^Una lavadora/],
    ["hi-IN", "hi", "वर्कशॉप खुल रही है …", /^एक वॉशिंग मशीन/],
  ]) {
    const context = await browser.newContext({ locale, serviceWorkers: "block" });
    // The program does not come, so the page goes on opening.
    await context.route(/program-\w+\.wasm$/, () => {});
    const page = await context.newPage();
    await page.goto(url, { waitUntil: "commit" });
    await page.getByRole("status").filter({ hasText: opening }).waitFor();
    assert.equal(await page.locator(".starting").getAttribute("lang"), code);
    assert.match(await page.locator(".starting-lead").innerText(), lead);
    await context.close();
  }
}

export async function a_language_is_there_with_the_cable_pulled({ visit, pullCable }) {
  const person = await visit({ locale: "hi-IN" });
  await person.page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 20_000 });
  await person.page.waitForFunction(
    async () => {
      const kept = await Promise.all((await caches.keys()).map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)));
      return kept.flat().some((url) => url.includes("language_hi"));
    },
    null,
    { timeout: 20_000 },
  );
  const spoken = await person.page.getByRole("heading", { level: 1 }).innerText();
  await pullCable();
  await person.page.reload();
  await person.drawn();
  assert.deepEqual(await languageOf(person), ["hi", "ltr"]);
  assert.equal(await person.page.getByRole("heading", { level: 1 }).innerText(), spoken);
}

export async function every_screen_fits_and_is_accessible_in_every_language({ visit }) {
  for (const locale of ["es-MX", "hi-IN"]) {
    const person = await visit({ locale, size: sizes.telephone });
    const all = await screens(person);
    for (const { at } of all) {
      await person.go(at);
      await person.fits();
    }
    await person.page.setViewportSize(sizes.laptop);
    for (const { at } of all) {
      await person.go(at);
      await person.fits();
      await person.accessible();
    }
  }
}

/** Texts that stand without marks though they hold words. */
const unmarked = (person) =>
  person.page.evaluate(() => {
    const same = "code, kbd, samp, input, textarea, select[name], .qr, [lang], [data-same]";
    const found = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const text = node.data.trim();
      if (!/[A-Za-z]{3}/.test(text) || text.includes("⟦") || node.parentElement.closest(`script, style, ${same}`)) continue;
      found.push(text.slice(0, 80));
    }
    for (const element of document.querySelectorAll("[aria-label], [title], [placeholder], [aria-description], [aria-valuetext]")) {
      for (const name of ["aria-label", "title", "placeholder", "aria-description", "aria-valuetext"]) {
        const text = element.getAttribute(name) ?? "";
        if (/[A-Za-z]{3}/.test(text) && !text.includes("⟦") && !element.closest(same)) found.push(`${name}: ${text.slice(0, 80)}`);
      }
    }
    return [...new Set(found)];
  });

/** The same in every language: the program's name and people's. */
const names = /^(Tubwright|English|Español|(Mr|Mrs|Ms|Dr)\b.*)$/;

export async function every_text_can_be_translated_and_lines_may_run_from_right_to_left({ visit }) {
  const person = await visit();
  const left = [];
  for (const { at } of await screens(person)) {
    await person.go(`?marked-texts${at}`);
    await person.page.reload();
    await person.drawn();
    assert.deepEqual(await languageOf(person), ["ar-x-pseudo", "rtl"]);
    for (const text of await unmarked(person)) if (!names.test(text)) left.push(`${at}: ${text}`);
    await person.page.setViewportSize(sizes.telephone);
    await person.fits();
    await person.page.setViewportSize(sizes.laptop);
    await person.fits();
  }
  assert.equal(left.length, 0, `${left.length} texts without marks:\n${left.slice(0, 200).join("\n")}`);
}
