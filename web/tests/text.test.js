import assert from "node:assert/strict";
import { test } from "node:test";
import { answerOf, doubtFrom, labelsOf, liveText } from "../state/figures.js";
import { answers, changedWhen, listed } from "../state/shelf.js";
import { cutAgainst, cutAt, letters, stretches } from "../state/source.js";
import { Typing } from "../state/typing.js";

test("stretches come from lines and columns counted from 1, and stay inside the text", () => {
  const text = "a = 1 mm\nb = 2";
  assert.deepEqual(stretches(text, [[2, 1, 2, "name"], [1, 7, 9, "unit"], [3, 1, 2, "name"], [2, 5, 90, "number"]]), [
    { from: 6, to: 8, kind: "unit" },
    { from: 9, to: 10, kind: "name" },
    { from: 13, to: 14, kind: "number" },
  ]);
  assert.deepEqual(cutAt("a = x + 1", { from: 5, to: 6 }), ["a = ", "x", " + 1"]);
  assert.deepEqual(cutAt("a", { from: 5, to: 9 }), ["a", "", ""]);
});

test("letters that nobody would see in a source are said by their numbers", () => {
  assert.deepEqual(letters("a\u202eb\t µ"), [{ text: "a" }, { code: "U+202E" }, { text: "b\t µ" }]);
  assert.deepEqual(letters("\u200b"), [{ code: "U+200B" }]);
  assert.deepEqual(letters(""), []);
});

test("the answer of a series is its worst station", () => {
  const elements = [{ labels: { tooth: "1" }, value: "0.1", limits: [] }, { labels: { tooth: "4" }, value: "0.4", u: "0.1", limits: [{ verdict: "outside" }] }];
  const answer = answerOf({ kind: "series", state: "fresh", unit: "mm", elements, worstElement: 1 });
  assert.deepEqual([answer.shown.value, answer.shown.unit, answer.of, answer.limits.length], ["0.4", "mm", "tooth 4", 1]);
  assert.equal(labelsOf({ cylinder: "3", plane: "top" }), "cylinder 3, top");
});

test("no value is shown in error or while waiting", () => {
  assert.equal(answerOf({ state: "error", value: "1" }).none, "no result");
  assert.equal(answerOf({ state: "waiting", value: "1" }).shown, undefined);
  assert.equal(liveText({ state: "error", value: "1", unit: "mm" }), "");
  assert.equal(liveText({ state: "fresh", value: "1", unit: "mm" }), "1 mm");
});

test("the demonstration comes first, then the newest change", () => {
  const records = [{ id: "a", changed: "2026-01-01" }, { id: "b", changed: "2026-03-01" }, { id: "d", changed: "2025-01-01" }];
  assert.deepEqual(listed(records, "d").map((record) => record.id), ["d", "b", "a"]);
  assert.ok(answers({ id: "x", title: "Bevel drive", engine_serial: "W6-117" }, "bevel, w6-117"));
  assert.ok(!answers({ id: "x", title: "Bevel drive" }, "thrust"));
  assert.equal(changedWhen("2026-05-12T00:00:00Z", new Date("2026-05-20T12:00:00Z")).slice(0, 8), "2026-05-");
});

test("the source of a doubt names its subject once", () => {
  assert.equal(doubtFrom({ subject: "DG-07", words: "offset of DG-07, ± 0.003 mm" }), "offset of DG-07, ± 0.003 mm");
  assert.equal(doubtFrom({ subject: "slip", words: "half a step either way" }), "slip, half a step either way");
});

/** Time that passes when it is told to. */
function clockwork() {
  let now = 0;
  const due = [];
  return {
    timers: { set: (f, ms) => due[due.push({ at: now + ms, f }) - 1], clear: (handle) => handle && (handle.f = () => {}) },
    pass(ms) {
      now += ms;
      for (const one of due.splice(0).sort((a, b) => a.at - b.at)) one.at <= now ? one.f() : due.push(one);
    },
  };
}

test("typing is shown while it goes on and kept when it rests", () => {
  const { timers, pass } = clockwork();
  const shown = [];
  const kept = [];
  const typing = new Typing("", { preview: (text) => shown.push(text), keep: (text) => kept.push(text) }, timers);
  for (const text of ["a", "ab", "abc"]) {
    typing.typed(text);
    pass(40);
  }
  assert.deepEqual([shown, kept], [["ab"], []]);
  pass(300);
  assert.deepEqual(shown, ["ab", "abc"]);
  assert.deepEqual(kept, ["abc"]);
  typing.rest();
  assert.deepEqual(kept, ["abc"]);
  assert.equal(typing.isOpen, false);
});

test("a text typed back to what is kept is shown again, for another was shown meanwhile", () => {
  const { timers, pass } = clockwork();
  const shown = [];
  const typing = new Typing("a", { preview: (text) => shown.push(text), keep: () => {} }, timers);
  typing.typed("ab");
  pass(80);
  typing.typed("a");
  pass(80);
  assert.deepEqual(shown, ["ab", "a"]);
  typing.typed("abc");
  typing.rest();
  assert.deepEqual(shown, ["ab", "a", "abc"]);
});

test("a text taken over from elsewhere is neither shown nor kept as ours", () => {
  const { timers, pass } = clockwork();
  const kept = [];
  const typing = new Typing("old", { preview: () => kept.push("shown"), keep: (text) => kept.push(text) }, timers);
  typing.typed("mine");
  typing.replaced("theirs");
  pass(1000);
  assert.deepEqual(kept, []);
});

test("two texts are cut where they differ, and nothing of either is lost", () => {
  assert.deepEqual(cutAgainst("Chipped at the heel. Mine.", "Chipped at the heel. The other."), ["Chipped at the heel. ", "Mine", "."]);
  assert.deepEqual(cutAgainst("aa", "aaa"), ["aa", "", ""]);
  assert.deepEqual(cutAgainst("aaa", "aa"), ["aa", "a", ""]);
  for (const [one, other] of [["", "x"], ["same", "same"], ["abcabc", "abc"]]) assert.equal(cutAgainst(one, other).join(""), one);
});
