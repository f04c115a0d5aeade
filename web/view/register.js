import { led } from "../state/cursor.js";
import { inView, topFor } from "../state/scroll.js";
import { arrange, attribute, el, freshId, mark, svg } from "./dom.js";
import { shownUnits } from "./reading-row.js";
import { RegisterEntry } from "./register-entry.js";
import { RegisterRow } from "./register-row.js";

/** Lines of a paper copy; what is beyond is said. */
export const PRINTED = 200;

/**
 * A column as the register shows it.
 * @typedef {object} Column
 * @property {string} head
 * @property {string} kind number, text, date, truth
 * @property {string} [unit]
 * @property {string} [formula] where it is worked out
 * @property {number} [missing] values that are
 * @property {string} [sorted] rising, falling, or nothing
 */

/**
 * The rows of a table as a ruled register: heads that stay, the rows in view, and a line to write on
 * beneath the last. Keys lead from value to value; only one of them is reached by Tab.
 */
export class Register {
  /** @type {Map<number, RegisterRow>} */
  #drawn = new Map();
  #heads = el("tr", { role: "row", "aria-rowindex": "1" });
  #above = space();
  #below = space();
  #lines = el("tbody", { role: "rowgroup" });
  #cursor = { line: 0, column: 0 };
  #due = false;
  #paper = false;

