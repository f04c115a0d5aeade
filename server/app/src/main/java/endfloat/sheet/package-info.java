/**
 * The open sheet: the one writer of a record. It orders edits, keeps them before it acknowledges
 * them, undoes them, saves the file, and tells those who listen. Nothing here knows HTTP. Start
 * with {@link endfloat.sheet.OpenSheet}.
 */
package endfloat.sheet;
