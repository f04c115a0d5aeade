import { bySubject, path, place } from "../state/reference.js";
import { attribute, el, write } from "./dom.js";
import { Keyboard } from "./keyboard.js";
import { PutIn } from "./put-in.js";
import { Reference } from "./reference.js";
import { remember, remembered } from "./remembered.js";
import { startTheme } from "./theme.js";

const CHOICES = { units: ["metric", "imperial"], terms: ["british", "american"] };

/** The page of the reference: find and subjects at the left, what was asked for at the right. */
class ReferencePage {
  #links = new Map();
  reader = { units: remembered("units", "metric"), terms: remembered("terms", "british") };

  constructor() {
    /** @type {HTMLElement} */
    this.content = document.querySelector("#shown");
    this.heading = document.querySelector("h1");
    /** @type {HTMLInputElement} */
    this.find = document.querySelector("#find");
    this.names = document.querySelector("#names");
    this.reference = new Reference({
      content: this.content,
      reader: () => this.reader,
      putIn: (view) => this.#putIn(view),
      open: (name, kind) => this.open(name, kind),
      shown: (what) => this.#shown(what),
    });
    for (const [setting, values] of Object.entries(CHOICES)) this.#choice(setting, values);
    this.find.addEventListener("input", () => this.#look());
    this.find.form.addEventListener("submit", (event) => (event.preventDefault(), /** @type {HTMLElement | null} */ (this.content.querySelector(".rn"))?.click()));
    addEventListener("popstate", () => this.draw());
    this.keyboard = new Keyboard([
      ["F", "find a calculation", () => this.find.focus()],
      ["U", "units: metric, imperial", () => this.#take("units", this.reader.units === "metric" ? "imperial" : "metric")],
      ["Escape", "back to the list", () => this.#all()],
    ]);
  }

  async start() {
    await this.#names();
    await this.draw();
    document.documentElement.dataset.ready = "";
  }

  #choice(setting, values) {
    const box = document.querySelector(`[data-choice="${setting}"]`);
    for (const value of values) box.append(el("button", { type: "button", "aria-pressed": String(this.reader[setting] === value), "data-value": value, onclick: () => this.#take(setting, value) }, value[0].toUpperCase() + value.slice(1)));
  }

  #take(setting, value) {
    this.reader = { ...this.reader, [setting]: value };
    remember(setting, value);
    /** @type {NodeListOf<HTMLButtonElement>} */
    const buttons = document.querySelectorAll(`[data-choice="${setting}"] button`);
    for (const button of buttons) attribute(button, "aria-pressed", String(button.dataset.value === value));
    this.draw();
  }

  /** Every calculation in the rail, under its subject. */
  async #names() {
    const answer = await fetch("/api/catalogue").then((one) => one.json()).catch(() => ({ calculations: [], tables: [] }));
    const item = (name, kind) => {
      const link = this.reference.link(name, kind);
      link.className = "";
      this.#links.set(path(name, kind === "table"), link);
      return el("li", {}, link);
    };
    const group = (title, items) => el("li", {}, el("span", { class: "cap" }, title), el("ul", {}, ...items));
    this.names.replaceChildren(...bySubject(answer.calculations).map((one) => group(one.title, one.calculations.map((each) => item(each.name, "calculation")))), group("Tables", answer.tables.map((one) => item(one.name, "table"))));
    write(document.querySelector("#count"), String(answer.calculations.length));
  }

  draw() {
    const { kind, name } = place(location.pathname);
    for (const [to, link] of this.#links) attribute(link, "aria-current", to === location.pathname ? "page" : null);
    if (kind === "calculation") return this.reference.calculation(name);
    if (kind === "table") return this.reference.table(name);
    return this.reference.list(this.find.value);
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

  #all() {
    if (document.activeElement === this.find) this.find.value = "";
    history.pushState(null, "", "/reference");
    this.draw();
  }

  #putIn(view) {
    const putIn = new PutIn(view.line);
    putIn.start().catch(() => {});
    return putIn.element;
  }

  #shown({ title }) {
    write(this.heading, title);
    document.title = `${title} · Reference · Endfloat`;
    attribute(document.documentElement, "data-shown", title);
  }
}

startTheme();
new ReferencePage().start();
