import { byClause, PARTS, rowsShown, sideName, standingWords, stateWhen } from "../state/compare.js";
import { isPattern } from "../state/shelf.js";
import { el, fragment, write } from "./dom.js";
import { handedOn } from "./handed-on.js";
import { Says } from "./says.js";
import { startTheme } from "./theme.js";
import { glyph, verdictClass } from "./verdict.js";

/** Two records, or two states of one, side by side; which ones stands in the address. */
class ComparePage {
  #comparison = null;

  constructor() {
    this.place = document.querySelector("#compared");
    /** @type {HTMLSelectElement} */
    this.show = document.querySelector("#show");
    this.show.replaceChildren(...PARTS.map(({ key, word }) => el("option", { value: key }, word)));
    this.show.addEventListener("change", () => this.#comparison && this.#draw());
    this.says = new Says(document.querySelector(".says"));
    document.querySelector("#choose").addEventListener("submit", (event) => this.#choose(event));
  }

  async start() {
    const given = new URLSearchParams(location.search);
    const left = given.get("left") ?? "";
    const right = given.get("right") ?? "";
    try {
      await this.#offer(left, right);
      if (left && right) {
        const stop = new AbortController();
        this.says.offer("Both records are worked out.", [["stop", () => stop.abort()]]);
        this.#comparison = await ask(`/api/compare${asked(both(left, right, given.get("left_stage"), given.get("right_stage")))}`, stop.signal);
        this.says.clear();
        this.#stages();
        this.#draw();
        this.#tell(handedOn(right));
      } else {
        this.place.replaceChildren(el("p", { class: "nothing" }, "Name two records above. The earlier states of a record stand in the lists once it has been compared."));
      }
    } catch (failure) {
      const stopped = failure.name === "AbortError";
      this.says.clear();
      this.place.replaceChildren(el("p", { class: "nothing", role: "alert" }, stopped ? "Stopped. Compare begins again." : failure.message));
    }
    document.documentElement.dataset.ready = "";
  }

  /** What the file of readings left to be said, above what came of it. @param {readonly string[]} notices */
  #tell(notices) {
    if (notices.length === 0) return;
    this.place.prepend(el("section", { class: "compared" }, el("h2", {}, "Of the file of readings"), el("ul", { class: "told" }, ...notices.map((one) => el("li", {}, one)))));
  }

  /** Fills the two lists: records of the shelf, and earlier states of those named. */
  async #offer(left, right) {
    const shelf = await ask("/api/shelf");
    const records = shelf.records.filter((record) => !record.problem);
    const named = [...new Set([left, right].map((one) => one.split("@")[0]).filter(Boolean))];
    const states = await Promise.all(named.map(async (id) => [id, (await ask(`/api/records/${encodeURIComponent(id)}/states`).catch(() => ({ states: [] }))).states]));
    for (const [side, chosen] of [["left", left], ["right", right]]) {
      /** @type {HTMLSelectElement} */
      const list = document.querySelector(`#${side}`);
      const title = (record) => [record.record_number, record.engine_serial, record.title].filter(Boolean).join(", ");
      const group = (label, options) => options.length > 0 && el("optgroup", { label }, ...options);
      const option = (record) => el("option", { value: record.id }, title(record) || record.id);
      const earlier = states.flatMap(([id, names]) => names.map((name) => el("option", { value: `${id}@${name}` }, `${id}, ${stateWhen(name)}`)));
      list.replaceChildren(
        el("option", { value: "" }, side === "left" ? "a record" : "another"),
        ...[group("Records", records.filter((one) => !isPattern(one)).map(option)), group("Earlier states", earlier), group("Patterns", records.filter(isPattern).map(option))].filter(Boolean),
      );
      list.value = chosen;
    }
  }

