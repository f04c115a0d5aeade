import { attribute, el, mark, svg, write } from "./dom.js";
import { Field } from "./field.js";

const FIELDS = [
  ["title", "Title", "s14 wide", "f name"],
  ["record_number", "Record number", "s4", "f big"],
  ["revision", "Revision", "s2", "f big"],
  ["date", "Date", "s4", "f big"],
  ["owner", "Owner", "s4", "f"],
  ["engine_type", "Engine type", "s4", "f"],
  ["engine_serial", "Engine serial", "s4", "f"],
  ["hours_since_overhaul", "Since overhaul", "s3", "f"],
  ["part", "Part under investigation", "s5", "f"],
  ["document", "Document", "s4", "f"],
  ["prepared", "Prepared", "s4", "f"],
  ["checked", "Checked", "s4", "f"],
  ["approved", "Approved", "s4", "f"],
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
  #units = new Map();

  /** @param {Element} element @param {import("../state/desk.js").Desk} desk */
  constructor(element, desk) {
    this.desk = desk;
    this.#heading = document.querySelector("h1");
    for (const [name, caption, span, look] of FIELDS) {
      const cell = el("div", { class: span }, el("label", { class: "cap", for: `tb-${name}` }, caption), this.#field(name, look));
      if (name === "title") cell.append(this.#field("subtitle", "suppl", "Second line of the title"));
      element.append(cell);
    }
    this.#integrityBox = el("div", { class: "s6 integrity wide" }, tick(), el("div", {}, el("span", { class: "cap" }, "Integrity"), this.#integrity, this.#more));
    element.append(this.#integrityBox, this.#stage(), this.#choice("s3", "Units shown", "units", ["metric", "imperial"]));
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

  #choice(span, caption, setting, values) {
    const buttons = values.map((value) => {
      const button = el("button", { type: "button", "aria-pressed": "false", onclick: () => this.desk.set(`/settings/${setting}`, value) }, value);
      this.#units.set(value, button);
      return button;
    });
    return el("div", { class: span }, el("span", { class: "cap" }, caption), el("div", { class: "choice", role: "group", "aria-label": caption }, ...buttons));
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
    const units = record.settings?.units ?? "metric";
    for (const [value, button] of this.#units) attribute(button, "aria-pressed", String(value === units));
  }

  drawSummary() {
    const summary = this.desk.sheet.summary;
    const agrees = summary.agrees !== false;
    mark(this.#integrityBox, "differs", !agrees);
    write(this.#integrity, agrees ? "Figures agree with the readings" : "Figures saved with the record differ from these");
    write(this.#more, counts(summary) || "No line in error.");
  }
}

/** What is in error and what waits, in words; empty where nothing does. @param {any} summary */
export function counts(summary) {
  const errors = summary.errors ?? 0;
  const waiting = summary.waiting ?? 0;
  const parts = [];
  if (errors > 0) parts.push(`${errors} ${errors === 1 ? "line" : "lines"} in error`);
  if (waiting > 0) parts.push(`${waiting} waiting`);
  return parts.join(", ");
}

function tick() {
  return svg("svg", { width: 26, height: 22, viewBox: "0 0 26 22", "aria-hidden": "true" }, svg("path", { class: "tick", d: "M2 12l7 7L24 3" }));
}
