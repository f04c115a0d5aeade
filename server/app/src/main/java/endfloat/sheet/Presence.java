package endfloat.sheet;

/**
 * Somebody has the record open.
 *
 * @param client which page
 * @param author who
 * @param cell id of the clause they are in, or empty
 */
public record Presence(String client, String author, String cell) {}
