/**
 * What the server sends, as types. Numbers that are shown arrive as text; the page formats nothing.
 *
 * @typedef {object} Problem
 * @property {number} line counted from 1
 * @property {number} from first column, counted from 1
 * @property {number} to column after the last
 * @property {string} message what is wrong
 * @property {string} wayOut what to do
 * @property {"ERROR"|"WARNING"|"HINT"} severity
 * @property {string} [at] JSON pointer of a reading, where the clause is one of readings
 *
 * @typedef {[number, number, number, string]} Token line, from, to, kind
 *
 * @typedef {object} LineView
 * @property {number} line
 * @property {"input"|"value"|"limit"|"correlate"} kind
 * @property {string} name
 * @property {string} figure name of the figure that the line shows
 * @property {string} unit
 * @property {string} [nameMath] MathML of the name
 * @property {string} formula MathML
 * @property {string} given
 * @property {string} source
 *
 * @typedef {object} CellView
 * @property {string} id
 * @property {string} number
 * @property {string} kind
 * @property {string} title
 * @property {number} revision
 * @property {any} source the clause as the record holds it
 * @property {string} [html] of a note
 * @property {LineView[]} [lines] of a working
 * @property {Problem[]} [problems]
 * @property {Token[]} [tokens]
 * @property {"fresh"|"error"|"waiting"|"working"} state
 * @property {string} worst worst verdict
 * @property {any} [board] what the rows come to, of a clause of fits or causes
 * @property {{svg: string, description: string, heads: string[], rows: string[][], notes?: string[], problem?: any}} [chart] the picture of a chart, what it says, its numbers
 * @property {{rows: number, missing: number, columns: {head: string, missing: number, judged?: boolean, figure?: string}[]}} [table] of a table: its rows as far as they are not sent
 * @property {CellView[]} [cells] of a section
 *
 * @typedef {object} LimitView
 * @property {string} verdict within, not proven, outside
 * @property {string} [authority]
 * @property {string} [condition]
 * @property {string} [state]
 * @property {string} [rule]
 * @property {string} [low]
 * @property {string} [high]
 * @property {string} [unit]
 * @property {string} [probability] that the value conforms
 * @property {string} [strip] SVG
 *
 * @typedef {object} ElementView one station of a series, or one field of a record
 * @property {Record<string, string>} labels
 * @property {string} [field]
 * @property {string} value
 * @property {string} [unit] where it is another than the figure's
 * @property {string} [u]
 * @property {string} [verdict]
 * @property {LimitView[]} [limits]
 *
 * @typedef {object} FigureView
 * @property {string} name
 * @property {string} cell
 * @property {number} [line]
 * @property {"fresh"|"error"|"waiting"|"working"} state
 * @property {string} [progress] how far a slow calculation is
 * @property {string} kind quantity, temperature, series, text, truth, record
 * @property {string} [set] its name as it is set, where that is another than as typed
 * @property {string} [title] what it is, where its name has a point in it and is nobody's word for it
 * @property {string} [value]
 * @property {string} [unit]
 * @property {string} [u]
 * @property {string} [numbers] MathML, the line with the numbers put in
 * @property {string} [verdict]
 * @property {LimitView[]} [limits]
 * @property {ElementView[]} [elements]
 * @property {number} [worstElement] index into elements
 * @property {number} [count] elements, where not all are sent
 * @property {Record<string, number>} [counts] of verdicts, where not all elements are sent
 * @property {Problem} [error]
 * @property {{name: string, cell: string, line?: number}[]} [waitingOn]
 * @property {Problem[]} [hints]
 * @property {{why: string, differences: any[]}} [outOfDate] where its saved value is another
 *
 * @typedef {object} Place
 * @property {string} id
 * @property {string} parent id of the section, "" at the top
 * @property {number} depth 0 at the top
 *
 * @typedef {object} Sheet
 * @property {number} revision
 * @property {any} record title block, settings, parts, instruments
 * @property {ReadonlyMap<string, CellView>} cells
 * @property {readonly Place[]} order clauses from top to bottom, sections before what they hold
 * @property {ReadonlyMap<string, FigureView>} figures
 * @property {any} summary
 * @property {boolean} canUndo
 * @property {boolean} canRedo
 *
 * @typedef {object} Change what of a sheet is to be drawn again
 * @property {ReadonlySet<string>} cells
 * @property {ReadonlySet<string>} figures
 * @property {boolean} order clauses were added, removed, moved or numbered anew
 * @property {boolean} record
 */
export {};
