package endfloat.working;

import java.util.List;

/**
 * A parsed working: what could be read, what could not, and how to paint it.
 *
 * @param lines statements in the order written; a line in error is missing here and present in
 *     {@code problems}
 * @param problems of syntax, one or more a line in error
 * @param tokens of every line
 */
public record Working(List<Line> lines, List<LineProblem> problems, List<Token> tokens) {}
