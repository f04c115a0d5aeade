import { calibration } from "../state/readings.js";
import { el, svg } from "./dom.js";
import { nameMark } from "./quantity.js";

/** Where one value comes from: the panel in the margin and the tie lines beside the columns. */
export class Trace {
  /** @type {{name: string, tree: any, neededBy: any[]} | null} */
  shown = null;
  #panel = null;
  #ties = null;
  #next = "";
  #from = [];
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
    this.shown = answer;
    this.#panel?.remove();
    const clause = this.page.clauseOf(name);
    if (!clause) return;
    this.#panel = this.#draw(answer);
    for (const other of this.page.clauses()) other.element.classList.toggle("tracing", other === clause);
    clause.margin.append(this.#panel);
    this.#from = [...leaves(answer.tree?.from ?? [])];
    this.#to = answer.neededBy ?? [];
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
    this.shown = answer;
    const focused = document.activeElement;
    const panel = this.#draw(answer);
    this.#panel?.replaceWith(panel);
    this.#panel = panel;
    // what was typed in the panel goes on in the new one
    if (focused instanceof HTMLElement && panel.contains(focused)) focused.focus({ preventScroll: true });
    this.#from = [...leaves(answer.tree?.from ?? [])];
    this.#to = answer.neededBy ?? [];
    this.draw();
  }

  clear() {
    const { name } = this;
    this.shown = null;
    this.#panel?.remove();
    this.#panel = null;
    this.#from = [];
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
    const shares = (contributions ?? []).slice(0, 4).map((one) => el("li", {}, el("span", { class: "let" }, one.share), [one.subject, one.words].filter(Boolean).join(", ")));
    return el(
      "section",
      { class: "trace", "aria-label": `Trace of ${figure?.title ?? name}` },
      el(
        "header",
        {},
        el("h4", {}, "Origin of ", figure?.title ?? nameMark(name)),
        el("button", { type: "button", class: "word", onclick: () => this.clear() }, "close"),
        el("span", { class: "val" }, tree?.value ?? "", u && el("small", {}, ` ± ${u}`)),
      ),
      this.page.pointing.element,
      el("ul", { class: "tree" }, ...(tree?.from ?? []).map((node) => this.#node(node))),
      shares.length > 0 && el("div", { class: "needs shares" }, el("span", { class: "cap" }, "Its uncertainty comes from"), el("ul", {}, ...shares)),
      needs.length > 0 && el("div", { class: "needs" }, el("span", { class: "cap" }, "Needed by"), el("ul", {}, ...needs)),
    );
  }

  /** @param {any} node */
  #node(node) {
    const from = node.from ?? [];
    const label = node.name && node.cell !== undefined ? this.#link(node, node.title ?? nameMark(node.name)) : node.name ? nameMark(node.name) : el("span", {}, node.what ?? "");
    const origin = originOf(node, this.#number(node));
    return el(
      "li",
      {},
      el("span", { class: "row" }, label, el("span", { class: "val" }, node.value ?? "")),
      origin && el("span", { class: "org" }, origin),
      ...this.#instruments(node),
      from.length > 0 && el("ul", {}, ...from.map((one) => this.#node(one))),
    );
  }

  /** The instruments of a reading with their calibration, one that was overdue said so. */
  #instruments(node) {
    const day = this.page.desk.sheet.record.title_block?.date ?? "";
    return (node.instruments ?? []).map((one) => {
      const { text, overdue } = calibration(one, day);
      return el("span", { class: overdue ? "org overdue" : "org" }, [`${one.name ?? ""} ${one.id}`.trim(), text].filter(Boolean).join(", "));
    });
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
    const from = unique(this.#from.map((one) => this.#middle(one.name, one.cell)));
    const to = unique(this.#to.map((one) => this.#middle(one.name, one.cell)));
    const add = (tag, at) => this.#ties.append(svg(tag, at));
    const spine = (x, ys, look) => ys.length > 0 && add("path", { class: look, d: `M${x} ${Math.min(self, ...ys)}V${Math.max(self, ...ys)}` });
    spine(x0 + 18, from, "tie");
    spine(x0 + 31, to, "tie to");
    for (const y of from) {
      add("path", { class: "tie", d: `M${x0} ${y}H${x0 + 18}` });
      add("circle", { class: "tie-ring", cx: x0 + 5, cy: y, r: 3.6 });
    }
    for (const y of to) {
      add("path", { class: "tie to", d: `M${x0 + 9} ${y}H${x0 + 31}` });
      add("path", { class: "tie-arrow", d: `M${x0 + 1} ${y}l9 -4v8z` });
    }
    add("path", { class: "tie", d: `M${x0} ${self}H${x0 + lane + 4}` });
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

/** Where it stands and what it is, in a few words. @param {any} node @param {string} number */
function originOf(node, number) {
  const what = { reading: node.text, input: node.given ? `given: ${node.given}` : "given", solved: "solved for" }[node.sort] ?? "";
  return [number, what].filter(Boolean).join(", ");
}

/** Every named figure of a trace. @param {any[]} nodes @returns {Generator<any>} */
function* leaves(nodes) {
  for (const node of nodes) {
    if (node.name) yield node;
    yield* leaves(node.from ?? []);
  }
}

/** @param {(number | undefined)[]} ys */
function unique(ys) {
  return [...new Set(ys.filter((y) => y !== undefined))];
}

/** @param {Element} element @param {string} name of a custom property in px */
function measure(element, name) {
  return parseFloat(getComputedStyle(element).getPropertyValue(name)) || 0;
}
