/** Lines of the working language that are written by pressing, made of what was typed and nothing else. */

/**
 * A limit on a value. A bare number takes the unit that the value is shown in.
 * @param {string} name
 * @param {{low: string, high: string, unit: string, authority: string, condition: string}} what
 * @returns {string} "" where neither end was given
 */
export function limitLine(name, { low, high, unit, authority, condition }) {
  const ends = [low.trim(), high.trim()].map((text) => (text !== "" && unit !== "" && /^[+\u2212-]?[\d.,]+$/.test(text) ? `${text} ${unit}` : text));
  if (ends[0] === "" && ends[1] === "") return "";
  const range = ends[0] === "" ? `at most ${ends[1]}` : ends[1] === "" ? `at least ${ends[0]}` : `${ends[0]} .. ${ends[1]}`;
  const quoted = (text) => `"${text.trim().replaceAll('"', "'")}"`;
  return [`limit ${name}: ${range}`, authority.trim() && quoted(authority), condition.trim() && `(condition: ${quoted(condition)})`].filter(Boolean).join(" ");
}

/**
 * A working with one line more at its end.
 * @param {string} text
 * @param {string} line
 * @returns {{text: string, line: number}} number of the new line, from 1
 */
export function withLine(text, line) {
  const whole = text.trimEnd() === "" ? line : `${text.trimEnd()}\n${line}`;
  return { text: whole, line: whole.split("\n").length };
}

/**
 * A working whose line of a value declares another unit.
 * @param {string} text
 * @param {number} line from 1
 * @param {string} unit "" takes the declaration away
 * @returns {string | null} null where the line defines no value
 */
export function withUnit(text, line, unit) {
  const lines = text.split("\n");
  const found = lines[line - 1]?.match(/^(\s*[\p{L}_][\p{L}\p{N}_]*)\s*(?:\[[^\]]*\])?(\s*=.*)$/u);
  if (!found) return null;
  lines[line - 1] = `${found[1]}${unit.trim() === "" ? "" : ` [${unit.trim()}]`}${found[2].startsWith("=") ? ` ${found[2]}` : found[2]}`;
  return lines.join("\n");
}

/**
 * The working that a line about a value is written into: the one the value stands in, else the next below
 * it in the same section.
 * @param {import("./shapes.js").Sheet} sheet
 * @param {readonly string[]} cells clauses of the values, the likeliest first
 * @returns {string} "" where a new working is called for
 */
export function workingFor(sheet, cells) {
  const isWorking = (id) => sheet.cells.get(id)?.kind === "working";
  const own = cells.find(isWorking);
  if (own) return own;
  const at = sheet.order.findIndex((place) => place.id === cells[0]);
  const below = sheet.order.slice(at + 1).find((place) => place.parent === sheet.order[at]?.parent && isWorking(place.id));
  return below?.id ?? "";
}
