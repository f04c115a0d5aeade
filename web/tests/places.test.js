import assert from "node:assert/strict";
import { test } from "node:test";
import { at, freshMark, placed } from "../state/places.js";

test("a place that is there is put as it is", () => {
  assert.deepEqual(placed({ rows: [{ new: { low: "" } }] }, "/rows/0/new/low", "0.1"), { at: "/rows/0/new/low", value: "0.1" });
});

test("what is missing on the way is made with it", () => {
  assert.deepEqual(placed({ rows: [{}] }, "/rows/0/new/low", "0.1"), { at: "/rows/0/new", value: { low: "0.1" } });
  assert.deepEqual(placed({ rows: [{}] }, "/rows/0/sizes/1/measured", "bore"), { at: "/rows/0/sizes", value: [{}, { measured: "bore" }] });
  assert.deepEqual(placed({}, "/causes/0/name", "seized"), { at: "/causes", value: [{ name: "seized" }] });
});

test("what stands at a place is found, or nothing", () => {
  assert.equal(at({ rows: [{ new: { low: "0.1" } }] }, "/rows/0/new/low"), "0.1");
  assert.equal(at({ rows: [] }, "/rows/0/new/low"), undefined);
});

test("a fresh mark is none that is taken", () => {
  assert.equal(freshMark("k", []), "k1");
  assert.equal(freshMark("k", [{ id: "k2" }]), "k3");
  assert.equal(freshMark("k", [{ id: "k1" }, { id: "k3" }]), "k4");
});
