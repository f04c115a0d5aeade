package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Shown;
import endfloat.fits.FitTables;
import endfloat.materials.MaterialsOnFile;
import endfloat.units.Unit;
import endfloat.units.UnitPreference;
import endfloat.units.UnitTable;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The tables of the library as the reference page shows them: {@code {name, title, about, groups:
 * [{title, heads, rows: [[{text, u?, source?}]]}]}}.
 */
public final class LookupTables {
  /** Title of each table by its name in an address. */
  public static final Map<String, String> TITLES = titles();

  private LookupTables() {}

  private static Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    titles.put("materials", "Materials on file");
    titles.put("iso-grades", "Standard tolerances of ISO 286-1");
    titles.put("inch-fits", "Inch fits of ANSI B4.1");
    return titles;
  }

  /** A table by its name; empty where there is none of that name. */
  public static Optional<ObjectNode> of(String name, ReferenceView.Reader reader) {
    if (!TITLES.containsKey(name)) {
      return Optional.empty();
    }
    ObjectNode view = JsonNodeFactory.instance.objectNode().put("name", name);
    view.put("title", reader.terms().say(TITLES.get(name)));
    switch (name) {
      case "materials" -> materials(view, reader);
      case "iso-grades" -> grades(view);
      default -> inchFits(view);
    }
    return Optional.of(view);
  }

  private static void materials(ObjectNode view, ReferenceView.Reader reader) {
    view.put(
        "about",
        reader
            .terms()
            .say(
                "Typical values near 20 degC with their expanded uncertainty (k = 2), each with its"
                    + " source. A dash: nobody could vouch for a value. In a working:"
                    + " material(\"LM25\").expansion"));
    List<String> heads =
        MaterialsOnFile.PROPERTIES.stream()
            .map(property -> property.title() + unitIn(unit(property.unit(), reader)))
            .toList();
    ArrayNode rows = group(view, "", "Material", heads);
    for (MaterialsOnFile.Row row : MaterialsOnFile.rows()) {
      ArrayNode cells = rows.addArray();
      cells.addObject().put("text", reader.terms().say(row.name()));
      for (MaterialsOnFile.Property property : MaterialsOnFile.PROPERTIES) {
        cell(cells.addObject(), row, property, reader);
      }
    }
  }

  private static void cell(
      ObjectNode cell,
      MaterialsOnFile.Row row,
      MaterialsOnFile.Property property,
      ReferenceView.Reader reader) {
    cell.put("text", "\u2013");
    for (MaterialsOnFile.OnFile one : row.values()) {
      if (one.property().equals(property)) {
        Shown shown =
            Shown.expanded(
                one.value().value(),
                reader.settings().coverage() * one.value().standardUncertainty(),
                unit(property.unit(), reader));
        cell.put("text", shown.value() + (one.minimum() ? " at least" : ""));
        if (!shown.uncertainty().isEmpty()) {
          cell.put("u", shown.uncertainty());
        }
        cell.put("source", one.source());
      }
    }
  }

  private static Unit unit(String symbol, ReferenceView.Reader reader) {
    return UnitPreference.shown(UnitTable.find(symbol), reader.units());
  }

  private static String unitIn(Unit unit) {
    return unit.print().equals("1") ? "" : ", " + unit.print();
  }

  private static void grades(ObjectNode view) {
    view.put("about", "In \u00b5m. A dash: the standard has none, or the copies differ.");
    view.put("source", FitTables.ISO_SOURCE);
    List<FitTables.Grade> cells = FitTables.grades();
    List<String> grades = cells.stream().map(FitTables.Grade::grade).distinct().toList();
    ArrayNode rows = group(view, "", "Nominal size", grades);
    ArrayNode row = null;
    String range = "";
    for (FitTables.Grade cell : cells) {
      if (!cell.range().equals(range)) {
        range = cell.range();
        row = rows.addArray();
        row.addObject().put("text", range);
      }
      row.addObject().put("text", plain(cell.micrometres()));
    }
  }

  private static void inchFits(ObjectNode view) {
    view.put(
        "about",
        "Sizes in inches, limits in thousandths of an inch; the lower limit of the hole is the"
            + " nominal size. A negative clearance is an interference.");
    view.put("source", FitTables.INCH_SOURCE);
    List<String> heads =
        List.of(
            "Hole, upper",
            "Shaft, upper",
            "Shaft, lower",
            "Least clearance",
            "Greatest clearance",
            "How known");
    ArrayNode rows = null;
    String fitClass = "";
    for (FitTables.InchLine line : FitTables.inchFits()) {
      if (!line.fitClass().equals(fitClass)) {
        fitClass = line.fitClass();
        rows = group(view, fitClass, "Over .. to [in]", heads);
      }
      ArrayNode row = rows.addArray();
      row.addObject().put("text", plain(line.over()) + " .. " + plain(line.to()));
      for (double value :
          new double[] {
            line.hole(), line.shaftUpper(), line.shaftLower(), line.least(), line.greatest()
          }) {
        row.addObject().put("text", plain(value));
      }
      row.addObject().put("text", line.knowledge());
    }
  }

  private static ArrayNode group(ObjectNode view, String title, String first, List<String> others) {
    ObjectNode group = view.withArray("groups").addObject().put("title", title);
    ArrayNode heads = group.putArray("heads").add(first);
    others.forEach(heads::add);
    return group.putArray("rows");
  }

  private static String plain(OptionalDouble value) {
    return value.isPresent() ? plain(value.getAsDouble()) : "\u2013";
  }

  /** A number of a table as it is printed there. */
  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString().replace('-', '\u2212');
  }
}
