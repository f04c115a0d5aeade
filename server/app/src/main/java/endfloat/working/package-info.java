/**
 * The working language: grammar and token source, syntax tree, kinds, errors with a way out,
 * completion, typesetting. It knows nothing of records or of figures. Start with {@link
 * endfloat.working.Working}.
 */
package endfloat.working;
