import { cutAgainst } from "../state/source.js";
import { label } from "../state/terms.js";
import { ApprovalBody } from "./approval.js";
import { CausesBody } from "./causes.js";
import { ChartBody } from "./chart.js";
import { clock, el, mark, write } from "./dom.js";
import { Field } from "./field.js";
import { FindingsBody } from "./findings.js";
import { FitsBody } from "./fits.js";
import { JavaBody } from "./java.js";
import { CarriedBody, NoteBody } from "./note.js";
import { PhotoBody } from "./photo.js";
import { ReadingsBody } from "./readings.js";
import { Remarks } from "./remarks.js";
import { TableBody } from "./table.js";
import { WorkingBody } from "./working.js";

const BODIES = { note: NoteBody, caution: NoteBody, working: WorkingBody, readings: ReadingsBody, fits: FitsBody, findings: FindingsBody, causes: CausesBody, approval: ApprovalBody, photo: PhotoBody, chart: ChartBody, table: TableBody, java: JavaBody };
const ADDS = ["note", "working", "readings", "fits", "table", "chart", "findings", "causes", "java", "caution", "approval", "photo", "section"];

/** One clause of the sheet: number, title, content, margin. A section is a clause without content. */
export class Clause {
  #number = el("span", { class: "no" });
  #title;
  #heading = el("span", {});
  #state = el("p", { class: "state" });
  #acts = el("p", { class: "acts" });
  #kind = el("span", { class: "kind" });
  #titleField = null;
  #depth = -1;
  #next;
  #isLast = false;
  #both = null;
  #workedOut = clock();
  editing = false;
  body = null;
  /** @type {Set<string> | undefined} names of the figures it shows; the page keeps them */
  shown;

