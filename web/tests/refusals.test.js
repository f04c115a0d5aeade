import assert from "node:assert/strict";
import { test } from "node:test";
import { quoted, typedBack } from "../state/refusals.js";

test("what was typed in a refused edit goes back to its field", () => {
  assert.deepEqual(typedBack({ op: "put", at: "/readings/0/name", value: "2nd lash" }), [{ key: "/readings/0/name", text: "2nd lash" }]);
  assert.deepEqual(typedBack({ op: "put", at: "/readings/1/entries/3/taken", value: ["0.1", "x"] }), [
    { key: "1/3/0", text: "0.1" },
    { key: "1/3/1", text: "x" },
  ]);
});

test("an edit without a text gives nothing back", () => {
  assert.deepEqual(typedBack(undefined), []);
  assert.deepEqual(typedBack({ op: "move", at: "" }), []);
  assert.deepEqual(typedBack({ op: "put", at: "/readings/0", value: { name: "a" } }), []);
  assert.equal(quoted([]), "");
});

test("where no field is left the message holds the text", () => {
  assert.equal(quoted([{ key: "/text", text: " 2nd lash" }]), "You wrote: 2nd lash");
});
