// Runs the speed program in Chromium, lets Lighthouse mark the page and weighs the download:
// `node bench.mjs SPEED_PAGE STAGED DIST JSON`.
import { execFile } from "node:child_process";
import { readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { extname, join } from "node:path";
import { promisify } from "node:util";
import { brotliCompressSync, gzipSync } from "node:zlib";
import { sizes, switches, workshop } from "./driver.mjs";

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

/** Durations as the speed program writes them. */
const time = (s) => (s < 1 ? `${(s * 1e3).toPrecision(3)} ms` : `${s.toPrecision(3)} s`);
const row = (name, values) => `${name.padEnd(58)} ${values.map((value) => value.padStart(10)).join(" ")}`;
const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
const timing = (name, samples_s, budget_s) => {
  const s = sorted(samples_s);
  return { name, least_s: s[0], median_s: s[Math.floor(s.length / 2)], slow_s: s[Math.floor((s.length * 19) / 20)], budget_s };
};

// The built site as a slow machine meets it: four times slower, nothing kept from before.
const site = await workshop(dist);
const starts = [];
for (let n = 0; n < 5; n += 1) {
  const context = await site.browser.newContext({ viewport: sizes.laptop, serviceWorkers: "block" });
  const first = await context.newPage();
  const protocol = await context.newCDPSession(first);
  await protocol.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  await first.goto(site.url, { waitUntil: "commit" });
  await first.waitForFunction(() => document.querySelector("#app .starting") === null && document.querySelector("h1") !== null, null, { polling: "raf" });
  // Since the page's own beginning, up to the first picture after the heading was there.
  starts.push(await first.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now() / 1000))))));
  await context.close();
}
result.page = [timing("first usable screen", starts, 1.5)];
console.log(`\n${row("the built page, 4x slower, nothing kept", ["least", "median", "95 %", "budget"])}`);
for (const { name, least_s, median_s, slow_s, budget_s } of result.page) {
  console.log(row(name, [time(least_s), time(median_s), time(slow_s), time(budget_s)]) + (median_s > budget_s ? "  over" : ""));
}

// What a visitor fetches from the first address to the bench of the first job, but for the rest of the program:
// that comes meanwhile, and a path proves that a whole first job does without it.
const fetched = new Set();
const visitor = await site.browser.newContext({ viewport: sizes.laptop, serviceWorkers: "block" });
const newcomer = await visitor.newPage();
newcomer.on("response", (response) => fetched.add(new URL(response.url()).pathname));
await newcomer.goto(site.url);
await newcomer.getByText("Start the first job").click();
await newcomer.getByRole("region", { name: "In hand", exact: true }).waitFor();
await visitor.close();
const base = new URL(site.url).pathname;
const firstJob = [...fetched].map((path) => path.slice(base.length) || "index.html").filter((name) => !/^rest-\w+\.wasm$/.test(name));

/** Marks of 100 by Lighthouse, with its own ideas of a telephone and of a desktop; null where it cannot run. */
async function lighthouse(kind) {
  const asked = ["--quiet", "--output=json", "--only-categories=performance,accessibility,best-practices", `--chrome-flags=--headless=new ${switches.join(" ")}`];
  if (kind === "desktop") asked.push("--preset=desktop");
  const env = { ...process.env, CHROME_PATH: process.env.CHROMIUM };
  const ran = await promisify(execFile)("lighthouse", [site.url, ...asked], { env, maxBuffer: 1e8 }).catch(() => null);
  if (!ran) return null;
  const { categories } = JSON.parse(ran.stdout);
  return Object.fromEntries(Object.entries(categories).map(([name, { score }]) => [name, Math.round(100 * score)]));
}
result.lighthouse = {};
console.log(`\n${row("Lighthouse, of 100", ["speed", "access", "practices", "wanted"])}`);
for (const kind of ["telephone", "desktop"]) {
  const marks = await lighthouse(kind);
  if (!marks) {
    console.log(`${kind}: Lighthouse could not run: run '.ci/setup bench' with a network`);
    continue;
  }
  result.lighthouse[kind] = marks;
  const values = [marks.performance, marks.accessibility, marks["best-practices"]];
  console.log(row(kind, [...values, 95].map(String)) + (Math.min(...values) < 95 ? "  under" : ""));
}
await site.close();

/** Sizes in kB: as it is, gzipped, by brotli. */
const weigh = (bytes) => ({ raw_kb: bytes.length / 1000, gzip_kb: gzipSync(bytes, { level: 9 }).length / 1000, brotli_kb: brotliCompressSync(bytes).length / 1000 });
const programs = (folder) => readdirSync(folder).filter((name) => name.endsWith(".wasm")).map((name) => join(folder, name));
const walk = (folder) =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? walk(path) : [path];
  });
const weighAll = (paths) => {
  const sum = { raw_kb: 0, gzip_kb: 0, brotli_kb: 0 };
  for (const path of paths) {
    const one = weigh(readFileSync(path));
    // A file that is compressed already travels as it is.
    const packed = [".png", ".woff2", ".webp"].includes(extname(path));
    for (const key of Object.keys(sum)) sum[key] += packed ? one.raw_kb : one[key];
  }
  return sum;
};
const budget_kb = 900;
const first = "all that a first job needs";
result.size = {
  "program as compiled": weighAll(programs(staged)),
  "program as shipped": weighAll(programs(dist)),
  [first]: weighAll(firstJob.map((name) => join(dist, name))),
  "whole site, every language": weighAll(walk(dist)),
};
console.log(`\n${row("size, kB", ["raw", "gzip", "brotli", "budget"])}`);
for (const [name, size] of Object.entries(result.size)) {
  const budget = name === first ? String(budget_kb) : "-";
  const over = name === first && size.brotli_kb > budget_kb ? "  over" : "";
  console.log(row(name, [...[size.raw_kb, size.gzip_kb, size.brotli_kb].map((kb) => kb.toFixed(0)), budget]) + over);
}
writeFileSync(jsonPath, `${JSON.stringify(result, null, 1)}\n`);
