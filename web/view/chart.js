import { el, fragment } from "./dom.js";
import { Entry } from "./entry.js";
import { SetOut } from "./set-out.js";

const KINDS = [["against", "a result against an input"], ["round", "readings round a wheel or a journal"], ["spread", "what an uncertainty comes from"], ["calculation", "the picture of a calculation"], ["histogram", "how the values of a column are spread"], ["scatter", "one column against another, with its line"], ["box", "a column by groups"], ["run", "a column in the order of its rows"]];

const FIELDS = {
  against: [
    ["of", "The result: a name, or a formula", "long"],
    ["input", "Against which input or reading", "long"],
    ["from", "From, with its unit"],
    ["to", "To, with its unit"],
    ["points", "Points worked out, 41 where none is given"],
  ],
  round: [
    ["of", "The readings: their name", "long"],
    ["axis", "Index that goes round, such as tooth"],
    ["count", "Stations to a turn, where not all were read"],
  ],
  spread: [["of", "The value: its name", "long"]],
  histogram: [
    ["of", "The column, such as wear.lash", "long"],
    ["count", "Stretches it is parted into, about; found where none are given"],
  ],
  scatter: [
    ["of", "The column that is drawn upwards, such as wear.lash", "long"],
    ["input", "Against which column, such as wear.hours", "long"],
  ],
  box: [
    ["of", "The column, such as wear.lash", "long"],
    ["input", "By the groups of which column, such as wear.batch", "long"],
  ],
  run: [
    ["of", "The column, such as wear.lash", "long"],
    ["input", "In the order of which column; as the rows stand where none is given", "long"],
  ],
  calculation: [["of", "The line that holds the calculation: its name", "long"]],
};

/** Fields that hold names or formulas: the words that fit stand beneath them. */
const NAMES = new Set(["of", "input"]);

/** A chart: the picture the server makes, what it says in words, and its numbers as a table. */
export class ChartBody {
  #shape = "";
  #figure = el("figure", { class: "chart" });
  /** @type {SetOut | null} */
  #numbers = null;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.elements = [this.#figure];
  }

  update() {
    const { chart, title } = this.clause.cell;
    const shape = JSON.stringify([chart, title, this.clause.page.isNarrow]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#figure.replaceChildren(...this.#drawn(chart ?? {}));
    }
    this.editing?.update();
  }

  /** @param {any} chart */
  #drawn(chart) {
    if (chart.problem) return [el("p", { class: "problem chart-problem" }, ...said(chart.problem))];
    if (!chart.svg) return [el("p", { class: "quiet" }, this.#wanted())];
    const rows = chart.rows ?? [];
    // on a phone the picture scrolls, and only what scrolls is reached by Tab
    const scrolls = this.clause.page.isNarrow ? "0" : null;
    return [
      el("div", { class: "chart-picture", tabindex: scrolls, role: "group", "aria-label": "Chart" }, fragment(chart.svg)),
      // the picture is labelled with all that it says: beneath it only what it cannot
      el("figcaption", {}, ...(chart.notes ?? []).map((note) => el("span", { class: "with" }, note))),
      ...(rows.length > 0 ? this.#table(chart) : []),
    ];
  }

  /** Where there is no picture: what is to be drawn, as far as it was named. */
  #wanted() {
    const { of, input, from, to } = this.clause.cell.source;
    if (!of) return "No chart yet. Press Enter and name what is to be drawn.";
    return `To be drawn: ${[of, input && `against ${input}`, from && `from ${from}`, to && `to ${to}`].filter(Boolean).join(" ")}.`;
  }

  /** The numbers, set out only when they are asked for; they stay so while they change. @param {any} chart */
  #table({ heads, rows }) {
    const table = el(
      "table",
      { class: "t chart-numbers" },
      el("caption", { class: "unseen" }, `Numbers of the chart, clause ${this.clause.cell.number} ${this.clause.cell.title}`),
      el("thead", {}, el("tr", {}, ...heads.map((text) => el("th", { scope: "col" }, text)))),
      el("tbody", {}, ...rows.map((row) => el("tr", {}, ...row.map((text, index) => (index === 0 ? el("th", { scope: "row" }, text) : el("td", {}, text)))))),
    );
    const box = el("div", { class: "chart-table", tabindex: "0", role: "group", "aria-label": "Numbers of the chart" }, table);
    this.#numbers = new SetOut({ out: "set out the numbers", away: "put the numbers away" }, box, this.#numbers?.isOut);
    return [this.#numbers.word, box];
  }

  names() {
    return [];
  }

  figures() {}

  open() {
    this.editing = new Entry(this.clause, { hint: "The chart follows what is written here.", groups: () => [this.#group()], more: [] });
    this.clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  #group() {
    const kind = this.clause.cell.source.chart || "against";
    const fields = (FIELDS[kind] ?? FIELDS.spread).map(([name, caption, look]) => ({ at: `/${name}`, caption, look, ...(NAMES.has(name) ? { gives: () => "" } : {}) }));
    return { legend: "Chart", fields: [{ at: "/chart", caption: "What it shows", choices: KINDS, otherwise: "against", look: "long" }, ...fields] };
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

/** @param {any} problem a sentence, or a message with its way out */
function said(problem) {
  return typeof problem === "string" ? [el("strong", {}, problem)] : [el("strong", {}, problem.message), ` ${problem.wayOut ?? ""}`];
}
