// Brings the rest of the program, which no first job runs: when the first screen stands, or at once where a
// step of the program leads there. site.mjs fills in the address, and has the program's script give and take here.
const address = new URL("{{rest}}", import.meta.url);
const isThread = typeof document === "undefined";
let given;
let first;
let isMissing = false;

/** What the page gives the program, and a way to the rest. */
export function withRest(imports) {
  given = imports;
  return { ...imports, rest: { fetch: fetchNow } };
}

/** The first part stands. */
export function firstStands(exports) {
  first = exports;
}

/**
 * Brings the rest five seconds after the first screen, when a first job has opened; at once where the page is
 * going to speak another language than English, which no first job that was played does. Where that fails, it
 * is fetched where it is needed.
 */
export async function inGoodTime() {
  const starting = () => document.querySelector("#app > .starting");
  if (!starting()?.lang) {
    while (starting()) await pause(100);
    await pause(5000);
  }
  try {
    const answer = await fetch(address);
    if (!answer.ok) return;
    // Not in one step: some browsers refuse that for a program of this size.
    await WebAssembly.instantiate(await answer.arrayBuffer(), linked());
    first.rest_is_here.value = 1;
  } catch {
    // Asked for again where it is needed.
  }
}

const pause = (ms) => new Promise((done) => setTimeout(done, ms));
/** As the rest comes to stand it fills the first part's doors; a second time it would fill them alike. */
const linked = () => ({ ...given, first });

/** In the midst of a step of the program: nothing can go on before the rest is there. */
function fetchNow() {
  try {
    new WebAssembly.Instance(new WebAssembly.Module(bytesNow()), linked());
    first.rest_is_here.value = 1;
  } catch (error) {
    // Once: whoever shows what this says may lead here again.
    if (!isMissing) {
      isMissing = true;
      dispatchEvent(new Event("rest-missing"));
      addEventListener("click", leave);
    }
    throw error;
  }
}

/** What is pressed on the page that says so loads the page anew, here or elsewhere. */
function leave({ target }) {
  const { way } = target.dataset ?? {};
  if (way === undefined) return;
  if (way) location.hash = way;
  location.reload();
}

function bytesNow() {
  const request = new XMLHttpRequest();
  request.open("GET", address, false);
  // A page may not ask for bytes while it waits, but for text of one letter a byte.
  if (isThread) request.responseType = "arraybuffer";
  else request.overrideMimeType("text/plain; charset=x-user-defined");
  request.send();
  if (request.status !== 200) throw new Error(`${address}: ${request.status}`);
  if (isThread) return request.response;
  const text = request.responseText;
  const bytes = new Uint8Array(text.length);
  for (let n = 0; n < bytes.length; n += 1) bytes[n] = text.charCodeAt(n);
  return bytes;
}
