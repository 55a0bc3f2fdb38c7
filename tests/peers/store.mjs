// The queue of results against a real store of learning records that is away at first. Not part of `make test`:
//
//   python3 -m venv PEERS/venv && PEERS/venv/bin/pip install "ralph-malph[lrs,cli]==5.1.0" requests
//   node tests/peers/store.mjs PEERS [DIST]     (at the top of the project)
//
// The store keeps its statements in a file. As released it opens that file for creation at every write; a line in START
// puts that right. TUBWRIGHT_TOOLS and CHROMIUM are those of the browser tests.
import assert from "node:assert/strict";
import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { workshop } from "../browser/driver.mjs";

const [peers, dist = "dist"] = process.argv.slice(2);
const venv = resolve(peers, "venv/bin");
const home = mkdtempSync(join(tmpdir(), "tubwright-store-"));
const port = 8123;
const START = `
import sys
from ralph.backends.lrs.fs import FSLRSBackend
from ralph.backends.data.base import BaseOperationType
FSLRSBackend.default_operation_type = BaseOperationType.APPEND
import uvicorn
uvicorn.run("ralph.api:app", host="127.0.0.1", port=${port}, log_level="warning")
`;

const shop = await workshop(dist);
const origin = new URL(shop.url).origin;
const env = {
  ...process.env,
  RALPH_RUNSERVER_BACKEND: "fs",
  RALPH_RUNSERVER_AUTH_BACKENDS: "basic",
  RALPH_AUTH_FILE: join(home, "auth.json"),
  RALPH_APP_DIR: home,
  RALPH_BACKENDS__LRS__FS__DEFAULT_DIRECTORY_PATH: join(home, "data"),
  RALPH_BACKENDS__LRS__FS__DEFAULT_LRS_FILE: "statements.jsonl",
  RALPH_RUNSERVER_CORS_ALLOW_ORIGINS: JSON.stringify([origin]),
};
execFileSync(join(venv, "ralph"), ["auth", "-u", "demo", "-p", "demo-secret", "-s", "statements/write", "-s", "statements/read", "-A", "demo", "https://school.example", "-N", "Demo", "-w"], { env, stdio: "ignore" });

let store;
const up = async () => {
  store = spawn(join(venv, "python"), ["-c", START], { env, stdio: ["ignore", "ignore", "inherit"] });
  for (let tries = 0; tries < 100; tries += 1) {
    if ((await fetch(`http://127.0.0.1:${port}/__lbheartbeat__`).catch(() => null))?.ok) return;
    await new Promise((done) => setTimeout(done, 200));
  }
  throw new Error("the store did not start");
};
const held = async () => {
  const reply = await fetch(`http://127.0.0.1:${port}/xAPI/statements?limit=100`, { headers: { Authorization: `Basic ${Buffer.from("demo:demo-secret").toString("base64")}`, "X-Experience-API-Version": "1.0.3" } });
  return (await reply.json()).statements;
};

try {
  const person = await shop.visit();
  const { page } = person;
  const setStore = async (password) => {
    await person.go("#/settings");
    await page.getByLabel("Address").fill(`http://127.0.0.1:${port}/xAPI`);
    await page.getByLabel("User").fill("demo");
    await page.getByLabel("Password").fill(password);
    await page.getByRole("button", { name: "Keep", exact: true }).click();
    await page.getByText("Results are sent there").waitFor();
  };
  await setStore("wrong");
  await person.go("#/assessments");
  await page.getByRole("button", { name: "Make a new one" }).click();
  await page.getByLabel("Title").fill("Store");
  const link = await page.getByLabel(/^Link/).inputValue();
  await person.go(link.slice(link.indexOf("#")));
  await page.getByLabel("Your number").fill("c-0042");
  await page.getByRole("checkbox", { name: /I know/ }).check();
  await page.getByRole("button", { name: /^Begin/ }).click();
  for (const job of ["Job 1", "Job 2"]) {
    await page.getByRole("link", { name: job, exact: true }).click();
    await page.locator(".job-card__questions button").first().click();
    await page.getByRole("tab", { name: "Notebook 1" }).waitFor();
    await page.waitForTimeout(500);
    await page.getByRole("link", { name: "Assessment" }).first().click();
  }
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: /^Yes, hand in/ }).click();
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
  await page.waitForTimeout(800);
  await person.go("#/settings");
  await page.getByText(/3 results wait: nobody answers/).waitFor();
  console.log("ok     the store is away: two jobs and the whole wait");
  await up();
  await page.getByRole("button", { name: "Send now" }).click();
  await page.getByText(/3 results wait: the store refuses the user or the password/).waitFor();
  console.log("ok     a wrong password: two jobs and the whole wait");
  await setStore("demo-secret");
  await page.waitForFunction(() => !document.body.innerText.includes("results wait"));
  const first = await held();
  const verbs = first.map((statement) => statement.verb.id.split("/").pop());
  const whole = first.filter((statement) => statement.object.id.includes("/assessment/"));
  const of = (list) => list.map((statement) => statement.verb.id.split("/").pop()).sort();
  assert.deepEqual(of(whole), ["completed", "failed", "initialized", "terminated"]);
  const [failed] = whole.filter((statement) => statement.verb.id.endsWith("/failed"));
  assert.ok(failed.result.success === false && failed.result.score.scaled < 0.65 && /^PT/.test(failed.result.duration));
  // Practice: each job is an attempt of its own, and stands under the assessment.
  assert.equal(verbs.filter((verb) => verb === "completed").length, 3);
  assert.equal(new Set(first.map((statement) => statement.context.registration)).size, 3);
  for (const statement of first.filter((one) => one.verb.id.endsWith("/scored"))) {
    assert.equal(statement.context.contextActivities.parent[0].id, failed.object.id);
  }
  assert.ok(first.every((statement) => Date.parse(statement.timestamp) <= Date.now()));
  assert.ok(first.every((statement) => statement.actor.account.name === "c-0042"));
  console.log(`ok     the store has ${first.length} statements, nothing waits`);
  // The answer was lost: the same results sent again are the same statements.
  await person.go("#/sitting");
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
  await page.waitForTimeout(1500);
  await person.go("#/settings");
  await page.getByText("A store for results").waitFor();
  assert.equal(new Set((await held()).map((statement) => statement.id)).size, first.length);
  await page.waitForFunction(() => !document.body.innerText.includes("results wait"));
  console.log("ok     sent twice is stored once");
} finally {
  store?.kill();
  await shop.close();
}
