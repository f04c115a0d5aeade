import { blank, moved, neighbour, placeAfter, tableName } from "../state/clauses.js";
import { Desk } from "../state/desk.js";
import { Clause } from "./clause.js";
import { arrange, attribute, mark } from "./dom.js";
import { warmUp } from "./editing.js";
import { FirstSteps } from "./first-steps.js";
import { Keyboard } from "./keyboard.js";
import { leadOnwards } from "./onwards.js";
import { Pointing } from "./pointing.js";
import { Rail } from "./rail.js";
import { Registers } from "./registers.js";
import { Says } from "./says.js";
import { sentence, Telling } from "./telling.js";
import { startTheme } from "./theme.js";
import { TitleBlock } from "./title-block.js";
import { Trace } from "./trace.js";
import { Ways } from "./ways.js";
import { Wide } from "./wide.js";

const timers = { set: (f, ms) => setTimeout(f, ms), clear: (handle) => clearTimeout(handle) };

/** The page of one record: it owns the clauses and leads from one to the other. */
export class SheetPage {
  /** @type {Map<string, Clause>} */
  #clauses = new Map();
  /** @type {{id: string, line?: number} | null} */
  #leadTo = null;
  /** @type {Map<string, Set<Clause>>} which clauses show a figure */
  #shows = new Map();
  #open = null;
  #current = "";
  #arrived = false;

