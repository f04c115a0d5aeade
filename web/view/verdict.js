import { attribute, el, fragment, svg, write } from "./dom.js";

const BARS = "M4.5 1.5v11M14.5 1.5v11";
const SHAPES = {
  within: () => svg("circle", { class: "vg-mk", cx: 9.5, cy: 7, r: 3 }),
  "not-proven": () => svg("path", { class: "vg-open", d: "M14.5 2.8 18.7 7l-4.2 4.2L10.3 7z" }),
  outside: () => svg("path", { class: "vg-mk", d: "M20.4 2.2l4 8.2h-8z" }),
};

/** The class that stands for a verdict. @param {string | undefined} verdict */
export function verdictClass(verdict) {
  return (verdict ?? "").replace(" ", "-");
}

/** The shape of a verdict: between, on, or beyond the two strokes. @param {string} verdict */
export function glyph(verdict) {
  const kind = verdictClass(verdict);
  const shape = SHAPES[kind];
  return svg(
    "svg",
    { class: `vg ${kind}`, viewBox: "0 0 26 14", width: 26, height: 14, "aria-hidden": "true", focusable: "false" },
    svg("path", { class: "vg-bar", d: BARS }),
    ...(shape ? [shape()] : []),
  );
}

/** The shape of an error: unequal. */
export function errorGlyph() {
  return svg(
    "svg",
    { class: "vg error", viewBox: "0 0 20 14", width: 20, height: 14, "aria-hidden": "true", focusable: "false" },
    svg("path", { class: "vg-er", d: "M3 4.5h13M3 9.5h13M13 .5l-7 13" }),
  );
}

/**
 * What stands in the place of a verdict where a value has none: in error, or waiting. Written only where it
 * is another than before.
 * @param {HTMLElement} element
 * @param {import("../state/shapes.js").FigureView | undefined} figure
 */
export function standing(element, figure) {
  const state = figure?.state === "error" || figure?.state === "waiting" ? figure.state : "";
  if ((element.dataset.state ?? "") === state) return;
  element.dataset.state = state;
  if (state === "error") element.replaceChildren(el("span", { class: "verdict error" }, errorGlyph(), "in error"));
  else if (state === "waiting") element.replaceChildren(el("span", { class: "verdict waiting" }, glyph("waiting"), "waiting"));
  else element.replaceChildren();
}

/** A verdict as shape and word. @param {string} verdict */
export function verdict(verdict) {
  return el("span", { class: `verdict ${verdictClass(verdict)}` }, glyph(verdict), verdict);
}

/** The verdicts of one figure, one strip a limit. Kept, and drawn again only where something changed. */
export class Judgements {
  #drawn = "";

  /** @param {HTMLElement} element what they stand in */
  constructor(element) {
    this.element = element;
  }

  /** @param {readonly import("../state/shapes.js").LimitView[]} limits */
  show(limits) {
    const drawn = JSON.stringify(limits);
    if (drawn === this.#drawn) return;
    this.#drawn = drawn;
    const old = [...this.element.querySelectorAll(".judged")];
    limits.forEach((limit, index) => this.#one(limit, old[index]));
    old.slice(limits.length).forEach((extra) => extra.remove());
  }

  /** @param {any} limit @param {Element | undefined} old */
  #one(limit, old) {
    const judged = old ?? this.element.appendChild(el("div", { class: "judged" }, el("span", { class: "verdict" }), el("span", { class: "picture" }), el("span", { class: "under" })));
    const [word, picture, under] = judged.children;
    if (word.dataset.verdict !== limit.verdict) {
      word.dataset.verdict = limit.verdict;
      attribute(word, "class", `verdict ${verdictClass(limit.verdict)}`);
      word.replaceChildren(glyph(limit.verdict), limit.verdict);
    }
    if (picture.drawn !== limit.strip) {
      picture.drawn = limit.strip;
      picture.replaceChildren(limit.strip ? fragment(limit.strip) : "");
    }
    const terms = [limit.field?.replaceAll("_", " "), limit.condition, limit.state].filter(Boolean).join(", ");
    write(under, [terms, limit.authority || "engineer's own"].filter(Boolean).join("; "));
    const told = [limit.rule ? `rule: ${limit.rule}` : "", probability(limit)];
    attribute(judged, "title", told.filter(Boolean).join("; "));
  }
}

function probability(limit) {
  return limit.probability ? `probability of conformity ${limit.probability}` : "";
}
