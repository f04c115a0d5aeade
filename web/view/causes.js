import { answerOf, waitsOn } from "../state/figures.js";
import { freshMark } from "../state/places.js";
import { el, mark, svg, write } from "./dom.js";
import { append, Entry, listWords } from "./entry.js";
import { Quantity } from "./quantity.js";
import { errorGlyph } from "./verdict.js";

const MARKS = [["", "not weighed"], ["for", "for"], ["against", "against"], ["neutral", "neutral"], ["not measured", "not measured"]];
const STANDINGS = [["open", "open"], ["ruled out", "ruled out"]];

/** A candidate cause before anything is entered. @param {readonly any[]} causes */
export function blankCause(causes) {
  return { id: freshMark("k", causes), name: "", mechanism: "", contribution: "", standing: "open", fact: "" };
}

/** A piece of evidence before anything is entered. @param {readonly any[]} evidence */
export function blankEvidence(evidence) {
  return { id: freshMark("e", evidence), text: "", clause: "", marks: {} };
}

/** Candidate causes against the evidence; what each adds against the size needed; what is left unexplained. */
export class CausesBody {
  #shape = "";
  /** @type {Answer[]} */
  #answers = [];
  #frame = el("div", { class: "board-frame", role: "region", tabindex: "0" });
  #effect = el("div", { class: "effect" });
  #why = el("div", { class: "why" });

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.empty = el("p", { class: "quiet" }, "No cause yet. Press Enter and enter the effect that was observed and how much of it the damage needs, then the candidate causes with what each adds, then the evidence and what it says of each.");
    this.elements = [this.#frame, this.#effect, this.#why, this.empty];
  }

