import { blockOf, pasted, storedIndex, textOf } from "../state/block.js";
import { placed } from "../state/places.js";
import { Rows } from "../state/rows.js";
import { captionOf, columnsOf, inForce, takenWith } from "../state/table.js";
import { el, write } from "./dom.js";
import { Entry } from "./entry.js";
import { PRINTED, Register } from "./register.js";
import { TableAnswers } from "./table-answers.js";
import { tableGroups, tableMore } from "./table-fields.js";
import { TableWords } from "./table-words.js";

/** A block beyond this goes the way of a file, whose size the server limits [characters]. */
const LARGE = 400_000;

/** A table: the answers of its limits, its rows as a register, and the words by which it is sorted, kept, filled. */
export class TableBody {
  #shape = "";
  #state = "";
  #columns = [];
  /** texts entered here that the rows from the server do not have yet, by row of the record and column */
  #typed = new Map();
  /** those of them that the sheet has kept */
  #kept = new Set();
  /** rows written beneath the last that the server has not given back yet */
  #rowsPut = new Set();
  /** whether rows are moving up or down: until they stand, nothing is entered, or it would go into another row */
  #moving = false;
  #caption = el("p", { class: "register-caption" });
  #force = el("p", { class: "register-force" });
  #foot = el("p", { class: "register-foot" });
  #more = el("p", { class: "register-more" });

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.rows = new Rows((from, count) => this.#fetch(from, count), () => this.#arrived());
    this.answers = new TableAnswers(clause);
    this.words = new TableWords(this);
    this.register = new Register({
      rows: this.rows,
      columns: () => this.#columns,
      isWritten: () => this.isPlain && this.#columns.some((column) => !column.formula),
      isJudged: () => (this.source.limits ?? []).some(Boolean),
      typed: (line, column) => this.#typed.get(this.#key(line, column)),
      isSettled: () => this.isSettled,
      keep: (line, column, text) => this.#keep(line, column, text),
      paste: (text, at) => this.#paste(text, at),
      copy: (at) => textOf([[this.#textAt(at.line, at.column)]]),
      press: (column) => this.words.column(column),
      moved: (at) => this.#moved(at),
    });
    this.empty = el("p", { class: "quiet" }, "No column yet. Press Enter and name the table and its columns, or ", el("button", { type: "button", class: "word", onclick: () => this.words.file.click() }, "take in a file"), ": its heads become the columns, such as lash [thou]. Or ", el("button", { type: "button", class: "word", onclick: () => this.words.fromShelf() }, "fill it from the shelf"), ", with figures of its other records.");
    this.elements = [this.answers.element, el("div", { class: "register" }, this.words.element, this.#caption, this.#force, this.register.element, this.#foot, this.#more), this.empty];
    this.#drops(this.register.element.parentElement);
    this.#drops(this.empty);
    clause.page.desk.listen((event, detail) => this.#heard(event, detail));
  }

  get source() {
    return this.clause.cell.source;
  }

  /** A file dropped here is taken in, after a look at it. @param {Element} place */
  #drops(place) {
    const files = (event) => [...(event.dataTransfer?.types ?? [])].includes("Files");
    place.addEventListener("dragover", (event) => files(event) && event.preventDefault());
    place.addEventListener("drop", (event) => {
      const [file] = /** @type {DragEvent} */ (event).dataTransfer?.files ?? [];
      if (!file) return;
      event.preventDefault();
      this.words.takeIn(file);
    });
  }

  /** What the server says of the rows: how many, what is missing. @returns {any} */
  get table() {
    return this.clause.cell.table ?? {};
  }

  get columns() {
    return this.#columns;
  }

  /** Whether the rows stand as in the record, so that one can be written beneath the last. */
  get isPlain() {
    const view = this.source.view ?? {};
    return !(view.sort?.length > 0) && !view.filter && !(view.group?.length > 0) && !this.source.from?.table;
  }

  /** The address of the rows. */
  get address() {
    return `/api/records/${location.pathname.split("/").at(-1)}/tables/${encodeURIComponent(this.clause.id)}`;
  }

  /** Order and choice as the address has them. */
  asked() {
    const { sort = [], filter = "", group = [] } = this.source.view ?? {};
    const asked = new URLSearchParams();
    for (const one of sort) asked.append("sort", one);
    for (const one of group) asked.append("group", one);
    if (filter) asked.set("filter", filter);
    return asked;
  }

  async #fetch(from, count) {
    const asked = this.asked();
    asked.set("from", String(from));
    asked.set("count", String(count));
    try {
      const answer = await fetch(`${this.address}?${asked}`, { headers: { Accept: "application/json" } });
      const rows = await answer.json();
      return answer.ok ? rows : { problem: rows };
    } catch {
      return { problem: { message: "The rows cannot be had: the line to the server is lost.", wayOut: "" } };
    }
  }

  update() {
    const { cell, source } = this;
    this.#columns = columnsOf(source, this.table);
    const shape = JSON.stringify([source.columns, source.view?.sort, source.limits?.some(Boolean), source.from?.table]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.register.drawHeads();
    }
    const state = JSON.stringify([cell.revision, source.view, this.table, cell.worst]);
    if (state !== this.#state) {
      this.#state = state;
      this.#moving ||= this.isPlain && this.rows.total !== (this.table.rows ?? 0);
      this.#kept = new Set([...this.#typed.keys()].filter((key) => !this.#isUnderWay(key)));
      this.#renew();
    } else this.#moving = false;
    this.#drawCaption();
    write(this.register.said, `${cell.title || "Table"}, clause ${cell.number}. ${captionOf(source, this.table)}`);
    const some = this.#columns.length > 0;
    this.register.element.parentElement.hidden = !some;
    this.empty.hidden = some;
    this.answers.update();
    this.words.update();
    this.register.draw();
    this.#sayForce();
    this.editing?.update();
    this.clause.page.reindex(this.clause);
  }

  get cell() {
    return this.clause.cell;
  }

  /** Asks for the rows anew, once for all that one message of the server changed. */
  #renew() {
    this.rows.renew();
    this.#asking = true;
    queueMicrotask(() => (this.#asking = false));
  }

  #asking = false;

  #arrived() {
    this.#moving = false;
    for (const key of this.#kept) {
      const [row] = JSON.parse(key);
      if (this.isPlain && this.rows.isOld(row - 1)) continue;
      this.#typed.delete(key);
      this.#kept.delete(key);
      this.#rowsPut.delete(row);
    }
    this.register.draw();
    this.#sayForce();
  }

  #drawCaption() {
    const { record } = this.clause.page.desk.sheet;
    const taken = takenWith(this.source, record.instruments ?? [], record.title_block?.date ?? "");
    const said = captionOf(this.source, this.table);
    const shape = JSON.stringify([said, taken]);
    if (shape === this.#captioned) return;
    this.#captioned = shape;
    this.#caption.replaceChildren(said, ...taken.map(({ text, overdue }) => el("span", { class: overdue ? "overdue" : "" }, ` ${text}.`)));
  }

  #sayForce() {
    const { problem } = this.rows;
    const force = inForce(this.source.view, this.rows.passing, this.table.rows ?? 0);
    if (problem) this.#force.replaceChildren(el("strong", {}, problem.message), ` ${problem.wayOut ?? ""} `, this.words.plain());
    else if (force !== this.#forced) this.#force.replaceChildren(...(force ? [`${force.charAt(0).toUpperCase()}${force.slice(1)}. `, this.words.plain(), ...(this.source.view?.group?.length > 0 ? [" ", this.words.setOut()] : [])] : []));
    this.#forced = problem ? undefined : force;
    this.#force.hidden = !problem && force === "";
    const beyond = this.rows.total - PRINTED;
    write(this.#more, beyond > 0 ? `On paper the first ${PRINTED} lines; ${beyond} more are in the record.` : "");
  }

  #forced;
  #captioned = "";

  // what is entered

  /** @param {number} line @param {number} column */
  #key(line, column) {
    return JSON.stringify([this.rows.line(line)?.row ?? this.#newRow(line), column]);
  }

  /** Whether the sheet has not acknowledged this value yet. @param {string} key */
  #isUnderWay(key) {
    const [row, column] = JSON.parse(key);
    return Boolean(this.clause.page.desk.outbox.pending(this.clause.id, `/rows/${row - 1}/${this.#stored()[column]}`));
  }

  /** Whether a value can be entered now. */
  get isSettled() {
    if (this.#moving) this.clause.page.say("One moment: the rows are being put in order.");
    return !this.#moving;
  }

  /** Rows out and in, upon the rows as they are seen here. @param {{from: number, remove: number, insert: string[][]}} value */
  #splice(value) {
    this.#moving = value.remove !== value.insert.length;
    this.clause.page.desk.rows(this.clause.id, value, this.rows.revision);
  }

  /** Number of the row that is written on a line beneath the last. @param {number} line */
  #newRow(line) {
    return this.isPlain ? line + 1 : 0;
  }

  #textAt(line, column) {
    return this.#typed.get(this.#key(line, column)) ?? this.rows.line(line)?.cells[column] ?? "";
  }

  #stored() {
    return storedIndex(this.#columns);
  }

  /** @param {number} line @param {number} column @param {string} text */
  #keep(line, column, text) {
    const { desk } = this.clause.page;
    const stored = this.#stored();
    const known = this.rows.line(line);
    const row = known?.row ?? this.#newRow(line);
    if (row < 1) return;
    this.#typed.set(this.#key(line, column), text);
    if (known) {
      desk.put(this.clause.id, `/rows/${row - 1}/${stored[column]}`, text, this.rows.revision);
      return;
    }
    // a row that is new: its first value brings it, the others go into it
    if (!this.#rowsPut.has(row)) {
      const values = Array.from({ length: stored.filter((one) => one >= 0).length }, () => "");
      values[stored[column]] = text;
      this.#rowsPut.add(row);
      desk.rows(this.clause.id, { from: row - 1, remove: 0, insert: [values] }, this.rows.revision);
      this.rows.total += 1;
    } else desk.put(this.clause.id, `/rows/${row - 1}/${stored[column]}`, text, this.rows.revision);
  }

  /** @param {string} event @param {any} detail */
  #heard(event, detail) {
    if (event === "refused" && detail.of?.cell === this.clause.id) this.#refused();
    else if (event === "kept" && ["undo", "redo"].includes(detail.op)) this.#moving = true;
  }

  #refused() {
    this.#typed.clear();
    this.#kept.clear();
    this.#rowsPut.clear();
    this.#state = "";
    this.update();
  }

