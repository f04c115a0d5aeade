const SCROLLS = ".formula, .numbers, .stations, .registers .wide";
const BREAKS = new Set(["+", "−", "-", "=", "<", ">", "≤", "≥", "×", "±"]);
const INDENT = 18;
// a piece on a line of its own is set a little wider than within the whole
const SLACK = 16;
/** On paper: how wide the column of formulas is in css/print.css, and how much smaller they are set there. */
const PAPER = { room: 276, scale: 0.8 };

/** @typedef {HTMLElement & {whole?: Element | null}} Holder an element with its formula before that was broken */

/**
 * What is wider than its place: a formula is broken before an operator or a factor, as one does by hand; what still
 * does not fit scrolls, and only that can be reached by Tab, so that the arrow keys scroll it.
 */
export class Wide {
  #fresh = new Set();
  #width = 0;

  /** @param {Element} body */
  constructor(body) {
    this.body = body;
    new ResizeObserver(([entry]) => this.#resized(entry.contentRect.width)).observe(body);
    document.fonts.addEventListener("loadingdone", () => this.#again());
    addEventListener("beforeprint", () => this.#again((element) => (element.matches(".formula, .numbers") ? PAPER.room / PAPER.scale : element.clientWidth)));
    addEventListener("afterprint", () => this.#again());
  }

  /** Takes note of a formula that was drawn anew. @param {Holder} element */
  add(element) {
    element.whole = null;
    this.#fresh.add(element);
  }

  /** Fits what was drawn anew, before it is painted. All are measured before any is changed: one layout. */
  fit() {
    const fresh = [...this.#fresh].filter((element) => element.isConnected);
    this.#fresh.clear();
    if (fresh.length > 0) fit(fresh);
  }

  /** @param {number} width */
  #resized(width) {
    if (Math.abs(width - this.#width) < 1) return;
    this.#width = width;
    this.#again();
  }

  /** Everything anew, at another width or in the faces that have come. @param {(element: HTMLElement) => number} [room] */
  #again(room) {
    /** @type {NodeListOf<Holder>} */
    const found = this.body.querySelectorAll(SCROLLS);
    const all = [...found];
    for (const element of all) {
      if (element.whole) element.replaceChildren(element.whole);
      element.whole = null;
    }
    fit(all, room);
  }
}

/** @param {HTMLElement[]} elements @param {(element: HTMLElement) => number} [room] of each */
function fit(elements, room = own) {
  const isWide = (element) => (room === own ? element.scrollWidth : needed(element)) > room(element) + 1;
  const wide = elements.filter(isWide);
  for (const element of wide) breakLines(element, room(element));
  for (const element of elements) {
    const scrolls = wide.includes(element) && isWide(element);
    if (scrolls) element.tabIndex = 0;
    else if (element.tabIndex === 0) element.removeAttribute("tabindex");
  }
}

/** @param {Element} element */
function own(element) {
  return element.clientWidth;
}

/** How wide the formula of an element is, whether the element has room for it or not. @param {Element} element */
function needed(element) {
  const math = element.firstElementChild?.localName === "math" ? [...element.children] : [];
  return Math.max(element.scrollWidth > element.clientWidth ? element.scrollWidth : 0, ...math.map((one) => one.getBoundingClientRect().width));
}

/** @param {Holder} element that holds a formula too long for one line @param {number} room */
function breakLines(element, room) {
  const whole = element.querySelector("math");
  if (!whole || element.children.length !== 1) return;
  const left = whole.getBoundingClientRect().left;
  const places = [...breaksIn(whole, 0)].map((place) => ({ ...place, at: place.node.getBoundingClientRect().left - left }));
  // the element knows how wide the formula is: its own box ends with the line
  const chosen = chooseFrom(places, needed(element), room - SLACK);
  if (chosen.length === 0) return;
  const ends = [null, ...chosen, null];
  const lines = ends.slice(1).map((to, index) => piece(whole, ends[index], to));
  lines.slice(1).forEach((line) => {
    line.setAttribute("class", "further");
    line.setAttribute("aria-hidden", "true"); // the first line is labelled with the whole formula
    line.removeAttribute("aria-label");
  });
  element.whole = whole;
  element.replaceChildren(...lines);
}

/** Signs and words alone where that is enough, factors too where it is not, at last behind a bracket. @param {any[]} places @param {number} width @param {number} room */
export function chooseFrom(places, width, room) {
  let chosen = [];
  for (const some of [places.filter((place) => !place.factor), places.filter((place) => !place.opening), places]) {
    chosen = choose(some, width, room);
    const starts = [0, ...chosen.map((node) => places.find((place) => place.node === node).at), width];
    if (starts.slice(1).every((end, line) => end - starts[line] <= room - (line > 0 ? INDENT : 0))) break;
  }
  return chosen;
}

/**
 * Before which operators to break: as far out of brackets as they lie, but no line less than half full.
 * @param {{node: Element, depth: number, at: number}[]} places from left to right
 * @param {number} width of the formula
 * @param {number} room of a line
 */
export function choose(places, width, room) {
  const chosen = [];
  let start = 0;
  while (width - start > room - (start > 0 ? INDENT : 0)) {
    const end = start + room - (start > 0 ? INDENT : 0);
    const further = places.filter((place) => place.at > start + 1);
    if (further.length === 0) break;
    // where one piece alone is too long for a line, the next begins behind it
    const fitting = further.some((place) => place.at <= end) ? further.filter((place) => place.at <= end) : further.slice(0, 1);
    const full = fitting.filter((place) => place.at >= start + room / 2);
    const best = (full.length > 0 ? full : fitting).reduce((a, b) => (b.depth <= a.depth ? b : a));
    chosen.push(best.node);
    start = best.at;
  }
  return chosen;
}

/** Places in rows only, not in a fraction, a root or an index. @param {Element} row @param {number} depth @returns {Generator<{node: Element, depth: number, factor: boolean, opening?: boolean}>} */
function* breaksIn(row, depth) {
  for (const child of row.children) {
    if (child.previousElementSibling && (isSign(child) || isJoin(child))) yield { node: child, depth, factor: false };
    else if (isFactor(child)) yield { node: child, depth: depth + 0.5, factor: true };
    else if (isOpening(child.previousElementSibling)) yield { node: child, depth: depth + 0.5, factor: true, opening: true };
    if (child.localName === "mrow") yield* breaksIn(child, depth + 1);
  }
}

/** @param {Element} node */
function isSign(node) {
  return node.localName === "mo" && BREAKS.has(node.textContent.trim());
}

/** A word with space around it, which a unit has not. @param {Element} node */
function isJoin(node) {
  return node.localName === "mtext" && /^\s.*\s$/.test(node.textContent);
}

/** A factor or an argument: behind a space, but neither a unit behind its number nor what a function is taken of. @param {Element} node */
function isFactor(node) {
  const space = node.previousElementSibling;
  if (isComma(space)) return node.localName !== "mspace";
  if (space?.localName !== "mspace") return false;
  const before = space.previousElementSibling;
  return isComma(before) || (node.localName !== "mtext" && before?.getAttribute("mathvariant") !== "normal");
}

/** @param {Element | null} node */
function isOpening(node) {
  return node?.localName === "mo" && /^[([]$/.test(node.textContent);
}

/** @param {Element | null} node */
function isComma(node) {
  return node?.localName === "mo" && node.textContent === ",";
}

/** A part of a formula as a formula. @param {Element} whole @param {Element | null} from @param {Element | null} to */
function piece(whole, from, to) {
  const range = document.createRange();
  range.selectNodeContents(whole);
  if (from) range.setStartBefore(from);
  if (to) range.setEndBefore(to);
  const line = /** @type {Element} */ (whole.cloneNode(false));
  const row = document.createElementNS(whole.namespaceURI, "mrow");
  row.append(range.cloneContents());
  // at the head of a line it still stands between two terms, not before one
  if (from?.localName === "mo") row.querySelector("mo").setAttribute("form", "infix");
  line.append(row);
  return line;
}
