import assert from "node:assert/strict";
import { test } from "node:test";
import { clauseOf, next, STEPS } from "../state/first-steps.js";

const sheet = (...cells) => ({ order: cells.map(({ id }) => ({ id, parent: "", depth: 0 })), cells: new Map(cells.map((cell) => [cell.id, cell])) });
const value = [{ kind: "value" }];

test("the five hints go from the text to a reading, a working, a verdict, the end", () => {
  const all = sheet({ id: "s", kind: "section" }, { id: "n", kind: "note" }, { id: "r", kind: "readings" }, { id: "i", kind: "working", lines: [{ kind: "input" }] }, { id: "w", kind: "working", lines: value }, { id: "v", kind: "working", lines: value, worst: "outside" }, { id: "a", kind: "approval" });
  assert.deepEqual(STEPS.map((_, step) => clauseOf(all, step)), ["n", "r", "w", "v", "a"]);
});

test("a step without a clause of its kind is passed over", () => {
  const few = sheet({ id: "n", kind: "note" }, { id: "w", kind: "working", lines: value, worst: "within" });
  assert.equal(clauseOf(few, 1), "");
  assert.equal(next(few, 0), 2);
  assert.equal(next(few, 2), 4);
  assert.equal(next(few, 4), STEPS.length);
});
