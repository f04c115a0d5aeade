package endfloat.materials;

import endfloat.units.Uncertain;
import java.util.ArrayList;
import java.util.List;

/** The table of materials, to be looked into: every value with its spread and its source. */
public final class MaterialsOnFile {
  /** Properties in the order they are shown, with the unit that names their dimension. */
  public static final List<Property> PROPERTIES =
      List.of(
          new Property("expansion", "Expansion", "1/K"),
          new Property("modulus", "Modulus of elasticity", "GPa"),
          new Property("poisson", "Poisson's ratio", "1"),
          new Property("density", "Density", "kg/m^3"),
          new Property("yield", "Yield strength", "MPa"));

  private MaterialsOnFile() {}

  /** A property that materials have. */
  public record Property(String name, String title, String unit) {}

  /**
   * A value of a material, or of the one whose values it shares.
   *
   * @param value in SI with its standard uncertainty
   * @param minimum whether it is a guaranteed least value
   * @param source book or data sheet, place in it, temperature and how it is known
   */
  public record OnFile(Property property, Uncertain value, boolean minimum, String source) {}

  /** A material and what is known of it; a value nobody can vouch for is left out. */
  public record Row(String name, List<OnFile> values) {}

  public static List<Row> rows() {
    MaterialTable table = MaterialTable.LIBRARY;
    List<Row> rows = new ArrayList<>();
    for (String name : table.names()) {
      List<OnFile> values = new ArrayList<>();
      for (Property property : PROPERTIES) {
        table
            .value(name, property.name())
            .ifPresent(
                v ->
                    values.add(
                        new OnFile(
                            property,
                            v.value(),
                            v.minimum(),
                            v.source().title() + ", " + v.place())));
      }
      rows.add(new Row(name, List.copyOf(values)));
    }
    return rows;
  }
}
