import { doubtFrom } from "../state/figures.js";
import { authorityOf, comeBy, instrumentsOf, statementsOf } from "../state/origin.js";
import { el, svg } from "./dom.js";
import { nameMark } from "./quantity.js";

/** Where one value comes from: the panel in the margin and the tie lines beside the columns. */
export class Trace {
  /** @type {{name: string, tree: any, neededBy: any[]} | null} */
  shown = null;
  #panel = null;
  #ties = null;
  #next = "";
  /** @type {ReturnType<typeof statementsOf>} */
  #chain = { from: [], statements: [] };
  #to = [];

  /** @param {import("./sheet-page.js").SheetPage} page */
  constructor(page) {
    this.page = page;
    this.#ties = svg("svg", { class: "ties", "aria-hidden": "true" });
    page.body.append(this.#ties);
    new ResizeObserver(() => this.draw()).observe(page.body);
    document.fonts?.ready.then(() => this.draw());
  }

  get name() {
    return this.shown?.name ?? "";
  }

  /** @param {string} name */
  async toggle(name) {
    if (this.name === name) return this.clear();
    const answer = await this.page.desk.trace(name);
    if (!answer) return this.page.say("The line to the server is down; the trace comes when it is back.");
    const before = this.name;
    this.#take(answer);
    this.#panel?.remove();
    const clause = this.page.clauseOf(name);
    if (!clause) return;
    this.#panel = this.#draw(answer);
    for (const other of this.page.clauses()) other.element.classList.toggle("tracing", other === clause);
    clause.margin.append(this.#panel);
    this.page.redrawFigures([before, name]);
    this.draw();
    this.page.pointing.show(name, before);
  }

  /** The value gets this name: what is shown of it stays. @param {string} name */
  follow(name) {
    this.#next = name;
  }

  /** Back to the value that is traced. */
  focus() {
    this.page.clauseOf(this.name)?.element.querySelector(`[data-value="${CSS.escape(this.name)}"]`)?.focus({ preventScroll: true });
  }

  /** The trace anew after an edit. */
  async renew() {
    let { name } = this;
    if (name === "") return;
    if (this.#next !== "" && this.page.desk.figure(this.#next) && !this.page.desk.figure(name)) {
      name = this.#next;
      this.shown = { ...this.shown, name };
      this.page.redrawFigures([name]);
      this.page.pointing.show(name, "");
    }
    this.#next = "";
    const answer = await this.page.desk.trace(name);
    if (!answer || this.name !== name) return;
    this.#take(answer);
    const focused = document.activeElement;
    const panel = this.#draw(answer);
    this.#panel?.replaceWith(panel);
    this.#panel = panel;
    // what was typed in the panel goes on in the new one
    if (focused instanceof HTMLElement && panel.contains(focused)) focused.focus({ preventScroll: true });
    this.draw();
  }

  #take(answer) {
    this.shown = answer;
    this.#chain = statementsOf(answer.tree);
    this.#to = answer.neededBy ?? [];
  }

  clear() {
    const { name } = this;
    this.shown = null;
    this.#panel?.remove();
    this.#panel = null;
    this.#chain = { from: [], statements: [] };
    this.#to = [];
    for (const clause of this.page.clauses()) clause.element.classList.remove("tracing");
    if (name !== "") this.page.redrawFigures([name]);
    this.draw();
  }

  /** @param {any} answer */
  #draw({ name, tree, neededBy, contributions }) {
    const needs = (neededBy ?? []).filter((one) => one.direct !== false).map((one) => el("li", {}, el("span", { class: "let" }, this.#number(one)), one.limit ? el("span", {}, this.#link(one), ", limit") : this.#link(one)));
    const figure = this.page.desk.figure(name);
    const u = figure?.u ?? "";
    const shares = (contributions ?? []).slice(0, 4).map((one) => el("li", {}, el("span", { class: "let" }, one.share), doubtFrom(one)));
    const { from, statements } = this.#chain;
    return el(
      "section",
      { class: "trace", "aria-label": `Trace of ${figure?.title ?? name}` },
      el(
        "header",
        {},
        el("h4", {}, "Origin of ", figure?.title ?? nameMark(name, figure?.set)),
        el("button", { type: "button", class: "word", onclick: () => this.clear() }, "close"),
        el("span", { class: "val" }, tree?.value ?? "", u && el("small", {}, ` ± ${u}`)),
        tree && el("p", { class: "how" }, ...this.#how(tree, from)),
      ),
      this.page.pointing.element,
      statements.length > 0 && el("ol", { class: "chain" }, ...statements.map((one) => this.#statement(one))),
      shares.length > 0 && el("div", { class: "needs shares" }, el("span", { class: "cap" }, "Its uncertainty comes from"), el("ul", {}, ...shares)),
      needs.length > 0 && el("div", { class: "needs" }, el("span", { class: "cap" }, "Needed by"), el("ul", {}, ...needs)),
    );
  }

  /** @param {import("../state/origin.js").Statement} statement */
  #statement({ number, node, from }) {
    const name = node.name ? (node.title ?? nameMark(node.name, this.page.desk.figure(node.name)?.set)) : (node.what ?? "");
    return el(
      "li",
      { value: number },
      balloon(number),
      el("span", { class: "what" }, node.name && node.cell !== undefined ? this.#link(node, name) : name),
      el("span", { class: "val" }, node.value ?? ""),
      el("p", { class: "how" }, ...this.#how(node, from)),
    );
  }

  /** How a value was come by, as a sentence: where, on whose word, with which instrument, from which statements. @param {any} node @param {number[]} from */
  #how(node, from) {
    const day = this.page.desk.sheet.record.title_block?.date ?? "";
    const where = this.#number(node);
    const authority = authorityOf(node);
    const instruments = instrumentsOf(node, day).flatMap(({ text, overdue }) => [", with ", el("span", { class: overdue ? "overdue" : "" }, text)]);
    const rests = from.flatMap((number, index) => [index === 0 ? " from " : " ", balloon(number)]);
    return [comeBy(node), where && ` in ${where}`, authority && `: ${authority}`, ...instruments, ...rests].filter(Boolean);
  }

  #number(one) {
    return one.label ?? this.page.desk.cell(one.cell)?.number ?? "";
  }

  #link(one, content = null) {
    const text = one.title || one.name || this.page.desk.cell(one.cell)?.title || "clause";
    const act = () => (one.name ? this.page.goToFigure(one.name) : this.page.go(one.cell));
    return el("a", { href: one.name ? `#figure-${one.name}` : `#clause-${one.cell}`, onclick: (event) => (event.preventDefault(), act()) }, content ?? text);
  }

  /** The tie lines: full with a ring where the value comes from, dashed with an arrow where it goes. */
  draw() {
    this.#ties.replaceChildren();
    const { body } = this.page;
    const lane = measure(body, "--lane");
    const self = this.name && this.#middle(this.name);
    if (!self || lane === 0) return;
    const x0 = body.clientWidth - measure(body, "--mar") - lane;
    /** @type {Map<number, number>} number of a statement by its height; of two in one place the first */
    const from = new Map();
    for (const { number, node } of this.#chain.statements) {
      const y = this.#middle(node.name, node.cell);
      if (y !== undefined && !from.has(y)) from.set(y, number);
    }
    const to = unique(this.#to.map((one) => this.#middle(one.name, one.cell)));
    const add = (tag, at) => this.#ties.appendChild(svg(tag, at));
    const spine = (x, ys, look) => ys.length > 0 && add("path", { class: look, d: `M${x} ${Math.min(self, ...ys)}V${Math.max(self, ...ys)}` });
    spine(x0 + 24, [...from.keys()], "tie");
    spine(x0 + 30, to, "tie to");
    for (const [y, number] of from) {
      add("path", { class: "tie", d: `M${x0} ${y}H${x0 + 24}` });
      add("circle", { class: "tie-ring", cx: x0 + 11, cy: y, r: 8.5 });
      add("text", { class: "tie-no", x: x0 + 11, y: y + 4 }).textContent = String(number);
    }
    for (const y of to) {
      add("path", { class: "tie to", d: `M${x0 + 9} ${y}H${x0 + 30}` });
      add("path", { class: "tie-arrow", d: `M${x0 + 1} ${y}l9 -4v8z` });
    }
    const head = this.#panel?.querySelector("h4")?.getBoundingClientRect();
    const into = head ? `H${x0 + lane - 5}V${Math.round(head.top + head.height / 2 - body.getBoundingClientRect().top) + 0.5}H${x0 + lane + 2}` : `H${x0 + lane + 2}`;
    add("path", { class: "tie", d: `M${x0} ${self}${into}` });
    add("circle", { class: "tie-self", cx: x0 + 6, cy: self, r: 5.5 });
  }

  /** Height of a figure's value, or of its clause, in the body. @param {string} name @param {string} [cell] */
  #middle(name, cell) {
    const at = (name && document.getElementById(`figure-${name}`)) || (cell && document.getElementById(`clause-${cell}`)?.querySelector(".ttl"));
    if (!at) return undefined;
    const target = at.querySelector?.(".value:not([hidden]) .v") ?? at;
    const box = target.getBoundingClientRect();
    return Math.round(box.top + box.height / 2 - this.page.body.getBoundingClientRect().top) + 0.5;
  }
}

/** The number of a statement, ringed as an item on a drawing. @param {number} number */
function balloon(number) {
  return el("span", { class: "item-no" }, String(number));
}

/** @param {(number | undefined)[]} ys */
function unique(ys) {
  return [...new Set(ys.filter((y) => y !== undefined))];
}

/** @param {Element} element @param {string} name of a custom property in px */
function measure(element, name) {
  return parseFloat(getComputedStyle(element).getPropertyValue(name)) || 0;
}
