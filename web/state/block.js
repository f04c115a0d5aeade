/**
 * Values as they lie on the clipboard: a row a line, tabs between the values; one with a tab, a quote or a
 * new line in it stands in quotes, in which a quote is written twice.
 * @param {string} text
 * @returns {string[][]} rows of equal length
 */
export function blockOf(text) {
  const rows = [];
  let row = [];
  let value = "";
  let quoted = false;
  const end = () => {
    row.push(value);
    value = "";
  };
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (quoted) {
      if (c !== '"') value += c;
      else if (text[i + 1] === '"') value += text[++i];
      else quoted = false;
    } else if (c === '"' && value === "" && closes(text, i)) quoted = true;
    else if (c === "\t") end();
    else if (c === "\n" || c === "\r") {
      if (c === "\r" && text[i + 1] === "\n") i++;
      end();
      rows.push(row);
      row = [];
    } else value += c;
  }
  if (value !== "" || row.length > 0) {
    end();
    rows.push(row);
  }
  const width = Math.max(0, ...rows.map((one) => one.length));
  return rows.map((one) => [...one, ...Array(width - one.length).fill("")].map((each) => each.trim()));
}

/** Whether a quote that opens a value closes it too, so that 5/8" alone stays what it is. @param {string} text @param {number} at */
function closes(text, at) {
  const end = text.slice(at + 1).search(/"(?:[\t\r\n]|$)/);
  return end >= 0;
}

/** Values for the clipboard. @param {readonly (readonly string[])[]} rows */
export function textOf(rows) {
  return rows.map((row) => row.map((value) => (/[\t\n\r"]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value)).join("\t")).join("\n");
}

/**
 * The edit of rows that a pasted block comes to: rows it lies on are replaced, rows beyond the last are new.
 * Columns that are worked out take nothing.
 * @param {readonly (readonly string[])[]} block
 * @param {{row: number, column: number}} at where its first value goes, from 0
 * @param {readonly (readonly string[])[]} under the stored rows it lies on, as far as there are any
 * @param {readonly {formula?: string}[]} columns
 * @returns {{value: {from: number, remove: number, insert: string[][]}, beyond: number, workedOut: string[]}}
 *   how many values stand beyond the last column; heads of columns that took nothing
 */
export function pasted(block, at, under, columns) {
  const stored = storedIndex(columns);
  const width = stored.filter((index) => index >= 0).length;
  const wide = block[0]?.length ?? 0;
  const workedOut = new Set();
  const insert = block.map((values, down) => {
    const row = Array.from({ length: width }, (_, index) => under[down]?.[index] ?? "");
    values.forEach((value, across) => {
      const column = at.column + across;
      if (column >= columns.length) return;
      if (stored[column] < 0) workedOut.add(/** @type {any} */ (columns[column]).head);
      else row[stored[column]] = value;
    });
    return row;
  });
  return { value: { from: at.row, remove: Math.min(under.length, block.length), insert }, beyond: Math.max(0, at.column + wide - columns.length), workedOut: [...workedOut] };
}

/** Where the values of each column stand in a row of the record; -1 for one that is worked out. @param {readonly {formula?: string}[]} columns */
export function storedIndex(columns) {
  let next = 0;
  return columns.map((column) => (column.formula ? -1 : next++));
}
