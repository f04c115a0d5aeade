/** @import { Problem, Token } from "./shapes.js" */

/**
 * Where each line of a text starts.
 * @param {string} text
 * @returns {number[]}
 */
export function lineStarts(text) {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}

/**
 * The server's stretches (line and columns from 1) as offsets into the text they were made for. What does
 * not lie inside the text is left out.
 * @param {string} text
 * @param {readonly Token[]} tokens
 * @returns {{from: number, to: number, kind: string}[]} in order
 */
export function stretches(text, tokens) {
  const starts = lineStarts(text);
  return tokens
    .map(([line, from, to, kind]) => ({ ...offsets(text, starts, line, from, to), kind }))
    .filter((one) => one.from < one.to)
    .sort((a, b) => a.from - b.from || a.to - b.to);
}

/**
 * @param {string} text
 * @param {readonly number[]} starts of its lines
 * @param {number} line
 * @param {number} from
 * @param {number} to
 */
export function offsets(text, starts, line, from, to) {
  const start = starts[line - 1];
  if (start === undefined) return { from: 0, to: 0 };
  const end = line < starts.length ? starts[line] - 1 : text.length;
  return { from: Math.min(start + from - 1, end), to: Math.min(start + to - 1, end) };
}

/**
 * The line of a text, cut at a problem: before, what is wrong, behind.
 * @param {string} line
 * @param {Problem} problem
 * @returns {[string, string, string]}
 */
export function cutAt(line, problem) {
  const from = Math.max(0, Math.min(problem.from - 1, line.length));
  const to = Math.max(from, Math.min(problem.to - 1, line.length));
  return [line.slice(0, from), line.slice(from, to), line.slice(to)];
}

/**
 * A text cut where it differs from another: what both begin with, its own, what both end with.
 * @param {string} text
 * @param {string} other
 * @returns {[string, string, string]}
 */
export function cutAgainst(text, other) {
  const most = Math.min(text.length, other.length);
  let from = 0;
  while (from < most && text[from] === other[from]) from++;
  let behind = 0;
  while (behind < most - from && text[text.length - 1 - behind] === other[other.length - 1 - behind]) behind++;
  return [text.slice(0, from), text.slice(from, text.length - behind), text.slice(text.length - behind)];
}

/** Letters that cannot be seen, or that show those behind them in another order than they stand in. */
const HIDDEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufe00-\ufe0f\ufeff\ufff9-\ufffc]/u;

/**
 * A text in pieces, each as it stands or, where it would not be seen, by the number of its letter.
 * @param {string} text
 * @returns {{text?: string, code?: string}[]}
 */
export function letters(text) {
  /** @type {{text?: string, code?: string}[]} */
  const pieces = [];
  for (const piece of text.split(new RegExp(`(${HIDDEN.source})`, "u"))) {
    if (piece === "") continue;
    const number = piece.codePointAt(0) ?? 0;
    pieces.push(HIDDEN.test(piece) ? { code: `U+${number.toString(16).toUpperCase().padStart(4, "0")}` } : { text: piece });
  }
  return pieces;
}
