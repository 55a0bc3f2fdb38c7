// Chooses, of the inputs that a guided run has found, the small ones that reach most beyond the sound files.
// Usage: node .ci/fuzz_keep.mjs TARGET READER   (by .ci/fuzz keep)
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [target, reader] = process.argv.slice(2);
const most = 25; // inputs a reader
const largest = 2000; // bytes

const work = mkdtempSync(join(tmpdir(), "fuzz-keep-"));
const sound = join(work, reader);
const control = join(work, "control");
try {
  const seeds = { ...process.env, TUBWRIGHT_SEEDS: work, TUBWRIGHT_SOUND: "only" };
  execFileSync(target, ["-runs=0"], { env: seeds, stdio: "ignore" });
  // The fuzzer reads the smallest first and notes of each what none before it has reached.
  const options = ["-merge=1", `-merge_control_file=${control}`, "-timeout=10", "-rss_limit_mb=2048"];
  execFileSync(target, [...options, sound, join("fuzz/corpus", reader)], { env: { ...process.env, TUBWRIGHT_READER: reader }, stdio: "ignore" });

  const lines = readFileSync(control, "utf8").split("\n");
  const n = Number(lines[0]);
  const names = lines.slice(2, 2 + n);
  const reached = new Map();
  for (const line of lines.slice(2 + n)) {
    const [word, at, ...features] = line.trim().split(" ");
    if (word === "FT") reached.set(Number(at), features.length);
  }
  const chosen = [...reached]
    .map(([at, features]) => ({ features, name: names[at] }))
    .filter((one) => one.features > 0 && !one.name.startsWith(sound))
    .map((one) => ({ ...one, bytes: readFileSync(one.name) }))
    .filter((one) => one.bytes.length > 0 && one.bytes.length <= largest)
    .sort((a, b) => b.features - a.features)
    .slice(0, most);

  const folder = join("tests/fixtures/foreign_bytes", reader);
  rmSync(folder, { recursive: true, force: true });
  if (chosen.length > 0) mkdirSync(folder, { recursive: true });
  for (const { bytes } of chosen) {
    writeFileSync(join(folder, createHash("sha256").update(bytes).digest("hex").slice(0, 10)), bytes);
  }
  console.log(`${reader}: ${chosen.length} of ${n} inputs, ${chosen.reduce((sum, one) => sum + one.bytes.length, 0)} bytes`);
} finally {
  rmSync(work, { recursive: true, force: true });
}
