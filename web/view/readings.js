import { hasStations, longestText } from "../state/readings.js";
import { arrange, el, write } from "./dom.js";
import { Particulars } from "./particulars.js";
import { ReadingRow } from "./reading-row.js";
import { StationGrid } from "./station-grid.js";

/** Readings: those of one place each as a list, those with stations as grids, in the order written. */
export class ReadingsBody {
  /** @type {(ReadingRow | StationGrid)[]} */
  #parts = [];
  #shape = "";
  #captions = [];
  #last = "";
  #wanted = "";
  #goingRound = -1;
  #late = false;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.elements = [];
    clause.content.addEventListener("taken", (event) => this.#next(event.target));
    clause.content.addEventListener("focusin", (event) => (this.#last = /** @type {HTMLElement} */ (event.target).dataset.key ?? this.#last));
    // a reason that is being written is not taken away under the hand
    clause.content.addEventListener("focusout", () => this.#late && queueMicrotask(() => this.update()));
  }

  get #readings() {
    return this.clause.cell.source.readings ?? [];
  }

  update() {
    const shape = this.#shapeOf();
    this.#late = shape !== this.#shape && Boolean(this.clause.content.querySelector(".strike input:focus"));
    if (shape !== this.#shape && !this.#late) {
      this.#shape = shape;
      this.#build();
    }
    for (const caption of this.#captions) write(caption, `Readings of ${this.clause.cell.number} ${this.clause.cell.title}`);
    for (const part of this.#parts) part.refresh();
    this.#mark();
    this.editing?.update();
    this.clause.page.reindex(this.clause);
  }

  /** All of the readings that decides which fields there are and what stands beside them. */
  #shapeOf() {
    const { record } = this.clause.page.desk.sheet;
    const plain = this.#readings.map((reading) => ({
      ...reading,
      longest: hasStations(reading) ? longestText(reading) : 0,
      entries: (reading.entries ?? []).map((entry) => ({ ...entry, taken: (entry.taken ?? []).length })),
    }));
    return JSON.stringify([plain, record.instruments, record.parts, record.title_block?.date, this.clause.page.stage, this.clause.page.isNarrow]);
  }

  #build() {
    const open = this.#openField();
    this.#parts = this.#readings.map((reading, index) => (hasStations(reading) ? new StationGrid(this.clause, index) : new ReadingRow(this.clause, index)));
    this.#captions = [];
    const nodes = [];
    let rows = null;
    for (const part of this.#parts) {
      if (part instanceof StationGrid) {
        rows = null;
        nodes.push(...part.elements);
        continue;
      }
      if (!rows) {
        rows = el("tbody");
        nodes.push(this.#list(rows));
      }
      rows.append(part.element);
    }
    if (this.#parts.length === 0) nodes.push(el("p", { class: "quiet" }, "No reading yet. Press Enter to name one."));
    const keep = [...this.clause.content.children].filter((child) => child.matches(".particulars, .both"));
    arrange(this.clause.content, [...keep, ...nodes]);
    this.#resume(open);
  }

  /** Marks what cannot be read at its field, and says why beneath. */
  #mark() {
    const problems = this.clause.cell.problems ?? [];
    for (const part of this.#parts) {
      const mine = problems.filter((one) => (one.at ?? "").startsWith(`/readings/${part.taken.index}/`) || one.at === `/readings/${part.taken.index}`);
      part.taken.refuse(mine);
    }
  }

