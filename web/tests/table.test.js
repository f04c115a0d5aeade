import assert from "node:assert/strict";
import { test } from "node:test";
import { tableName } from "../state/clauses.js";
import { blockOf, pasted, storedIndex, textOf } from "../state/block.js";
import { entered, led } from "../state/cursor.js";
import { PAGE, Rows } from "../state/rows.js";
import { inView, topFor } from "../state/scroll.js";
import { besides, both, captionOf, columnsOf, conditionOf, inForce, keyedBy, sortedBy, takenWith } from "../state/table.js";

const columns = [{ head: "hours" }, { head: "lash" }, { head: "rate", formula: "wear.lash / wear.hours" }, { head: "batch" }];

test("a block from the clipboard is parted by tabs and new lines, whatever ends its lines", () => {
  assert.deepEqual(blockOf("412\t12.5\r\n388\t\n"), [["412", "12.5"], ["388", ""]]);
  assert.deepEqual(blockOf("a\rb"), [["a"], ["b"]]);
  assert.deepEqual(blockOf(""), []);
});

test("a quoted value keeps its tabs, new lines and quotes; a quote that measures inches is no opening one", () => {
  assert.deepEqual(blockOf('"two\nlines\tand ""more"""\tx'), [['two\nlines\tand "more"', "x"]]);
  assert.deepEqual(blockOf('5/8"\t3'), [['5/8"', "3"]]);
  assert.deepEqual(blockOf('"x\t3'), [['"x', "3"]]);
});

test("what goes to the clipboard comes back as it was", () => {
  const rows = [["a\tb", 'say "x"'], ["", "two\nlines"]];
  assert.deepEqual(blockOf(textOf(rows)), rows);
});

test("a block replaces the values it lies on, leaves the others of those rows, and makes rows beyond the last", () => {
  const { value, beyond, workedOut } = pasted([["1", "2"], ["3", "4"], ["5", "6"]], { row: 7, column: 0 }, [["h", "l", "B1"], ["h", "l", "B2"]], columns);
  assert.deepEqual(value, { from: 7, remove: 2, insert: [["1", "2", "B1"], ["3", "4", "B2"], ["5", "6", ""]] });
  assert.deepEqual([beyond, workedOut], [0, []]);
});

test("a column that is worked out takes nothing of a block, nor does the sheet beyond the last column", () => {
  const { value, beyond, workedOut } = pasted([["2", "9", "B3", "more"]], { row: 0, column: 1 }, [["h", "l", "B1"]], columns);
  assert.deepEqual(value.insert, [["h", "2", "B3"]]);
  assert.deepEqual([beyond, workedOut], [1, ["rate"]]);
  assert.deepEqual(storedIndex(columns), [0, 1, -1, 2]);
});

test("keys lead through a table and stop at its edges", () => {
  const of = { lines: 10, columns: 3, page: 4 };
  assert.deepEqual(led({ line: 0, column: 0 }, "ArrowUp", of), { line: 0, column: 0 });
  assert.deepEqual(led({ line: 8, column: 1 }, "PageDown", of), { line: 9, column: 1 });
  assert.deepEqual(led({ line: 5, column: 1 }, "End", { ...of, mod: true }), { line: 9, column: 2 });
  assert.deepEqual(led({ line: 5, column: 1 }, "Home", of), { line: 5, column: 0 });
  assert.equal(led({ line: 5, column: 1 }, "x", of), null);
});

test("Enter goes down and Tab right, on to the next line; Shift leads back", () => {
  const of = { lines: 3, columns: 2 };
  assert.deepEqual(entered({ line: 0, column: 1 }, "Enter", false, of), { line: 1, column: 1 });
  assert.deepEqual(entered({ line: 0, column: 1 }, "Tab", false, of), { line: 1, column: 0 });
  assert.deepEqual(entered({ line: 1, column: 0 }, "Tab", true, of), { line: 0, column: 1 });
  assert.deepEqual(entered({ line: 2, column: 1 }, "Tab", false, of), { line: 2, column: 1 });
});

test("Enter at the end of a line that was entered with Tab leads to where the next one begins", () => {
  const of = { lines: 3, columns: 4, began: 1 };
  assert.deepEqual(entered({ line: 0, column: 3 }, "Enter", false, of), { line: 1, column: 1 });
  assert.deepEqual(entered({ line: 1, column: 3 }, "Enter", true, of), { line: 0, column: 3 });
});

