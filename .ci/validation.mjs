#!/usr/bin/env node
// Turns the checks that the row tests left into the handbook's chapter and a page of all of them.
// Usage: validation.mjs FOLDER CHAPTER.md PAGE.html
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const [folder, chapterPath, pagePath] = process.argv.slice(2);

/** The lines of an RFC 4180 file as arrays of fields, without its head. */
function lines(text) {
  const rows = [[""]];
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i];
    const row = rows.at(-1);
    if (quoted && c === '"' && text[i + 1] === '"') { row[row.length - 1] += c; i += 1; }
    else if (c === '"') quoted = !quoted;
    else if (c === "," && !quoted) row.push("");
    else if (c === "\n" && !quoted) rows.push([""]);
    else row[row.length - 1] += c;
  }
  return rows.slice(1).filter((row) => row.length > 1);
}

const checks = readdirSync(folder).sort().flatMap((name) => lines(readFileSync(join(folder, name), "utf8")))
  .map(([domain, source, condition, expected, computed, unit, allowed]) => {
    const [want, got, room] = [expected, computed, allowed].map(Number);
    const difference = got - want;
    return { domain, source, condition, want, got, unit, room, difference, share: room > 0 ? Math.abs(difference) / room : 0 };
  });
const domains = [...new Set(checks.map((check) => check.domain))];

const digits = (x) => (x === 0 ? "0" : Math.abs(x) >= 1e5 || Math.abs(x) < 1e-4 ? x.toExponential(3) : String(Number(x.toPrecision(6))));
const relative = (check) => (check.want === 0 ? 0 : Math.abs(check.difference / check.want));
const escape = (text) => text.replace(/[&<>"]/g, (c) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[c]);
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? 0;
const sources = (list) => [...new Set(list.map((check) => check.source.split(/[;(,]/)[0].trim()))].filter(Boolean);

function chapter() {
  const rows = domains.map((domain) => {
    const list = checks.filter((check) => check.domain === domain);
    const worst = list.reduce((a, b) => (b.share > a.share ? b : a));
    return `- **${domain[0].toUpperCase()}${domain.slice(1)}**: ${list.length} checks; half of them nearer than ${digits(median(list.map(relative)))} of the value; the one that uses most of its tolerance uses ${Math.round(100 * worst.share)} %. Against: ${sources(list).slice(0, 6).join("; ")}.`;
  });
  return `What the machines compute was compared with things from outside: an independent circuit simulator, general numerical libraries, published examples, standards. ${checks.length} checks, all within their tolerance. [Every one of them](validation.html), with a plot for each domain.

## By domain

${rows.join("\n")}

Besides these, each run of the tests compares 200 random networks and 60 states of faulty machines node by node with the circuit simulator, where that is installed.

## What the words mean

- **Expected**: the value from outside, computed once by its source.
- **Computed**: what this program gives for the same question.
- **Tolerance**: the largest difference a test accepts. For the network a thousandth of the value, or a floor under which a reading says "nothing".

## What is not modelled, and values from memory

[The limits](#/handbook/limits) name both. A value marked "from memory" in the program was recalled, not looked up; one marked "common practice" is what the trade does; "design choice" is ours.
`;
}

/** Each check as a dot: its size against how much of its tolerance it uses. */
function plot(list) {
  const [width, height, left, bottom] = [640, 180, 48, 28];
  const sizes = list.map((check) => Math.log10(Math.max(Math.abs(check.want), 1e-9)));
  const [low, high] = [Math.floor(Math.min(...sizes)), Math.ceil(Math.max(...sizes)) + 0.001];
  const x = (size) => left + ((size - low) / (high - low)) * (width - left - 8);
  const y = (share) => 8 + (1 - Math.min(share, 1)) * (height - bottom - 8);
  const dots = list.map((check, i) => `<circle cx="${x(sizes[i]).toFixed(1)}" cy="${y(check.share).toFixed(1)}" r="2.5" fill="#1f5fa8" fill-opacity="0.5"/>`).join("");
  const step = Math.max(1, Math.ceil((high - low) / 8));
  const marks = [];
  for (let power = low; power <= high; power += step) marks.push(`<text x="${x(power).toFixed(1)}" y="${height - 8}" font-size="11" text-anchor="middle">1e${power}</text>`);
  return `<svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="Share of the tolerance used by each check, against the size of its value; the table below has the figures">
<line x1="${left}" y1="${y(1)}" x2="${width - 8}" y2="${y(1)}" stroke="#8a3b12" stroke-dasharray="4 3"/><text x="4" y="${y(1) + 4}" font-size="11">100 %</text>
<line x1="${left}" y1="${y(0)}" x2="${width - 8}" y2="${y(0)}" stroke="#333"/><text x="4" y="${y(0) + 4}" font-size="11">0 %</text>
${marks.join("")}${dots}</svg>`;
}

function page() {
  const parts = domains.map((domain) => {
    const list = checks.filter((check) => check.domain === domain);
    const rows = list.map((check) => `<tr><td>${escape(check.condition)}</td><td>${escape(check.source)}</td><td>${digits(check.want)}</td><td>${digits(check.got)}</td><td>${digits(check.difference)}</td><td>${digits(check.room)}</td><td>${escape(check.unit)}</td></tr>`);
    return `<h2>${escape(domain)}: ${list.length} checks</h2>
${plot(list)}
<table border="1" cellpadding="4"><caption>${escape(domain)}</caption>
<thead><tr><th scope="col">Condition</th><th scope="col">Source</th><th scope="col">Expected</th><th scope="col">Computed</th><th scope="col">Difference</th><th scope="col">Tolerance</th><th scope="col">Unit</th></tr></thead>
<tbody>${rows.join("\n")}</tbody></table>`;
  });
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Every outside check</title></head>
<body><main><h1>Every outside check</h1>
<p>${checks.length} checks. In each plot a dot is a check: how large its value is, and how much of its tolerance the difference uses.</p>
<p><a href="./#/handbook/validation">Back to the handbook</a></p>
${parts.join("\n")}
</main></body></html>
`;
}

writeFileSync(chapterPath, chapter());
writeFileSync(pagePath, page());
console.error(`validation: ${checks.length} checks in ${domains.length} domains`);