  /** @param {string} id of the record */
  constructor(id) {
    const protocol = location.protocol === "https:" ? "wss:" : "ws:";
    this.client = crypto.randomUUID();
    const open = () => new WebSocket(`${protocol}//${location.host}/api/records/${encodeURIComponent(id)}/live?page=${this.client}`);
    this.desk = new Desk(open, () => crypto.randomUUID(), timers);
    this.body = document.querySelector(".body");
    this.list = document.querySelector(".clauses");
    this.says = new Says(document.querySelector(".says"));
    this.title = new TitleBlock(document.querySelector(".title"), this.desk);
    this.rail = new Rail(document.querySelector(".rail-in"), this.desk, { go: (clause) => this.go(clause), nextNotWithin: () => this.ways.nextNotWithin() });
    this.pointing = new Pointing(this);
    this.tracing = new Trace(this);
    this.registers = new Registers(document.querySelector(".registers"), this.desk);
    /** @type {HTMLElement} */
    this.empty = document.querySelector(".empty-sheet");
    this.wide = new Wide(this.body);
    this.telling = new Telling(this, document.querySelector(".kept"));
    this.ways = new Ways(this);
    /** @type {HTMLButtonElement} */
    this.undoWord = document.querySelector("[data-undo]");
    /** @type {HTMLButtonElement} */
    this.redoWord = document.querySelector("[data-redo]");
    this.undoWord.addEventListener("click", () => this.undo());
    this.redoWord.addEventListener("click", () => this.redo());
    for (const word of this.empty.querySelectorAll("button")) word.addEventListener("click", () => this.add(word.dataset.kind, ""));
    leadOnwards(id);
    this.desk.listen((event, detail) => this.#heard(event, detail));
    this.steps = new FirstSteps(this, id);
    this.keyboard = new Keyboard(this.ways.keys(), [["Show first steps again", () => this.steps.again()]]);
    this.narrow = matchMedia("screen and (max-width: 760px)");
    this.narrow.addEventListener("change", () => this.#clauses.forEach((clause) => clause.update()));
    addEventListener("online", () => this.desk.connection.hurry());
    addEventListener("pagehide", () => this.#leave());
  }

  start() {
    this.desk.start();
    warmUp();
  }

  // what the desk says

  #heard(event, detail) {
    if (event === "sheet") this.#drawSheet(detail);
    else if (event === "preview") this.#drawPreview(detail);
    else if (event === "line") this.telling.line(detail);
    else if (event === "sent") this.telling.draw();
    else if (event === "kept") this.telling.draw();
    else if (event === "refused") this.telling.refused(detail);
    else if (event === "notice") this.says.offer(detail, []);
    else if (event === "present") this.telling.present(detail);
    else if (event === "conflict") this.telling.conflict(detail);
    else if (event === "error") this.telling.failed(detail);
  }

  #drawSheet(change) {
    const { sheet } = this.desk;
    if (change.record) this.title.draw();
    if (change.record) this.registers.draw();
    if (change.notices?.length > 0) this.says.offer(change.notices.map(sentence).join(" "), []);
    if (change.order) this.#drawOrder();
    const drawn = change.record ? new Set(sheet.cells.keys()) : change.cells;
    for (const id of drawn) this.#clauses.get(id)?.update();
    this.#drawFigures(change.figures);
    this.wide.fit();
    if (change.order) this.rail.draw();
    else this.rail.drawCells(change.cells);
    this.title.drawSummary();
    this.rail.drawSummary();
    this.undoWord.disabled = !sheet.canUndo;
    this.redoWord.disabled = !sheet.canRedo;
    if (change.figures.size > 0 || change.order) this.tracing.renew();
    this.telling.verdicts(change);
    if (this.#leadTo && this.#clauses.has(this.#leadTo.id) && (this.#leadTo.line === undefined || change.cells.has(this.#leadTo.id))) {
      const { id, line } = this.#leadTo;
      this.#leadTo = null;
      if (line === undefined) this.go(id);
      this.open(id, line);
    }
    this.#arrive();
    this.steps.draw(change.order);
    document.documentElement.dataset.revision = String(sheet.revision);
    if (!performance.getEntriesByName("sheet drawn").length) performance.mark("sheet drawn");
  }

  /** An address may name a clause; it leads there once, when the sheet first stands. */
  #arrive() {
    if (this.#arrived) return;
    this.#arrived = true;
    const [, id] = /^#clause-(.+)$/.exec(decodeURIComponent(location.hash)) ?? [];
    if (id) this.go(id);
  }

  #drawOrder() {
    const { sheet } = this.desk;
    for (const [id, clause] of this.#clauses) {
      if (sheet.cells.has(id)) continue;
      if (this.#open === clause) this.#open = null;
      this.#clauses.delete(id);
    }
    const nodes = sheet.order.map((place) => {
      let clause = this.#clauses.get(place.id);
      if (!clause || clause.isSection !== (sheet.cells.get(place.id).kind === "section")) {
        clause = new Clause(this, place.id);
        this.#clauses.set(place.id, clause);
        clause.place(place);
        clause.update();
      }
      clause.place(place);
      return clause.element;
    });
    const focused = document.activeElement;
    arrange(this.list, nodes);
    // an element that is moved in the document loses the focus
    if (focused instanceof HTMLElement && focused.isConnected && document.activeElement !== focused) focused.focus({ preventScroll: true });
    this.empty.hidden = nodes.length > 0;
    const last = sheet.order.at(-1)?.id;
    for (const [id, clause] of this.#clauses) clause.last(id === last);
  }

  /** @param {Iterable<string>} names */
  #drawFigures(names) {
    const byClause = new Map();
    for (const name of names) {
      for (const clause of this.#shows.get(name) ?? []) byClause.set(clause, [...(byClause.get(clause) ?? []), name]);
    }
    for (const [clause, some] of byClause) clause.figures(some);
  }

  #drawPreview(preview) {
    this.#clauses.get(preview.cell)?.body?.previewed?.(preview);
    this.#drawFigures(preview.names);
    this.wide.fit();
  }

  // for the clauses

  get stage() {
    return this.desk.sheet.record.settings?.stage ?? "as found";
  }

  /** Whose words the page's labels are in. */
  get terms() {
    return this.desk.sheet.record.settings?.terms;
  }

  /** Whether the sheet is shown as on a phone. */
  get isNarrow() {
    return this.narrow.matches;
  }

  clauses() {
    return this.#clauses.values();
  }

  /** @param {string} id */
  clause(id) {
    return this.#clauses.get(id);
  }

  /** Id of the clause in use, "" for none yet. */
  get current() {
    return this.#current;
  }

  get isOpen() {
    return this.#open !== null;
  }

  /** @param {string} id */
  othersAt(id) {
    return this.telling.othersAt(id);
  }

  /** Notes which figures a clause shows. @param {Clause} clause */
  reindex(clause) {
    for (const name of clause.shown ?? []) this.#shows.get(name)?.delete(clause);
    clause.shown = new Set(clause.body?.names?.() ?? []);
    for (const name of clause.shown) {
      if (!this.#shows.has(name)) this.#shows.set(name, new Set());
      this.#shows.get(name).add(clause);
    }
  }

  /** @param {string} id */
  at(id) {
    if (this.#current === id) return;
    this.#current = id;
    this.rail.current(id);
    for (const [other, clause] of this.#clauses) mark(clause.element, "current", other === id);
    this.desk.here(id);
  }

  say(text) {
    this.says.say(text);
  }

  /** @param {string} id @param {number} [line] */
  async open(id, line) {
    const clause = this.#clauses.get(id);
    if (!clause) return;
    const top = clause.element.getBoundingClientRect().top;
    if (this.#open && this.#open !== clause) this.#open.close();
    this.#open = clause;
    // what was pressed stays where it was, though the clause above has closed
    scrollBy(0, clause.element.getBoundingClientRect().top - top);
    this.at(id);
    await clause.open(line);
    this.tracing.draw();
  }

  close() {
    const clause = this.#open;
    if (!clause) return;
    this.#open = null;
    clause.close();
    clause.element.focus({ preventScroll: true });
    this.tracing.draw();
  }

  /** @param {string} id */
  go(id) {
    const clause = this.#clauses.get(id);
    if (!clause) return;
    clause.element.focus({ preventScroll: true });
    clause.element.scrollIntoView({ block: "start" });
    this.at(id);
  }

  /** @param {string} name */
  goToFigure(name) {
    const place = document.getElementById(`figure-${name}`);
    if (!place) return this.go(this.desk.figure(name)?.cell ?? "");
    place.scrollIntoView({ block: "center" });
    /** @type {HTMLElement | null} */ (place.querySelector(".value:not([hidden])") ?? place.closest("[tabindex]"))?.focus({ preventScroll: true });
  }

  /** @param {string} name */
  clauseOf(name) {
    return this.#clauses.get(this.desk.figure(name)?.cell ?? "");
  }

  isTraced(name) {
    return name !== "" && this.tracing?.name === name;
  }

  trace(name) {
    this.steps.traced();
    return this.tracing.toggle(name);
  }

  /** Traces the value in use, or the first of a clause. @param {string} id */
  traceAt(id) {
    /** @type {HTMLElement | null | undefined} */
    const focused = document.activeElement?.closest(`#clause-${CSS.escape(id)} [data-value]`);
    const name = focused?.dataset.value ?? (this.clauseOf(this.tracing.name)?.id === id ? this.tracing.name : [...(this.#clauses.get(id)?.body?.names?.() ?? [])][0]);
    if (name) this.trace(name);
    else this.say("There is no value here to trace.");
  }

  redrawFigures(names) {
    this.#drawFigures(names);
  }

  /** Opens a clause as soon as the change that is under way has come back. @param {string} id @param {number} [line] */
  leadTo(id, line) {
    this.#leadTo = { id, line };
  }

  /** @param {string} kind @param {string} after */
  add(kind, after) {
    const { order, cells } = this.desk.sheet;
    const id = `c${crypto.randomUUID().replaceAll("-", "").slice(0, 12)}`;
    const { parent, after: before } = placeAfter(order, after, kind, cells);
    this.leadTo(id);
    /** @type {any} */
    const cell = blank(kind, id);
    if (kind === "table") cell.name = tableName(cells.values());
    this.desk.add(cell, parent, before);
  }

  /** @param {string} id @param {-1|1} by */
  move(id, by) {
    const { order, cells } = this.desk.sheet;
    const to = moved(order, id, by, cells);
    if (!to) return this.say("It cannot go further that way.");
    this.desk.move(id, to.parent, to.after);
  }

  /** @param {string} id */
  remove(id) {
    const { number, title } = this.desk.cell(id);
    if (this.#open?.id === id) this.close();
    const next = neighbour(this.desk.sheet.order, id, 1) ?? neighbour(this.desk.sheet.order, id, -1);
    this.desk.remove(id);
    this.says.offer(`${number} ${title || "untitled"} deleted.`, [["undo", () => this.undo()]], "deleted");
    if (next) this.#clauses.get(next)?.element.focus({ preventScroll: true });
  }

  undo() {
    this.#open?.body?.editing?.rest?.();
    this.says.settled("deleted");
    this.desk.undo();
  }

  redo() {
    this.desk.redo();
  }

  #leave() {
    const field = document.activeElement;
    if (field instanceof HTMLElement) field.blur();
    this.#open?.body?.editing?.rest?.();
  }
}

startTheme();
const page = new SheetPage(decodeURIComponent(location.pathname.split("/").pop()));
page.start();
attribute(document.documentElement, "data-ready", "");
