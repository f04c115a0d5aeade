import { autocompletion, closeCompletion, completionKeymap, completionStatus, snippet, startCompletion } from "@codemirror/autocomplete";
import { history, historyKeymap, standardKeymap } from "@codemirror/commands";
import { EditorState, StateEffect, StateField, Transaction } from "@codemirror/state";
import { Decoration, EditorView, highlightSpecialChars, hoverTooltip, keymap, tooltips } from "@codemirror/view";
import { lineStarts, offsets, stretches } from "../state/source.js";

/** @import { Problem, Token } from "../state/shapes.js" */

/** Milliseconds after which a mouse rests. */
const RESTS = 350;

const setMarks = StateEffect.define();

/** The server's words on each stretch of the text; they move along with what is typed. */
const marks = StateField.define({
  create: () => Decoration.none,
  update(value, transaction) {
    let next = value.map(transaction.changes);
    for (const effect of transaction.effects) {
      if (effect.is(setMarks)) next = effect.value;
    }
    return next;
  },
  provide: (field) => EditorView.decorations.from(field),
});

/** The squared pad: one text being edited. */
export class Pad {
  #problems = [];
  #tokens = [];

  /**
   * @param {object} on
   * @param {HTMLElement} on.parent
   * @param {HTMLElement} [on.strip] where the words that fit at the cursor stand
   * @param {string} on.text
   * @param {string} on.label
   * @param {boolean} [on.prose] a note: no tokens, no completion
   * @param {boolean} [on.code] letters that cannot be seen are marked: what is run is what is read
   * @param {boolean} [on.single] one line, as in a field: Enter leaves it, and takes a word only where one was chosen
   * @param {string} [on.key] of a field, to find it again after its row was drawn anew
   * @param {(text: string) => void} on.typed
   * @param {() => void} on.close Esc was pressed
   * @param {() => void} [on.taken] of a single line: Enter was pressed
   * @param {(text: string, offset: number) => Promise<any>} on.complete
   * @param {(text: string, offset: number) => void} [on.moved] the cursor, or the text
   * @param {() => void} [on.help] F1 was pressed
   * @param {(offset: number) => void} [on.pointed] the mouse rests on a word that ends there
   */
  constructor(on) {
    const nonce = /** @type {HTMLScriptElement | null} */ (document.querySelector("script[nonce]"))?.nonce ?? "";
    const state = EditorState.create({
      doc: on.text,
      extensions: [
        EditorView.cspNonce.of(nonce),
        marks,
        history(),
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({ "aria-label": on.label, "aria-multiline": on.single ? "false" : "true", spellcheck: on.prose ? "true" : "false", ...(on.key ? { "data-key": on.key } : {}) }),
        on.code ? highlightSpecialChars() : [],
        on.single ? EditorView.clipboardInputFilter.of((text) => text.replaceAll(/\s*\n\s*/g, " ")) : [],
        keymap.of([
          { key: "Escape", run: (view) => (completionStatus(view.state) === "active" && closeCompletion(view) && !on.single ? true : (on.close(), true)) },
          { key: "Mod-Enter", run: () => ((on.taken ?? on.close)(), true) },
          { key: "Ctrl-Space", run: startCompletion },
          { key: "F1", run: () => (on.help?.(), true) },
        ]),
        // a query under way must not swallow Esc, so its keys come after ours
        keymap.of([...completionKeymap, ...(on.single ? [{ key: "Enter", run: () => (on.taken(), true) }] : []), ...historyKeymap, ...standardKeymap]),
        on.prose ? [] : [tooltips({ parent: on.strip }), autocompletion({ override: [(context) => completions(context, on.complete)], icons: false, defaultKeymap: false, selectOnOpen: !on.single })],
        on.pointed ? hoverTooltip((view, at) => (on.pointed(view.state.wordAt(at)?.to ?? at), null), { hoverTime: RESTS }) : [],
        on.single ? [] : EditorView.scrollMargins.of(() => covered(on.parent)),
        EditorView.updateListener.of((update) => {
          if (on.strip) inSight(on.strip);
          if (update.docChanged || update.selectionSet) on.moved?.(update.state.doc.toString(), update.state.selection.main.head);
          if (update.docChanged && !update.transactions.some((one) => one.annotation(Transaction.remote))) on.typed(update.state.doc.toString());
        }),
      ],
    });
    this.view = new EditorView({ state, parent: on.parent });
  }

  get text() {
    return this.view.state.doc.toString();
  }

  /** Puts the cursor at the end of a line, or of the text. @param {number} [line] counted from 1 */
  focus(line) {
    const { doc } = this.view.state;
    const at = line !== undefined && line >= 1 && line <= doc.lines ? doc.line(line).to : doc.length;
    this.view.dispatch({ selection: { anchor: at }, scrollIntoView: true });
    this.view.focus();
  }

