import { el } from "./dom.js";

/** A table filled from the other records of the shelf: which records, and which of their figures. */
export class TableFleet {
  #said = el("p", { role: "status" }, "The shelf is being read.");
  #choices = el("div", {});
  #back = document.activeElement;

  /** @param {import("./table.js").TableBody} body */
  constructor(body) {
    this.body = body;
    this.page = body.clause.page;
    const head = el("header", {}, el("span", {}, "One row a record, one column a figure, as they are now. They stay so until they are read again."), el("span", {}, "Esc leaves it"));
    this.element = el("section", { class: "particulars take-in fleet", "aria-label": "Fill from the shelf", tabindex: "-1" }, head, this.#choices, this.#said);
    this.element.addEventListener("keydown", (event) => event.key === "Escape" && !event.defaultPrevented && (event.preventDefault(), this.close()));
  }

  async open() {
    this.body.clause.content.querySelector(".take-in")?.remove();
    this.body.clause.content.prepend(this.element);
    this.element.focus();
    const record = location.pathname.split("/").at(-1);
    const offered = await ask(`/api/records/${record}/fleet`);
    if (!offered.records) return this.#say(offered);
    if (offered.records.length === 0) return this.#said.replaceChildren("There is no other record on the shelf.");
    this.#said.replaceChildren();
    this.#draw(offered);
  }

  close() {
    this.element.remove();
    if (this.#back instanceof HTMLElement) this.#back.focus({ preventScroll: true });
  }

  #draw({ records, figures }) {
    const from = this.body.source.from ?? {};
    const chosen = new Set((from.shelf ?? []).map((one) => one.record));
    const wanted = new Set(from.of ?? []);
    const box = (value, on, ...words) => el("label", {}, el("input", { type: "checkbox", class: "check", value, checked: on }), " ", ...words);
    const of = [...figures].sort((a, b) => b.records - a.records || a.name.localeCompare(b.name));
    const rest = [...wanted].filter((name) => !figures.some((one) => one.name === name));
    const other = el("input", { class: "field", type: "text", value: rest.join(", "), spellcheck: "false", autocomplete: "off" });
    const recordSet = el("fieldset", { class: "ticked" }, el("legend", {}, "Records"), ...records.map((one) => box(one.id, chosen.size === 0 || chosen.has(one.id), [one.number, one.engine, one.title].filter(Boolean).join(", ") || one.id)));
    const figureSet = el("fieldset", { class: "ticked figures" }, el("legend", {}, "Figures and readings"), ...of.map((one) => box(one.name, wanted.has(one.name), one.name, el("span", { class: "un" }, ` in ${one.records}`))), el("label", { class: "whole" }, "Others by their names, parted by commas", other));
    const read = el("button", { type: "button", class: "btn main", onclick: () => this.#read(ticked(recordSet), [...ticked(figureSet), ...other.value.split(",").map((one) => one.trim()).filter(Boolean)]) }, "Read the records");
    this.#choices.replaceChildren(recordSet, figureSet, el("div", { class: "foot" }, read, el("button", { type: "button", class: "word", onclick: () => this.close() }, "leave it")));
  }

  async #read(records, of) {
    if (records.length === 0 || of.length === 0) return this.#said.replaceChildren("Choose at least one record and one figure.");
    this.#said.replaceChildren("The records are being worked out.");
    const done = await fill(this.body, { records, of });
    if (done.rows === undefined) return this.#say(done);
    this.close();
    told(this.body, done);
  }

  #say({ message = "", wayOut = "" }) {
    this.#said.replaceChildren(el("strong", {}, message), ` ${wayOut}`);
  }
}

/** Reads the records again that a table was read from. @param {import("./table.js").TableBody} body */
export async function readAgain(body) {
  const done = await fill(body, {});
  if (done.rows === undefined) body.clause.page.says.offer([done.message, done.wayOut].filter(Boolean).join(" "), []);
  else told(body, done);
}

/** @param {import("./table.js").TableBody} body @param {any} done */
function told(body, { rows, notices }) {
  const { page } = body.clause;
  const said = notices.length > 0 ? ` ${notices.slice(0, 3).join("; ")}${notices.length > 3 ? `; and ${notices.length - 3} more` : ""}.` : "";
  page.says.offer(`${rows} ${rows === 1 ? "record" : "records"} read.${said}`, [["undo", () => page.undo()]]);
}

/** @param {import("./table.js").TableBody} body @param {any} wish */
function fill(body, wish) {
  return ask(`${body.address}/fleet`, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(wish) });
}

/** @param {string} address @param {any} [how] @returns {Promise<any>} */
async function ask(address, how = {}) {
  try {
    return await (await fetch(address, how)).json();
  } catch {
    return { message: "The line to the server is lost.", wayOut: "Try again when it is back." };
  }
}

/** @param {Element} set @returns {string[]} */
function ticked(set) {
  return [.../** @type {NodeListOf<HTMLInputElement>} */ (set.querySelectorAll("input:checked"))].map((one) => one.value);
}
