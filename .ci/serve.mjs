// A small static server for this machine: `node serve.mjs [FOLDER] [PORT]`; also used by the browser tests.
//
// It answers on 127.0.0.1 only, never leaves its folder, names the type of every file (a browser
// compiles wasm while it arrives only if the type is right), packs what can be packed as any web host
// does, and lets the browser keep only files whose name holds a hash of their content: what was built
// last is what is seen.
import { createReadStream, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, resolve, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { brotliCompress, constants } from "node:zlib";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".xml": "application/xml",
};

/** Kinds of file that are packed already. */
const dense = new Set([".woff2", ".png", ".ico"]);
/** Whole files by brotli, packed once: each path with when it was written, to a promise of its bytes. */
const packed = new Map();

/** What a file is by brotli. Quick rather than small: this is for one machine. */
function pack(file, written) {
  const key = `${file} ${written}`;
  if (!packed.has(key)) {
    const params = { [constants.BROTLI_PARAM_QUALITY]: 5 };
    packed.set(key, new Promise((done, failed) => {
      brotliCompress(readFileSync(file), { params }, (error, bytes) => (error ? failed(error) : done(bytes)));
    }));
  }
  return packed.get(key);
}

/**
 * Serves `folder` under `prefix` on the first free port from `port` on (0: any). Resolves to `{ server, url }`.
 * Only tests that look at the page as another computer does give another `host`.
 */
export function serve(folder, port = 0, prefix = "/", host = "127.0.0.1") {
  const root = resolve(folder);
  const server = createServer((request, response) => {
    const answer = (status, text) => response.writeHead(status, { "Content-Type": types[".txt"] }).end(`${text}\n`);
    if (request.method !== "GET" && request.method !== "HEAD") return answer(405, "Only GET and HEAD.");
    let path;
    try {
      path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    } catch {
      return answer(400, "Not an address.");
    }
    if (!path.startsWith(prefix)) return answer(404, "Not here.");
    let file = normalize(join(root, path.slice(prefix.length)));
    if (file !== root && !file.startsWith(root + sep)) return answer(404, "Not here.");
    let found = statSync(file, { throwIfNoEntry: false });
    if (found?.isDirectory()) {
      file = join(file, "index.html");
      found = statSync(file, { throwIfNoEntry: false });
    }
    if (!found?.isFile()) return answer(404, "Not here.");
    const hashed = /-[0-9a-f]{16}[._]/.test(file);
    const headers = {
      "Content-Type": types[extname(file)] ?? "application/octet-stream",
      "Cache-Control": hashed ? "public, max-age=31536000, immutable" : "no-cache",
      "X-Content-Type-Options": "nosniff",
      Vary: "Accept-Encoding",
    };
    const takes = String(request.headers["accept-encoding"] ?? "").split(/\s*,\s*/);
    if (takes.includes("br") && !dense.has(extname(file))) {
      pack(file, found.mtimeMs).then(
        (bytes) => {
          response.writeHead(200, { ...headers, "Content-Encoding": "br", "Content-Length": bytes.length });
          response.end(request.method === "HEAD" ? undefined : bytes);
        },
        () => response.destroy(),
      );
      return undefined;
    }
    response.writeHead(200, { ...headers, "Content-Length": found.size });
    if (request.method === "HEAD") return response.end();
    createReadStream(file).on("error", () => response.destroy()).pipe(response);
  });
  return new Promise((done, failed) => {
    let tries = 0;
    server.on("error", (error) => {
      if (error.code !== "EADDRINUSE" && error.code !== "EACCES") return failed(error);
      tries += 1;
      port = tries < 20 ? port + 1 : 0;
      server.listen(port, host);
    });
    server.on("listening", () => done({ server, url: `http://${host}:${server.address().port}${prefix}` }));
    server.listen(port, host);
  });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const [folder = "dist", port = "8080"] = process.argv.slice(2);
  if (!statSync(join(folder, "index.html"), { throwIfNoEntry: false })) {
    console.error(`serve: there is no page in ${folder}: run 'make dist', then run this again.`);
    process.exit(1);
  }
  const first = Number(port);
  if (!Number.isInteger(first) || first < 0 || first > 65535) {
    console.error(`serve: '${port}' is no port: give a number from 0 to 65535.`);
    process.exit(1);
  }
  const { server, url } = await serve(folder, first);
  console.log(`serve: Tubwright is at ${url} (Ctrl-C stops it)`);
  for (const signal of ["SIGINT", "SIGTERM"]) {
    process.on(signal, () => {
      server.closeAllConnections();
      server.close(() => process.exit(0));
    });
  }
}
