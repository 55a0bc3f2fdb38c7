// Turns trunk's output into the site: `node site.mjs STAGED DIST PROGRAM [REST]`.
//
// What trunk does not do: put the optimised program, in one part or two, in place of the raw one, move the
// start script out of the page into a file, join the style sheets into one, give the page a policy under which nothing but
// its own files can run, load or be sent to, and have the browser keep the site for use without a network.
import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

const [staged, dist, optimised, rest] = process.argv.slice(2);
const fail = (sentence) => {
  console.error(`site: ${sentence}`);
  process.exit(1);
};

const next = `${dist}.next`;
rmSync(next, { recursive: true, force: true });
cpSync(staged, next, { recursive: true });

/** Puts a file into the site under a name that holds its hash; returns its address. */
const put = (name, content) => {
  const hashed = name.replace(".", `-${createHash("sha256").update(content).digest("hex").slice(0, 16)}.`);
  writeFileSync(join(next, hashed), content);
  return `./${hashed}`;
};
const here = dirname(fileURLToPath(import.meta.url));
const offline = join(here, "offline");

const pagePath = join(next, "index.html");
let page = readFileSync(pagePath, "utf8");
const only = (ending) => {
  const names = readdirSync(next).filter((name) => name.endsWith(ending));
  if (names.length !== 1) fail(`expected one ${ending} in ${staged}, found ${names.length}: run 'make clean' and build again.`);
  return names[0];
};
const [trunksProgram, trunksScript] = [only("_bg.wasm"), only(".js")];
/** Puts a file in place of one of trunk's, in the page too. */
const replace = (old, name, content) => {
  rmSync(join(next, old));
  const address = put(name, content);
  page = page.replaceAll(`./${old}`, address);
  return address;
};
replace(trunksProgram, "program.wasm", readFileSync(optimised));
let script = readFileSync(join(next, trunksScript), "utf8");
let startRest = "";
if (rest) {
  const source = readFileSync(join(offline, "rest.js"), "utf8");
  const bringer = put("rest.js", source.replace("{{rest}}", put("rest.wasm", readFileSync(rest))));
  const patch = (from, to) => {
    if (!script.includes(from)) fail(`the program's script has no '${from}': did wasm-bindgen change its output?`);
    script = script.replaceAll(from, to);
  };
  patch("const imports = __wbg_get_imports();", "const imports = withRest(__wbg_get_imports());");
  patch("wasm = instance.exports;", "wasm = instance.exports;\n    firstStands(wasm);");
  script = `import { firstStands, withRest } from "${bringer}";\n${script}`;
  startRest = `import { inGoodTime } from "${bringer}";\ninGoodTime();\n`;
}
const glue = replace(trunksScript, "program.js", script);

const inline = /<script type="module"[^>]*>([\s\S]*?)<\/script>/g;
const scripts = [...page.matchAll(inline)];
if (scripts.length !== 1) fail(`expected one start script in the page, found ${scripts.length}: does index.html hold a script of its own?`);
const start = put("start.js", `${scripts[0][1].trim()}\n${startRest}`);
page = page.replace(scripts[0][0], `<script type="module" src="${start}"></script>`);

// One sheet in place of one a layer: nothing is drawn before the last has come.
const sheet = /[ \t]*<link rel="stylesheet" href="\.\/([^"]+)"[^>]*>\n?/g;
const sheets = [...page.matchAll(sheet)].map(([, name]) => name);
if (sheets.length === 0) fail("the page links no style sheet: did trunk change its output?");
const styles = sheets.map((name) => readFileSync(join(next, name), "utf8").replace(/\/\*[\s\S]*?\*\//g, ""));
const style = put("style.css", styles.join("").replace(/\n\s*/g, "\n"));
for (const name of sheets) rmSync(join(next, name));
page = page.replace(sheet, "").replace("</head>", `<link rel="stylesheet" href="${style}">\n</head>`);

const icon = /<link rel="icon" href="([^"]+)"/.exec(page)?.[1] ?? fail("index.html names no icon.");
const manifest = {
  name: "Tubwright",
  short_name: "Tubwright",
  description: "A workshop where washing-machine technicians practise fault finding.",
  start_url: "./",
  display: "standalone",
  background_color: "#fbfaf7",
  theme_color: "#fbfaf7",
  icons: [{ src: icon, sizes: "any", type: "image/svg+xml" }],
};
const register = put("register.js", readFileSync(join(offline, "register.js"), "utf8"));
page = page.replace(
  "</head>",
  `<link rel="manifest" href="${put("manifest.webmanifest", JSON.stringify(manifest))}">\n<script defer src="${register}"></script>\n</head>`,
);

