import { quoted, typedBack } from "../state/refusals.js";
import { clock, mark, write } from "./dom.js";

/** What the page tells of the line to the server, of edits under way, of verdicts, and of others. */
export class Telling {
  #verdicts = new Map();
  #wasLost = false;
  #people = [];

  /** @param {import("./sheet-page.js").SheetPage} page @param {Element} kept where it is said whether all is kept */
  constructor(page, kept) {
    this.page = page;
    this.kept = kept;
  }

  line(isUp) {
    mark(this.kept, "lost", !isUp);
    this.draw();
    if (!isUp) this.page.says.say("The line to the server is lost. Typing goes on and is sent when it is back.");
    if (isUp && this.#wasLost) this.page.says.say("The line to the server is back.");
    this.#wasLost = !isUp;
  }

  draw() {
    const waiting = this.page.desk.outbox.waiting;
    if (!this.page.desk.isUp) write(this.kept, waiting > 0 ? `line lost, ${waiting} to send` : "line lost");
    else write(this.kept, waiting > 0 ? "keeping" : `kept ${clock()}`);
  }

  /** A verdict that changed is told to those who cannot see it change. */
  verdicts(change) {
    const { figures } = this.page.desk.sheet;
    const told = [];
    for (const name of change.figures) {
      const verdict = figures.get(name)?.verdict ?? "";
      const before = this.#verdicts.get(name);
      this.#verdicts.set(name, verdict);
      if (before !== undefined && before !== verdict && verdict) told.push(`${figures.get(name)?.title ?? name.replaceAll("_", " ")}: ${verdict}`);
    }
    if (told.length > 0) this.page.says.say(told.slice(0, 4).join("; "));
  }

  refused(refusal) {
    const { of } = refusal;
    const clause = of?.cell ? this.page.clause(of.cell) : undefined;
    const hasBoth = refusal.theirs !== undefined && refusal.theirs !== null && clause;
    if (!hasBoth) {
      clause?.update();
      const left = typedBack(of).filter((typed) => !putBack(clause, typed));
      this.page.says.offer([...[refusal.reason, refusal.wayOut].filter(Boolean).map(sentence), quoted(left)].filter(Boolean).join(" "), []);
      return;
    }
    clause.dispute({
      mine: typeof of.value === "string" ? of.value : (of.value ?? []).join?.("  ") ?? JSON.stringify(of.value),
      theirs: refusal.theirs,
      keep: (text) => this.page.desk.put(of.cell, of.at, of.at === "/text" ? text : of.value, refusal.revision),
      take: () => {
        if (of.at === "/text") {
          this.page.desk.dropPreview();
          clause.body.editing?.take(clause.cell.source.text ?? "");
        }
        clause.update();
      },
    });
  }

  /** Something else wrote the file. */
  conflict(found) {
    /** @type {[string, () => void][]} */
    const words = [["keep this sheet", () => this.page.desk.keepMine()]];
    if (found.canTakeTheirs) words.push(["take the file on disk", () => this.page.desk.takeTheirs()]);
    this.page.says.offer(`${sentence(found.reason)} Both are kept as earlier states; choose which one stands.`, words);
  }

  failed(error) {
    this.page.says.offer([error.message, error.wayOut].filter(Boolean).map(sentence).join(" "), []);
  }

  present(people) {
    this.#people = people;
    for (const clause of this.page.clauses()) clause.drawState();
  }

  /** Who else has this clause open, in words. @param {string} id */
  othersAt(id) {
    const others = this.#people.filter((one) => one.cell === id && one.client !== this.page.client);
    return others.length === 0 ? "" : others.length === 1 ? "open in another window" : `open in ${others.length} other windows`;
  }
}

/** Puts what was typed back into its field, marked as not kept. @param {any} clause @param {{key: string, text: string}} typed */
function putBack(clause, { key, text }) {
  const input = clause?.element.querySelector(`[data-key="${CSS.escape(key)}"]`);
  if (!(input instanceof HTMLInputElement || input instanceof HTMLTextAreaElement)) return false;
  if (input.value !== text) {
    input.value = text;
    input.classList.add("refused");
  }
  return true;
}

/** A sentence of its own, with capital and stop. @param {string} text */
export function sentence(text) {
  const trimmed = text.trim();
  return trimmed.charAt(0).toUpperCase() + trimmed.slice(1) + (/[.!?]$/.test(trimmed) ? "" : ".");
}
