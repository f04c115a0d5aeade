/** @import { Change, FigureView, Sheet } from "./shapes.js" */
import { Connection } from "./connection.js";
import { Outbox } from "./outbox.js";
import { at, placed } from "./places.js";
import { changed, opened, whole } from "./sheet.js";

/**
 * One open record: what the server says of it, what is being typed into it, what is on its way.
 * Views listen; the desk knows none of them.
 */
export class Desk {
  /** @type {Sheet | null} */
  sheet = null;
  isUp = false;
  /**
   * What would be computed with a text that is not kept yet. It is the whole of a working, or a field of
   * a clause; `figure` is the name of what the field gives.
   * @type {{cell: string, place: string, text: string, figure: string, lines: any[], tokens: any[], problems: any[], figures: Map<string, FigureView>} | null}
   */
  preview = null;

  #listeners = [];
  #answers = new Map();
  #seq = 0;
  #previewSeq = 0;
  /** @type {{question: any, place: string, text: string}} what was asked last of a text not kept yet */
  #asked = { question: {}, place: "", text: "" };

  /**
   * @param {() => any} openSocket
   * @param {() => string} newId
   * @param {{set: (f: () => void, ms: number) => any, clear: (handle: any) => void}} timers
   */
  constructor(openSocket, newId, timers) {
    this.newId = newId;
    this.outbox = new Outbox((edit) => this.connection.send({ type: "edit", edit }));
    this.connection = new Connection(
      { open: openSocket, up: () => this.#up(), down: () => this.#down(), message: (message) => this.#heard(message) },
      timers,
    );
  }

  start() {
    this.connection.start();
  }

  /**
   * Listens. Events: "sheet" (change), "line" (isUp), "sent" (edits waiting), "kept" (edit), "refused"
   * (refusal), "preview" (preview), "notice" (text), "present" (people), "conflict", "error".
   * @param {(event: string, detail: any) => void} listener
   */
  listen(listener) {
    this.#listeners.push(listener);
  }

  // what is shown

  /** @param {string} name @returns {FigureView | undefined} as previewed while its clause is being typed in */
  figure(name) {
    return this.preview?.figures.get(name) ?? this.sheet?.figures.get(name);
  }

  /** @param {string} id */
  cell(id) {
    return this.sheet?.cells.get(id);
  }

  // edits

  /** Writes a value at a place inside a clause. @param {string} cell @param {string} at @param {any} value @param {number} [seen] */
  put(cell, at, value, seen) {
    return this.#edit({ op: "put", cell, at, value, seen: seen ?? this.cell(cell)?.revision });
  }

  /**
   * Takes rows of a table out and puts others in their place, as one step.
   * @param {string} cell
   * @param {{from: number, remove: number, insert: readonly (readonly string[])[]}} value from 0
   * @param {number} [seen] revision of the rows that it was made upon
   */
  rows(cell, value, seen) {
    return this.#edit({ op: "rows", cell, at: "/rows", value, seen: seen ?? this.cell(cell)?.revision });
  }

  /** Writes a value into title block, settings, instruments or parts. @param {string} at @param {any} value */
  set(at, value) {
    return this.#edit({ op: "set", at, value, seen: this.sheet?.revision });
  }

  /** @param {any} cell whole @param {string} parent @param {string} after */
  add(cell, parent, after) {
    return this.#edit({ op: "add", cell: cell.id, value: cell, parent, after });
  }

  /** @param {string} cell @param {string} parent @param {string} after */
  move(cell, parent, after) {
    return this.#edit({ op: "move", cell, parent, after });
  }

  /** @param {string} cell */
  remove(cell) {
    return this.#edit({ op: "delete", cell, seen: this.cell(cell)?.revision });
  }

  /** Gives a value another name wherever the record names it. @param {string} from @param {string} to */
  rename(from, to) {
    return this.#edit({ op: "rename", value: { from, to } });
  }

  undo() {
    return this.#edit({ op: "undo" });
  }

  redo() {
    return this.#edit({ op: "redo" });
  }

  /** Ends a conflict with the file on disk: this sheet stands. */
  keepMine() {
    this.connection.send({ type: "keepMine" });
  }

  /** Ends it the other way: the file on disk becomes the sheet. */
  takeTheirs() {
    this.connection.send({ type: "takeTheirs" });
  }

  /** @param {any} edit */
  #edit(edit) {
    const id = this.outbox.take({ id: this.newId(), ...edit });
    this.#tell("sent", this.outbox.waiting);
    return id;
  }

