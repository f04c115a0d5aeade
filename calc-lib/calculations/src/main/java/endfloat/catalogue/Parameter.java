package endfloat.catalogue;

import java.util.Optional;

/**
 * One argument of a calculation, or one component of a {@link Part}.
 *
 * @param name in the working language
 * @param description from the Javadoc
 * @param form what kind of value it takes
 * @param unit symbol that names the dimension; "1" for a pure number, {@code <x>} for a unit
 *     variable, "" for texts and parts
 * @param range where it is valid
 * @param fallback value if not given, as the language writes it, or {@link
 *     endfloat.definition.Default#NOT_GIVEN}, or an {@link endfloat.definition.OwnUncertainty} in
 *     words; empty where it must be given
 * @param choices texts of an enum, empty for a free text
 * @param part what the list holds, for {@link Form#PARTS}
 */
public record Parameter(
    String name,
    String description,
    Form form,
    String unit,
    Optional<ValidRange> range,
    Optional<String> fallback,
    java.util.List<String> choices,
    Optional<Part> part) {

  /** What an argument is made of. */
  public enum Form {
    QUANTITY,
    LIST,
    INDEXED,
    TEXT,
    CHOICE,
    PARTS
  }
}
