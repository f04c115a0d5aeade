import assert from "node:assert/strict";
import { test } from "node:test";
import { choose, chooseFrom } from "../view/wide.js";

const place = (node, at, depth) => ({ node, at, depth });

test("a formula breaks as far out of brackets as it can, but no line stays half empty", () => {
  const places = [place("a", 60, 0), place("b", 220, 1), place("c", 280, 0), place("d", 300, 2)];
  assert.deepEqual(choose(places, 500, 320), ["c"]);
  assert.deepEqual(choose([place("a", 60, 0), place("b", 220, 1)], 400, 320), ["b"]);
  assert.deepEqual(choose(places, 320, 320), []);
});

test("a piece too long for a line does not keep the rest from breaking", () => {
  assert.deepEqual(choose([place("a", 500, 0), place("b", 700, 0)], 900, 320), ["a", "b"]);
  assert.deepEqual(choose([], 900, 320), []);
});

test("a formula breaks before a factor only where signs leave a line too long", () => {
  const places = [place("sign", 60, 0), { ...place("factor", 250, 1.5), factor: true }];
  assert.deepEqual(chooseFrom(places, 340, 320), ["sign"]);
  assert.deepEqual(chooseFrom(places, 500, 320), ["factor"]);
});

test("behind an opening bracket it breaks only where nothing else is left", () => {
  const places = [{ ...place("argument", 150, 1.5), factor: true, opening: true }, { ...place("factor", 360, 1.5), factor: true }];
  assert.deepEqual(chooseFrom(places, 500, 320), ["argument", "factor"]);
  assert.deepEqual(chooseFrom([places[0], { ...places[1], at: 250 }], 500, 320), ["factor"]);
});
