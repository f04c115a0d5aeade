import { aboutPattern, answers, changedWhen, engineOf, engines, isPattern, listed, SHOWS } from "../state/shelf.js";
import { arrange, el, write } from "./dom.js";
import { Keyboard } from "./keyboard.js";
import { onwards } from "./onwards.js";
import { Says } from "./says.js";
import { startTheme } from "./theme.js";
import { glyph, verdictClass } from "./verdict.js";

const VERDICTS = [["within", "within"], ["not proven", "not_proven"], ["outside", "outside"]];

/** The shelf: all records, those that cannot be read with the reason, and new ones from a pattern. */
class ShelfPage {
  #records = [];
  #patterns = [];
  #engines = new Set();
  #demonstration = "";
  #show = SHOWS[0];

  constructor() {
    this.rows = document.querySelector(".register tbody");
    /** @type {HTMLElement} */
    this.nothing = document.querySelector(".nothing");
    /** @type {HTMLInputElement} */
    this.find = document.querySelector("#find");
    this.says = new Says(document.querySelector(".says"));
    this.find.addEventListener("input", () => this.#draw());
    this.find.form.addEventListener("submit", (event) => event.preventDefault());
    document.querySelector("#new-form").addEventListener("submit", (event) => this.#create(event));
    this.keyboard = new Keyboard([
      ["F", "find a record", () => this.find.focus()],
      ["N", "new record", () => /** @type {HTMLElement} */ (document.querySelector("#new-title")).focus()],
    ]);
  }

  async start() {
    try {
      const answer = await fetch("/api/shelf", { headers: { Accept: "application/json" } });
      const shelf = await answer.json();
      if (!answer.ok) throw new Error([shelf.message, shelf.wayOut].filter(Boolean).join(" "));
      const all = listed(shelf.records, shelf.demonstration);
      this.#records = all.filter((record) => !isPattern(record));
      this.#patterns = all.filter(isPattern);
      this.#demonstration = shelf.demonstration;
      this.#draw();
      this.#drawPatterns();
      this.#drawEngines();
    } catch (failure) {
      this.says.offer(`The shelf cannot be read. ${failure.message}`, [["try again", () => this.start()]]);
    }
    document.documentElement.dataset.ready = "";
  }

  #draw() {
    const typed = this.find.value.trim();
    const some = this.#records.filter((record) => this.#show.holds(record) && answers(record, typed) && (this.#engines.size === 0 || this.#engines.has(engineOf(record))));
    arrange(this.rows, some.map((record) => row(record, record.id === this.#demonstration)));
    this.nothing.hidden = some.length > 0;
    write(this.nothing, this.#records.length === 0 ? "No record yet. Begin one at the left." : "No record answers to that.");
    write(document.querySelector("#count"), String(this.#records.length));
    const total = document.querySelector("#total");
    total.replaceChildren(counts(sum(this.#records)));
    this.#drawShows();
  }

  #drawEngines() {
    const found = engines(this.#records);
    const one = ({ engine, count }) => {
      const box = el("input", { type: "checkbox", class: "check", onchange: () => (box.checked ? this.#engines.add(engine) : this.#engines.delete(engine), this.#draw()) });
      return el("li", {}, el("label", {}, box, el("span", {}, engine), el("b", {}, String(count))));
    };
    document.querySelector("#engines").replaceChildren(...found.map(one));
    /** @type {HTMLElement} */ (document.querySelector("#engines-of")).hidden = found.length < 2;
  }

  #drawShows() {
    const list = document.querySelector("#shows");
    if (list.children.length === 0) {
      for (const show of SHOWS) {
        const radio = el("input", { type: "radio", name: "show", onchange: () => ((this.#show = show), this.#draw()) });
        radio.checked = show === this.#show;
        list.append(el("li", {}, el("label", {}, radio, el("span", {}, show.word), el("b", {}))));
      }
    }
    SHOWS.forEach((show, index) => write(list.children[index].querySelector("b"), String(this.#records.filter(show.holds).length)));
  }

  #drawPatterns() {
    const list = document.querySelector("#patterns");
    const one = (from, title, about) => el("li", {}, el("button", { type: "button", onclick: () => this.#make(from) }, el("span", { class: "t1" }, title), el("span", { class: "d" }, about)));
    const repeated = this.#records.filter((record) => record.id === this.#demonstration);
    list.replaceChildren(
      ...this.#patterns.map((record) => one(record.id, record.title || record.id, aboutPattern(record))),
      ...repeated.map((record) => one(record.id, record.title, "the demonstration's clauses, to be read anew")),
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
  if (record.problem) {
    return el("tr", {}, el("th", { scope: "row" }, el("span", { class: "rn" }, record.id)), el("td", { class: "reason", colspan: 4 }, el("strong", {}, "Cannot be read. "), record.problem), el("td", { class: "l changed" }, changedWhen(record.changed ?? "", new Date())));
  }
  const href = `/sheet/${encodeURIComponent(record.id)}`;
  const state = record.errors > 0 ? el("span", { class: "st-error" }, `${record.errors} in error`) : (record.state ?? "");
  const about = [demonstration ? "demonstration" : "", record.subtitle || record.part || ""].filter(Boolean).join(": ");
  const { taken = 0, total = 0 } = record.readings ?? {};
  return el(
    "tr",
    {},
    el("th", { scope: "row" }, el("a", { class: "rn", href }, record.record_number || record.id), record.revision && el("span", { class: "d" }, `rev ${record.revision}`)),
    el("td", { class: "rt" }, el("a", { href }, record.title || "Untitled record"), about && el("span", { class: "d" }, about), el("span", { class: "d ways" }, ...onwards(record.id).slice(1))),
    el("td", { class: "l" }, record.engine_serial || record.engine_type || "", record.engine_serial && record.engine_type && el("span", { class: "d" }, record.engine_type)),
    el("td", {}, counts(record.verdicts ?? {})),
    el("td", { class: "l" }, state, total > 0 && el("span", { class: "d" }, `${taken} of ${total} readings`)),
    el("td", { class: "l changed" }, changedWhen(record.changed ?? "", new Date())),
  );
}

/** @param {any} verdicts */
function counts(verdicts) {
  const one = ([word, key]) => {
    const count = verdicts[key] ?? 0;
    return el("span", { class: `count ${verdictClass(word)}${count === 0 ? " nil" : ""}` }, glyph(word), String(count), el("span", { class: "unseen" }, word));
  };
  return el("span", { class: "counts" }, ...VERDICTS.map(one));
}

/** @param {readonly any[]} records */
function sum(records) {
  const of = (key) => records.reduce((total, record) => total + (record.verdicts?.[key] ?? 0), 0);
  return { within: of("within"), not_proven: of("not_proven"), outside: of("outside") };
}

startTheme();
new ShelfPage().start();
