import { el } from "./dom.js";

/** What the page has to say: aloud to screen readers, and along the lower edge where there is a choice. */
export class Says {
  #line = el("div", { role: "status" });
  #about = "";
  #box;

  /** @param {Element} element */
  constructor(element) {
    this.#box = el("div", {});
    element.append(this.#box);
    this.#line.className = "unseen";
    document.body.append(this.#line);
  }

  /** A sentence, said once. @param {string} text */
  say(text) {
    this.#line.textContent = text;
  }

  /**
   * A sentence with words to press; it stays until something else is said or it is put away.
   * @param {string} text
   * @param {[string, () => void][]} words
   * @param {string} [about] what settles it, where something other than its words may
   */
  offer(text, words, about = "") {
    this.say(text);
    this.#about = about;
    const buttons = words.map(([word, act]) => el("button", { type: "button", class: "word", onclick: () => (this.clear(), act()) }, word));
    const away = el("button", { type: "button", class: "word", onclick: () => this.clear() }, "put away");
    this.#box.replaceChildren(el("span", {}, text), ...buttons, away);
  }

  /** Asks for a short text. @param {string} question @param {(answer: string) => void} act */
  ask(question, act) {
    const before = document.activeElement;
    const input = el("input", { class: "field", type: "text", "aria-label": question, size: 8 });
    const done = () => {
      this.clear();
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
    input.addEventListener("keydown", (event) => {
      event.stopPropagation();
      if (event.key === "Escape") done();
      if (event.key === "Enter") {
        const answer = input.value.trim();
        done();
        if (answer !== "") act(answer);
      }
    });
    // a question that was left without an answer does not stay in the way
    input.addEventListener("blur", () => queueMicrotask(() => this.#box.contains(input) && input.value.trim() === "" && this.clear()));
    this.#box.replaceChildren(el("span", {}, question), input);
    input.focus();
  }

  /** What it was about has been settled in another way. @param {string} about */
  settled(about) {
    if (about === this.#about) this.clear();
  }

  clear() {
    this.#about = "";
    this.#box.replaceChildren();
  }
}
