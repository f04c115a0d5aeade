import { blank, moved, neighbour, nextWhere, placeAfter } from "../state/clauses.js";
import { Desk } from "../state/desk.js";
import { isNotWithin } from "../state/figures.js";
import { Clause } from "./clause.js";
import { arrange, attribute, mark, write } from "./dom.js";
import { warmUp } from "./editing.js";
import { Keyboard } from "./keyboard.js";
import { Rail } from "./rail.js";
import { Registers } from "./registers.js";
import { Says } from "./says.js";
import { startTheme } from "./theme.js";
import { TitleBlock } from "./title-block.js";
import { Trace } from "./trace.js";

const timers = { set: (f, ms) => setTimeout(f, ms), clear: (handle) => clearTimeout(handle) };

/** The page of one record: it owns the clauses and leads from one to the other. */
export class SheetPage {
  /** @type {Map<string, Clause>} */
  #clauses = new Map();
  /** @type {Map<string, Set<Clause>>} which clauses show a figure */
  #shows = new Map();
  #open = null;
  #current = "";
  #people = [];
  #leadTo = null;

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
    this.rail = new Rail(document.querySelector(".rail-in"), this.desk, { go: (clause) => this.go(clause), nextNotWithin: () => this.nextNotWithin() });
    this.trace_ = new Trace(this);
    this.registers = new Registers(document.querySelector(".registers"), this.desk);
    this.empty = document.querySelector(".empty-sheet");
    this.kept = document.querySelector(".kept");
    this.undoWord = document.querySelector("[data-undo]");
    this.redoWord = document.querySelector("[data-redo]");
    this.undoWord.addEventListener("click", () => this.undo());
    this.redoWord.addEventListener("click", () => this.redo());
    for (const word of this.empty.querySelectorAll("button")) word.addEventListener("click", () => this.add(word.dataset.kind, ""));
    this.desk.listen((event, detail) => this.#heard(event, detail));
    this.keyboard = new Keyboard(this.#keys());
    this.narrow = matchMedia("(max-width: 760px)");
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
    else if (event === "line") this.#drawLine(detail);
    else if (event === "sent") this.#drawKept();
    else if (event === "kept") this.#drawKept();
    else if (event === "refused") this.#refused(detail);
    else if (event === "notice") this.says.offer(detail, []);
    else if (event === "present") this.#present(detail);
    else if (event === "conflict") this.#conflict(detail);
    else if (event === "error") this.#failed(detail);
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
    if (change.order) this.rail.draw();
    else this.rail.drawCells(change.cells);
    this.title.drawSummary();
    this.rail.drawSummary();
    this.undoWord.disabled = !sheet.canUndo;
    this.redoWord.disabled = !sheet.canRedo;
    if (change.figures.size > 0 || change.order) this.trace_.renew();
    this.#tellVerdicts(change);
    if (this.#leadTo && this.#clauses.has(this.#leadTo)) {
      const id = this.#leadTo;
      this.#leadTo = null;
      this.go(id);
      this.open(id);
    }
    document.documentElement.dataset.revision = sheet.revision;
    if (!performance.getEntriesByName("sheet drawn").length) performance.mark("sheet drawn");
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
  }

  #drawLine(isUp) {
    mark(this.kept, "lost", !isUp);
    this.#drawKept();
    if (!isUp) this.says.say("The line to the server is lost. Typing goes on and is sent when it is back.");
    if (isUp && this.wasLost) this.says.say("The line to the server is back.");
    this.wasLost = !isUp;
  }

