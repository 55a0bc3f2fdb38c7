// Brings the rest of the program, which no first job runs: when the page has time, or at once where a step of
// the program leads there. site.mjs fills in the address, and has the program's own script give and take here.
const address = new URL("{{rest}}", import.meta.url);
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

/** Brings the rest when the first screen is through; where that fails, it is fetched where it is needed. */
export function inGoodTime() {
  setTimeout(async () => {
    const answer = await fetch(address).catch(() => null);
    if (!answer?.ok) return;
    const program = await WebAssembly.compile(await answer.arrayBuffer());
    if (!first.rest_is_here.value) join(program);
  }, 1000);
}

function join(program) {
  // As it comes to stand it fills the first part's doors.
  new WebAssembly.Instance(program, { ...given, first });
  first.rest_is_here.value = 1;
}

/** In the midst of a step of the program: nothing can go on before the rest is there. */
function fetchNow() {
  try {
    const request = new XMLHttpRequest();
    request.open("GET", address, false);
    // A page may not ask for bytes while it waits, but for text of one letter a byte.
    request.overrideMimeType("text/plain; charset=x-user-defined");
    request.send();
    if (request.status !== 200) throw new Error(`${address}: ${request.status}`);
    const bytes = Uint8Array.from(request.responseText, (letter) => letter.charCodeAt(0));
    join(new WebAssembly.Module(bytes));
  } catch (error) {
    // Whoever shows what this says may lead here again.
    const isKnown = isMissing;
    isMissing = true;
    if (!isKnown) dispatchEvent(new Event("rest-missing"));
    throw error;
  }
}
