/**
 * @typedef {object} Listed a record as the shelf lists it
 * @property {string} id
 * @property {string} [title]
 * @property {string} [record_number]
 * @property {string} [engine_type]
 * @property {string} [engine_serial]
 * @property {string} [state]
 * @property {string} [changed] ISO time
 * @property {{within: number, not_proven: number, outside: number, waiting?: number, in_error?: number}} [verdicts] how its limits read
 * @property {{taken: number, total: number}} [readings]
 * @property {string} [subtitle] second line of the title; of a pattern, what it is for
 * @property {string} [part] under investigation
 * @property {string} [revision]
 * @property {string} [problem] why it cannot be read
 */

export const SHOWS = [
  { key: "all", word: "every record", holds: () => true },
  { key: "open", word: "what is not within", holds: (record) => (record.verdicts?.outside ?? 0) + (record.verdicts?.not_proven ?? 0) > 0 },
  { key: "taking", word: "what has readings to take", holds: (record) => (record.readings?.taken ?? 0) < (record.readings?.total ?? 0) },
  { key: "draft", word: "what is not approved", holds: (record) => !record.problem && record.state !== "approved" },
  { key: "error", word: "what is in error", holds: (record) => Boolean(record.problem) || (record.verdicts?.in_error ?? 0) > 0 },
  { key: "waiting", word: "what has limits waiting", holds: (record) => (record.verdicts?.waiting ?? 0) > 0 },
];

/**
 * The limits of a record that are not judged, in words; none where all are.
 * @param {{waiting?: number, in_error?: number}} [verdicts]
 * @returns {{words: string, error: boolean}[]}
 */
export function unjudged(verdicts) {
  const limits = (count) => (count === 1 ? "1 limit" : `${count} limits`);
  const { waiting = 0, in_error = 0 } = verdicts ?? {};
  return [
    { words: `${limits(in_error)} in error`, error: true, count: in_error },
    { words: `${limits(waiting)} waiting`, error: false, count: waiting },
  ].filter(({ count }) => count > 0).map(({ words, error }) => ({ words, error }));
}

/** A record that others are begun from; it is no record of an engine. @param {Listed} record */
export function isPattern(record) {
  return record.state === "pattern";
}

/** The patterns by their titles, the one for anything else behind them. @param {readonly Listed[]} records */
export function patternsInOrder(records) {
  const last = (one) => one.id.endsWith("bare-sheet");
  return records.filter(isPattern).sort((a, b) => Number(last(a)) - Number(last(b)) || (a.title || a.id).localeCompare(b.title || b.id, "en"));
}

/**
 * The engines of the records and how many each has, most first.
 * @param {readonly Listed[]} records
 * @returns {{engine: string, count: number}[]}
 */
export function engines(records) {
  const found = new Map();
  for (const record of records) {
    const engine = engineOf(record);
    if (engine !== "") found.set(engine, (found.get(engine) ?? 0) + 1);
  }
  return [...found].map(([engine, count]) => ({ engine, count })).sort((a, b) => b.count - a.count || a.engine.localeCompare(b.engine));
}

/** @param {Listed} record */
export function engineOf(record) {
  return record.engine_serial || record.engine_type || "";
}

/** What a pattern is for, in a line: what was written beneath its title, else what it asks for. @param {Listed} record */
export function aboutPattern(record) {
  if (record.subtitle) return record.subtitle;
  const total = record.readings?.total ?? 0;
  return total > 0 ? `${total} ${total === 1 ? "reading" : "readings"} to take` : "the same clauses";
}

/**
 * The records in the order they are listed: the demonstration first, then the newest change.
 * @param {readonly Listed[]} records
 * @param {string} demonstration
 */
export function listed(records, demonstration) {
  const first = (record) => (record.id === demonstration ? 0 : 1);
  return [...records].sort((a, b) => first(a) - first(b) || (b.changed ?? "").localeCompare(a.changed ?? "") || a.id.localeCompare(b.id));
}

/**
 * Whether a record holds every word that was typed into the finder.
 * @param {Listed} record
 * @param {string} typed
 */
export function answers(record, typed) {
  const held = [record.id, record.title, record.record_number, record.subtitle, record.engine_type, record.engine_serial, record.part, record.state, record.problem].join(" ").toLowerCase();
  return typed.toLowerCase().split(/[\s,]+/).every((word) => held.includes(word));
}

/**
 * When a record was changed, as one says it: the time today, else the day.
 * @param {string} iso
 * @param {Date} now
 */
export function changedWhen(iso, now) {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return "";
  const two = (number) => String(number).padStart(2, "0");
  const day = (date) => `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return day(at) === day(now) ? `today ${two(at.getHours())}:${two(at.getMinutes())}` : day(at);
}
