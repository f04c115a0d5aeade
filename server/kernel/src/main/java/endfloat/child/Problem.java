package endfloat.child;

/**
 * What is wrong at a place of a clause.
 *
 * @param line of the clause, from 1
 * @param from first column, from 1
 * @param to column after the last
 * @param message a sentence
 * @param wayOut a sentence; may be empty
 */
record Problem(int line, int from, int to, String message, String wayOut) {}
