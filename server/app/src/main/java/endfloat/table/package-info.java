/**
 * Tables of readings from files: text as it stands, numbers by a strict rule, every problem named
 * by column and row. It knows nothing of records. Start with {@link endfloat.table.ReadingsCsv}.
 */
package endfloat.table;
