package endfloat.catalogue;

import java.util.List;

/**
 * One result of a calculation: the scalar itself (then its name is empty) or a field of the record
 * that it gives.
 *
 * @param name of the field in the working language
 * @param description from the Javadoc
 * @param form {@code QUANTITY} a double, {@code UNCERTAIN} an {@link endfloat.units.Uncertain},
 *     {@code LIST} a double array, {@code TEXT} a String or an enum, {@code TRUTH} a boolean
 * @param unit symbol that names the dimension, "" for texts and truths
 * @param choices texts of an enum
 */
public record Result(
    String name, String description, Form form, String unit, List<String> choices) {

  /** What a result is made of. */
  public enum Form {
    QUANTITY,
    UNCERTAIN,
    LIST,
    TEXT,
    TRUTH
  }
}
