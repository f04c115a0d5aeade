import { freeName, placeAfter } from "../state/clauses.js";
import { both, conditionOf, sortedBy, testsOf } from "../state/table.js";
import { el } from "./dom.js";

/** The words of action of a table, and the line that one of them opens beneath. */
export class TableWords {
  #open = "";
  #line = el("div", { class: "register-line", hidden: true });
  #back = null;

  /** @param {import("./table.js").TableBody} body */
  constructor(body) {
    this.body = body;
    this.file = el("input", { type: "file", class: "unseen", tabindex: "-1", "aria-hidden": "true", accept: ".csv,.tsv,.txt,.xlsx", onchange: () => this.file.files[0] && this.takeIn(this.file.files[0]) });
    this.#keep = word("keep rows where", () => this.keeping());
    this.#in = word("take in a file", () => this.file.click());
    this.#shelf = word("fill from the shelf", () => this.fromShelf());
    this.#again = word("read the shelf again", () => this.readAgain());
    this.#out = el("a", { class: "word", download: true }, "give out as CSV");
    this.element = el("div", { class: "register-words", role: "group", "aria-label": "Table" }, el("p", {}, this.#keep, this.#in, this.#shelf, this.#again, this.#out, this.file), this.#line);
    this.#line.addEventListener("keydown", (event) => this.#key(event));
  }

  #keep;
  #in;
  #shelf;
  #again;
  #out;

  update() {
    // the rows of a table of groups are worked out
    this.#in.hidden = Boolean(this.body.source.from?.table);
    this.#shelf.hidden = this.#in.hidden;
    this.#again.hidden = !this.body.source.from?.shelf;
    const asked = String(this.body.asked());
    this.#out.href = `${this.body.address}.csv${asked && `?${asked}`}`;
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    if (event.key !== "Escape" || event.defaultPrevented) return;
    event.preventDefault();
    event.stopPropagation();
    this.close();
  }

  close() {
    const column = this.#open.startsWith("column ") ? Number(this.#open.slice(7)) : -1;
    if (column >= 0) this.body.register.expanded(column, false);
    this.#open = "";
    this.#line.hidden = true;
    this.#line.replaceChildren();
    this.#back?.focus({ preventScroll: true });
    this.#back = null;
  }

  /** @param {string} what @param {HTMLElement[]} parts */
  #show(what, parts) {
    this.#back = document.activeElement;
    this.#open = what;
    this.#line.replaceChildren(...parts, word("put away", () => this.close()));
    this.#line.hidden = false;
    this.#line.querySelector("button, input, select")?.focus({ preventScroll: true });
  }

  /** What may be done by a column: its head was pressed. @param {number} index */
  column(index) {
    if (this.#open === `column ${index}`) return this.close();
    const { head, sorted } = this.body.columns[index];
    const view = this.body.source.view ?? {};
    const sort = (way) => () => (this.close(), this.body.view("sort", sortedBy(view.sort ?? [], head, way)));
    const groups = view.group ?? [];
    const group = groups.includes(head) ? word("no longer in groups of it", () => (this.close(), this.body.view("group", groups.filter((one) => one !== head)))) : word("in groups of it", () => (this.close(), this.body.view("group", [...groups, head])));
    this.#show(`column ${index}`, [
      el("span", {}, `${head}:`),
      ...(sorted === "rising" ? [] : [word("sort rising", sort("rising"))]),
      ...(sorted === "falling" ? [] : [word("sort falling", sort("falling"))]),
      ...(sorted === "" ? [] : [word("unsorted", sort(""))]),
      group,
      word("keep rows where it is", () => (this.close(), this.keeping(index))),
    ]);
    this.body.register.expanded(index, true);
  }

  /** Which rows are to be kept: a condition, written or put together. @param {number} [index] of a column */
  keeping(index = 0) {
    const { columns, source } = this.body;
    if (this.#open === "keep") return this.close();
    const field = el("input", { class: "field condition", type: "text", spellcheck: "false", autocomplete: "off", "aria-label": "Rows are kept where", placeholder: 'lash > 12 thou and batch = "B2"', value: source.view?.filter ?? "" });
    const keep = () => (this.close(), this.body.view("filter", field.value.trim()));
    field.addEventListener("keydown", (event) => {
      if (event.key === "Enter" && !event.isComposing) {
        event.preventDefault();
        keep();
      }
    });
    const which = el("select", { class: "field", "aria-label": "Column" }, ...columns.map((column, at) => el("option", { value: String(at) }, column.head)));
    which.value = String(index);
    const test = el("select", { class: "field", "aria-label": "Test" });
    const value = el("input", { class: "field", type: "text", "aria-label": "Value", autocomplete: "off" });
    const chosen = () => columns[Number(which.value)];
    const tests = () => {
      test.replaceChildren(...testsOf(chosen().kind).map((one) => el("option", { value: one }, one)));
      value.hidden = chosen().kind === "truth";
    };
    which.addEventListener("change", tests);
    tests();
    const add = word("add", () => {
      if (value.value.trim() === "" && !value.hidden) return value.focus();
      field.value = both(field.value, conditionOf(chosen(), test.value, value.value.trim()));
      value.value = "";
      field.focus();
    });
    this.#show("keep", [el("label", {}, "Keep rows where ", field), el("span", { class: "put-together" }, which, test, value, add), word("keep these", keep)]);
    if (index > 0 || !source.view?.filter) (value.hidden ? which : value).focus({ preventScroll: true });
  }

  /** The word that shows the rows as the record has them. */
  plain() {
    return word("as in the record", () => this.clear());
  }

  /** The word that makes a table of the groups, in a clause of its own that follows this one. */
  setOut() {
    return word("set the groups out as a table", () => this.groups());
  }

  async groups() {
    const { clause, source } = this.body;
    const { page } = clause;
    const by = source.view?.group ?? [];
    const answer = await fetch(`${this.body.address}/groups?${this.body.asked()}`).catch(() => null);
    const fields = await answer?.json().catch(() => null);
    if (!answer?.ok) return page.says.offer([fields?.message ?? "The line to the server is lost.", fields?.wayOut].filter(Boolean).join(" "), []);
    const { order, cells } = page.desk.sheet;
    const { parent, after } = placeAfter(order, clause.id, "table", cells);
    const id = `c${crypto.randomUUID().replaceAll("-", "").slice(0, 12)}`;
    const name = freeName(`${source.name}_by_${by.join("_")}`, cells.values());
    page.desk.add({ id, kind: "table", title: `${clause.cell.title || source.name} by ${by.join(" and ")}`, name, ...fields }, parent, after);
    page.says.offer(`The groups stand in a clause of their own; they follow ${source.name}.`, [["undo", () => page.undo()]]);
  }

  clear() {
    this.body.clause.page.desk.put(this.body.clause.id, "/view", null);
  }

  /** @param {File} file */
  async takeIn(file) {
    const { TableIn } = await import("./table-in.js");
    this.file.value = "";
    new TableIn(this.body).open(file);
  }

  async fromShelf() {
    const { TableFleet } = await import("./table-fleet.js");
    await new TableFleet(this.body).open();
  }

  async readAgain() {
    const { readAgain } = await import("./table-fleet.js");
    await readAgain(this.body);
  }
}

/** @param {string} text @param {() => void} act */
function word(text, act) {
  return el("button", { type: "button", class: "word", onclick: act }, text);
}
