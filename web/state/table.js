import { calibration } from "./readings.js";

/**
 * A table clause in words: what is in force, what is missing, where the rows come from.
 * @typedef {{head: string, kind?: string, unit?: string, formula?: string, key?: boolean, note?: string, u?: string}} TableColumn as the record has it
 */

/** Whether values of a column are typed, not worked out. @param {TableColumn} column @param {any} from where the rows come from */
export function isTyped(column, from) {
  return !column.formula?.trim() && !from?.table;
}

/**
 * The columns as the register shows them.
 * @param {any} source the clause as the record has it
 * @param {any} table what the server says of it: missing values by column
 */
export function columnsOf(source, table) {
  const sort = source.view?.sort ?? [];
  return (source.columns ?? []).map((column, index) => {
    const missing = table?.columns?.[index]?.missing ?? 0;
    const formula = column.formula?.trim() || (source.from?.table ? `groups of ${source.from.table}` : "");
    return { head: column.head ?? "", kind: column.kind || "number", unit: table?.columns?.[index]?.unit ?? column.unit ?? "", formula, missing, sorted: sorted(sort, column.head) };
  });
}

/** How a column is sorted: "rising", "falling" or "". @param {readonly string[]} sort @param {string} head */
export function sorted(sort, head) {
  if (sort.includes(head)) return "rising";
  return sort.includes(`${head} down`) ? "falling" : "";
}

/** The order after one more wish: it comes first, and what was there of that column goes. @param {readonly string[]} sort @param {string} head @param {"rising"|"falling"|""} way */
export function sortedBy(sort, head, way) {
  const rest = sort.filter((one) => one !== head && one !== `${head} down`);
  return way === "" ? rest : [way === "rising" ? head : `${head} down`, ...rest].slice(0, 10);
}

/** The columns with one of them naming the rows; none for "". @param {readonly TableColumn[]} columns @param {string} head @returns {TableColumn[]} */
export function keyedBy(columns, head) {
  return columns.map(({ key, ...rest }) => (rest.head === head && head !== "" ? { ...rest, key: true } : rest));
}

/**
 * The tables whose rows are named as those of this one are, each with a column that lays its values to these rows.
 * @param {string} id of the clause
 * @param {Iterable<any>} cells of the sheet
 * @returns {{name: string, key: string, column: TableColumn}[]}
 */
export function besides(id, cells) {
  const tables = [...cells].filter((cell) => cell.kind === "table");
  const keyOf = (cell) => cell.source?.columns?.find((column) => column.key)?.head;
  const here = tables.find((cell) => cell.id === id);
  const key = here && keyOf(here);
  if (!key) return [];
  const taken = new Set(here.source.columns.map((column) => column.head));
  return tables.flatMap((cell) => {
    const of = cell.id !== id && cell.source?.name && keyOf(cell) === key ? cell.source.columns.find((column) => column.head !== key && !taken.has(column.head)) : null;
    return of ? [{ name: cell.source.name, key, column: { head: of.head, kind: of.kind || "number", unit: of.unit ?? "", formula: `${cell.source.name}.${of.head}`, note: "" } }] : [];
  });
}

/**
 * With what the numbers of columns were taken; one that was overdue on the day is told as such.
 * @param {any} source
 * @param {readonly any[]} instruments of the register
 * @param {string} day of the record
 * @returns {{text: string, overdue: boolean}[]}
 */
export function takenWith(source, instruments, day) {
  const columns = (source.columns ?? []).filter((column) => column.instrument && !column.formula?.trim());
  return [...new Set(columns.map((column) => column.instrument))].map((id) => {
    const { text, overdue } = calibration(instruments.find((one) => one.id === id), day);
    const heads = columns.filter((column) => column.instrument === id).map((column) => column.head);
    return { text: [`${heads.join(", ")} taken with ${id}`, text].filter(Boolean).join(", "), overdue };
  });
}

