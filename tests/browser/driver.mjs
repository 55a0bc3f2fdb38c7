// What every browser path shares: a browser, the site served from a sub-folder, a watch on everything
// that goes wrong unseen, and the few checks that hold on every screen.
//
// The site is reached under /any/folder/ on purpose: it must not assume that it owns a server.
import { createRequire } from "node:module";
import { join } from "node:path";
import { serve } from "../../.ci/serve.mjs";

const tools = process.env.TUBWRIGHT_TOOLS;
if (!tools) {
  console.error("browser: start this by 'make test' or '.ci/test page', which say where the tools are.");
  process.exit(1);
}
const require = createRequire(join(tools, "node_modules", "x.js"));
const { chromium } = require("playwright-core");
const axePath = require.resolve("axe-core/axe.min.js");

/** The sizes every screen is looked at in: a small laptop, a tablet held upright, a telephone. */
export const sizes = {
  laptop: { width: 1366, height: 768 },
  tablet: { width: 820, height: 1180 },
  telephone: { width: 390, height: 844 },
};

/** How Chromium is started. */
export const switches = [
  "--no-sandbox", // the tests may run as root
  "--disable-gpu",
  "--disable-quic",
  "--disable-dev-shm-usage",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts a browser and serves `folder`; `close()` ends both. */
export async function workshop(folder) {
  const { server, url } = await serve(folder, 0, "/any/folder/");
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: switches });
  return {
    folder,
    url,
    browser,
    server,
    /** A visitor with empty storage; `before` runs in the page ahead of its own scripts. */
    visit: (options = {}) => Visit.start(browser, url, options),
    /** As if the cable were pulled: every connection to the server is refused. */
    pullCable: () =>
      new Promise((done) => {
        server.closeAllConnections();
        server.close(done);
      }),
    async close() {
      await browser.close();
      server.closeAllConnections();
      server.close();
    },
  };
}

/** One visitor: a page of its own storage, and what went wrong in it. */
export class Visit {
  static async start(browser, url, { size = sizes.laptop, at = "", before, ...options } = {}) {
    const context = await browser.newContext({ viewport: size, reducedMotion: "reduce", ...options });
    const visit = new Visit();
    visit.context = context;
    visit.url = url;
    visit.wrong = [];
    visit.page = await context.newPage();
    if (before) await visit.page.addInitScript(before);
    visit.watch(visit.page);
    await visit.go(at);
    return visit;
  }

  watch(page) {
    page.on("console", (message) => {
      if (["error", "warning"].includes(message.type())) this.wrong.push(`console ${message.type()}: ${message.text()}`);
    });
    page.on("pageerror", (error) => this.wrong.push(`uncaught: ${error.message}`));
    // What is broken off by leaving or loading anew is no failure of the site.
    const isBrokenOff = (request) => request.failure()?.errorText === "net::ERR_ABORTED";
    page.on("requestfailed", (request) => isBrokenOff(request) || this.wrong.push(`failed request: ${request.url()} (${request.failure()?.errorText})`));
    page.on("response", (response) => {
      if (response.status() >= 400) this.wrong.push(`answer ${response.status()}: ${response.url()}`);
    });
    page.on("request", (request) => {
      const address = request.url();
      if (!address.startsWith(this.url) && !/^(data|blob):/.test(address)) this.wrong.push(`left the site: ${address}`);
    });
  }

  /** Opens the screen at the hash route `at` and waits until the program has drawn it. */
  async go(at) {
    await this.page.goto(this.url + at);
    await this.drawn();
  }

  async drawn() {
    await this.page.waitForFunction(() => document.querySelector("#app .starting") === null && document.querySelector("h1") !== null, null, { timeout: 20_000 });
  }

  /** Fails if the page can be scrolled sideways: a person at a small screen would lose half of it. */
  async fits() {
    const { inner, wide } = await this.page.evaluate(() => ({
      inner: document.documentElement.clientWidth,
      wide: [...document.querySelectorAll("body *")]
        .filter((element) => document.documentElement.scrollWidth > document.documentElement.clientWidth && element.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
        .slice(0, 5)
        .map((element) => `${element.tagName.toLowerCase()}.${element.getAttribute("class") ?? ""}`),
    }));
    const over = await this.page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    if (over > 0) throw new Error(`the page is ${over} px wider than its ${inner} px; too wide: ${wide.join(", ")}`);
  }

  /** The same with what is on the page now on a telephone; the size is as it was after. */
  async fits_on_a_telephone() {
    const before = this.page.viewportSize();
    await this.page.setViewportSize(sizes.telephone);
    await this.fits();
    await this.page.setViewportSize(before);
  }

  /** Fails on any accessibility rule axe-core finds broken. */
  async accessible() {
    const { readFileSync } = await import("node:fs");
    await this.page.evaluate(readFileSync(axePath, "utf8"));
    const broken = await this.page.evaluate(async () => {
      const { violations } = await globalThis.axe.run(document, { resultTypes: ["violations"] });
      return violations.map((rule) => `${rule.id} (${rule.impact}): ${rule.help}; ${rule.nodes.slice(0, 3).map((node) => node.html.slice(0, 140)).join(" | ")}`);
    });
    if (broken.length) throw new Error(`axe finds ${broken.length}:\n      ${broken.join("\n      ")}`);
  }

  /** Fails if anything went wrong that the visitor could not see. */
  quiet() {
    if (this.wrong.length) throw new Error(`went wrong unseen:\n      ${this.wrong.slice(0, 8).join("\n      ")}`);
  }

  async leave() {
    await this.context.close();
  }
}
