import { entered } from "../state/cursor.js";
import { el } from "./dom.js";

/** A value while it is entered. Enter keeps it and goes down, Tab to the right, Esc takes it back. */
export class RegisterEntry {
  /** @type {HTMLInputElement | null} */
  #input = null;
  #before = "";
  #at = { line: 0, column: 0 };
  /** @type {{column: number, to: {line: number, column: number}} | null} where a line begun with Tab goes on, and where it began */
  #run = null;

  /** @param {import("./register.js").Register} register */
  constructor(register) {
    this.register = register;
  }

  get isOpen() {
    return this.#input !== null;
  }

  /** @param {string} [first] what was typed to begin with; undefined: the value as it is */
  open(first) {
    const { register } = this;
    const { line, column } = register.cursor;
    const cell = register.cellAt(line, column);
    const of = register.columns[column];
    if (!cell || !of || this.#input) return;
    const known = register.of.rows.line(line);
    if (of.formula || known?.group !== undefined) return register.of.moved({ line, column });
    if (!register.of.isSettled()) return;
    this.#at = { line, column };
    this.#before = register.of.typed(line, column) ?? known?.cells[column] ?? "";
    this.#input = el("input", { class: "field", type: "text", autocomplete: "off", spellcheck: "false", inputmode: of.kind === "number" ? "decimal" : null, "aria-label": `${of.head}${of.unit ? ` in ${of.unit}` : ""}, row ${known?.row ?? "new"}`, value: first ?? this.#before, onkeydown: (event) => this.#key(event), onblur: () => this.close(true) });
    cell.replaceChildren(this.#input);
    this.#input.focus({ preventScroll: true });
    if (first === undefined) this.#input.select();
    else this.#input.setSelectionRange(first.length, first.length);
  }

  /** Takes a value out: it is missing then. */
  clear() {
    const { line, column } = this.register.cursor;
    const of = this.register.columns[column];
    const known = this.register.of.rows.line(line);
    if (!of || of.formula || !known || known.group !== undefined || known.cells[column] === "" || !this.register.of.isSettled()) return;
    this.register.of.keep(line, column, "");
  }

  /** @param {boolean} keep */
  close(keep) {
    const input = this.#input;
    if (!input) return;
    this.#input = null;
    const { line, column } = this.#at;
    const text = input.value.trim();
    const focused = document.activeElement === input;
    input.remove();
    if (keep && text !== this.#before) this.register.of.keep(line, column, text);
    this.register.redraw(line);
    if (focused) this.register.cellAt(line, column)?.focus({ preventScroll: true });
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    if (event.isComposing) return;
    if (event.key === "Escape") {
      event.preventDefault();
      event.stopPropagation();
      this.close(false);
    } else if (event.key === "Enter" || event.key === "Tab") {
      event.preventDefault();
      const { register } = this;
      const at = this.#at;
      this.close(true);
      const goesOn = this.#run?.to.line === at.line && this.#run.to.column === at.column;
      const began = goesOn ? this.#run?.column : undefined;
      const to = entered(at, event.key, event.shiftKey, { lines: register.lines, columns: register.columns.length, began });
      this.#run = event.key === "Tab" && !event.shiftKey && to.line === at.line ? { column: began ?? at.column, to } : null;
      register.go(to);
    }
  }
}