  /**
   * @param {{rows: import("../state/rows.js").Rows, columns: () => readonly Column[], isWritten: () => boolean, isJudged: () => boolean,
   *   isSettled: () => boolean, typed: (line: number, column: number) => string | undefined, keep: (line: number, column: number, text: string) => void,
   *   paste: (text: string, at: {line: number, column: number}) => void, copy: (at: {line: number, column: number}) => string,
   *   press: (column: number) => void, moved: (at: {line: number, column: number}) => void}} of
   *   isWritten: whether there is a line for a new row
   */
  constructor(of) {
    this.of = of;
    this.said = el("caption", { class: "unseen", id: freshId("register") });
    this.table = el("table", { role: "grid", "aria-labelledby": this.said.id }, this.said, el("thead", { role: "rowgroup" }, this.#heads), this.#above.element, this.#lines, this.#below.element);
    this.frame = el("div", { class: "register-frame", tabindex: "-1" }, this.table);
    this.element = this.frame;
    this.entry = new RegisterEntry(this);
    this.frame.addEventListener("scroll", () => this.#soon(), { passive: true });
    this.frame.addEventListener("keydown", (event) => this.#key(event));
    this.frame.addEventListener("mousedown", (event) => this.#pressed(event));
    this.frame.addEventListener("dblclick", (event) => this.#placeOf(event.target) && this.entry.open());
    this.frame.addEventListener("focusin", (event) => this.#focused(event));
    this.frame.addEventListener("paste", (event) => this.#paste(event));
    this.frame.addEventListener("copy", (event) => this.#copy(event));
    new ResizeObserver(() => this.#soon()).observe(this.frame);
    addEventListener("beforeprint", () => this.#print(true));
    addEventListener("afterprint", () => this.#print(false));
  }

  get columns() {
    return this.of.columns();
  }

  /** Lines there are, with the one that a new row is written on. */
  get lines() {
    return this.of.rows.total + (this.of.isWritten() ? 1 : 0);
  }

  get cursor() {
    return this.#cursor;
  }

  /** Heads anew: columns, or the order of rows, are other ones. */
  drawHeads() {
    this.#heads.replaceChildren(el("th", { scope: "col", class: "rn" }, "Row"), ...this.columns.map((column, index) => this.#head(column, index)), ...(this.of.isJudged() ? [el("th", { scope: "col", class: "rv" }, "Verdict")] : []));
    if (this.entry.isOpen) this.entry.close(true);
    // the lines are taken from the page as they are drawn anew, so that it does not lose its place
    this.#drawn.clear();
  }

  /** @param {Column} column @param {number} index */
  #head(column, index) {
    const under = [column.unit || (column.kind === "number" ? "" : column.kind === "truth" ? "yes or no" : column.kind), column.formula ? "worked out" : ""].filter(Boolean).join(", ");
    const button = el("button", { type: "button", class: "head", "aria-expanded": "false", title: column.formula ? `= ${column.formula}` : null, onclick: () => this.of.press(index) }, el("span", { class: "hd" }, column.head || "not named", column.sorted && el("span", { class: "sorted" }, ` ${column.sorted}`)), el("span", { class: "un" }, under ? shownUnits(under) : "plain"));
    return el("th", { scope: "col", class: `k-${column.kind}`, "aria-sort": column.sorted === "rising" ? "ascending" : column.sorted === "falling" ? "descending" : null }, button);
  }

  /** The words of a head are open, or no longer. @param {number} column @param {boolean} open */
  expanded(column, open) {
    [...this.#heads.querySelectorAll("button")].forEach((button, index) => attribute(button, "aria-expanded", String(open && index === column)));
  }

  #soon() {
    if (this.#due) return;
    this.#due = true;
    requestAnimationFrame(() => {
      this.#due = false;
      this.draw();
    });
  }

  get #sight() {
    const line = this.#lines.querySelector("tr")?.offsetHeight || 30;
    const height = Math.max(line, this.frame.clientHeight - this.#heads.offsetHeight);
    return { top: this.frame.scrollTop, height, line, total: this.lines };
  }

  /** What is in view, as it is now. */
  draw() {
    const { rows } = this.of;
    const sight = this.#sight;
    const seen = this.#paper ? { first: 0, last: Math.min(this.lines, PRINTED), above: 0, below: 0 } : inView(sight);
    if (rows.total > 0 || seen.last === seen.first) rows.want(seen.first, Math.max(seen.last, seen.first + 1));
    else rows.want(0, 1);
    this.#cursor = { line: Math.min(this.#cursor.line, Math.max(0, this.lines - 1)), column: Math.min(this.#cursor.column, Math.max(0, this.columns.length - 1)) };
    const held = this.#lines.contains(document.activeElement);
    if (this.entry.isOpen && (this.#cursor.line < seen.first || this.#cursor.line >= seen.last)) this.entry.close(true);
    const elements = [];
    for (let index = seen.first; index < seen.last; index++) {
      let row = this.#drawn.get(index);
      if (!row) this.#drawn.set(index, (row = new RegisterRow(this, index)));
      row.draw();
      elements.push(row.element);
    }
    for (const index of this.#drawn.keys()) {
      if (index < seen.first || index >= seen.last) this.#drawn.delete(index);
    }
    arrange(this.#lines, elements);
    this.#above.high(seen.above);
    this.#below.high(seen.below);
    attribute(this.table, "aria-rowcount", String(this.lines + 1));
    attribute(this.table, "aria-colcount", String(this.columns.length + 1 + (this.of.isJudged() ? 1 : 0)));
    this.#tabStop();
    // what had the focus was scrolled away: keys go on from here
    if (held && !this.#lines.contains(document.activeElement)) (this.#cell() ?? this.frame).focus({ preventScroll: true });
  }

  /** The value of the cursor, if its line is drawn. */
  #cell() {
    return this.#drawn.get(this.#cursor.line)?.cells[this.#cursor.column];
  }

  #tabStop() {
    const stop = this.#cell() ?? this.#drawn.values().next().value?.cells[this.#cursor.column];
    for (const other of this.#lines.querySelectorAll('[tabindex="0"]')) if (other !== stop) other.setAttribute("tabindex", "-1");
    if (stop) attribute(stop, "tabindex", "0");
  }

  /** Leads to a value, scrolled into view. @param {{line: number, column: number}} place @param {boolean} [focus] */
  go(place, focus = true) {
    this.#drawn.get(this.#cursor.line)?.current(false);
    this.#cursor = place;
    const top = topFor(place.line, this.#sight);
    if (top !== this.frame.scrollTop) this.frame.scrollTop = top;
    this.draw();
    this.#drawn.get(place.line)?.current(true);
    if (focus) this.#cell()?.focus({ preventScroll: true });
    this.#across();
    this.of.moved(place);
  }

  /** A value hidden beside the view, or under the numbers of the rows, is brought into it. */
  #across() {
    const cell = this.#cell()?.getBoundingClientRect();
    if (!cell) return;
    const frame = this.frame.getBoundingClientRect();
    const left = frame.left + (this.#heads.firstElementChild?.clientWidth ?? 0);
    if (cell.left < left) this.frame.scrollLeft -= left - cell.left;
    else if (cell.right > frame.right) this.frame.scrollLeft += Math.min(cell.right - frame.right, cell.left - left);
  }

  /** @param {number} line @param {number} column */
  cellAt(line, column) {
    return this.#drawn.get(line)?.cells[column];
  }

  /** Draws a line anew: what was typed in it changed. @param {number} line */
  redraw(line) {
    this.#drawn.get(line)?.again();
  }

  // what is done in it

  /** @param {EventTarget | null} target */
  #placeOf(target) {
    /** @type {HTMLElement | null} */
    const cell = target instanceof Element ? target.closest("[data-column]") : null;
    if (!cell) return null;
    return { line: Number(/** @type {HTMLElement} */ (cell.parentElement).dataset.line), column: Number(cell.dataset.column) };
  }

  /** @param {MouseEvent} event */
  #pressed(event) {
    const place = this.#placeOf(event.target);
    if (!place || event.target instanceof HTMLInputElement) return;
    event.preventDefault();
    if (this.entry.isOpen) this.entry.close(true);
    this.go(place);
  }

  /** @param {FocusEvent} event */
  #focused(event) {
    const place = this.#placeOf(event.target);
    if (!place || event.target instanceof HTMLInputElement) return;
    if (place.line === this.#cursor.line && place.column === this.#cursor.column) {
      this.#drawn.get(place.line)?.current(true);
      this.of.moved(place);
    } else this.go(place, false);
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    if (this.entry.isOpen || event.defaultPrevented || event.isComposing || event.altKey) return;
    if (event.target instanceof Element && event.target.closest("thead")) return;
    const mod = event.ctrlKey || event.metaKey;
    const { height, line } = this.#sight;
    const to = led(this.#cursor, event.key, { lines: this.lines, columns: this.columns.length, page: Math.max(1, Math.floor(height / line) - 1), mod });
    if (to) {
      event.preventDefault();
      return this.go(to);
    }
    if (mod) return;
    if (event.key === "Enter" || event.key === "F2") {
      event.preventDefault();
      this.entry.open();
    } else if (event.key === "Delete" || event.key === "Backspace") {
      event.preventDefault();
      this.entry.clear();
    } else if (event.key.length === 1) {
      event.preventDefault();
      this.entry.open(event.key);
    } else if (event.key === "Process" || event.key === "Dead") this.entry.open("");
  }

  /** @param {ClipboardEvent} event */
  #paste(event) {
    if (this.entry.isOpen) return;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (text === "") return;
    event.preventDefault();
    this.of.paste(text, this.#cursor);
  }

  /** @param {ClipboardEvent} event */
  #copy(event) {
    if (this.entry.isOpen || String(getSelection()) !== "") return;
    event.clipboardData?.setData("text/plain", this.of.copy(this.#cursor));
    event.preventDefault();
  }

  /** @param {boolean} on */
  #print(on) {
    this.#paper = on;
    mark(this.frame, "on-paper", on);
    this.draw();
  }
}

/** Space in place of lines that are not drawn. */
function space() {
  const sheet = svg("svg", { width: 1, height: 0, "aria-hidden": "true", focusable: "false" });
  const element = el("tbody", { class: "space", "aria-hidden": "true", hidden: true }, el("tr", {}, el("td", {}, sheet)));
  return {
    element,
    /** @param {number} height [px] */
    high(height) {
      element.hidden = height <= 0;
      attribute(sheet, "height", String(height));
    },
  };
}

