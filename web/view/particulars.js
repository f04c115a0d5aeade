import { el } from "./dom.js";
import { Field } from "./field.js";
import { STAGES } from "./title-block.js";

/** What a reading is, as against what was taken: name, what, unit, instrument, part, stage, stations. */
export class Particulars {
  #shape = "";
  #fields = [];
  #wants = false;
  #sets = el("div", {});

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.desk = clause.page.desk;
    const head = el("header", {}, el("span", {}, "What is read, with what, at which stage. Values are typed in their own fields below."), el("span", {}, "Esc closes"));
    this.element = el("div", { class: "particulars", role: "group", "aria-label": `Particulars of the readings of clause ${clause.cell.number}` }, head, this.#sets);
    this.element.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && !event.defaultPrevented) clause.page.close();
    });
    this.update();
    // whoever opens a clause without readings wants to name one
    if (this.#readings.length === 0) this.#more();
  }

  get #readings() {
    return this.clause.cell.source.readings ?? [];
  }

  /** To the first field, also where it is only on its way. */
  focus() {
    const field = this.element.querySelector("input");
    this.#wants = !field;
    (field ?? this.element.querySelector(".foot button"))?.focus();
  }

  update() {
    const { record } = this.desk.sheet;
    const shape = JSON.stringify([this.#readings.length, (record.instruments ?? []).map((one) => one.id), (record.parts ?? []).map((one) => one.id)]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#fields = [];
      const more = el("button", { type: "button", class: "word", onclick: () => this.#more() }, "another reading");
      const here = this.element.contains(document.activeElement) || document.activeElement === document.body;
      this.#sets.replaceChildren(...this.#readings.map((_, index) => this.#set(index)), el("div", { class: "foot" }, more));
      if (this.#wants && here) [...this.#sets.querySelectorAll("fieldset")].at(-1)?.querySelector("input")?.focus();
      this.#wants = false;
    }
    for (const { show } of this.#fields) show();
  }

  #set(index) {
    const { record } = this.desk.sheet;
    const instruments = (record.instruments ?? []).map((one) => [one.id, `${one.id} ${one.name ?? ""}`.trim()]);
    const parts = (record.parts ?? []).map((one) => [one.id, [one.name, one.number].filter(Boolean).join(", ")]);
    const take = el("button", { type: "button", class: "word", onclick: () => this.#remove(index) }, "delete this reading");
    return el(
      "fieldset",
      {},
      el("legend", {}, `Reading ${index + 1}`),
      this.#text(index, "name", "Name in the workings", "", (text) => text.trim().replaceAll(/\s+/g, "_")),
      this.#text(index, "what", "What is measured, between what, in which state", "long"),
      this.#text(index, "unit", "Unit"),
      this.#choice(index, "instrument", "Instrument", instruments),
      this.#choice(index, "part", "Part", parts),
      this.#choice(index, "stage", "Stage", STAGES.map((stage) => [stage, stage])),
      this.#text(index, "temperature", "Temperature of the part"),
      this.#text(index, "material", "Material, to correct to 20 °C"),
      this.#text(index, "axes", "Stations told apart by", "long", (text) => text.split(/[,×]/).map((one) => one.trim()).filter(Boolean), (axes) => (axes ?? []).join(", ")),
      el("div", { class: "foot" }, take),
    );
  }

  #text(index, name, caption, look = "", read = (text) => text.trim(), shown = (value) => String(value ?? "")) {
    const field = new Field({ label: "", keep: (text) => this.desk.put(this.clause.id, `/readings/${index}/${name}`, read(text)) });
    this.#fields.push({ show: () => field.show(shown(this.#readings[index]?.[name])) });
    return el("label", { class: look }, caption, field.input);
  }

  #choice(index, name, caption, options) {
    const select = el("select", { class: "field", onchange: () => this.desk.put(this.clause.id, `/readings/${index}/${name}`, select.value) });
    let drawn = "";
    this.#fields.push({
      show: () => {
        const value = this.#readings[index]?.[name] ?? "";
        const known = value === "" || options.some(([id]) => id === value) ? options : [...options, [value, value]];
        const offered = JSON.stringify(known);
        if (drawn !== offered) select.replaceChildren(el("option", { value: "" }, "none"), ...known.map(([id, text]) => el("option", { value: id }, text)));
        drawn = offered;
        select.value = value;
      },
    });
    return el("label", {}, caption, select);
  }

  #more() {
    const index = this.#readings.length;
    this.#wants = true;
    this.desk.put(this.clause.id, `/readings/${index}`, { name: "", what: "", unit: "", entries: [{ taken: [] }] });
  }

  /** @param {number} index */
  #remove(index) {
    this.desk.put(this.clause.id, `/readings/${index}`, null);
    this.clause.page.say("Reading deleted; undo brings it back.");
  }
}
