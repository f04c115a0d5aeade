import { grouped } from "../state/table.js";
import { el } from "./dom.js";

/** @type {[string, string][]} */
const KINDS = [["number", "number"], ["text", "text"], ["date", "date"], ["truth", "yes or no"]];
const SHOWN = 12;

/** A file taken in: what was understood of it is shown first, and nothing is kept before the word is given. */
export class TableIn {
  #file;
  #kinds = {};
  #decimal = "point";
  #encoding = "";
  #sheet = "";
  #seq = 0;
  #said = el("div", { class: "take-in-said" });
  #back = document.activeElement;

  /** @param {import("./table.js").TableBody} body */
  constructor(body) {
    this.body = body;
    this.page = body.clause.page;
    this.element = el("section", { class: "particulars take-in", "aria-label": "File taken in", tabindex: "-1" }, this.#said);
    this.element.addEventListener("keydown", (event) => event.key === "Escape" && !event.defaultPrevented && (event.preventDefault(), this.close()));
  }

  /** @param {File} file */
  async open(file) {
    this.#file = file;
    this.body.clause.content.querySelector(".take-in")?.remove();
    this.body.clause.content.prepend(this.element);
    await this.#preview();
    this.element.focus();
  }

  close() {
    this.element.remove();
    if (this.#back instanceof HTMLElement) this.#back.focus({ preventScroll: true });
  }

  /** @param {string} what preview or take @param {string} [to] replace or append */
  async #send(what, to = "") {
    const form = new FormData();
    form.set("decimal", this.#decimal);
    if (this.#sheet) form.set("sheet", this.#sheet);
    if (this.#encoding) form.set("encoding", this.#encoding);
    for (const [column, kind] of Object.entries(this.#kinds)) form.append("kind", `${column}=${kind}`);
    if (to) form.set("to", to);
    // last, so that all that is said of it is known when it comes
    form.set("file", this.#file);
    try {
      const answer = await fetch(`${this.body.address}/${what}`, { method: "POST", body: form });
      return { ok: answer.ok, ...(await answer.json()) };
    } catch {
      return { ok: false, message: "The line to the server is lost.", wayOut: "Nothing was taken in; try again when it is back." };
    }
  }

  async #preview() {
    const seq = ++this.#seq;
    this.#said.replaceChildren(el("p", { role: "status" }, `${this.#file.name} is being read.`));
    const found = await this.#send("preview");
    if (seq !== this.#seq) return;
    this.#said.replaceChildren(...this.#shown(found));
  }

  async #take(to) {
    this.#said.querySelectorAll("button").forEach((button) => (button.disabled = true));
    const done = await this.#send("take", to);
    if (!done.ok) return this.#said.replaceChildren(...this.#shown(done));
    this.close();
    this.page.says.offer(`${grouped(done.rows)} rows taken in from ${this.#file.name}.`, [["undo", () => this.page.undo()]]);
  }

  #shown(found) {
    const head = el("header", {}, el("span", { role: "status" }, this.#sentence(found)), el("span", {}, "Esc leaves it"));
    const columns = found.columns ?? [];
    const problems = found.problems ?? [];
    const fits = found.ok && problems.length === 0;
    const same = (this.body.table.rows ?? 0) > 0 && found.appends;
    // which sheet is a question, not a fault
    const asks = (found.sheets ?? []).length > 1 && !this.#sheet;
    const words = [
      fits && el("button", { type: "button", class: "btn main", onclick: () => this.#take("replace") }, (this.body.table.rows ?? 0) > 0 ? "Take in, in place of the rows that stand" : "Take in"),
      fits && same && el("button", { type: "button", class: "btn", onclick: () => this.#take("append") }, "Add beneath the rows that stand"),
      el("button", { type: "button", class: "word", onclick: () => this.close() }, "leave it"),
    ];
    return [head, this.#choices(found), columns.length > 0 && this.#columns(columns), problems.length > 0 && !asks && this.#problems(problems, found.more ?? 0), ...(found.notices ?? []).map((one) => el("p", { class: "with" }, one)), el("div", { class: "foot" }, ...words.filter(Boolean))].filter(Boolean);
  }

  #sentence(found) {
    const problems = (found.problems ?? []).length + (found.more ?? 0);
    if (found.sheets?.length > 1 && !this.#sheet) return `${this.#file.name} has ${found.sheets.length} sheets. Say which one is the table.`;
    if (!found.columns?.length && problems > 0) return `${this.#file.name} cannot be taken in as it is.`;
    if (!found.columns) return [found.message, found.wayOut].filter(Boolean).join(" ");
    const read = `${this.#file.name}: ${grouped(found.rows)} ${found.rows === 1 ? "row" : "rows"}, ${found.columns.length} ${found.columns.length === 1 ? "column" : "columns"} understood as below.`;
    return problems > 0 ? `${read} ${grouped(problems)} ${problems === 1 ? "value does" : "values do"} not fit; nothing can be taken in before they do.` : read;
  }

  #choices(found) {
    const choose = (caption, value, choices, act) => {
      const select = el("select", { class: "field", onchange: () => (act(select.value), this.#preview()) }, ...choices.map(([one, word]) => el("option", { value: one }, word)));
      select.value = value;
      return el("label", {}, caption, select);
    };
    // a workbook keeps its numbers as numbers
    if (found.workbook) {
      const sheets = found.sheets ?? [];
      const named = [...(this.#sheet ? [] : [["", "which one?"]]), ...sheets.map((name) => [name, name])];
      return sheets.length > 1 && el("fieldset", {}, choose("Sheet of the workbook", this.#sheet, named, (one) => ((this.#sheet = one), (this.#kinds = {}))));
    }
    return el(
      "fieldset",
      {},
      choose("Decimals in the file", this.#decimal, [["point", "point, 12.5"], ["comma", "comma, 12,5"]], (one) => (this.#decimal = one)),
      choose("Letters", this.#encoding, [["", "as found"], ["UTF-8", "UTF-8"], ["windows-1252", "Windows, western"], ["ISO-8859-1", "Latin-1"], ["UTF-16", "UTF-16"]], (one) => (this.#encoding = one)),
    );
  }

  #columns(columns) {
    const rows = columns.map((column) => {
      const kind = el("select", { class: "field", "aria-label": `Kind of ${column.head}`, onchange: () => ((this.#kinds[column.written] = kind.value), this.#preview()) }, ...KINDS.map(([one, word]) => el("option", { value: one }, word)));
      kind.value = column.kind || "number";
      return el("tr", {}, el("th", { scope: "row" }, column.head), el("td", {}, column.unit || "–"), el("td", {}, kind), el("td", {}, column.missing ? grouped(column.missing) : "none"), el("td", { class: "firsts" }, (column.first ?? []).join("   ")));
    });
    const heads = ["Head", "Unit", "Kind", "Missing", "First values"].map((text) => el("th", { scope: "col" }, text));
    return el("div", { class: "wide", tabindex: "0", role: "group", "aria-label": "Columns as understood" }, el("table", { class: "t" }, el("caption", { class: "unseen" }, "Columns as understood"), el("thead", {}, el("tr", {}, ...heads)), el("tbody", {}, ...rows)));
  }

  #problems(problems, more) {
    const beyond = problems.length - SHOWN + more;
    return el(
      "div",
      { class: "take-in-problems" },
      el("ul", {}, ...problems.slice(0, SHOWN).map((one) => el("li", {}, el("span", { class: "where" }, [one.row ? `row ${one.row}` : "", one.column ? `column ${one.column}` : "", one.head].filter(Boolean).join(", ")), one.row || one.head ? ` ${one.message}` : one.message))),
      beyond > 0 && el("p", {}, `and ${grouped(beyond)} more`),
    );
  }
}
