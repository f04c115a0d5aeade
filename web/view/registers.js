import { commonInstrument } from "../state/instruments.js";
import { calibration } from "../state/readings.js";
import { el, write } from "./dom.js";
import { Field } from "./field.js";

const INSTRUMENT = [
  ["id", "Mark"],
  ["name", "Instrument"],
  ["offset", "Zero ±"],
  ["gain", "Scale ±"],
  ["resolution", "Division"],
  ["scatter", "Scatter"],
  ["uncertainty", "or all in one ±"],
  ["calibrated", "Calibrated"],
  ["due", "Due"],
  ["certificate", "Certificate"],
];
const PART = [
  ["number", "Part number"],
  ["name", "Part"],
  ["serial", "Serial"],
  ["position", "Position"],
];

const STATED = new Set(["offset", "resolution", "scatter", "uncertainty"]);

/** The registers of the record: each instrument once, with its calibration, and each part once. */
export class Registers {
  #tables;
  #common = [];
  #kind = el("select", { class: "field", "aria-label": "Kind of the further instrument" }, el("option", { value: "" }, "with its own certificate"));

  /** @param {Element} element @param {import("../state/desk.js").Desk} desk */
  constructor(element, desk) {
    const instruments = new Register(desk, "instruments", "Instruments", INSTRUMENT, "mark of a further instrument", (text) => ({ id: text, ...commonInstrument(this.#common.find((one) => one.kind === this.#kind.value)) }));
    instruments.choose(this.#kind);
    this.#kind.addEventListener("focus", () => this.#fill(), { once: true });
    instruments.note = "Zero and scale are shared by all readings taken with the instrument; division and scatter are each reading's own. Figures with their unit, such as 0.002 mm or 0.5 %.";
    const parts = new Register(desk, "parts", "Parts", PART, "name of a further part", (text, rows) => ({ id: freeId(rows), name: text }));
    this.#tables = [instruments, parts];
    element.append(...this.#tables.map((one) => one.element));
  }

  /** Common instruments are fetched when somebody looks for them. */
  async #fill() {
    const answer = await fetch("/api/instruments").then((one) => (one.ok ? one.json() : null)).catch(() => null);
    this.#common = answer?.instruments ?? [];
    this.#kind.append(...this.#common.map((one) => el("option", { value: one.kind }, `no certificate: ${one.kind}`)));
  }

  draw() {
    for (const table of this.#tables) table.draw();
  }
}

/** One register as a table of fields. */
class Register {
  #shape = "";
  #fields = [];
  #body = el("tbody");
  #overdue = [];
  #unitless = [];
  /** The row to be filled in next, once it has come. */
  #wanted = "";

  constructor(desk, block, title, columns, further, fresh) {
    this.desk = desk;
    this.block = block;
    this.columns = columns;
    this.fresh = fresh;
    this.more = el("input", { class: "field", type: "text", "aria-label": further, placeholder: further });
    this.more.addEventListener("keydown", (event) => event.key === "Enter" && this.#add());
    this.hint = el("p", { class: "srcnote" });
    const head = columns.map(([, caption]) => el("th", { scope: "col" }, caption));
    const table = el("table", { class: `t register-of-${block}` }, el("caption", { class: "unseen" }, `Register of ${block}`), el("thead", {}, el("tr", {}, ...head, el("th", { scope: "col" }, el("span", { class: "unseen" }, "Actions")))), this.#body);
    this.element = el(
      "section",
      { class: "clause book", "aria-label": title },
      el("h2", { class: "ttl" }, title),
      el("div", { class: "content" }, el("div", { class: "wide" }, table), el("p", { class: "station-words" }, this.more, el("button", { type: "button", class: "word", onclick: () => this.#add() }, "add")), this.hint),
    );
  }

  /** Puts a choice before the word that adds. @param {HTMLElement} input */
  choose(input) {
    this.more.after(input);
  }

  set note(text) {
    write(this.hint, text);
  }

  get #rows() {
    return this.desk.sheet.record[this.block] ?? [];
  }

  draw() {
    const shape = JSON.stringify(this.#rows.map((row) => row.id));
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#build();
    }
    for (const show of this.#fields) show();
    for (const show of this.#unitless) show();
    const day = this.desk.sheet.record.title_block?.date ?? "";
    this.#overdue.forEach((mark, index) => write(mark, calibration(this.#rows[index], day).overdue ? "overdue on the day of the record" : ""));
  }

  /** Draws the rows anew; a field that is in use goes on with what is typed in it. */
  #build() {
    const input = document.activeElement;
    const open = input instanceof HTMLTextAreaElement && this.#body.contains(input) ? { key: input.dataset.key, text: input.value, from: input.selectionStart, to: input.selectionEnd } : null;
    this.#fields = [];
    this.#overdue = [];
    this.#unitless = [];
    this.#body.replaceChildren(...this.#rows.map((row, index) => this.#row(row, index)));
    for (const show of this.#fields) show();
    const again = open && this.#field(open.key);
    if (again) {
      again.value = open.text;
      again.focus({ preventScroll: true });
      again.setSelectionRange(open.from, open.to);
    } else if (document.activeElement === this.more) this.#field(this.#wanted)?.focus();
    this.#wanted = "";
  }

  /** @param {string | undefined} key @returns {HTMLTextAreaElement | null} */
  #field(key) {
    return key ? this.#body.querySelector(`[data-key="${CSS.escape(key)}"]`) : null;
  }

  #row(row, index) {
    const cells = this.columns.map(([name, caption], position) => {
      const label = `${caption} of ${row.name || row.id}`;
      const field = new Field({ label, key: `${index}/${name}`, placeholder: " ", keep: (text) => this.desk.set(`/${this.block}/${index}/${name}`, text.trim()) }, "textarea");
      this.#fields.push(() => field.show(String(this.#rows[index]?.[name] ?? "")));
      return el(position === 0 ? "th" : "td", { scope: position === 0 ? "row" : null, class: `r-${name}` }, field.input, name === "due" && this.#mark(), STATED.has(name) && this.#withoutUnit(index, name));
    });
    const take = el("button", { type: "button", class: "word", "aria-label": `delete ${row.name || row.id}`, onclick: () => this.desk.set(`/${this.block}/${index}`, null) }, "delete");
    return el("tr", {}, ...cells, el("td", { class: "r-act" }, take));
  }

  /** Says in which unit a figure is read that was given without one. */
  #withoutUnit(index, name) {
    const said = el("span", { class: "with" });
    this.#unitless.push(() => write(said, /^[\d.,]+$/.test(this.#rows[index]?.[name] ?? "") ? "no unit: read in that of each reading" : ""));
    return said;
  }

  #mark() {
    const mark = el("span", { class: "overdue" });
    this.#overdue.push(mark);
    return mark;
  }

  #add() {
    const text = this.more.value.trim();
    if (text === "") return this.more.focus();
    // of an instrument the mark alone says nothing yet; of parts the names may be written one after the other
    if (this.block === "instruments") this.#wanted = `${this.#rows.length}/name`;
    this.desk.set(`/${this.block}/${this.#rows.length}`, this.fresh(text, this.#rows));
    this.more.value = "";
  }
}

/** @param {{id: string}[]} rows */
function freeId(rows) {
  let n = rows.length + 1;
  while (rows.some((row) => row.id === `p${n}`)) n += 1;
  return `p${n}`;
}
