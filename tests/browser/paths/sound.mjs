// The machine can be heard: what reaches the loudspeaker has the tone the caption names, until it is switched off.
import assert from "node:assert/strict";
import { MouseHands } from "../hands.mjs";

/** Hangs a meter of frequencies between the page and the loudspeaker. */
function listenIn() {
  const connect = AudioNode.prototype.connect;
  AudioNode.prototype.connect = function (to, ...rest) {
    if (to instanceof AudioDestinationNode) {
      const ear = new AnalyserNode(this.context, { fftSize: 16384, smoothingTimeConstant: 0 });
      connect.call(this, ear);
      window.ear = ear;
    }
    return connect.call(this, to, ...rest);
  };
}

/** Level of the loudest tone between two frequencies, dB of full scale, and where it is, Hz. */
async function loudest(page, from_hz, to_hz) {
  return page.evaluate(
    ([from, to]) => {
      const { ear } = window;
      if (!ear) return { level_db: -Infinity, tone_hz: 0 };
      const levels = new Float32Array(ear.frequencyBinCount);
      ear.getFloatFrequencyData(levels);
      const width = ear.context.sampleRate / ear.fftSize;
      let best = Math.ceil(from / width);
      for (let bin = best; bin <= to / width; bin += 1) if (levels[bin] > levels[best]) best = bin;
      return { level_db: levels[best], tone_hz: best * width };
    },
    [from_hz, to_hz],
  );
}

async function until(what, holds) {
  for (let tries = 0; tries < 60; tries += 1) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  assert.fail(`never: ${what}`);
}

export async function a_coil_at_mains_frequency_hums_at_twice_that(at) {
  const person = await at.visit({ before: listenIn });
  const { page } = person;
  await person.go("#/bench/no_water");
  await page.getByRole("group", { name: /^The machine/ }).waitFor();
  const hands = new MouseHands(person);
  await hands.work([["take", "on/off switch"]]);
  await until("the display is ready", async () => /Ready/.test(await page.locator(".caption__panel").innerText()));
  await hands.work([["take", "start and pause key"]]);
  // The tap is shut, so the inlet valve's coil is all there is to hear: 50 Hz pull twice a turn of the supply.
  await until("the caption names the hum", async () => /hum/i.test(await page.locator(".caption__sound").innerText()));
  await until("100 Hz reach the loudspeaker", async () => {
    const { level_db, tone_hz } = await loudest(page, 60, 2000);
    return level_db > -70 && Math.abs(tone_hz - 100) < 4;
  });
  await hands.press("Sound is on");
  await until("it is silent", async () => (await loudest(page, 60, 2000)).level_db < -100);
  assert.match(await page.locator(".caption__sound").innerText(), /hum/i);
}