/** How many rows and columns there are, what is missing, and whence they come. @param {any} source @param {any} table */
export function captionOf(source, table) {
  const rows = table?.rows ?? 0;
  const columns = (source.columns ?? []).length;
  const gaps = (source.columns ?? []).flatMap((column, index) => (table?.columns?.[index]?.missing ? [`${grouped(table.columns[index].missing)} in ${column.head}`] : []));
  const missing = table?.missing ? `${grouped(table.missing)} ${table.missing === 1 ? "value" : "values"} missing (${gaps.slice(0, 4).join(", ")}${gaps.length > 4 ? ", ..." : ""})` : "none missing";
  return [`${grouped(rows)} ${rows === 1 ? "row" : "rows"}, ${columns} ${columns === 1 ? "column" : "columns"}; ${missing}.`, fromOf(source.from)].filter(Boolean).join(" ");
}

/** Where the rows come from, in words. @param {any} from */
export function fromOf(from) {
  if (from?.table) return `Groups of ${from.table} by ${(from.group ?? []).join(", ")}.`;
  if (from?.shelf) return `From ${from.shelf.length} ${from.shelf.length === 1 ? "record" : "records"} of the shelf, read ${(from.refreshed ?? "").slice(0, 16).replace("T", " ")}.`;
  if (from?.file) return `From ${from.file}${from.sheet ? `, sheet ${from.sheet}` : ""}${from.date ? `, read ${from.date}` : ""}.`;
  return "";
}

/** What is in force of order and choice, in words; "" for the record's own. @param {any} view @param {number} passing @param {number} rows */
export function inForce(view, passing, rows) {
  const sort = (view?.sort ?? []).map((one) => (one.endsWith(" down") ? `${one.slice(0, -5)} falling` : `${one} rising`));
  const parts = [
    sort.length > 0 ? `sorted by ${sort.join(", then ")}` : "",
    view?.filter ? `${grouped(passing)} of ${grouped(rows)} rows, those where ${view.filter}` : "",
    (view?.group ?? []).length > 0 ? `grouped by ${view.group.join(", ")}` : "",
  ].filter(Boolean);
  return parts.join("; ");
}

/** A whole number with its thousands parted by a narrow blank. @param {number} count */
export function grouped(count) {
  return String(count).replaceAll(/\B(?=(\d{3})+$)/g, "\u202f");
}

/** The tests that a value of a kind can be put to, and how each is written. */
const TESTS = {
  number: [["at least", ">="], ["at most", "<="], ["more than", ">"], ["less than", "<"], ["is", "="], ["is not", "!="]],
  date: [["from", ">="], ["up to", "<="], ["is", "="]],
  text: [["is", "="], ["is not", "!="]],
  truth: [["is yes", ""], ["is no", "not"]],
};

/** @param {string} kind @returns {string[]} */
export function testsOf(kind) {
  return (TESTS[kind] ?? TESTS.number).map(([word]) => word);
}

/**
 * A condition of the working language from a column, a test and a value.
 * @param {TableColumn} column
 * @param {string} test one of testsOf
 * @param {string} value as typed; a bare number is in the unit of the column
 */
export function conditionOf(column, test, value) {
  const kind = column.kind || "number";
  const sign = (TESTS[kind] ?? TESTS.number).find(([word]) => word === test)?.[1] ?? "=";
  if (kind === "truth") return sign === "not" ? `not ${column.head}` : column.head;
  if (kind === "number") return `${column.head} ${sign} ${/^[+-]?[\d.]+(?:[eE][+-]?\d+)?$/.test(value) && column.unit ? `${value} ${column.unit}` : value}`;
  return `${column.head} ${sign} "${value.replaceAll('"', "'")}"`;
}

/** Two conditions that both have to hold. @param {string} before @param {string} more */
export function both(before, more) {
  if (!before.trim()) return more;
  const needs = / or /.test(before) && !/^\(.*\)$/.test(before);
  return `${needs ? `(${before})` : before} and ${more}`;
}
