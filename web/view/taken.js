import { isBegun, withStruck, withTaken } from "../state/readings.js";
import { el } from "./dom.js";
import { Field } from "./field.js";

/**
 * The fields of what was taken, repeats side by side, and the words to strike one through. Values stay as
 * typed, with their own unit where one was typed.
 */
export class TakenFields {
  /** @type {Map<string, Field>} */
  fields = new Map();
  refusal = el("span", { class: "refusal", hidden: true });

  /**
   * @param {import("./clause.js").Clause} clause
   * @param {number} index of the reading in its clause
   */
  constructor(clause, index) {
    this.clause = clause;
    this.index = index;
    this.desk = clause.page.desk;
  }

  get reading() {
    return this.clause.cell.source.readings[this.index];
  }

  /**
   * A field for one repeat.
   * @param {number} entry
   * @param {number} repeat
   * @param {string} label
   */
  field(entry, repeat, label) {
    const key = `${this.index}/${entry}/${repeat}`;
    const field = new Field({ label, key, mode: "text", keep: (text) => this.#keep(entry, repeat, text) });
    const taking = this.reading.entries?.[entry];
    field.show(taking?.taken?.[repeat] ?? "");
    field.input.classList.toggle("struck", Boolean(taking?.struck));
    field.input.classList.toggle("open", !taking?.taken?.[repeat]);
    field.input.readOnly = Boolean(taking?.struck);
    this.fields.set(key, field);
    return field.input;
  }

  /** @param {number} entry @param {number} repeat @param {string} text */
  #keep(entry, repeat, text) {
    const { reading } = this;
    const whole = reading.entries?.[entry];
    if (!whole) {
      this.append([{ taken: withTaken([], repeat, text) }]);
      return;
    }
    this.desk.put(this.clause.id, `/readings/${this.index}/entries/${entry}/taken`, withTaken(whole.taken ?? [], repeat, text));
  }

  /** Says what of it cannot be read, at its field where it is one. @param {any[]} problems */
  refuse(problems) {
    const at = (problem) => (problem.at ?? "").match(/^\/readings\/(\d+)\/entries\/(\d+)(?:\/taken(?:\/(\d+))?)?/);
    const wrong = problems.filter((one) => one.severity === "ERROR");
    const keys = new Set(wrong.map(at).filter(Boolean).map(([, reading, entry, repeat]) => `${reading}/${entry}/${repeat ?? 0}`));
    for (const [key, field] of this.fields) field.refused(keys.has(key));
    // that nothing was taken yet is no fault: the row says so itself, quietly
    const hints = isBegun(this.reading) ? problems.filter((one) => one.severity !== "ERROR") : [];
    this.refusal.replaceChildren(...wrong.flatMap((one) => [el("strong", {}, one.message), ` ${one.wayOut ?? ""} `]), ...hints.map((one) => `${one.message} ${one.wayOut ?? ""} `));
    this.refusal.hidden = wrong.length + hints.length === 0;
  }

  /** Writes entries behind those there are. @param {any[]} entries */
  append(entries) {
    const { reading } = this;
    const at = `/readings/${this.index}/entries`;
    if (!reading.entries) this.desk.put(this.clause.id, at, entries);
    else entries.forEach((entry, offset) => this.desk.put(this.clause.id, `${at}/${reading.entries.length + offset}`, entry));
  }

  /** The word that begins a further stage of the same reading, where the record is at one. @param {string[]} begun */
  furtherStage(begun) {
    const { stage } = this.clause.page;
    if (begun.includes(stage) || (this.reading.entries ?? []).length === 0) return null;
    const add = () => {
      const first = this.reading.entries.filter((entry) => !entry.struck && (entry.stage ?? this.reading.stage) === (begun[0] || undefined));
      const places = [...new Map(first.map((entry) => [JSON.stringify(entry.at ?? {}), entry.at])).values()];
      this.append(places.map((at) => ({ ...(at ? { at } : {}), stage, taken: [] })));
    };
    return el("button", { type: "button", class: "word", onclick: add }, `read again, ${stage}`);
  }

  /** Puts the texts as the record has them into the fields; one that is being typed in keeps its text. */
  refresh() {
    for (const [key, field] of this.fields) {
      const [, entry, repeat] = key.split("/").map(Number);
      const text = this.reading.entries?.[entry]?.taken?.[repeat] ?? "";
      field.show(text);
      field.input.classList.toggle("open", text === "");
    }
  }

  /**
   * The words to strike a value through, or to let it stand again.
   * @param {number} entry
   * @param {number} repeat
   * @param {any} struck
   */
  strike(entry, repeat, struck) {
    if (struck) {
      const by = [struck.by, (struck.time ?? "").slice(0, 10)].filter(Boolean).join(", ");
      const restore = el("button", { type: "button", class: "word", onclick: () => this.desk.put(this.clause.id, `/readings/${this.index}/entries/${entry}/struck`, null) }, "let it stand");
      return el("span", { class: "reason" }, `struck through: ${struck.reason}${by ? ` (${by})` : ""} `, restore);
    }
    const box = el("span", { class: "strike" });
    const word = el("button", { type: "button", class: "word", onclick: () => this.#asks(box, word, entry, repeat) }, "strike through");
    box.append(word);
    return box;
  }

  #asks(box, word, entry, repeat) {
    const reason = el("input", { class: "field", type: "text", "aria-label": "Reason for striking it through", placeholder: "reason" });
    const done = () => {
      box.replaceChildren(word);
      word.focus();
    };
    const act = () => {
      if (reason.value.trim() === "") {
        reason.focus();
        return;
      }
      const struck = { reason: reason.value.trim(), by: "", time: new Date().toISOString().slice(0, 19) + "Z" };
      const at = `/readings/${this.index}/entries`;
      const alone = (this.reading.entries[entry].taken ?? []).length <= 1;
      if (alone) this.desk.put(this.clause.id, `${at}/${entry}/struck`, struck);
      else this.desk.put(this.clause.id, at, withStruck(this.reading.entries, entry, repeat, struck));
      done();
    };
    reason.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        // else the word that has the focus next would be pressed with it
        event.preventDefault();
        act();
      }
      if (event.key === "Escape") {
        event.stopPropagation();
        done();
      }
    });
    box.replaceChildren(reason, el("button", { type: "button", class: "word", onclick: act }, "strike"), el("button", { type: "button", class: "word", onclick: done }, "leave it"));
    reason.focus();
  }
}
