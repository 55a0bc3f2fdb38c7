// The acts of a whole job, as hands do them: a shut tap behind the machine, found and put right.
// Exported in one list, so that any path can have any hands work it.

const hear = [
  ["press", "When in the wash does it happen?"],
  ["press", "Is the tap open, and is the water strong elsewhere?"],
];

// The supply, at the socket: it also proves that the tester works.
const measure = [
  ["lead", "red", "SL"],
  ["lead", "black", "SN"],
  ["settles", /^AC volts: 2[23]\d/],
  ["press", "Note it"],
];

// A key or switch of the panel is pressed when it is touched.
const find = [
  ["take", "on/off switch"],
  ["take", "start and pause key"],
  ["take", "tap"],
  ["act", "listen"],
  ["act", "look"],
];

const agree = [
  ["type", "Price for the whole job", "25"],
  ["press", "Name the price"],
];

const repair = [
  ["take", "on/off switch"],
  ["take", "tap"],
  ["act", "open the tap"],
];

// Switched on again: it fills, and nothing drips.
const prove = [
  ["take", "on/off switch"],
  ["take", "start and pause key"],
  ["wait", "a minute has passed", 3],
  ["take", "under the machine"],
  ["act", "look"],
  ["take", "on/off switch"],
];

const finish = [
  ["follow", "Finish"],
  ["choose", "Cause", "the tap is shut"],
  ["tick", "Evidence: tap"],
  ["tick", "what was wrong and what was done"],
  ["press", "State it and hand over"],
];

/** From the customer's words to handing over. */
export const shutTap = [...hear, ...measure, ...find, ...agree, ...repair, ...prove, ...finish];
