import { integrity } from "../state/integrity.js";
import { spokenName } from "../state/names.js";
import { attribute, el, mark, svg, write } from "./dom.js";
import { Field } from "./field.js";
import { SetOut, shortened } from "./set-out.js";

const FIELDS = [
  ["title", "Title", "s14 wide", "f name"],
  ["record_number", "Record number", "s4 brief", "f big"],
  ["revision", "Revision", "s2", "f big"],
  ["date", "Date", "s4", "f big"],
  ["owner", "Owner", "s4", "f"],
  ["engine_type", "Engine type", "s4", "f"],
  ["engine_serial", "Engine serial", "s4 brief", "f"],
  ["hours_since_overhaul", "Since overhaul", "s3", "f"],
  ["part", "Part under investigation", "s5", "f"],
  ["document", "Document", "s4", "f"],
  ["prepared", "Prepared", "s4", "f"],
  ["checked", "Checked", "s4", "f"],
  ["approved", "Approved", "s3", "f"],
];

/** Stages of an investigation; a bare name in a working means the readings of the present one. */
export const STAGES = ["as found", "cleaned", "after rework", "as left"];

/** The title block: fields after ISO 7200, each a line to write on; integrity; units of the sheet. */
export class TitleBlock {
  /** @type {Map<string, Field>} */
  #fields = new Map();
  #heading;
  #integrity = el("span", { class: "f" });
  #more = el("span", { class: "more" });
  #integrityBox;
  #differing = el("ul", { class: "which" });
  #which = new SetOut({ out: "say which", away: "put them away" }, this.#differing);
  #drawn = "";
  #choices = [];

  /** @param {Element} element @param {import("../state/desk.js").Desk} desk */
  constructor(element, desk) {
    this.desk = desk;
    this.#heading = document.querySelector("h1");
    for (const [name, caption, span, look] of FIELDS) {
      const cell = el("div", { class: span }, el("label", { class: "cap", for: `tb-${name}` }, caption), this.#field(name, look));
      if (name === "title") cell.append(this.#field("subtitle", "suppl", "Second line of the title"));
      element.append(cell);
    }
    this.#integrityBox = el("div", { class: "s6 integrity unsaved wide" }, tick(), el("div", {}, el("span", { class: "cap" }, "Integrity"), this.#integrity, this.#more, this.#which.word, this.#differing));
    const shown = el("div", { class: "s4 shown" }, ...this.#choice("Units", "units", ["metric", "imperial"]), ...this.#choice("Terms", "terms", ["british", "american"]));
    const { word } = shortened(element, { out: "the whole title block", away: "shorten the title block" });
    element.append(this.#integrityBox, this.#stage(), shown, el("div", { class: "wide lengthen" }, word));
  }

  /** @param {string} name @param {string} look @param {string} [label] */
  #field(name, look, label) {
    const field = new Field({ label: label ?? "", look: `write ${look}`, placeholder: label, keep: (text) => this.desk.set(`/title_block/${name}`, text.trim()) }, "textarea");
    field.input.id = `tb-${name}`;
    this.#fields.set(name, field);
    return field.input;
  }

  #stage() {
    this.stage = el("select", { class: "field", id: "tb-stage", onchange: () => this.desk.set("/settings/stage", this.stage.value) });
    return el("div", { class: "s3" }, el("label", { class: "cap", for: "tb-stage" }, "Stage"), this.stage);
  }

  #drawStage() {
    const now = this.desk.sheet.record.settings?.stage ?? "as found";
    const words = STAGES.includes(now) ? STAGES : [...STAGES, now];
    if (this.stage.options.length !== words.length) this.stage.replaceChildren(...words.map((word) => el("option", { value: word }, word)));
    this.stage.value = now;
  }

  /** A choice of two; the first holds where nothing is said. */
  #choice(caption, setting, values) {
    const buttons = values.map((value) => {
      const word = setting === "terms" ? value.charAt(0).toUpperCase() + value.slice(1) : value;
      return el("button", { type: "button", "aria-pressed": "false", onclick: () => this.desk.set(`/settings/${setting}`, value) }, word);
    });
    this.#choices.push({ setting, values, buttons });
    return [el("span", { class: "cap" }, caption), el("div", { class: "choice", role: "group", "aria-label": caption }, ...buttons)];
  }

  /** The other system of units. */
  switchUnits() {
    const now = this.desk.sheet?.record.settings?.units ?? "metric";
    this.desk.set("/settings/units", now === "metric" ? "imperial" : "metric");
  }

  draw() {
    const { record } = this.desk.sheet;
    const block = record.title_block ?? {};
    for (const [name, field] of this.#fields) field.show(String(block[name] ?? ""));
    const title = block.title || "Untitled record";
    write(this.#heading, title);
    document.title = `${[block.record_number, title].filter(Boolean).join(" ")} · Endfloat`;
    this.#drawStage();
    for (const { setting, values, buttons } of this.#choices) {
      const now = record.settings?.[setting] ?? values[0];
      buttons.forEach((button, index) => attribute(button, "aria-pressed", String(values[index] === now)));
    }
  }

  drawSummary() {
    const { kind, line, more, differences } = integrity(this.desk.sheet.summary);
    mark(this.#integrityBox, "differs", kind === "differs");
    mark(this.#integrityBox, "unsaved", kind === "unsaved");
    write(this.#integrity, line);
    write(this.#more, more || "No line in error.");
    mark(this.#integrityBox, "errors", kind === "errors");
    this.#which.word.hidden = differences.length === 0;
    this.#differing.hidden = differences.length === 0;
    const drawn = JSON.stringify(differences);
    if (this.#drawn === drawn) return;
    this.#drawn = drawn;
    this.#differing.replaceChildren(...differences.map((one) => el("li", {}, el("a", { href: `#figure-${one.name}` }, spokenName(one.name)), ` ${one.text}`)));
  }
}

function tick() {
  return svg("svg", { width: 26, height: 22, viewBox: "0 0 26 22", "aria-hidden": "true" }, svg("path", { class: "tick", d: "M2 12l7 7L24 3" }), svg("path", { class: "tick unequal", d: "M3 8h20M3 15h20M18 2L8 21" }));
}
