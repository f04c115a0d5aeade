import { attribute, el } from "./dom.js";

/** Where a record leads to: what can be taken from it, what can be done with it. */
const WAYS = [
  { word: "Sheet", to: (path) => `/sheet/${path}` },
  { word: "Report", to: (path) => reportOf(path) },
  { word: "PDF", to: (path) => `${reportOf(path)}.pdf` },
  { word: "Blank form", to: (path) => `/record/${path}/form` },
  { word: "Run on another engine", to: (path) => `/rerun/${path}` },
  { word: "Compare with another", to: (path) => `/compare?left=${path}` },
];

/** @param {string} path */
function reportOf(path) {
  return `/record/${path}/report`;
}

/** Its ways in a row. @param {string} id of a record @returns {HTMLAnchorElement[]} */
export function onwards(id) {
  const path = encodeURIComponent(id);
  return WAYS.map(({ word, to }) => el("a", { href: to(path) }, word));
}

/** The ways of the record that a page is about, in the head of the page. @param {string} id */
export function leadOnwards(id) {
  const links = onwards(id);
  for (const link of links) attribute(link, "aria-current", link.pathname === location.pathname ? "page" : null);
  document.querySelector(".onwards").replaceChildren(...links);
}

/** A word that leads to the report. @param {string} id @param {string} word */
export function toReport(id, word) {
  return el("a", { class: "word", href: reportOf(encodeURIComponent(id)) }, word);
}
