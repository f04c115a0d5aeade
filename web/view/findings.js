import { el, svg, write } from "./dom.js";
import { append, Entry, listWords, partChoices, partName } from "./entry.js";

const STATES = [["not inspected", "not inspected"], ["no indication", "no indication"], ["found", "found"]];

/** Where nobody has looked stands as such: it is not the same as nothing found. */
export function blankFinding() {
  return { part: "", place: "", damage: "", size: "", orientation: "", method: "", smallest: "", kit: "", by: "", photo: "", state: "not inspected", disposition: "" };
}

/** Findings without a number: part, damage, how it was looked for, and what becomes of the part. */
export class FindingsBody {
  #shape = "";
  #rows = el("tbody");
  #caption = el("caption", { class: "unseen" });
  #table;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const head = ["Part and place", "Damage", "How it was looked for", "State", "Disposition"].map((text) => el("th", { scope: "col" }, text));
    this.#table = el("table", { class: "t findings" }, this.#caption, el("thead", {}, el("tr", {}, ...head)), this.#rows);
    this.empty = el("p", { class: "quiet" }, "No finding yet. Press Enter and enter one: the part and place, what was found or that nothing was, by which method, and the smallest flaw it would have shown. Parts that nobody looked at are entered too.");
    this.elements = [this.#table, this.empty];
  }

  get #findings() {
    return this.clause.cell.source.findings ?? [];
  }

  update() {
    const { cell } = this.clause;
    write(this.#caption, `Findings of clause ${cell.number} ${cell.title}`);
    const { record } = this.clause.page.desk.sheet;
    const shape = JSON.stringify([this.#findings, cell.problems, record.parts]);
    if (shape !== this.#shape) {
      this.#shape = shape;
      this.#rows.replaceChildren(...this.#findings.flatMap((finding, index) => this.#row(finding, index, record)));
      this.#table.hidden = this.#findings.length === 0;
      this.empty.hidden = this.#findings.length > 0;
    }
    this.editing?.update();
  }

  #row(finding, index, record) {
    const under = (...texts) => texts.filter(Boolean).map((text) => el("span", { class: "with" }, text));
    const part = partName(record, finding.part);
    const size = [finding.size, finding.orientation].filter(Boolean).join(", ");
    const smallest = finding.smallest ? `smallest shown ${finding.smallest}` : "";
    const cell = (label, ...content) => el("td", { "data-label": label }, ...content);
    const state = finding.state || "not inspected";
    const row = el(
      "tr",
      {},
      el("th", { scope: "row" }, el("span", { class: "what" }, part || finding.place || "not named"), ...under(part ? finding.place : "")),
      cell("Damage", el("span", { class: "what" }, finding.damage || (state === "found" ? "" : "–")), ...under(size, finding.photo ? `photo ${finding.photo}` : "")),
      cell("How it was looked for", el("span", { class: "what" }, finding.method || "–"), ...under(smallest, finding.kit, finding.by)),
      cell("State", el("span", { class: `found-state ${state.replaceAll(" ", "-")}` }, stateGlyph(state), state)),
      cell("Disposition", finding.disposition || "–"),
    );
    const gaps = (this.clause.cell.problems ?? []).filter((one) => (one.at ?? "").startsWith(`/findings/${index}/`));
    if (gaps.length === 0) return [row];
    const words = gaps.flatMap((one) => [el("strong", {}, one.message), ` ${one.wayOut ?? ""} `]);
    return [row, el("tr", { class: "gap" }, el("td", { colspan: 5 }, ...words))];
  }

  open() {
    const { clause } = this;
    const groups = () =>
      this.#findings.map((_, index) => {
        const at = `/findings/${index}`;
        const fields = [
          { at: `${at}/part`, caption: "Part", choices: partChoices(clause.page.desk.sheet.record) },
          { at: `${at}/place`, caption: "Place on it" },
          { at: `${at}/state`, caption: "State", choices: STATES, otherwise: "not inspected" },
          { at: `${at}/disposition`, caption: "Disposition" },
          { at: `${at}/damage`, caption: "Kind of damage", look: "long" },
          { at: `${at}/size`, caption: "Size" },
          { at: `${at}/orientation`, caption: "Direction" },
          { at: `${at}/method`, caption: "Method" },
          { at: `${at}/smallest`, caption: "Smallest flaw it would show" },
          { at: `${at}/kit`, caption: "Equipment, lamp or field check" },
          { at: `${at}/by`, caption: "By, qualification" },
          { at: `${at}/photo`, caption: "Photo", look: "long" },
        ];
        return { legend: `Finding ${index + 1}`, fields, words: listWords(clause, "/findings", index, "finding") };
      });
    this.editing = new Entry(clause, {
      hint: "Not inspected is a state. No indication needs the method and the smallest flaw it would show.",
      groups,
      more: [["another finding", () => append(clause, "/findings", blankFinding())]],
      first: () => this.#findings.length === 0 && append(clause, "/findings", blankFinding()),
    });
    clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

/** A disc for found, a ring for nothing found, an open dashed ring for not looked at. @param {string} state */
function stateGlyph(state) {
  return svg("svg", { class: "fg", viewBox: "0 0 14 14", width: 14, height: 14, "aria-hidden": "true", focusable: "false" }, svg("circle", { cx: 7, cy: 7, r: 5 }));
}
