import { el, fragment } from "./dom.js";
import { worked } from "./worked.js";

const KNOWN = { verified: "read in the source", memory: "source from memory, not read again", derived: "derived and worked out a second way", "common-practice": "common practice, no source" };

/**
 * One calculation with all that is known of it.
 * @param {any} view as the server has it
 * @param {Node | null} putIn the way to put it into a working
 */
export function calculation(view, putIn) {
  let number = 0;
  const clause = (title, ...content) => el("section", { class: "ref-clause", "aria-label": title }, el("span", { class: "no", "aria-hidden": "true" }, String(++number)), el("h2", { class: "ttl" }, title), el("div", { class: "ref-content" }, ...content));
  return el(
    "article",
    { class: "ref-page" },
    el("p", { class: "ref-summary" }, view.summary),
    clause("Relation", relation(view), ...cautions(view)),
    clause("Arguments", table("Arguments", ["Name", "Unit", "Range", "If left out", "What it is"], view.parameters.flatMap(argument))),
    clause("Results", table("Results", ["Name", "Unit", "What it is"], view.results.map(result))),
    view.example && clause("Worked example, worked out now", ...example(view)),
    clause("Published values it is held to", table("Published values", ["What", "Lines and value", "Source"], view.checks.map(check))),
    putIn && clause("Put into a working", putIn),
  );
}

function relation(view) {
  const formula = view.formulaMath && el("div", { class: "ref-formula", tabindex: "0", role: "group", "aria-label": "Formula" }, fragment(view.formulaMath));
  const prose = view.description.split(/\n\s*\n|\n/).filter((text) => text.trim() !== "").map((text) => el("p", {}, text));
  return el("div", { class: "ref-relation" }, el("div", { class: "prose" }, formula, ...prose, el("p", { class: "ref-source" }, el("span", { class: "cap" }, "Source "), view.source)), el("figure", { class: "ref-drawing", hidden: true }));
}

function cautions(view) {
  return view.cautions.length === 0 ? [] : [el("div", { class: "caution ref-caution", role: "note", "aria-label": "Cautions" }, el("p", { class: "ch" }, view.cautions.length === 1 ? "Caution" : "Cautions"), el("ul", { class: "prose" }, ...view.cautions.map((text) => el("li", {}, text))))];
}

/** @param {string} caption @param {string[]} heads @param {Element[]} rows */
function table(caption, heads, rows) {
  // on a narrow window a row stands as a list, each entry under its own head
  for (const row of rows) [...row.children].forEach((cell, index) => index > 0 && cell.setAttribute("data-label", heads[index]));
  return el("div", { class: "wide", tabindex: "0", role: "group", "aria-label": caption }, el("table", { class: "t ref-table" }, el("caption", { class: "unseen" }, caption), el("thead", {}, el("tr", {}, ...heads.map((text) => el("th", { scope: "col" }, text)))), el("tbody", {}, ...rows)));
}

/** @param {any} one @returns {Node[]} */
function argument(one) {
  const inner = one.part ? one.part.components.map((component) => row(component, one.part.name)) : [];
  return [row(one, ""), ...inner];
}

function row(one, part) {
  const choices = (one.choices ?? []).map((text) => `"${text}"`).join(", ");
  const what = [one.description, one.part && `a list of ${one.part.name}(…), each with the fields below`].filter(Boolean).join("; ");
  return el(
    "tr",
    { class: part ? "part-of" : null },
    el("th", { scope: "row" }, symbol(one), el("span", { class: "src" }, part ? `${part}( ${one.name}: )` : `${one.name}:`)),
    el("td", { class: "l" }, unit(one)),
    el("td", { class: "l" }, [one.range, choices].filter(Boolean).join("; ")),
    el("td", { class: "l" }, one.default ?? "must be given"),
    el("td", {}, what),
  );
}

function result(one) {
  return el("tr", {}, el("th", { scope: "row" }, ...(one.name ? [symbol(one), el("span", { class: "src" }, `.${one.name}`)] : ["the value"])), el("td", { class: "l" }, unit(one)), el("td", {}, [one.description, (one.choices ?? []).join(", ")].filter(Boolean).join(": ")));
}

/** The symbol that a name is set as, where it is not the name itself. @param {any} one */
function symbol(one) {
  const set = fragment(one.symbol);
  return set.textContent === one.name ? "" : el("span", { class: "sym" }, set);
}

/** @param {any} one */
function unit(one) {
  if (!one.unit || one.unit === "1") return { quantity: "a number", list: "numbers", indexed: "readings", text: "a text", choice: "a text", truth: "yes or no", parts: "a list" }[one.form] ?? "a number";
  return one.unit.startsWith("<") ? "any unit" : one.unit;
}

function example(view) {
  const [first] = view.checks;
  const published = first.expected.map(expected).filter(Boolean).join("; ");
  return [first.what && el("p", { class: "prose" }, `${begun(first.what)}.`), worked(view.example, "Worked example"), published && el("p", { class: "ref-published" }, el("span", { class: "cap" }, "Published "), published, el("span", { class: "with" }, `${first.source} (${KNOWN[first.knowledge] ?? first.knowledge})`))];
}

/** A text as a sentence begins. @param {string} text */
function begun(text) {
  return text[0].toUpperCase() + text.slice(1);
}

function expected(one) {
  if (one.refused) return `refused with “${one.refused}”`;
  if (one.text !== undefined) return `${one.name} = ${one.text}`;
  return `${one.name} = ${one.values.join(", ")}${one.unit ? ` ${one.unit}` : ""}`;
}

function check(one) {
  return el("tr", {}, el("td", {}, begun(one.what || one.id)), el("td", {}, el("pre", { class: "src plain" }, one.lines.join("\n")), el("span", { class: "let" }, one.expected.map(expected).join("; "))), el("td", {}, one.source, el("span", { class: "with" }, KNOWN[one.knowledge] ?? one.knowledge)));
}

/** Puts the line drawing in its place. @param {Element} page @param {string} name @param {string} caption */
export async function drawing(page, name, caption) {
  const answer = await fetch(`/api/catalogue/${encodeURIComponent(name)}/drawing`).catch(() => null);
  /** @type {HTMLElement | null} */
  const figure = page.querySelector(".ref-drawing");
  if (!answer?.ok || !figure) return;
  figure.replaceChildren(fragment(await answer.text()), el("figcaption", {}, caption));
  figure.hidden = false;
}