  #list(rows) {
    const caption = el("caption", { class: "unseen" });
    this.#captions.push(caption);
    const head = (text, look) => el("th", { scope: "col", class: look }, text);
    return el(
      "table",
      { class: "t rd" },
      caption,
      el("colgroup", {}, el("col", { class: "c-rname" }), el("col"), el("col", { class: "c-taken" }), el("col", { class: "c-res" }), el("col", { class: "c-lim" })),
      el("thead", {}, el("tr", {}, head("Name"), head("Reading"), head("Taken"), el("th", { scope: "col", class: "result" }, el("span", { class: "unseen" }, "Result")), el("th", { scope: "col", class: "lim" }, el("span", { class: "unseen" }, "Limits")))),
      rows,
    );
  }

  /** The field that is being typed in, so that a row drawn anew does not take it away. */
  #openField() {
    const input = document.activeElement;
    if (!input || !this.clause.content.contains(input) || input.closest(".particulars")) return null;
    const like = input.getAttribute("aria-label") || input.textContent;
    if (!(input instanceof HTMLInputElement)) return { key: this.#last, like };
    const typed = { text: input.value, from: input.selectionStart, to: input.selectionEnd };
    if (input.dataset.further) return { further: input.dataset.further, ...typed };
    if (!input.dataset.key) return { key: this.#last, like, ...typed };
    return { key: input.dataset.key, isOpen: this.#field(input.dataset.key)?.isOpen, ...typed };
  }

  /** Whether a station that was just named has still to come. */
  get isLeading() {
    return this.#wanted !== "";
  }

  /** Says which value is wanted next: that of a station which comes with the next change. @param {number} reading @param {number} entry */
  leadTo(reading, entry) {
    this.#wanted = `${reading}/${entry}/0`;
    this.#goingRound = reading;
  }

  #further(reading) {
    return /** @type {HTMLInputElement | null} */ (this.clause.content.querySelector(`[data-further="${reading}"]`));
  }

  #field(key) {
    for (const part of this.#parts) {
      const field = part.taken.fields.get(key);
      if (field) return field;
    }
    return undefined;
  }

  /** @param {any} open */
  #resume(open) {
    const wanted = open && this.#field(this.#wanted);
    if (wanted) {
      this.#wanted = "";
      wanted.input.focus({ preventScroll: true });
      // what was typed behind the station's name before its field was there
      if (open.further && open.text) wanted.resume(open.text);
      return;
    }
    if (!open) return;
    let input = open.further ? this.#further(open.further) : this.#fieldOrAnother(open.key)?.input;
    if (!input) return this.clause.element.focus({ preventScroll: true });
    // the words of a station stand while it is in use: its value first, then what was in use beside it
    input.focus({ preventScroll: true });
    if (open.like) input = alike(input.closest(".stations, tbody > tr"), open.like) ?? input;
    input.focus({ preventScroll: true });
    if (open.text === undefined || input.tagName !== "INPUT") return;
    if (open.isOpen) this.#field(open.key)?.resume(open.text);
    else if (!open.key || open.like) input.value = open.text;
    input.setSelectionRange(open.from, open.to);
  }

  /** The field of a key; that of one more repeat, which the record does not have yet, is made again. @param {string} key */
  #fieldOrAnother(key) {
    const [reading, entry] = key.split("/").map(Number);
    if (!this.#field(key)) this.#parts[reading]?.again(entry);
    return this.#field(key);
  }

  /** Enter leads to the next value to be taken. @param {Element} input */
  #next(input) {
    const fields = [...this.clause.content.querySelectorAll("input[data-key]:not([readonly])")];
    const next = fields[fields.indexOf(input) + 1];
    const [reading] = (/** @type {HTMLElement} */ (input).dataset.key ?? "").split("/").map(Number);
    if (reading !== this.#goingRound) this.#goingRound = -1;
    else if (/** @type {any} */ (next)?.dataset.key.split("/")[0] !== String(reading)) return this.#further(reading)?.focus();
    next?.focus();
    next?.select();
  }

  names() {
    return this.#parts.map((part) => part.name).filter(Boolean);
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    const some = new Set(names);
    for (const part of this.#parts) {
      if (some.has(part.name)) part.figure();
    }
  }

  open() {
    this.editing = new Particulars(this.clause);
    this.clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

/** What is called the same. @param {Element | null} within @param {string} name @returns {any} */
function alike(within, name) {
  return [...(within?.querySelectorAll("button, input") ?? [])].find((one) => (one.getAttribute("aria-label") || one.textContent) === name);
}
