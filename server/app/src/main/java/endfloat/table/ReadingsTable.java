package endfloat.table;

import java.util.List;

/**
 * A table of readings as read from a file.
 *
 * @param columns those whose head could be read
 * @param problems all that is wrong with it, each with column and row; nothing may be used unless
 *     this is empty
 * @param notices what the reader should know, such as an encoding that was guessed
 */
public record ReadingsTable(List<Column> columns, List<String> problems, List<String> notices) {}
