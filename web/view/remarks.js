import { el } from "./dom.js";

/** What a second person said to a clause, in its margin. Shown where there is something to show. */
export class Remarks {
  #drawn = "";

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.element = el("div", {});
  }

  update() {
    const remarks = this.clause.cell.source?.remarks ?? [];
    const drawn = JSON.stringify(remarks);
    if (drawn === this.#drawn) return;
    this.#drawn = drawn;
    this.element.replaceChildren(...remarks.map((remark) => one(remark)));
  }
}

/** @param {any} remark */
function one(remark) {
  const settled = remark.settled === true;
  const who = [remark.by, (remark.time ?? "").slice(0, 16).replace("T", " ")].filter(Boolean).join(", ");
  return el("div", { class: settled ? "remark settled" : "remark" }, el("span", { class: "who" }, settled ? `${who}; settled` : who), String(remark.text ?? ""));
}
