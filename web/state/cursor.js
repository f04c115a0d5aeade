/**
 * Where a key leads in a table of so many lines and columns.
 * @param {{line: number, column: number}} at
 * @param {string} key name of the key
 * @param {{lines: number, columns: number, page: number, mod?: boolean}} of lines and columns there are, lines a
 *   page of the view takes, whether Ctrl is held
 * @returns {{line: number, column: number} | null} null where the key leads nowhere
 */
export function led(at, key, { lines, columns, page, mod = false }) {
  const to = {
    ArrowUp: { line: mod ? 0 : at.line - 1, column: at.column },
    ArrowDown: { line: mod ? lines - 1 : at.line + 1, column: at.column },
    ArrowLeft: { line: at.line, column: mod ? 0 : at.column - 1 },
    ArrowRight: { line: at.line, column: mod ? columns - 1 : at.column + 1 },
    Home: { line: mod ? 0 : at.line, column: 0 },
    End: { line: mod ? lines - 1 : at.line, column: columns - 1 },
    PageUp: { line: at.line - page, column: at.column },
    PageDown: { line: at.line + page, column: at.column },
  }[key];
  return to ? within(to, lines, columns) : null;
}

/**
 * The place after a value was entered: Enter goes down, Tab right and on to the next line, with Shift back. Where
 * a line was entered with Tab, Enter leads to the column in which that began: the next line is entered likewise.
 * @param {{line: number, column: number}} at
 * @param {"Enter" | "Tab"} key
 * @param {boolean} back
 * @param {{lines: number, columns: number, began?: number}} of `began`: column in which the line was begun with Tab
 */
export function entered(at, key, back, { lines, columns, began }) {
  const by = back ? -1 : 1;
  if (key === "Enter") return within({ line: at.line + by, column: (back ? undefined : began) ?? at.column }, lines, columns);
  const place = at.line * columns + at.column + by;
  if (place < 0 || place >= lines * columns) return at;
  return { line: Math.floor(place / columns), column: place % columns };
}

/** @param {{line: number, column: number}} place @param {number} lines @param {number} columns */
function within({ line, column }, lines, columns) {
  return { line: Math.max(0, Math.min(line, lines - 1)), column: Math.max(0, Math.min(column, columns - 1)) };
}
