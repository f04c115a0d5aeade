/** Choices of this browser. Where storage is switched off they last as long as the page. */
const kept = new Map();

/** @param {string} name @param {string} otherwise */
export function remembered(name, otherwise) {
  try {
    return localStorage.getItem(`endfloat.${name}`) ?? kept.get(name) ?? otherwise;
  } catch {
    return kept.get(name) ?? otherwise;
  }
}

/** @param {string} name @param {string} value */
export function remember(name, value) {
  kept.set(name, value);
  try {
    localStorage.setItem(`endfloat.${name}`, value);
  } catch {
    // kept for this page only
  }
}
