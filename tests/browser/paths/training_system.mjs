// The page inside a training system, here played by the test: a run-time in the window that opened the page, and a
// cmi5 host whose store is sometimes away. Other people's run-times and stores are in tests/peers.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";

const assessment = readFileSync("scenarios/assessments/first_visits.json", "utf8");

/** Runs in the opening page: a run-time of SCORM 1.2 that notes what it is asked. */
const runTime = (begins) => {
  const values = { "cmi.core.lesson_mode": "normal", "cmi.core.student_id": "trainee-7" };
  window.calls = [];
  const note = (name, answer) => (...words) => {
    window.calls.push(name);
    return answer(...words);
  };
  window.API = {
    LMSInitialize: note("LMSInitialize", () => begins),
    LMSGetValue: note("LMSGetValue", (name) => values[name] ?? ""),
    LMSSetValue: note("LMSSetValue", (name, value) => ((values[name] = value), "true")),
    LMSCommit: note("LMSCommit", () => "true"),
    LMSFinish: note("LMSFinish", () => "true"),
  };
};

/** Opens the page in a window of its own, as training systems do. */
async function popup(person) {
  const [page] = await Promise.all([
    person.context.waitForEvent("page"),
    person.page.evaluate(() => void window.open(`${location.origin}${location.pathname}#/assessment`)),
  ]);
  person.watch(page);
  await page.getByRole("heading", { name: "Sit an assessment" }).waitFor({ timeout: 20_000 });
  return page;
}

export async function a_run_time_in_the_window_that_opened_the_page_is_found_and_left_in_order({ visit }) {
  const person = await visit();
  await person.page.evaluate(runTime, "true");
  const page = await popup(person);
  assert.equal(await person.page.evaluate(() => window.calls[0]), "LMSInitialize");
  await page.getByLabel("Open files").setInputFiles("scenarios/assessments/first_visits.json");
  assert.equal(await page.getByLabel("Your number").inputValue(), "trainee-7");
  await page.close({ runBeforeUnload: true });
  await person.page.waitForFunction(() => window.calls.at(-1) === "LMSFinish");
}

export async function a_run_time_that_does_not_let_the_page_begin_is_told_to_the_learner({ visit }) {
  const person = await visit();
  await person.page.evaluate(runTime, "false");
  const page = await popup(person);
  await page.getByText("The training system has started this page but does not let it begin").waitFor();
  const calls = await person.page.evaluate(() => window.calls);
  assert.ok(!calls.includes("LMSSetValue"), calls.join(" "));
}

/** Runs in the page ahead of its scripts: a host of cmi5 that keeps all in the page's local storage. */
const host = (file) => {
  const real = globalThis.fetch;
  const kept = () => JSON.parse(localStorage.getItem("host") ?? '{"states":{},"took":[],"fetched":[]}');
  const answer = (status, text = null, headers = {}) => new Response(text, { status, headers });
  const launchData = {
    contextTemplate: { contextActivities: { grouping: [{ id: "https://host.example/course" }] }, extensions: {} },
    launchMode: "Normal",
    moveOn: "CompletedAndPassed",
    masteryScore: 0.65,
  };
  const asked = (address, { method = "GET", body } = {}) => {
    const all = kept();
    const keep = () => localStorage.setItem("host", JSON.stringify(all));
    const registration = address.searchParams.get("registration");
    if (address.pathname === "/fetch") {
      if (all.fetched.includes(address.search)) return answer(200, '{"error-code":"1","error-text":"given before"}');
      all.fetched.push(address.search);
      keep();
      return answer(200, JSON.stringify({ "auth-token": btoa(address.search) }));
    }
    if (address.pathname === "/lrs/statements") {
      for (const one of [JSON.parse(body)].flat()) {
        if (all.took.some((there) => there.id === one.id)) return answer(409);
        all.took.push(one);
      }
      keep();
      return answer(200, "[]");
    }
    if (address.searchParams.get("stateId") === "LMS.LaunchData") return answer(200, JSON.stringify(launchData));
    if (address.pathname === "/lrs/activities/state" && method === "PUT") {
      all.states[registration] = body;
      keep();
      return answer(204);
    }
    const state = address.pathname === "/lrs/activities/state" ? all.states[registration] : undefined;
    return state === undefined ? answer(404) : answer(200, state, { ETag: '"1"' });
  };
  globalThis.fetch = async (what, how) => {
    const address = new URL(String(what), location.href);
    if (address.pathname.endsWith("/assessments/first_visits.json")) return answer(200, file);
    if (address.origin !== "https://host.example") return real(what, how);
    if (localStorage.getItem("away")) throw new TypeError("Failed to fetch");
    return asked(address, how);
  };
};
const before = `(${host})(${JSON.stringify(assessment)})`;

