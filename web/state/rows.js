/** Lines fetched at once. */
export const PAGE = 200;

/** Pages kept beside those in view; the rest is forgotten, so that a million rows scrolled through stay few. */
const KEPT = 30;

/**
 * A line of a table as the server gives it: a row, or the head of a group.
 * @typedef {object} Line
 * @property {number} [row] number of the row in the record, from 1
 * @property {string[]} cells a text a column, "" where the value is missing
 * @property {string} [verdict] worst of the row
 * @property {Record<string, string>} [verdicts] by the head of the column
 * @property {Record<string, string>} [wrong] what is wrong with a value, by the head of the column
 * @property {string} [group] label of a group, where this is its head
 * @property {number} [count] rows of the group
 */

/**
 * The lines of one table, asked for in pages as they come into view. After an edit the lines known stay
 * until those asked for anew have come, so that nothing flickers.
 */
export class Rows {
  /** @type {Map<number, Line[]>} by number of the page */
  #pages = new Map();
  /** @type {Map<number, Line[]>} of the state before */
  #before = new Map();
  #asked = new Set();
  #generation = 0;
  /** lines there are: rows that pass, and heads of groups */
  total = 0;
  /** rows that pass what is kept */
  passing = 0;
  /** revision of the clause that they were given for @type {number | undefined} */
  revision;
  /** why the lines cannot be had, as the server says it */
  problem = null;

  /**
   * @param {(from: number, count: number) => Promise<any>} fetch
   * @param {() => void} arrived some lines are here that were not
   */
  constructor(fetch, arrived) {
    this.fetch = fetch;
    this.arrived = arrived;
  }

  /** All is to be asked for anew: rows, order or what is kept are other ones. */
  renew() {
    this.#generation += 1;
    this.#before = new Map([...this.#before, ...this.#pages]);
    this.#pages = new Map();
    this.#asked = new Set();
  }

  /** @param {number} index from 0 @returns {Line | undefined} undefined while it is not here */
  line(index) {
    const page = Math.floor(index / PAGE);
    return (this.#pages.get(page) ?? this.#before.get(page))?.[index % PAGE];
  }

  /** Whether the line is as it was before the last change. @param {number} index */
  isOld(index) {
    return !this.#pages.has(Math.floor(index / PAGE));
  }

  /**
   * Asks for lines that are not here and not under way.
   * @param {number} first
   * @param {number} last after the last
   */
  want(first, last) {
    const from = Math.floor(first / PAGE);
    const to = Math.max(from, Math.floor((last - 1) / PAGE));
    for (let page = from; page <= to; page++) {
      if (!this.#pages.has(page) && !this.#asked.has(page)) this.#ask(page);
    }
    this.#forget(from, to);
  }

  /** @param {number} page */
  async #ask(page) {
    const generation = this.#generation;
    this.#asked.add(page);
    const answer = await this.fetch(page * PAGE, PAGE);
    if (generation !== this.#generation) return;
    this.#asked.delete(page);
    this.problem = answer?.problem ?? null;
    if (!answer || answer.problem) {
      // asked for again when it is wanted again
      this.arrived();
      return;
    }
    this.revision = answer.revision;
    this.total = answer.total;
    this.passing = answer.passing ?? answer.total;
    this.#pages.set(page, answer.lines ?? []);
    this.#before.delete(page);
    this.arrived();
  }

  /** @param {number} from @param {number} to */
  #forget(from, to) {
    const far = (page) => page < from - KEPT / 2 || page > to + KEPT / 2;
    for (const pages of [this.#pages, this.#before]) {
      if (pages.size <= KEPT) continue;
      for (const page of pages.keys()) {
        if (far(page)) pages.delete(page);
      }
    }
  }
}