  /** Selects a stretch, as it was in the field that this pad takes the place of. @param {number} from @param {number} to */
  select(from, to) {
    this.view.dispatch({ selection: { anchor: from, head: to } });
    this.view.focus();
  }

  /** The stretch that is selected. */
  get selection() {
    const { from, to } = this.view.state.selection.main;
    return { from, to };
  }

  /** Where the cursor is. */
  get place() {
    return this.view.state.selection.main.head;
  }

  /** Writes a call at the cursor; Tab leads from one open argument to the next. @param {string} stops */
  insert(stops) {
    const { from, to } = this.view.state.selection.main;
    this.view.focus();
    snippet(withEnd(stops))(this.view, null, from, to);
  }

  /** Takes over another window's text; the cursor stays where it was, as far as there is text. @param {string} text */
  replace(text) {
    if (text === this.text) return;
    const { head } = this.view.state.selection.main;
    this.view.dispatch({
      changes: { from: 0, to: this.view.state.doc.length, insert: text },
      selection: { anchor: Math.min(head, text.length) },
      annotations: [Transaction.remote.of(true), Transaction.addToHistory.of(false)],
    });
  }

  /**
   * Shows what the server read in this text; left alone where the text has moved on.
   * @param {string} text
   * @param {readonly Token[]} tokens
   * @param {readonly Problem[]} problems
   */
  read(text, tokens, problems) {
    if (text !== this.text) return;
    this.#tokens = [...tokens];
    this.#problems = [...problems];
    const starts = lineStarts(text);
    const painted = stretches(text, this.#tokens).map((one) => Decoration.mark({ class: `tk-${one.kind}` }).range(one.from, one.to));
    const wrong = this.#problems
      .map((problem) => ({ ...offsets(text, starts, problem.line, problem.from, problem.to), severity: problem.severity }))
      .filter((one) => one.from < one.to)
      .map((one) => Decoration.mark({ class: one.severity === "ERROR" ? "wrong-here" : "hint-here" }).range(one.from, one.to));
    const all = [...painted, ...wrong];
    // prose has nothing to be marked: then nothing stirs the editor while somebody types
    if (all.length === 0 && this.view.state.field(marks).size === 0) return;
    this.view.dispatch({ effects: setMarks.of(Decoration.set(all, true)) });
  }

  get isChoosing() {
    return completionStatus(this.view.state) === "active";
  }

  close() {
    closeCompletion(this.view);
    this.view.destroy();
  }
}

/** How much of the window's edges the heads of the sheet and the foot of the pad lie over. @param {HTMLElement} pad */
function covered(pad) {
  /** @param {HTMLElement | null} element */
  const height = (element) => element?.offsetHeight ?? 0;
  return { top: height(document.querySelector(".heads")), bottom: height(pad.querySelector(".pad-foot")) + 4 };
}

/** Behind the last argument Tab leads to the end of the call, not out of the pad. @param {string} stops */
function withEnd(stops) {
  return `${stops}\${}`;
}

/** The words stand in one row, which moves so that the chosen one is seen. @param {HTMLElement} strip */
function inSight(strip) {
  /** @type {HTMLElement | null} */
  const chosen = strip.querySelector("[aria-selected]");
  const from = /** @type {HTMLElement | null | undefined} */ (chosen?.previousElementSibling ?? chosen);
  if (chosen) chosen.parentElement.scrollLeft = from.offsetLeft;
}

/** @param {import("@codemirror/autocomplete").CompletionContext} context @param {(text: string, offset: number) => Promise<any>} ask */
async function completions(context, ask) {
  const word = context.matchBefore(/[\p{L}_"][\p{L}\p{N}_.]*/u);
  if (!word && !context.explicit) return null;
  const answer = await ask(context.state.doc.toString(), context.pos);
  if (!answer || context.aborted || answer.options.length === 0) return null;
  const from = answer.from ?? word?.from ?? context.pos;
  // a word that is whole wants nothing more: Enter behind it begins a new line and takes no word
  /** @param {string} text */
  const isWhole = (text) => answer.options.some((option) => !option.stops && (option.apply || option.label).trim() === text);
  if (!context.explicit && isWhole(context.state.sliceDoc(from, context.pos))) return null;
  return {
    from,
    options: answer.options.map((option) => ({ label: option.label, detail: option.detail || undefined, apply: option.stops ? snippet(withEnd(option.stops)) : option.apply || option.label })),
    validFor: (text) => /^[\p{L}\p{N}_]*$/u.test(text) && !isWhole(text),
  };
}
