import assert from "node:assert/strict";
import { test } from "node:test";
import { byClause, PARTS, rowsShown, sideName, stateWhen } from "../state/compare.js";

test("sides of two engines are called by their serial numbers, states of one by revision and date", () => {
  const one = { engine_serial: "W6-117", revision: "A", date: "2026-05-12" };
  assert.equal(sideName(one, { engine_serial: "W6-204" }), "W6-117");
  assert.equal(sideName(one, { engine_serial: "W6-117", revision: "B" }), "W6-117, revision A, 2026-05-12");
});

test("an earlier state is called by its time", () => {
  assert.equal(stateWhen("20261125-153000-0a1b2c3d4e5f"), "state of 2026-11-25 15:30 UTC");
});

test("what differs holds another verdict too, even where the value hardly moved", () => {
  const rows = [
    { clause: "1", standing: "none", judged_otherwise: false },
    { clause: "1", standing: "not clear", judged_otherwise: true },
    { clause: "2", standing: "clear", judged_otherwise: false },
  ];
  const counts = Object.fromEntries(PARTS.map((part) => [part.key, rows.filter(part.holds).length]));
  assert.deepEqual(counts, { differs: 2, clear: 1, verdicts: 1, all: 3 });
  assert.deepEqual(byClause(rows).map((group) => group.rows.length), [2, 1]);
});

test("of a table those rows are shown in which something is looked for", () => {
  const changed = { change: "changed", row: "2", cells: [{ head: "lash", standing: "clear", was: "within", verdict: "outside" }, { head: "hours", standing: "clear" }, { head: "rate", standing: "not clear" }] };
  const table = { first: [changed, { change: "only right", row: "3", cells: [{ head: "lash", standing: "only right", verdict: "within" }] }] };
  assert.deepEqual(rowsShown(table, "differs"), table.first);
  assert.deepEqual(rowsShown(table, "clear").map((row) => row.cells.map((cell) => cell.head)), [["lash", "hours"]]);
  assert.deepEqual(rowsShown(table, "verdicts").map((row) => row.cells.map((cell) => cell.head)), [["lash"]]);
});
