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

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.elements = [];
    clause.content.addEventListener("taken", (event) => this.#next(event.target));
  }

  get #readings() {
    return this.clause.cell.source.readings ?? [];
  }

  update() {
    const shape = this.#shapeOf();
    if (shape !== this.#shape) {
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
    if (!(input instanceof HTMLInputElement) || !input.dataset.key || !this.clause.content.contains(input)) return null;
    return { key: input.dataset.key, text: input.value, isOpen: this.#field(input.dataset.key)?.isOpen, from: input.selectionStart, to: input.selectionEnd };
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
    const field = open && this.#field(open.key);
    if (!field) return;
    if (open.isOpen) field.resume(open.text);
    field.input.focus({ preventScroll: true });
    field.input.setSelectionRange(open.from, open.to);
  }

  /** Enter leads to the next value to be taken. @param {Element} input */
  #next(input) {
    const fields = [...this.clause.content.querySelectorAll("input[data-key]:not([readonly])")];
    const next = fields[fields.indexOf(input) + 1];
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
