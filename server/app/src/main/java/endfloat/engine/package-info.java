/**
 * The engine: a record as a graph of values with their uncertainties and verdicts, where an edit
 * recomputes what depends on it and nothing else. It knows nothing of pages, files or commands.
 * Start with {@link endfloat.engine.ValueGraph}; {@link endfloat.engine.Figure} is what comes out.
 */
package endfloat.engine;
