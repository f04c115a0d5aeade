import { el, write } from "./dom.js";
import { Reference } from "./reference.js";

/** The reference beside a sheet that is being written: what is put in lands where the cursor was. */
export class Beside {
  #find = el("input", { type: "search", class: "field find", "aria-label": "Find a calculation", placeholder: "lash, end play, liner", autocomplete: "off", oninput: () => this.reference.list(this.#find.value) });
  #heading = el("h2", { tabindex: "-1", id: "beside-title" }, "Reference");
  #content = el("div", { class: "ref-body" });

  /**
   * @param {object} on
   * @param {() => import("../state/reference.js").Reader} on.reader
   * @param {(stops: string) => void} on.put
   * @param {() => void} on.closed
   */
  constructor(on) {
    this.on = on;
    this.reference = new Reference({
      content: this.#content,
      reader: on.reader,
      putIn: () => null,
      open: (name, kind) => this.#open(name, kind),
      shown: ({ title }) => write(this.#heading, title === "Contents" ? "Reference" : title),
    });
    this.element = el(
      "aside",
      { class: "beside", "aria-labelledby": "beside-title" },
      el("header", {}, this.#heading, el("button", { type: "button", class: "word", onclick: () => this.close() }, "back to the clause"), this.#find),
      this.#content,
    );
    this.element.addEventListener("keydown", (event) => {
      if (event.key !== "Escape") return;
      event.stopPropagation();
      this.close();
    });
  }

  /** @param {string} name a calculation to begin with, "" for the list */
  async show(name) {
    document.body.append(this.element);
    this.#find.focus();
    if (name) await this.#open(name, "calculation");
    else await this.reference.list("");
  }

  async #open(name, kind) {
    if (kind === "table") await this.reference.table(name);
    else await this.reference.calculation(name);
    this.element.scrollTop = 0;
    this.#heading.focus({ preventScroll: true });
    const back = el("button", { type: "button", class: "btn", onclick: () => this.#again() }, "Back to the contents");
    const stops = kind === "calculation" ? this.reference.view?.stops : null;
    const put = stops && el("button", { type: "button", class: "btn main", onclick: () => (this.close(), this.on.put(stops)) }, "Put it in at the cursor");
    this.#content.prepend(el("div", { class: "put-here" }, put, back));
  }

  #again() {
    this.reference.list(this.#find.value);
    this.#find.focus();
  }

  close() {
    this.element.remove();
    this.on.closed();
  }
}
