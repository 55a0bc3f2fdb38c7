// The screens there are, each by the address it has: for pictures, accessibility and fit.
//
// A screen that shows one job takes the first job on the list of jobs.

/** Every screen of this visitor's site: `{ name, at }`. */
export async function screens(person) {
  await person.go("#/jobs");
  const hrefs = await person.page.locator('a[href^="#/bench/"]').evaluateAll((links) => links.map((link) => link.getAttribute("href")));
  const job = hrefs[0]?.slice("#/bench/".length);
  return [
    { name: "jobs", at: "#/jobs" },
    ...(job ? [{ name: "bench", at: `#/bench/${job}` }, { name: "finding", at: `#/finding/${job}` }, { name: "sheets", at: `#/sheets/${job}` }, { name: "debrief", at: `#/debrief/${job}` }] : []),
    { name: "handbook", at: "#/handbook" },
    { name: "handbook_machine", at: "#/handbook/machine_p" },
    { name: "handbook_parts", at: "#/handbook/parts_n" },
    { name: "handbook_worked", at: "#/handbook/worked-no_water" },
    { name: "desk", at: "#/desk" },
    { name: "readings", at: "#/readings/T" },
    { name: "link", at: "#/job/1damaged" },
    { name: "assessment", at: "#/assessment" },
    { name: "assessments", at: "#/assessments" },
    { name: "sets", at: "#/sets" },
    { name: "observer", at: "#/observer" },
    { name: "cohort", at: "#/cohort" },
    { name: "me", at: "#/me" },
    { name: "settings", at: "#/settings" },
    { name: "nowhere", at: "#/no-such-screen" },
  ];
}