  /** @param {string} text @param {{line: number, column: number}} at */
  async #paste(text, at) {
    const { page } = this.clause;
    const block = blockOf(text);
    if (!this.isSettled) return;
    const single = block.length === 1 && block[0].length === 1;
    if (single && this.#columns[at.column]?.formula) return page.says.offer(`${this.#columns[at.column].head} is worked out; it takes no value.`, []);
    if (single) {
      this.#keep(at.line, at.column, block[0][0]);
      return this.register.redraw(at.line);
    }
    if (!this.isPlain) return page.says.offer("A block is pasted where the rows stand as in the record: take order, choice and groups away first.", [["as in the record", () => this.words.clear()]]);
    if (text.length > LARGE) return this.words.takeIn(new File([text], "pasted.tsv", { type: "text/tab-separated-values" }));
    const under = [];
    const stored = this.#stored();
    for (let line = at.line; line < at.line + block.length && line < this.rows.total; line++) {
      const known = await this.#known(line);
      if (!known) return page.says.offer("The rows that the block lies on cannot be had from the server; nothing was pasted.", []);
      under.push(this.#columns.flatMap((_, column) => (stored[column] < 0 ? [] : [known.cells[column]])));
    }
    const { value, beyond, workedOut } = pasted(block, { row: at.line, column: at.column }, under, this.#columns);
    this.#splice(value);
    const left = [beyond > 0 ? `${beyond} ${beyond === 1 ? "column" : "columns"} beyond the last left out` : "", workedOut.length > 0 ? `${workedOut.join(", ")} left as worked out` : ""].filter(Boolean).join("; ");
    page.says.offer(`${block.length} rows pasted${left ? `; ${left}` : ""}.`, [["undo", () => page.undo()]]);
  }

  /** A line, waited for where it is not here yet. @param {number} line */
  async #known(line) {
    if (!this.rows.line(line) || this.rows.isOld(line)) {
      const answer = await this.#fetch(line, 1);
      return answer?.lines?.[0];
    }
    return this.rows.line(line);
  }

  /** Takes the row of the cursor out. */
  deleteRow() {
    const row = this.rows.line(this.register.cursor.line)?.row;
    if (!row || !this.isSettled) return;
    const { page } = this.clause;
    this.#splice({ from: row - 1, remove: 1, insert: [] });
    page.says.offer(`Row ${row} deleted.`, [["undo", () => page.undo()]]);
    this.register.go(this.register.cursor);
  }

  /** Puts an empty row above that of the cursor. */
  insertRow() {
    const row = this.rows.line(this.register.cursor.line)?.row;
    if (!row || !this.isSettled) return;
    const width = this.#stored().filter((one) => one >= 0).length;
    this.#splice({ from: row - 1, remove: 0, insert: [Array.from({ length: width }, () => "")] });
    this.register.go({ line: this.register.cursor.line, column: 0 });
  }

  /** Writes what is in force of order, choice and groups. @param {string} field @param {any} value */
  view(field, value) {
    const { at, value: put } = placed(this.source, `/view/${field}`, value);
    this.clause.page.desk.put(this.clause.id, at, put);
  }

  /** What is to be said of the value in use, and done with its row. @param {{line: number, column: number}} at */
  #moved({ line, column }) {
    const of = this.#columns[column];
    const known = this.rows.line(line);
    if (!of) return;
    const wrong = known?.wrong?.[of.head];
    const note = this.source.columns?.[column]?.note;
    const said = wrong ?? (of.formula ? `${of.head} is worked out: ${of.formula}` : note ? `${of.head}: ${note}` : "");
    const word = (text, act) => el("button", { type: "button", class: "word", onclick: act }, text);
    const words = known?.row && !this.source.from?.table ? [el("span", {}, `Row ${known.row}`), ...(this.isPlain ? [word("a row above", () => this.insertRow())] : []), word("delete this row", () => this.deleteRow())] : [];
    this.#foot.replaceChildren(...words, said && el("span", { class: wrong ? "wrong" : "" }, said));
  }

  /** All columns are figures; those judged stand as answers. */
  names() {
    return (this.table.columns ?? []).map((column) => column.figure);
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    this.answers.figures(names);
    // what is worked out, and verdicts, come with the rows, unless these are asked for anew already
    if (this.#asking) return;
    this.#renew();
    this.register.draw();
  }

  open() {
    const { clause } = this;
    this.editing = new Entry(clause, { hint: "A column is a series of the language: table and head, as in wear.lash. Rows are entered in the register.", groups: () => tableGroups(clause), more: tableMore(clause) });
    clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

