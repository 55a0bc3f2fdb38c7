// Checks that every crate the program is built from has a licence on the list in deny.toml.
//
// The same list serves cargo-deny, which also knows advisories, where somebody has it installed:
// `cargo deny --config .ci/deny.toml check`. This check needs nothing but cargo and node.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const list = /^allow = \[([^\]]*)\]/m.exec(readFileSync(join(here, "deny.toml"), "utf8"));
if (!list) {
  console.error("licences: deny.toml has no line 'allow = [...]': restore it from the repository.");
  process.exit(1);
}
const allowed = new Set([...list[1].matchAll(/"([^"]+)"/g)].map((match) => match[1]));

/** Is the expression satisfied by the list? AND binds tighter than OR; brackets as usual. */
function satisfied(expression) {
  const tokens = expression.replace(/\//g, " OR ").match(/\(|\)|[^\s()]+/g) ?? [];
  let at = 0;
  const any = () => {
    let value = all();
    while (tokens[at] === "OR") {
      at += 1;
      value = all() || value;
    }
    return value;
  };
  const all = () => {
    let value = one();
    while (tokens[at] === "AND") {
      at += 1;
      value = one() && value;
    }
    return value;
  };
  const one = () => {
    const token = tokens[at++];
    if (token === "(") {
      const value = any();
      at += 1;
      return value;
    }
    let name = token;
    if (tokens[at] === "WITH") {
      name = `${token} WITH ${tokens[at + 1]}`;
      at += 2;
    }
    return allowed.has(name);
  };
  return any();
}

const metadata = JSON.parse(
  execFileSync("cargo", ["metadata", "--format-version", "1", "--locked", "--all-features"], { maxBuffer: 1 << 28, stdio: ["ignore", "pipe", "inherit"] }),
);
const bad = metadata.packages.filter((crate) => !crate.license || !satisfied(crate.license));
for (const crate of bad) {
  console.error(`licences: ${crate.name} ${crate.version} is under '${crate.license ?? "no stated licence"}', which is not on the list in .ci/deny.toml.`);
}
process.exit(bad.length ? 1 : 0);
