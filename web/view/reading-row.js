import { answerOf } from "../state/figures.js";
import { calibration, stages, takings } from "../state/readings.js";
import { el, mark, write } from "./dom.js";
import { Name, Quantity } from "./quantity.js";
import { TakenFields } from "./taken.js";
import { Judgements, standing } from "./verdict.js";

/** Instrument, temperature, part and stage of a reading, in one line. @param {any} reading @param {any} record */
export function circumstances(reading, record) {
  const instrument = (record.instruments ?? []).find((one) => one.id === reading.instrument);
  const part = (record.parts ?? []).find((one) => one.id === reading.part);
  const { text, overdue } = calibration(instrument, record.title_block?.date ?? "");
  const words = [
    instrument ? `${instrument.name ?? ""} ${instrument.id}`.trim() : reading.instrument || "no instrument named",
    reading.temperature ? `at ${shownUnits(reading.temperature)}` : "",
    part?.name ?? "",
    reading.stage ?? "",
    overdue ? "" : text,
  ].filter(Boolean);
  return el("span", { class: "with" }, words.join(", "), overdue && el("span", { class: "overdue" }, `, ${text}`));
}

/** A reading without stations: one row of the list. */
export class ReadingRow {
  #lim = el("td", { class: "lim" });
  #said = el("div", { class: "waiton" });
  /** @type {Map<number, () => HTMLInputElement>} the field for one more reading, by entry */
  #more = new Map();

  /** @param {import("./clause.js").Clause} clause @param {number} index */
  constructor(clause, index) {
    this.clause = clause;
    this.page = clause.page;
    this.taken = new TakenFields(clause, index);
    const reading = this.reading;
    this.quantity = new Quantity(reading.name, (name) => this.page.trace(name));
    this.judgements = new Judgements(this.#lim);
    this.#lim.prepend(this.#said);
    this.called = new Name(reading.name, "not named");
    const name = el("th", { scope: "row", class: "rname" }, this.called.element);
    const about = el("td", { class: "about" }, el("span", { class: "what" }, reading.what || ""), circumstances(reading, this.page.desk.sheet.record));
    this.element = el(
      "tr",
      { id: reading.name ? `figure-${reading.name}` : null },
      name,
      about,
      el("td", { class: "takes" }, this.#takes(reading)),
      el("td", { class: "result" }, this.quantity.element),
      this.#lim,
    );
  }

  get reading() {
    return this.taken.reading;
  }

  get name() {
    return this.reading.name;
  }

  #takes(reading) {
    const now = this.page.stage;
    const begun = stages(reading, now);
    const boxes = begun.map((stage) => this.#stage(reading, stage, begun.length > 1));
    const further = this.taken.furtherStage(begun);
    return el("div", {}, ...boxes, further, this.taken.refusal);
  }

  #stage(reading, stage, several) {
    const box = el("div", { class: "taken" }, several && el("span", { class: "with stage" }, stage));
    const all = takings(reading, stage, this.page.stage);
    const spoken = [reading.what || reading.name || "reading", several ? stage : ""].filter(Boolean).join(", ");
    const unit = reading.unit ? `in ${reading.unit}` : "no unit";
    if (all.length === 0) box.append(this.taken.field(reading.entries?.length ?? 0, 0, `${spoken}, ${unit}`));
    for (const { entry, taken, struck } of all) {
      const texts = taken.length > 0 ? taken : [""];
      texts.forEach((_, repeat) => box.append(this.taken.field(entry, repeat, `${spoken}${texts.length > 1 ? `, repeat ${repeat + 1}` : ""}, ${unit}`)));
      if (struck) box.append(this.taken.strike(entry, 0, struck));
    }
    if (reading.unit) box.append(el("span", { class: "un" }, shownUnits(reading.unit)));
    const last = all.findLast((taking) => !taking.struck);
    if (last && last.taken.length > 0) box.append(this.#another(last, spoken), this.taken.strike(last.entry, last.taken.length - 1, null));
    return box;
  }

  #another(last, spoken) {
    const word = el("button", { type: "button", class: "word", onclick: () => this.again(last.entry)?.focus() }, "once more");
    this.#more.set(last.entry, () => {
      const input = this.taken.field(last.entry, last.taken.length, `${spoken}, repeat ${last.taken.length + 1}`);
      word.before(input);
      word.remove();
      return input;
    });
    return word;
  }

  /** A field for one more reading. @param {number} entry @returns {HTMLInputElement | undefined} */
  again(entry) {
    const make = this.#more.get(entry);
    this.#more.delete(entry);
    return make?.();
  }

  refresh() {
    this.taken.refresh();
    this.figure();
  }

  figure() {
    const figure = this.name ? this.page.desk.figure(this.name) : undefined;
    this.called.show(figure);
    const answer = answerOf(figure);
    const wrong = figure?.state === "error" ? figure.error : undefined;
    this.quantity.show(answer.shown, answer.none === "no result" ? "no result" : answer.shown ? answer.none : "to take");
    this.judgements.show(answer.limits);
    mark(this.element, "err", Boolean(wrong));
    standing(this.#said, figure);
    const on = this.page.isTraced(this.name);
    mark(this.element, "traced", on);
    this.quantity.traced(on);
  }
}

/** Degrees as one writes them by hand. @param {string} text a unit, or a figure with its unit, as the record has it */
export function shownUnits(text) {
  return text.replaceAll(/\bdeg([CF])\b/g, "°$1");
}
