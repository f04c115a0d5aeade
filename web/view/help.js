import { argumentAt, callAt } from "../state/call.js";
import { el } from "./dom.js";

const AFTER = 120;

/** The line of help beneath a pad: the call the cursor stands in, the argument it is at, the source. */
export class Help {
  #known = new Map();
  #drawn = "";
  #timer;

  /** @param {(name: string) => Promise<any>} ask */
  constructor(ask) {
    this.ask = ask;
    this.element = el("div", { class: "pad-help", hidden: true });
  }

  /** The cursor moved, or the text did. @param {string} text @param {number} offset */
  at(text, offset) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#show(callAt(text, offset)), AFTER);
  }

  async #show(call) {
    const drawn = JSON.stringify(call);
    if (drawn === this.#drawn) return;
    this.#drawn = drawn;
    const known = call && (await this.#of(call.name));
    // another place meanwhile
    if (drawn !== this.#drawn) return;
    this.element.hidden = !known;
    if (known) this.element.replaceChildren(...words(known, call));
  }

  async #of(name) {
    if (!this.#known.has(name)) {
      const answer = await this.ask(name);
      if (!answer) return null;
      this.#known.set(name, answer.title ? answer : null);
    }
    return this.#known.get(name);
  }

  close() {
    clearTimeout(this.#timer);
  }
}

/** @param {any} known @param {any} call */
function words(known, call) {
  if (!known.arguments) return [el("p", {}, el("span", { class: "src" }, known.title), " ", (known.lines ?? []).join("; "))];
  /** @type {any} */
  const here = argumentAt(known.arguments, call);
  const args = known.arguments.flatMap((one, index) => [index > 0 ? ", " : "", el(one === here ? "mark" : "span", { class: "src" }, one.name), one.unit && one.unit !== "1" && el("span", { class: "un" }, ` [${one.unit}]`)]);
  const about = here && [here.description, here.range, here.choices?.map((text) => `"${text}"`).join(", "), here.default && (here.default === "may be left out" ? here.default : `${here.default} if left out`)].filter(Boolean).join("; ");
  return [
    el("p", {}, el("span", { class: "src" }, `${call.name}(`), ...args, el("span", { class: "src" }, ")")),
    about && el("p", {}, el("strong", { class: "src" }, here.name), ` ${about}`),
    el("p", { class: "from" }, `Source: ${known.source}`),
  ].filter(Boolean);
}
