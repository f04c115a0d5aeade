/** @import { Sheet } from "./shapes.js" */
import { isNotWithin } from "./figures.js";

/**
 * Five hints from a reading to a verdict to the report: where each stands, what it says, what ends it.
 * @type {readonly {at: (cell: any) => boolean, last?: boolean, text: string, lead: string, ends: string, done?: string}[]}
 */
export const STEPS = [
  { at: (cell) => cell.kind === "note", text: "The blue figures in this text were not typed: each is taken from a line further down, and that one from readings. Begin with the readings.", lead: "to the readings", ends: "" },
  { at: (cell) => cell.kind === "readings", text: "Write another figure over one of these and press Enter. What rests on it changes at once, and nothing else; Ctrl Z takes it back.", lead: "to a working", ends: "reading", done: "Taken: the figures that rest on it follow already, and say so where they stand." },
  { at: (cell) => cell.kind === "working" && (cell.lines ?? []).some((line) => line.kind === "value"), text: "Each line is one value, its formula as written by hand and with its numbers. Press a result: it shows where it comes from, back to the instrument and its calibration.", lead: "to a verdict", ends: "trace", done: "Its origin stands beside it; Esc puts that away." },
  { at: (cell) => isNotWithin(cell.worst), text: "The strip shows the value between its limits, the bar its uncertainty: within, not proven, or outside. Whose limit it is and in which condition stands with it. L leads to the next that is not within.", lead: "to the end", ends: "" },
  { at: () => true, last: true, text: "Here the record ends: what is done, and who signs for it. The report prints it all on A4, with every figure as it stands.", lead: "", ends: "" },
];

/**
 * The clause that a step stands at.
 * @param {Sheet} sheet
 * @param {number} step counted from 0
 * @returns {string} "" where the sheet has none
 */
export function clauseOf(sheet, step) {
  const ids = sheet.order.map((place) => place.id).filter((id) => sheet.cells.get(id)?.kind !== "section");
  const wanted = STEPS[step];
  if (!wanted) return "";
  const found = ids.filter((id) => wanted.at(sheet.cells.get(id)));
  return (wanted.last ? found[found.length - 1] : found[0]) ?? "";
}

/**
 * The next step that this sheet has a clause for.
 * @param {Sheet} sheet
 * @param {number} step
 * @returns {number} the number of steps where there is none
 */
export function next(sheet, step) {
  let to = step + 1;
  while (to < STEPS.length && clauseOf(sheet, to) === "") to++;
  return to;
}
