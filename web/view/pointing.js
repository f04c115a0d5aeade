import { placeAfter } from "../state/clauses.js";
import { limitLine, withLine, withUnit, workingFor } from "../state/lines.js";
import { spokenName } from "../state/names.js";
import { el } from "./dom.js";

/**
 * What may be made of a value that was pressed: a limit, another name, another unit; of it and the one
 * pressed before, their difference or ratio. Each becomes a line that one may read and alter.
 */
export class Pointing {
  #offer = null;
  #before = "";
  #words = el("span", { class: "ways" });
  #form = el("div", {});

  /** @param {import("./sheet-page.js").SheetPage} page */
  constructor(page) {
    this.page = page;
    this.element = el("div", { class: "pointing", role: "group", "aria-label": "Work with this value" }, this.#words, this.#form);
  }

  get #desk() {
    return this.page.desk;
  }

  /** @param {string} name that was pressed @param {string} before the value pressed before it, "" for none */
  async show(name, before) {
    this.#before = before;
    this.#offer = null;
    this.#form.replaceChildren();
    this.#words.replaceChildren();
    const offer = await this.#desk.offer(name, before);
    if (!offer || this.page.tracing.name !== name) return;
    this.#offer = offer;
    const isField = name.includes(".");
    const word = (text, act) => el("button", { type: "button", class: "word", onclick: act }, text);
    this.#words.replaceChildren(
      ...offer.pair.map((one) => word(`${before} ${one.word === "ratio" ? "/" : "−"} ${name}`, () => this.#write(one.line))),
      ...(offer.limit && !isField ? [word("limit", () => this.limit())] : []),
      ...(isField ? [] : [word("rename", () => this.rename())]),
      ...(this.#definition(name) && offer.units.length > 0 ? [word("unit", () => this.unit())] : []),
    );
    if (offer.pair.length > 0) this.page.say(`${offer.pair.map((one) => one.word).join(" and ")} of ${spokenName(before)} and ${spokenName(name)} can be written.`);
  }

  /** Difference or ratio of the value in use and the one pressed before it. @param {"difference" | "ratio"} word */
  pair(word) {
    const one = this.#offer?.pair.find((pair) => pair.word === word);
    if (one) this.#write(one.line);
    else this.page.say(this.#before ? "These two are not of one kind." : "Press one value, then another of the same kind.");
  }

  /** Asks for a limit on the value in use. */
  limit() {
    const name = this.page.tracing.name;
    if (!this.#offer?.limit) return this.page.say("Press a value first.");
    const unit = this.#desk.figure(name)?.unit ?? "";
    this.#ask("Limit", [["low", `At least${unit ? `, ${unit}` : ""}`], ["high", `At most${unit ? `, ${unit}` : ""}`], ["authority", "Authority", "long"], ["condition", "Condition", "long"]], {}, (typed) => {
      const line = limitLine(name, { .../** @type {any} */ (typed), unit: unit === "°" ? "deg" : unit.replaceAll("°C", "degC").replaceAll("°F", "degF").replaceAll("·", ".") });
      if (line === "") return false;
      this.#write(line);
      return true;
    });
  }

  /** Asks for another name of the value in use, which it then has everywhere. */
  rename() {
    const { name } = this.page.tracing;
    if (name === "") return this.page.say("Press a value first.");
    this.#ask("Rename", [["to", "Its name everywhere", "long"]], { to: name }, ({ to }) => {
      const next = to.trim().replaceAll(/\s+/g, "_");
      if (next === "" || next === name) return false;
      this.page.tracing.follow(next);
      this.#desk.rename(name, next);
      return true;
    });
  }

  /** Asks for another unit of the value in use. */
  unit() {
    const { name } = this.page.tracing;
    const found = this.#definition(name);
    if (!found) return this.page.say("Press a value that a line works out.");
    this.#ask("Unit", [["unit", "Shown in", "", this.#offer?.units ?? []]], { unit: found.unit }, ({ unit }) => {
      const text = withUnit(this.#desk.cell(found.cell).source.text ?? "", found.line, unit);
      if (text === null) return false;
      this.#desk.put(found.cell, "/text", text);
      return true;
    });
  }

  /** The line that works a value out. @param {string} name */
  #definition(name) {
    const cell = this.#desk.cell(this.#desk.figure(name)?.cell);
    const line = cell?.lines?.find((one) => one.figure === name && (one.kind === "value" || one.kind === "input"));
    return line ? { cell: cell.id, line: line.line, unit: line.unit ?? "" } : null;
  }

  /** Puts a line at the end of the nearest working, or into a new one, and leads there. @param {string} line */
  #write(line) {
    const { sheet } = this.#desk;
    const cells = [this.page.tracing.name, this.#before].map((name) => this.#desk.figure(name)?.cell).filter(Boolean);
    const into = workingFor(sheet, cells);
    this.page.tracing.clear();
    if (into === "") {
      const id = `c${crypto.randomUUID().replaceAll("-", "").slice(0, 12)}`;
      const { parent, after } = placeAfter(sheet.order, cells[0], "working", sheet.cells);
      this.page.leadTo(id, 1);
      this.#desk.add({ id, kind: "working", title: "", text: line }, parent, after);
      return;
    }
    const { text, line: at } = withLine(sheet.cells.get(into).source.text ?? "", line);
    this.page.leadTo(into, at);
    this.#desk.put(into, "/text", text);
  }

  /**
   * @param {string} what
   * @param {any[][]} fields name, caption, look, choices
   * @param {Record<string, string>} now
   * @param {(typed: Record<string, string>) => boolean} act whether it was done
   */
  #ask(what, fields, now, act) {
    const inputs = new Map();
    const rows = fields.map(([name, caption, look = "", choices = []]) => {
      const list = choices.length > 0 ? el("datalist", { id: `choices-${name}` }, ...choices.map((one) => el("option", { value: one }))) : null;
      const input = el("input", { class: "field", type: "text", autocomplete: "off", spellcheck: "false", list: list ? list.id : null, value: now[name] ?? "" });
      inputs.set(name, input);
      return el("label", { class: look }, caption, input, list);
    });
    const first = [...inputs.values()][0];
    const done = () => {
      this.#form.replaceChildren();
      this.page.tracing.focus();
    };
    const keep = () => (act(Object.fromEntries([...inputs].map(([name, input]) => [name, input.value]))) ? this.#form.replaceChildren() : first.focus());
    const word = (text, press) => el("button", { type: "button", class: "word", onclick: press }, text);
    const form = el("div", { class: "pointing-form", role: "group", "aria-label": what }, ...rows, el("span", { class: "ways" }, word("write it", keep), word("leave it", done)));
    form.addEventListener("keydown", (event) => {
      if (event.key === "Escape") {
        event.stopPropagation();
        event.preventDefault();
        done();
      }
      if (event.key === "Enter" && event.target instanceof HTMLInputElement) {
        event.preventDefault();
        keep();
      }
    });
    this.#form.replaceChildren(form);
    first.focus();
    first.select();
  }
}
