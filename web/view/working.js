import { answerOf } from "../state/figures.js";
import { cutAt } from "../state/source.js";
import { arrange, el, fragment, mark, write } from "./dom.js";
import { Editing } from "./editing.js";
import { Name, Quantity } from "./quantity.js";
import { errorGlyph, Judgements } from "./verdict.js";

/** A working: one row a line; name, formula with the numbers beneath, value, verdict against limits. */
export class WorkingBody {
  /** @type {Map<string, Row>} */
  #rows = new Map();
  #byName = new Map();
  #body = el("tbody");
  #caption = el("caption", { class: "unseen" });

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const head = ["Name", "Working", "Result", "Limits"].map((text) => el("th", { scope: "col" }, el("span", { class: "unseen" }, text)));
    this.table = el(
      "table",
      { class: "lines" },
      this.#caption,
      el("colgroup", {}, el("col", { class: "c-name" }), el("col"), el("col", { class: "c-res" }), el("col", { class: "c-lim" })),
      el("thead", {}, el("tr", {}, ...head)),
      this.#body,
    );
    this.empty = el("p", { class: "quiet" });
    this.elements = [this.table, this.empty];
  }

  update() {
    const { cell } = this.clause;
    write(this.#caption, `Lines of ${cell.number} ${cell.title}`);
    const preview = this.#preview();
    if (!preview) this.#draw(cell.lines ?? [], cell.problems ?? [], cell.source.text ?? "");
    this.editing?.update();
  }

  #preview() {
    const { preview } = this.clause.page.desk;
    return preview?.cell === this.clause.id ? preview : null;
  }

  /** @param {any} preview of the text being typed here */
  previewed(preview) {
    this.#draw(preview.lines, preview.problems, this.editing?.asked ?? "");
    this.editing?.previewed(preview);
  }

  /** @param {any[]} lines @param {any[]} problems @param {string} text */
  #draw(lines, problems, text) {
    const typed = text.split("\n");
    const shown = new Set(lines.map((line) => line.line));
    const bare = [...new Set(problems.filter((one) => one.severity === "ERROR" && !shown.has(one.line)).map((one) => one.line))];
    const all = [...lines, ...bare.map((line) => ({ line, name: "", figure: "", source: typed[line - 1] ?? "" }))];
    all.sort((a, b) => a.line - b.line);
    const used = new Set();
    const nodes = [];
    this.#byName.clear();
    for (const line of all) {
      const row = this.#row(line, used);
      const mine = problems.filter((problem) => problem.line === line.line);
      row.show(line, mine, typed[line.line - 1] ?? line.source ?? "");
      nodes.push(...row.nodes);
      if (line.figure) this.#byName.set(line.figure, [...(this.#byName.get(line.figure) ?? []), row]);
    }
    for (const [key] of this.#rows) {
      if (!used.has(key)) this.#rows.delete(key);
    }
    arrange(this.#body, nodes);
    this.table.hidden = nodes.length === 0;
    this.empty.hidden = nodes.length > 0 || Boolean(this.editing);
    const written = text.trim();
    if (nodes.length === 0) this.empty.replaceChildren(written ? el("span", { class: "src plain" }, written) : "No line yet. Press Enter to write one, such as  clearance [mm] = bore - journal");
    this.clause.page.reindex(this.clause);
  }

  /** @param {any} line @param {Set<string>} used */
  #row(line, used) {
    const stem = line.figure || line.name || `line ${line.line}`;
    let key = stem;
    for (let n = 2; used.has(key); n++) key = `${stem} ${n}`;
    used.add(key);
    let row = this.#rows.get(key);
    if (!row) {
      row = new Row(this.clause, line);
      this.#rows.set(key, row);
    }
    return row;
  }

  names() {
    return this.#byName.keys();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    for (const name of names) {
      for (const row of this.#byName.get(name) ?? []) row.figure();
    }
  }

  /** @param {string} name */
  place(name) {
    return this.#byName.get(name)?.[0]?.tr;
  }

  /** @param {number} [line] */
  open(line) {
    const { cell } = this.clause;
    this.editing = new Editing(this.clause, { prose: false, tokens: cell.tokens ?? [], problems: cell.problems ?? [] });
    this.clause.content.prepend(this.editing.element);
    this.empty.hidden = true;
    return this.editing.open(line);
  }

  close() {
    this.editing?.close();
    this.editing = null;
    this.empty.hidden = !this.table.hidden;
  }
}

