#!/usr/bin/env node
// Puts one run's figures on a page beside those of the run before: bench_page.mjs NOW.json BEFORE.json PAGE.html
import { existsSync, readFileSync, writeFileSync } from "node:fs";

const [nowPath, beforePath, pagePath] = process.argv.slice(2);
const now = JSON.parse(readFileSync(nowPath, "utf8"));
const before = existsSync(beforePath) ? JSON.parse(readFileSync(beforePath, "utf8")) : {};

const escape = (text) => String(text).replace(/[&<>"]/g, (c) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c]);
const time = (s) => {
  if (s == null) return "–";
  const [value, unit] = s < 1e-6 ? [s * 1e9, "ns"] : s < 1e-3 ? [s * 1e6, "µs"] : s < 1 ? [s * 1e3, "ms"] : [s, "s"];
  return `${value.toPrecision(3)} ${unit}`;
};
const table = (head, rows) =>
  `<table><thead><tr>${head.map((cell) => `<th scope="col">${escape(cell)}</th>`).join("")}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map((cell) => `<td>${escape(cell)}</td>`).join("")}</tr>`)
    .join("")}</tbody></table>`;

/** How much slower this machine was than then, by work that never changes. */
function pace(rows = [], earlier = []) {
  const yardstick = (list) => list.find((row) => row.name.startsWith("yardstick"))?.least_s;
  return yardstick(rows) && yardstick(earlier) ? yardstick(rows) / yardstick(earlier) : 1;
}

function timings(title, rows = [], earlier = []) {
  const scale = pace(rows, earlier);
  const lines = rows.map((row) => {
    const then = earlier.find((other) => other.name === row.name);
    const change = then ? `${(row.least_s / then.least_s / scale).toFixed(2)} ×` : "–";
    const kept = row.budget_s == null ? "–" : row.median_s <= row.budget_s ? "kept" : "over";
    return [row.name, time(row.least_s), time(row.median_s), time(row.slow_s), time(row.budget_s), kept, change];
  });
  return lines.length ? `<h2>${escape(title)}</h2>${table(["what", "least", "median", "95 %", "budget", "", "against the run before"], lines)}` : "";
}

/** Time over size, both in logarithms. */
function plot({ name, points, exponent }) {
  const [width, height, edge] = [420, 240, 44];
  const logs = points.map(({ size, least_s }) => [Math.log10(size), Math.log10(least_s)]);
  const range = (index) => [Math.min(...logs.map((p) => p[index])), Math.max(...logs.map((p) => p[index]))];
  const at = (value, [low, high], from, to) => from + ((value - low) / (high - low || 1)) * (to - from);
  const spots = logs.map(([x, y]) => [at(x, range(0), edge + 12, width - 40), at(y, range(1), height - edge, 24)]);
  const marks = spots
    .map(([x, y], n) => `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="4"/><text x="${x.toFixed(1)}" y="${height - 22}">${points[n].size}</text><text x="${x.toFixed(1)}" y="${(y - 9).toFixed(1)}">${time(points[n].least_s)}</text>`)
    .join("");
  const line = spots.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" ");
  return `<figure><svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${escape(name)}: time grows as size to the power ${exponent.toFixed(2)}"><polyline points="${line}"/>${marks}</svg><figcaption>${escape(name)}: time grows as size to the power ${exponent.toFixed(2)}</figcaption></figure>`;
}

const others = (now.others ?? []).map((row) => [row.name, row.other, time(row.own_s), time(row.other_s), `${row.ratio.toFixed(0)} ×`, row.apart.toExponential(1)]);
const marks = Object.entries(now.lighthouse ?? {}).map(([name, of]) => [name, of.performance, of.accessibility, of["best-practices"]]);
const size = Object.entries(now.size ?? {}).map(([name, of]) => [name, of.raw_kb.toFixed(0), of.gzip_kb.toFixed(0), of.brotli_kb.toFixed(0)]);
writeFileSync(
  pagePath,
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>What it costs</title>
<style>body{font:16px/1.5 sans-serif;max-width:75rem;margin:2rem auto;padding:0 1rem}table{border-collapse:collapse}td,th{padding:.2rem .8rem;border-bottom:1px solid #ccc;text-align:start}td:not(:first-child){font-variant-numeric:tabular-nums}figure{display:inline-block;inline-size:26rem;margin:1rem}polyline{fill:none;stroke:#0a6a6a;stroke-width:2}circle{fill:#0a6a6a}svg text{font-size:11px;text-anchor:middle}</style>
<h1>What it costs</h1>
${timings("Natively, one core", now.native, before.native)}
${timings("In Chromium, one core", now.chromium, before.chromium)}
${timings("The built page, 4x slower, nothing kept", now.page, before.page)}
${others.length ? `<h2>The same work by others</h2>${table(["what", "other", "own", "other's", "ratio", "results apart"], others)}` : ""}
${now.growth?.length ? `<h2>Cost against size</h2>${now.growth.map(plot).join("")}` : ""}
${marks.length ? `<h2>Lighthouse, of 100</h2>${table(["", "speed", "accessibility", "best practices"], marks)}` : ""}
${size.length ? `<h2>Size, kB</h2>${table(["what", "raw", "gzip", "brotli"], size)}` : ""}
</html>
`,
);
