const KEY = "endfloat-handed-on";

/**
 * Keeps what is to be said of a record on the page that follows, in this window only.
 * @param {string} id
 * @param {readonly string[]} notices
 */
export function handOn(id, notices) {
  try {
    sessionStorage.setItem(KEY, JSON.stringify({ id, notices }));
  } catch {
    // a browser that keeps nothing says nothing; what was made is made
  }
}

/** What the page before had to say of a record; said once. @param {string} id @returns {string[]} */
export function handedOn(id) {
  try {
    const kept = JSON.parse(sessionStorage.getItem(KEY) ?? "null");
    if (kept?.id !== id) return [];
    sessionStorage.removeItem(KEY);
    return kept.notices;
  } catch {
    return [];
  }
}