/** The address of a launch; each has a token of its own. */
const launch = (number) => `?${new URLSearchParams({
  start: "first_visits",
  endpoint: "https://host.example/lrs",
  fetch: `https://host.example/fetch?n=${number}`,
  actor: JSON.stringify({ account: { homePage: "https://host.example", name: "trainee-0042" } }),
  registration: "0f8fad5b-d9cb-469f-a165-70867728950e",
  activityId: "https://host.example/au/1",
})}`;

/** The verbs that the host's store has, in order. */
const verbs = (page) => page.evaluate(() => JSON.parse(localStorage.getItem("host")).took.map((one) => one.verb.id.split("/").pop()));

async function untilVerbs(page, wanted) {
  for (let tries = 0; tries < 50 && (await verbs(page)).length < wanted.length; tries += 1) await page.waitForTimeout(100);
  assert.deepEqual(await verbs(page), wanted);
}

async function begun({ page }) {
  await page.getByRole("heading", { name: "First visits alone" }).waitFor();
  assert.equal(await page.getByLabel("Your number").inputValue(), "trainee-0042");
  await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await page.getByRole("button", { name: "Begin as practice" }).click();
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
}

async function handedIn({ page }) {
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: /^Yes, hand in/ }).click();
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
}

export async function a_cmi5_unit_says_everything_once_over_reloads_and_launches({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await handedIn(person);
  const first = ["initialized", "failed", "completed"];
  await untilVerbs(page, first);
  await page.reload();
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
  await untilVerbs(page, [...first, "terminated"]);
  // Launched once more: a visit of its own, in which the result is looked at again.
  await person.go(`${launch(2)}#/sitting`);
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
  await untilVerbs(page, [...first, "terminated", "initialized"]);
  await page.waitForTimeout(800);
  await untilVerbs(page, [...first, "terminated", "initialized"]);
}

export async function a_cmi5_store_that_is_away_is_told_the_result_when_it_is_back({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await page.evaluate(() => localStorage.setItem("away", "1"));
  await handedIn(person);
  const trouble = page.getByText("The training system has not taken your result yet.");
  await trouble.waitFor();
  await person.accessible();
  assert.deepEqual(await verbs(page), ["initialized"]);
  await page.evaluate(() => {
    localStorage.removeItem("away");
    dispatchEvent(new Event("online"));
  });
  await untilVerbs(page, ["initialized", "failed", "completed"]);
  await trouble.waitFor({ state: "detached" });
}

export async function a_cmi5_launch_that_fails_is_told_to_the_learner({ visit }) {
  const person = await visit({ at: launch(1), before });
  await person.page.getByRole("heading", { name: "First visits alone" }).waitFor();
  // The same address in a browser that has forgotten the visit: the token is not given twice.
  await person.page.evaluate(() => sessionStorage.clear());
  await person.page.reload();
  await person.page.getByText("The training system has started this page but does not let it begin").waitFor();
  await person.page.getByRole("heading", { name: "First visits alone" }).waitFor();
}