  get #source() {
    return this.clause.cell.source;
  }

  get #causes() {
    return this.#source.causes ?? [];
  }

  get #evidence() {
    return this.#source.evidence ?? [];
  }

  update() {
    const { cell } = this.clause;
    const { cells } = this.clause.page.desk.sheet;
    const numbers = this.#evidence.map((one) => cells.get(one.clause)?.number ?? "");
    const shape = JSON.stringify([this.#source, cell.board, cell.problems, cell.number, numbers]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#build();
    }
    this.editing?.update();
    this.clause.page.reindex(this.clause);
  }

  #build() {
    this.#answers = [];
    const some = this.#causes.length > 0;
    this.#frame.setAttribute("aria-label", `Causes and evidence of clause ${this.clause.cell.number}`);
    this.#frame.replaceChildren(...(some ? [this.#board()] : []));
    this.#effect.replaceChildren(...this.#effects());
    const why = [this.#mechanisms(), ...this.#reasons()].filter(Boolean);
    this.#why.replaceChildren(...why);
    this.#frame.hidden = !some;
    this.#why.hidden = why.length === 0;
    this.empty.hidden = some || this.#answers.length > 0;
    for (const answer of this.#answers) answer.figure();
  }

  #board() {
    const head = this.#causes.map((cause) => el("th", { scope: "col" }, cause.name || "not named"));
    const across = (caption, cells, look) => el("tr", { class: look }, el("th", { scope: "row" }, caption), ...cells);
    const evidence = this.#evidence.map((one) => across(this.#evidenceHead(one), this.#causes.map((cause) => el("td", {}, markOf(one.marks?.[cause.id]))), ""));
    const board = this.clause.cell.board?.causes ?? [];
    const effect = this.#source.effect ? `Adds to: ${this.#source.effect}` : "Adds";
    const adds = this.#causes.map((cause, at) => {
      const cell = el("td", {});
      if (!cause.contribution) cell.append(el("span", { class: "none-given" }, "no size entered"));
      else this.#answers.push(new Answer(this.clause, board[at]?.figure ?? "", cell, `what is added by ${cause.name}`));
      return cell;
    });
    const enough = board.map((one) => el("td", {}, one.enough ? el("span", { class: `enough ${one.enough.replace(" ", "-")}` }, one.enough) : el("span", { class: "none-given" }, "–")));
    const standing = this.#causes.map((_, at) => el("td", {}, board[at]?.standing ?? "open"));
    return el(
      "table",
      { class: "t causes" },
      el("caption", { class: "unseen" }, `Candidate causes of clause ${this.clause.cell.number} across, evidence down`),
      el("thead", {}, el("tr", {}, el("th", { scope: "col" }, "Evidence"), ...head)),
      el("tbody", {}, ...evidence),
      el("tbody", { class: "sums" }, across(effect, adds, "adds"), across("Big enough for the damage", enough, ""), across("Standing", standing, "standing")),
    );
  }

  #evidenceHead(one) {
    return el("span", {}, one.text || "not named", this.#clauseLink(one.clause));
  }

  #clauseLink(id) {
    const number = this.clause.page.desk.cell(id)?.number;
    if (!number) return null;
    const go = (event) => (event.preventDefault(), this.clause.page.go(id));
    return el("span", {}, " ", el("a", { class: "ref", href: `#clause-${id}`, onclick: go }, number));
  }

  /** What was observed, what is needed, what is left: the answers of the board. */
  #effects() {
    const { board } = this.clause.cell;
    const rows = [
      ["observed", "Effect observed"],
      ["needed", "Size needed for the damage"],
      ["unexplained", "Remainder unexplained"],
    ].flatMap(([key, caption]) => {
      const entered = key === "unexplained" ? this.#source.observed && this.#causes.some((cause) => cause.contribution) : this.#source[key];
      if (!entered && key === "observed" && this.#source.needed) return [this.#unread(caption)];
      if (!entered || !board) return [];
      const under = key === "unexplained" ? "observed less what the causes that stand open add" : this.#source[key];
      const cell = el("td", { class: "result" });
      this.#answers.push(new Answer(this.clause, board[key], cell, caption));
      return [el("tr", { id: `figure-${board[key]}` }, el("th", { scope: "row", class: "about" }, el("span", { class: "what" }, caption), el("span", { class: key === "unexplained" ? "with" : "src plain" }, under)), cell, el("td", { class: "lim" }))];
    });
    if (rows.length === 0) return [];
    const problems = (this.clause.cell.problems ?? []).map((one) => el("li", {}, el("span", { class: "where" }, this.#fieldWord(one.at ?? "")), el("strong", {}, one.message), ` ${one.wayOut ?? ""}`));
    return [
      el("table", { class: "t" }, el("caption", { class: "unseen" }, "Effect, size needed, remainder"), el("colgroup", {}, el("col"), el("col", { class: "c-res" }), el("col", { class: "c-lim" })), el("tbody", {}, ...rows)),
      problems.length > 0 && el("ul", { class: "board-problems" }, ...problems),
    ].filter(Boolean);
  }

  /** An effect that nobody measured leaves no remainder to be stated. @param {string} caption */
  #unread(caption) {
    const about = el("th", { scope: "row", class: "about" }, el("span", { class: "what" }, caption), el("span", { class: "with" }, "without it no remainder can be stated"));
    return el("tr", {}, about, el("td", { class: "result" }, el("span", { class: "none" }, "not measured")), el("td", { class: "lim" }));
  }

  /** @param {string} at */
  #fieldWord(at) {
    const [, list, index] = at.split("/");
    return list === "causes" ? this.#causes[Number(index)]?.name || `cause ${Number(index) + 1}` : list;
  }

  /** How each cause comes to the damage, and the fact that rules it out. */
  #mechanisms() {
    const board = this.clause.cell.board?.causes ?? [];
    const told = this.#causes.map((cause, at) => ({ cause, ruledOut: board[at]?.standing === "ruled out" })).filter(({ cause, ruledOut }) => cause.mechanism || (ruledOut && cause.fact));
    if (told.length === 0) return null;
    const rows = told.map(({ cause, ruledOut }) =>
      el("tr", {}, el("th", { scope: "row" }, cause.name || "not named"), el("td", { "data-label": "Mechanism" }, cause.mechanism || "–", ruledOut && el("span", { class: "with" }, `ruled out: ${cause.fact}`))),
    );
    return el("table", { class: "t mechanisms" }, el("caption", {}, "How each comes to the damage"), el("thead", {}, el("tr", {}, ...["Cause", "Mechanism"].map((text) => el("th", { scope: "col" }, text)))), el("tbody", {}, ...rows));
  }

  /** Each mark that says something, with its reason and clause; first what has not been measured. */
  #reasons() {
    const rows = this.#evidence.flatMap((one) => this.#causes.map((cause) => ({ one, cause, mark: one.marks?.[cause.id] })).filter(({ mark: given }) => given?.mark && (given.mark !== "neutral" || given.reason)));
    if (rows.length === 0) return [];
    const open = rows.filter(({ mark: given }) => given.mark === "not measured");
    const rest = rows.filter(({ mark: given }) => given.mark !== "not measured");
    const row = ({ one, cause, mark: given }) => el("tr", {}, el("th", { scope: "row" }, cause.name || "not named"), el("td", { "data-label": "Evidence" }, this.#evidenceHead(one)), el("td", { "data-label": "Mark" }, markOf(given)), el("td", { "data-label": "Reason" }, given.reason || "no reason given"));
    const table = (caption, some) =>
      some.length > 0 &&
      el("table", { class: "t reasons" }, el("caption", {}, caption), el("thead", {}, el("tr", {}, ...["Cause", "Evidence", "Mark", "Reason"].map((text) => el("th", { scope: "col" }, text)))), el("tbody", {}, ...some.map(row)));
    return [table("Not measured yet", open), table("Reasons of the marks", rest)].filter(Boolean);
  }

  names() {
    return this.#answers.map((answer) => answer.name).filter(Boolean);
  }

  /** A field of it is typed in. */
  previewed() {
    this.editing?.previewed();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    this.editing?.previewed();
    const some = new Set(names);
    for (const answer of this.#answers) {
      if (some.has(answer.name)) answer.figure();
    }
  }

  open() {
    const { clause } = this;
    this.editing = new Entry(clause, {
      hint: "Count the effect positive in the sense in which it was found. Ruled out takes one decisive fact.",
      groups: () => [this.#head(), ...this.#causes.map((cause, at) => this.#causeFields(cause, at)), ...this.#evidence.map((one, at) => this.#evidenceFields(one, at))],
      more: [
        ["another cause", () => append(clause, "/causes", blankCause(this.#causes))],
        ["further evidence", () => append(clause, "/evidence", blankEvidence(this.#evidence))],
      ],
      first: () => this.#causes.length === 0 && append(clause, "/causes", blankCause([])),
    });
    clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  #head() {
    const fields = [
      { at: "/effect", caption: "Effect to be explained", look: "long" },
      { at: "/unit", caption: "Unit" },
      { at: "/observed", caption: "Observed: a value or a name", look: "long", gives: () => this.clause.cell.board?.observed ?? "" },
      { at: "/needed", caption: "Size the damage needs", look: "long", gives: () => this.clause.cell.board?.needed ?? "" },
    ];
    return { legend: "The effect", fields };
  }

  #causeFields(cause, at) {
    const place = `/causes/${at}`;
    const fields = [
      { at: `${place}/name`, caption: "Cause", look: "long" },
      { at: `${place}/contribution`, caption: "Adds: a value or a name; empty where no size is known", look: "long", gives: () => this.clause.cell.board?.causes?.[at]?.figure ?? "" },
      { at: `${place}/mechanism`, caption: "Mechanism: how it comes to the damage", look: "long" },
      { at: `${place}/standing`, caption: "Standing", choices: STANDINGS, otherwise: "open" },
      { at: `${place}/fact`, caption: "Decisive fact, where ruled out" },
    ];
    return { legend: `Cause ${at + 1}`, fields, words: listWords(this.clause, "/causes", at, "cause") };
  }

  #evidenceFields(one, at) {
    const place = `/evidence/${at}`;
    const { order, cells } = this.clause.page.desk.sheet;
    const clauses = order.map(({ id }) => cells.get(id)).filter((cell) => cell.kind !== "section" && cell.id !== this.clause.id);
    const choices = [["", "none"], ...clauses.map((cell) => [cell.id, `${cell.number} ${cell.title}`])];
    const marks = this.#causes.flatMap((cause) => {
      const name = cause.name || "not named";
      return [
        { at: `${place}/marks/${cause.id}/mark`, caption: `${name}: mark`, choices: MARKS },
        { at: `${place}/marks/${cause.id}/reason`, caption: `${name}: reason`, look: "wide" },
      ];
    });
    return {
      legend: `Evidence ${at + 1}`,
      fields: [{ at: `${place}/text`, caption: "Evidence", look: "long" }, { at: `${place}/clause`, caption: "Clause", choices, look: "long" }, ...marks],
      words: listWords(this.clause, "/evidence", at, "evidence"),
    };
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

/** One value of the board. */
class Answer {
  constructor(clause, name, cell, spoken) {
    this.page = clause.page;
    this.name = name;
    this.cell = cell;
    this.quantity = new Quantity(name, (one) => this.page.trace(one), spoken);
    this.said = el("span", { class: "waiton" });
    cell.append(this.quantity.element, this.said);
  }

  figure() {
    const figure = this.page.desk.figure(this.name);
    const answer = answerOf(figure);
    this.quantity.show(answer.shown, answer.none);
    if (figure?.state === "error") this.said.replaceChildren(el("span", { class: "verdict error" }, errorGlyph(), "in error"));
    else write(this.said, figure?.state === "waiting" ? waitsOn(figure, (name) => this.page.desk.figure(name)) : "");
    const on = this.page.isTraced(this.name);
    mark(this.cell, "traced", on);
    this.quantity.traced(on);
  }
}

const SHAPES = {
  for: () => [svg("circle", { class: "mk-full", cx: 10, cy: 10, r: 7.5 }), svg("path", { class: "mk-paper", d: "M6 10h8M10 6v8" })],
  against: () => [svg("circle", { class: "mk-ring", cx: 10, cy: 10, r: 7.5 }), svg("path", { class: "mk-line", d: "M6 10h8" })],
  neutral: () => [svg("circle", { class: "mk-dot", cx: 10, cy: 10, r: 1.8 })],
  "not measured": () => [svg("circle", { class: "mk-ring dashed", cx: 10, cy: 10, r: 7.5 })],
};

/** A mark as shape and word. @param {any} given */
function markOf(given) {
  const word = given?.mark || "";
  if (!word) return el("span", { class: "none-given" }, el("span", { class: "unseen" }, "not weighed"));
  return el("span", { class: `cause-mark ${word.replace(" ", "-")}` }, svg("svg", { viewBox: "0 0 20 20", width: 20, height: 20, "aria-hidden": "true", focusable: "false" }, ...SHAPES[word]()), el("span", {}, word));
}
