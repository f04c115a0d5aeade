import { attribute, el, freshId, mark, write } from "./dom.js";

/** Something long that is set out at a word of action, and put away by the same. */
export class SetOut {
  #out = false;

  /**
   * @param {{out: string, away: string}} words
   * @param {HTMLElement} box what is set out
   * @param {boolean} [out] whether it is from the start
   */
  constructor(words, box, out = false) {
    this.words = words;
    this.box = box;
    box.id ||= freshId("set-out");
    this.word = el("button", { type: "button", class: "word set-out", "aria-controls": box.id, onclick: () => this.set(!this.#out) });
    this.set(out);
  }

  get isOut() {
    return this.#out;
  }

  /** @param {boolean} out */
  set(out) {
    this.#out = out;
    attribute(this.word, "aria-expanded", String(out));
    write(this.word, out ? this.words.away : this.words.out);
    attribute(this.box, "data-away", out ? null : "");
  }
}

/**
 * Makes an element short where the window is narrow, and a word that lengthens it: which of it stays is the
 * style's. Where there is room it stands whole and the word is not shown.
 * @param {Element} element
 * @param {{out: string, away: string}} words
 * @returns {{word: HTMLButtonElement, shorten: () => void}}
 */
export function shortened(element, words) {
  const word = el("button", { type: "button", class: "word lengthen", onclick: () => set(element.classList.contains("short")) });
  const set = (out) => {
    mark(element, "short", !out);
    attribute(word, "aria-expanded", String(out));
    write(word, out ? words.away : words.out);
  };
  set(false);
  return { word, shorten: () => set(false) };
}
