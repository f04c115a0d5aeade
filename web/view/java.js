import { letters } from "../state/source.js";
import { el, fragment, mark, write } from "./dom.js";
import { Editing } from "./editing.js";
import { Field } from "./field.js";
import { Row } from "./working.js";

const GIVES = "What it gives, such as  crossing [degC], curve: table(angle [deg], lash [mm]), words: text";

/** A line as it is compiled: letters that nobody would see, or that turn others about, are said. @param {string} line */
const stated = (line) => letters(line).map((one) => (one.code ? el("b", { class: "letter" }, one.code) : one.text));

/** A clause in Java: its source, how its run stands, what it gives and what it showed. */
export class JavaBody {
  #shape = "";
  #drawnSource = null;
  #drawnShown = "";
  #runsNext = false;
  /** @type {Map<string, Row>} */
  #rows = new Map();
  #body = el("tbody");
  #caption = el("caption", { class: "unseen" });
  #state = el("span", {});
  #run = el("button", { type: "button", class: "btn", onclick: () => this.run() }, "Run");
  #stop = el("button", { type: "button", class: "btn", onclick: () => this.clause.page.desk.stopJava(this.clause.id) }, "Stop");
  #wrong = el("div", { class: "java-wrong" });
  #source = el("pre", { class: "java-source", tabindex: "0" });
  #shown = el("div", { class: "java-shown" });
  #foot = el("p", { class: "java-foot quiet" });
  #gives = null;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.table = el(
      "table",
      { class: "lines" },
      this.#caption,
      el("colgroup", {}, el("col", { class: "c-name" }), el("col"), el("col", { class: "c-res" }), el("col", { class: "c-lim" })),
      this.#body,
    );
    const state = el("p", { class: "java-state" }, this.#state, this.#run, this.#stop);
    this.elements = [this.#source, state, this.#wrong, this.table, this.#shown, this.#foot];
  }

  update() {
    const { cell } = this.clause;
    const board = cell.board ?? {};
    write(this.#caption, `What ${cell.number} ${cell.title} gives`);
    this.#drawSource(cell.source.text ?? "", cell.problems ?? []);
    this.#drawGives(board.gives ?? []);
    this.#drawState(board);
    this.#drawShown(board.shown ?? []);
    write(this.#foot, [board.reads?.length > 0 ? `Reads ${board.reads.join(", ")}.` : "", board.note ?? "", board.run === "done" ? `Run in ${board.took} (at most ${board.limits}) with ${board.library}.` : ""].filter(Boolean).join(" "));
    this.#foot.hidden = this.#foot.textContent === "";
    this.#gives?.show(cell.source.gives ?? "");
    this.editing?.update();
    if (this.#runsNext) this.run();
  }

  /** @param {string} text @param {any[]} problems */
  #drawSource(text, problems) {
    const lines = new Set(problems.filter((one) => one.severity === "ERROR" && one.at === "/text").map((one) => one.line));
    mark(this.#source, "whole", this.clause.cell.board?.run === "not approved");
    const drawn = JSON.stringify([text, [...lines]]);
    this.#source.setAttribute("aria-label", `Source of clause ${this.clause.cell.number} ${this.clause.cell.title}`);
    this.#source.hidden = text.trim() === "";
    mark(this.#source, "edited", Boolean(this.editing));
    if (drawn === this.#drawnSource) return;
    this.#drawnSource = drawn;
    this.#source.replaceChildren(...text.split(/\r?\n/).map((line, at) => el("code", { class: lines.has(at + 1) ? "wrong-line" : null }, ...stated(line), "\n")));
  }

  /** @param {any[]} gives */
  #drawGives(gives) {
    const figures = gives.filter((one) => this.clause.page.desk.figure(one.name)?.cell === this.clause.id);
    const shape = JSON.stringify(figures.map((one) => one.name));
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#rows.clear();
      for (const [at, one] of figures.entries()) {
        const line = { line: at + 1, name: one.name, figure: one.name, kind: "value", formula: "" };
        const row = new Row(this.clause, line);
        row.show(line, [], "");
        this.#rows.set(one.name, row);
      }
      this.#body.replaceChildren(...[...this.#rows.values()].flatMap((row) => row.nodes));
      this.clause.page.reindex(this.clause);
    }
    this.table.hidden = this.#rows.size === 0;
  }

  /** @param {any} board */
  #drawState(board) {
    const { page, cell } = this.clause;
    const wrong = (cell.problems ?? []).filter((one) => one.severity === "ERROR");
    const waits = (cell.problems ?? []).find((one) => one.severity === "HINT" && one.at !== "/gives");
    const progress = [...this.#rows.keys()].map((name) => page.desk.figure(name)?.progress).find(Boolean);
    const limits = board.limits ? ` It may take ${board.limits}.` : "";
    const words = {
      empty: "No source yet. Press Enter to write one.",
      "not approved": `This Java has not been approved on this machine, so it is not run. Run approves exactly the source above.${limits}`,
      running: `Running${progress ? `, ${progress}` : ""}.${limits}`,
      failed: "The run gave nothing.",
      waiting: waits?.message ?? "Waits for what it reads.",
      done: "",
    };
    write(this.#state, words[board.run] ?? "");
    this.#state.hidden = this.#state.textContent === "";
    this.#run.hidden = !(board.run === "not approved" || board.run === "failed");
    write(this.#run, board.run === "failed" ? "Run again" : "Run");
    this.#stop.hidden = board.run !== "running";
    mark(this.#state, "asks", board.run === "not approved");
    this.#wrong.replaceChildren(...wrong.map((one) => el("p", { class: "problem" }, one.at && el("span", { class: "where" }, one.at === "/gives" ? "gives " : `line ${one.line} `), el("strong", {}, one.message), ` ${one.wayOut ?? ""}`)));
  }

  /** @param {any[]} shown */
  #drawShown(shown) {
    const { isNarrow } = this.clause.page;
    const drawn = JSON.stringify([shown, isNarrow]);
    if (drawn === this.#drawnShown) return;
    this.#drawnShown = drawn;
    this.#shown.replaceChildren(...shown.map((one) => this.#one(one, isNarrow ? "0" : null)));
  }

  /** @param {any} one @param {string | null} scrolls "0" where the picture does: only that is reached by Tab */
  #one(one, scrolls) {
    if (one.sort === "svg") return el("figure", { class: "chart" }, el("div", { class: "chart-picture", tabindex: scrolls, role: "group", "aria-label": "Chart" }, fragment(one.text)));
    if (one.sort !== "table") return el("pre", { class: one.sort === "error" ? "java-printed error" : "java-printed" }, one.text);
    return el(
      "div",
      { class: "java-table", tabindex: "0", role: "group", "aria-label": "Table" },
      el("table", { class: "t chart-numbers" }, el("thead", {}, el("tr", {}, ...one.heads.map((head) => el("th", { scope: "col" }, head)))), el("tbody", {}, ...one.rows.map((row) => el("tr", {}, ...row.map((text) => el("td", {}, text)))))),
    );
  }

  /** Approves the source as it is shown and runs it; what is being typed is kept first. */
  run() {
    const { desk } = this.clause.page;
    const { cell } = this.clause;
    this.editing?.rest();
    this.#runsNext = Boolean(desk.outbox.pending(cell.id, "/text")) || (this.editing !== undefined && this.editing !== null && this.editing.now !== (cell.source.text ?? ""));
    if (!this.#runsNext && cell.board?.hash) desk.runJava(cell.id, cell.board.hash);
  }

  names() {
    return this.#rows.keys();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    for (const name of names) this.#rows.get(name)?.figure();
    this.#drawState(this.clause.cell.board ?? {});
  }

  /** @param {string} name */
  place(name) {
    return this.#rows.get(name)?.tr;
  }

  /** @param {number} [line] */
  open(line) {
    const { cell } = this.clause;
    this.#gives = new Field({ label: "What the source gives", look: "write long", placeholder: GIVES, keep: (text) => this.clause.page.desk.put(cell.id, "/gives", text.trim()) });
    this.#gives.show(cell.source.gives ?? "");
    const head = el("p", { class: "java-gives" }, el("span", { class: "cap" }, "gives"), this.#gives.input);
    this.editing = new Editing(this.clause, { prose: false, java: true, tokens: [], problems: cell.problems ?? [], run: () => this.run() });
    this.editing.element.prepend(head);
    this.clause.content.prepend(this.editing.element);
    mark(this.#source, "edited", true);
    return this.editing.open(line);
  }

  close() {
    this.editing?.close();
    this.editing = null;
    this.#gives = null;
    this.update();
  }
}
