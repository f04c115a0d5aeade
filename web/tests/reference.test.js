import assert from "node:assert/strict";
import { test } from "node:test";
import { argumentAt, callAt } from "../state/call.js";
import { bySubject, path, place, query, withLine, workings } from "../state/reference.js";

const at = (marked) => callAt(marked.replace("|", ""), marked.indexOf("|"));

test("the call that the cursor stands in is found by its brackets", () => {
  assert.deepEqual(at("a = growth(length: 2 mm, e|)"), { name: "growth", argument: "", position: 1 });
  assert.deepEqual(at("a = growth(length: (b + |c))"), { name: "growth", argument: "length", position: 0 });
  assert.deepEqual(at("a = max(growth(1 mm), |)"), { name: "max", argument: "", position: 1 });
  assert.deepEqual(at("a = shaft([segment(outer: |)])"), { name: "segment", argument: "outer", position: 0 });
  assert.deepEqual(at("a = shaft([x, y|], z)"), { name: "shaft", argument: "", position: 0 });
  assert.equal(at("a = growth(1 mm) + |"), null);
  assert.equal(at("a = growth(1 mm\nb = |"), null);
  assert.equal(at("a = 1 -- see growth(|"), null);
  assert.deepEqual(at('a = fit("H7, (g6", |)'), { name: "fit", argument: "", position: 1 });
});

test("an argument goes by its name, else by where it stands", () => {
  const args = [{ name: "length" }, { name: "expansion" }];
  assert.equal(argumentAt(args, { argument: "expansion", position: 0 }), args[1]);
  assert.equal(argumentAt(args, { argument: "", position: 0 }), args[0]);
  assert.equal(argumentAt(args, { argument: "", position: 5 }), undefined);
});

test("a path of the reference says what it shows", () => {
  assert.deepEqual(place("/reference"), { kind: "all", name: "" });
  assert.deepEqual(place("/reference/end_float"), { kind: "calculation", name: "end_float" });
  assert.deepEqual(place(path("iso-grades", true)), { kind: "table", name: "iso-grades" });
  assert.equal(query({ units: "imperial", terms: "british" }, "end play"), "?units=imperial&terms=british&find=end+play");
});

test("calculations stand under their subjects in the order given", () => {
  const some = [{ name: "a", title: "Gears" }, { name: "b", title: "Fits" }, { name: "c", title: "Gears" }];
  assert.deepEqual(bySubject(some).map((one) => [one.title, one.calculations.map((each) => each.name).join()]), [["Gears", "a,c"], ["Fits", "b"]]);
});

test("a line is put behind the last one of a working, wherever the working stands", () => {
  assert.equal(withLine("a = 1\n\n", "b = 2"), "a = 1\nb = 2");
  assert.equal(withLine("  ", "b = 2"), "b = 2");
  const cells = [{ id: "s", kind: "section", cells: [{ id: "w", kind: "working" }, { id: "n", kind: "note" }] }, { id: "v", kind: "working" }];
  assert.deepEqual(workings(cells).map((cell) => cell.id), ["w", "v"]);
});