const WORDS = { correlate: "correlated" };

/** One line of a working. */
export class Row {
  #name = el("th", { scope: "row", class: "name" });
  #unit = el("span", { class: "un" });
  #formula = el("div", { class: "formula" });
  /** @type {string | undefined} the mathematics that stands in it */
  #set = undefined;
  #numbers = el("div", { class: "numbers" });
  #given = el("div", { class: "given" });
  #lim = el("td", { class: "lim" });
  #wait = el("span", { class: "waiton" });
  #error = null;
  #hint = null;
  #line = null;
  #problems = [];
  #drawnWait = "";
  #drawnNumbers = "";
  #source = el("div", { class: "src plain" });

  /** @param {import("./clause.js").Clause} clause @param {any} line */
  constructor(clause, line) {
    this.clause = clause;
    this.page = clause.page;
    this.quantity = new Quantity(line.figure, (name) => this.page.trace(name));
    this.judgements = new Judgements(this.#lim);
    this.#lim.append(this.#wait);
    this.of = el("span", { class: "cap of" });
    this.quantity.element.prepend(this.of);
    const work = el("td", { class: "work" }, this.#formula, this.#source, this.#numbers, this.#given);
    this.tr = el("tr", { "data-line": "", id: line.figure ? `figure-${line.figure}` : null }, this.#name, work, el("td", { class: "result" }, this.quantity.element), this.#lim);
    this.tr.addEventListener("click", (event) => this.#pressed(event));
    this.nodes = [this.tr];
  }

  /** @param {any} line @param {any[]} problems @param {string} source */
  show(line, problems, source) {
    const before = this.#line;
    this.#line = line;
    this.tr.dataset.line = line.line;
    if (!before || before.name !== line.name || before.kind !== line.kind) {
      this.called = new Name(line.name, WORDS[line.kind] ?? "line");
      this.#name.replaceChildren(this.called.element, this.#unit);
    }
    // An input says where its value is from; the value itself stands in the result column.
    const formula = line.kind === "input" && line.given ? "" : (line.formula ?? "");
    if (this.#set !== formula) {
      this.#set = formula;
      this.#formula.replaceChildren(fragment(formula));
      this.page.wide.add(this.#formula);
    }
    const plain = !line.formula && line.kind !== "input" ? source : "";
    write(this.#source, plain);
    write(this.#given, line.given ? (line.kind === "input" ? `given: ${line.given}` : line.given) : "");
    mark(this.tr, "input", line.kind === "input");
    this.#given.hidden = !line.given;
    this.#numbers.hidden = line.kind !== "value";
    this.#problems = problems;
    this.source = source;
    this.figure();
  }

  figure() {
    const figure = this.#line.figure ? this.page.desk.figure(this.#line.figure) : undefined;
    // the unit that the value is shown in, which on a sheet of the other system is not the one declared
    write(this.#unit, this.#line.kind === "limit" ? "limit" : figure?.unit || this.#line.unit || "");
    const limited = this.#line.kind === "limit" ? this.page.desk.figure(this.#line.name) : undefined;
    this.called.show(figure ?? limited);
    this.#putIn(figure);
    const wrong = this.#problems.find((problem) => problem.severity === "ERROR") ?? (figure?.state === "error" ? figure.error : undefined);
    const hints = this.#problems.filter((problem) => problem.severity !== "ERROR");
    const answer = answerOf(wrong ? { ...figure, state: "error" } : figure);
    this.quantity.show(answer.shown, answer.none);
    write(this.of, answer.of);
    this.of.hidden = answer.of === "";
    this.judgements.show(answer.limits);
    this.#waits(figure, wrong, limited);
    mark(this.tr, "err", Boolean(wrong));
    // what is wrong says the line itself, with the place in it
    this.#source.hidden = this.#source.textContent === "" || Boolean(wrong);
    mark(this.tr, "wait", !wrong && figure?.state === "waiting");
    this.#says(wrong, hints);
    this.traced();
  }

  /** The numbers put in; those of the kept sheet stand until a preview brings its own. @param {any} figure */
  #putIn(figure) {
    const numbers = figure?.numbers ?? this.page.desk.sheet.figures.get(this.#line.figure)?.numbers ?? "";
    if (numbers === this.#drawnNumbers) return;
    this.#drawnNumbers = numbers;
    this.#numbers.replaceChildren(fragment(numbers));
    this.page.wide.add(this.#numbers);
  }

  traced() {
    const on = this.page.isTraced(this.#line.figure);
    mark(this.tr, "traced", on);
    this.quantity.traced(on);
  }

  /**
   * What it waits for; of a limit on a value of another clause, where the verdict stands.
   * @param {any} figure @param {any} wrong @param {any} limited
   */
  #waits(figure, wrong, limited) {
    const on = !wrong && figure?.state === "waiting" ? (figure.waitingOn ?? []) : [];
    const elsewhere = !wrong && limited ? { name: limited.name, cell: limited.cell, verdict: limited.verdict } : null;
    const drawn = JSON.stringify([on, Boolean(wrong), elsewhere]);
    if (drawn === this.#drawnWait) return;
    this.#drawnWait = drawn;
    const links = on.slice(0, 3).flatMap((one, index) => [index > 0 ? ", " : "on ", this.#linkTo(one)]);
    if (elsewhere) links.push(elsewhere.verdict ? `${elsewhere.verdict}: see ` : "see ", this.#linkTo(elsewhere));
    this.#wait.replaceChildren(...(wrong ? [el("span", { class: "verdict error" }, errorGlyph(), "in error")] : links));
  }

  #linkTo(one) {
    const number = this.page.desk.cell(one.cell)?.number;
    return el("a", { href: `#figure-${one.name}`, onclick: (event) => (event.preventDefault(), this.page.goToFigure(one.name)) }, number ? `${one.name}, clause ${number}` : one.name);
  }

  /** @param {any} wrong @param {any[]} hints */
  #says(wrong, hints) {
    const nodes = [this.tr];
    if (wrong) {
      const [before, here, behind] = cutAt(this.source, wrong);
      const words = [el("span", { class: "at" }, before, el("b", {}, here), behind), el("strong", {}, wrong.message), ` ${wrong.wayOut ?? ""}`];
      this.#error ??= el("tr", { class: "says-err" }, el("td", { colspan: 4 }));
      const drawn = JSON.stringify([this.source, wrong]);
      if (this.#error.drawn !== drawn) {
        this.#error.drawn = drawn;
        this.#error.firstChild.replaceChildren(...words);
      }
      nodes.push(this.#error);
    } else if (hints.length > 0) {
      this.#hint ??= el("tr", { class: "hint" }, el("td", { colspan: 4 }));
      write(this.#hint.firstChild, hints.map((hint) => `${hint.message} ${hint.wayOut ?? ""}`.trim()).join(" "));
      nodes.push(this.#hint);
    }
    const same = nodes.length === this.nodes.length && nodes.every((node, index) => node === this.nodes[index]);
    if (same) return;
    for (const old of this.nodes.slice(1)) old.remove();
    this.nodes = nodes;
    if (this.tr.parentNode && nodes[1]) this.tr.after(nodes[1]);
  }

  /** A press on name or formula opens the clause at this line; a press on a value traces it. @param {MouseEvent} event */
  #pressed(event) {
    const target = /** @type {Element} */ (event.target);
    if (target.closest("button, a") || String(getSelection()) !== "") return;
    if (target.closest(".name, .work")) this.page.open(this.clause.id, this.#line.line);
  }}