test("only the lines in view are drawn, and space stands for the others", () => {
  const seen = inView({ top: 3000, height: 300, line: 30, total: 1000, around: 5 });
  assert.deepEqual(seen, { first: 95, last: 115, above: 2850, below: 26550 });
  assert.deepEqual(inView({ top: 0, height: 300, line: 30, total: 3 }), { first: 0, last: 3, above: 0, below: 0 });
  assert.deepEqual(inView({ top: 0, height: 300, line: 30, total: 0 }), { first: 0, last: 0, above: 0, below: 0 });
});

test("a million rows are reached though no element is as high as they would be", () => {
  const what = { height: 400, line: 30, total: 1_000_000 };
  const whole = (seen) => seen.above + seen.below + (seen.last - seen.first) * what.line;
  for (const top of [0, 12_345, 4_000_000, 7_999_600]) {
    const seen = inView({ top, ...what });
    assert.equal(whole(seen), 8_000_000, `at ${top}`);
    assert.ok(seen.above <= top && seen.above + (seen.last - seen.first) * what.line >= top + what.height, `the view is filled at ${top}`);
  }
  assert.equal(inView({ top: 7_999_600, ...what }).last, 1_000_000);
  for (const index of [0, 17, 500_000, 999_999]) {
    const seen = inView({ top: topFor(index, { top: 0, ...what }), ...what });
    assert.ok(seen.first <= index && index < seen.last, `line ${index}`);
  }
});

test("what is in view already is not scrolled", () => {
  assert.equal(topFor(12, { top: 300, height: 300, line: 30, total: 100 }), 300);
  assert.equal(topFor(2, { top: 300, height: 300, line: 30, total: 100 }), 60);
  assert.equal(topFor(40, { top: 300, height: 300, line: 30, total: 100 }), 930);
});

const settled = () => new Promise((resolve) => setImmediate(resolve));

function served(total) {
  const asked = [];
  const fetch = async (from, count) => {
    asked.push(from);
    const length = Math.max(0, Math.min(count, total.now - from));
    return { total: total.now, passing: total.now, lines: Array.from({ length }, (_, index) => ({ row: from + index + 1, cells: [`${total.text}${from + index}`] })) };
  };
  return { asked, fetch };
}

test("lines are asked for once, page by page, as they come into view", async () => {
  const { asked, fetch } = served({ now: 100_000, text: "a" });
  let arrived = 0;
  const rows = new Rows(fetch, () => arrived++);
  rows.want(0, 40);
  rows.want(0, 40);
  await settled();
  assert.deepEqual([asked, rows.total, arrived], [[0], 100_000, 1]);
  assert.equal(rows.line(3).cells[0], "a3");
  assert.equal(rows.line(PAGE), undefined);
  rows.want(PAGE - 5, PAGE + 35);
  await settled();
  assert.deepEqual(asked, [0, PAGE]);
});

test("after an edit the lines known stay until the new ones have come, and a late answer of before counts nothing", async () => {
  const total = { now: 50, text: "a" };
  const { fetch } = served(total);
  const late = [];
  let hold = false;
  const rows = new Rows((from, count) => (hold ? new Promise((resolve) => late.push(() => resolve(fetch(from, count)))) : fetch(from, count)), () => {});
  rows.want(0, 50);
  await settled();
  hold = true;
  rows.renew();
  rows.want(0, 50);
  assert.equal(rows.line(7).cells[0], "a7");
  assert.ok(rows.isOld(7));
  total.text = "b";
  rows.renew();
  rows.want(0, 50);
  late[1]();
  await settled();
  assert.equal(rows.line(7).cells[0], "b7");
  total.text = "stale";
  late[0]();
  await settled();
  assert.equal(rows.line(7).cells[0], "b7");
});

test("of very many pages only those near the view are kept", async () => {
  const { asked, fetch } = served({ now: 1_000_000, text: "" });
  const rows = new Rows(fetch, () => {});
  for (let page = 0; page < 100; page++) {
    rows.want(page * PAGE, page * PAGE + 40);
    await settled();
  }
  assert.equal(rows.line(0), undefined);
  assert.ok(rows.line(99 * PAGE));
  assert.equal(asked.length, 100);
});

const fleet = {
  columns: [{ head: "hours", kind: "number", unit: "h" }, { head: "batch", kind: "text" }, { head: "rate", formula: "fleet.lash / fleet.hours" }],
  view: { sort: ["hours down"] },
  from: { file: "fleet.csv", date: "2026-11-02" },
};

