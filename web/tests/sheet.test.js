import assert from "node:assert/strict";
import { test } from "node:test";
import { blank, moved, neighbour, nextWhere, placeAfter } from "../state/clauses.js";
import { changed, opened } from "../state/sheet.js";

const cell = (id, kind = "note", cells) => ({ id, kind, title: id, number: "", revision: 1, source: {}, ...(cells ? { cells } : {}) });
const sheet = () =>
  opened({
    revision: 3,
    record: { title_block: { title: "t" } },
    cells: [cell("s1", "section", [cell("a"), cell("b")]), cell("s2", "section", []), cell("s3", "section", [cell("c")])],
    figures: { x: { name: "x", value: "1" }, y: { name: "y", value: "2" } },
    canUndo: true,
  });

test("clauses lie from top to bottom with their section", () => {
  const order = sheet().order.map((place) => `${place.parent}/${place.id}/${place.depth}`);
  assert.deepEqual(order, ["/s1/0", "s1/a/1", "s1/b/1", "/s2/0", "/s3/0", "s3/c/1"]);
});

test("a change touches what it names and leaves the sheet before it alone", () => {
  const before = sheet();
  const { sheet: after, change } = changed(before, { revision: 4, cells: [{ ...cell("a"), title: "new" }], figures: { x: { name: "x", value: "9" }, y: null }, canUndo: true });
  assert.equal(before.cells.get("a").title, "a");
  assert.equal(after.cells.get("a").title, "new");
  assert.equal(after.cells.get("b"), before.cells.get("b"));
  assert.deepEqual([[...change.cells], [...change.figures], change.order], [["a"], ["x", "y"], false]);
  assert.equal(after.figures.has("y"), false);
  assert.equal(before.figures.has("y"), true);
});

test("a new order numbers the clauses anew", () => {
  const tree = [{ id: "s1", number: "1", cells: [{ id: "b", number: "1.1" }, { id: "a", number: "1.2" }] }];
  const { sheet: after, change } = changed(sheet(), { revision: 4, cells: [], removed: ["s2", "s3", "c"], order: tree });
  assert.equal(after.cells.get("a").number, "1.2");
  assert.deepEqual(after.order.map((place) => place.id), ["s1", "b", "a"]);
  assert.ok(change.cells.has("a") && change.order);
});

test("a clause moves past its neighbour, then over the edge of its section", () => {
  const { order, cells } = sheet();
  assert.deepEqual(moved(order, "b", -1, cells), { parent: "s1", after: "" });
  assert.deepEqual(moved(order, "a", 1, cells), { parent: "s1", after: "b" });
  assert.deepEqual(moved(order, "b", 1, cells), { parent: "s2", after: "" });
  assert.deepEqual(moved(order, "c", -1, cells), { parent: "s2", after: "" });
  assert.equal(moved(order, "a", -1, cells), null);
  assert.equal(moved(order, "c", 1, cells), null);
  assert.deepEqual(moved(order, "s3", -1, cells), { parent: "", after: "s1" });
});

test("a new clause follows the one it was asked for, a section the whole section", () => {
  const { order, cells } = sheet();
  assert.deepEqual(placeAfter(order, "a", "note", cells), { parent: "s1", after: "a" });
  assert.deepEqual(placeAfter(order, "s1", "working", cells), { parent: "s1", after: "" });
  assert.deepEqual(placeAfter(order, "b", "section", cells), { parent: "", after: "s1" });
  assert.deepEqual(placeAfter(order, "s2", "section", cells), { parent: "", after: "s2" });
  assert.deepEqual(placeAfter(order, "", "note", cells), { parent: "", after: "s3" });
  assert.deepEqual(blank("section", "n"), { id: "n", kind: "section", title: "", cells: [] });
});

test("the next that fulfils a wish is looked for round the end", () => {
  const now = sheet();
  assert.equal(nextWhere(now, "c", (id) => id === "a"), "a");
  assert.equal(nextWhere(now, "c", () => false), undefined);
  assert.equal(neighbour(now.order, "", 1), "s1");
  assert.equal(neighbour(now.order, "c", 1), undefined);
});
