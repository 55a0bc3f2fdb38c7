// The page inside a training system, here played by the test: a run-time in the window that opened the page, and a
// cmi5 host whose store is sometimes away. Other people's run-times and stores are in tests/peers.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { sizes } from "../driver.mjs";

const assessment = readFileSync("scenarios/assessments/first_visits.json", "utf8");

/** Runs in the opening page: a run-time of SCORM 1.2 that notes what it is asked. */
const runTime = ([begins, more = {}]) => {
  const values = { "cmi.core.lesson_mode": "normal", "cmi.core.student_id": "trainee-7", ...more };
  window.calls = [];
  window.values = values;
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

/** Opens the page in a window of its own, as training systems do, and waits for what is there first. */
async function popup(person, first = (page) => page.getByRole("heading", { name: "Sit an assessment" })) {
  const [page] = await Promise.all([
    person.context.waitForEvent("page"),
    person.page.evaluate(() => void window.open(`${location.origin}${location.pathname}#/assessment`)),
  ]);
  person.watch(page);
  await first(page).waitFor({ timeout: 20_000 });
  return page;
}

const jobOne = (page) => page.getByRole("link", { name: "Job 1", exact: true });

export async function work_of_one_learner_is_no_others_and_waits_for_its_own({ visit }) {
  const person = await visit();
  const launched = async (values, first) => {
    await person.page.evaluate(runTime, ["true", values]);
    return popup(person, first);
  };
  const kept = () => person.page.evaluate(() => window.values["cmi.suspend_data"]);
  const one = await launched({ "cmi.core.entry": "ab-initio" });
  await one.getByLabel("Open files").setInputFiles("scenarios/assessments/first_visits.json");
  await one.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await one.getByRole("button", { name: /^Begin/ }).click();
  await jobOne(one).waitFor();
  await person.page.waitForFunction(() => window.values["cmi.suspend_data"]);
  const work = await kept();
  await one.close({ runBeforeUnload: true });
  // Another learner at the same computer begins at the beginning, and nothing of the first is told as theirs.
  const other = await launched({ "cmi.core.student_id": "trainee-8", "cmi.core.entry": "ab-initio" });
  assert.equal(await jobOne(other).count(), 0);
  assert.equal(await kept(), undefined);
  await other.close({ runBeforeUnload: true });
  // The first comes back to what the system has kept, and a new attempt of theirs begins anew.
  const back = await launched({ "cmi.core.entry": "resume", "cmi.suspend_data": work }, jobOne);
  await back.close({ runBeforeUnload: true });
  const anew = await launched({ "cmi.core.entry": "ab-initio" });
  assert.equal(await jobOne(anew).count(), 0);
  await anew.close({ runBeforeUnload: true });
}

export async function what_is_handed_in_stays_so_and_is_nowhere_begun_again({ visit }) {
  const person = await visit();
  await person.page.evaluate(runTime, ["true", { "cmi.core.entry": "ab-initio" }]);
  const page = await popup(person);
  await page.getByLabel("Open files").setInputFiles("scenarios/assessments/first_visits.json");
  await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
  await page.getByRole("button", { name: /^Begin/ }).click();
  await jobOne(page).waitFor();
  await page.getByRole("button", { name: "Hand in" }).click();
  await page.getByRole("button", { name: /^Yes, hand in/ }).click();
  await page.getByRole("button", { name: "Print this sheet" }).waitFor();
  assert.equal(await page.getByRole("button", { name: "Clear for the next candidate" }).count(), 0);
  await person.page.waitForFunction(() => window.values["cmi.core.lesson_status"] === "failed");
  const work = await person.page.evaluate(() => window.values["cmi.suspend_data"]);
  await page.close({ runBeforeUnload: true });
  // On another computer.
  const elsewhere = await visit();
  await elsewhere.page.evaluate(runTime, ["true", { "cmi.core.entry": "resume", "cmi.suspend_data": work }]);
  const told = await popup(elsewhere, (page) => page.getByRole("heading", { level: 1, name: /Handed in|First visits alone/ }));
  assert.equal(await jobOne(told).count(), 0);
  assert.equal(await told.getByRole("button", { name: "Hand in" }).count(), 0);
  await told.close({ runBeforeUnload: true });
}

export async function a_run_time_in_the_window_that_opened_the_page_is_found_and_left_in_order({ visit }) {
  const person = await visit();
  await person.page.evaluate(runTime, ["true"]);
  const page = await popup(person);
  assert.equal(await person.page.evaluate(() => window.calls[0]), "LMSInitialize");
  await page.getByLabel("Open files").setInputFiles("scenarios/assessments/first_visits.json");
  assert.equal(await page.getByLabel("Your number").inputValue(), "trainee-7");
  await page.close({ runBeforeUnload: true });
  await person.page.waitForFunction(() => window.calls.at(-1) === "LMSFinish");
}

export async function a_run_time_that_does_not_let_the_page_begin_is_told_to_the_learner({ visit }) {
  const person = await visit();
  await person.page.evaluate(runTime, ["false"]);
  const page = await popup(person);
  await page.getByText("The training system has started this page but does not let it begin").waitFor();
  const calls = await person.page.evaluate(() => window.calls);
  assert.ok(!calls.includes("LMSSetValue"), calls.join(" "));
}

/** Runs in the page ahead of its scripts: a host of cmi5 that keeps all in the page's local storage. While `slow` is
 * set there it answers no question whose path holds it; while `away` is set nobody answers. */
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
    if (address.pathname === "/lrs/statements" && method === "GET") {
      const there = all.took.find((one) => one.id === address.searchParams.get("statementId"));
      return there ? answer(200, JSON.stringify(there)) : answer(404);
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
    const slow = localStorage.getItem("slow");
    if (slow && address.pathname.includes(slow)) return new Promise(() => {});
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
  await page.getByRole("button", { name: /^Begin/ }).click();
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
  // The host has the work too.
  await page.waitForFunction(() => Object.keys(JSON.parse(localStorage.getItem("host")).states).length > 0);
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
  // Left and loaded anew, the visit is over.
  await person.page.evaluate(() => sessionStorage.clear());
  await person.page.reload();
  await person.page.getByText("your visit in the training system has ended").waitFor();
  // The same address in a browser that has forgotten the visit: the token is not given twice.
  await person.page.evaluate(async () => {
    sessionStorage.clear();
    for (const key of Object.keys(localStorage)) if (key !== "host") localStorage.removeItem(key);
    for (const { name } of await indexedDB.databases()) indexedDB.deleteDatabase(name);
  });
  await person.page.reload();
  await person.page.getByText("The training system has started this page but does not let it begin").waitFor();
  await person.page.getByRole("heading", { name: "First visits alone" }).waitFor();
}

/** As if the page went away and were kept by the browser; and as if it were shown again. */
const leave = ({ page }) => page.evaluate(() => dispatchEvent(new PageTransitionEvent("pagehide", { persisted: true })));
const comeBack = ({ page }) => page.evaluate(() => dispatchEvent(new PageTransitionEvent("pageshow", { persisted: true })));
const ended = "your visit in the training system has ended";

export async function leaving_a_cmi5_page_before_handing_in_says_terminated_once_with_the_time_of_the_visit({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await page.waitForTimeout(1500);
  await page.goto(`${person.url}?elsewhere`);
  await untilVerbs(page, ["initialized", "terminated"]);
  const [first, last] = await page.evaluate(() => JSON.parse(localStorage.getItem("host")).took);
  const seconds = (Date.parse(last.timestamp) - Date.parse(first.timestamp)) / 1000;
  const [, minutes, rest] = /^PT(\d+)M([\d.]+)S$/.exec(last.result.duration);
  assert.ok(seconds >= 1.5 && Math.abs(60 * minutes + Number(rest) - seconds) < 0.2, `${last.result.duration}, ${seconds} s`);
  // Launched anew: a session of its own, with the work of the one before; the last statement is not said again.
  await person.go(launch(2));
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
  await handedIn(person);
  await untilVerbs(page, ["initialized", "terminated", "initialized", "failed", "completed"]);
}

export async function closing_a_cmi5_page_says_terminated({ visit }) {
  const person = await visit({ at: launch(1), before });
  const other = await person.context.newPage();
  await other.goto(person.url);
  await begun(person);
  await person.page.close({ runBeforeUnload: true });
  await untilVerbs(other, ["initialized", "terminated"]);
}

export async function a_cmi5_page_that_loads_itself_anew_goes_on_in_the_same_session({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await Promise.all([page.waitForEvent("load"), page.evaluate(() => void setTimeout(() => location.reload(), 50))]);
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
  await untilVerbs(page, ["initialized"]);
  // By the keys for it, whatever the browser makes of them.
  await page.evaluate(() => dispatchEvent(new KeyboardEvent("keydown", { key: "F5" })));
  await leave(person);
  await page.waitForTimeout(500);
  await untilVerbs(page, ["initialized"]);
  await handedIn(person);
  await untilVerbs(page, ["initialized", "failed", "completed"]);
}

export async function a_cmi5_page_that_comes_back_says_that_its_visit_has_ended_and_nothing_twice({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await leave(person);
  await untilVerbs(page, ["initialized", "terminated"]);
  await comeBack(person);
  await page.getByText(ended).waitFor();
  await person.accessible();
  await leave(person);
  // Loaded anew it is the same session, which has ended; what is handed in is told in the next one.
  await page.reload();
  await page.getByText(ended).waitFor();
  await handedIn(person);
  await page.getByText(ended).waitFor();
  await page.waitForTimeout(500);
  await untilVerbs(page, ["initialized", "terminated"]);
  await person.go(launch(2));
  await page.getByRole("heading", { name: /^Result/ }).waitFor();
  await untilVerbs(page, ["initialized", "terminated", "initialized", "failed", "completed"]);
}

export async function a_last_statement_that_was_lost_is_said_with_the_next_launch({ visit }) {
  const person = await visit({ at: launch(1), before });
  const { page } = person;
  await begun(person);
  await page.evaluate(() => localStorage.setItem("away", "1"));
  await leave(person);
  await page.waitForTimeout(300);
  assert.deepEqual(await verbs(page), ["initialized"]);
  await page.evaluate(() => localStorage.removeItem("away"));
  await person.go(launch(2));
  await page.getByRole("link", { name: "Job 1", exact: true }).waitFor();
  for (let tries = 0; tries < 50 && (await verbs(page)).length < 3; tries += 1) await page.waitForTimeout(100);
  assert.deepEqual((await verbs(page)).sort(), ["initialized", "initialized", "terminated"]);
}

/** Slow until it is no longer asked to be. */
const slowly = (path) => `${before}; if (!localStorage.getItem("quick")) localStorage.setItem("slow", "${path}");`;

async function quick({ page }) {
  await page.evaluate(() => {
    localStorage.setItem("quick", "1");
    localStorage.removeItem("slow");
  });
}

export async function while_a_cmi5_store_does_not_answer_it_is_said_who_is_asked_and_it_can_be_asked_again({ visit }) {
  for (const size of Object.values(sizes)) {
    const person = await visit({ at: launch(1), before: slowly("/lrs/activities/state"), size });
    const { page } = person;
    await page.getByRole("heading", { name: "Waiting for the training system" }).waitFor();
    await page.getByRole("status").getByText("https://host.example/lrs/ is asked for what was started, and for whom.").waitFor();
    assert.equal(await page.getByRole("button", { name: "Ask again" }).count(), 0);
    await page.getByRole("button", { name: "Ask again" }).waitFor({ timeout: 15_000 });
    await page.getByRole("status").getByText("There is no answer for 8 seconds.").waitFor();
    await person.fits();
    await person.accessible();
    await quick(person);
    await page.getByRole("button", { name: "Ask again" }).focus();
    await page.keyboard.press("Enter");
    await begun(person);
    await untilVerbs(page, ["initialized"]);
  }
}

export async function without_an_answer_of_a_cmi5_store_one_can_go_on_and_ask_it_later({ visit }) {
  const person = await visit({ at: launch(1), before: slowly("/lrs/activities/state") });
  const { page } = person;
  await page.getByRole("button", { name: "Go on without it" }).click({ timeout: 15_000 });
  await page.getByText("You go on without the training system").waitFor();
  await page.getByRole("heading", { name: "First visits alone" }).waitFor();
  assert.equal(await page.evaluate(() => JSON.parse(localStorage.getItem("host")).took.length), 0);
  await quick(person);
  await page.reload();
  await begun(person);
  await untilVerbs(page, ["initialized"]);
}

export async function a_cmi5_key_that_comes_late_is_not_lost({ visit }) {
  const late = `${before}; { const real = fetch; globalThis.fetch = async (...what) => {
    const answer = await real(...what);
    if (String(what[0]).includes("/fetch?")) await new Promise((done) => setTimeout(done, 11_000));
    return answer;
  }; }`;
  const person = await visit({ at: launch(1), before: late });
  const { page } = person;
  await page.getByRole("status").getByText("https://host.example/fetch is asked for the key that lets this visit in.").waitFor();
  await page.getByRole("button", { name: "Go on without it" }).click({ timeout: 15_000 });
  assert.equal(await page.getByRole("button", { name: "Ask again" }).count(), 0);
  await page.getByText("You go on without the training system").waitFor();
  await page.waitForTimeout(4000);
  await page.reload();
  await begun(person);
  await untilVerbs(page, ["initialized"]);
}
