import { Desk } from "../state/desk.js";
import { doubtFrom, liveText } from "../state/figures.js";
import { el, fragment, write } from "./dom.js";
import { startTheme } from "./theme.js";
import { Judgements } from "./verdict.js";
import { worked } from "./worked.js";

const timers = { set: (f, ms) => setTimeout(f, ms), clear: (handle) => clearTimeout(handle) };

/** How a figure is made: the prose of the page, filled with what the demonstration comes to now. */
class FigurePage {
  constructor() {
    /** @type {HTMLElement} */
    this.wait = document.querySelector("#wait");
    /** @type {HTMLElement} */
    this.made = document.querySelector("#made");
  }

  async start() {
    const shelf = await fetch("/api/shelf").then((answer) => answer.json()).catch(() => ({}));
    const id = shelf.demonstration;
    if (!id) return this.#none("There is no demonstration on this shelf, and so no figure to show.");
    const protocol = location.protocol === "https:" ? "wss:" : "ws:";
    const address = `${protocol}//${location.host}/api/records/${encodeURIComponent(id)}/live?page=${crypto.randomUUID()}`;
    this.desk = new Desk(() => new WebSocket(address), () => crypto.randomUUID(), timers);
    this.desk.listen((event, detail) => {
      if (event === "sheet") this.#fill();
      if (event === "error") this.#none([detail.message, detail.wayOut].filter(Boolean).join(" "));
    });
    /** @type {HTMLAnchorElement} */
    const record = document.querySelector("#record");
    record.href = `/sheet/${encodeURIComponent(id)}`;
    this.desk.start();
  }

  #none(text) {
    write(this.wait, text);
    this.wait.hidden = false;
    document.documentElement.dataset.ready = "";
  }

  async #fill() {
    const { record } = this.desk.sheet;
    write(document.querySelector("#record"), [record.title_block?.record_number, record.title_block?.engine_serial].filter(Boolean).join(", ") || "the demonstration");
    /** @type {NodeListOf<HTMLElement>} */
    const places = document.querySelectorAll("[data-figure]");
    for (const place of places) write(place, this.#said(place.dataset.figure));
    this.#each("lines", (names) => worked(this.#lines(names.split(" ")), "Lines of the record, worked out"));
    this.#each("reading", (name) => this.#reading(name));
    this.#each("verdict", (name) => this.#verdict(name));
    this.#each("notes", (name) => this.#notes(name));
    const name = /** @type {HTMLElement} */ (document.querySelector("[data-shares]")).dataset.shares;
    const trace = await this.desk.trace(name);
    this.#each("shares", () => shares(trace?.contributions ?? []));
    this.wait.hidden = true;
    this.made.hidden = false;
    document.documentElement.dataset.ready = "";
  }

  #each(kind, draw) {
    /** @type {NodeListOf<HTMLElement>} */
    const places = document.querySelectorAll(`[data-${kind}]`);
    for (const place of places) place.replaceChildren(draw(place.dataset[kind]));
  }

  /** A figure in a sentence, with its uncertainty. */
  #said(name) {
    const figure = this.desk.figure(name);
    const text = liveText(figure);
    if (text === "") return `${name} (no figure)`;
    return figure.u ? `${figure.value} ± ${figure.u} ${figure.unit}` : text;
  }

  /** The lines of these names, wherever they stand. */
  #lines(names) {
    const lines = [...this.desk.sheet.cells.values()].flatMap((cell) => cell.lines ?? []);
    const figures = Object.fromEntries(names.map((name) => [name, this.desk.figure(name)]));
    return { lines: names.map((name) => lines.find((line) => line.figure === name)).filter(Boolean), figures };
  }

  /** A reading as it was typed. */
  #reading(name) {
    const reading = [...this.desk.sheet.cells.values()].flatMap((cell) => cell.source.readings ?? []).find((one) => one.name === name);
    if (!reading) return el("p", { class: "prose" }, `The record has no reading ${name}.`);
    const instrument = (this.desk.sheet.record.instruments ?? []).find((one) => one.id === reading.instrument);
    const by = [instrument?.name, instrument?.id, instrument?.calibrated && `calibrated ${instrument.calibrated}`].filter(Boolean).join(", ");
    const axes = reading.axes ?? [];
    const place = (entry) => axes.map((axis) => entry.at?.[axis]).join(", ");
    return el(
      "div",
      { class: "wide", tabindex: "0", role: "group", "aria-label": "The readings" },
      el(
        "table",
        { class: "t ref-table lookup" },
        el("caption", {}, [reading.what, by].filter(Boolean).join(". ")),
        el("tbody", {}, row(axes.join(", "), reading.entries.map(place)), row(`as read, ${reading.unit}`, reading.entries.map((entry) => (entry.taken ?? []).join(" ")))),
      ),
    );
  }

  #verdict(name) {
    const figure = this.desk.figure(name);
    const box = el("div", { class: "made-verdict" });
    const limits = figure?.limits ?? [];
    new Judgements(box).show(limits);
    limits.forEach((limit, index) => box.children[index].append(el("p", { class: "let" }, [limit.high && `at most ${limit.high} ${limit.unit}`, limit.low && `at least ${limit.low} ${limit.unit}`, limit.authority, limit.rule && `rule: ${limit.rule}`, limit.probability && `probability of conformity ${limit.probability}`].filter(Boolean).join("; "))));
    return box;
  }

  /** The paragraphs of notes that name the figure. */
  #notes(name) {
    const found = [...this.desk.sheet.cells.values()]
      .filter((cell) => cell.html)
      .flatMap((cell) => [...fragment(cell.html).querySelectorAll("p, li")].filter((one) => one.querySelector(`[data-figure="${name}"]`)).map((one) => el("blockquote", {}, el("span", { class: "cap" }, `Clause ${cell.number}, ${cell.title}`), ...plain(one))));
    return el("div", { class: "prose" }, ...found.slice(0, 1));
  }
}

/** The content of a paragraph, its links as text: they lead nowhere here. @param {Element} one */
function plain(one) {
  for (const link of one.querySelectorAll("a")) link.replaceWith(el("span", { class: "say" }, link.textContent));
  return [...one.childNodes];
}

/** @param {string} head @param {string[]} cells */
function row(head, cells) {
  return el("tr", {}, el("th", { scope: "row", class: "l" }, head), ...cells.map((text) => el("td", { class: "l num" }, text)));
}

/** @param {readonly any[]} contributions */
function shares(contributions) {
  const told = contributions.filter((one) => !one.share.startsWith("<"));
  const rest = contributions.length - told.length;
  return el("table", { class: "t ref-table made-shares" }, el("caption", { class: "unseen" }, "What the uncertainty comes from"), el("tbody", {}, ...told.map((one) => el("tr", {}, el("th", { scope: "row" }, doubtFrom(one)), el("td", { class: "l" }, one.share))), rest > 0 && el("tr", {}, el("th", { scope: "row" }, `${rest} more`), el("td", { class: "l" }, "each next to nothing"))));
}

startTheme();
new FigurePage().start();
