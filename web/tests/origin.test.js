import assert from "node:assert/strict";
import { test } from "node:test";
import { authorityOf, comeBy, instrumentsOf, statementsOf } from "../state/origin.js";

const gauge = { id: "DG-07", name: "Lever dial gauge", calibrated: "2026-03-02", due: "2027-03-02" };
const dial = { name: "dial", sort: "reading", text: "At the heel", instruments: [gauge] };
const radius = { name: "radius", sort: "input", text: "radius [mm] = 36 mm", given: "wheel drawing" };
const cold = { name: "cold", sort: "computed", text: "cold = dial / radius", from: [dial, radius] };
const hot = { name: "hot", sort: "computed", from: [cold, { name: "opening", sort: "solved", from: [{ name: "radius", sort: "input" }] }] };

test("a value comes from numbered statements, thread by thread, each stated once", () => {
  const { from, statements } = statementsOf(hot);
  assert.deepEqual(statements.map(({ number, node }) => `${number} ${node.name}`), ["1 cold", "2 dial", "3 radius", "4 opening"]);
  assert.deepEqual(from, [1, 4]);
  assert.deepEqual(statements.map((one) => one.from), [[2, 3], [], [], [3]]);
});

test("what was met first without its origin is told with it", () => {
  const { statements } = statementsOf({ from: [{ name: "cold" }, { name: "swing", from: [cold] }] });
  assert.deepEqual(statements.map(({ node, from }) => [node.name, from]), [["cold", [3, 4]], ["swing", [1]], ["dial", []], ["radius", []]]);
});

test("a statement says how a value was come by, and on whose word", () => {
  assert.deepEqual([dial, radius, cold].map(comeBy), ["read", "given", "worked out"]);
  assert.deepEqual([dial, radius, cold].map(authorityOf), ["At the heel", "wheel drawing", ""]);
  assert.deepEqual(instrumentsOf(dial, "2026-05-12"), [{ text: "Lever dial gauge DG-07, calibrated 2026-03-02", overdue: false }]);
  assert.equal(instrumentsOf(dial, "2027-05-12")[0].overdue, true);
});
