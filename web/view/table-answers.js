import { answerOf, waitsOn } from "../state/figures.js";
import { grouped } from "../state/table.js";
import { el, mark, write } from "./dom.js";
import { nameMark, Quantity } from "./quantity.js";
import { errorGlyph, Judgements } from "./verdict.js";

/** The worst row of each column that has a limit, in the result and limits columns like any other answer. */
export class TableAnswers {
  /** @type {Answer[]} */
  #answers = [];
  #shape = "";
  #body = el("tbody", {});
  #caption = el("caption", { class: "unseen" });

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const head = (text, look) => el("th", { scope: "col", class: look }, el("span", { class: "unseen" }, text));
    this.element = el(
      "table",
      { class: "t judged-columns" },
      this.#caption,
      el("colgroup", {}, el("col", { class: "c-rname" }), el("col"), el("col", { class: "c-res" }), el("col", { class: "c-lim" })),
      el("thead", { class: "unseen-head" }, el("tr", {}, head("Column", ""), head("Row", ""), head("Result", "result"), head("Limits", "lim"))),
      this.#body,
    );
  }

  get names() {
    return this.#answers.map((answer) => answer.name);
  }

  update() {
    const { cell } = this.clause;
    const judged = (cell.table?.columns ?? []).filter((column) => column.judged).map((column) => ({ name: column.figure, head: column.head }));
    write(this.#caption, `Worst rows of the columns that have limits, clause ${cell.number} ${cell.title}`);
    const shape = JSON.stringify(judged);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#answers = judged.map((one) => new Answer(this.clause, one));
      this.#body.replaceChildren(...this.#answers.map((answer) => answer.element));
    }
    this.element.hidden = this.#answers.length === 0;
    for (const answer of this.#answers) answer.draw();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    const some = new Set(names);
    for (const answer of this.#answers) if (some.has(answer.name)) answer.draw();
  }
}

class Answer {
  #lim = el("td", { class: "lim" });
  #said = el("div", { class: "waiton" });
  #which = el("td", { class: "about" });

  constructor(clause, { name, head }) {
    this.page = clause.page;
    this.name = name;
    this.quantity = new Quantity(name, (one) => this.page.trace(one), `${head}, the worst row`);
    this.judgements = new Judgements(this.#lim);
    this.#lim.prepend(this.#said);
    this.element = el("tr", { id: `figure-${name}` }, el("th", { scope: "row", class: "rname" }, nameMark(head)), this.#which, el("td", { class: "result" }, this.quantity.element), this.#lim);
  }

  draw() {
    const figure = this.page.desk.figure(this.name);
    const answer = answerOf(figure);
    const counts = figure?.counts ?? tally(figure?.elements ?? []);
    const many = ["outside", "not proven", "within"].filter((word) => counts[word]).map((word) => `${grouped(counts[word])} ${word}`).join(", ");
    write(this.#which, [answer.of ? `the worst: ${answer.of}` : "", many].filter(Boolean).join("; "));
    this.quantity.show(answer.shown, answer.none);
    this.judgements.show(answer.limits);
    if (figure?.state === "error") this.#said.replaceChildren(el("span", { class: "verdict error" }, errorGlyph(), "in error"));
    else if (figure?.state === "waiting") write(this.#said, waitsOn(figure, (one) => this.page.desk.figure(one)));
    else write(this.#said, "");
    const on = this.page.isTraced(this.name);
    mark(this.element, "traced", on);
    this.quantity.traced(on);
  }
}

/** How many have which verdict. @param {readonly { verdict?: string }[]} elements */
function tally(elements) {
  const counts = {};
  for (const { verdict } of elements) if (verdict) counts[verdict] = (counts[verdict] ?? 0) + 1;
  return counts;
}
