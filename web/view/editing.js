import { callAt } from "../state/call.js";
import { Typing } from "../state/typing.js";
import { el } from "./dom.js";
import { Help } from "./help.js";

const CALM_AFTER = 700;
const timers = { set: (f, ms) => setTimeout(f, ms), clear: (handle) => clearTimeout(handle) };

/** Loads the editor while nothing else is to be done, so that the first clause opens at once. */
export function warmUp() {
  // a failure is said where the clause is opened
  const load = () => import("./pad.js").catch(() => {});
  if ("requestIdleCallback" in window) requestIdleCallback(load, { timeout: 2000 });
  else setTimeout(load, 300);
}

/**
 * The text of one clause while it is being edited: the pad, what is typed in it, and what the server says
 * of it. Esc closes it and keeps the text.
 */
export class Editing {
  #pad = null;
  #typing;
  #problems = [];
  #calm;
  #foot = el("div", { class: "pad-foot" });
  #strip = el("div", { class: "pad-words" });
  #said = el("div", { class: "said" });
  /** What may be called at a place of a source in Java. */
  #called = el("div", { class: "pad-help", role: "status", hidden: true });
  #help;
  #beside = null;

  /**
   * @param {import("./clause.js").Clause} clause
   * @param {{prose: boolean, java?: boolean, run?: () => void, tokens: any[], problems: any[]}} how
   */
  constructor(clause, how) {
    this.clause = clause;
    this.prose = how.prose;
    this.java = how.java ?? false;
    this.desk = clause.page.desk;
    const cell = clause.cell;
    this.text = cell.source.text ?? "";
    this.seen = cell.revision;
    this.first = how;
    this.#typing = new Typing(this.text, { preview: (text) => this.#preview(text), keep: (text) => this.#keep(text) }, timers);
    this.element = el("div", { class: how.prose ? "pad words" : clause.cell.kind === "java" ? "pad program" : "pad" });
    const hint = how.prose ? "{name} puts a figure in, {#clause} a clause number." : this.java ? "A name of the record is read in camel case: lash_cold is lashCold. F1 says what may be called." : "Results below follow as you type.";
    this.#help = new Help((name) => this.desk.hover(clause.id, name));
    const reference = this.java
      ? el("button", { type: "button", class: "word", onclick: () => how.run?.() }, "run")
      : el("button", { type: "button", class: "word", onclick: () => this.#refer() }, "reference, F1");
    this.#strip.append(el("span", {}, hint));
    this.#foot.append(this.#strip, el("span", {}, ...(how.prose ? [] : [reference, "\u2002"]), "Esc closes"), this.#help.element, this.#called, this.#said);
    this.#said.className = "problem";
    this.#said.hidden = true;
  }

  /** @param {number} [line] */
  async open(line) {
    const pad = await import("./pad.js").catch(() => null);
    if (this.closed) return;
    if (!pad) {
      this.clause.page.close();
      this.clause.page.says.offer("The editor could not be loaded from the server. Open the clause again when the line is back.", []);
      return;
    }
    const { Pad } = pad;
    const { number, title } = this.clause.cell;
    this.#pad = new Pad({
      parent: this.element,
      strip: this.#strip,
      text: this.#typing.text,
      label: `Text of clause ${number} ${title}`,
      prose: this.prose,
      code: this.java,
      typed: (text) => this.#typed(text),
      close: () => this.clause.page.close(),
      complete: (text, offset) => (this.java ? this.#javaWords(text, offset) : this.desk.complete(this.clause.id, text, offset)),
      moved: (text, offset) => !this.prose && !this.java && this.#help.at(text, offset),
      pointed: this.java ? (offset) => this.#signatures(offset) : undefined,
      help: () => (this.java ? this.#signatures(this.#pad.place) : !this.prose && this.#refer()),
    });
    this.element.append(this.#foot);
    this.read(this.#typing.text, this.first.tokens, this.first.problems);
    this.#pad.focus(line);
    // the first question takes longest: what it would be waited for is made ready
    if (this.java) this.desk.javaHelp(this.clause.id, "", 0, "readiness");
  }

  /** @param {string} text @param {number} offset */
  async #javaWords(text, offset) {
    const help = await this.desk.javaHelp(this.clause.id, text, offset, "words");
    return help && { from: help.from, options: help.options.map((word) => ({ label: word })) };
  }

  /** What stands at a place of the source, as Java declares it. @param {number} offset */
  async #signatures(offset) {
    const { text } = this.#pad;
    const help = await this.desk.javaHelp(this.clause.id, text, offset, "declarations");
    if (this.closed || text !== this.#pad.text || !(help?.signatures?.length > 0)) return;
    this.#called.hidden = false;
    this.#called.replaceChildren(...help.signatures.slice(0, 6).map((one) => el("span", { class: "src" }, one, el("br", {}))));
  }

  /** Opens the reference beside the sheet, at the calculation the cursor stands in. */
  async #refer() {
    const { Beside } = await import("./beside.js");
    const call = callAt(this.#pad.text, this.#pad.place);
    const settings = this.desk.sheet.record.settings ?? {};
    this.#beside?.element.remove();
    this.#beside = new Beside({
      reader: () => ({ units: settings.units ?? "metric", terms: settings.terms ?? "british" }),
      put: (stops) => this.#pad?.insert(stops),
      closed: () => this.#pad?.view.focus(),
    });
    await this.#beside.show(call && (await this.desk.hover(this.clause.id, call.name))?.arguments ? call.name : "");
  }

  /** @param {string} text */
  #typed(text) {
    this.#typing.typed(text);
    this.#called.hidden = true;
    this.element.dataset.open = "";
    clearTimeout(this.#calm);
    this.#calm = setTimeout(() => this.#say(), CALM_AFTER);
  }

  /** @param {string} text */
  #preview(text) {
    if (!this.prose && !this.java) this.desk.ask(this.clause.id, text);
    this.asked = text;
  }

