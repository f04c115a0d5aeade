import { attribute, el, mark } from "./dom.js";
import { glyph, verdictClass } from "./verdict.js";

/** One line of a register: a row with its number, the head of a group, or the line a new row is written on. */
export class RegisterRow {
  /** @type {HTMLElement[]} one a column */
  cells = [];
  #line;
  #texts = "";

  /** @param {import("./register.js").Register} register @param {number} index */
  constructor(register, index) {
    this.register = register;
    this.index = index;
    this.element = el("tr", { role: "row", "aria-rowindex": String(index + 2), "data-line": String(index) });
    this.number = el("th", { scope: "row", class: "rn" });
    this.cells = register.columns.map((column, at) => el("td", { role: "gridcell", class: `k-${column.kind}${column.formula ? " worked" : ""}`, tabindex: "-1", "data-column": String(at), "aria-readonly": column.formula ? "true" : null }));
    this.verdict = register.of.isJudged() ? el("td", { class: "rv" }) : null;
    this.element.append(this.number, ...this.cells, ...(this.verdict ? [this.verdict] : []));
  }

  /** Draws what is known of the line; nothing where it stands as it stood. */
  draw() {
    const { of } = this.register;
    const line = of.rows.line(this.index);
    const typed = this.cells.map((_, column) => of.typed(this.index, column));
    const texts = JSON.stringify(typed);
    if (line === this.#line && texts === this.#texts && this.#line !== undefined) return;
    this.#line = line;
    this.#texts = texts;
    const isNew = this.index >= of.rows.total && of.isWritten();
    mark(this.element, "fresh", isNew);
    mark(this.element, "group", line?.group !== undefined);
    mark(this.element, "fifth", (this.index + 1) % 5 === 0);
    this.number.textContent = isNew ? "new" : line?.group !== undefined ? `${line.count}` : line?.row ? String(line.row) : "";
    if (line?.group !== undefined) this.number.append(el("span", { class: "unseen" }, " rows"));
    this.cells.forEach((cell, column) => this.#cell(cell, column, line, typed[column], isNew));
    if (this.verdict) this.verdict.replaceChildren(...(line?.verdict ? [el("span", { class: `verdict ${verdictClass(line.verdict)}` }, glyph(line.verdict), line.verdict)] : []));
  }

  /** @param {HTMLElement} cell @param {number} column @param {any} line @param {string | undefined} typed @param {boolean} isNew */
  #cell(cell, column, line, typed, isNew) {
    // a value that is being entered is not drawn over
    if (cell.firstElementChild instanceof HTMLInputElement) return;
    const { head, kind, formula } = this.register.columns[column];
    const text = typed ?? line?.cells[column] ?? "";
    const wrong = typed === undefined ? line?.wrong?.[head] : undefined;
    const verdict = typed === undefined ? line?.verdicts?.[head] : undefined;
    const known = line !== undefined || typed !== undefined;
    const out = verdict === "outside" || verdict === "not proven";
    mark(cell, "wrong", Boolean(wrong));
    attribute(cell, "aria-invalid", wrong ? "true" : null);
    attribute(cell, "title", wrong ?? (kind === "text" && text.length > 22 ? text : null));
    const parts = [el("span", { class: "v" }, text)];
    if (text === "" && known && line?.group === undefined) parts[0] = formula ? el("span", { class: "v no-value" }, "none") : missing();
    if (isNew && text === "") parts[0] = el("span", { class: "v" }, el("span", { class: "unseen" }, `new row, ${head}`));
    if (out) parts.push(el("span", { class: `mark ${verdictClass(verdict)}` }, el("span", { class: "unseen" }, verdict)));
    cell.replaceChildren(...parts);
  }

  /** @param {boolean} on whether the cursor is in it */
  current(on) {
    mark(this.element, "at", on);
  }

  /** Draws it anew though the server said nothing of it. */
  again() {
    this.#texts = "again";
    this.draw();
  }
}

/** A value that is missing: a line that nobody wrote on. */
function missing() {
  return el("span", { class: "v" }, el("span", { class: "missing" }, el("span", { class: "unseen" }, "missing")));
}