test("the caption counts rows and what is missing, and says whence they come", () => {
  const table = { rows: 12345, missing: 3, columns: [{ missing: 1 }, { missing: 2 }, {}] };
  assert.equal(captionOf(fleet, table), "12\u202f345 rows, 3 columns; 3 values missing (1 in hours, 2 in batch). From fleet.csv, read 2026-11-02.");
  assert.equal(captionOf({ columns: [{ head: "a" }] }, { rows: 1 }), "1 row, 1 column; none missing.");
});

test("a column knows its order, its gaps and whether it is worked out", () => {
  const columns = columnsOf(fleet, { columns: [{ missing: 1 }, {}, {}] });
  assert.deepEqual(columns.map((one) => [one.sorted, one.missing, one.kind, one.formula !== ""]), [["falling", 1, "number", false], ["", 0, "text", false], ["", 0, "number", true]]);
});

test("the column wished for last is sorted by first", () => {
  assert.deepEqual(sortedBy(["hours down"], "batch", "rising"), ["batch", "hours down"]);
  assert.deepEqual(sortedBy(["batch", "hours down"], "hours", "rising"), ["hours", "batch"]);
  assert.deepEqual(sortedBy(["batch"], "batch", ""), []);
});

test("what is in force is said in words", () => {
  assert.equal(inForce({ sort: ["hours down", "batch"], filter: "hours > 400 h", group: ["batch"] }, 14, 96), "sorted by hours falling, then batch rising; 14 of 96 rows, those where hours > 400 h; grouped by batch");
  assert.equal(inForce(undefined, 3, 3), "");
});

test("a condition is written in the working language, a bare number in the unit of its column", () => {
  assert.equal(conditionOf(fleet.columns[0], "at least", "400"), "hours >= 400 h");
  assert.equal(conditionOf(fleet.columns[0], "less than", "2 d"), "hours < 2 d");
  assert.equal(conditionOf(fleet.columns[1], "is", "B2"), 'batch = "B2"');
  assert.equal(conditionOf({ head: "failed", kind: "truth" }, "is no", ""), "not failed");
  assert.equal(both("a > 1 or b", "c"), "(a > 1 or b) and c");
  assert.equal(both("", "c"), "c");
});

test("a new table has a name of its own, so that its columns can be named at once", () => {
  assert.equal(tableName([]), "table");
  assert.equal(tableName([{ kind: "table", source: { name: "table" } }, { kind: "note" }]), "table_2");
});

test("one column names the rows, and none when it is taken back", () => {
  const columns = [{ head: "craft", key: true }, { head: "serial" }];
  assert.deepEqual(keyedBy(columns, "serial"), [{ head: "craft" }, { head: "serial", key: true }]);
  assert.deepEqual(keyedBy(columns, ""), [{ head: "craft" }, { head: "serial" }]);
});

test("an instrument that was overdue is told of the columns that were taken with it", () => {
  const source = { columns: [{ head: "lash", instrument: "DG-07" }, { head: "fitted", instrument: "DG-07" }, { head: "rate", instrument: "DG-07", formula: "wear.lash / 2" }, { head: "hours" }] };
  const instruments = [{ id: "DG-07", due: "2026-03-02" }];
  assert.deepEqual(takenWith(source, instruments, "2026-05-12"), [{ text: "lash, fitted taken with DG-07, calibration was due 2026-03-02", overdue: true }]);
  assert.equal(takenWith(source, instruments, "2026-01-12")[0].overdue, false);
  assert.deepEqual(takenWith({ columns: [{ head: "hours" }] }, instruments, ""), []);
});

test("a table with the same key offers its columns, one that is keyed otherwise does not", () => {
  const table = (id, name, ...columns) => ({ id, kind: "table", source: { name, columns } });
  const craft = { head: "craft", key: true };
  const cells = [table("c1", "wear", craft, { head: "lash" }), table("c2", "bed", craft, { head: "lash" }, { head: "power", unit: "kW" }), table("c3", "oil", { head: "day", key: true }, { head: "iron" }), { id: "c4", kind: "note", source: {} }];
  assert.deepEqual(besides("c1", cells), [{ name: "bed", key: "craft", column: { head: "power", kind: "number", unit: "kW", formula: "bed.power", note: "" } }]);
  assert.deepEqual(besides("c3", cells), []);
});