  #choose(event) {
    event.preventDefault();
    const chosen = (side) => /** @type {HTMLSelectElement} */ (document.querySelector(`#${side}`)).value;
    if (!chosen("left") || !chosen("right")) {
      this.says.offer("Choose a record on each side.", []);
      return;
    }
    const was = new URLSearchParams(location.search);
    // a stage is one of the record that it was chosen for
    const stage = (side) => (was.get(side) === chosen(side) ? chosen(`${side}-stage`) : "");
    location.assign(`/compare${asked(both(chosen("left"), chosen("right"), stage("left"), stage("right")))}`);
  }

  /** Where a record is read at several stages, as found and as left, each side says which it is compared at. */
  #stages() {
    for (const side of ["left", "right"]) {
      const { stage, stages } = this.#comparison[side];
      /** @type {HTMLSelectElement} */
      const list = document.querySelector(`#${side}-stage`);
      const all = stages.includes(stage) || stage === "" ? stages : [stage, ...stages];
      list.replaceChildren(...all.map((one) => el("option", { value: one }, one)));
      list.value = stage;
      /** @type {HTMLElement} */ (document.querySelector(`#${side}-at`)).hidden = all.length < 2;
    }
  }

  #draw() {
    const { left, right, figures, tables, formulas, texts } = this.#comparison;
    const heads = [sideName(left, right), sideName(right, left)];
    write(document.querySelector("h1"), heads.join(" → "));
    write(document.querySelector("#about"), [left.title, right.title].filter((title, index, all) => all.indexOf(title) === index).join(" / "));
    write(document.querySelector("#clear"), String(this.#comparison.clear));
    write(document.querySelector("#verdicts"), String(this.#comparison.judged_otherwise));
    document.title = `${heads.join(" → ")} · Endfloat`;
    const rows = figures.filter(PARTS.find(({ key }) => key === this.show.value).holds);
    write(document.querySelector("#listed"), `${rows.length} of ${figures.length} values.`);
    const parts = [
      schedule("Readings", rows.filter((row) => row.reading), heads),
      schedule("Figures", rows.filter((row) => !row.reading), heads),
      ...tables.filter((table) => !table.equal).map((table) => tableOf(table, rowsShown(table, this.show.value), heads)),
      wordings("Formulas that differ", formulas, heads),
      wordings("Texts that differ", texts, heads),
      el("p", { class: "how" }, how(this.#comparison), " ", el("a", { href: `/compare/report${location.search}` }, "On paper"), ", ", el("a", { href: `/compare/report.pdf${location.search}` }, "as PDF")),
    ];
    this.place.replaceChildren(...parts.filter(Boolean));
  }
}

/** @param {string} title @param {readonly any[]} rows @param {string[]} heads */
function schedule(title, rows, heads) {
  if (rows.length === 0) return null;
  return el(
    "section",
    { class: "compared" },
    el("h2", {}, title),
    el(
      "div",
      { class: "wide", tabindex: 0, role: "region", "aria-label": title },
      el(
        "table",
        {},
        el("thead", {}, el("tr", {}, ...["Clause", "Figure", heads[0], heads[1], "Moved by", "Against its limit"].map((head) => el("th", { scope: "col" }, head)))),
        ...byClause(rows).map((group) => el("tbody", {}, ...group.rows.map((row, index) => line(row, index === 0)))),
      ),
    ),
  );
}

/** @param {any} row @param {boolean} first of its clause */
function line(row, first) {
  const moved = row.difference && row.standing !== "none";
  return el(
    "tr",
    { class: row.standing === "clear" ? "clear" : "" },
    el("td", { class: "cl" }, first ? row.clause : ""),
    el("th", { scope: "row" }, row.label),
    value(row.left),
    value(row.right),
    el("td", { class: "moved" }, moved && quantity(row.difference, true), el("span", { class: "stands" }, standingWords(row.standing))),
    el("td", { class: "lim" }, ...(row.limits ?? []).map(limit)),
  );
}

/** A table row by row: what is told of it, then its first rows that differ. @param {any} table @param {readonly any[]} rows @param {string[]} heads */
function tableOf(table, rows, heads) {
  const title = `Table ${table.name}`;
  const columns = ["Row", "Column", ...heads, "Moved by", "Verdict"].map((head) => el("th", { scope: "col" }, head));
  return el(
    "section",
    { class: "compared rows" },
    el("h2", {}, el("span", { class: "cl" }, table.clause), " ", title),
    el("p", { class: "how" }, [table.counts, ...table.said, table.more > 0 && `The first ${table.first.length} rows are listed`].filter(Boolean).join(". "), "."),
    rows.length > 0 && el("div", { class: "wide", tabindex: 0, role: "region", "aria-label": title }, el("table", {}, el("thead", {}, el("tr", {}, ...columns)), ...rows.map((row) => el("tbody", {}, ...rowLines(row))))),
  );
}

/** @param {any} row */
function rowLines(row) {
  if (row.change !== "changed") {
    return [el("tr", {}, el("td", { class: "cl" }, row.row), el("th", { scope: "row" }, standingWords(row.change)), el("td", { class: "text", colspan: 4 }, row.text))];
  }
  return row.cells.map((cell, index) => {
    const other = cell.was !== cell.verdict;
    return el(
      "tr",
      { class: cell.standing === "clear" ? "clear" : "" },
      el("td", { class: "cl" }, index === 0 ? row.row : ""),
      el("th", { scope: "row" }, cell.head),
      ...["left", "right"].map((side) => el("td", { class: "val" }, cell[side] || none())),
      el("td", { class: "moved" }, cell.difference && quantity(cell.difference, true), el("span", { class: "stands" }, standingWords(cell.standing))),
      el("td", { class: "lim" }, (cell.was || cell.verdict) && el("span", { class: "pair" }, other && (cell.was ? mark(cell.was) : "none"), other && el("span", { class: "to" }, "→"), cell.verdict ? mark(cell.verdict) : "none")),
    );
  });
}

function value(side) {
  return el("td", { class: "val" }, side ? (side.value === undefined ? side.text : quantity(side, false)) : el("span", { class: "stands" }, "none"));
}

/** @param {any} shown @param {boolean} signed */
function quantity(shown, signed) {
  const plus = signed && !/^[\u2212-]/.test(shown.value) && /[1-9]/.test(shown.value) ? "+" : "";
  return el("span", { class: "amount" }, el("span", { class: "v" }, plus + shown.value), " ", el("span", { class: "un" }, shown.unit), shown.u && el("span", { class: "u" }, `± ${shown.u}`));
}

/** @param {any} limit */
function limit(limit) {
  const changed = limit.was && limit.was !== limit.verdict;
  return el(
    "div",
    { class: "judged" },
    el("span", { class: "pair" }, changed && mark(limit.was), changed && el("span", { class: "to" }, "→"), mark(limit.verdict)),
    limit.strip && fragment(limit.strip),
    el("span", { class: "stands" }, [limit.condition, limit.state].filter(Boolean).join(", ")),
  );
}

/** @param {string} word */
function mark(word) {
  return el("span", { class: `verdict ${verdictClass(word)}` }, glyph(word), word);
}

/** @param {string} title @param {readonly any[]} all @param {string[]} heads */
function wordings(title, all, heads) {
  if (all.length === 0) return null;
  return el(
    "section",
    { class: "compared texts" },
    el("h2", {}, title),
    el(
      "table",
      {},
      el("thead", {}, el("tr", {}, ...["Clause", "What", ...heads].map((head) => el("th", { scope: "col" }, head)))),
      el("tbody", {}, ...all.map((one) => el("tr", {}, el("td", { class: "cl" }, one.clause), el("th", { scope: "row" }, one.what), el("td", { class: "text" }, one.left || none()), el("td", { class: "text" }, one.right || none())))),
    ),
  );
}

function none() {
  return el("span", { class: "stands" }, "none");
}

/** What was reckoned as one error on both sides. @param {any} comparison */
function how(comparison) {
  const shared = comparison.shared_instruments;
  const sentences = ["A difference is clear where it is larger than its own uncertainty."];
  if (shared.length > 0) sentences.push(`Zero and scale of ${shared.join(", ")} are off alike on both sides and cancel.`);
  comparison.not_shared.forEach((one) => sentences.push(`Not alike: ${one}.`));
  if (comparison.same_engine) sentences.push("Both are states of one record: what was not measured anew is the same on both sides.");
  if (comparison.equal) sentences.unshift("The two are equal.");
  return sentences.join(" ");
}

/** What is compared, as its address says it. @returns {[string, string][]} */
function both(left, right, leftStage, rightStage) {
  /** @type {[string, string][]} */
  const all = [["left", left], ["left_stage", leftStage ?? ""], ["right", right], ["right_stage", rightStage ?? ""]];
  return all.filter(([, value]) => value !== "");
}

/** @param {[string, string][]} query */
function asked(query) {
  return `?${query.map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join("&")}`;
}

/** @param {string} address @param {AbortSignal} [signal] */
async function ask(address, signal) {
  const answer = await fetch(address, { headers: { Accept: "application/json" }, signal });
  const body = await answer.json();
  if (!answer.ok) throw new Error([body.message, body.wayOut].filter(Boolean).join(" "));
  return body;
}

startTheme();
new ComparePage().start();