const threadSource = readFileSync(join(here, "../src/app/worker/thread.js"), "utf8");
const thread = put("thread.js", threadSource.replace("{{program}}", glue));
page = page.replace("</head>", `<meta name="thread" content="${thread}">\n</head>`);

// Languages beside English, each one file: its messages without comments. The page names them.
const locales = join(here, "../locales");
const aside = ["glossary.ftl", "language.ftl"];
const languages = readdirSync(locales)
  .filter((code) => code !== "en")
  .sort()
  .map((code) => {
    const folder = join(locales, code);
    const about = readFileSync(join(folder, "language.ftl"), "utf8");
    const said = (name) =>
      new RegExp(`^${name} = (.+)$`, "m").exec(about)?.[1] ?? fail(`locales/${code}/language.ftl: '${name}' is missing: see locales/es/language.ftl.`);
    const messages = readdirSync(folder)
      .filter((name) => name.endsWith(".ftl") && !aside.includes(name))
      .sort()
      .map((name) => readFileSync(join(folder, name), "utf8").replace(/^(#.*)?\n/gm, ""));
    return {
      code,
      name: said("language-name"),
      numbers: said("language-numbers"),
      starting: { lead: said("starting-lead"), opening: said("starting-opening") },
      file: put(`language_${code}.ftl`, messages.join("")),
    };
  });
const attribute = (value) => JSON.stringify(value).replaceAll("&", "&amp;").replaceAll("'", "&#39;").replaceAll("<", "&lt;");
const starting = put("starting.js", readFileSync(join(offline, "starting.js"), "utf8"));
page = page.replace("</head>", `<meta name="languages" content='${attribute(languages)}'>\n<script defer src="${starting}"></script>\n</head>`);

const walk = (folder) =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? walk(path) : [path];
  });
const named = (path) => relative(next, path).split(sep).join("/");
// Every other file of the site, for the page to make course packages of itself. index.html names this very
// list, so that files of two builds are never mixed.
const list = put("files.json", JSON.stringify([...walk(next).map(named), "offline.js"].sort()));
page = page.replace("</head>", `<meta name="files" content="${list}">\n</head>`);

const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "media-src 'self' blob:",
  // Its own files; a store of results where a person, or the course that started the page, names one.
  "connect-src 'self' https: http:",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
page = page.replace(/<meta charset="utf-8"\s*\/?>/i, (meta) => `${meta}\n<meta http-equiv="Content-Security-Policy" content="${policy}">`);
if (!page.includes("Content-Security-Policy")) fail(`index.html has no <meta charset="utf-8">: the policy goes after it.`);
if (/(?:href|src)="\//.test(page)) fail("the page holds an address from the server's root: it would not work from a folder.");
writeFileSync(pagePath, page);

// Last, since it lists every other file, and itself.
const paths = walk(next).sort();
const build = createHash("sha256");
for (const path of paths) build.update(path).update(readFileSync(path));
const files = [...paths.map((path) => `./${named(path)}`).map((path) => (path === "./index.html" ? "./" : path)), "./offline.js"];
const worker = readFileSync(join(offline, "worker.js"), "utf8")
  .replace("{{build}}", build.digest("hex").slice(0, 16))
  .replace("{{files}}", JSON.stringify(files, null, 2));
writeFileSync(join(next, "offline.js"), worker);

// The new site replaces the old one in one step.
const old = `${dist}.old`;
rmSync(old, { recursive: true, force: true });
if (existsSync(dist)) renameSync(dist, old);
renameSync(next, dist);
rmSync(old, { recursive: true, force: true });
