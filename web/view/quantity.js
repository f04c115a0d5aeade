import { spokenName } from "../state/names.js";
import { attribute, el, fragment, mark, write } from "./dom.js";

/** A name as the server sets it, or as typed where it has no figure yet. @param {string} name @param {string} [set] */
export function nameMark(name, set) {
  return el("span", { class: "nm" }, set ? fragment(set) : broken(name));
}

/** A text that breaks where it has no room: a name behind a low line, a unit behind its stroke. @param {string} name */
function broken(name) {
  const parts = name.split(/(?<=[_/])/);
  const whole = document.createDocumentFragment();
  parts.forEach((part, index) => whole.append(...(index > 0 ? [el("wbr"), part] : [part])));
  return whole;
}

/** A name that is set once its figure has come. */
export class Name {
  #set = "";
  #name;

  /** @param {string} name @param {string} [none] the word where there is no name yet */
  constructor(name, none = "") {
    this.#name = name;
    this.element = name ? nameMark(name) : el("span", { class: "un" }, none);
  }

  /** @param {import("../state/shapes.js").FigureView | undefined} figure */
  show(figure) {
    const set = figure?.set ?? "";
    if (!this.#name || set === this.#set) return;
    this.#set = set;
    this.element.replaceChildren(set ? fragment(set) : broken(this.#name));
  }
}

/** Value, unit, uncertainty beneath; pressing it traces. Kept, and written anew only where a text differs. */
export class Quantity {
  #value = el("span", { class: "v" });
  #unit = el("span", { class: "un" });
  #u = el("span", { class: "u" });
  #word = el("span", { class: "oldword", hidden: true });
  #none = el("span", { class: "none" });
  #q;
  #button;

  /**
   * @param {string} name of the figure
   * @param {(name: string) => void} press
   * @param {string} [spoken] what it is, where the name is nobody's word for it
   */
  constructor(name, press, spoken = spokenName(name)) {
    this.name = name;
    this.#q = el("span", { class: "q" }, this.#value, this.#unit, this.#u);
    this.#button = el("button", { type: "button", class: "value", "data-value": name, title: `Trace ${spoken}`, onclick: () => press(name) }, this.#q);
    this.element = el("div", {}, this.#button, this.#word, this.#none);
  }

  /**
   * @param {any} figure or an element of a series; undefined where there is none
   * @param {string} [none] the word where no value stands
   */
  show(figure, none = "") {
    const has = figure?.value !== undefined && figure.value !== "" && figure.state !== "error" && figure.state !== "waiting";
    this.#button.hidden = !has;
    this.#none.hidden = has;
    if (!has) {
      write(this.#none, none);
      this.#word.hidden = true;
      return;
    }
    const unit = figure.unit ?? "";
    const words = figure.kind === "text" || figure.kind === "truth" || figure.kind === "record";
    mark(this.#q, "words", words);
    mark(this.#q, "range", figure.kind === "series");
    mark(this.#unit, "long", unit.length > 5);
    write(this.#value, figure.value);
    if (this.#unit.textContent !== unit) this.#unit.replaceChildren(broken(unit));
    write(this.#u, figure.u ? `± ${figure.u}` : "");
    const outOfDate = figure.state !== "working" && Boolean(figure.outOfDate);
    mark(this.element, "old", figure.state === "working" || outOfDate);
    write(this.#word, figure.state === "working" ? "being worked out" : outOfDate ? "saved value out of date" : "");
    this.#word.hidden = this.#word.textContent === "";
    if (outOfDate) attribute(this.#word, "title", [figure.outOfDate.why, ...(figure.outOfDate.differences ?? []).map((one) => `${one.what ?? ""}: saved ${one.saved}, now ${one.now}`)].filter(Boolean).join(" "));
  }

  /** @param {boolean} on */
  traced(on) {
    attribute(this.#button, "aria-pressed", on ? "true" : null);
  }

  get button() {
    return this.#button;
  }
}
