import { bySubject, path, query } from "../state/reference.js";
import { calculation, drawing } from "./calculation.js";
import { el } from "./dom.js";
import { lookup } from "./lookup.js";

/** The reference: what was looked for, one calculation, or one table, in one element. */
export class Reference {
  #asked = 0;
  /** The calculation that was shown last. */
  view = null;

  /**
   * @param {object} on
   * @param {HTMLElement} on.content
   * @param {() => import("../state/reference.js").Reader} on.reader
   * @param {(view: any) => Node | null} on.putIn
   * @param {(name: string, kind: "calculation" | "table") => void} on.open
   * @param {(what: {title: string, total?: number}) => void} on.shown
   */
  constructor(on) {
    this.on = on;
  }

  /** Everything, or what answers to the words typed. @param {string} typed */
  async list(typed) {
    const view = await this.#ask(`/api/catalogue${query(this.on.reader(), typed)}`);
    if (!view) return null;
    const groups = typed.trim() === "" ? bySubject(view.calculations) : [{ title: found(view), calculations: view.calculations }];
    const tables = el("section", { class: "ref-group", "aria-label": "Tables" }, el("h2", { class: "ttl" }, "Tables"), register("Tables", view.tables.map((one) => this.#row(one.name, "table", one.title))));
    this.#show(el("div", { class: "ref-page" }, ...view.meant.filter((one) => one.also.length > 0).map(meant), ...groups.map((group) => this.#group(group)), tables), { title: "Calculations", total: view.total });
    return view;
  }

  #group({ title, calculations }) {
    const rows = calculations.map((one) => this.#row(one.name, "calculation", one.summary));
    return el("section", { class: "ref-group", "aria-label": title }, el("h2", { class: "ttl" }, title), rows.length > 0 && register(title, rows));
  }

  #row(name, kind, about) {
    return el("tr", {}, el("th", { scope: "row" }, this.link(name, kind)), el("td", {}, about));
  }

  /** @param {string} name @param {"calculation" | "table"} kind */
  link(name, kind) {
    const act = (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      this.on.open(name, kind);
    };
    return el("a", { class: "rn", href: path(name, kind === "table"), onclick: act }, name.replaceAll("-", " "));
  }

  /** @param {string} name */
  async calculation(name) {
    const view = await this.#ask(`/api/catalogue/${encodeURIComponent(name)}${query(this.on.reader())}`);
    if (!view) return;
    this.view = view;
    const page = calculation(view, this.on.putIn(view));
    this.#show(page, { title: name });
    if (view.drawing) await drawing(page, name, view.drawing);
  }

  /** @param {string} name */
  async table(name) {
    const view = await this.#ask(`/api/tables/${encodeURIComponent(name)}${query(this.on.reader())}`);
    if (view) this.#show(lookup(view), { title: view.title });
  }

  #show(page, what) {
    this.on.content.replaceChildren(page);
    this.on.shown(what);
  }

  /** An answer of the server; null where it has none, or where something else was asked for since. @param {string} address */
  async #ask(address) {
    const asked = ++this.#asked;
    try {
      const answer = await fetch(address, { headers: { Accept: "application/json" } });
      const view = await answer.json();
      if (asked !== this.#asked) return null;
      if (answer.ok) return view;
      this.#fail(view.message, view.wayOut);
    } catch {
      if (asked === this.#asked) this.#fail("The reference cannot be read from the server.", "Try again when the line is back.");
    }
    return null;
  }

  #fail(message, wayOut) {
    this.#show(el("p", { class: "ref-summary", role: "alert" }, el("strong", {}, message ?? ""), ` ${wayOut ?? ""}`), { title: "Not found" });
  }
}

function register(caption, rows) {
  return el("table", { class: "ref-register" }, el("caption", { class: "unseen" }, caption), el("tbody", {}, ...rows));
}

function found(view) {
  const count = view.calculations.length;
  return count === 0 ? "Nothing answers to that; take out a word" : `${count} found, the best first`;
}

function meant({ typed, also }) {
  return el("p", { class: "ref-meant" }, `${typed} is also ${also.join(", ")}; these are found too.`);
}