  // questions

  /** Asks how the sheet would look with this text; the answer is drawn, the record stays. @param {string} cell @param {string} text */
  ask(cell, text) {
    return this.#ask({ question: { cell, text }, place: "/text", text });
  }

  /** The same of a field of a clause. @param {string} cell @param {string} field its pointer @param {string} text */
  askField(cell, field, text) {
    const { at: where, value } = placed(this.cell(cell)?.source ?? {}, field, text);
    return this.#ask({ question: { cell, field, at: where, value }, place: field, text });
  }

  #ask(asked) {
    this.#previewSeq = ++this.#seq;
    this.#asked = asked;
    return this.connection.send({ type: "preview", ...asked.question, seq: this.#previewSeq });
  }

  /** @param {string} cell @param {string} text @param {number} offset @param {boolean} [expression] the text is one, and no line @returns {Promise<any>} */
  complete(cell, text, offset, expression) {
    return this.#question({ type: "complete", cell, text, offset, ...(expression ? { expression } : {}) });
  }

  /** @param {string} cell @param {string} name @returns {Promise<any>} */
  hover(cell, name) {
    return this.#question({ type: "hover", cell, name });
  }

  /** @param {string} name @returns {Promise<any>} */
  trace(name) {
    return this.#question({ type: "trace", name });
  }

  /** What may be made of a value, and of the one pressed before it. @param {string} name @param {string} before @returns {Promise<any>} */
  offer(name, before) {
    return this.#question({ type: "offer", name, before });
  }

  /**
   * How a source in Java may go on at a place. A later question is asked in place of one of the same purpose.
   * @param {string} cell @param {string} text @param {number} offset @param {string} purpose @returns {Promise<any>}
   */
  javaHelp(cell, text, offset, purpose) {
    return this.#question({ type: "javaHelp", cell, text, offset, purpose });
  }

  /** Approves the source of this hash on this machine and runs it. @param {string} cell @param {string} hash */
  runJava(cell, hash) {
    this.connection.send({ type: "run", cell, hash });
  }

  /** @param {string} cell */
  stopJava(cell) {
    this.connection.send({ type: "stop", cell });
  }

  /** Says which clause this window is in. @param {string} cell */
  here(cell) {
    this.connection.send({ type: "here", cell });
  }

  /** @param {any} message @returns {Promise<any>} null where the line is down or the server has none */
  #question(message) {
    const seq = ++this.#seq;
    if (!this.connection.send({ ...message, seq })) return Promise.resolve(null);
    return new Promise((resolve) => this.#answers.set(seq, resolve));
  }

  // what comes back

  #up() {
    this.isUp = true;
    this.#tell("line", true);
  }

  #down() {
    this.isUp = false;
    this.outbox.lost();
    for (const resolve of this.#answers.values()) resolve(null);
    this.#answers.clear();
    this.#tell("line", false);
  }

