// Pictures of every screen at every size, light and dark, and in every language: `node shots.mjs DIST FOLDER`.
import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { sizes, workshop } from "./driver.mjs";
import { screens } from "./screens.mjs";

const [dist = "dist", folder = "target/shots"] = process.argv.slice(2);
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const all = { ...sizes, desktop: { width: 1920, height: 1080 } };
const views = [
  ...Object.values(all).flatMap((size) => ["light", "dark"].map((colorScheme) => ({ size, colorScheme, mark: colorScheme === "dark" ? "-dark" : "" }))),
  ...["es-MX", "hi-IN"].flatMap((locale) => [sizes.laptop, sizes.telephone].map((size) => ({ size, locale, mark: `-${locale.slice(0, 2)}` }))),
];
const shop = await workshop(dist);
let count = 0;
let wrong = 0;
for (const { mark, ...view } of views) {
  const person = await shop.visit(view);
  for (const { name, at } of await screens(person)) {
    await person.go(at);
    const file = join(folder, `${name}-${view.size.width}x${view.size.height}${mark}.png`);
    // What is seen first, then the whole page where it is longer.
    await person.page.screenshot({ path: file });
    const tall = await person.page.evaluate(() => document.documentElement.scrollHeight > innerHeight + 1);
    if (tall) await person.page.screenshot({ path: file.replace(".png", "-whole.png"), fullPage: true });
    count += 1;
    console.log(`shots: ${file}`);
  }
  for (const line of person.wrong) console.error(`shots: ${view.size.width}${mark}: ${line}`);
  wrong += person.wrong.length;
  await person.leave();
}
await shop.close();
console.log(`shots: ${count} pictures of what is seen first in ${folder}`);
process.exit(wrong ? 1 : 0);
