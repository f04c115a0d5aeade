import assert from "node:assert/strict";
import { test } from "node:test";
import { integrity } from "../state/integrity.js";
import { label, labels } from "../state/terms.js";

test("figures agree, differ with those that differ named, or were never saved", () => {
  assert.equal(integrity({}).kind, "unsaved");
  assert.equal(integrity({ agrees: { agrees: true, compared: 3, library: "0.1.0" }, waiting: 1 }).more, "1 value waiting. Library 0.1.0.");
  const differs = integrity({ agrees: { agrees: false, why: "Because.", differences: [{ name: "gap", clause: "c1", what: "value", saved: "0.1", now: "0.2" }] } });
  assert.equal(differs.kind, "differs");
  assert.equal(differs.line, "1 figure differs from those saved");
  assert.equal(differs.differences[0].text, "value: saved 0.1, now 0.2");
});

test("where a line is in error, no tick stands beside it", () => {
  const { kind, line, more } = integrity({ agrees: { agrees: true, library: "0.1.0" }, errors: 1, waiting: 2 });
  assert.equal(kind, "errors");
  assert.equal(line, "1 line in error, 2 values waiting");
  assert.equal(more, "The other figures agree with the readings. Library 0.1.0.");
});

test("a label of the table reads otherwise in the two countries, and only then stands there", () => {
  for (const [key, [british, american]] of labels) assert.notEqual(british, american, key);
  assert.equal(label("worn", "american"), "Service");
  assert.equal(label("worn", undefined), "Worn");
});
