import { labelsOf } from "../state/figures.js";
import { el, fragment } from "./dom.js";
import { nameMark } from "./quantity.js";

/**
 * Lines that were worked out by the server, to be read and not to be changed.
 * @param {any} example lines, figures, readings
 * @param {string} caption
 */
export function worked(example, caption) {
  const heads = ["Name", "Working", "Result"].map((text) => el("th", { scope: "col" }, el("span", { class: "unseen" }, text)));
  return el(
    "table",
    { class: "lines worked" },
    el("caption", { class: "unseen" }, caption),
    el("colgroup", {}, el("col", { class: "c-name" }), el("col"), el("col", { class: "c-res" })),
    el("thead", {}, el("tr", {}, ...heads)),
    el("tbody", {}, ...stations(example.readings ?? []), ...example.lines.flatMap((line) => row(line, example.figures[line.figure]))),
  );
}

/** The stations of a reading, one a row. @param {readonly any[]} readings */
function stations(readings) {
  return readings.map((one) => el("tr", {}, el("th", { scope: "row", class: "name" }, nameMark(one.name)), el("td", { class: "work" }, el("div", { class: "given" }, `reading: ${labelsOf(one.at)}`)), el("td", { class: "result" }, value(one.taken, one.unit))));
}

/** @param {any} line @param {any} figure */
function row(line, figure) {
  const name = el("th", { scope: "row", class: "name" }, line.nameMath ? fragment(line.nameMath) : line.name && nameMark(line.name), line.unit && el("span", { class: "un" }, line.unit));
  const formula = el("div", { class: "formula", tabindex: "0", role: "group", "aria-label": "Formula" }, fragment(line.formula ?? ""));
  const numbers = figure?.numbers && el("div", { class: "numbers", tabindex: "0", role: "group", "aria-label": "With its numbers" }, fragment(figure.numbers));
  const elements = figure?.elements ?? [];
  const single = elements.length === 0 && figure?.value;
  const first = el("tr", {}, name, el("td", { class: "work" }, formula, numbers), el("td", { class: "result" }, single && value(figure.value, figure.unit, figure.u)));
  return [first, ...elements.map(element)];
}

/** A field of a record, or a station. @param {any} one */
function element(one) {
  const what = one.field ? one.field.replaceAll("_", " ") : labelsOf(one.labels);
  return el("tr", { class: "part-of" }, el("td", {}), el("th", { scope: "row", class: "work" }, what), el("td", { class: "result" }, value(one.value, one.unit, one.u)));
}

/** @param {string} text @param {string} [unit] @param {string} [u] */
function value(text, unit = "", u = "") {
  const words = /^[^\d−.]/.test(text ?? "");
  return el("span", { class: words ? "q words" : "q" }, el("span", { class: "v" }, text ?? ""), el("span", { class: unit.length > 5 ? "un long" : "un" }, unit), u && el("span", { class: "u" }, `± ${u}`));
}
