/** Widths of a row of a grid, in characters with one blank each: on a sheet, and on a phone. */
export const SHEET_ROW = 48;
export const PHONE_ROW = 28;

/**
 * What was taken once: an entry of the record.
 * @typedef {{entry: number, taken: string[], struck: any}} Taking
 *
 * @typedef {object} GridRow
 * @property {string[]} labels of the axes that run down
 * @property {Taking[][]} stations what was taken at each column; empty where the grid has a gap
 *
 * @typedef {object} Grid
 * @property {string[]} down axes whose labels head the rows
 * @property {string} across axis whose labels head the columns
 * @property {{columns: string[], rows: GridRow[]}[]} bands one above the other; several where one row would be too wide
 */

/** @param {any} reading */
export function hasStations(reading) {
  return (reading.axes ?? []).length > 0;
}

/**
 * The stages a reading was taken at, in the order they came.
 * @param {any} reading
 * @param {string} now the record's present stage, which holds where nothing else is said
 * @returns {string[]} at least one
 */
export function stages(reading, now) {
  const found = distinct((reading.entries ?? []).map((entry) => stageOf(reading, entry, now)));
  return found.length > 0 ? found : [reading.stage ?? now];
}

/** @param {any} reading @param {any} entry @param {string} now */
export function stageOf(reading, entry, now) {
  return entry.stage ?? reading.stage ?? now;
}

/**
 * What was taken at one stage, in the order written.
 * @param {any} reading
 * @param {string} stage
 * @param {string} now the record's present stage
 * @returns {Taking[]}
 */
export function takings(reading, stage, now) {
  return (reading.entries ?? [])
    .map((entry, index) => ({ entry: index, taken: takenTexts(entry), struck: entry.struck ?? null, stage: stageOf(reading, entry, now) }))
    .filter((taking) => taking.stage === stage);
}

/**
 * Lays a reading with stations out as a grid: the last axis runs across, the others down. Labels keep the
 * order in which the entries were written.
 * @param {any} reading as the record holds it
 * @param {string} stage
 * @param {string} now the record's present stage
 * @param {number} [room] characters a row may take
 * @returns {Grid}
 */
export function grid(reading, stage, now, room = SHEET_ROW) {
  const axes = reading.axes ?? [];
  const across = axes[axes.length - 1] ?? "";
  const down = axes.slice(0, -1);
  const found = takings(reading, stage, now).map((taking) => ({ ...taking, at: reading.entries[taking.entry].at ?? {} }));
  const columns = distinct(found.map((taking) => label(taking.at, across)));
  const byRow = new Map();
  for (const taking of found) {
    const labels = down.map((axis) => label(taking.at, axis));
    const key = JSON.stringify(labels);
    if (!byRow.has(key)) byRow.set(key, { labels, at: new Map() });
    const at = byRow.get(key).at;
    const column = label(taking.at, across);
    at.set(column, [...(at.get(column) ?? []), taking]);
  }
  const longest = Math.max(longestText(reading), ...columns.map((one) => one.length));
  const bands = chunks(columns, Math.max(2, Math.floor(room / (longest + 1)))).map((some) => ({
    columns: some,
    rows: [...byRow.values()].map((row) => ({
      labels: row.labels,
      stations: some.map((column) => row.at.get(column) ?? []),
    })),
  }));
  return { down, across, bands };
}

/**
 * The labels of a new station: those of the last one with the last axis counted on, where it counts.
 * @param {any} reading
 * @param {string} typed label of the last axis as the user gave it, "" to count on
 * @returns {Record<string, string>}
 */
export function nextStation(reading, typed) {
  const axes = reading.axes ?? [];
  const last = (reading.entries ?? []).at(-1)?.at ?? {};
  const across = axes[axes.length - 1];
  const before = last[across] ?? "0";
  const at = Object.fromEntries(axes.map((axis) => [axis, last[axis] ?? "1"]));
  at[across] = typed !== "" ? typed : /^\d+$/.test(before) ? String(Number(before) + 1) : "";
  return at;
}

/**
 * The entry that a new station takes: one that says no place yet and at which nothing was taken, else none.
 * @param {any} reading
 * @returns {number} -1 where there is none
 */
export function unplaced(reading) {
  const axis = (reading.axes ?? []).at(-1) ?? "";
  return (reading.entries ?? []).findIndex((entry) => !entry.struck && takenTexts(entry).length === 0 && label(entry.at, axis) === "");
}

