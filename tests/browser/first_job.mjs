// Plays first jobs on a site whose functions mark that they ran, and writes down which did:
// `node first_job.mjs COUNTING_DIST RAN`. What runs here is what the page fetches first.
import { writeFileSync } from "node:fs";
import { workshop } from "./driver.mjs";
import * as jobs from "./paths/job.mjs";

const [dist, ran] = process.argv.slice(2);

/** Runs in the page and in its threads: the numbers of the functions that ran there. */
async function marked(script) {
  const program = await (await import(script)).default();
  return Object.entries(program).flatMap(([name, mark]) => (/^ran\d+$/.test(name) && mark.value ? [Number(name.slice(3))] : []));
}

const all = new Set();
const failed = [];
// The first job is on one machine; what others need more comes with the rest.
for (const play of Object.values(jobs).filter(({ name }) => name.startsWith("a_whole_job"))) {
  const shop = await workshop(dist);
  const visits = [];
  const visit = async (options) => {
    visits.push(await shop.visit(options));
    return visits.at(-1);
  };
  await play({ ...shop, visit }).catch((error) => failed.push(`${play.name}: ${error.message.split("\n")[0]}`));
  // Somebody who only watches for a while: the clock that runs is kept now and then.
  const { page: watched } = await visit({ at: "#/bench/no_water" });
  await watched.getByRole("region", { name: "Instrument in hand" }).waitFor().catch((error) => failed.push(`watching: ${error.message.split("\n")[0]}`));
  await watched.waitForTimeout(12_000);
  for (const { page } of visits) {
    // Until the marks stand: what its thread has answered is part of a first job's debrief.
    await page.waitForFunction(() => !/ of 100 for now/.test(document.querySelector("main")?.innerText ?? ""), null, { timeout: 30_000 }).catch((error) => failed.push(`${play.name}: ${error.message.split("\n")[0]}`));
    const script = await page.evaluate(() => {
      // What says that the rest cannot be had must not need it.
      dispatchEvent(new Event("rest-missing"));
      return document.querySelector("link[rel=modulepreload]").href;
    });
    for (const place of [page, ...page.workers()]) {
      // A thread may end meanwhile; what only it ran comes with the rest.
      for (const n of await place.evaluate(marked, script).catch(() => [])) all.add(n);
    }
  }
  await shop.close();
}
if (all.size === 0) failed.push("no function marked that it ran: does the site hold the counting program?");
if (failed.length) {
  console.error(failed.map((line) => `first_job: ${line}`).join("\n"));
  process.exit(1);
}
writeFileSync(ran, JSON.stringify([...all].sort((a, b) => a - b)));
