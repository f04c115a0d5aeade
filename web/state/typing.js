export const PREVIEW_AFTER = 60;
export const KEEP_AFTER = 300;

/**
 * What is being typed in one clause: shown soon, kept when the typing rests or the clause is left.
 */
export class Typing {
  #text;
  #kept;
  #shown;
  #preview;
  #keep;

  /**
   * @param {string} text as the record has it
   * @param {{preview: (text: string) => void, keep: (text: string) => void}} on
   * @param {{set: (f: () => void, ms: number) => any, clear: (handle: any) => void}} timers
   */
  constructor(text, on, timers) {
    this.#text = text;
    this.#kept = text;
    this.#shown = text;
    this.on = on;
    this.timers = timers;
  }

  /** Whether something was typed that has not been handed on to be kept. */
  get isOpen() {
    return this.#text !== this.#kept;
  }

  get text() {
    return this.#text;
  }

  /** @param {string} text the whole text after a keystroke */
  typed(text) {
    this.#text = text;
    this.timers.clear(this.#keep);
    this.#keep = this.timers.set(() => this.rest(), KEEP_AFTER);
    if (this.#preview === undefined) {
      this.#preview = this.timers.set(() => {
        this.#preview = undefined;
        this.#show();
      }, PREVIEW_AFTER);
    }
  }

  /** Shows the text, also where it is again what is kept: what was shown meanwhile is not. */
  #show() {
    if (this.#shown === this.#text) return;
    this.#shown = this.#text;
    this.on.preview(this.#text);
  }

  /** Keeps what was typed, at once. */
  rest() {
    this.timers.clear(this.#keep);
    this.timers.clear(this.#preview);
    this.#preview = undefined;
    this.#show();
    if (!this.isOpen) return;
    this.#kept = this.#text;
    this.on.keep(this.#text);
  }

  /** @param {string} text another window's, taken over here */
  replaced(text) {
    this.timers.clear(this.#keep);
    this.timers.clear(this.#preview);
    this.#preview = undefined;
    this.#text = text;
    this.#kept = text;
    this.#shown = text;
  }
}