  /** @param {string} text */
  #keep(text) {
    delete this.element.dataset.open;
    if (this.clause.isDisputed) return;
    this.desk.put(this.clause.id, "/text", text, this.seen);
  }

  /** The server read the text that was asked for last. @param {any} preview */
  previewed(preview) {
    this.read(this.asked, preview.tokens, preview.problems);
  }

  /** @param {string} text @param {any[]} tokens @param {any[]} found */
  read(text, tokens, found) {
    // of a source only what is wrong: that it is still to be approved is said where it is run
    const problems = this.java ? found.filter((one) => one.severity === "ERROR" && one.at !== "/gives") : found;
    this.#pad?.read(text, tokens, problems);
    const gone = problems.length === 0;
    this.#problems = problems;
    if (gone || !this.#said.hidden) this.#say();
    else if (!this.#typing.isOpen) this.#say();
  }

  /** What is wrong, said once the typing rests. */
  #say() {
    const worst = this.#problems.find((problem) => problem.severity === "ERROR") ?? this.#problems[0];
    this.#said.hidden = !worst;
    if (!worst) return;
    const words = `${worst.message} ${worst.wayOut ?? ""}`.trim();
    const where = worst.from === worst.to ? "" : `line ${worst.line}`;
    if (this.#said.textContent === `${where}${words}`) return;
    this.#said.replaceChildren(...(where ? [el("span", { class: "where" }, where)] : []), el("strong", {}, worst.message), ` ${worst.wayOut ?? ""}`);
  }

  /** The clause as the server has it now: ours, or another window's. */
  update() {
    const cell = this.clause.cell;
    const text = cell.source.text ?? "";
    if (this.#typing.isOpen || this.desk.outbox.pending(cell.id, "/text") || this.clause.isDisputed) return;
    this.seen = cell.revision;
    if (text !== this.#typing.text) this.take(text);
    this.read(text, cell.tokens ?? [], cell.problems ?? []);
  }

  /** Takes over a text from elsewhere. @param {string} text */
  take(text) {
    this.#typing.replaced(text);
    this.#pad?.replace(text);
  }

  /** The text as it stands in the pad. */
  get now() {
    return this.#typing.text;
  }

  rest() {
    this.#typing.rest();
  }

  focus(line) {
    this.#pad?.focus(line);
  }

  close() {
    this.closed = true;
    clearTimeout(this.#calm);
    this.#help.close();
    this.#beside?.element.remove();
    this.#typing.rest();
    this.#pad?.close();
    this.element.remove();
  }
}
