// Runs every path in paths/ on the built site: `node run.mjs DIST [WORD]` (only paths whose name holds WORD).
//
// A path exports a function; its exported name is the sentence that is proved. Each gets an empty
// browser of its own and a server of its own, so that none can lean on another.
import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { workshop } from "./driver.mjs";

const [dist = "dist", word = ""] = process.argv.slice(2);
const folder = join(dirname(fileURLToPath(import.meta.url)), "paths");
let passed = 0;
const failures = [];

for (const file of readdirSync(folder).filter((name) => name.endsWith(".mjs")).sort()) {
  if (!file.includes(word)) continue;
  for (const [name, path] of Object.entries(await import(join(folder, file)))) {
    const title = `${file.replace(/\.mjs$/, "")}: ${name.replaceAll("_", " ")}`;
    const started = Date.now();
    const shop = await workshop(dist);
    const visits = [];
    try {
      await path({
        ...shop,
        visit: async (options) => {
          const visit = await shop.visit(options);
          visits.push(visit);
          return visit;
        },
      });
      for (const visit of visits) visit.quiet();
      passed += 1;
      console.log(`ok     ${title} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
    } catch (error) {
      failures.push(title);
      console.log(`FAILED ${title}\n    ${error.stack?.split("\n").slice(0, 14).join("\n    ") ?? error}`);
      for (const visit of visits) for (const line of visit.wrong.slice(0, 5)) console.log(`    also: ${line}`);
    } finally {
      await shop.close();
    }
  }
}

console.log(`pages: ${passed} passed, ${failures.length} failed`);
process.exit(failures.length || passed === 0 ? 1 : 0);
