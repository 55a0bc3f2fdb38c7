// What stands while the page opens, in the first language that the device asks for, as languages.rs finds it.
// What a person chose instead is not known before the program runs.
const offered = JSON.parse(document.querySelector("meta[name=languages]").content);
for (const tag of navigator.languages) {
  const main = tag.split("-")[0];
  if (main === "en") break;
  const found = offered.find(({ code }) => code === tag) ?? offered.find(({ code }) => code === main);
  if (!found) continue;
  const starting = document.querySelector("#app > .starting");
  // The program may have been quicker.
  if (starting) {
    starting.lang = found.code;
    starting.querySelector(".starting-lead").textContent = found.starting.lead;
    starting.querySelector("[role=status]").textContent = found.starting.opening;
  }
  break;
}
