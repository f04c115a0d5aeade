import { el, isField } from "./dom.js";
import { remember, remembered } from "./remembered.js";

/**
 * Keys of the page. Single keys act outside fields only and can be switched off; the others always act.
 */
export class Keyboard {
  #keys;
  #single;

  /**
   * @param {[string, string, (event: KeyboardEvent) => void][]} keys key, what it does, how; longer names are combinations
   * @param {[string, () => void][]} [words] to press in the list of keys
   */
  constructor(keys, words = []) {
    this.#keys = keys;
    this.words = words;
    this.#single = remembered("single-keys", "on") === "on";
    document.addEventListener("keydown", (event) => this.#pressed(event));
  }

  /** @param {KeyboardEvent} event */
  #pressed(event) {
    if (event.defaultPrevented || event.isComposing) return;
    const name = nameOf(event);
    if (name.length === 1 && (isField(event.target) || document.querySelector("dialog[open]"))) return;
    if (name === "?") return this.#list(event);
    if (name.length === 1 && !this.#single) return;
    const key = this.#keys.find(([one]) => one === name);
    if (!key) return;
    if (/^(Mod|Enter)/.test(name) && isField(event.target)) return;
    if (name === "Enter" && event.target instanceof Element && event.target.closest("a, button:not(.value), dialog, summary, select")) return;
    event.preventDefault();
    key[2](event);
  }

  /** @param {Event} event */
  #list(event) {
    event.preventDefault();
    const box = el("input", { type: "checkbox", class: "check", onchange: () => this.#switch(box.checked) });
    box.checked = this.#single;
    const dialog = el(
      "dialog",
      { class: "keys-list", "aria-labelledby": "keys-title" },
      el("h2", { id: "keys-title" }, "Keys"),
      el("dl", {}, ...this.#keys.flatMap(([key, what]) => [el("dt", {}, key.replace("Mod+", "Ctrl ").replaceAll("+", " ")), el("dd", {}, what)])),
      el("label", {}, box, "Single keys act outside fields"),
      ...this.words.map(([word, act]) => el("p", {}, el("button", { type: "button", class: "word", onclick: () => (dialog.close(), act()) }, word))),
      el("button", { type: "button", class: "btn", onclick: () => dialog.close() }, "Close"),
    );
    dialog.addEventListener("close", () => dialog.remove());
    document.body.append(dialog);
    dialog.showModal();
  }

  /** @param {boolean} on */
  #switch(on) {
    this.#single = on;
    remember("single-keys", on ? "on" : "off");
  }
}

/** @param {KeyboardEvent} event */
function nameOf(event) {
  const mod = event.ctrlKey || event.metaKey;
  if (mod) return `Mod+${event.shiftKey ? "Shift+" : ""}${event.key.toUpperCase()}`;
  if (event.altKey) return `Alt+${event.shiftKey ? "Shift+" : ""}${event.key}`;
  return event.key.length === 1 ? event.key.toUpperCase() : event.key;
}
