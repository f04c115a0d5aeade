/**
 * @typedef {object} Edit
 * @property {string} id
 * @property {"put"|"add"|"move"|"delete"|"set"|"rows"|"rename"|"undo"|"redo"} op
 * @property {string} [cell]
 * @property {string} [at] JSON pointer
 * @property {any} [value]
 * @property {string} [parent]
 * @property {string} [after]
 * @property {number} [seen] revision of the cell that the edit was made upon
 * @property {boolean} [sent] whether it has left once
 */

/**
 * Edits on their way to the server, one at a time and in order. Each stays here until the server has
 * acknowledged it, so that a lost connection loses nothing: the edit that was under way is sent again with
 * its id, which the server knows if it had taken it already.
 */
export class Outbox {
  /** @type {Edit[]} the first one is under way while connected */
  #queue = [];
  /** @type {{edit: Edit, revision: number}[]} acknowledged, but not in the sheet as last shown */
  #unseen = [];
  #connected = false;

  /** @param {(edit: Edit) => void} send */
  constructor(send) {
    this.send = send;
  }

  /** How many edits the server has not acknowledged yet. */
  get waiting() {
    return this.#queue.length;
  }

  /**
   * Takes an edit. Where the one before it is of the same place and has not left yet, the two become one.
   * @param {Edit} edit
   * @returns {string} the id it goes by
   */
  take(edit) {
    const last = this.#queue.at(-1);
    if (last && !last.sent && (edit.op === "put" || edit.op === "set") && isSamePlace(last, edit)) {
      last.value = edit.value;
      return last.id;
    }
    this.#queue.push({ ...edit });
    if (this.#connected && this.#queue.length === 1) this.#sendFirst();
    return edit.id;
  }

  connected() {
    this.#connected = true;
    if (this.#queue.length > 0) this.#sendFirst();
  }

  lost() {
    this.#connected = false;
  }

  /**
   * The server has the edit. Later edits of the same place were made upon it.
   * @param {string} id
   * @param {number} revision
   * @returns {Edit | undefined} undefined where it was not ours
   */
  kept(id, revision) {
    const edit = this.#drop(id);
    if (!edit) return undefined;
    this.#unseen.push({ edit, revision });
    for (const later of this.#queue) {
      if (isSamePlace(later, edit) || (edit.op === "add" && later.cell === edit.cell)) {
        later.seen = Math.max(later.seen ?? 0, revision);
      }
    }
    this.#next();
    return edit;
  }

  /**
   * The server did not take the edit. What was typed after it at the same place comes back with it.
   * @param {string} id
   * @returns {Edit | undefined} with the value typed last; undefined where it was not ours
   */
  refused(id) {
    const edit = this.#drop(id);
    if (!edit) return undefined;
    let value = edit.value;
    this.#queue = this.#queue.filter((later) => {
      if (later.op !== "put" || !isSamePlace(later, edit)) return true;
      value = later.value;
      return false;
    });
    this.#next();
    return { ...edit, value };
  }

  /**
   * The sheet has reached this revision. The acknowledgement of an edit comes before the sheet with it, and
   * the sheet of an earlier edit may come between the two.
   * @param {number} revision
   */
  reached(revision) {
    this.#unseen = this.#unseen.filter((one) => one.revision > revision);
  }

  /**
   * The text put at this place that the sheet does not show yet: on its way, or acknowledged meanwhile.
   * @param {string} cell
   * @param {string} at
   */
  pending(cell, at) {
    return [...this.#unseen.map((one) => one.edit), ...this.#queue].findLast((edit) => edit.op === "put" && edit.cell === cell && edit.at === at);
  }

  /** @param {string} id */
  #drop(id) {
    const at = this.#queue.findIndex((edit) => edit.id === id);
    return at < 0 ? undefined : this.#queue.splice(at, 1)[0];
  }

  #next() {
    if (this.#connected && this.#queue.length > 0 && !this.#queue[0].sent) this.#sendFirst();
  }

  #sendFirst() {
    this.#queue[0].sent = true;
    const { sent, ...edit } = this.#queue[0];
    this.send(edit);
  }
}

/** @param {Edit} a @param {Edit} b */
function isSamePlace(a, b) {
  return a.op === b.op && a.cell === b.cell && a.at === b.at;
}
