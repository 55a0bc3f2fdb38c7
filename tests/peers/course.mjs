// A course package, made in the page, started by other people's run-times: SCORM 1.2 and SCORM 2004 in scorm-again,
// and cmi5 by a host in front of a real store of statements. The command line makes the same package to the byte.
// Not part of `make test`, since the peers have to be installed:
//
//   mkdir PEERS && cd PEERS && npm i scorm-again@3.4.3
//   node tests/peers/course.mjs PEERS [DIST] [FOLDER/tubwright]     (at the top of the project)
//
// For cmi5 set STORE to the base address of a store, STORE_AUTH to user:password. Only statements are asked of
// it; state and profiles are kept by the host here. TUBWRIGHT_TOOLS and CHROMIUM are those of the browser tests.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createHash, randomUUID } from "node:crypto";
import { mkdtempSync, readFileSync, statSync } from "node:fs";
import http from "node:http";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { basename, dirname, extname, join, normalize, resolve } from "node:path";
import { serve } from "../../.ci/serve.mjs";

const [peers, dist = "dist", program = "target/debug/tubwright"] = process.argv.slice(2);
const { chromium } = createRequire(join(process.env.TUBWRIGHT_TOOLS, "node_modules", "x.js"))("playwright-core");
const scormAgain = dirname(createRequire(resolve(peers, "x.js")).resolve("scorm-again/scorm12"));
const folder = mkdtempSync(join(tmpdir(), "tubwright-course-"));
const types = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".wasm": "application/wasm", ".json": "application/json", ".svg": "image/svg+xml", ".woff2": "font/woff2", ".webmanifest": "application/manifest+json" };

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"] });

/** Makes the packages as an instructor does: the assessment is opened, a kind chosen, the file saved. */
{
  const { server: site, url } = await serve(dist);
  const context = await browser.newContext({ viewport: { width: 1366, height: 800 } });
  const page = await context.newPage();
  await page.goto(`${url}#/assessments`);
  await page.getByLabel("Open files").setInputFiles("scenarios/assessments/first_visits.json");
  const saved = async (button, name) => {
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: button }).click()]);
    await file.saveAs(join(folder, name));
    return join(folder, name);
  };
  const assessment = await saved("Save the file", "first_visits.json");
  for (const [kind, words] of [["scorm12", "SCORM 1.2"], ["scorm2004", "SCORM 2004 4th edition"], ["cmi5", "cmi5"]]) {
    await page.getByRole("radio", { name: words }).check();
    const zip = await saved("Make the package", `${kind}.zip`);
    const other = join(folder, `${kind}_other.zip`);
    execFileSync(program, ["package", `--${kind}`, "--assessment", assessment, "--dist", dist, "--base", url, "--out", other]);
    assert.ok(readFileSync(zip).equals(readFileSync(other)), `${kind}: the command line makes other bytes`);
    execFileSync("python3", ["-c", "import sys, zipfile; zipfile.ZipFile(sys.argv[1]).extractall(sys.argv[2])", zip, join(folder, kind)]);
  }
  await context.close();
  site.closeAllConnections();
  site.close();
  console.log("ok     three packages made in the page, the same to the byte as by the command line");
}

const hosts = {
  "1.2": (saved) => `<!doctype html><meta charset="utf-8"><title>host</title><script src="/peer/scorm12.min.js"></script><body><script>
    window.API = new Scorm12API({ autocommit: false, lmsCommitUrl: "/commit", dataCommitFormat: "json", logLevel: 4 });
    window.API.loadFromJSON({ core: { student_id: "trainee-0042", student_name: "Demo, Trainee", credit: "credit", lesson_mode: "normal", entry: ${saved ? '"resume"' : '"ab-initio"'} }, student_data: { mastery_score: "65" }, launch_data: "first_visits" ${saved ? `, suspend_data: ${JSON.stringify(saved)}` : ""} }, "cmi");
    window.API.on("LMSFinish", () => (window.finished = true));</script>
    <iframe id="f" src="/scorm12/index.html#/assessment/first_visits" style="width:1300px;height:740px"></iframe></body>`,
  2004: (saved) => `<!doctype html><meta charset="utf-8"><title>host</title><script src="/peer/scorm2004.min.js"></script><body><script>
    window.API_1484_11 = new Scorm2004API({ autocommit: false, lmsCommitUrl: "/commit", dataCommitFormat: "json", logLevel: 4 });
    window.API_1484_11.loadFromJSON({ learner_id: "trainee-0042", learner_name: "Demo Trainee", credit: "credit", mode: "normal", entry: ${saved ? '"resume"' : '"ab-initio"'}, scaled_passing_score: "0.65", launch_data: "first_visits" ${saved ? `, suspend_data: ${JSON.stringify(saved)}` : ""} }, "cmi");
    window.API_1484_11.on("Terminate", () => (window.finished = true));</script>
    <iframe id="f" src="/scorm2004/index.html" style="width:1300px;height:740px"></iframe></body>`,
};

