import { Desk } from "../state/desk.js";
import { withLine, workings } from "../state/reference.js";
import { el } from "./dom.js";
import { remember, remembered } from "./remembered.js";

const timers = { set: (f, ms) => setTimeout(f, ms), clear: (handle) => clearTimeout(handle) };

/** Puts the line of a calculation into a clause of a record, or on the clipboard. */
export class PutIn {
  #record = el("select", { class: "field", onchange: () => this.#choose() });
  #clause = el("select", { class: "field" });
  #button = el("button", { type: "button", class: "btn main", onclick: () => this.#put() }, "Put it in");
  #said = el("p", { class: "ref-said", role: "status" });
  #line;

  /** @param {string} line */
  constructor(line) {
    this.line = line;
    this.#line = el("input", { class: "field src", readonly: true, value: line, "aria-label": "The line", onfocus: () => this.#line.select() });
    this.element = el(
      "div",
      { class: "put-in" },
      el("div", { class: "put-line" }, this.#line, el("button", { type: "button", class: "btn", onclick: () => this.#copy() }, "Copy the line")),
      el("label", {}, "Record", this.#record),
      el("label", {}, "Clause", this.#clause),
      this.#button,
      this.#said,
    );
  }

  async start() {
    const { records } = await ask("/api/shelf");
    const whole = records.filter((one) => !one.problem);
    this.#record.replaceChildren(...whole.map((one) => el("option", { value: one.id }, [one.record_number, one.title].filter(Boolean).join(" ") || one.id)));
    const before = remembered("put-into", "");
    if (whole.some((one) => one.id === before)) this.#record.value = before;
    this.#button.disabled = whole.length === 0;
    if (whole.length > 0) await this.#choose();
  }

  async #choose() {
    const { cells } = await ask(`/api/records/${encodeURIComponent(this.#record.value)}/sheet`);
    const some = workings(cells);
    this.#clause.replaceChildren(...some.map((one) => el("option", { value: one.id }, `${one.number} ${one.title}`)));
    this.#button.disabled = some.length === 0;
    if (some.length === 0) this.#say("This record has no working yet; write one on its sheet first.");
  }

  async #copy() {
    try {
      await navigator.clipboard.writeText(this.line);
      this.#say("Copied: the values of the arguments are still open.");
    } catch {
      this.#line.focus();
      this.#say("This browser keeps its clipboard shut; the line is marked, copy it by hand.");
    }
  }

  /** Through the same line as a sheet's own page, so that every window with the sheet shows it at once. */
  #put() {
    const record = this.#record.value;
    const clause = this.#clause.value;
    remember("put-into", record);
    this.#button.disabled = true;
    const protocol = location.protocol === "https:" ? "wss:" : "ws:";
    const address = `${protocol}//${location.host}/api/records/${encodeURIComponent(record)}/live?page=${crypto.randomUUID()}`;
    const desk = new Desk(() => new WebSocket(address), () => crypto.randomUUID(), timers);
    let sent = false;
    const end = (...said) => {
      desk.connection.close();
      this.#button.disabled = false;
      this.#say(...said);
    };
    desk.listen((event, detail) => {
      if (event === "sheet" && !sent) {
        sent = true;
        desk.put(clause, "/text", withLine(desk.cell(clause)?.source.text ?? "", this.line));
      } else if (event === "kept") {
        const href = `/sheet/${encodeURIComponent(record)}#clause-${clause}`;
        end("Written at the end of the clause, its values open: ", el("a", { class: "word", href }, `to clause ${desk.cell(clause)?.number ?? ""}`));
      } else if (event === "refused" || event === "error") {
        end([detail.reason ?? detail.message, detail.wayOut].filter(Boolean).join(" "));
      }
    });
    desk.start();
  }

  /** @param {...(string | Node)} words */
  #say(...words) {
    this.#said.replaceChildren(...words);
  }
}

/** @param {string} address */
async function ask(address) {
  const answer = await fetch(address, { headers: { Accept: "application/json" } });
  return answer.json();
}
