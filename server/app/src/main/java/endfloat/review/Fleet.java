package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.RecordGraph;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import endfloat.units.ShortestDecimal;
import endfloat.units.Size;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Figures of the records of a shelf as a table: one row a record, one column a figure, worked out
 * when asked and not before. The table says which records it was read from, in which state, and
 * when; it does not follow them until it is read again.
 */
public final class Fleet {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Unit HOUR = UnitTable.find("h");

  /** More digits than any reading has, fewer than a double's rounding shows. */
  private static final MathContext DIGITS = new MathContext(12);

  private final List<Member> members;
  private final List<ValueGraph> graphs = new ArrayList<>();
  private final List<String> notices = new ArrayList<>();
  private final List<ArrayNode> rows = new ArrayList<>();
  private final ArrayNode columns = JSON.arrayNode();

  /** A record of the shelf. */
  public record Member(String id, InvestigationRecord record) {}

  /**
   * A table that was read.
   *
   * @param fields {@code from}, {@code columns} and {@code rows} of a clause
   * @param notices what could not be had, and of which record
   */
  public record Read(ObjectNode fields, List<String> notices) {}

  private Fleet(List<Member> members) {
    this.members = members;
    for (Member member : members) {
      graphs.add(RecordGraph.of(member.record()).graph());
      rows.add(JSON.arrayNode());
    }
  }

  /**
   * Reads figures out of records. A record that has no such figure, or none that stands, has an
   * empty field.
   *
   * @param names of figures; of a figure with uncertainty a second column holds u
   * @param now when, ISO 8601
   */
  public static Read of(List<Member> members, List<String> names, String now) {
    Fleet fleet = new Fleet(members);
    fleet.text("record", Member::id);
    ((ObjectNode) fleet.columns.get(0)).put("key", true);
    fleet.text("engine", member -> member.record().titleBlock().engineSerial());
    fleet.hours();
    names.forEach(fleet::figure);
    ObjectNode fields = JSON.objectNode();
    ObjectNode from = fields.putObject("from");
    ArrayNode heads = from.putArray("of");
    names.forEach(heads::add);
    ArrayNode shelf = from.putArray("shelf");
    for (Member member : members) {
      shelf
          .addObject()
          .put("title", member.record().titleBlock().title())
          .put("record", member.id())
          .put("revision", member.record().titleBlock().revision())
          .put("source_hash", member.record().sourceHash());
    }
    from.put("refreshed", now);
    fields.set("columns", fleet.columns);
    ArrayNode rows = fields.putArray("rows");
    fleet.rows.forEach(rows::add);
    return new Read(fields, List.copyOf(fleet.notices));
  }

  private void column(String head, String kind, String unit, List<String> texts) {
    ObjectNode column = columns.addObject().put("head", head).put("kind", kind);
    if (!unit.isEmpty() && !unit.equals("1")) {
      column.put("unit", unit);
    }
    for (int i = 0; i < texts.size(); i++) {
      rows.get(i).add(texts.get(i));
    }
  }

  private void text(String head, Function<Member, String> said) {
    column(head, "text", "", members.stream().map(said).toList());
  }

  /** Hours since overhaul, where the title block has them as a time. */
  private void hours() {
    List<String> texts = new ArrayList<>();
    for (Member member : members) {
      String said = member.record().titleBlock().hoursSinceOverhaul();
      texts.add(said.isBlank() ? "" : hours(member, said));
    }
    column("hours", "number", "h", texts);
  }

  private String hours(Member member, String said) {
    try {
      Size size = Size.read(said, HOUR);
      if (size.unit().dimension().equals(HOUR.dimension())) {
        return plain(HOUR.fromSi(size.si()));
      }
    } catch (UnitException e) {
      // said below
    }
    notices.add(member.id() + ": hours since overhaul, '" + said + "', is no time");
    return "";
  }

  private void figure(String name) {
    List<Optional<Figure>> figures = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      Optional<Figure> figure = graphs.get(i).figure(name);
      if (figure.flatMap(Figure::value).isEmpty()) {
        notices.add(
            members.get(i).id()
                + ": "
                + name
                + (figure.isEmpty() ? " is not there" : " has no value"));
      }
      figures.add(figure.filter(f -> f.value().isPresent()));
    }
    String head = name.replace('.', '_');
    Optional<Figure> first = figures.stream().flatMap(Optional::stream).findFirst();
    boolean words =
        first.isPresent()
            && (first.get().value().get() instanceof Value.Words
                || first.get().value().get() instanceof Value.Truth);
    if (words) {
      boolean truth = first.get().value().get() instanceof Value.Truth;
      column(
          head,
          truth ? "truth" : "text",
          "",
          figures.stream().map(f -> f.flatMap(Figure::value).map(Fleet::said).orElse("")).toList());
      return;
    }
    numbers(name, head, first.map(Fleet::unit).orElse(UnitTable.find("1")), figures);
  }

  private static Unit unit(Figure figure) {
    return figure
        .unit()
        .orElseGet(
            () ->
                figure.kind().orElse(null) instanceof Kind.Quantity quantity
                    ? UnitTable.coherent(quantity.dimension())
                    : UnitTable.find(
                        figure.kind().orElse(null) instanceof Kind.Temperature ? "degC" : "1"));
  }

  private void numbers(String name, String head, Unit unit, List<Optional<Figure>> figures) {
    List<String> texts = new ArrayList<>();
    List<String> uncertainties = new ArrayList<>();
    boolean uncertain = false;
    for (int i = 0; i < figures.size(); i++) {
      String text = "";
      String u = "";
      if (figures.get(i).isPresent()) {
        Figure figure = figures.get(i).get();
        if (figure.value().get() instanceof Value.Scalar scalar
            && unit(figure).dimension().equals(unit.dimension())
            && unit(figure).isTemperaturePoint() == unit.isTemperaturePoint()) {
          text = plain(unit.fromSi(scalar.si()));
          u = plain(unit.interval().fromSi(figure.standardUncertainty()));
          uncertain |= figure.standardUncertainty() > 0;
        } else {
          notices.add(
              members.get(i).id() + ": " + name + " is no single number in " + unit.print());
        }
      }
      texts.add(text);
      uncertainties.add(u);
    }
    column(head, "number", unit.symbol(), texts);
    if (uncertain) {
      column(head + "_u", "number", unit.interval().symbol(), uncertainties);
    }
  }

  private static String said(Value value) {
    return value instanceof Value.Words words
        ? words.text()
        : value instanceof Value.Truth truth ? truth.holds() ? "yes" : "no" : "";
  }

  private static String plain(double number) {
    BigDecimal rounded = ShortestDecimal.of(number).round(DIGITS).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
  }
}
