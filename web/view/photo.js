import { el, write } from "./dom.js";
import { Field } from "./field.js";

/** A photograph with its caption. The file is kept beside the record as it came; the clause names it. */
export class PhotoBody {
  #shown = "";
  #image = el("img", { class: "photo", alt: "", loading: "lazy", decoding: "async" });
  #caption = el("figcaption", {});
  #figure = el("figure", { class: "photograph" }, this.#image, this.#caption);
  #empty = el("p", { class: "quiet" }, "No photograph yet. Press Enter and choose a file.");

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.elements = [this.#figure, this.#empty];
  }

  get #address() {
    return `/api/records/${location.pathname.split("/").at(-1)}/photos`;
  }

  update() {
    const { photo = "", caption = "" } = this.clause.cell.source;
    if (photo !== this.#shown) {
      this.#shown = photo;
      if (photo) this.#image.src = `${this.#address}/${photo}`;
      else this.#image.removeAttribute("src");
    }
    this.#figure.hidden = photo === "";
    this.#empty.hidden = photo !== "";
    this.#image.alt = caption || this.clause.cell.title || "photograph without a caption";
    write(this.#caption, caption);
    this.editing?.update();
  }

  open() {
    this.editing = new PhotoFields(this.clause, this.#address);
    this.clause.content.prepend(this.editing.element);
    this.editing.focus();
  }

  close() {
    this.editing?.element.remove();
    this.editing = null;
  }
}

/** The caption, and the file to choose. */
class PhotoFields {
  #file = el("input", { class: "field", type: "file", accept: "image/jpeg,image/png", onchange: () => this.#send() });
  #said = el("span", { class: "refusal", role: "alert", hidden: true });

  /** @param {import("./clause.js").Clause} clause @param {string} address */
  constructor(clause, address) {
    this.clause = clause;
    this.address = address;
    this.caption = new Field({ label: "", key: "/caption", keep: (text) => this.#put("/caption", text.trim()) });
    const head = el("header", {}, el("span", {}, "JPEG or PNG, at most 20 MB. Where it was taken is left out of reports."), el("span", {}, "Esc closes"));
    this.element = el(
      "div",
      { class: "particulars entry", role: "group", "aria-label": `Photograph of clause ${clause.cell.number}` },
      head,
      el("fieldset", {}, el("label", { class: "half" }, "File", this.#file, this.#said), el("label", { class: "half" }, "Caption: what it shows, from where, to what scale", this.caption.input)),
    );
    this.element.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && !event.defaultPrevented) clause.page.close();
    });
    this.update();
  }

  focus() {
    (this.clause.cell.source.photo ? this.caption.input : this.#file).focus();
  }

  update() {
    this.caption.show(this.clause.cell.source.caption ?? "");
  }

  #put(at, value) {
    this.clause.page.desk.put(this.clause.id, at, value);
  }

  async #send() {
    const [file] = this.#file.files;
    if (!file) return;
    const body = new FormData();
    body.append("photo", file);
    try {
      const answer = await fetch(this.address, { method: "POST", body });
      const kept = await answer.json();
      if (!answer.ok) throw new Error([kept.message, kept.wayOut].filter(Boolean).join(" "));
      this.#said.hidden = true;
      this.#put("/photo", kept.photo);
    } catch (failure) {
      this.#said.hidden = false;
      write(this.#said, failure.message);
    }
  }
}
