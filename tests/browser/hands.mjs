// What a technician does at the bench, once by mouse and once by keyboard alone.
//
// A job is a list of acts; MouseHands and KeyboardHands do the same acts. The mouse touches what lies
// uncovered under it; the keyboard presses keys and never sets the focus or clicks by program.
import assert from "node:assert/strict";

const LONGEST_WAY = 200; // presses of the tab key after which something counts as out of reach

/** What both kinds of hands see. */
class Hands {
  constructor(person) {
    this.person = person;
    this.page = person.page;
    this.inHand = this.page.getByRole("region", { name: "In hand", exact: true });
    this.instrument = this.page.getByRole("region", { name: "Instrument in hand" });
  }

  /** What the display shows, such as "ohms: 21.0 Ω". */
  async reading() {
    return (await this.instrument.getByRole("img").getAttribute("aria-label")) ?? "";
  }

  /** Waits until the display shows something that fits, since it settles like a real one. */
  async settles(pattern) {
    const found = async () => pattern.test(await this.reading());
    for (let tries = 0; tries < 60; tries += 1) {
      if (await found()) return;
      await this.page.waitForTimeout(100);
    }
    assert.match(await this.reading(), pattern);
  }

  /** The lines of the strip SAFE?, such as "✓ unplugged: done". */
  async safe() {
    const lines = await this.page.getByRole("region", { name: "Safe?" }).getByRole("listitem").allInnerTexts();
    return lines.map((line) => line.replace(/\s+/g, " ").trim());
  }

  /** Lets time pass until something is so, several times over. */
  async wait(until, times = 1) {
    for (let n = 0; n < times; n += 1) {
      await this.press(until);
      await this.page.getByText("wait until", { exact: true }).waitFor({ timeout: 20_000 });
    }
  }

  /** Does the acts in order: `["take", "tap"]`, `["act", "open the tap"]` … */
  async work(acts) {
    for (const [what, ...how] of acts) {
      await this[what](...how).catch((error) => {
        error.message = `${what} ${how.join(", ")}: ${error.message}`;
        throw error;
      });
    }
  }
}

/** The start of an accessible name: a verb is followed by what it takes. */
const begins = (word) => new RegExp(`^${word.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`, "i");

export class MouseHands extends Hands {
  /** Touches something in the picture by its name. */
  async take(name) {
    const thing = this.page.getByRole("group", { name: /^The machine/ }).getByRole("button", { name, exact: true }).first();
    await thing.waitFor({ state: "attached" });
    const spot = await thing.evaluate((element) => {
      const area = element.getBoundingClientRect();
      for (let row = 1; row < 12; row += 1) {
        for (let column = 1; column < 12; column += 1) {
          const x = area.left + (area.width * column) / 12;
          const y = area.top + (area.height * row) / 12;
          if (document.elementFromPoint(x, y)?.closest("[role=button]") === element) return { x, y };
        }
      }
      return null;
    });
    assert.ok(spot, `'${name}' is covered everywhere: a mouse cannot touch it`);
    await this.touch(spot.x, spot.y);
  }

  async touch(x, y) {
    await this.page.mouse.click(x, y);
  }

  /** Does something with what is in hand. */
  async act(verb) {
    await this.inHand.getByRole("button", { name: begins(verb) }).first().click();
  }

  async press(name) {
    await this.page.getByRole("button", { name: begins(name) }).first().click();
  }

  async follow(name) {
    await this.page.getByRole("link", { name: begins(name) }).first().click();
  }

  async show(view) {
    await this.page.getByRole("tab", { name: view, exact: true }).click();
  }

  async mode(name) {
    await this.instrument.getByRole("radio", { name, exact: true }).click();
  }

  /** Puts a lead on a point by typing part of its name and choosing from the list. */
  async lead(colour, point) {
    await this.instrument.getByRole("combobox", { name: colour }).click();
    await this.instrument.getByRole("combobox", { name: colour }).fill(point);
    await this.instrument.getByRole("option").first().click();
  }

  async choose(label, option) {
    await this.page.getByLabel(label).first().selectOption({ label: option });
  }

  async tick(name) {
    await this.page.getByRole("checkbox", { name: begins(name) }).first().check();
  }

  async type(label, text) {
    await this.page.getByLabel(label).first().fill(text);
  }
}

/** A finger on a telephone: the sides of the bench are drawers that are pulled out when needed. */
export class FingerHands extends MouseHands {
  /** Pulls out, or pushes in, whatever drawer is in the way of seeing this. */
  async reach(locator) {
    for (let tries = 0; tries < 4; tries += 1) {
      if (await locator.first().isVisible()) return locator.first();
      const handles = this.page.locator(".drawer__handle:visible");
      for (let n = 0; n < (await handles.count()); n += 1) {
        if ((await handles.nth(n).getAttribute("aria-expanded")) === "true") continue;
        await handles.nth(n).tap();
        await this.page.waitForTimeout(50); // the drawer is drawn out
        if (await locator.first().isVisible()) return locator.first();
      }
      await this.pushIn();
    }
    throw new Error("no drawer shows it");
  }

