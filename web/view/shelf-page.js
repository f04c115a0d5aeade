import { aboutPattern, answers, changedWhen, engineOf, engines, isPattern, listed, patternsInOrder, SHOWS, unjudged } from "../state/shelf.js";
import { arrange, el, write } from "./dom.js";
import { Keyboard } from "./keyboard.js";
import { onwards } from "./onwards.js";
import { remembered } from "./remembered.js";
import { Says } from "./says.js";
import { startTheme } from "./theme.js";
import { glyph, verdictClass } from "./verdict.js";

const VERDICTS = [["within", "within"], ["not proven", "not_proven"], ["outside", "outside"]];

/** The shelf: a register of all records, those that cannot be read with the reason, and new ones from a pattern. */
class ShelfPage {
  #records = [];
  #patterns = [];
  #demonstration = "";

  constructor() {
    this.rows = document.querySelector(".register tbody");
    /** @type {HTMLElement} */
    this.nothing = document.querySelector(".nothing");
    /** @type {HTMLInputElement} */
    this.find = document.querySelector("#find");
    /** @type {HTMLSelectElement} */
    this.show = document.querySelector("#show");
    /** @type {HTMLSelectElement} */
    this.engine = document.querySelector("#engine");
    this.says = new Says(document.querySelector(".says"));
    this.find.addEventListener("input", () => this.#draw());
    for (const field of [this.show, this.engine]) field.addEventListener("change", () => this.#draw());
    this.find.form.addEventListener("submit", (event) => event.preventDefault());
    document.querySelector("#new-form").addEventListener("submit", (event) => this.#create(event));
    document.querySelector("#verdicts").replaceChildren(...VERDICTS.map(([word]) => el("th", { scope: "col" }, glyph(word), word)));
    const title = /** @type {HTMLElement} */ (document.querySelector("#new-title"));
    this.keyboard = new Keyboard([
      ["F", "find a record", () => this.find.focus()],
      ["N", "new record", () => title.focus()],
    ]);
    document.querySelector('[href="#new"]').addEventListener("click", (event) => (event.preventDefault(), title.focus()));
  }

  async start() {
    try {
      const answer = await fetch("/api/shelf", { headers: { Accept: "application/json" } });
      const shelf = await answer.json();
      if (!answer.ok) throw new Error([shelf.message, shelf.wayOut].filter(Boolean).join(" "));
      const all = listed(shelf.records, shelf.demonstration);
      this.#records = all.filter((record) => !isPattern(record));
      this.#patterns = patternsInOrder(all);
      this.#demonstration = shelf.demonstration;
      this.#offer();
      this.#leadIn();
      this.#draw();
      this.#drawPatterns();
    } catch (failure) {
      this.says.offer(`The shelf cannot be read. ${failure.message}`, [["try again", () => this.start()]]);
    }
    document.documentElement.dataset.ready = "";
  }

  /** The ways to narrow the list. */
  #offer() {
    this.show.replaceChildren(...SHOWS.map(({ key, word }) => el("option", { value: key }, word)));
    this.engine.replaceChildren(el("option", { value: "" }, "any engine"), ...engines(this.#records).map(({ engine }) => el("option", { value: engine }, engine)));
  }

  /** A newcomer is led to the demonstration until the first steps are put away. */
  #leadIn() {
    /** @type {HTMLAnchorElement} */
    const lead = document.querySelector("#first-steps");
    lead.href = `/sheet/${encodeURIComponent(this.#demonstration)}`;
    lead.hidden = this.#demonstration === "" || remembered("first-steps", "0") === "away";
  }

  #draw() {
    const typed = this.find.value.trim();
    const show = SHOWS.find(({ key }) => key === this.show.value) ?? SHOWS[0];
    const engine = this.engine.value;
    const some = this.#records.filter((record) => show.holds(record) && answers(record, typed) && (engine === "" || engineOf(record) === engine));
    arrange(this.rows, some.map((record) => row(record, record.id === this.#demonstration)));
    this.nothing.hidden = some.length > 0;
    write(this.nothing, this.#records.length === 0 ? "No record yet. Begin one from a pattern, below." : "No record answers to that.");
    write(document.querySelector("#listed"), `${some.length} of ${this.#records.length}.`);
    write(document.querySelector("#count"), String(this.#records.length));
    document.querySelector("#total").replaceChildren(counts(sum(this.#records)));
  }

  #drawPatterns() {
    const one = (from, title, about) => el("li", {}, el("button", { type: "button", class: "word", onclick: () => this.#make(from) }, title), el("span", { class: "d" }, about));
    document.querySelector("#patterns").replaceChildren(
      ...this.#patterns.map((record) => one(record.id, record.title || record.id, aboutPattern(record))),
      ...(this.#patterns.some((record) => record.id.endsWith("bare-sheet")) ? [] : [one("", "Bare sheet", "title block only")]),
    );
  }

  #create(event) {
    event.preventDefault();
    this.#make("");
  }

  /** @param {string} from pattern, or none */
  async #make(from) {
    const title = /** @type {HTMLInputElement} */ (document.querySelector("#new-title")).value.trim();
    const answer = await fetch("/api/records", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ from, title }) });
    const made = await answer.json();
    if (answer.ok) location.assign(`/sheet/${encodeURIComponent(made.id)}`);
    else this.says.offer([made.message, made.wayOut].filter(Boolean).join(" "), []);
  }
}

/** @param {import("../state/shelf.js").Listed} record @param {boolean} demonstration */
function row(record, demonstration) {
  const changed = el("td", { class: "l changed" }, changedWhen(record.changed ?? "", new Date()));
  if (record.problem) {
    return el("tr", {}, el("th", { scope: "row" }, el("span", { class: "rn" }, record.id)), el("td", { class: "reason", colspan: 8 }, el("strong", {}, "Cannot be read: "), record.problem), changed);
  }
  const href = `/sheet/${encodeURIComponent(record.id)}`;
  const open = unjudged(record.verdicts).map(({ words, error }) => el("span", { class: error ? "d st-error" : "d" }, words));
  const about = [demonstration ? "demonstration" : "", record.subtitle || record.part || ""].filter(Boolean).join(": ");
  const { taken = 0, total = 0 } = record.readings ?? {};
  return el(
    "tr",
    {},
    el("th", { scope: "row" }, el("a", { class: "rn", href }, record.record_number || record.id)),
    el("td", { class: "l rev" }, record.revision),
    el("td", { class: "rt" }, el("a", { href }, record.title || "Untitled record"), about && el("span", { class: "d" }, about), el("span", { class: "ways" }, ...onwards(record.id).slice(1))),
    el("td", { class: "l engine" }, record.engine_serial || record.engine_type || "", record.engine_serial && record.engine_type && el("span", { class: "d" }, record.engine_type)),
    el("td", { class: "l taken" }, total > 0 && `${taken} of ${total}`),
    ...VERDICTS.map(([word, key]) => el("td", { class: "tallied" }, count(word, record.verdicts?.[key] ?? 0))),
    el("td", { class: "l state" }, record.state ?? "", ...open),
    changed,
  );
}

/** @param {any} verdicts */
function counts(verdicts) {
  const open = unjudged(verdicts).map(({ words, error }) => el("span", { class: error ? "open st-error" : "open" }, words));
  return el("span", { class: "counts" }, ...VERDICTS.map(([word, key]) => count(word, verdicts[key] ?? 0)), ...open);
}

/** How many limits read so. @param {string} word @param {number} number */
function count(word, number) {
  return el("span", { class: `count ${verdictClass(word)}${number === 0 ? " nil" : ""}` }, glyph(word), el("b", {}, String(number)), el("span", { class: "of" }, word));
}

/** @param {readonly any[]} records */
function sum(records) {
  const of = (key) => records.reduce((total, record) => total + (record.verdicts?.[key] ?? 0), 0);
  return { within: of("within"), not_proven: of("not_proven"), outside: of("outside"), waiting: of("waiting"), in_error: of("in_error") };
}

startTheme();
new ShelfPage().start();
