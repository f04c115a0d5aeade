import { el, unfold } from "./dom.js";

/** A table of the library: what stands in it, and where each value is from. @param {any} table */
export function lookup(table) {
  return el(
    "article",
    { class: "ref-page" },
    el("p", { class: "ref-summary" }, table.about),
    ...table.groups.map(group),
    table.source && el("p", { class: "ref-foot" }, el("span", { class: "cap" }, "Source "), table.source),
  );
}

/** @param {any} one */
function group(one) {
  const sourced = one.rows.some((row) => row.some((cell) => cell.source));
  const caption = one.title || "Table";
  return el(
    "section",
    { class: "ref-group", "aria-label": caption },
    one.title && el("h2", { class: "ttl" }, one.title),
    el(
      "div",
      { class: "wide", tabindex: "0", role: "group", "aria-label": caption },
      el(
        "table",
        { class: "t ref-table lookup" },
        el("caption", { class: "unseen" }, caption),
        el("thead", {}, el("tr", {}, ...one.heads.map((text) => el("th", { scope: "col" }, text)), sourced && el("th", { scope: "col" }, "Sources"))),
        el("tbody", {}, ...one.rows.map((row) => line(row, one.heads, sourced))),
      ),
    ),
  );
}

function line([first, ...others], heads, sourced) {
  const cells = others.map((cell) => el("td", { class: "l num" }, cell.text, cell.u && el("span", { class: "u" }, `± ${cell.u}`)));
  return el("tr", {}, el("th", { scope: "row", class: "l" }, first.text), ...cells, sourced && el("td", {}, sources(others, heads.slice(1))));
}

/** Each source once, with the values that are from it. */
function sources(cells, heads) {
  const from = new Map();
  cells.forEach((cell, index) => {
    if (cell.source) from.set(cell.source, [...(from.get(cell.source) ?? []), heads[index].split(",")[0].toLowerCase()]);
  });
  const list = [...from].map(([source, what]) => el("li", {}, `${what.join(", ")}: ${source}`));
  return unfold(list.length === 1 ? "source" : `${list.length} sources`, list.length === 1 ? "put the source away" : "put the sources away", el("ul", {}, ...list));
}