/** What a cmi5 host keeps: state documents with versions, and for each session the statements it took. */
const states = new Map();
const sessions = [];
let launched;
const store = process.env.STORE;
const commits = [];
const server = http.createServer(async (request, response) => {
  const address = new URL(request.url, "http://localhost");
  let body = "";
  for await (const part of request) body += part;
  const answer = (status, text, head = {}) => response.writeHead(status, { "Content-Type": "application/json", ...head }).end(text);
  if (address.pathname === "/commit") {
    commits.push(JSON.parse(body));
    return answer(200, '{"result":"true","errorCode":0}');
  }
  if (address.pathname.startsWith("/host/")) return answer(200, hosts[basename(address.pathname)](address.searchParams.get("saved")), { "Content-Type": "text/html" });
  if (address.pathname === "/back") return answer(200, "<title>back</title>", { "Content-Type": "text/html" });
  if (address.pathname === "/fetch") {
    if (request.method !== "POST" || launched.taken) return answer(200, '{"error-code":"1","error-text":"already returned"}');
    launched.taken = true;
    return answer(200, JSON.stringify({ "auth-token": launched.token }));
  }
  if (address.pathname.startsWith("/store/")) {
    const session = sessions.find((one) => request.headers.authorization === `Basic ${one.token}`);
    if (!session) return answer(401, "{}");
    if (request.headers["x-experience-api-version"] !== "1.0.3") return answer(400, "{}");
    const what = address.pathname.slice("/store/".length);
    if (what === "statements" && request.method === "GET") {
      const there = session.took.find((one) => one.id === address.searchParams.get("statementId"));
      return there ? answer(200, JSON.stringify(there)) : answer(404, "");
    }
    if (what === "statements") {
      const all = [JSON.parse(body)].flat();
      for (const statement of all) {
        const wrong = brokenRules(statement, session);
        if (wrong.length) session.refused.push(...wrong);
        if (wrong.length) return answer(403, JSON.stringify(wrong));
        session.took.push(statement);
      }
      if (store) {
        const reply = await fetch(`${store}/statements`, { method: "POST", body: JSON.stringify(all), headers: { "Content-Type": "application/json", "X-Experience-API-Version": "1.0.3", Authorization: `Basic ${Buffer.from(process.env.STORE_AUTH).toString("base64")}` } });
        if (!reply.ok) session.refused.push(`the store: ${reply.status} ${await reply.text()}`);
      }
      return answer(200, JSON.stringify(all.map((statement) => statement.id)));
    }
    const key = address.search;
    const there = states.get(key);
    if (request.method === "GET") return there ? answer(200, there.text, { ETag: there.etag }) : answer(404, "");
    const fits = there ? request.headers["if-match"] === there.etag : request.headers["if-none-match"] === "*";
    if (!fits) return answer(there ? 412 : 400, "");
    states.set(key, { text: body, etag: `"${createHash("sha1").update(body).digest("hex")}"` });
    return answer(204, undefined);
  }
  const file = address.pathname.startsWith("/peer/") ? join(scormAgain, basename(address.pathname)) : join(folder, normalize(address.pathname));
  if (!statSync(file, { throwIfNoEntry: false })?.isFile()) return answer(404, "");
  answer(200, readFileSync(file), { "Content-Type": types[extname(file)] ?? "application/octet-stream" });
});
await new Promise((done) => server.listen(0, "127.0.0.1", done));
const base = `http://127.0.0.1:${server.address().port}`;

