/**
 * @typedef {object} Row one value of both sides, as the server compares it
 * @property {string} name
 * @property {string} label
 * @property {string} clause
 * @property {boolean} reading
 * @property {string} standing
 * @property {boolean} judged_otherwise
 */

/** What of a comparison is shown; the first is what one looks for. */
export const PARTS = [
  { key: "differs", word: "what differs", holds: (row) => row.standing !== "none" || row.judged_otherwise },
  { key: "clear", word: "clear differences", holds: (row) => row.standing === "clear" },
  { key: "verdicts", word: "other verdicts", holds: (row) => row.judged_otherwise },
  { key: "all", word: "all values", holds: () => true },
];

/**
 * The rows of a table of which something is shown, each with the values of it that are.
 * @param {any} table
 * @param {string} key of what is shown, one of PARTS
 */
export function rowsShown(table, key) {
  const holds = {
    clear: (cell) => cell.standing === "clear",
    verdicts: (cell) => cell.was !== cell.verdict,
  }[key];
  if (!holds) return table.first;
  return table.first
    .filter((row) => row.change === "changed")
    .map((row) => ({ ...row, cells: row.cells.filter(holds) }))
    .filter((row) => row.cells.length > 0);
}

/** What is said of a difference. @param {string} standing */
export function standingWords(standing) {
  const words = {
    clear: "clear",
    "not clear": "not clear: smaller than its uncertainty",
    none: "",
    "only left": "only on the left",
    "only right": "only on the right",
    "not comparable": "not comparable",
  };
  return words[standing] ?? standing;
}

/**
 * How a side is called in the head of its column: by its engine, else by its number, else by its title.
 * @param {any} side
 * @param {any} other told apart from this one by revision and date where both are of one engine
 */
export function sideName(side, other) {
  const name = (one) => one.engine_serial || one.record_number || one.title || "untitled";
  if (name(side) !== name(other)) return name(side);
  if ((side.stage ?? "") !== (other.stage ?? "")) return [name(side), side.stage].filter(Boolean).join(", ");
  return [name(side), side.revision && `revision ${side.revision}`, side.date].filter(Boolean).join(", ");
}

/** Time of an earlier state, which its name begins with. @param {string} state such as 20261125-153000-0a1b2c3d4e5f */
export function stateWhen(state) {
  const [, y, m, d, h, min] = state.match(/^(\d{4})(\d{2})(\d{2})-(\d{2})(\d{2})/) ?? [];
  return y ? `state of ${y}-${m}-${d} ${h}:${min} UTC` : state;
}

/** The head of a clause's rows is written once. @param {readonly Row[]} rows */
export function byClause(rows) {
  const groups = [];
  for (const row of rows) {
    const last = groups.at(-1);
    if (last?.clause === row.clause) last.rows.push(row);
    else groups.push({ clause: row.clause, rows: [row] });
  }
  return groups;
}
