// A room without internet: the page as another computer gets it from the instructor's laptop, over plain http, where a
// browser withholds its cryptography and its service worker. An assessment is sat there and its result comes as a code.
import assert from "node:assert/strict";
import { networkInterfaces } from "node:os";
import { serve } from "../../../.ci/serve.mjs";
import { MouseHands } from "../hands.mjs";

const address = Object.values(networkInterfaces()).flat().find((one) => one.family === "IPv4" && !one.internal)?.address;

export async function over_plain_http_an_assessment_is_made_sat_sealed_and_read_from_its_code({ browser, folder }) {
  if (!address) return; // a machine without any network cannot be another computer
  const { server, url } = await serve(folder, 0, "/", address);
  try {
    const teacher = await browser.newContext({ viewport: { width: 1366, height: 768 }, reducedMotion: "reduce" });
    const desk = await teacher.newPage();
    await desk.goto(`${url}#/assessments`);
    assert.equal(await desk.evaluate(() => isSecureContext), false);
    await desk.getByRole("button", { name: "Make a new one" }).click();
    await desk.getByLabel("Title").fill("Room");
    for (const row of [3, 2]) await desk.getByRole("button", { name: `Take off row ${row}` }).click();
    await desk.getByLabel("Candidates", { exact: false }).last().fill("c-1");
    const cells = desk.getByRole("region", { name: "Slips" }).locator("tbody tr").first();
    await cells.waitFor();
    const [number, code, letters] = await cells.evaluate((row) => [...row.children].map((cell) => cell.textContent.trim()));
    const link = await desk.getByLabel(/^Link/).inputValue();

    const candidate = await browser.newContext({ viewport: { width: 1366, height: 768 }, reducedMotion: "reduce" });
    const page = await candidate.newPage();
    const wrong = [];
    page.on("pageerror", (error) => wrong.push(error.message));
    page.on("console", (message) => message.type() === "error" && wrong.push(message.text()));
    await page.goto(link);
    await page.getByLabel("Your number").fill(number);
    await page.getByLabel("Start code").fill(code);
    await page.getByLabel("The four letters").fill(letters);
    await page.getByLabel("Word for today").fill("lake");
    await page.getByRole("checkbox", { name: /I know what is recorded/ }).check();
    await page.getByRole("button", { name: /^Begin/ }).click();
    await page.getByRole("link", { name: "Job 1", exact: true }).click();
    await page.getByRole("region", { name: "In hand", exact: true }).waitFor();
    const hands = new MouseHands({ page });
    await hands.take("tap");
    await hands.act("look");
    await page.waitForTimeout(500);
    // The laptop is shut: whoever has the page open goes on.
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
    await page.evaluate(() => (location.hash = "#/sitting"));
    await page.getByRole("button", { name: "Hand in" }).click();
    await page.getByRole("button", { name: /^Yes, hand in/ }).click();
    await page.getByText("sealed with the start code").waitFor();
    await page.getByText("As QR codes").click();
    await page.getByRole("img", { name: "Result of job 1 as a QR code" }).waitFor();
    const held = (await page.getByRole("link", { name: "Job 1 as a link" }).getAttribute("href")).split("#/result/")[1];
    assert.ok(held.length < 2900, `${held.length} letters`);
    assert.deepEqual(wrong, []);

    // The instructor's own page makes the record whole again, and checks its seal with the key it keeps.
    await desk.evaluate((letters) => (location.hash = `#/result/${letters}`), held);
    await desk.getByText("run again, everything came out the same").waitFor();
  } finally {
    server.closeAllConnections();
    server.close();
  }
}
