package endfloat.engine;

import endfloat.working.LineProblem;

/**
 * Something wrong in a clause, or worth a hint.
 *
 * @param at JSON Pointer in a readings clause; empty in a working, where the span tells the place
 * @param problem with its span counted from the first line of the clause
 */
public record ClauseProblem(String clause, String at, LineProblem problem) {}
