/** No element of a browser is reliably higher than this; beyond it the scroll is scaled [px]. */
const HIGHEST = 8_000_000;

/**
 * Which lines stand in view, and what space stands for those that do not.
 * @param {{top: number, height: number, line: number, total: number, around?: number}} what how far it is
 *   scrolled, height of the view and of a line [px], lines in all, lines drawn beyond either edge
 * @returns {{first: number, last: number, above: number, below: number}} last is after the last
 */
export function inView({ top, height, line, total, around = 12 }) {
  const whole = total * line;
  const scale = whole > HIGHEST ? (HIGHEST - height) / (whole - height) : 1;
  const at = Math.max(0, Math.min(top, (whole - height) * scale));
  const seen = Math.floor(at / scale / line);
  const first = Math.max(0, seen - around);
  const last = Math.min(total, seen + Math.ceil(height / line) + around);
  const high = Math.min(whole, HIGHEST);
  // where all is drawn to scale this is first * line; scaled, the line seen stays under the view's edge
  const above = scale === 1 ? first * line : Math.min(Math.max(0, Math.round(at - (at / scale - first * line))), Math.max(0, high - (last - first) * line));
  return { first, last, above, below: Math.max(0, high - above - (last - first) * line) };
}

/**
 * How far to scroll so that a line is in view; the same as now where it is.
 * @param {number} index
 * @param {{top: number, height: number, line: number, total: number}} what as of inView
 * @returns {number} [px]
 */
export function topFor(index, { top, height, line, total }) {
  const whole = total * line;
  const scale = whole > HIGHEST ? (HIGHEST - height) / (whole - height) : 1;
  const at = top / scale;
  if (index * line < at) return Math.floor(index * line * scale);
  if ((index + 1) * line > at + height) return Math.ceil(((index + 1) * line - height) * scale);
  return top;
}
