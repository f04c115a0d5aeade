/**
 * Makes an element. Keys of `at` are attributes; those that start with "on" are listeners. Neither styles
 * nor markup can come in this way.
 * @param {string} tag
 * @param {Record<string, any>} [at]
 * @param {...(Node | string | null | undefined | false)} children
 * @returns {any}
 */
export function el(tag, at = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(at)) {
    if (value === null || value === undefined || value === false) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (name === "value") /** @type {HTMLInputElement} */ (element).value = value;
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  put(element, ...children);
  return element;
}

/** Appends what there is. @param {Element} parent @param {...(Node | string | null | undefined | false)} children */
export function put(parent, ...children) {
  for (const child of children) {
    if (child !== null && child !== undefined && child !== false && child !== "") parent.append(child);
  }
  return parent;
}

/** What stands behind a word of action until it is asked for. @param {string} word @param {string} away the word that puts it away again @param {Node} content */
export function unfold(word, away, content) {
  return el("details", {}, el("summary", {}, el("span", { class: "when-away" }, word), el("span", { class: "when-open" }, away)), content);
}

/** Writes a text only where it differs, so that nothing is laid out again for nothing. @param {Node} node @param {string} text */
export function write(node, text) {
  if (node.textContent !== text) node.textContent = text;
}

/** @param {Element} element @param {string} name @param {boolean} on */
export function mark(element, name, on) {
  if (element.classList.contains(name) !== on) element.classList.toggle(name, on);
}

/** @param {Element} element @param {string} name @param {string | null} value null takes it away */
export function attribute(element, name, value) {
  if (element.getAttribute(name) === value) return;
  if (value === null) element.removeAttribute(name);
  else element.setAttribute(name, value);
}

/**
 * Makes the children of a parent be these, in this order; nodes that stay are not moved without need.
 * @param {Element} parent
 * @param {readonly Node[]} wanted
 */
export function arrange(parent, wanted) {
  const stays = new Set(wanted);
  for (const child of [...parent.childNodes]) {
    if (!stays.has(child)) child.remove();
  }
  let here = parent.firstChild;
  for (const node of wanted) {
    if (node === here) here = here.nextSibling;
    else parent.insertBefore(node, here);
  }
}

/**
 * Markup that the server made: a note, a formula, a limit strip.
 * @param {string} markup
 * @returns {DocumentFragment}
 */
export function fragment(markup) {
  const template = document.createElement("template");
  template.innerHTML = markup;
  return template.content;
}

const SVG = "http://www.w3.org/2000/svg";

/** @param {string} tag @param {Record<string, string | number>} at @param {...Node} children */
export function svg(tag, at, ...children) {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(at)) element.setAttribute(name, String(value));
  element.append(...children);
  return element;
}

/** Whether keys belong to a field at present. @param {EventTarget | null} target */
export function isField(target) {
  return target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));
}

/** The time of day, as one writes it in a margin. */
export function clock() {
  return new Date().toTimeString().slice(0, 5);
}

/** Numbers that no other element carries, for labels. */
let last = 0;
export function freshId(stem) {
  last += 1;
  return `${stem}-${last}`;
}
