// Parts the optimised program in two: what a first job runs, and the rest, which the page fetches afterwards.
//
//   node split.mjs count PROGRAM COUNTING                   every function marks that it ran, in a global of its own
//   node split.mjs part PROGRAM RAN FIRST REST [TEXT …]     RAN: the numbers of the functions that ran, as JSON
//   node split.mjs whole PROGRAM WHOLE                      in one part, without the names of functions
//
// A function that goes to the rest leaves a door in its place: it sees to it that the rest is there, then calls
// through a table that the rest fills as it comes. Memory, tables and globals are one and the same, so
// nothing else changes: the same instructions give the same bits in either part. Long texts that only the rest
// shows (files named as TEXT) are nought in the first part's memory until the rest writes them there.
import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const require = createRequire(join(process.env.TUBWRIGHT_TOOLS, "node_modules", "x.js"));
const { default: wasm } = await import(require.resolve("binaryen"));
const { i32, none } = wasm;

const read = (path) => wasm.readBinary(readFileSync(path));
const write = (program, path) => {
  if (!program.validate()) throw new Error(`${path} would be no sound program: has binaryen changed?`);
  // Whole or not at all: what is there is used again.
  writeFileSync(`${path}.part`, program.emitBinary());
  renameSync(`${path}.part`, path);
};
const listOf = (n, of) => Array.from({ length: n }, (_, k) => of(k));
const functions = (program) => listOf(program.getNumFunctions(), (n) => wasm.getFunctionInfo(program.getFunctionByIndex(n)));
/** The program's own, which are numbered. */
const own = (program) => functions(program).filter(({ module }) => !module);

function count(path, counting) {
  const program = read(path);
  own(program).forEach(({ name, params, results, vars, body }, n) => {
    const mark = `ran${n}`;
    program.addGlobal(mark, i32, true, program.i32.const(0));
    program.addGlobalExport(mark, mark);
    program.removeFunction(name);
    const marked = [program.global.set(mark, program.i32.const(1)), body];
    program.addFunction(name, params, results, vars, program.block(null, marked, results));
  });
  write(program, counting);
}

function part(path, ran, firstPath, restPath, ...texts) {
  const didRun = new Set(JSON.parse(readFileSync(ran, "utf8")));
  const first = read(path);
  const rest = new wasm.Module();
  rest.setFeatures(first.getFeatures());
  const goes = own(first).filter(({ name }, n) => !didRun.has(n));
  const going = new Set(goes.map(({ name }) => name));

  share(first, rest, texts);
  for (const [n, { name, module, base, params, results }] of functions(first).entries()) {
    if (!going.has(name)) rest.addFunctionImport(name, module || "first", base || `given${n}`, params, results);
  }
  for (const { name, params, results, vars, body } of goes) {
    rest.addFunction(name, params, results, vars, rest.copyExpression(body));
  }
  rest.addTableImport("doors", "first", "doors");
  rest.addActiveElementSegment("doors", "doors", [...going], rest.i32.const(0));
  rest.runPasses(["remove-unused-module-elements"]);

  // Only what the rest still asks for is given away.
  const asked = new Set(functions(rest).filter(({ module }) => module === "first").map(({ base }) => base));
  for (const [n, { name }] of functions(first).entries()) {
    if (asked.has(`given${n}`)) first.addFunctionExport(name, `given${n}`);
  }
  putDoors(first, goes);
  first.runPasses(["remove-unused-module-elements"]); // doors that only the rest would go through
  write(first, firstPath);
  write(rest, restPath);
}

/** Memory, tables and globals of the first part, for the rest to use; and its texts. */
function share(first, rest, texts) {
  const { initial, max } = first.getMemoryInfo();
  const wanted = texts.map((path) => readFileSync(path)).filter((text) => text.length > 0);
  const later = [];
  const segments = listOf(first.getNumDataSegments(), (n) => {
    const { name, offset, data, passive } = first.getDataSegmentInfo(first.getDataSegmentByIndex(n));
    const bytes = Buffer.from(data);
    for (const text of wanted) {
      const at = bytes.indexOf(text);
      if (at < 0) continue; // the program holds it in another segment, or not at all
      later.push({ offset: rest.i32.const(offset + at), data: text, passive: false });
      bytes.fill(0, at, at + text.length);
    }
    return { name, offset: first.i32.const(offset), data: bytes, passive };
  });
  if (later.length === 0 && texts.length > 0) throw new Error("the program holds none of the texts that are to come with the rest: is it of another build?");
  first.setMemory(initial, max ?? -1, "shared_memory", segments, false, false, "0");
  rest.setMemory(initial, max ?? -1, null, later, false, false, "0");
  rest.addMemoryImport("0", "first", "shared_memory");
  for (const [n, table] of listOf(first.getNumTables(), (n) => first.getTableByIndex(n)).entries()) {
    const { name } = wasm.getTableInfo(table);
    first.addTableExport(name, `table${n}`);
    rest.addTableImport(name, "first", `table${n}`);
    wasm.Table.setType(rest.getTable(name), wasm.Table.getType(table));
  }
  for (const [n, global] of listOf(first.getNumGlobals(), (n) => first.getGlobalByIndex(n)).entries()) {
    const { name, type, mutable } = wasm.getGlobalInfo(global);
    first.addGlobalExport(name, `global${n}`);
    rest.addGlobalImport(name, "first", `global${n}`, type, mutable);
  }
}

/** In place of what went to the rest: calls through the table that it fills. */
function putDoors(first, goes) {
  first.addTable("doors", goes.length, goes.length);
  first.addTableExport("doors", "doors");
  first.addFunctionImport("fetch_rest", "rest", "fetch", none, none);
  first.addGlobal("rest_is_here", i32, true, first.i32.const(0));
  first.addGlobalExport("rest_is_here", "rest_is_here");
  const isMissing = first.i32.eqz(first.global.get("rest_is_here", i32));
  first.addFunction("rest_ready", none, none, [], first.if(isMissing, first.call("fetch_rest", [], none)));
  for (const [slot, { name, params, results }] of goes.entries()) {
    const given = wasm.expandType(params).map((type, n) => first.local.get(n, type));
    const through = first.call_indirect("doors", first.i32.const(slot), given, params, results);
    first.removeFunction(name);
    first.addFunction(name, params, results, [], first.block(null, [first.call("rest_ready", [], none), through], results));
  }
}

const whole = (path, wholePath) => write(read(path), wholePath);

const [verb, ...paths] = process.argv.slice(2);
({ count, part, whole })[verb](...paths);
