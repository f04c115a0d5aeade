import { el, mark } from "./dom.js";

/**
 * A line to write on. What is typed is kept when the field is left or Enter is pressed; Esc takes back what
 * was not kept yet. What comes from elsewhere never overwrites a text that is being typed.
 */
export class Field {
  #kept = "";

  /**
   * @param {object} what
   * @param {string} what.label for screen readers, unless a label element names it
   * @param {string} [what.look] further classes
   * @param {string} [what.key] what it writes, to find it again after its row was drawn anew
   * @param {string} [what.placeholder]
   * @param {string} [what.mode] inputmode
   * @param {(text: string) => void} what.keep
   * @param {"input"|"textarea"} [tag]
   */
  constructor(what, tag = "input") {
    this.input = el(tag, {
      class: `field ${what.look ?? ""}`.trim(),
      "aria-label": what.label || null,
      "data-key": what.key,
      placeholder: what.placeholder,
      inputmode: what.mode,
      type: tag === "input" ? "text" : null,
      rows: tag === "textarea" ? 1 : null,
      autocomplete: "off",
      spellcheck: "false",
      onchange: () => this.#leave(what.keep),
      onkeydown: (event) => this.#key(event, what.keep),
    });
  }

  get isOpen() {
    return this.input.value !== this.#kept;
  }

  /** The text as the record has it. */
  get kept() {
    return this.#kept;
  }

  /** @param {string} text as the record has it now */
  show(text) {
    const open = this.isOpen;
    this.#kept = text;
    if (!open) this.input.value = text;
  }

  /** Takes over a text that was being typed before the row was drawn anew. @param {string} text */
  resume(text) {
    this.input.value = text;
  }

  /** @param {boolean} on */
  refused(on) {
    mark(this.input, "refused", on);
  }

  /** @param {(text: string) => void} keep */
  #leave(keep) {
    if (!this.isOpen) return;
    this.#kept = this.input.value;
    keep(this.#kept);
  }

  /** @param {KeyboardEvent} event @param {(text: string) => void} keep */
  #key(event, keep) {
    if (event.key === "Escape" && this.isOpen) {
      event.stopPropagation();
      this.input.value = this.#kept;
    }
    if (event.key === "Enter" && !event.isComposing) {
      event.preventDefault();
      this.#leave(keep);
      this.input.dispatchEvent(new CustomEvent("taken", { bubbles: true }));
    }
  }
}
