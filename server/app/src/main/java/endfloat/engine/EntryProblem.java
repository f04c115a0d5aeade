package endfloat.engine;

import endfloat.working.LineProblem;

/**
 * What is wrong in a readings clause, and where.
 *
 * @param at JSON Pointer inside the clause, such as {@code /readings/0/entries/3/taken/0}
 * @param problem its span counts columns of the text there
 */
public record EntryProblem(String clause, String at, LineProblem problem) {}
