import { label } from "../state/terms.js";
import { answerOf, waitsOn } from "../state/figures.js";
import { freshMark } from "../state/places.js";
import { el, mark, write } from "./dom.js";
import { append, Entry, listWords, partChoices, partName } from "./entry.js";
import { Quantity } from "./quantity.js";
import { errorGlyph, Judgements, verdictClass } from "./verdict.js";

const RULES = [["", "as the sheet's"], ["simple", "simple acceptance"], ["guarded", "guarded by U"], ["probability", "95 % probability"]];

/** A row of the schedule before anything is entered in it. @param {readonly any[]} rows */
export function blankFit(rows) {
  const ends = () => ({ low: "", high: "" });
  const size = () => ({ of: "", measured: "", new: ends(), worn: ends() });
  return { id: freshMark("r", rows), item: String(rows.length + 1), group: "", what: "", part: "", mate: "", measured: "", unit: "mm", new: ends(), worn: ends(), authority: "", condition: "", rule: "", sizes: [size(), size()] };
}

/** Schedule of fits and clearances: reference, fit, limits new and worn, measured, verdict, which part to renew. */
export class FitsBody {
  /** @type {Line[]} */
  #lines = [];
  #shape = "";
  #caption = el("caption", { class: "unseen" });
  #table;
  #worn;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const head = (text, look) => el("th", { scope: "col", class: look }, text);
    this.#worn = head("", "ends");
    this.#table = el(
      "table",
      { class: "t fits" },
      this.#caption,
      el("colgroup", {}, el("col", { class: "c-item" }), el("col"), el("col", { class: "c-new" }), el("col", { class: "c-new" }), el("col", { class: "c-res" }), el("col", { class: "c-lim" })),
      el("thead", {}, el("tr", {}, head("Item"), head("Fit"), head("New", "ends"), this.#worn, head("Measured", "result"), head("Against limits", "lim"))),
    );
    this.empty = el("p", { class: "quiet" });
    this.elements = [this.#table, this.empty];
  }

  get #rows() {
    return this.clause.cell.source.rows ?? [];
  }

