import { el, mark, write } from "./dom.js";
import { Field } from "./field.js";

const PREVIEW_AFTER = 60;
const CALM_AFTER = 700;

/**
 * A field that holds an expression. While it is written in it is a pad of one line: the words that fit stand
 * beneath, and what it would give; nothing is kept before it is left.
 */
export class ExpressionField {
  #pad = null;
  #timer;
  #calm;
  #figure = "";
  #strip = el("span", { class: "pad-words" });
  #gives = el("span", { class: "gives" });
  /** @type {(problems: any[] | null) => void} */
  #problems;

  /**
   * @param {object} what
   * @param {import("../state/desk.js").Desk} what.desk
   * @param {string} what.cell
   * @param {string} what.key its pointer in the clause
   * @param {string} what.caption
   * @param {(text: string) => void} what.keep
   * @param {(problems: any[] | null) => void} what.problems says what is wrong with what is typed; null for what is kept
   */
  constructor(what) {
    this.what = what;
    this.#problems = what.problems;
    this.field = new Field({ label: "", key: what.key, look: "src", keep: what.keep });
    this.input = this.field.input;
    this.input.addEventListener("focus", () => this.#open());
    this.element = el("span", { class: "expression pad line" }, this.input, el("span", { class: "under" }, this.#strip, this.#gives));
  }

  /** @param {any} value as the record has it @param {string} figure name of what it gives */
  show(value, figure) {
    this.field.show(String(value ?? ""));
    this.#figure = figure;
    this.draw();
  }

  /** What is typed in it, kept or not. */
  now() {
    const { from, to } = this.#pad?.selection ?? { from: this.input.selectionStart, to: this.input.selectionEnd };
    return { text: this.#pad?.text ?? this.input.value, kept: this.field.kept, from, to };
  }

  /** What the expression gives, kept or not yet. */
  draw() {
    const { desk, cell, key } = this.what;
    const preview = desk.preview?.cell === cell && desk.preview.place === key ? desk.preview : null;
    const figure = desk.figure(preview ? preview.figure : this.#figure);
    const has = figure?.value && (figure.state === "fresh" || figure.state === "working");
    const parts = has ? ["=", figure.value, figure.unit, figure.u && `± ${figure.u}`] : [figure?.state === "waiting" && `waiting on ${(figure.waitingOn ?? []).map((one) => one.name).join(", ")}`];
    write(this.#gives, parts.filter(Boolean).join(" "));
    if (!preview) return;
    // what is wrong is said once the typing rests, what is right again at once
    const wrong = preview.problems.filter((one) => one.at === key);
    clearTimeout(this.#calm);
    this.#calm = setTimeout(() => this.#problems(wrong), wrong.length > 0 ? CALM_AFTER : 0);
  }

  async #open() {
    const { Pad } = await import("./pad.js").catch(() => ({ Pad: null }));
    if (!Pad || this.#pad || document.activeElement !== this.input) return;
    const { desk, cell, key, caption } = this.what;
    const { value, selectionStart: from, selectionEnd: to } = this.input;
    // the pad goes on with what was typed already: it is not left, and so not kept
    this.input.value = this.field.kept;
    this.#pad = new Pad({
      parent: this.element,
      strip: this.#strip,
      text: value,
      label: caption,
      single: true,
      key,
      typed: (text) => this.#typed(text),
      close: () => this.#back(),
      taken: () => this.#taken(),
      complete: (text, offset) => desk.complete(cell, text, offset, true),
    });
    this.input.before(this.#pad.view.dom);
    this.input.hidden = true;
    mark(this.element, "open", true);
    this.#pad.select(from, to);
    if (value !== this.field.kept) this.#typed(value);
    // a clause that is moved in the page loses the focus and has it again at once
    const pad = this.#pad;
    pad.view.contentDOM.addEventListener("blur", () => queueMicrotask(() => this.#pad === pad && !pad.view.hasFocus && this.#leave()));
  }

  /** @param {string} text */
  #typed(text) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.what.desk.askField(this.what.cell, this.what.key, text.trim()), PREVIEW_AFTER);
  }

  /** Esc takes back what was typed; where nothing was, it closes the clause as in any field. */
  #back() {
    const typed = this.#pad.text !== this.field.kept;
    if (typed) this.#pad.replace(this.field.kept);
    this.#drop();
    if (!typed) this.element.dispatchEvent(new CustomEvent("left", { bubbles: true }));
  }

  #taken() {
    this.#leave();
    this.input.dispatchEvent(new CustomEvent("taken", { bubbles: true }));
  }

  #drop() {
    clearTimeout(this.#timer);
    clearTimeout(this.#calm);
    const { preview } = this.what.desk;
    if (preview?.cell === this.what.cell && preview.place === this.what.key) this.what.desk.dropPreview();
    this.#problems(null);
  }

  #leave() {
    const pad = this.#pad;
    if (!pad) return;
    this.#pad = null;
    clearTimeout(this.#timer);
    clearTimeout(this.#calm);
    const text = pad.text;
    pad.close();
    this.input.hidden = false;
    mark(this.element, "open", false);
    if (text === this.field.kept) return this.#drop();
    // an earlier text, asked for while this one was typed, would else stand beneath what is kept
    this.what.desk.askField(this.what.cell, this.what.key, text.trim());
    this.input.value = text;
    this.input.dispatchEvent(new Event("change"));
  }
}
