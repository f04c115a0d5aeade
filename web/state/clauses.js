/** @import { Place, Sheet } from "./shapes.js" */

/**
 * Where a clause goes when it is moved one place up or down: past its neighbour, or over the edge of its
 * section into the one before or behind.
 * @param {readonly Place[]} order
 * @param {string} id
 * @param {-1|1} by
 * @param {ReadonlyMap<string, {kind: string}>} cells
 * @returns {{parent: string, after: string} | null} null where there is nothing to pass
 */
export function moved(order, id, by, cells) {
  const place = order.find((one) => one.id === id);
  if (!place) return null;
  const siblings = idsIn(order, place.parent);
  const at = siblings.indexOf(id);
  if (by < 0 && at > 0) {
    return { parent: place.parent, after: at > 1 ? siblings[at - 2] : "" };
  }
  if (by > 0 && at < siblings.length - 1) {
    return { parent: place.parent, after: siblings[at + 1] };
  }
  if (place.parent === "") return null;
  const sections = idsIn(order, "").filter((one) => cells.get(one)?.kind === "section");
  const section = sections[sections.indexOf(place.parent) + by];
  if (!section) return null;
  const inside = idsIn(order, section);
  return { parent: section, after: by < 0 ? (inside[inside.length - 1] ?? "") : "" };
}

/**
 * Where a new clause goes that is written after another one. After a section head it becomes the first
 * in the section; a section goes behind the whole section it was asked for in.
 * @param {readonly Place[]} order
 * @param {string} after id of the clause, "" at the top of an empty sheet
 * @param {string} kind
 * @param {ReadonlyMap<string, {kind: string}>} cells
 * @returns {{parent: string, after: string}}
 */
export function placeAfter(order, after, kind, cells) {
  const place = order.find((one) => one.id === after);
  if (!place) {
    const top = idsIn(order, "");
    return { parent: "", after: top[top.length - 1] ?? "" };
  }
  const isSection = cells.get(after)?.kind === "section";
  if (kind === "section") {
    return place.parent === "" ? { parent: "", after } : { parent: "", after: topOf(order, place) };
  }
  return isSection ? { parent: after, after: "" } : { parent: place.parent, after };
}

/**
 * A clause as it is first written.
 * @param {string} kind note, working, readings, section ...
 * @param {string} id
 */
export function blank(kind, id) {
  const cell = { id, kind, title: "" };
  if (kind === "section") return { ...cell, cells: [] };
  if (kind === "readings") return { ...cell, readings: [{ name: "", what: "", unit: "", entries: [{ taken: [] }] }] };
  if (kind === "chart") return { ...cell, chart: "against", of: "", input: "", from: "", to: "" };
  if (kind === "fits") return { ...cell, rows: [] };
  if (kind === "findings") return { ...cell, findings: [] };
  if (kind === "causes") return { ...cell, effect: "", unit: "mm", observed: "", needed: "", causes: [], evidence: [] };
  if (kind === "approval") return { ...cell, roles: ["Prepared", "Checked", "Approved"].map((role) => ({ role, name: "", date: "", remark: "" })) };
  if (kind === "table") return { ...cell, name: "", columns: [], rows: [] };
  if (kind === "java") return { ...cell, gives: "", text: "" };
  if (kind === "photo") return { ...cell, photo: "", caption: "" };
  return { ...cell, text: "" };
}

/**
 * A name for a table that no other has, by which the language knows its columns from the first.
 * @param {Iterable<{kind: string, source?: any}>} cells
 */
export function tableName(cells) {
  return freeName("table", cells);
}

/**
 * A name that no table has yet.
 * @param {string} stem
 * @param {Iterable<{kind: string, source?: any}>} cells
 */
export function freeName(stem, cells) {
  const taken = new Set([...cells].map((cell) => cell.source?.name));
  for (let n = 1; ; n++) {
    const name = n === 1 ? stem : `${stem}_${n}`;
    if (!taken.has(name)) return name;
  }
}

/**
 * The clause before or behind, from top to bottom.
 * @param {readonly Place[]} order
 * @param {string} id "" for none yet
 * @param {-1|1} by
 */
export function neighbour(order, id, by) {
  const at = order.findIndex((place) => place.id === id);
  if (at < 0) return (by > 0 ? order[0] : order[order.length - 1])?.id;
  return order[at + by]?.id;
}

/**
 * The next clause from here, round the end, that fulfils a wish.
 * @param {Sheet} sheet
 * @param {string} from
 * @param {(id: string) => boolean} wanted
 */
export function nextWhere(sheet, from, wanted) {
  const ids = sheet.order.map((place) => place.id);
  const start = ids.indexOf(from) + 1;
  return [...ids.slice(start), ...ids.slice(0, start)].find(wanted);
}

/** @param {readonly Place[]} order @param {string} parent */
function idsIn(order, parent) {
  return order.filter((place) => place.parent === parent).map((place) => place.id);
}

/** @param {readonly Place[]} order @param {Place} place */
function topOf(order, place) {
  let here = place;
  while (here.parent !== "") {
    const parent = order.find((one) => one.id === here.parent);
    if (!parent) break;
    here = parent;
  }
  return here.id;
}
