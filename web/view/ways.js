import { neighbour, nextWhere } from "../state/clauses.js";
import { isNotWithin } from "../state/figures.js";

/** Ways through a sheet: by key, by number, to what is not within, in error or waiting. */
export class Ways {
  /** @param {import("./sheet-page.js").SheetPage} page */
  constructor(page) {
    this.page = page;
  }

  nextNotWithin() {
    this.#next((id) => isNotWithin(this.page.desk.cell(id).worst), "Every limit is kept.");
  }

  #next(wanted, otherwise) {
    const id = nextWhere(this.page.desk.sheet, this.page.current, (one) => this.page.desk.cell(one).kind !== "section" && wanted(one));
    if (id) this.page.go(id);
    else this.page.say(otherwise);
  }

  #step(by) {
    const id = neighbour(this.page.desk.sheet.order, this.page.current, by);
    if (!id) return;
    this.page.close();
    this.page.go(id);
  }

  /** @param {string} number */
  #goNumber(number) {
    const cell = [...this.page.desk.sheet.cells.values()].find((one) => one.number === number);
    if (cell) this.page.go(cell.id);
    else this.page.says.offer(`There is no clause ${number}.`, []);
  }

  /** Enter opens the clause at the line in use. @param {KeyboardEvent} event */
  #enter(event) {
    const target = /** @type {Element} */ (event.target);
    const id = target.closest?.(".clause, .section")?.id.slice("clause-".length);
    const line = Number(/** @type {HTMLElement | null} */ (target.closest?.("[data-line]"))?.dataset.line) || undefined;
    if (id) this.page.open(id, line);
  }

  /** Keys of the sheet: what they do, and how. @returns {[string, string, (event: KeyboardEvent) => void][]} */
  keys() {
    const move = (by) => this.page.current && this.page.move(this.page.current, by);
    return [
      ["Enter", "open the clause at the line in use", (event) => this.#enter(event)],
      ["Escape", "close it; the text is kept", () => (this.page.isOpen ? this.page.close() : this.page.tracing.clear())],
      ["Alt+ArrowUp", "clause before", () => this.#step(-1)],
      ["Alt+ArrowDown", "clause behind", () => this.#step(1)],
      ["Alt+Shift+ArrowUp", "move the clause up", () => move(-1)],
      ["Alt+Shift+ArrowDown", "move the clause down", () => move(1)],
      ["Mod+Z", "undo", () => this.page.undo()],
      ["Mod+Shift+Z", "redo", () => this.page.redo()],
      ["Mod+Y", "redo", () => this.page.redo()],
      ["G", "go to a clause by its number", () => this.page.says.ask("Go to clause", (number) => this.#goNumber(number))],
      ["L", "next not within", () => this.nextNotWithin()],
      ["W", "next in error or waiting", () => this.#next((id) => ["error", "waiting"].includes(this.page.desk.cell(id).state), "No line is in error and none waits.")],
      ["T", "trace the value in use, on or off", () => this.page.traceAt(this.page.current)],
      ["D", "difference of this value and the one pressed before", () => this.page.pointing.pair("difference")],
      ["/", "ratio of this value and the one pressed before", () => this.page.pointing.pair("ratio")],
      ["M", "limit on the value that was pressed", () => this.page.pointing.limit()],
      ["R", "rename the value that was pressed", () => this.page.pointing.rename()],
      ["N", "write the next clause", () => this.page.add("working", this.page.current)],
      ["U", "units: metric, imperial", () => this.page.title.switchUnits()],
    ];
  }
}
