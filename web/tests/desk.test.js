import assert from "node:assert/strict";
import { test } from "node:test";
import { Desk } from "../state/desk.js";
import { answerOf } from "../state/figures.js";

/** A desk whose server is this test. */
function open() {
  let id = 0;
  const sockets = [];
  const due = [];
  const socket = () => {
    const one = { readyState: 1, sent: [], send: (text) => one.sent.push(JSON.parse(text)), close() {} };
    sockets.push(one);
    return one;
  };
  const desk = new Desk(socket, () => `e${++id}`, { set: (f) => due.push(f), clear() {} });
  const events = [];
  desk.listen((event, detail) => events.push([event, detail]));
  desk.start();
  const hear = (message) => sockets.at(-1).onmessage({ data: JSON.stringify(message) });
  const connect = () => {
    sockets.at(-1).onopen();
    hear({ type: "sheet", revision: 1, record: {}, cells: [cell("a = 1 mm", 1)], figures: { a: figure("1") } });
  };
  connect();
  return { desk, events, hear, connect, sent: () => sockets.at(-1).sent, lose: () => sockets.at(-1).onclose(), again: () => due.splice(0).forEach((f) => f()) };
}

const cell = (text, revision) => ({ id: "w", kind: "working", title: "", number: "1", revision, source: { id: "w", text } });
const figure = (value) => ({ name: "a", cell: "w", state: "fresh", kind: "quantity", value, unit: "mm" });
const changed = (text, value, revision, edit) => ({ type: "changed", revision, edit, cells: [cell(text, revision)], figures: { a: figure(value) } });

test("a preview shows before the text is kept, and the kept sheet takes its place", () => {
  const { desk, hear, sent } = open();
  desk.ask("w", "a = 2 mm");
  hear({ type: "preview", seq: sent()[0].seq, cell: "w", lines: [], tokens: [], figures: { a: figure("2") } });
  assert.equal(desk.figure("a").value, "2");
  assert.equal(desk.sheet.figures.get("a").value, "1");
  hear(changed("a = 2 mm", "2", 2, "e1"));
  assert.equal(desk.preview, null);
  assert.equal(desk.figure("a").value, "2");
});

test("an earlier text that is kept only now takes nothing back that was typed since", () => {
  const { desk, hear, sent } = open();
  desk.ask("w", "a = 3 mm");
  hear({ type: "preview", seq: sent()[0].seq, cell: "w", lines: [], tokens: [], figures: { a: figure("3") } });
  hear(changed("a = 2 mm", "2", 2, "e1"));
  assert.equal(desk.figure("a").value, "3");
  assert.deepEqual(sent().slice(1).map((message) => [message.type, message.text]), [["preview", "a = 3 mm"]]);
});

test("a field shows what it would give until it is kept or let go", () => {
  const { desk, hear, sent } = open();
  desk.askField("w", "/rows/0/measured", "b - c");
  assert.deepEqual(sent()[0], { type: "preview", cell: "w", field: "/rows/0/measured", at: "/rows", value: [{ measured: "b - c" }], seq: 1 });
  hear({ type: "preview", seq: 1, cell: "w", field: "/rows/0/measured", figure: "a", problems: [], figures: { a: figure("2") } });
  assert.deepEqual([desk.preview.figure, desk.figure("a").value], ["a", "2"]);
  const kept = { ...cell("", 2), source: { id: "w", rows: [{ measured: "b - c" }] } };
  hear({ type: "changed", revision: 2, edit: "e1", cells: [kept], figures: { a: figure("2") } });
  assert.equal(desk.preview, null);
});

test("only the answer to the last question is shown", () => {
  const { desk, hear, sent } = open();
  desk.ask("w", "a = 2 mm");
  desk.ask("w", "a = 3 mm");
  hear({ type: "preview", seq: sent()[0].seq, cell: "w", lines: [], tokens: [], figures: { a: figure("2") } });
  assert.equal(desk.preview, null);
});

test("a lost line is said, its questions end, and its edits are sent again upon the new sheet", async () => {
  const { desk, events, connect, sent, lose, again } = open();
  desk.put("w", "/text", "a = 2 mm");
  const trace = desk.trace("a");
  lose();
  assert.equal(await trace, null);
  assert.ok(events.some(([event, detail]) => event === "line" && detail === false));
  again();
  connect();
  assert.deepEqual(sent().map((message) => [message.type, message.edit.id, message.edit.value]), [["edit", "e1", "a = 2 mm"]]);
});

test("a refusal comes back with what was typed last", () => {
  const { desk, events, hear } = open();
  desk.put("w", "/text", "a = 2 mm");
  desk.put("w", "/text", "a = 25 mm");
  hear({ type: "refused", edit: "e1", reason: "r", wayOut: "w", mine: "a = 2 mm", theirs: "a = 9 mm", revision: 5 });
  const [, refusal] = events.find(([event]) => event === "refused");
  assert.deepEqual([refusal.of.value, refusal.theirs, desk.outbox.waiting], ["a = 25 mm", "a = 9 mm", 0]);
});

test("progress of a slow calculation stands in the place of its figure until that comes", () => {
  const { desk, events, hear } = open();
  hear({ ...changed("a = slow()", "", 2, "e1"), figures: { a: { ...figure(""), state: "working" } } });
  hear({ type: "progress", figures: { a: "42 %", b: "1 %" } });
  assert.equal(answerOf(desk.figure("a")).none, "working, 42 %");
  assert.deepEqual([...events.at(-1)[1].figures], ["a"]);
  hear({ type: "changed", revision: 2, edit: "", cells: [], figures: { a: figure("3") } });
  hear({ type: "progress", figures: { a: "99 %" } });
  assert.equal(desk.figure("a").progress, undefined);
  assert.equal(desk.figure("a").value, "3");
});
