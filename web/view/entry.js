import { at, placed } from "../state/places.js";
import { el, mark, write } from "./dom.js";
import { ExpressionField } from "./expression-field.js";
import { Field } from "./field.js";

/**
 * A field of an entry.
 * @typedef {object} Asked
 * @property {string} at JSON pointer in the clause
 * @property {string} caption
 * @property {string} [look] width: "" a quarter, "half", "whole"
 * @property {[string, string][]} [choices] value and word
 * @property {string} [otherwise] the value where nothing was chosen
 * @property {(source: any) => string} [shows] what is chosen, where it is not what stands at the place
 * @property {(value: string) => void} [keeps] keeps what is chosen, where it is not put at the place
 * @property {() => string} [gives] of an expression: name of the figure that it gives
 *
 * @typedef {object} Group
 * @property {string} legend
 * @property {Asked[]} fields
 * @property {[string, () => void][]} [words] to press beneath
 */

/** Fields of a clause that is entered by fields. Each is kept as it is left; what is wrong stands beneath it. */
export class Entry {
  #shape = "";
  /** @type {any[]} */
  #fields = [];
  /** @type {HTMLElement[]} */
  #legends = [];
  #sets = el("div", {});

  /**
   * @param {import("./clause.js").Clause} clause
   * @param {{hint: string, groups: () => Group[], more: [string, () => void][], first?: () => void}} what `first` makes the
   *     first element of a list that is empty: whoever opens it wants to write one
   */
  constructor(clause, what) {
    this.clause = clause;
    this.what = what;
    const head = el("header", {}, el("span", {}, what.hint), el("span", {}, "Esc closes"));
    const more = el("div", { class: "foot" }, ...what.more.map(([word, act]) => el("button", { type: "button", class: "word", onclick: act }, word)));
    this.element = el("div", { class: "particulars entry", role: "group", "aria-label": `Fields of clause ${clause.cell.number}` }, head, this.#sets, more);
    this.element.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && !event.defaultPrevented) clause.page.close();
    });
    this.element.addEventListener("left", () => clause.page.close());
    this.element.addEventListener("taken", (event) => this.#next(event.target));
    this.update();
    what.first?.();
  }

  /** To the first field, also where it is only on its way. */
  focus() {
    const field = this.element.querySelector("input, select");
    this.wants = !field;
    (field ?? this.element.querySelector(".foot button"))?.focus();
  }

  /** To the last group of fields, which was just made. */
  focusLast() {
    /** @type {any} */
    const field = [...this.element.querySelectorAll("fieldset")].at(-1)?.querySelector("input, select");
    field?.focus();
    // a name that was made up for it is written over
    field?.select?.();
  }

  update() {
    const groups = this.what.groups();
    const shape = JSON.stringify(groups.map(shapeOf));
    if (shape !== this.#shape) this.#build(groups, shape);
    // what a field is called, and what it can be, may change while another is typed in
    const asked = groups.flatMap((group) => group.fields);
    groups.forEach((group, index) => write(this.#legends[index], group.legend));
    this.#fields.forEach((field, index) => field.ask(asked[index]));
    const problems = this.clause.cell.problems ?? [];
    for (const field of this.#fields) {
      field.show(this.#kept(field));
      this.#says(field, problems.filter((one) => one.at === field.at));
    }
  }

  /** Draws all fields anew; what is being typed and not kept goes on in the field that stands for the same. */
  #build(groups, shape) {
    const open = this.#open();
    const more = this.#shape !== "" && groups.length > this.#sets.childElementCount;
    this.#shape = shape;
    this.#fields = [];
    this.#legends = [];
    this.#sets.replaceChildren(...groups.map((group) => this.#set(group)));
    const field = open && this.#fields.find((one) => one.at === open.at);
    if (field) {
      const kept = this.#kept(field);
      field.show(kept);
      if (open.text !== null && open.kept === String(kept ?? "")) field.resume(open.text);
      field.input.focus({ preventScroll: true });
      if (open.text !== null) field.input.setSelectionRange(open.from, open.to);
    }
    const elsewhere = document.activeElement !== document.body && !this.element.contains(document.activeElement);
    if (more && this.wants && !elsewhere) this.focusLast();
    this.wants = false;
  }

  /** What the record has for a field. */
  #kept({ at: place, shows }) {
    return shows ? shows(this.clause.cell.source) : at(this.clause.cell.source, place);
  }

  /** The field in use, with what is typed in it. */
  #open() {
    const field = this.#fields.find((one) => one.holds(document.activeElement));
    return field && { at: field.at, ...field.now() };
  }

  /** @param {Group} group */
  #set({ legend, fields, words = [] }) {
    const buttons = words.map(([word, act]) => el("button", { type: "button", class: "word", onclick: act }, word));
    const head = el("legend", {}, legend);
    this.#legends.push(head);
    return el("fieldset", {}, head, ...fields.map((one) => this.#field(one)), buttons.length > 0 && el("div", { class: "foot" }, ...buttons));
  }

  /** @param {Asked} asked */
  #field(asked) {
    const said = el("span", { class: "refusal", hidden: true, id: `said-${this.clause.id}${asked.at.replaceAll("/", "-")}` });
    const made = asked.choices ? this.#choice(asked) : asked.gives ? this.#expression(asked) : this.#text(asked);
    const caption = document.createTextNode(asked.caption);
    const ask = (now) => {
      write(caption, now.caption);
      made.asks?.(now);
    };
    const field = { at: asked.at, said, holds: (element) => element === made.input, ...made, ask };
    this.#fields.push(field);
    return el("label", { class: asked.look ?? "" }, caption, made.element ?? made.input, said);
  }

  /** @param {Asked} asked */
  #expression({ at: place, caption, gives }) {
    const { desk } = this.clause.page;
    const said = (typed) => this.#said(place, typed);
    const field = new ExpressionField({ desk, cell: this.clause.id, key: place, caption, keep: (text) => this.#put(place, text.trim()), problems: said });
    return {
      input: field.input,
      element: field.element,
      holds: (element) => field.element.contains(element),
      now: () => field.now(),
      resume: (text) => field.field.resume(text),
      show: (value) => field.show(value, gives()),
      draw: () => field.draw(),
    };
  }

  /** What is wrong with what is typed in a field, or with what is kept. @param {string} place @param {any[] | null} typed */
  #said(place, typed) {
    const field = this.#fields.find((one) => one.at === place);
    if (field) this.#says(field, typed ?? (this.clause.cell.problems ?? []).filter((one) => one.at === place));
  }

  /** What the expressions give while one is typed in. */
  previewed() {
    for (const field of this.#fields) field.draw?.();
  }

  /** @param {Asked} asked */
  #text(asked) {
    const field = new Field({ label: "", key: asked.at, keep: (text) => this.#put(asked.at, text.trim()) });
    const { input } = field;
    const now = () => ({ text: input.value, kept: field.kept, from: input.selectionStart, to: input.selectionEnd });
    return { input, now, resume: (text) => field.resume(text), show: (value) => field.show(String(value ?? "")) };
  }

  /** @param {Asked} asked */
  #choice({ at: place, choices, otherwise = "", shows, keeps = (value) => this.#put(place, value) }) {
    const input = el("select", { class: "field", "data-key": place, onchange: () => keeps(input.value) });
    let offered = choices;
    let drawn = "";
    const show = (value) => {
      const chosen = String(value || otherwise);
      const known = offered.some(([one]) => one === chosen) ? offered : [...offered, [chosen, chosen]];
      const shape = JSON.stringify(known);
      if (drawn !== shape) input.replaceChildren(...known.map(([one, word]) => el("option", { value: one }, word)));
      drawn = shape;
      input.value = chosen;
    };
    const asks = (asked) => {
      offered = asked.choices;
    };
    return { input, show, shows, asks, now: () => ({ text: null }) };
  }

  /** @param {string} place @param {string} text */
  #put(place, text) {
    const { at: where, value } = placed(this.clause.cell.source, place, text);
    this.clause.page.desk.put(this.clause.id, where, value);
  }

  /** What is wrong with a field, beneath it, and told with it. */
  #says({ input, said }, problems) {
    const wrong = problems.some((one) => one.severity === "ERROR");
    mark(input, "refused", wrong);
    said.replaceChildren(...problems.flatMap((one) => [el("strong", {}, one.message), ` ${one.wayOut ?? ""} `]));
    said.hidden = problems.length === 0;
    if (problems.length > 0) input.setAttribute("aria-describedby", said.id);
    else input.removeAttribute("aria-describedby");
    if (wrong) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
  }

  /** Enter leads to the next field. @param {Element} input */
  #next(input) {
    const all = [...this.element.querySelectorAll("input:not([hidden]), select")];
    all[all.indexOf(input) + 1]?.focus();
  }
}

