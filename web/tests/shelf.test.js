import assert from "node:assert/strict";
import { test } from "node:test";
import { aboutPattern, engines, SHOWS } from "../state/shelf.js";

test("engines are counted, most records first", () => {
  const records = [{ id: "a", engine_serial: "W6-117" }, { id: "b", engine_type: "W6" }, { id: "c", engine_serial: "W6-117" }, { id: "d" }];
  assert.deepEqual(engines(records), [{ engine: "W6-117", count: 2 }, { engine: "W6", count: 1 }]);
});

test("a pattern says in a line what it is for", () => {
  assert.equal(aboutPattern({ id: "a", subtitle: "Bores" }), "Bores");
  assert.equal(aboutPattern({ id: "a", readings: { taken: 0, total: 1 } }), "1 reading to take");
  assert.equal(aboutPattern({ id: "a" }), "the same clauses");
});

test("a broken record is in error and nothing else", () => {
  const kinds = SHOWS.filter((show) => show.holds({ id: "a", problem: "no JSON" })).map((show) => show.key);
  assert.deepEqual(kinds, ["all", "error"]);
});
