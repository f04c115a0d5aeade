import { spokenName, typesetName } from "../state/names.js";
import { attribute, el, mark, write } from "./dom.js";

/** A name as it is set, its index lowered. @param {string} name */
export function nameMark(name) {
  const { base, index } = typesetName(name);
  return el("span", { class: "nm" }, base, index && el("sub", {}, index));
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
    mark(this.#unit, "long", unit.length > 5);
    write(this.#value, figure.value);
    write(this.#unit, unit);
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