  #drawKept() {
    const waiting = this.desk.outbox.waiting;
    if (!this.desk.isUp) write(this.kept, waiting > 0 ? `line lost, ${waiting} to send` : "line lost");
    else write(this.kept, waiting > 0 ? "keeping" : `kept ${clock()}`);
  }

  /** A verdict that changed is told to those who cannot see it change. */
  #tellVerdicts(change) {
    const { figures } = this.desk.sheet;
    const told = [];
    this.verdicts ??= new Map();
    for (const name of change.figures) {
      const verdict = figures.get(name)?.verdict ?? "";
      const before = this.verdicts.get(name);
      this.verdicts.set(name, verdict);
      if (before !== undefined && before !== verdict && verdict) told.push(`${name.replaceAll("_", " ")}: ${verdict}`);
    }
    if (told.length > 0) this.says.say(told.slice(0, 4).join("; "));
  }

  #refused(refusal) {
    const { of } = refusal;
    const clause = of?.cell ? this.#clauses.get(of.cell) : undefined;
    const hasBoth = refusal.theirs !== undefined && refusal.theirs !== null && clause;
    if (!hasBoth) {
      this.says.offer([refusal.reason, refusal.wayOut].filter(Boolean).map(sentence).join(" "), []);
      clause?.update();
      return;
    }
    clause.dispute({
      mine: typeof of.value === "string" ? of.value : (of.value ?? []).join?.("  ") ?? JSON.stringify(of.value),
      theirs: refusal.theirs,
      keep: (text) => this.desk.put(of.cell, of.at, of.at === "/text" ? text : of.value, refusal.revision),
      take: () => {
        if (of.at === "/text") clause.body.editing?.take(clause.cell.source.text ?? "");
        clause.update();
      },
    });
  }

  /** Something else wrote the file. */
  #conflict(found) {
    const words = [["keep this sheet", () => this.desk.keepMine()]];
    if (found.canTakeTheirs) words.push(["take the file on disk", () => this.desk.takeTheirs()]);
    this.says.offer(`${sentence(found.reason)} Both are kept as earlier states; choose which one stands.`, words);
  }

  #failed(error) {
    this.says.offer([error.message, error.wayOut].filter(Boolean).map(sentence).join(" "), []);
  }

  #present(people) {
    this.#people = people;
    for (const clause of this.#clauses.values()) clause.drawState();
  }

  /** Who else has this clause open, in words. @param {string} id */
  othersAt(id) {
    const others = this.#people.filter((one) => one.cell === id && one.client !== this.client);
    return others.length === 0 ? "" : others.length === 1 ? "open in another window" : `open in ${others.length} other windows`;
  }

  // for the clauses

  get stage() {
    return this.desk.sheet.record.settings?.stage ?? "as found";
  }

  /** Whether the sheet is shown as on a phone. */
  get isNarrow() {
    return this.narrow.matches;
  }

  clauses() {
    return this.#clauses.values();
  }

  /** Notes which figures a clause shows. @param {Clause} clause */
  reindex(clause) {
    for (const name of clause.shown ?? []) this.#shows.get(name)?.delete(clause);
    clause.shown = new Set(clause.body?.names() ?? []);
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
    this.trace_.draw();
  }

  close() {
    const clause = this.#open;
    if (!clause) return;
    this.#open = null;
    clause.close();
    clause.element.focus({ preventScroll: true });
    this.trace_.draw();
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
    (place.querySelector(".value:not([hidden])") ?? place.closest("[tabindex]"))?.focus({ preventScroll: true });
  }

  /** @param {string} name */
  clauseOf(name) {
    return this.#clauses.get(this.desk.figure(name)?.cell ?? "");
  }

  isTraced(name) {
    return name !== "" && this.trace_?.name === name;
  }

  trace(name) {
    return this.trace_.toggle(name);
  }

  /** Traces the value in use, or the first of a clause. @param {string} id */
  traceAt(id) {
    const focused = document.activeElement?.closest(`#clause-${CSS.escape(id)} [data-value]`);
    const name = focused?.dataset.value ?? (this.clauseOf(this.trace_.name)?.id === id ? this.trace_.name : [...(this.#clauses.get(id)?.body?.names() ?? [])][0]);
    if (name) this.trace(name);
    else this.say("There is no value here to trace.");
  }

  redrawFigures(names) {
    this.#drawFigures(names);
  }

  /** @param {string} kind @param {string} after */
  add(kind, after) {
    const { order, cells } = this.desk.sheet;
    const id = `c${crypto.randomUUID().replaceAll("-", "").slice(0, 12)}`;
    const { parent, after: before } = placeAfter(order, after, kind, cells);
    this.#leadTo = id;
    this.desk.add(blank(kind, id), parent, before);
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
    this.says.offer(`${number} ${title || "untitled"} deleted.`, [["undo", () => this.undo()]]);
    if (next) this.#clauses.get(next)?.element.focus({ preventScroll: true });
  }

  undo() {
    this.#open?.body?.editing?.rest?.();
    this.desk.undo();
  }

  redo() {
    this.desk.redo();
  }

  nextNotWithin() {
    this.#next((id) => isNotWithin(this.desk.cell(id).worst), "Every limit is kept.");
  }

  #next(wanted, otherwise) {
    const id = nextWhere(this.desk.sheet, this.#current, (one) => this.desk.cell(one).kind !== "section" && wanted(one));
    if (id) this.go(id);
    else this.say(otherwise);
  }

  #step(by) {
    const id = neighbour(this.desk.sheet.order, this.#current, by);
    if (!id) return;
    this.close();
    this.go(id);
  }

  /** @param {string} number */
  #goNumber(number) {
    const cell = [...this.desk.sheet.cells.values()].find((one) => one.number === number);
    if (cell) this.go(cell.id);
    else this.says.offer(`There is no clause ${number}.`, []);
  }

  /** Enter opens the clause at the line in use. @param {KeyboardEvent} event */
  #enter(event) {
    const id = event.target.closest?.(".clause, .section")?.id.slice("clause-".length);
    const line = Number(event.target.closest?.("[data-line]")?.dataset.line) || undefined;
    if (id) this.open(id, line);
  }

  #keys() {
    const move = (by) => this.#current && this.move(this.#current, by);
    return [
      ["Enter", "open the clause at the line in use", (event) => this.#enter(event)],
      ["Escape", "close it; the text is kept", () => (this.#open ? this.close() : this.trace_.clear())],
      ["Alt+ArrowUp", "clause before", () => this.#step(-1)],
      ["Alt+ArrowDown", "clause behind", () => this.#step(1)],
      ["Alt+Shift+ArrowUp", "move the clause up", () => move(-1)],
      ["Alt+Shift+ArrowDown", "move the clause down", () => move(1)],
      ["Mod+Z", "undo", () => this.undo()],
      ["Mod+Shift+Z", "redo", () => this.redo()],
      ["Mod+Y", "redo", () => this.redo()],
      ["G", "go to a clause by its number", () => this.says.ask("Go to clause", (number) => this.#goNumber(number))],
      ["L", "next not within", () => this.nextNotWithin()],
      ["W", "next in error or waiting", () => this.#next((id) => ["error", "waiting"].includes(this.desk.cell(id).state), "No line is in error and none waits.")],
      ["T", "trace the value in use, on or off", () => this.traceAt(this.#current)],
      ["N", "write the next clause", () => this.add("working", this.#current)],
      ["U", "units: metric, imperial", () => this.title.switchUnits()],
    ];
  }

  #leave() {
    const field = document.activeElement;
    if (field instanceof HTMLElement) field.blur();
    this.#open?.body?.editing?.rest?.();
  }
}

/** @param {string} text */
function sentence(text) {
  const trimmed = text.trim();
  return trimmed.charAt(0).toUpperCase() + trimmed.slice(1) + (/[.!?]$/.test(trimmed) ? "" : ".");
}

function clock() {
  return new Date().toTimeString().slice(0, 5);
}

startTheme();
const page = new SheetPage(decodeURIComponent(location.pathname.split("/").pop()));
page.start();
attribute(document.documentElement, "data-ready", "");
