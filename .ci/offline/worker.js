// Keeps the whole site in the browser, so that it opens without a network. site.mjs fills in the two constants.
//
// All files or none are kept, under the name of this very build. The old build runs on until no page
// needs it, or until a page that nobody has touched yet asks for the new one: never within a job.
const build = "{{build}}";
const files = {{files}};
const kept = `tubwright-${build}`;

self.addEventListener("install", (event) => {
  const keep = async () => {
    const cache = await caches.open(kept);
    const fetched = files.map(async (file) => {
      // A file whose name holds its hash may come from the browser's own cache; the others are asked for anew.
      const answer = await fetch(file, { cache: /-[0-9a-f]{16}[._]/.test(file) ? "default" : "no-cache" });
      if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
      await cache.put(file, answer);
    });
    await Promise.all(fetched);
  };
  event.waitUntil(keep());
});

self.addEventListener("activate", (event) => {
  const tidy = async () => {
    for (const name of await caches.keys()) {
      if (name.startsWith("tubwright-") && name !== kept) await caches.delete(name);
    }
    await self.clients.claim();
  };
  event.waitUntil(tidy());
});

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  const scope = new URL(self.registration.scope);
  if (request.method !== "GET" || address.origin !== scope.origin || !address.pathname.startsWith(scope.pathname)) return;
  const named = `./${address.pathname.slice(scope.pathname.length)}`;
  const isPage = named === "./index.html" || (request.mode === "navigate" && !files.includes(named));
  const file = isPage ? "./" : named;
  if (!files.includes(file)) return;
  const answer = async () => (await (await caches.open(kept)).match(file)) ?? fetch(request);
  event.respondWith(answer());
});