/** What decides which fields there are: not what they are called. @param {Group} group */
function shapeOf({ fields, words = [] }) {
  return [fields.map((one) => [one.at, one.look ?? "", one.choices ? "choice" : one.gives ? "expression" : "text", one.otherwise ?? ""]), words.map(([word]) => word)];
}

/** Parts of the register as choices. @param {any} record @returns {[string, string][]} */
export function partChoices(record) {
  return [["", "none"], ...(record.parts ?? []).map((one) => [one.id, [one.name, one.number].filter(Boolean).join(", ")])];
}

/** A part by its name in the register. @param {any} record @param {string} id */
export function partName(record, id) {
  const part = (record.parts ?? []).find((one) => one.id === id);
  return part?.name || part?.number || id || "";
}

/**
 * The words by which an element of a list is moved up or taken out.
 * @param {import("./clause.js").Clause} clause
 * @param {string} list its pointer
 * @param {number} index
 * @param {string} what it is called
 * @returns {[string, () => void][]}
 */
export function listWords(clause, list, index, what) {
  const { desk } = clause.page;
  const up = () => {
    const all = [...at(clause.cell.source, list)];
    [all[index - 1], all[index]] = [all[index], all[index - 1]];
    desk.put(clause.id, list, all);
  };
  const away = () => {
    desk.put(clause.id, `${list}/${index}`, null);
    clause.page.say(`The ${what} is deleted; undo brings it back.`);
  };
  return [...(index > 0 ? [/** @type {[string, () => void]} */ (["move up", up])] : []), [`delete this ${what}`, away]];
}

/**
 * Puts a new element behind the last of a list and leads to its fields.
 * @param {import("./clause.js").Clause} clause
 * @param {string} list its pointer
 * @param {any} element
 */
export function append(clause, list, element) {
  const all = at(clause.cell.source, list);
  if (clause.body.editing) clause.body.editing.wants = true;
  if (all) clause.page.desk.put(clause.id, `${list}/${all.length}`, element);
  else clause.page.desk.put(clause.id, list, [element]);
}
