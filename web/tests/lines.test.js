import assert from "node:assert/strict";
import { test } from "node:test";
import { limitLine, withLine, withUnit, workingFor } from "../state/lines.js";

const limit = (more) => limitLine("gap", { low: "", high: "", unit: "mm", authority: "", condition: "", ...more });

test("a limit is written of what was typed, a bare number in the unit shown", () => {
  assert.equal(limit({ low: "0.10", high: "0.30" }), "limit gap: 0.10 mm .. 0.30 mm");
  assert.equal(limit({ high: "12 thou", authority: 'W6 "7"', condition: "hot" }), `limit gap: at most 12 thou "W6 '7'" (condition: "hot")`);
  assert.equal(limit({ low: "2 * shim" }), "limit gap: at least 2 * shim");
  assert.equal(limit({ low: "-0.02" }), "limit gap: at least -0.02 mm");
  assert.equal(limit({}), "");
});

test("a line is written at the end of a working", () => {
  assert.deepEqual(withLine("a = 1\n\n", "b = a"), { text: "a = 1\nb = a", line: 2 });
  assert.deepEqual(withLine("", "b = a"), { text: "b = a", line: 1 });
});

test("the unit of a line is exchanged, taken away or declared, and nothing else of it", () => {
  const text = "-- gap\ngap [mm] = bore - shaft -- [x] = y\nlimit gap: at most 1 mm";
  assert.equal(withUnit(text, 2, "thou"), "-- gap\ngap [thou] = bore - shaft -- [x] = y\nlimit gap: at most 1 mm");
  assert.equal(withUnit(text, 2, ""), "-- gap\ngap = bore - shaft -- [x] = y\nlimit gap: at most 1 mm");
  assert.equal(withUnit("gap=1 mm", 1, "in"), "gap [in] =1 mm");
  assert.equal(withUnit(text, 3, "mm"), null);
});

test("a line about a value goes into its working, else into the next of its section, else into a new one", () => {
  const cells = new Map(Object.entries({ s: "section", r: "readings", n: "note", w: "working", v: "readings", x: "working" }).map(([id, kind]) => [id, { id, kind }]));
  const order = [["s", ""], ["r", "s"], ["n", "s"], ["w", "s"], ["v", "s"], ["x", ""]].map(([id, parent]) => ({ id, parent, depth: 0 }));
  const sheet = /** @type {any} */ ({ cells, order });
  assert.equal(workingFor(sheet, ["r", "x"]), "x");
  assert.equal(workingFor(sheet, ["r"]), "w");
  assert.equal(workingFor(sheet, ["v"]), "");
});
