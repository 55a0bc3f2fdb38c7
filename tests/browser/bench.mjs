// Runs the speed program in Chromium and weighs the download: `node bench.mjs SPEED_PAGE STAGED DIST JSON`.
import { readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { extname, join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import { workshop } from "./driver.mjs";

const [speedPage, staged, dist, jsonPath] = process.argv.slice(2);
const result = JSON.parse(readFileSync(jsonPath, "utf8"));

writeFileSync(join(speedPage, "index.html"), '<!doctype html><title>speed</title><script type="module" src="./start.js"></script>\n');
writeFileSync(join(speedPage, "start.js"), 'import init from "./speed.js";\nawait init();\n');
const shop = await workshop(speedPage);
const page = await shop.browser.newPage();
const wrong = [];
page.on("pageerror", (error) => wrong.push(error.message));
await page.goto(shop.url);
await page.waitForFunction(() => globalThis.speed !== undefined, null, { timeout: 600_000 }).catch((error) => wrong.push(error.message));
const speed = wrong.length ? null : JSON.parse(await page.evaluate(() => globalThis.speed));
await shop.close();
if (!speed) {
  console.error(`bench: the speed program stopped: ${wrong[0]}`);
  process.exit(1);
}
console.log(`\n${speed.table}`);
result.chromium = speed.rows;

/** Sizes in kB: as it is, gzipped, by brotli. */
const weigh = (bytes) => ({ raw_kb: bytes.length / 1000, gzip_kb: gzipSync(bytes, { level: 9 }).length / 1000, brotli_kb: brotliCompressSync(bytes).length / 1000 });
const program = (folder) => readFileSync(join(folder, readdirSync(folder).find((name) => name.endsWith("_bg.wasm"))));
const all = [];
const walk = (folder) => {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) walk(path);
    else all.push(path);
  }
};
walk(dist);
const sum = { raw_kb: 0, gzip_kb: 0, brotli_kb: 0 };
for (const path of all) {
  const one = weigh(readFileSync(path));
  // A file that is compressed already travels as it is.
  const packed = [".png", ".woff2", ".webp"].includes(extname(path));
  for (const key of Object.keys(sum)) sum[key] += packed ? one.raw_kb : one[key];
}
const budget_kb = 900;
result.size = { "program as compiled": weigh(program(staged)), "program as shipped": weigh(program(dist)), "whole site": sum };
console.log(`\n${"size, kB".padEnd(58)} ${["raw", "gzip", "brotli", "budget"].map((word) => word.padStart(10)).join(" ")}`);
for (const [name, size] of Object.entries(result.size)) {
  const budget = name === "whole site" ? String(budget_kb) : "-";
  const over = name === "whole site" && size.gzip_kb > budget_kb ? "  over" : "";
  console.log(`${name.padEnd(58)} ${[size.raw_kb, size.gzip_kb, size.brotli_kb].map((kb) => kb.toFixed(0).padStart(10)).join(" ")} ${budget.padStart(10)}${over}`);
}
writeFileSync(jsonPath, `${JSON.stringify(result, null, 1)}\n`);
