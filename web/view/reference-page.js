import { bySubject, path, place } from "../state/reference.js";
import { attribute, el, write } from "./dom.js";
import { Keyboard } from "./keyboard.js";
import { PutIn } from "./put-in.js";
import { Reference } from "./reference.js";
import { remember, remembered } from "./remembered.js";
import { startTheme } from "./theme.js";

/** The page of the reference: its contents, what was looked for, one calculation or one table. */
class ReferencePage {
  reader = { units: remembered("units", "metric"), terms: remembered("terms", "british") };

  constructor() {
    /** @type {HTMLElement} */
    this.content = document.querySelector("#shown");
    this.heading = document.querySelector("h1");
    /** @type {HTMLInputElement} */
    this.find = document.querySelector("#find");
    /** @type {HTMLAnchorElement} */
    this.contents = document.querySelector("#contents");
    this.reference = new Reference({
      content: this.content,
      reader: () => this.reader,
      putIn: (view) => this.#putIn(view),
      open: (name, kind) => this.open(name, kind),
      shown: (what) => this.#shown(what),
    });
    for (const setting of ["units", "terms"]) this.#choice(setting);
    this.find.addEventListener("input", () => this.#look());
    this.find.form.addEventListener("submit", (event) => (event.preventDefault(), /** @type {HTMLElement | null} */ (this.content.querySelector(".rn"))?.click()));
    this.contents.addEventListener("click", (event) => (event.preventDefault(), this.#all("")));
    addEventListener("popstate", () => this.draw());
    this.keyboard = new Keyboard([
      ["F", "find a calculation", () => this.find.focus()],
      ["U", "units: metric, imperial", () => this.#take("units", this.reader.units === "metric" ? "imperial" : "metric")],
      ["Escape", "back to the contents", () => this.#all("")],
    ]);
  }

  async start() {
    await this.draw();
    document.documentElement.dataset.ready = "";
  }

  /** @param {string} setting */
  #choice(setting) {
    /** @type {HTMLSelectElement} */
    const field = document.querySelector(`#${setting}`);
    field.value = this.reader[setting];
    field.addEventListener("change", () => this.#take(setting, field.value));
  }

  #take(setting, value) {
    this.reader = { ...this.reader, [setting]: value };
    remember(setting, value);
    /** @type {HTMLSelectElement} */ (document.querySelector(`#${setting}`)).value = value;
    this.draw();
  }

  draw() {
    const { kind, name } = place(location.pathname);
    if (kind === "calculation") return this.#calculation(name);
    if (kind === "table") return this.reference.table(name);
    return this.reference.list(this.find.value);
  }

  async #calculation(name) {
    await this.reference.calculation(name);
    await this.reference.alsoUnder(name);
  }

  /** @param {string} name @param {"calculation" | "table"} kind */
  async open(name, kind) {
    history.pushState(null, "", path(name, kind === "table"));
    await this.draw();
    scrollTo(0, 0);
    this.heading.focus({ preventScroll: true });
  }

  #look() {
    if (place(location.pathname).kind !== "all") history.pushState(null, "", "/reference");
    this.draw();
  }

  /** The contents, from the subject of a title on. @param {string} subject */
  async #all(subject) {
    this.find.value = "";
    history.pushState(null, "", "/reference");
    await this.draw();
    const at = [...this.content.querySelectorAll(".ref-group")].find((one) => subject !== "" && one.getAttribute("aria-label") === subject);
    if (at) at.scrollIntoView();
    else scrollTo(0, 0);
  }

  #putIn(view) {
    const putIn = new PutIn(view.line);
    putIn.start().catch(() => {});
    return putIn.element;
  }

  /** @param {{title: string, typed?: string, subject?: string, total?: number}} what */
  #shown({ title, typed = "", subject = "", total }) {
    write(this.heading, title);
    document.querySelector("#typed").replaceChildren(...(typed === "" ? [] : ["written ", el("code", { class: "src" }, typed)]));
    const lead = el("a", { class: "word", href: "/reference", onclick: (event) => (event.preventDefault(), this.#all(subject)) }, subject);
    document.querySelector("#subject").replaceChildren(subject === "" ? `all, ${total ?? ""} calculations` : lead);
    this.contents.hidden = place(location.pathname).kind === "all" && this.find.value === "";
    document.title = `${title} · Reference · Endfloat`;
    attribute(document.documentElement, "data-shown", title);
  }
}

startTheme();
new ReferencePage().start();
