import { el } from "./dom.js";
import { remember, remembered } from "./remembered.js";

/** What a second person says to a clause, in its margin: red while it stands open, grey once answered. */
export class Remarks {
  #drawn = "";
  #list = el("div", {});
  #form = el("div", {});

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.element = el("div", { class: "remarks" }, this.#list, this.#form);
  }

  get #remarks() {
    return this.clause.cell.source?.remarks ?? [];
  }

  update() {
    const drawn = JSON.stringify(this.#remarks);
    if (drawn === this.#drawn) return;
    this.#drawn = drawn;
    this.#list.replaceChildren(...this.#remarks.map((remark, index) => this.#one(remark, index)));
  }

  /** Asks for a new remark. */
  add() {
    this.#ask("Remark", true, (text, by, role) => {
      const remark = { by, role, time: now(), text, answered: "" };
      const all = this.clause.cell.source.remarks;
      if (all) this.clause.page.desk.put(this.clause.id, `/remarks/${all.length}`, remark);
      else this.clause.page.desk.put(this.clause.id, "/remarks", [remark]);
      this.clause.page.say("Remark kept.");
    });
  }

  /** @param {any} remark @param {number} index */
  #one(remark, index) {
    const answered = Boolean(remark.answered) || remark.settled === true;
    const who = [[remark.by, remark.role].filter(Boolean).join(", "), (remark.time ?? "").slice(0, 16).replace("T", " ")].filter(Boolean).join("; ");
    const word = (text, act) => el("button", { type: "button", class: "word", onclick: act }, text);
    return el(
      "div",
      { class: answered ? "remark settled" : "remark" },
      el("span", { class: "who" }, [answered ? "answered" : "open", who].filter(Boolean).join("; ")),
      el("span", { class: "said" }, String(remark.text ?? "")),
      remark.answered && el("span", { class: "reply" }, remark.answered),
      el("span", { class: "ways" }, word(answered ? "answer again" : "answer", () => this.#answer(index)), word("take out", () => this.#remove(index))),
    );
  }

  #answer(index) {
    this.#ask("Answer", false, (text) => {
      const remark = this.#remarks[index];
      this.clause.page.desk.put(this.clause.id, `/remarks/${index}`, { ...remark, answered: text });
      this.clause.page.say("Answer kept.");
    });
  }

  #remove(index) {
    this.clause.page.desk.put(this.clause.id, `/remarks/${index}`, null);
    this.clause.page.say("Remark taken out; undo brings it back.");
    this.clause.element.focus({ preventScroll: true });
  }

  /**
   * @param {string} what is asked for
   * @param {boolean} named whether it is said who says it
   * @param {(text: string, by: string, role: string) => void} keep
   */
  #ask(what, named, keep) {
    const before = document.activeElement;
    const text = el("textarea", { class: "field", rows: 3, spellcheck: "true" });
    const by = el("input", { class: "field", type: "text", autocomplete: "name", value: remembered("remark-by", "") });
    const role = el("input", { class: "field", type: "text", value: remembered("remark-role", "") });
    const done = () => {
      this.#form.replaceChildren();
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
    const act = () => {
      if (text.value.trim() === "") return text.focus();
      if (named) {
        remember("remark-by", by.value.trim());
        remember("remark-role", role.value.trim());
      }
      keep(text.value.trim(), by.value.trim(), role.value.trim());
      done();
    };
    const form = el(
      "div",
      { class: "remark-form", role: "group", "aria-label": what },
      el("label", {}, what, text),
      ...(named ? [el("label", {}, "By", by), el("label", {}, "Role", role)] : []),
      el("span", { class: "ways" }, el("button", { type: "button", class: "word", onclick: act }, "keep"), el("button", { type: "button", class: "word", onclick: done }, "leave it")),
    );
    form.addEventListener("keydown", (event) => {
      if (event.key === "Escape") {
        event.stopPropagation();
        done();
      }
      if (event.key === "Enter" && (event.ctrlKey || event.metaKey || event.target !== text) && event.target.tagName !== "BUTTON") {
        event.preventDefault();
        act();
      }
    });
    this.#form.replaceChildren(form);
    text.focus();
  }
}

function now() {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}