  async pushIn() {
    const open = this.page.locator(".drawer__handle[aria-expanded=true]:visible");
    while ((await open.count()) > 0) await open.first().tap();
  }

  async touch(x, y) {
    await this.page.touchscreen.tap(x, y);
  }

  async take(name) {
    await this.pushIn();
    await super.take(name);
  }

  async act(verb) {
    await this.pushIn();
    await this.inHand.getByRole("button", { name: begins(verb) }).first().tap();
  }

  async press(name) {
    await (await this.reach(this.page.getByRole("button", { name: begins(name) }).and(this.page.locator(":not(.drawer__handle)")))).tap();
  }

  async mode(name) {
    await (await this.reach(this.instrument.getByRole("radio", { name, exact: true }))).tap();
  }

  async lead(colour, point) {
    const field = await this.reach(this.instrument.getByRole("combobox", { name: colour }));
    await field.tap();
    await field.fill(point);
    await this.instrument.getByRole("option").first().tap();
  }

  async type(label, text) {
    await (await this.reach(this.page.getByLabel(label))).fill(text);
  }
}

export class KeyboardHands extends Hands {
  /** The accessible name and role of what has the focus, as far as these paths need it. */
  async focus() {
    return this.page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return { name: "", role: "", tag: "body" };
      const label = element.labels?.[0]?.innerText;
      const name = element.getAttribute("aria-label") ?? label ?? element.innerText ?? element.textContent ?? "";
      const tag = element.tagName.toLowerCase();
      const role = element.getAttribute("role") ?? { button: "button", a: "link", select: "combobox", summary: "summary" }[tag] ?? element.type ?? "";
      return { name: name.replace(/\s+/g, " ").trim(), role, tag };
    });
  }

  /** Presses Tab until what has the focus fits. */
  async tabTo(role, pattern) {
    const passed = [];
    for (let presses = 0; presses <= LONGEST_WAY; presses += 1) {
      const here = await this.focus();
      if (here.role === role && pattern.test(here.name)) return;
      passed.push(here.name || here.tag);
      await this.page.keyboard.press("Tab");
    }
    throw new Error(`no ${role} that fits ${pattern} within ${LONGEST_WAY} presses of Tab; passed ${[...new Set(passed)].slice(0, 40).join(" · ")}`);
  }

  /** Walks through the picture by the page keys until the thing has the focus, then takes it in hand. */
  async take(name) {
    await this.page.keyboard.press("d");
    for (let steps = 0; steps < 120; steps += 1) {
      if ((await this.focus()).name === name) return this.page.keyboard.press("Enter");
      await this.page.keyboard.press("PageDown");
    }
    throw new Error(`the page keys do not lead to '${name}'`);
  }

  async act(verb) {
    await this.page.keyboard.press("v");
    await this.tabTo("button", begins(verb));
    await this.page.keyboard.press("Enter");
  }

  async press(name) {
    await this.tabTo("button", begins(name));
    await this.page.keyboard.press("Enter");
    await this.keepsFocus(name);
  }

  /** A screen that opens takes the focus once it is drawn: between the two there may be a moment without. */
  async keepsFocus(name) {
    for (let tries = 0; tries < 30; tries += 1) {
      if ((await this.focus()).tag !== "body") return;
      await this.page.waitForTimeout(100);
    }
    assert.fail(`pressing '${name}' loses the focus`);
  }

  async follow(name) {
    await this.tabTo("link", begins(name));
    await this.page.keyboard.press("Enter");
  }

  async show(view) {
    const views = ["outside", "opened", "section", "wiring", "water"];
    await this.page.keyboard.press(String(views.indexOf(view) + 1));
  }

  async mode(name) {
    await this.page.keyboard.press("m");
    for (let presses = 0; presses < 20; presses += 1) {
      if ((await this.focus()).name === name) return this.page.keyboard.press("Enter");
      await this.page.keyboard.press("ArrowRight");
    }
    throw new Error(`arrows do not lead to the mode '${name}'`);
  }

  async lead(colour, point) {
    await this.page.keyboard.press(colour === "black" ? "b" : "r");
    await this.page.keyboard.type(point);
    await this.page.keyboard.press("Enter");
    // Out of the field, so that single keys are shortcuts again.
    await this.page.keyboard.press("Tab");
  }

  async choose(label, option) {
    await this.tabTo("combobox", begins(label));
    // Opened first: typing into a closed list would choose at every letter.
    await this.page.keyboard.press("Alt+ArrowDown");
    await this.page.keyboard.type(option);
    await this.page.keyboard.press("Enter");
  }

  async tick(name) {
    await this.tabTo("checkbox", begins(name));
    await this.page.keyboard.press("Space");
  }

  async type(label, text) {
    await this.tabTo("text", begins(label));
    await this.page.keyboard.type(text);
  }
}
