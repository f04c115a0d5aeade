package endfloat.working;

/**
 * A stretch of one line of a working.
 *
 * @param line counted from 1
 * @param from first column, counted from 1 in UTF-16 units
 * @param to column after the last
 */
public record Span(int line, int from, int to) {}
