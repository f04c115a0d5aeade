import assert from "node:assert/strict";
import { test } from "node:test";
import { Outbox } from "../state/outbox.js";

const put = (id, value, seen = 1, at = "/text", cell = "c1") => ({ id, op: "put", cell, at, value, seen });

test("an edit stays until it is acknowledged, the next leaves then", () => {
  const sent = [];
  const outbox = new Outbox((edit) => sent.push(edit.id));
  outbox.connected();
  outbox.take(put("a", "1", 1, "/title"));
  outbox.take(put("b", "2"));
  assert.deepEqual(sent, ["a"]);
  outbox.kept("a", 2);
  assert.deepEqual(sent, ["a", "b"]);
  outbox.kept("b", 3);
  assert.equal(outbox.waiting, 0);
});

test("what is typed while an edit is under way becomes one edit, made upon the kept one", () => {
  const sent = [];
  const outbox = new Outbox((edit) => sent.push(edit));
  outbox.connected();
  outbox.take(put("a", "x", 4));
  outbox.take(put("b", "xy", 4));
  outbox.take(put("c", "xyz", 4));
  outbox.kept("a", 9);
  assert.deepEqual(sent.map((edit) => [edit.id, edit.value, edit.seen]), [["a", "x", 4], ["b", "xyz", 9]]);
});

test("a text stays pending until the sheet shows it, also where an earlier sheet comes after its acknowledgement", () => {
  const outbox = new Outbox(() => {});
  outbox.connected();
  outbox.take(put("a", "x"));
  outbox.kept("a", 2);
  outbox.take(put("b", "xy"));
  outbox.kept("b", 3);
  outbox.reached(2);
  assert.equal(outbox.pending("c1", "/text").value, "xy");
  outbox.reached(3);
  assert.equal(outbox.pending("c1", "/text"), undefined);
});

test("an undo between two edits of one place keeps them apart", () => {
  const outbox = new Outbox(() => {});
  outbox.take(put("a", "x"));
  outbox.take({ id: "u", op: "undo" });
  outbox.take(put("b", "y"));
  assert.equal(outbox.waiting, 3);
});

test("a refusal brings back what was typed last, and nothing of that place follows it", () => {
  const sent = [];
  const outbox = new Outbox((edit) => sent.push(edit.id));
  outbox.connected();
  outbox.take(put("a", "x"));
  outbox.take(put("b", "xy"));
  outbox.take(put("c", "other", 1, "/title"));
  assert.equal(outbox.refused("a").value, "xy");
  assert.deepEqual(sent, ["a", "c"]);
});

test("a clause just added can be written into before the server has it", () => {
  const sent = [];
  const outbox = new Outbox((edit) => sent.push(edit));
  outbox.connected();
  outbox.take({ id: "a", op: "add", cell: "c9", value: {}, parent: "", after: "" });
  outbox.take({ id: "b", op: "put", cell: "c9", at: "/text", value: "x" });
  outbox.kept("a", 7);
  assert.equal(sent[1].seen, 7);
});

/** A server that takes each id once and loses lines at random; the seed makes a failure repeatable. */
function lossy(seed) {
  let state = seed;
  const random = () => (state = (state * 48271) % 2147483647) / 2147483647;
  const kept = new Map();
  const order = [];
  const inbox = [];
  const outbox = new Outbox((edit) => inbox.push(edit));
  const serve = () => {
    const edit = inbox.shift();
    if (!edit) return;
    if (random() < 0.3) return lose(); // lost on the way there
    if (!kept.has(edit.id)) {
      kept.set(edit.id, kept.size + 1);
      order.push(edit.value);
    }
    if (random() < 0.3) return lose(); // lost on the way back
    outbox.kept(edit.id, kept.get(edit.id));
  };
  const lose = () => {
    inbox.length = 0;
    outbox.lost();
    if (random() < 0.5) outbox.connected();
  };
  return { outbox, serve, order, random };
}

test("whatever the line does, every edit arrives once and in order", () => {
  for (let seed = 1; seed <= 300; seed++) {
    const { outbox, serve, order, random } = lossy(seed);
    const typed = [];
    outbox.connected();
    for (let n = 0; n < 30; n++) {
      if (random() < 0.6) {
        typed.push(n);
        outbox.take({ id: `e${n}`, op: "put", cell: `c${n}`, at: "/text", value: n });
      }
      serve();
    }
    for (let n = 0; n < 2000 && outbox.waiting > 0; n++) {
      outbox.connected();
      serve();
    }
    assert.equal(outbox.waiting, 0, `seed ${seed}`);
    assert.deepEqual(order, typed, `seed ${seed}`);
  }
});
