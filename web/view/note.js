import { liveText } from "../state/figures.js";
import { el, fragment, mark, write } from "./dom.js";
import { Editing } from "./editing.js";

/** A note or a caution: prose with live figures. */
export class NoteBody {
  #html = null;
  #prose = el("div", { class: "prose" });
  #links = new Map();
  #gaps;

  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    const box = clause.cell.kind === "caution" ? el("div", { class: "caution" }, el("p", { class: "ch" }, "Caution"), this.#prose) : this.#prose;
    this.#gaps = el("p", { class: "board-problems note-gaps", hidden: true });
    this.elements = [box, this.#gaps];
  }

  update() {
    const { html, source } = this.clause.cell;
    const drawn = html ?? source.text ?? "";
    if (drawn !== this.#html) {
      this.#html = drawn;
      this.#prose.replaceChildren(html === undefined ? el("p", {}, drawn) : fragment(drawn));
      if (drawn.trim() === "") this.#prose.append(el("p", { class: "empty" }, "Nothing written yet."));
      this.#collect();
      this.clause.page.reindex(this.clause);
    }
    const gaps = this.clause.cell.problems ?? [];
    this.#gaps.replaceChildren(...gaps.flatMap((one) => [el("strong", {}, one.message), ` ${one.wayOut ?? ""} `]));
    this.#gaps.hidden = gaps.length === 0;
    this.editing?.update();
  }

  #collect() {
    this.#links.clear();
    for (const link of this.#prose.querySelectorAll("a[data-figure]")) {
      const name = link.dataset.figure.split(".")[0];
      this.#links.set(name, [...(this.#links.get(name) ?? []), link]);
      link.addEventListener("click", (event) => {
        event.preventDefault();
        this.clause.page.goToFigure(name);
      });
    }
    this.figures([...this.#links.keys()]);
    for (const link of this.#prose.querySelectorAll("a[data-clause]")) {
      link.className = link.classList.contains("missing") ? "ref missing" : "ref";
      link.addEventListener("click", (event) => {
        event.preventDefault();
        this.clause.page.go(link.dataset.clause);
      });
    }
  }

  names() {
    return this.#links.keys();
  }

  /** @param {Iterable<string>} names */
  figures(names) {
    for (const name of names) {
      const figure = this.clause.page.desk.figure(name);
      for (const link of this.#links.get(name) ?? []) {
        const text = liveText(figure, link.dataset.figure.split(".")[1]);
        mark(link, "missing", text === "" && (!figure || figure.state === "error"));
        mark(link, "to-come", text === "" && Boolean(figure) && figure.state !== "error");
        write(link, text || link.dataset.figure);
      }
    }
  }

  open(line) {
    this.editing = new Editing(this.clause, { prose: true, tokens: [], problems: [] });
    this.clause.content.prepend(this.editing.element);
    return this.editing.open(line);
  }

  close() {
    this.editing?.close();
    this.editing = null;
  }
}

/** A kind of clause that this version keeps and shows plainly. */
export class CarriedBody {
  /** @param {import("./clause.js").Clause} clause */
  constructor(clause) {
    this.clause = clause;
    this.box = el("div", { class: "carried" });
    this.elements = [this.box];
  }

  update() {
    const { kind, source } = this.clause.cell;
    const known = new Set(["id", "kind", "title", "cells", "remarks"]);
    const rows = Object.entries(source ?? {}).filter(([name]) => !known.has(name));
    this.box.replaceChildren(
      el("p", {}, `A ${kind} clause. It is kept as it stands; a later version shows it in full.`),
      el("dl", {}, ...rows.flatMap(([name, value]) => [el("dt", {}, name.replaceAll("_", " ")), el("dd", {}, plain(value))])),
    );
  }

  names() {
    return [];
  }

  figures() {}
  open() {}
  close() {}
}

/** @param {any} value */
function plain(value) {
  if (typeof value === "string") return value;
  return JSON.stringify(value, null, 1).replaceAll(/[{}[\]",]/g, "").replaceAll(/\n\s*\n/g, "\n").trim();
}
