import assert from "node:assert/strict";
import { test } from "node:test";
import { calibration, elementAt, grid, isBegun, isUntouched, nextStation, relabelled, stages, takings, unplaced, withoutStation, withStruck, withTaken } from "../state/readings.js";

const bore = {
  name: "bore",
  unit: "mm",
  axes: ["cylinder", "plane"],
  stage: "as found",
  entries: [
    { at: { cylinder: "1", plane: "top" }, taken: ["86.012"] },
    { at: { cylinder: "1", plane: "bottom" }, taken: ["86.004"] },
    { at: { cylinder: "2", plane: "top" }, taken: ["86.020", "86.021"] },
    { at: { cylinder: "2", plane: "top" }, taken: ["86.200"], struck: { reason: "slipped" } },
    { at: { cylinder: "1", plane: "top" }, taken: ["86.251"], stage: "as left" },
  ],
};

test("the last axis runs across, the others down, and a gap stays a gap", () => {
  const { down, across, bands } = grid(bore, "as found", "as found");
  assert.deepEqual([down, across, bands.length], [["cylinder"], "plane", 1]);
  assert.deepEqual(bands[0].columns, ["top", "bottom"]);
  assert.deepEqual(bands[0].rows.map((row) => row.labels), [["1"], ["2"]]);
  assert.deepEqual(bands[0].rows[1].stations[1], []);
});

test("a struck reading stays at its station beside the one that counts", () => {
  const { bands } = grid(bore, "as found", "as found");
  assert.deepEqual(bands[0].rows[1].stations[0].map((taking) => [taking.taken.length, Boolean(taking.struck)]), [[2, false], [1, true]]);
});

test("stages are shown apart, and an entry without one belongs to the present stage", () => {
  assert.deepEqual(stages(bore, "as found"), ["as found", "as left"]);
  assert.deepEqual(takings(bore, "as left", "as found").map((taking) => taking.taken), [["86.251"]]);
  assert.deepEqual(stages({ entries: [{ taken: ["1"] }] }, "cleaned"), ["cleaned"]);
  assert.deepEqual(stages({ stage: "as left" }, "as found"), ["as left"]);
});

test("a row that would be too wide becomes several of even length", () => {
  const entries = Array.from({ length: 12 }, (_, tooth) => ({ at: { tooth: String(tooth + 1) }, taken: ["0.134"] }));
  const { bands } = grid({ axes: ["tooth"], entries }, "as found", "as found", 48);
  assert.deepEqual(bands.map((band) => band.columns.length), [6, 6]);
  assert.deepEqual(grid({ axes: ["tooth"], entries: entries.slice(0, 8) }, "as found", "as found", 48).bands.length, 1);
});

test("a further station counts on from the last", () => {
  assert.deepEqual(nextStation(bore, "middle"), { cylinder: "1", plane: "middle" });
  assert.deepEqual(nextStation({ axes: ["tooth"], entries: [{ at: { tooth: "22" } }] }, ""), { tooth: "23" });
  assert.deepEqual(nextStation({ axes: ["tooth"], entries: [] }, ""), { tooth: "1" });
});

test("a reading that gets stations keeps its one blank entry for the first of them", () => {
  assert.equal(unplaced({ axes: ["tooth"], entries: [{ taken: [] }] }), 0);
  assert.equal(unplaced({ axes: ["tooth"], entries: [{ at: { tooth: "1" }, taken: [] }, { taken: ["0.31"] }] }), -1);
  assert.equal(unplaced(bore), -1);
});

test("a station with a wrong label is put right with all that was taken at it", () => {
  const at = (text) => ({ tooth: text });
  const entries = [{ at: at("71"), taken: ["1"] }, { at: at("8"), taken: ["2"] }, { at: at("71"), taken: ["9"], struck: {} }, { at: at("71"), stage: "as left", taken: [] }];
  assert.deepEqual(relabelled(entries, 0, "tooth", " 7 ").map((one) => one.at.tooth), ["7", "8", "7", "7"]);
  assert.deepEqual(relabelled([{ taken: ["0.31"] }], 0, "tooth", "1"), [{ taken: ["0.31"], at: at("1") }]);
});

test("only a station at which nothing was taken is taken out", () => {
  const entries = [{ at: { tooth: "1" }, taken: ["1"] }, { at: { tooth: "2" }, taken: [] }, { at: { tooth: "1" }, stage: "as left", taken: [] }];
  assert.equal(isUntouched(entries, 2), false);
  assert.equal(isUntouched(entries, 1), true);
  assert.deepEqual(withoutStation(entries, 1).length, 2);
});

test("repeats are typed one by one, blanks at the end go, digits stay as typed", () => {
  assert.deepEqual(withTaken(["0.10"], 1, " 0.110 "), ["0.10", "0.110"]);
  assert.deepEqual(withTaken(["0.10", "0.20"], 1, ""), ["0.10"]);
  assert.deepEqual(withTaken(["0.10", "0.20"], 0, ""), ["", "0.20"]);
});

test("striking one repeat through leaves the others standing", () => {
  const struck = { reason: "stylus slipped", by: "", time: "" };
  const [rest, alone] = withStruck([{ taken: ["1", "2", "3"] }], 0, 1, struck);
  assert.deepEqual(rest.taken, ["1", "3"]);
  assert.deepEqual([alone.taken, alone.struck], [["2"], struck]);
});

test("an element of a series is found by its labels, not by its place", () => {
  const elements = [{ labels: { tooth: "4" }, value: "b" }, { labels: { tooth: "1" }, value: "a" }];
  assert.equal(elementAt(elements, { at: { tooth: "1" } }).value, "a");
  assert.equal(elementAt(elements, { at: { tooth: "9" } }), undefined);
});

test("a calibration that was due before the day of the record is said", () => {
  assert.equal(calibration({ calibrated: "2025-11-10", due: "2026-11-10" }, "2026-12-01").overdue, true);
  assert.equal(calibration({ calibrated: "2025-11-10", due: "2026-11-10" }, "2026-05-12").overdue, false);
});

test("a reading is begun by its first value, at whatever stage", () => {
  assert.equal(isBegun({}), false);
  assert.equal(isBegun({ entries: [{ taken: [] }, { stage: "as left", taken: [] }] }), false);
  assert.equal(isBegun({ entries: [{ taken: [] }, { stage: "as left", taken: ["0.1"] }] }), true);
});