/** Rules of the cmi5 specification for one statement of a unit, sections 9 and 10. */
function brokenRules(statement, launched) {
  const wrong = [];
  const need = (is, what) => is || wrong.push(`${statement.verb?.id}: ${what}`);
  const verb = statement.verb.id.split("/").pop();
  const categories = (statement.context.contextActivities?.category ?? []).map((one) => one.id);
  const isDefined = categories.some((id) => id.endsWith("/categories/cmi5"));
  const earlier = launched.took.map((one) => one.verb.id.split("/").pop());
  need(/^[0-9a-f-]{36}$/.test(statement.id), "an id of its own");
  need(/Z$/.test(statement.timestamp ?? ""), "a moment in UTC");
  need(statement.context.registration === launched.registration, "the registration");
  need(statement.context.extensions?.["https://w3id.org/xapi/cmi5/context/extensions/sessionid"] === launched.session, "the session");
  need(statement.context.contextActivities?.grouping?.some((one) => one.id === "https://school.example/course"), "the template's grouping");
  need(statement.actor.account.name === launched.actor.account.name, "the actor as launched");
  need(earlier.length > 0 || (verb === "initialized" && isDefined), "initialized first");
  need(!earlier.includes("terminated"), "nothing after terminated");
  // Order goes by the moments, section 9.3.
  const at = (one) => Date.parse(one.timestamp);
  need(launched.took.every((one) => verb !== "terminated" || at(one) <= at(statement)), "terminated is the last by its moment");
  need(launched.took.length === 0 || at(launched.took[0]) <= at(statement), "initialized is the first by its moment");
  need(at(statement) <= Date.now() + 1000, "no moment in the future");
  if (!isDefined) return wrong;
  const result = statement.result ?? {};
  need(statement.object.id === launched.activity, "the unit as object");
  need(!earlier.includes(verb) || !["initialized", "passed", "failed", "completed", "terminated"].includes(verb), "twice");
  need(!("score" in result) || ["passed", "failed"].includes(verb), "no score here");
  need("success" in result === ["passed", "failed"].includes(verb), "success where it is judged");
  need("completion" in result === (verb === "completed"), "completion where it is completed");
  need(categories.some((id) => id.endsWith("/moveon")) === ["passed", "failed", "completed"].includes(verb), "the category of moving on");
  need(verb === "initialized" || /^PT/.test(result.duration ?? ""), "a duration");
  const session = (at(statement) - at(launched.took[0] ?? statement)) / 1000;
  const [, minutes, seconds] = /^PT(\d+)M([\d.]+)S$/.exec(result.duration ?? "PT0M0S") ?? [0, NaN, NaN];
  need(verb !== "terminated" || Math.abs(60 * minutes + Number(seconds) - session) < 1, `the time since initialized, ${session} s, not ${result.duration}`);
  if (["passed", "failed"].includes(verb)) {
    need(statement.context.extensions["https://w3id.org/xapi/cmi5/context/extensions/masteryscore"] === 0.65, "the mastery score");
    if (result.score) need(result.score.scaled >= 0.65 === (verb === "passed"), "a score that goes with the verb");
  }
  return wrong;
}

/** Begins the assessment in a page or frame, as the person that the host names. */
async function begin(place) {
  await place.getByRole("heading", { name: "First visits alone" }).waitFor({ timeout: 20_000 });
  assert.equal(await place.getByLabel("Your number").inputValue(), "trainee-0042");
  await place.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await place.getByRole("button", { name: /^Begin/ }).click();
  await place.getByRole("link", { name: "Job 1", exact: true }).click();
  await place.getByRole("region", { name: "In hand", exact: true }).waitFor();
  await place.getByRole("button", { name: "Since when?" }).or(place.locator(".job-card__questions button").first()).first().click();
  await place.getByRole("tab", { name: "Notebook 1" }).waitFor();
  await new Promise((done) => setTimeout(done, 800));
}

async function handIn(place) {
  await place.getByRole("button", { name: "Hand in" }).click();
  await place.getByRole("button", { name: /^Yes, hand in/ }).click();
  await place.getByRole("heading", { name: /^Result/ }).waitFor();
  await new Promise((done) => setTimeout(done, 800));
}

for (const version of ["1.2", "2004"]) {
  const cmi = (commit) => commit.cmi ?? commit.runtimeData?.cmi ?? commit;
  const context = await browser.newContext({ viewport: { width: 1366, height: 800 } });
  const page = await context.newPage();
  const errors = [];
  page.on("pageerror", (error) => errors.push(error.message));
  await page.goto(`${base}/host/${version}`);
  let frame = await (await page.waitForSelector("#f")).contentFrame();
  await begin(frame);
  const saved = cmi(commits.at(-1)).suspend_data;
  assert.ok(saved && saved.length < 4096, `${saved?.length} letters of suspended data`);
  await page.evaluate(() => document.getElementById("f").remove());
  await page.waitForFunction(() => window.finished);
  assert.match(JSON.stringify(cmi(commits.at(-1))), /"exit":"suspend"/);
  await context.close();
  console.log(`ok     SCORM ${version}: begun, each act kept (${saved.length} letters), suspended and finished when the frame goes`);

  // Another computer: nothing is in its browser, all comes from the run-time.
  const other = await browser.newContext({ viewport: { width: 1366, height: 800 } });
  const again = await other.newPage();
  again.on("pageerror", (error) => errors.push(error.message));
  await again.goto(`${base}/host/${version}?saved=${encodeURIComponent(saved)}`);
  frame = await (await again.waitForSelector("#f")).contentFrame();
  await frame.getByText("begun, 0 min on site").waitFor({ timeout: 20_000 });
  await frame.getByRole("link", { name: "Job 1", exact: true }).click();
  await frame.getByRole("tab", { name: "Notebook 1" }).waitFor();
  await frame.getByRole("link", { name: "Assessment" }).first().click();
  await handIn(frame);
  const last = cmi(commits.at(-1));
  if (version === "1.2") assert.equal(last.core.lesson_status, "failed");
  else assert.deepEqual([last.success_status, last.completion_status], ["failed", "completed"]);
  assert.ok(Number(version === "1.2" ? last.core.score.raw : last.score.raw) < 65);
  await again.evaluate(() => document.getElementById("f").remove());
  await again.waitForFunction(() => window.finished);
  assert.deepEqual(errors, []);
  await other.close();
  console.log(`ok     SCORM ${version}: resumed elsewhere, handed in, score and status told, finished`);
}

