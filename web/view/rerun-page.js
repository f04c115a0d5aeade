import { el, write } from "./dom.js";
import { handOn } from "./handed-on.js";
import { leadOnwards } from "./onwards.js";
import { Says } from "./says.js";
import { startTheme } from "./theme.js";

/** A record run on another engine: its title block, its readings from a file or none, then both side by side. */
class RerunPage {
  #id = decodeURIComponent(location.pathname.split("/").at(-1));

  constructor() {
    /** @type {HTMLFormElement & {elements: Record<string, any>}} */
    this.form = document.querySelector("#rerun");
    /** @type {HTMLElement} */
    this.problems = document.querySelector(".problems");
    this.says = new Says(document.querySelector(".says"));
    this.form.addEventListener("submit", (event) => this.#send(event));
    this.form.elements.readings.addEventListener("change", () => (this.form.elements.with.value = "file"));
  }

  async start() {
    const path = encodeURIComponent(this.#id);
    leadOnwards(this.#id);
    const answer = await fetch(`/api/records/${path}`);
    const record = await answer.json();
    if (!answer.ok) {
      this.says.offer([record.message, record.wayOut].filter(Boolean).join(" "), []);
      return;
    }
    const block = record.title_block ?? {};
    write(document.querySelector("#from"), block.title || this.#id);
    write(document.querySelector("#number"), block.record_number || this.#id);
    write(document.querySelector("#engine"), [block.engine_type, block.engine_serial].filter(Boolean).join(", "));
    /** @type {HTMLAnchorElement} */ (document.querySelector("#form")).href = `/api/records/${path}/readings.csv`;
    this.form.elements.title.value = block.title ?? "";
    this.form.elements.date.value = today();
    document.documentElement.dataset.ready = "";
  }

  /** @param {Event} event */
  async #send(event) {
    event.preventDefault();
    const fields = new FormData(this.form);
    const empty = fields.get("with") === "none";
    if (empty) fields.delete("readings");
    else if (!(/** @type {File | null} */ (fields.get("readings"))?.size > 0)) return this.#refuse("Choose a file of readings, or leave every reading empty.", []);
    const path = encodeURIComponent(this.#id);
    const button = /** @type {HTMLButtonElement} */ (this.form.querySelector(".act .btn"));
    button.disabled = true;
    this.problems.hidden = true;
    this.says.offer("Every figure of the record is worked out on the new readings.", []);
    const answer = await fetch(`/api/records/${path}/rerun`, { method: "POST", body: fields }).catch(() => null);
    button.disabled = false;
    this.says.clear();
    if (answer === null) return this.#refuse("Endfloat does not answer. Whether the record was made, the shelf says.", []);
    const made = await answer.json();
    if (!answer.ok) return this.#refuse([made.message, made.wayOut].filter(Boolean).join(" "), made.problems ?? []);
    const next = encodeURIComponent(made.id);
    handOn(made.id, made.notices ?? []);
    location.assign(empty ? `/sheet/${next}` : `/compare?left=${path}&right=${next}`);
  }

  /** @param {string} message @param {readonly string[]} problems */
  #refuse(message, problems) {
    this.problems.hidden = false;
    this.problems.replaceChildren(el("p", {}, message), el("ul", {}, ...problems.map((one) => el("li", {}, one))));
    this.problems.scrollIntoView({ block: "nearest" });
  }
}

function today() {
  const now = new Date();
  const two = (number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

startTheme();
new RerunPage().start();