  /** @param {any} message */
  #heard(message) {
    switch (message.type) {
      case "sheet":
        this.sheet = opened(message);
        this.outbox.reached(this.sheet.revision);
        this.preview = null;
        this.#tell("sheet", { ...whole(this.sheet), author: "", edit: "", notices: message.notices ?? [] });
        // the sheet first: what is sent again is answered upon it
        this.outbox.connected();
        break;
      case "charts": {
        if (!this.sheet) break;
        const { sheet, change } = changed(this.sheet, message);
        this.sheet = sheet;
        this.#tell("sheet", { ...change, author: "", edit: "" });
        break;
      }
      case "changed": {
        if (!this.sheet) break;
        const { sheet, change } = changed(this.sheet, message);
        this.sheet = sheet;
        this.outbox.reached(sheet.revision);
        this.#settle(change, message);
        break;
      }
      case "progress":
        this.#furtherOn(message.figures ?? {});
        break;
      case "kept": {
        const edit = this.outbox.kept(message.edit, message.revision);
        if (edit) this.#tell("kept", edit);
        this.#tell("sent", this.outbox.waiting);
        break;
      }
      case "refused": {
        const edit = this.outbox.refused(message.edit);
        this.#tell("refused", { ...message, of: edit });
        this.#tell("sent", this.outbox.waiting);
        break;
      }
      case "preview":
        if (message.seq === this.#previewSeq) this.#previewed(message);
        break;
      case "notice":
        this.#tell("notice", message.text);
        break;
      case "conflict":
        this.#tell("conflict", message);
        break;
      case "error":
        if (message.fatal) this.connection.close();
        this.#tell("error", message);
        break;
      case "present":
        this.#tell("present", message.people ?? []);
        break;
      default: {
        const resolve = this.#answers.get(message.seq);
        this.#answers.delete(message.seq);
        resolve?.(message);
      }
    }
  }

  /**
   * The kept sheet has caught up with what was previewed, or what the preview rests on is another: then it
   * is asked for again. An earlier text that is kept only now takes nothing back that was typed since.
   * @param {Change} change
   * @param {any} message
   */
  #settle(change, message) {
    const before = this.preview;
    const settled = before !== null && (at(this.cell(before.cell)?.source, before.place) ?? before.text) === before.text;
    if (settled) this.preview = null;
    else if (before) this.#ask(this.#asked);
    const figures = settled ? new Set([...change.figures, ...before.figures.keys()]) : change.figures;
    this.#tell("sheet", { ...change, figures, author: message.author ?? "", edit: message.edit ?? "" });
  }

  /**
   * How far slow calculations are; a figure that has come meanwhile keeps what it has.
   * @param {Record<string, string>} progress by name
   */
  #furtherOn(progress) {
    if (!this.sheet) return;
    const figures = new Map(this.sheet.figures);
    const names = new Set();
    for (const [name, text] of Object.entries(progress)) {
      const figure = figures.get(name);
      if (figure?.state !== "working") continue;
      figures.set(name, { ...figure, progress: text });
      names.add(name);
    }
    if (names.size === 0) return;
    this.sheet = { ...this.sheet, figures };
    this.#tell("sheet", { cells: new Set(), figures: names, order: false, record: false, author: "", edit: "" });
  }

  /** @param {any} message */
  #previewed(message) {
    const figures = new Map(Object.entries(message.figures ?? {}).filter(([, figure]) => figure !== null));
    const names = new Set([...figures.keys(), ...(this.preview?.figures.keys() ?? [])]);
    this.preview = {
      cell: message.cell,
      place: this.#asked.place,
      text: this.#asked.text,
      figure: message.figure ?? "",
      lines: message.lines ?? [],
      tokens: message.tokens ?? [],
      problems: message.problems ?? [],
      figures,
    };
    this.#tell("preview", { ...this.preview, names });
  }

  /** Forgets a preview that will not be kept. */
  dropPreview() {
    const before = this.preview;
    if (!before) return;
    this.preview = null;
    this.#previewSeq = 0;
    this.#tell("sheet", { cells: new Set([before.cell]), figures: new Set(before.figures.keys()), order: false, record: false, author: "", edit: "" });
  }

  /** @param {string} event @param {any} detail */
  #tell(event, detail) {
    for (const listener of this.#listeners) listener(event, detail);
  }
}