{
  const registration = randomUUID();
  const actor = { objectType: "Agent", account: { homePage: "https://school.example", name: "trainee-0042" } };
  const activity = "https://school.example/au/1";
  const agent = JSON.stringify(actor);
  const query = new URLSearchParams({ activityId: activity, agent, registration, stateId: "LMS.LaunchData" });
  const same = (search) => [...new URLSearchParams(search)].sort().join();
  const data = () => ({ contextTemplate: { contextActivities: { grouping: [{ objectType: "Activity", id: "https://school.example/course" }] }, extensions: { "https://w3id.org/xapi/cmi5/context/extensions/sessionid": launched.session } }, launchMode: "Normal", moveOn: "CompletedAndPassed", masteryScore: 0.65, returnURL: `${base}/back` });
  const get = states.get.bind(states);
  states.get = (key) => (same(key) === same(`?${query}`) ? { text: JSON.stringify(data()), etag: '"l"' } : get(key));
  /** Each launch is a session with a key of its own. */
  const launch = () => {
    const number = sessions.length + 1;
    launched = { token: Buffer.from(`t:${number}`).toString("base64"), session: randomUUID(), registration, activity, actor, took: [], refused: [] };
    sessions.push(launched);
    return `${base}/cmi5/index.html?${new URLSearchParams({ start: "first_visits", endpoint: `${base}/store/`, fetch: `${base}/fetch?k=${number}`, actor: agent, registration, activityId: activity })}`;
  };
  const said = (session) => session.took.map((statement) => statement.verb.id.split("/").pop());
  const until = async (session, last) => {
    for (let tries = 0; tries < 50 && said(session).at(-1) !== last; tries += 1) await new Promise((done) => setTimeout(done, 100));
    assert.deepEqual(session.refused, []);
    assert.equal(said(session).at(-1), last);
  };
  const context = await browser.newContext({ viewport: { width: 1366, height: 800 } });
  const page = await context.newPage();
  await page.goto(launch());
  await begin(page);
  // A page that loads itself anew is in the same session: the key is not fetched again, nothing is said twice.
  await Promise.all([page.waitForEvent("load"), page.evaluate(() => void setTimeout(() => location.reload(), 50))]);
  await page.getByRole("tab", { name: "Notebook 1" }).waitFor({ timeout: 20_000 });
  assert.deepEqual(said(launched), ["initialized"]);
  // Closed before it is handed in: the session is over, and its time is told.
  await page.close({ runBeforeUnload: true });
  await until(launched, "terminated");
  assert.deepEqual(said(launched), ["initialized", "terminated"]);
  console.log(`ok     cmi5: closed before handing in: terminated after ${launched.took.at(-1).result.duration}`);
  // Launched once more, the work is there, and nothing of the session before is said again.
  const second = await context.newPage();
  await second.goto(launch());
  await second.getByText("begun, 0 min on site").waitFor({ timeout: 20_000 });
  await handIn(second);
  await second.getByRole("button", { name: "Back to the course" }).click();
  await second.waitForURL(`${base}/back`);
  await until(launched, "terminated");
  const verbs = said(launched);
  assert.equal(verbs[0], "initialized");
  assert.deepEqual(verbs.slice(-3), ["failed", "completed", "terminated"]);
  assert.deepEqual(said(sessions[0]), ["initialized", "terminated"]);
  await context.close();
  console.log(`ok     cmi5: ${verbs.length} statements taken${store ? ", and by the store" : ""}: ${[...new Set(verbs)].join(", ")}`);
}
await browser.close();
server.close();