/**
 * The entries after the station of one of them was given another label: what was taken at that station at
 * every stage, struck through or not, goes with it.
 * @param {readonly any[]} entries
 * @param {number} entry
 * @param {string} axis
 * @param {string} text
 */
export function relabelled(entries, entry, axis, text) {
  const place = placeOf(entries[entry]);
  return entries.map((one) => (placeOf(one) === place ? { ...one, at: { ...one.at, [axis]: text.trim() } } : one));
}

/** Whether nothing was taken at the station of an entry, at any stage. @param {readonly any[]} entries @param {number} entry */
export function isUntouched(entries, entry) {
  return entries.every((one) => placeOf(one) !== placeOf(entries[entry]) || takenTexts(one).length === 0);
}

/** The entries without those of a station. @param {readonly any[]} entries @param {number} entry */
export function withoutStation(entries, entry) {
  return entries.filter((one) => placeOf(one) !== placeOf(entries[entry]));
}

/** @param {any} entry */
function placeOf(entry) {
  return JSON.stringify(Object.entries(entry.at ?? {}).sort());
}

/**
 * The element of a series that belongs to an entry.
 * @param {readonly any[]} elements of the figure
 * @param {any} entry
 */
export function elementAt(elements, entry) {
  const at = entry.at ?? {};
  return elements.find((element) => Object.entries(element.labels ?? {}).every(([axis, text]) => String(at[axis]) === String(text)));
}

/** Characters of the longest text that was typed, a unit with it where one was; at least 4. @param {any} reading */
export function longestText(reading) {
  return Math.max(4, ...(reading.entries ?? []).flatMap((entry) => takenTexts(entry).map((text) => text.length)));
}

/** Whether anything of it was taken, at any stage. @param {any} reading */
export function isBegun(reading) {
  return (reading.entries ?? []).some((entry) => takenTexts(entry).length > 0);
}

/** What was typed at an entry, repeats included: one field each. @param {any} entry */
export function takenTexts(entry) {
  const taken = entry?.taken ?? [];
  return Array.isArray(taken) ? taken.map(String) : [String(taken)];
}

/**
 * The repeats after one of them was typed; blank ones at the end go.
 * @param {readonly string[]} taken
 * @param {number} index
 * @param {string} text
 */
export function withTaken(taken, index, text) {
  const next = [...taken];
  while (next.length <= index) next.push("");
  next[index] = text.trim();
  while (next.length > 0 && next[next.length - 1] === "") next.pop();
  return next;
}

/**
 * The entries after one repeat of an entry was struck through with its reason: it becomes an entry of its
 * own, in its place; the repeats beside it stand.
 * @param {readonly any[]} entries
 * @param {number} entry
 * @param {number} repeat
 * @param {{reason: string, by: string, time: string}} struck
 */
export function withStruck(entries, entry, repeat, struck) {
  const whole = entries[entry];
  const taken = takenTexts(whole);
  const rest = { ...whole, taken: taken.filter((_, index) => index !== repeat) };
  const alone = { ...whole, taken: [taken[repeat]], struck };
  return entries.flatMap((one, index) => (index === entry ? [rest, alone] : [one]));
}

/** Calibration of an instrument on a day: what is to be said, and whether it was overdue. @param {any} instrument @param {string} day ISO date */
export function calibration(instrument, day) {
  if (!instrument) return { text: "", overdue: false };
  const overdue = Boolean(instrument.due) && Boolean(day) && instrument.due < day;
  if (overdue) return { text: `calibration was due ${instrument.due}`, overdue };
  return { text: instrument.calibrated ? `calibrated ${instrument.calibrated}` : "", overdue };
}

/** @param {any} at @param {string} axis */
function label(at, axis) {
  return String(at?.[axis] ?? "");
}

/** @param {readonly string[]} texts */
function distinct(texts) {
  return [...new Set(texts)];
}

/** Even rows, none longer than the widest. @param {string[]} columns @param {number} widest */
function chunks(columns, widest) {
  if (columns.length <= widest) return [columns];
  const bands = Math.ceil(columns.length / widest);
  const width = Math.ceil(columns.length / bands);
  return Array.from({ length: bands }, (_, band) => columns.slice(band * width, (band + 1) * width));
}
