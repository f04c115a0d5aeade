package endfloat.materials;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Materials of the trade by name. */
public final class Material {
  private Material() {}

  /**
   * What is on file for a material; a value that nobody can vouch for is absent.
   *
   * @param name as it stands on file
   * @param expansion coefficient of linear expansion
   * @param modulus of elasticity, Young's
   * @param poisson Poisson's ratio
   * @param density mass by volume
   * @param yield strength: 0.2 % proof stress where there is no yield point
   * @param sources of each value, with the temperature it holds for, and how it is known
   */
  public record Properties(
      String name,
      @In("1/K") Uncertain expansion,
      @In("GPa") Uncertain modulus,
      @In("1") Uncertain poisson,
      @In("kg/m^3") Uncertain density,
      @In("MPa") Uncertain yield,
      String sources) {}

  /**
   * Typical properties of a material at room temperature, each with its spread and its source.
   *
   * <p>Case, blanks and dashes in the name make no difference; trade names and near equivalents of
   * other countries are known (En24 for 4340). Strength depends on the condition, so name it:
   * {@code aluminium 6061-T6}. The spread of each value enters as its own uncertainty, one for each
   * property of the material.
   *
   * @param name of the material, such as steel 4140, LM25 or white metal
   * @return the properties on file
   * @throws RefusedException if no such material is on file; names the nearest
   */
  @Calculates(
      source = "handbook tables, one source a value, see the result's sources",
      cautions = {
        "Typical values, not those of the part in hand: where a figure hangs on one, test it or take"
            + " the material's certificate.",
        "Expansion is the value near room temperature; the mean up to engine heat is higher for"
            + " most alloys.",
        "Two handbooks give 10.8 and 11.3 to 12.3 parts per million for steels: name the steel, not"
            + " just \"steel\"."
      },
      terms = {"steel", "aluminum", "cast iron", "Young's modulus", "expansion", "density"})
  public static Properties material(String name) {
    MaterialTable table = MaterialTable.LIBRARY;
    String known = table.known(name);
    Map<String, List<String>> sources = new LinkedHashMap<>();
    return new Properties(
        known,
        value(table, known, "expansion", "coefficient of expansion", sources),
        value(table, known, "modulus", "modulus of elasticity", sources),
        value(table, known, "poisson", "Poisson's ratio", sources),
        value(table, known, "density", "density", sources),
        value(table, known, "yield", "yield strength", sources),
        sources.entrySet().stream()
            .map(e -> e.getKey() + ": " + String.join("; ", e.getValue()))
            .collect(Collectors.joining(". ")));
  }

  /** A name without what makes no difference: two spellings of one material are equal here. */
  public static String spelling(String name) {
    return MaterialTable.key(name);
  }

  /** The name on file of a material under any of its names; empty where it is not on file. */
  public static Optional<String> onFile(String name) {
    return MaterialTable.LIBRARY.find(name);
  }

  /**
   * The material under which a property stands on file: that of the alloy for a temper of it, so
   * that one alloy under two names is known to be one.
   */
  public static Optional<String> filedUnder(String name, String property) {
    return onFile(name).flatMap(known -> MaterialTable.LIBRARY.owner(known, property));
  }

  /** Names of all materials on file, for a list to choose from. */
  public static List<String> names() {
    return MaterialTable.LIBRARY.names();
  }

  private static Uncertain value(
      MaterialTable table,
      String material,
      String property,
      String words,
      Map<String, List<String>> sources) {
    Optional<StoredValue> stored = table.value(material, property);
    stored.ifPresent(
        v ->
            sources
                .computeIfAbsent(v.source().title(), title -> new ArrayList<>())
                .add(property + " (" + v.place() + ")"));
    return stored
        .map(StoredValue::value)
        .orElseGet(() -> Uncertain.absent(whyAbsent(table, material, property, words)));
  }

  private static String whyAbsent(
      MaterialTable table, String material, String property, String words) {
    List<String> conditions = table.conditionsWith(material, property);
    return "no "
        + words
        + " on file for "
        + material
        + (conditions.isEmpty()
            ? ": enter a value with its source in the record"
            : ": it depends on the condition; name one: " + String.join("; ", conditions));
  }
}
