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
   * @param {(what: {title: string, typed?: string, subject?: string, total?: number}) => void} on.shown
   */
  constructor(on) {
    this.on = on;
  }

  /** The contents, or what answers to the words typed. @param {string} typed */
  async list(typed) {
    const view = await this.#ask(`/api/catalogue${query(this.on.reader(), typed)}`);
    if (!view) return null;
    const tables = this.#group("Tables", view.tables.map((one) => this.#entry({ name: one.name, heading: one.title }, "table")));
    if (typed.trim() === "") {
      const groups = bySubject(view.calculations).map(({ title, calculations }) => this.#group(title, calculations.map((one) => this.#entry(one, "calculation"))));
      this.#show(el("div", { class: "ref-page ref-contents" }, ...groups, tables), { title: "Contents", total: view.total });
    } else {
      const some = this.#group(found(view), view.calculations.map((one) => this.#entry(one, "calculation", one.summary)));
      this.#show(el("div", { class: "ref-page" }, ...view.meant.filter((one) => one.also.length > 0).map(meant), some, tables), { title: "What was found", total: view.total });
    }
    return view;
  }

  /** The others under the same subject, at the foot of a calculation. @param {string} name */
  async alsoUnder(name) {
    const page = this.on.content.firstElementChild;
    const view = await this.#ask(`/api/catalogue${query(this.on.reader())}`);
    const here = view?.calculations.find((one) => one.name === name);
    if (!here || !page?.isConnected) return;
    const others = view.calculations.filter((one) => one.title === here.title && one !== here);
    if (others.length > 0) page.append(el("div", { class: "ref-also" }, this.#group(`Also under ${here.title.toLowerCase()}`, others.map((one) => this.#entry(one, "calculation")))));
  }

  #group(title, entries) {
    return el("section", { class: "ref-group", "aria-label": title }, el("h2", { class: "ttl" }, title), entries.length > 0 && el("ol", { class: "ref-list" }, ...entries));
  }

  #entry(one, kind, about = "") {
    return el("li", {}, this.link(one, kind), about && el("span", { class: "d" }, about));
  }

  /** A title, and behind it what is written in a line. @param {{name: string, heading: string}} one @param {"calculation" | "table"} kind */
  link({ name, heading }, kind) {
    const act = (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      this.on.open(name, kind);
    };
    const written = kind === "calculation" && [el("span", { class: "lead" }, " "), el("code", { class: "src" }, name)];
    return el("a", { class: "rn", href: path(name, kind === "table"), onclick: act }, el("span", { class: "ti" }, heading), ...(written || []));
  }

  /** @param {string} name */
  async calculation(name) {
    const view = await this.#ask(`/api/catalogue/${encodeURIComponent(name)}${query(this.on.reader())}`);
    if (!view) return;
    this.view = view;
    const page = calculation(view, this.on.putIn(view));
    this.#show(page, { title: view.heading, typed: `${name}(…)`, subject: view.title });
    if (view.drawing) await drawing(page, name, view.drawing);
  }

  /** @param {string} name */
  async table(name) {
    const view = await this.#ask(`/api/tables/${encodeURIComponent(name)}${query(this.on.reader())}`);
    if (view) this.#show(lookup(view), { title: view.title, subject: "Tables" });
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
    this.#show(el("p", { class: "ref-summary", role: "alert" }, el("strong", {}, message ?? ""), ` ${wayOut ?? ""}`), { title: "Not found", subject: "Contents" });
  }
}

function found(view) {
  const count = view.calculations.length;
  return count === 0 ? "Nothing answers to that; take out a word" : `${count} found, the best first`;
}

function meant({ typed, also }) {
  return el("p", { class: "ref-meant" }, `${typed} is also ${also.join(", ")}; these are found too.`);
}
