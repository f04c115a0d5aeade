/** @import { CellView, Change, Place, Sheet } from "./shapes.js" */

/**
 * The sheet as the server's first message tells it.
 * @param {any} message of type "sheet"
 * @returns {Sheet}
 */
export function opened(message) {
  const cells = new Map();
  const order = [];
  unfold(message.cells, "", 0, cells, order);
  return {
    revision: message.revision,
    record: message.record,
    cells,
    order,
    figures: new Map(Object.entries(message.figures ?? {})),
    summary: message.summary ?? {},
    canUndo: message.canUndo === true,
    canRedo: message.canRedo === true,
  };
}

/**
 * The sheet after a message of type "changed", and what of it is to be drawn again. A clause in "heads"
 * keeps its lines; its state, worst verdict and problems are other ones.
 * @param {Sheet} sheet left untouched
 * @param {any} message
 * @returns {{sheet: Sheet, change: Change}}
 */
export function changed(sheet, message) {
  const cells = new Map(sheet.cells);
  const figures = new Map(sheet.figures);
  const touched = new Set();
  for (const cell of message.cells ?? []) {
    keep(cell, cells, touched);
  }
  for (const id of message.removed ?? []) {
    cells.delete(id);
  }
  for (const [id, head] of Object.entries(message.heads ?? {})) {
    const cell = cells.get(id);
    if (!cell) continue;
    cells.set(id, { ...cell, ...head });
    touched.add(id);
  }
  const names = new Set();
  for (const [name, figure] of Object.entries(message.figures ?? {})) {
    names.add(name);
    if (figure === null) figures.delete(name);
    else figures.set(name, figure);
  }
  const order = message.order ? places(message.order) : sheet.order;
  if (message.order) number(message.order, cells, touched);
  const next = {
    revision: message.revision,
    record: { ...sheet.record, ...(message.record ?? {}) },
    cells,
    order: order.filter((place) => cells.has(place.id)),
    figures,
    summary: message.summary ?? sheet.summary,
    canUndo: message.canUndo ?? sheet.canUndo,
    canRedo: message.canRedo ?? sheet.canRedo,
  };
  const change = {
    cells: touched,
    figures: names,
    order: Boolean(message.order) || (message.removed ?? []).length > 0,
    record: Boolean(message.record),
  };
  return { sheet: next, change };
}

/**
 * Everything of a sheet, where it is drawn for the first time or after a lost connection.
 * @param {Sheet} sheet
 * @returns {Change}
 */
export function whole(sheet) {
  return {
    cells: new Set(sheet.cells.keys()),
    figures: new Set(sheet.figures.keys()),
    order: true,
    record: true,
  };
}

/** The numbers that clauses have in a new order. @param {any[]} tree @param {Map<string, CellView>} cells @param {Set<string>} touched */
function number(tree, cells, touched) {
  for (const node of tree) {
    const cell = cells.get(node.id);
    if (cell && node.number !== undefined && cell.number !== node.number) {
      cells.set(node.id, { ...cell, number: node.number });
      touched.add(node.id);
    }
    number(node.cells ?? [], cells, touched);
  }
}

/** @param {CellView} cell @param {Map<string, CellView>} cells @param {Set<string>} touched */
function keep(cell, cells, touched) {
  cells.set(cell.id, cell);
  touched.add(cell.id);
  for (const inner of cell.cells ?? []) keep(inner, cells, touched);
}

/** @param {CellView[]} list @param {string} parent @param {number} depth @param {Map<string, CellView>} cells @param {Place[]} order */
function unfold(list, parent, depth, cells, order) {
  for (const cell of list ?? []) {
    cells.set(cell.id, cell);
    order.push({ id: cell.id, parent, depth });
    unfold(cell.cells ?? [], cell.id, depth + 1, cells, order);
  }
}

/**
 * A tree of ids, laid out from top to bottom.
 * @param {any[]} tree of {id, number, cells}
 * @returns {Place[]}
 */
export function places(tree, parent = "", depth = 0) {
  return tree.flatMap((node) => [{ id: node.id, parent, depth }, ...places(node.cells ?? [], node.id, depth + 1)]);
}
