import { besides, keyedBy } from "../state/table.js";
import { append, listWords } from "./entry.js";

/** @type {[string, string][]} */
const KINDS = [["number", "number"], ["text", "text"], ["date", "date"], ["truth", "yes or no"]];

/** A column before anything is entered in it. @param {readonly any[]} columns */
function blankColumn(columns) {
  return { head: `column_${columns.length + 1}`, kind: "number", unit: "", note: "" };
}

/** Fields of a table: its name, its columns, its limits. @param {import("./clause.js").Clause} clause */
export function tableGroups(clause) {
  const { source } = clause.cell;
  const columns = source.columns ?? [];
  const limits = source.limits ?? [];
  return [
    { legend: "Table", fields: [{ at: "/name", caption: "Name in the language, as in wear", look: "long" }, ...keyField(clause, columns)] },
    ...columns.map((column, index) => {
      const at = `/columns/${index}`;
      return {
        legend: column.head || `Column ${index + 1}`,
        fields: [
          { at: `${at}/head`, caption: "Head" },
          { at: `${at}/kind`, caption: "Kind", choices: KINDS, otherwise: "number" },
          ...((column.kind || "number") === "number" ? [{ at: `${at}/unit`, caption: "Unit" }, { at: `${at}/u`, caption: "u of one value" }, ...instrumentField(clause, column, at)] : []),
          { at: `${at}/formula`, caption: "Worked out from, such as wear.lash / wear.hours", look: "long" },
          { at: `${at}/note`, caption: "What it is", look: "long" },
        ],
        words: columnWords(clause, index),
      };
    }),
    ...limits.map((_, index) => ({ legend: `Limit ${index + 1}`, fields: [{ at: `/limits/${index}`, caption: 'A line such as  limit wear.lash: at most 15 thou "works drawing, sheet 3"', look: "whole" }], words: listWords(clause, "/limits", index, "limit") })),
  ];
}

/** By what the rows are told: one column, or none. @param {import("./clause.js").Clause} clause @param {readonly any[]} columns */
function keyField({ id, page }, columns) {
  const typed = columns.filter((column) => column.head && !column.formula?.trim());
  if (typed.length === 0) return [];
  return [
    {
      at: "/columns/key",
      caption: "Rows are named by",
      choices: [["", "their numbers"], ...typed.map(({ head }) => [head, head])],
      shows: (source) => (source.columns ?? []).find((column) => column.key)?.head ?? "",
      keeps: (head) => page.desk.put(id, "/columns", keyedBy(page.desk.cell(id).source.columns ?? [], head)),
    },
  ];
}

/** With what the numbers of a column were taken, where the record has instruments. @param {import("./clause.js").Clause} clause @param {any} column @param {string} at */
function instrumentField({ page }, column, at) {
  const registered = page.desk.sheet.record.instruments ?? [];
  if (column.formula?.trim() || (registered.length === 0 && !column.instrument)) return [];
  return [{ at: `${at}/instrument`, caption: "Taken with", choices: [["", "not said"], ...registered.map((one) => [one.id, [one.id, one.name].filter(Boolean).join(", ")])] }];
}

/** @param {import("./clause.js").Clause} clause @returns {[string, () => void][]} */
export function tableMore(clause) {
  const { source } = clause.cell;
  return [
    ["another column", () => append(clause, "/columns", blankColumn(clause.cell.source.columns ?? []))],
    ...besides(clause.id, clause.page.desk.sheet.cells.values()).map(({ name, key, column }) => /** @type {[string, () => void]} */ ([`a column of ${name}, by ${key}`, () => append(clause, "/columns", column)])),
    ["a limit on a column", () => append(clause, "/limits", `limit ${[source.name || "table", source.columns?.[0]?.head ?? "head"].join(".")}: at most `)],
  ];
}

/**
 * The word by which a column is taken out. Its values go with it.
 * @param {import("./clause.js").Clause} clause
 * @param {number} index
 * @returns {[string, () => void][]}
 */
function columnWords(clause, index) {
  const { page } = clause;
  const away = () => {
    page.desk.put(clause.id, `/columns/${index}`, null);
    page.says.offer("The column is deleted with its values.", [["undo", () => page.undo()]]);
  };
  return [["delete this column", away]];
}