  /** @param {import("./sheet-page.js").SheetPage} page @param {string} id */
  constructor(page, id) {
    this.page = page;
    this.id = id;
    const { kind } = this.cell;
    this.isSection = kind === "section";
    this.content = el("div", { class: "content" });
    this.margin = el("div", { class: "mar", role: "group", "aria-label": "State, remarks and actions" }, this.#state);
    this.#number.id = `number-${id}`;
    this.element = el("section", { class: this.isSection ? "section" : "clause", id: `clause-${id}`, tabindex: "-1" }, this.#number);
    this.#next = this.#after();
    this.element.append(this.#kind, ...(this.isSection ? [] : [this.content]), this.margin, this.#next);
    this.#kind.hidden = this.isSection;
    if (!this.isSection) {
      const Body = BODIES[kind] ?? CarriedBody;
      this.body = new Body(this);
      this.content.append(...this.body.elements);
      this.remarks = new Remarks(this);
      this.margin.append(this.remarks.element);
    }
    this.margin.append(this.#acts);
    this.#words();
    this.element.addEventListener("focusin", () => page.at(id));
  }

  get cell() {
    return this.page.desk.cell(this.id);
  }

  /** Whether another window's text stands against ours, to be chosen between. */
  get isDisputed() {
    return this.#both !== null;
  }

  /** @param {import("../state/shapes.js").Place} place */
  place(place) {
    if (place.depth === this.#depth) return;
    this.#depth = place.depth;
    const heading = el(place.depth === 0 ? "h2" : place.depth === 1 ? "h3" : "h4", { class: "ttl", id: `title-${this.id}` }, this.#heading);
    if (this.#title) this.#title.replaceWith(heading);
    else this.#number.after(heading);
    this.#title = heading;
    this.element.setAttribute("aria-labelledby", `${this.#number.id} ${heading.id}`);
  }

  update() {
    const { cell } = this;
    write(this.#number, cell.number ?? "");
    write(this.#heading, cell.title || "untitled");
    mark(this.#heading, "empty", !cell.title);
    write(this.#kind, cell.kind === "fits" ? label("fits", this.page.terms) : cell.kind);
    this.#titleField?.show(cell.title ?? "");
    this.body?.update();
    this.remarks?.update();
    this.drawState();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    this.#workedOut = clock();
    this.body?.figures(names);
    this.drawState();
  }

  /** State of the clause as a word. */
  drawState() {
    if (this.isSection) return;
    const { desk } = this.page;
    const figures = [...(this.body?.names?.() ?? [])].map((name) => desk.figure(name)).filter((figure) => figure?.cell === this.id);
    const count = (state) => figures.filter((figure) => figure.state === state).length;
    const errors = Math.max(count("error"), (this.cell.problems ?? []).filter((one) => one.severity === "ERROR").length);
    const waiting = count("waiting");
    const working = count("working");
    const parts = [errors > 0 ? `${errors} in error` : "", waiting > 0 ? `${waiting} waiting` : "", working > 0 ? "being worked out" : ""].filter(Boolean);
    const others = this.page.othersAt(this.id);
    const word = this.editing ? "being edited" : parts.join(", ") || (figures.length === 0 ? "" : figures.some((figure) => figure.outOfDate) ? "saved figures out of date" : `fresh ${this.#workedOut}`);
    write(this.#state, [word, others].filter(Boolean).join("; "));
    mark(this.#state, "now", this.editing);
    mark(this.#state, "error", !this.editing && errors > 0);
    mark(this.element, "editing", this.editing);
  }

  // editing

  /** @param {number} [line] */
  async open(line) {
    if (this.editing) {
      this.body?.editing?.focus?.(line);
      return;
    }
    this.editing = true;
    this.#openTitle();
    this.drawState();
    this.#words();
    if (this.isSection || !this.cell.title) this.#titleField.input.focus();
    if (!this.isSection) {
      const titled = Boolean(this.cell.title);
      await this.body.open(titled ? line : undefined);
      if (!titled) this.#titleField?.input.focus();
    }
  }

  close() {
    if (!this.editing) return;
    this.editing = false;
    this.body?.close();
    this.#titleField?.input.blur();
    this.#titleField = null;
    this.#title.replaceChildren(this.#heading);
    this.drawState();
    this.#words();
  }

  #openTitle() {
    this.#titleField = new Field({ label: `Title of clause ${this.cell.number}`, look: "write", placeholder: "Title", keep: (text) => this.page.desk.put(this.id, "/title", text.trim()) });
    this.#titleField.show(this.cell.title ?? "");
    this.#titleField.input.addEventListener("keydown", (event) => {
      if (event.key === "Escape") this.page.close();
    });
    this.#titleField.input.addEventListener("taken", () => (this.isSection ? this.page.close() : this.body.editing?.focus?.()));
    this.#title.replaceChildren(this.#titleField.input);
  }

  /**
   * Puts both texts to the user, where the clause was changed elsewhere meanwhile.
   * @param {{mine: string, theirs: string, keep: (text: string) => void, take: () => void}} what
   */
  dispute(what) {
    this.#both?.remove();
    const choose = (act) => {
      this.#both.remove();
      this.#both = null;
      act();
    };
    const mine = () => this.body?.editing?.now ?? what.mine;
    this.#both = el(
      "div",
      { class: "both", role: "group", "aria-label": "Two texts for one place" },
      el("p", {}, "This was changed in another window while you typed. Nothing is lost: choose which text stands."),
      el("div", { class: "texts" }, side("Yours", what.mine, what.theirs), side("The other", what.theirs, what.mine)),
      el(
        "div",
        { class: "choose" },
        el("button", { type: "button", class: "btn", onclick: () => choose(() => what.keep(mine())) }, "Keep mine"),
        el("button", { type: "button", class: "btn", onclick: () => choose(what.take) }, "Take the other"),
      ),
    );
    (this.isSection ? this.margin : this.content).prepend(this.#both);
    this.page.say("Two texts for one place: choose which one stands.");
  }

  // words of action

  #words() {
    const word = (text, act, label) => el("button", { type: "button", class: "word", "aria-label": label, onclick: act }, text);
    const { page, id } = this;
    if (this.editing) {
      this.#acts.replaceChildren(word("close", () => page.close()));
      return;
    }
    this.#acts.replaceChildren(
      word("edit", () => page.open(id)),
      ...(this.body?.names ? [word("trace", () => page.traceAt(id))] : []),
      ...(this.remarks ? [word("remark", () => this.remarks.add())] : []),
      word("move", () => this.#moving()),
      word("delete", () => page.remove(id)),
      word("write next", () => this.#writeNext(this.#next.hidden)),
    );
  }

  #moving() {
    const { page, id } = this;
    const act = (by) => page.move(id, by);
    const words = [
      el("button", { type: "button", class: "word", onclick: () => act(-1) }, "up"),
      el("button", { type: "button", class: "word", onclick: () => act(1) }, "down"),
      el("button", { type: "button", class: "word", onclick: () => (this.#words(), this.element.focus()) }, "done"),
    ];
    this.#acts.replaceChildren(...words);
    words[0].focus();
  }

  /** The kinds that may follow; behind the last clause they always stand. */
  #after() {
    const { page, id } = this;
    const add = (kind) => {
      this.#writeNext(false);
      page.add(kind, id);
    };
    const words = ADDS.map((kind) => el("button", { type: "button", class: "word", onclick: () => add(kind) }, kind));
    const away = (event) => {
      if (event.key !== "Escape" || this.#isLast) return;
      event.stopPropagation();
      this.#writeNext(false);
      this.element.focus({ preventScroll: true });
    };
    return el("div", { class: "after", role: "group", "aria-label": "Write after this clause", hidden: true, onkeydown: away }, el("span", {}, "Write next:"), ...words);
  }

  /** @param {boolean} on */
  #writeNext(on) {
    this.#next.hidden = !on && !this.#isLast;
    if (on) this.#next.querySelector("button").focus({ preventScroll: true });
  }

  /** @param {boolean} isLast of the sheet */
  last(isLast) {
    if (this.#isLast === isLast) return;
    this.#isLast = isLast;
    this.#writeNext(false);
  }
}

/** @param {string} head @param {string} text @param {string} other with which it is compared */
function side(head, text, other) {
  const [before, own, behind] = cutAgainst(text, other);
  return el("div", {}, el("span", { class: "cap" }, head), el("pre", { tabindex: "0" }, before, own && el("mark", {}, own), behind));
}
