package endfloat.working;

/**
 * What the editor draws: one stretch of source and what it is.
 *
 * @param kind name (of a value), field, argument, number, unit, word (of the language), function,
 *     text, sign, comment, wrong
 */
public record Token(Span span, String kind) {}
