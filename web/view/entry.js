import { at, placed } from "../state/places.js";
import { el, mark } from "./dom.js";
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
  #fields = [];
  #sets = el("div", {});

  /**
   * @param {import("./clause.js").Clause} clause
   * @param {{hint: string, groups: () => Group[], more: [string, () => void][]}} what
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
  }

  /** To the first field, or to the word that makes one. */
  focus() {
    this.element.querySelector("input, select, .foot button")?.focus();
  }

  /** To the last group of fields, which was just made. */
  focusLast() {
    [...this.element.querySelectorAll("fieldset")].at(-1)?.querySelector("input, select")?.focus();
  }

  update() {
    const groups = this.what.groups();
    const shape = JSON.stringify(groups);
    if (shape !== this.#shape) {
      const key = /** @type {HTMLElement | null} */ (document.activeElement)?.dataset?.key;
      const more = this.#shape !== "" && groups.length > this.#sets.childElementCount;
      this.#shape = shape;
      this.#fields = [];
      this.#sets.replaceChildren(...groups.map((group) => this.#set(group)));
      if (key) this.element.querySelector(`[data-key="${CSS.escape(key)}"]`)?.focus({ preventScroll: true });
      if (more && this.wants) this.focusLast();
      this.wants = false;
    }
    const problems = this.clause.cell.problems ?? [];
    for (const field of this.#fields) {
      field.show(at(this.clause.cell.source, field.at));
      this.#says(field, problems.filter((one) => one.at === field.at));
    }
  }

  /** @param {Group} group */
  #set({ legend, fields, words = [] }) {
    const buttons = words.map(([word, act]) => el("button", { type: "button", class: "word", onclick: act }, word));
    return el("fieldset", {}, el("legend", {}, legend), ...fields.map((one) => this.#field(one)), buttons.length > 0 && el("div", { class: "foot" }, ...buttons));
  }

  /** @param {Asked} asked */
  #field(asked) {
    const said = el("span", { class: "refusal", hidden: true, id: `said-${this.clause.id}${asked.at.replaceAll("/", "-")}` });
    /** @type {{at: string, said: HTMLElement, input: any, show: (value: any) => void, element?: HTMLElement, draw?: () => void}} */
    const field = { at: asked.at, said, ...(asked.choices ? this.#choice(asked) : asked.gives ? this.#expression(asked) : this.#text(asked)) };
    this.#fields.push(field);
    return el("label", { class: asked.look ?? "" }, asked.caption, field.element ?? field.input, said);
  }

  /** @param {Asked} asked */
  #expression({ at: place, caption, gives }) {
    const { desk } = this.clause.page;
    const said = (typed) => this.#said(place, typed);
    const field = new ExpressionField({ desk, cell: this.clause.id, key: place, caption, keep: (text) => this.#put(place, text.trim()), problems: said });
    return { input: field.input, element: field.element, show: (value) => field.show(value, gives()), draw: () => field.draw() };
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
    return { input: field.input, show: (value) => field.show(String(value ?? "")) };
  }

  /** @param {Asked} asked */
  #choice({ at: place, choices, otherwise = "" }) {
    const input = el("select", { class: "field", "data-key": place, onchange: () => this.#put(place, input.value) });
    const show = (value) => {
      const chosen = String(value || otherwise);
      const known = choices.some(([one]) => one === chosen) ? choices : [...choices, [chosen, chosen]];
      if (input.childElementCount !== known.length) input.replaceChildren(...known.map(([one, word]) => el("option", { value: one }, word)));
      input.value = chosen;
    };
    return { input, show };
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