  update() {
    const { cell } = this.clause;
    const { terms } = this.clause.page;
    write(this.#worn, label("worn", terms));
    write(this.empty, label("fitsEmpty", terms));
    write(this.#caption, `Schedule of fits and clearances, clause ${cell.number} ${cell.title}`);
    const shape = JSON.stringify([this.#rows, cell.board, cell.problems, this.clause.page.desk.sheet.record.parts]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#build();
    }
    this.editing?.update();
    this.clause.page.reindex(this.clause);
  }

  #build() {
    const inUse = this.#table.contains(document.activeElement) ? /** @type {HTMLElement} */ (document.activeElement).dataset.value : undefined;
    this.#lines = [];
    const bodies = [];
    let group = null;
    this.#rows.forEach((row, index) => {
      if (!group || (row.group ?? "") !== group.name) {
        group = { name: row.group ?? "", body: el("tbody") };
        if (group.name) group.body.append(el("tr", { class: "group" }, el("th", { scope: "rowgroup", colspan: 6 }, group.name)));
        bodies.push(group.body);
      }
      group.body.append(...this.#row(row, index));
    });
    for (const old of [...this.#table.tBodies]) old.remove();
    this.#table.append(...bodies);
    this.#table.hidden = this.#lines.length === 0;
    this.empty.hidden = this.#lines.length > 0;
    for (const line of this.#lines) line.figure();
    if (inUse) this.#lines.find((line) => line.name === inUse)?.quantity.button.focus({ preventScroll: true });
  }

  #row(row, index) {
    const { record } = this.clause.page.desk.sheet;
    const board = this.clause.cell.board?.rows?.[index] ?? {};
    const pair = [partName(record, row.part), partName(record, row.mate)].filter(Boolean).join(" in ");
    const under = [row.condition, row.authority || "engineer's own"].filter(Boolean).join("; ");
    const about = el("td", { class: "about" }, el("span", { class: "what" }, row.what || pair || "not named"), row.what && pair && el("span", { class: "with" }, pair), el("span", { class: "with" }, under));
    const line = new Line(this.clause, row, board, `/rows/${index}`, el("th", { scope: "row", class: "item" }, el("span", { class: "balloon" }, row.item || String(index + 1))), about);
    this.#lines.push(line);
    const nodes = [line.tr];
    (row.sizes ?? []).forEach((size, at) => {
      if (!size.measured) return;
      const sized = board.sizes?.[at] ?? {};
      const of = partName(record, size.of || (at === 0 ? row.part : row.mate)) || `part ${at + 1}`;
      const used = sized.used ? el("span", { class: "with" }, `${sized.used} of its wear allowance used`) : null;
      const part = new Line(this.clause, { ...size, unit: row.unit }, sized, `/rows/${index}/sizes/${at}`, el("td", { class: "item" }), el("th", { scope: "row", class: "about size" }, el("span", { class: "what" }, of), used));
      this.#lines.push(part);
      nodes.push(part.tr);
    });
    if (board.advice) nodes.push(el("tr", { class: "advice" }, el("td", {}), el("td", { colspan: 5 }, board.advice)));
    // a unit that is none is said of the row once, not of each limit that is in it
    const said = new Set();
    const wrong = (this.clause.cell.problems ?? []).filter((one) => (one.at ?? "").startsWith(`/rows/${index}/`) && !said.has(one.message) && said.add(one.message));
    if (wrong.length > 0) {
      const words = wrong.flatMap((one) => [el("span", { class: "where" }, fieldWord(one.at)), el("strong", {}, one.message), ` ${one.wayOut ?? ""} `]);
      nodes.push(el("tr", { class: "says-err" }, el("td", {}), el("td", { colspan: 5 }, ...words)));
    }
    return nodes;
  }

  names() {
    return this.#lines.map((line) => line.name).filter(Boolean);
  }

  /** A field of it is typed in. */
  previewed() {
    this.editing?.previewed();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    this.editing?.previewed();
    const some = new Set(names);
    for (const line of this.#lines) {
      if (some.has(line.name)) line.figure();
    }
  }

  open() {
    const { clause } = this;
    this.editing = new Entry(clause, {
      hint: label("fitsHint", this.clause.page.terms),
      groups: () => this.#rows.map((row, index) => this.#group(row, index)),
      more: [["another fit", () => append(clause, "/rows", blankFit(this.#rows))]],
      first: () => this.#rows.length === 0 && append(clause, "/rows", blankFit([])),
    });
    clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  /** @param {number} index of the row */
  #board(index) {
    return this.clause.cell.board?.rows?.[index] ?? {};
  }

  #group(row, index) {
    const parts = partChoices(this.clause.page.desk.sheet.record);
    const place = `/rows/${index}`;
    const limits = (at, of) => [
      { at: `${at}/new/low`, caption: `New, least${of}` },
      { at: `${at}/new/high`, caption: `New, greatest${of}` },
      { at: `${at}/worn/low`, caption: `Worn, least${of}` },
      { at: `${at}/worn/high`, caption: `Worn, greatest${of}` },
    ];
    const sizes = [0, 1].flatMap((at) => {
      const name = partName(this.clause.page.desk.sheet.record, row.sizes?.[at]?.of || (at === 0 ? row.part : row.mate));
      const of = `, ${name || (at === 0 ? "part" : "mate")}`;
      return [{ at: `${place}/sizes/${at}/measured`, caption: `Size measured${of}`, look: "whole", gives: () => this.#board(index).sizes?.[at]?.figure ?? "" }, ...limits(`${place}/sizes/${at}`, of)];
    });
    return {
      legend: `Fit ${row.item || index + 1}`,
      fields: [
        { at: `${place}/item`, caption: "Item" },
        { at: `${place}/group`, caption: "Stands under" },
        { at: `${place}/what`, caption: "What is fitted or cleared", look: "long" },
        { at: `${place}/part`, caption: "Part", choices: parts, look: "long" },
        { at: `${place}/mate`, caption: "Mate", choices: parts, look: "long" },
        { at: `${place}/measured`, caption: "Measured: a value, a name, or such as bore - journal", look: "long", gives: () => this.#board(index).figure ?? "" },
        { at: `${place}/unit`, caption: "Unit" },
        { at: `${place}/condition`, caption: "Condition: cold, hot, free ..." },
        ...limits(place, ""),
        { at: `${place}/authority`, caption: "Whose limits: document, page, amendment", look: "long" },
        { at: `${place}/rule`, caption: "Rule", choices: RULES, look: "long" },
        ...sizes,
      ],
      words: listWords(this.clause, "/rows", index, "fit"),
    };
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

const WORDS = { measured: "measured", low: "least", high: "greatest", unit: "unit", rule: "rule" };

/** The field that a place is, in words. @param {string} at */
function fieldWord(at) {
  const steps = at.split("/");
  const state = steps.includes("new") ? "new, " : steps.includes("worn") ? "worn, " : "";
  const size = steps.includes("sizes") ? (steps[steps.indexOf("sizes") + 1] === "0" ? "part: " : "mate: ") : "";
  return `${size}${state}${WORDS[steps[steps.length - 1]] ?? steps[steps.length - 1]}`;
}

/** A measured value between its limits: a fit, or the size of one of its parts. */
class Line {
  #lim = el("td", { class: "lim" });
  #said = el("span", { class: "waiton" });
  #standing = el("span", { class: "with" });

  constructor(clause, source, board, place, ...heads) {
    this.clause = clause;
    this.page = clause.page;
    this.source = source;
    this.name = source.measured && board.figure ? board.figure : "";
    this.quantity = new Quantity(this.name, (name) => this.page.trace(name), source.what || "the size");
    this.judgements = new Judgements(this.#lim);
    this.#lim.append(this.#said);
    this.of = el("span", { class: "cap of" });
    this.quantity.element.prepend(this.of);
    write(this.#standing, board.standing ?? "");
    this.tr = el(
      "tr",
      { id: this.name ? `figure-${this.name}` : null, class: place.includes("/sizes/") ? "of-part" : null },
      ...heads,
      el("td", { class: "ends" }, ...ends(board.new, source.new, source.unit)),
      el("td", { class: "ends" }, ...ends(board.worn && wornOnly(board, source), source.worn, source.unit)),
      el("td", { class: "result" }, this.quantity.element),
      this.#lim,
    );
  }

  figure() {
    const figure = this.name ? this.page.desk.figure(this.name) : undefined;
    const answer = answerOf(figure);
    this.quantity.show(answer.shown, answer.none || (this.source.measured ? "" : "not measured"));
    write(this.of, answer.of);
    this.of.hidden = answer.of === "";
    this.judgements.show(answer.limits);
    // behind the strips, whose number may have changed
    if (this.#lim.lastChild !== this.#standing) this.#lim.append(this.#standing);
    const kind = verdictClass(figure?.verdict);
    mark(this.quantity.element, "ringed", kind === "outside" || kind === "not-proven");
    mark(this.quantity.element, "not-proven", kind === "not-proven");
    if (figure?.state === "error") this.#said.replaceChildren(el("span", { class: "verdict error" }, errorGlyph(), "in error"));
    else if (figure?.state === "waiting") write(this.#said, waitsOn(figure, (name) => this.page.desk.figure(name)));
    else write(this.#said, "");
    const on = this.page.isTraced(this.name);
    mark(this.tr, "traced", on);
    this.quantity.traced(on);
  }
}

/** The worn limit shows the ends that were given; one that stays as new is not said twice. */
function wornOnly({ worn }, source) {
  return { low: source.worn?.low ? worn.low : "", high: source.worn?.high ? worn.high : "", unit: worn.unit };
}

/** The ends of a limit, upper over lower as on a drawing: as the server shows them, else as typed. */
function ends(shown, typed, unit) {
  const low = shown?.low || typed?.low || "";
  const high = shown?.high || typed?.high || "";
  if (!low && !high) return [el("span", { class: "none-given" }, "–")];
  const line = (text, word) => el("span", {}, el("span", { class: "unseen" }, `${word} `), text);
  return [high && line(high, "greatest"), low && line(low, "least"), el("span", { class: "unseen" }, shown?.unit || unit || "")];
}
