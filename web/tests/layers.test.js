import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const web = new URL("../", import.meta.url);
const source = (path) => readFileSync(new URL(path, web), "utf8");
const files = (folder) => readdirSync(new URL(folder, web)).filter((name) => name.endsWith(".js")).map((name) => `${folder}${name}`);
const code = (path) => source(path).replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
const imports = (path) =>
  [...code(path).matchAll(/^import [^;]*?"(\.[^"]+)";/gm)].map(([, to]) => new URL(to, new URL(path, web)).pathname.slice(web.pathname.length));

test("state modules know neither views nor a document, so that they are tested without a page", () => {
  for (const path of files("state/")) {
    assert.ok(imports(path).every((to) => to.startsWith("state/")), path);
    assert.doesNotMatch(code(path), /\b(document|window|localStorage|HTMLElement)\b/, path);
  }
});

test("no module writes a style or runs text as code: the content policy forbids both", () => {
  for (const path of [...files("state/"), ...files("view/")]) {
    assert.doesNotMatch(code(path), /setAttribute\("style"|style:|\.style\.|\beval\(|new Function/, path);
  }
});

for (const page of readdirSync(web).filter((name) => name.endsWith(".html")).map((name) => name.slice(0, -".html".length))) {
  test(`${page}.html asks at once for every module that it needs at the start`, () => {
    const html = source(`${page}.html`);
    const entry = html.match(/<script type="module" src="\/([^"]+)">/)[1];
    const needed = new Set();
    const visit = (path) => {
      if (needed.has(path)) return;
      needed.add(path);
      imports(path).forEach(visit);
    };
    visit(entry);
    needed.delete(entry);
    const asked = [...html.matchAll(/<link rel="modulepreload" href="\/([^"]+)">/g)].map(([, path]) => path);
    assert.deepEqual(asked.sort(), [...needed].sort());
  });
}
