/**
 * How the reference is read.
 * @typedef {{units: "metric" | "imperial", terms: "british" | "american"}} Reader
 */

/** The query of an address for a reader. @param {Reader} reader @param {string} [find] what is looked for */
export function query(reader, find = "") {
  const asked = new URLSearchParams({ units: reader.units, terms: reader.terms });
  if (find !== "") asked.set("find", find);
  return `?${asked}`;
}

/**
 * What a path of the reference shows.
 * @param {string} path
 * @returns {{kind: "all" | "calculation" | "table", name: string}}
 */
export function place(path) {
  const [, , first = "", second = ""] = path.split("/").map(decodeURIComponent);
  if (first === "tables" && second !== "") return { kind: "table", name: second };
  return first === "" ? { kind: "all", name: "" } : { kind: "calculation", name: first };
}

/** The path of a calculation or a table. @param {string} name @param {boolean} [table] */
export function path(name, table = false) {
  return `/reference/${table ? "tables/" : ""}${encodeURIComponent(name)}`;
}

/**
 * Calculations under their subjects, in the order given.
 * @param {readonly any[]} calculations
 * @returns {{title: string, calculations: any[]}[]}
 */
export function bySubject(calculations) {
  const groups = new Map();
  for (const one of calculations) {
    if (!groups.has(one.title)) groups.set(one.title, []);
    groups.get(one.title).push(one);
  }
  return [...groups].map(([title, some]) => ({ title, calculations: some }));
}

/** Every clause of a sheet into which a line can be put. @param {readonly any[]} cells @returns {any[]} */
export function workings(cells) {
  return cells.flatMap((cell) => (cell.kind === "working" ? [cell] : workings(cell.cells ?? [])));
}

/** A text with a line written behind it. @param {string} text @param {string} line */
export function withLine(text, line) {
  return text.trim() === "" ? line : `${text.trimEnd()}\n${line}`;
}
