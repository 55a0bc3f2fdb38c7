// What each crate adds to the program: `node by_crate.mjs NAMED_WASM [JSON]` prints kB of code by crate, largest first.
//
// Code that was made for another crate's types (a list of ours sorted by the standard library) counts where it
// was written. Format: WebAssembly Core Specification, binary format; names by its name section.
import { readFileSync, writeFileSync } from "node:fs";

const [path, jsonPath] = process.argv.slice(2);
const bytes = readFileSync(path);

/** Reads numbers (LEB128) and names one after the other from a place on. */
class Reader {
  constructor(at, end = bytes.length) {
    Object.assign(this, { at, end });
  }
  number() {
    let [sum, shift, byte] = [0, 1, 0];
    do {
      byte = bytes[this.at++];
      sum += (byte & 127) * shift;
      shift *= 128;
    } while (byte > 127);
    return sum;
  }
  text() {
    const length = this.number();
    return bytes.toString("utf8", this.at, (this.at += length));
  }
}

const IMPORTS = 2;
const CODE = 10;
const CUSTOM = 0;
let imported = 0;
const sizes = [];
const names = new Map();
const whole = new Reader(8);
while (whole.at < whole.end) {
  const kind = bytes[whole.at++];
  const length = whole.number();
  const section = new Reader(whole.at, whole.at + length);
  whole.at += length;
  if (kind === IMPORTS) imported = importedFunctions(section);
  if (kind === CODE) {
    for (let left = section.number(); left > 0; left -= 1) {
      const size = section.number();
      sizes.push(size);
      section.at += size;
    }
  }
  if (kind === CUSTOM && section.text() === "name") readNames(section);
}

function importedFunctions(section) {
  let functions = 0;
  for (let left = section.number(); left > 0; left -= 1) {
    section.text();
    section.text();
    const kind = bytes[section.at++];
    functions += Number(kind === 0);
    if (kind === 1) section.at += 1; // a table's type, then its limits
    if (kind === 3) section.at += 2; // a global: type and whether it changes
    else if (kind === 0) section.number();
    else if (bytes[section.at++] & 1) section.number() + section.number();
    else section.number();
  }
  return functions;
}

function readNames(section) {
  while (section.at < section.end) {
    const what = bytes[section.at++];
    const length = section.number();
    const part = new Reader(section.at);
    section.at += length;
    for (let left = what === 1 ? part.number() : 0; left > 0; left -= 1) names.set(part.number(), part.text());
  }
}

const kb = new Map();
for (const [n, size] of sizes.entries()) {
  const crate = /([a-z]\w*)::/.exec(names.get(imported + n) ?? "")?.[1] ?? "without a path";
  kb.set(crate, (kb.get(crate) ?? 0) + size / 1000);
}
const rows = [...kb].sort(([, a], [, b]) => b - a);
const total = rows.reduce((sum, [, size]) => sum + size, 0);
console.log(`\n${"code by crate, kB".padEnd(40)}${"raw".padStart(8)}${"share".padStart(8)}`);
for (const [crate, size] of rows.filter(([, size]) => size > total / 400)) {
  console.log(crate.padEnd(40) + size.toFixed(0).padStart(8) + `${((100 * size) / total).toFixed(1)} %`.padStart(8));
}
console.log("all".padEnd(40) + total.toFixed(0).padStart(8));
if (jsonPath) {
  const result = JSON.parse(readFileSync(jsonPath, "utf8"));
  result.code_by_crate_kb = Object.fromEntries(rows);
  writeFileSync(jsonPath, `${JSON.stringify(result, null, 1)}\n`);
}
