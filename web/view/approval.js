import { el, write } from "./dom.js";
import { append, Entry, listWords } from "./entry.js";

/** Prepared, checked, approved: fields to be filled in. Nothing is signed here yet. */
export class ApprovalBody {
  #shape = "";
  #rows = el("tbody");
  #caption = el("caption", { class: "unseen" });
  #table;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const head = ["Role", "Name", "Date", "Remark"].map((text) => el("th", { scope: "col" }, text));
    this.#table = el("table", { class: "t approval" }, this.#caption, el("thead", {}, el("tr", {}, ...head)), this.#rows);
    this.empty = el("p", { class: "quiet" }, "No role yet. Press Enter and enter who prepares, checks and approves.");
    this.note = el("p", { class: "quiet" }, "Names and dates as entered; they do not lock the record.");
    this.elements = [this.#table, this.note, this.empty];
  }

  get #roles() {
    return this.clause.cell.source.roles ?? [];
  }

  update() {
    const { cell } = this.clause;
    write(this.#caption, `Approval, clause ${cell.number} ${cell.title}`);
    const shape = JSON.stringify(this.#roles);
    if (shape !== this.#shape) {
      this.#shape = shape;
      const cells = (one) => [one.name || "not yet", one.date, one.remark].map((text, at) => el("td", { "data-label": ["Name", "Date", "Remark"][at], class: at === 0 && !one.name ? "open" : null }, text || ""));
      this.#rows.replaceChildren(...this.#roles.map((one) => el("tr", {}, el("th", { scope: "row" }, one.role || "role"), ...cells(one))));
      for (const element of [this.#table, this.note]) element.hidden = this.#roles.length === 0;
      this.empty.hidden = this.#roles.length > 0;
    }
    this.editing?.update();
  }

  open() {
    const { clause } = this;
    const groups = () =>
      this.#roles.map((one, index) => {
        const at = `/roles/${index}`;
        const fields = [
          { at: `${at}/role`, caption: "Role" },
          { at: `${at}/name`, caption: "Name" },
          { at: `${at}/date`, caption: "Date, such as 2026-05-12" },
          { at: `${at}/remark`, caption: "Remark" },
        ];
        return { legend: one.role || `Role ${index + 1}`, fields, words: listWords(clause, "/roles", index, "role") };
      });
    this.editing = new Entry(clause, { hint: "Who prepared, checked and approved.", groups, more: [["another role", () => append(clause, "/roles", { role: "", name: "", date: "", remark: "" })]] });
    clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}
