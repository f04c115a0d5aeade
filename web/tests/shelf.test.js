import assert from "node:assert/strict";
import { test } from "node:test";
import { aboutPattern, engines, patternsInOrder, SHOWS, unjudged } from "../state/shelf.js";

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

test("limits that are not judged are said, and found", () => {
  assert.deepEqual(unjudged({ waiting: 1, in_error: 2 }), [
    { words: "2 limits in error", error: true },
    { words: "1 limit waiting", error: false },
  ]);
  assert.deepEqual(unjudged({ waiting: 0, in_error: 0 }), []);
  assert.deepEqual(unjudged(undefined), []);
  const verdicts = { within: 1, not_proven: 0, outside: 0, waiting: 1, in_error: 1 };
  const kinds = SHOWS.filter((show) => show.holds({ id: "a", state: "approved", verdicts })).map((show) => show.key);
  assert.deepEqual(kinds, ["all", "error", "waiting"]);
});

test("patterns stand by their titles, the one for anything else last", () => {
  const one = (id, title, state = "pattern") => /** @type {any} */ ({ id, title, state });
  const all = [one("bare-sheet", "Bare sheet"), one("liner", "Liner"), one("w6-1", "A record", "draft"), one("bevel", "Bevel pair")];
  assert.deepEqual(patternsInOrder(all).map((each) => each.id), ["bevel", "liner", "bare-sheet"]);
});
