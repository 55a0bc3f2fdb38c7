// Turns trunk's output into the site: `node site.mjs STAGED OPTIMISED_WASM DIST`.
//
// Three things trunk does not do: put the optimised program in place of the raw one, move the start
// script out of the page into a file, and give the page a policy under which nothing but its own
// files can run, load or be sent to. The new site replaces the old one in one rename.
import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const [staged, optimised, dist] = process.argv.slice(2);
const fail = (sentence) => {
  console.error(`site: ${sentence}`);
  process.exit(1);
};

const next = `${dist}.next`;
rmSync(next, { recursive: true, force: true });
cpSync(staged, next, { recursive: true });

const program = readdirSync(next).filter((name) => name.endsWith("_bg.wasm"));
if (program.length !== 1) fail(`expected one program in ${staged}, found ${program.length}: run 'make clean' and build again.`);
cpSync(optimised, join(next, program[0]));

const pagePath = join(next, "index.html");
let page = readFileSync(pagePath, "utf8");

const inline = /<script type="module"[^>]*>([\s\S]*?)<\/script>/g;
const scripts = [...page.matchAll(inline)];
if (scripts.length !== 1) fail(`expected one start script in the page, found ${scripts.length}: does index.html hold a script of its own?`);
const start = `${scripts[0][1].trim()}\n`;
const startName = `start-${createHash("sha256").update(start).digest("hex").slice(0, 16)}.js`;
writeFileSync(join(next, startName), start);
page = page.replace(scripts[0][0], `<script type="module" src="./${startName}"></script>`);

const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
page = page.replace(/<meta charset="utf-8"\s*\/?>/i, (meta) => `${meta}\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
if (!page.includes("Content-Security-Policy")) fail(`index.html has no <meta charset="utf-8">: the policy goes after it.`);
if (/(?:href|src)="\//.test(page)) fail("the page holds an address from the server's root: it would not work from a folder.");
writeFileSync(pagePath, page);

const old = `${dist}.old`;
rmSync(old, { recursive: true, force: true });
if (existsSync(dist)) renameSync(dist, old);
renameSync(next, dist);
rmSync(old, { recursive: true, force: true });
