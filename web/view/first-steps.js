import { clauseOf, next, STEPS } from "../state/first-steps.js";
import { el, write } from "./dom.js";
import { toReport } from "./onwards.js";
import { remember, remembered } from "./remembered.js";

const AWAY = "away";

/** Five quiet hints on the demonstration, one at a time, in the remarks column; put away for ever by a word. */
export class FirstSteps {
  #note = null;
  #drawn = "";
  #isDemonstration = false;
  #asked = false;

  /** @param {import("./sheet-page.js").SheetPage} page @param {string} id of the record */
  constructor(page, id) {
    this.page = page;
    this.id = id;
    page.desk.listen((event, detail) => event === "kept" && page.desk.cell(detail.cell)?.kind === "readings" && this.#ended("reading"));
    if (this.#step !== AWAY) this.#ask();
  }

  /** Which record is the demonstration, the shelf knows. */
  async #ask() {
    const shelf = await fetch("/api/shelf").then((answer) => answer.json()).catch(() => ({}));
    this.#isDemonstration = shelf.demonstration === this.id;
    this.draw(true);
  }

  get #step() {
    return remembered("first-steps", "0");
  }

  /** @param {boolean} order whether clauses came or went */
  draw(order) {
    const { sheet } = this.page.desk;
    if (!sheet || (!this.#isDemonstration && !this.#asked)) return;
    const step = this.#step;
    if (!order && this.#drawn === step) return;
    const at = step === AWAY ? "" : clauseOf(sheet, Number(step));
    const clause = this.page.clause(at);
    this.#note?.remove();
    this.#note = null;
    this.#drawn = step;
    if (!clause) return;
    this.#note = this.#made(Number(step));
    clause.margin.firstElementChild.after(this.#note);
  }

  #made(step) {
    const { text, lead } = STEPS[step];
    const last = step === STEPS.length - 1;
    return el(
      "div",
      { class: "first-step", role: "note", "aria-label": `First steps, ${step + 1} of ${STEPS.length}` },
      el("span", { class: "cap" }, `First steps, ${step + 1} of ${STEPS.length}`),
      el("p", {}, text),
      last && toReport(this.id, "to the report"),
      last ? el("button", { type: "button", class: "word", onclick: () => this.#away() }, "done") : el("button", { type: "button", class: "word", onclick: () => this.#next() }, lead),
      !last && el("button", { type: "button", class: "word", onclick: () => this.#away() }, "put first steps away"),
    );
  }

  #next() {
    const { sheet } = this.page.desk;
    const to = next(sheet, Number(this.#step));
    if (to >= STEPS.length) return this.#away();
    remember("first-steps", String(to));
    this.draw(true);
    this.page.go(clauseOf(sheet, to));
    /** @type {HTMLElement} */ (this.#note?.querySelector(".word"))?.focus({ preventScroll: true });
    this.page.say(`First steps, ${to + 1} of ${STEPS.length}: ${STEPS[to].text}`);
  }

  /** What a step asked for was done: it says so, and the way on stays. @param {string} what */
  #ended(what) {
    const step = this.#step;
    if (this.#note && step !== AWAY && STEPS[Number(step)]?.ends === what) write(this.#note.querySelector("p"), STEPS[Number(step)].done);
  }

  traced() {
    this.#ended("trace");
  }

  #away() {
    const clause = this.#note?.closest(".clause");
    remember("first-steps", AWAY);
    this.draw(true);
    clause?.focus({ preventScroll: true });
    this.page.say("First steps are put away; the list of keys shows them again.");
  }

  /** From the first hint, on this record whatever it is. */
  again() {
    remember("first-steps", "0");
    this.#asked = true;
    this.draw(true);
    this.page.go(clauseOf(this.page.desk.sheet, 0));
    /** @type {HTMLElement} */ (this.#note?.querySelector(".word"))?.focus({ preventScroll: true });
  }
}
