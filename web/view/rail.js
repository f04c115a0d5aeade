import { isNotWithin } from "../state/figures.js";
import { counts } from "../state/integrity.js";
import { arrange, attribute, el, write } from "./dom.js";
import { shortened } from "./set-out.js";
import { glyph, verdictClass } from "./verdict.js";

const VERDICTS = ["within", "not proven", "outside"];

/** The numbered clauses with their worst verdict, and the count of limits. */
export class Rail {
  #items = new Map();
  #counts = new Map();
  #more = el("p", { class: "more" });
  #total = el("span", { class: "cap" });

  /**
   * @param {Element} element
   * @param {import("../state/desk.js").Desk} desk
   * @param {{go: (id: string) => void, nextNotWithin: () => void}} page
   */
  constructor(element, desk, page) {
    this.desk = desk;
    this.page = page;
    this.element = element;
    this.list = el("ol", { class: "toc" });
    const rows = VERDICTS.map((verdict) => {
      const number = el("dd", {}, "0");
      this.#counts.set(verdict, number);
      return el("div", { class: `row count ${verdictClass(verdict)}` }, el("dt", {}, glyph(verdict), el("span", {}, verdict)), number);
    });
    this.next = el("button", { type: "button", class: "word", onclick: () => page.nextNotWithin() }, "Next not within");
    this.short = shortened(element, { out: "list the clauses", away: "put the list away" });
    element.append(
      el("nav", { "aria-label": "Clauses" }, el("span", { class: "cap" }, "Clauses"), this.short.word, this.list, el("a", { class: "books", href: "#registers" }, "Instruments and parts")),
      el("section", { class: "tally", "aria-label": "Limits" }, this.#total, el("dl", {}, ...rows)),
      el("div", { class: "more" }, this.#more, this.next),
      keys(),
    );
    this.#more.className = "";
  }

  draw() {
    const { sheet } = this.desk;
    const wanted = sheet.order.map((place) => this.#item(sheet.cells.get(place.id), place));
    for (const id of this.#items.keys()) {
      if (!sheet.cells.has(id)) this.#items.delete(id);
    }
    arrange(this.list, wanted);
  }

  /** @param {Iterable<string>} ids */
  drawCells(ids) {
    for (const id of ids) {
      const cell = this.desk.cell(id);
      const place = this.desk.sheet.order.find((one) => one.id === id);
      if (cell && place && this.#items.has(id)) this.#item(cell, place);
    }
  }

  drawSummary() {
    const summary = this.desk.sheet.summary;
    const keys = { within: "within", "not proven": "not_proven", outside: "outside" };
    const unjudged = [["limits_in_error", "in error"], ["limits_waiting", "waiting"]].map(([key, word]) => [summary[key] ?? 0, word]).filter(([count]) => count > 0);
    let total = unjudged.reduce((sum, [count]) => sum + count, 0);
    for (const [verdict, number] of this.#counts) {
      const count = summary[keys[verdict]] ?? 0;
      total += count;
      write(number, String(count));
    }
    write(this.#total, total === 1 ? "1 limit" : `${total} limits`);
    const taken = summary.readings_taken;
    const limits = unjudged.map(([count, word]) => `${count} ${word}`).join(", ");
    this.#more.replaceChildren(...[limits && `limits not judged: ${limits}`, taken === undefined ? "" : `${taken} of ${summary.readings_total} readings taken`, counts(summary)].filter(Boolean).flatMap((text) => [text, el("br")]));
    this.next.hidden = ![...this.desk.sheet.cells.values()].some((cell) => isNotWithin(cell.worst));
  }

  /** @param {string} id of the clause in use */
  current(id) {
    for (const [other, item] of this.#items) attribute(item.link, "aria-current", other === id ? "true" : null);
    this.#inSight(this.#items.get(id)?.link);
  }

  /** Where the list is longer than the window it follows the clause in use. @param {HTMLElement | undefined} link */
  #inSight(link) {
    const box = this.element;
    if (!link || box.scrollHeight <= box.clientHeight) return;
    const [here, all] = [link.getBoundingClientRect(), box.getBoundingClientRect()];
    if (here.top < all.top) box.scrollTop -= all.top - here.top + 20;
    else if (here.bottom > Math.min(all.bottom, innerHeight)) box.scrollTop += here.bottom - Math.min(all.bottom, innerHeight) + 20;
  }

  /** @param {any} cell @param {any} place */
  #item(cell, place) {
    let item = this.#items.get(cell.id);
    if (!item) {
      const number = el("span", { class: "n" });
      const title = el("span", {});
      const state = el("span", { class: "st" });
      const link = el("a", { href: `#clause-${cell.id}`, onclick: (event) => this.#pressed(event, cell.id) }, number, title, state);
      item = { node: el("li", {}, link), link, number, title, state, drawn: "" };
      this.#items.set(cell.id, item);
    }
    const state = cell.state === "error" || cell.state === "waiting" ? cell.state : cell.worst;
    const drawn = JSON.stringify([cell.number, cell.title, state, place.depth, cell.kind]);
    if (item.drawn !== drawn) {
      item.drawn = drawn;
      attribute(item.link, "class", place.depth === 0 ? "top" : null);
      write(item.number, cell.number ?? "");
      write(item.title, cell.title || "untitled");
      attribute(item.state, "class", `st ${verdictClass(state)}`);
      if (state === "error" || state === "waiting") write(item.state, state);
      else item.state.replaceChildren(...(VERDICTS.includes(state) ? [glyph(state), el("span", { class: "unseen" }, state)] : []));
    }
    return item.node;
  }

  /** @param {Event} event @param {string} id */
  #pressed(event, id) {
    event.preventDefault();
    this.short.shorten();
    this.page.go(id);
  }
}

function keys() {
  const list = [["G", "go to a clause"], ["L", "next not within"], ["T", "trace a value"], ["U", "units"], ["?", "all keys"]];
  return el("div", { class: "keys", "aria-hidden": "true" }, el("span", { class: "cap" }, "Keys"), ...list.flatMap(([key, what]) => [el("kbd", {}, key), el("span", {}, what)]));
}
