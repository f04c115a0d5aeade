import { answerOf } from "../state/figures.js";
import { elementAt, grid, isUntouched, nextStation, PHONE_ROW, relabelled, SHEET_ROW, stages, unplaced, withoutStation } from "../state/readings.js";
import { el, mark, write } from "./dom.js";
import { Field } from "./field.js";
import { Name, Quantity } from "./quantity.js";
import { circumstances, shownUnits } from "./reading-row.js";
import { TakenFields } from "./taken.js";
import { Judgements, standing, verdictClass } from "./verdict.js";

/** A reading with stations: a grid of labels, and the answer of the worst station beside it. */
export class StationGrid {
  #lim = el("div", { class: "lim" });
  #of = el("span", { class: "cap of" });
  #said = el("div", { class: "waiton" });
  #cells = new Map();
  #words = el("div", { class: "station-words" });

  /** @param {import("./clause.js").Clause} clause @param {number} index */
  constructor(clause, index) {
    this.clause = clause;
    this.page = clause.page;
    this.index = index;
    this.taken = new TakenFields(clause, index);
    const { reading } = this;
    this.quantity = new Quantity(reading.name, (name) => this.page.trace(name));
    this.judgements = new Judgements(this.#lim);
    this.#lim.prepend(this.#said);
    const now = this.page.stage;
    const at = stages(reading, now);
    const tables = at.map((stage, position) => this.#table(reading, stage, position, at.length > 1));
    this.grid = el("div", { class: "stations" }, ...tables, this.taken.refusal, this.#words);
    this.called = new Name(reading.name, "not named");
    const head = el("span", { class: "cap" }, this.called.element);
    this.answers = el("div", { class: "answers" }, el("div", { class: "ans", id: reading.name ? `figure-${reading.name}` : null }, el("div", { class: "result" }, head, this.#of, this.quantity.element), this.#lim));
    this.elements = [this.grid, this.answers];
    this.grid.addEventListener("focusin", (event) => this.#focused(event));
    this.#more();
  }

  get reading() {
    return this.taken.reading;
  }

  get name() {
    return this.reading.name;
  }

  #table(reading, stage, position, several) {
    const now = this.page.stage;
    const { down, across, bands } = grid(reading, stage, now, this.page.isNarrow ? PHONE_ROW : SHEET_ROW);
    const unit = reading.unit ? `, ${shownUnits(reading.unit)}` : "";
    const caption = el("caption", {});
    if (position === 0) {
      const { stage: _, ...rest } = reading;
      caption.append(reading.what || "", circumstances(several ? rest : reading, this.page.desk.sheet.record));
    }
    if (several) caption.append(el("span", { class: "with" }, stage || "no stage"));
    const bodies = bands.flatMap((band) => {
      const heads = [...down.map((axis) => el("th", { scope: "col", class: "axis" }, axis))];
      if (down.length === 0) heads.push(el("th", { scope: "row", class: "axis" }, across));
      const labels = el("tr", { class: "labels" }, ...heads, ...band.columns.map((label, column) => el("th", { scope: "col" }, label || this.#unnamed(band.rows, column, across))));
      const rows = band.rows.map((row) => {
        const names = row.labels.length > 0 ? row.labels : [`${reading.name || "taken"}${unit}`];
        return el("tr", {}, ...names.map((label) => el("th", { scope: "row", class: "axis" }, label)), ...row.stations.map((station, column) => this.#station(station, [...row.labels, band.columns[column]])));
      });
      return [el("tbody", {}, labels, ...rows)];
    });
    return el("table", {}, caption, ...bodies);
  }

  /** @param {any[]} takings @param {string[]} labels */
  #station(takings, labels) {
    const td = el("td", {});
    const axes = this.reading.axes ?? [];
    const spoken = axes.map((axis, position) => `${axis} ${labels[position]}`).join(", ");
    for (const { entry, taken, struck } of takings) {
      const texts = taken.length > 0 ? taken : [""];
      texts.forEach((_, repeat) => td.append(this.taken.field(entry, repeat, `${spoken}${texts.length > 1 ? `, repeat ${repeat + 1}` : ""}${struck ? ", struck through" : ""}`)));
      if (!struck) this.#cells.set(entry, td);
    }
    return td;
  }

  /** In place of the label that a station lacks, the field to write it in. */
  #unnamed(rows, column, axis) {
    const entry = rows.flatMap((row) => row.stations[column])[0]?.entry;
    return entry === undefined ? "" : this.#label(entry, axis, `Label of this ${axis}`);
  }

  /** The label of a station, to be written or put right. @param {number} entry @param {string} axis @param {string} spoken */
  #label(entry, axis, spoken) {
    const keep = (text) => this.#entries(relabelled(this.reading.entries, entry, axis, text));
    const field = new Field({ label: spoken, look: "label", placeholder: axis, keep });
    field.show(String(this.reading.entries?.[entry]?.at?.[axis] ?? ""));
    // Enter leads from the label to what is taken there
    field.input.addEventListener("taken", (event) => {
      event.stopPropagation();
      this.taken.fields.get(`${this.index}/${entry}/0`)?.input.focus();
    });
    return field.input;
  }

  /** @param {any[]} entries */
  #entries(entries) {
    this.page.desk.put(this.clause.id, `/readings/${this.index}/entries`, entries);
  }

  /** The words that belong to the station in use. @param {FocusEvent} event */
  #focused(event) {
    const key = /** @type {HTMLElement} */ (event.target).dataset?.key;
    if (!key) return;
    const [, entry, repeat] = key.split("/").map(Number);
    if (this.#shownFor === key) return;
    this.#shownFor = key;
    const whole = this.reading.entries?.[entry];
    if (!whole) return;
    const axes = this.reading.axes ?? [];
    const places = axes.map((axis) => el("label", { class: "place" }, `${axis} `, this.#label(entry, axis, `Label of this ${axis}`)));
    const again = el("button", { type: "button", class: "word", onclick: () => this.again(entry)?.focus() }, "once more");
    const out = el("button", { type: "button", class: "word", onclick: () => this.#entries(withoutStation(this.reading.entries, entry)) }, "take this place out");
    const taken = (whole.taken ?? []).length > 0;
    const alone = this.reading.entries.length === 1;
    const words = [
      taken && !whole.struck && again,
      (taken || whole.struck) && this.taken.strike(entry, repeat, whole.struck ?? null),
      !alone && isUntouched(this.reading.entries, entry) && out,
    ];
    this.#words.replaceChildren(...places, ...words.filter(Boolean), ...this.#adding(), ...this.#reasons(entry));
  }

  /** A field for one more reading at a station. @param {number} entry @returns {HTMLInputElement | undefined} */
  again(entry) {
    const whole = this.reading.entries?.[entry];
    const td = this.#cells.get(entry);
    if (!whole || !td) return undefined;
    const at = Object.entries(whole.at ?? {}).map(([axis, label]) => `${axis} ${label}`).join(", ");
    const key = `${this.index}/${entry}/${(whole.taken ?? []).length}`;
    const input = this.taken.fields.get(key)?.input ?? this.taken.field(entry, (whole.taken ?? []).length, `${at}, repeat`);
    td.append(input);
    return input;
  }

  #shownFor = "";

  #more() {
    this.#shownFor = "";
    this.#words.replaceChildren(...this.#reasons(), ...this.#adding());
  }

  /** Why readings were struck through. @param {number} [except] the entry that says so itself */
  #reasons(except) {
    const struck = (this.reading.entries ?? []).map((entry, index) => ({ entry, index })).filter(({ entry, index }) => entry.struck && index !== except);
    return struck.map(({ entry, index }) => this.taken.strike(index, 0, { ...entry.struck, reason: `${Object.values(entry.at ?? {}).join(", ")}: ${entry.struck.reason}` }));
  }

  /** A further station: a field for its label; empty counts on. */
  #adding() {
    const axis = (this.reading.axes ?? []).at(-1) ?? "station";
    const field = el("input", { class: "field", type: "text", "data-further": this.index, "aria-label": `Label of a further ${axis}`, placeholder: `further ${axis}` });
    const add = () => {
      if (this.clause.body.isLeading) return;
      const at = nextStation(this.reading, field.value.trim());
      if (at[axis] === "") return field.focus();
      field.value = "";
      const blank = unplaced(this.reading);
      // its value is wanted next, then the next station: as one goes round a wheel
      this.clause.body.leadTo(this.index, blank < 0 ? this.reading.entries?.length ?? 0 : blank);
      if (blank < 0) this.taken.append([{ at, taken: [] }]);
      else this.page.desk.put(this.clause.id, `/readings/${this.index}/entries/${blank}/at`, at);
    };
    field.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        event.preventDefault();
        add();
      }
    });
    const words = [field, el("button", { type: "button", class: "word", onclick: add }, "add station"), this.taken.furtherStage(stages(this.reading, this.page.stage))];
    return words.filter(Boolean);
  }

  refresh() {
    this.taken.refresh();
    this.figure();
  }

  figure() {
    const figure = this.name ? this.page.desk.figure(this.name) : undefined;
    this.called.show(figure);
    const answer = answerOf(figure);
    this.quantity.show(answer.shown, answer.none === "no result" ? "no result" : answer.shown ? answer.none : "to take");
    write(this.#of, answer.of);
    this.judgements.show(answer.limits);
    standing(this.#said, figure);
    this.#rings(figure?.elements ?? []);
    const on = this.page.isTraced(this.name);
    mark(this.answers, "traced", on);
    this.quantity.traced(on);
  }

  /** A ring round every station that is not within. @param {any[]} elements */
  #rings(elements) {
    for (const [entry, td] of this.#cells) {
      const element = elementAt(elements, this.reading.entries?.[entry] ?? {});
      const verdict = element?.verdict === "outside" || element?.verdict === "not proven" ? element.verdict : "";
      let ring = td.querySelector(".mark");
      if (verdict && !ring) ring = td.appendChild(el("span", { class: "mark" }, el("span", { class: "unseen" })));
      if (!ring) continue;
      if (!verdict) ring.remove();
      else {
        ring.className = `mark ${verdictClass(verdict)}`;
        write(ring.firstChild, verdict);
      }
    }
  }
}
