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

test("every import at the start is written so that the server finds it and asks for the module at once", () => {
  for (const path of [...files("state/"), ...files("view/")]) {
    const written = [...code(path).matchAll(/\b(?:import|from) "(\.[^"]+)"/g)].map(([, to]) => new URL(to, new URL(path, web)).pathname.slice(web.pathname.length));
    assert.deepEqual(imports(path), written, path);
  }
});

test("what a page says of itself names style sheets and a module that are there", () => {
  for (const page of readdirSync(web).filter((name) => name.endsWith(".html") && name !== "page.html")) {
    const words = Object.fromEntries([...source(page).split("-->")[0].matchAll(/^([a-z-]+): (.*)$/gm)].map(([, key, value]) => [key, value]));
    for (const key of ["title", "module", "skip", "foot"]) assert.ok(words[key], `${page} has no ${key}`);
    for (const style of words.styles.split(" ")) assert.ok(source(`css/${style}.css`), page);
    assert.ok(source(`view/${words.module}.js`), page);
  }
});
