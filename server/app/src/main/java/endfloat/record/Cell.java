package endfloat.record;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * One clause of a record.
 *
 * @param id never shown, never changed
 * @param number as people cite it: {@code 2.1}
 * @param kind {@code section}, {@code note}, {@code working}, {@code readings} ...
 * @param parent id of the section that holds it, or empty
 * @param source the object of the file, not to be altered
 */
public record Cell(
    String id, String number, String kind, String title, String parent, ObjectNode source) {

  public boolean isSection() {
    return kind.equals("section");
  }

  /** The text of a note or a working; empty where the kind has none. */
  public String text() {
    return Texts.text(source, "text");
  }

  /** The readings of a clause of that kind; empty for any other. */
  public List<Reading> readings() {
    List<Reading> readings = new ArrayList<>();
    if (kind.equals("readings")) {
      source.path("readings").forEach(reading -> readings.add(Reading.of(reading)));
    }
    return readings;
  }

  /** The rows of a schedule of fits; empty for any other kind. */
  public List<FitRow> fits() {
    return kind.equals("fits") ? FitRow.all(source) : List.of();
  }

  /** The board of a clause of causes; without causes for any other kind. */
  public CauseBoard causes() {
    return CauseBoard.of(kind.equals("causes") ? source : JsonNodeFactory.instance.objectNode());
  }

  /** The findings of a clause of that kind; empty for any other. */
  public List<Finding> findings() {
    return kind.equals("findings") ? Finding.all(source) : List.of();
  }

  /** What a chart shows; nothing for any other kind. */
  public ChartClause chart() {
    return ChartClause.of(kind.equals("chart") ? source : JsonNodeFactory.instance.objectNode());
  }

  /** The table of a clause of that kind; without columns for any other. */
  public TableClause table() {
    return TableClause.of(kind.equals("table") ? source : JsonNodeFactory.instance.objectNode());
  }
}
