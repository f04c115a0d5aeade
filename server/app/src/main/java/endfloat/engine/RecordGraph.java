package endfloat.engine;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.RegisteredPart;
import endfloat.record.Settings;
import endfloat.units.UnitSystem;
import endfloat.working.Terms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A record as the source of a graph. A clause whose source is untouched is handed on as it was. */
public final class RecordGraph {
  /** The kinds of clause that give values. */
  private static final Set<String> GIVING =
      Set.of("working", "readings", "fits", "causes", "table", "java");

  /** What of a table is no matter of order, title or remarks: these cost no reading of its rows. */
  private static final Set<String> GIVEN_BY_A_TABLE =
      Set.of("kind", "name", "from", "columns", "limits", "rows");

  private final ValueGraph graph;
  private Map<String, Known> known = new HashMap<>();

  private Map<String, String> parts = Map.of();

  private record Known(ObjectNode source, String label, Map<String, String> parts, Clause clause) {}

  public RecordGraph(ValueGraph graph) {
    this.graph = graph;
  }

  /** A graph of a record, with the calculations of the library. */
  public static RecordGraph of(InvestigationRecord record) {
    return of(record, ProgramRunner.get());
  }

  /** The same with a runner of its java clauses. */
  public static RecordGraph of(InvestigationRecord record, CellRunner runner) {
    RecordGraph made =
        new RecordGraph(new ValueGraph(endfloat.catalogue.Catalogue.library(), runner));
    made.update(record);
    return made;
  }

  public ValueGraph graph() {
    return graph;
  }

  /** Takes the record as it is now. */
  public ValueGraph.Changed update(InvestigationRecord record) {
    Map<String, Known> now = new HashMap<>();
    parts = parts(record);
    List<Clause> clauses = new ArrayList<>();
    for (Cell cell : record.cells()) {
      if (GIVING.contains(cell.kind())) {
        Known before = known.get(cell.id());
        Known kept =
            before != null
                    && sameValues(before.source(), cell)
                    && before.label().equals(cell.number())
                    && (before.parts().equals(parts) || !cell.kind().equals("fits"))
                ? before
                : new Known(cell.source(), cell.number(), parts, clause(cell, parts));
        now.put(cell.id(), kept);
        clauses.add(kept.clause());
      }
    }
    known = now;
    return graph.update(
        new GraphSource(
            clauses,
            record.instruments(),
            record.materials(),
            settings(record.settings()),
            record.titleBlock().date()));
  }

  /**
   * What a clause that is entered by fields would give if it read so, without keeping it.
   *
   * @return empty for a clause of another kind
   */
  public Optional<ValueGraph.Preview> preview(Cell cell) {
    return fields(cell, parts).map(graph::preview);
  }

  /** The name that the expression entered at a place of a clause gives its value to. */
  public static Optional<String> nameAt(Cell cell, String field) {
    return fields(cell, Map.of()).stream()
        .flatMap(clause -> clause.lines().stream())
        .filter(line -> line instanceof FieldLine.Stated stated && stated.text().at().equals(field))
        .map(FieldLine::name)
        .findFirst();
  }

  private static Optional<Clause.Fields> fields(Cell cell, Map<String, String> parts) {
    return GIVING.contains(cell.kind()) && clause(cell, parts) instanceof Clause.Fields fields
        ? Optional.of(fields)
        : Optional.empty();
  }

  /** Whether the clause is what it was, for all that the graph reads of it. */
  private static boolean sameValues(ObjectNode before, Cell cell) {
    ObjectNode now = cell.source();
    return before == now
        || cell.kind().equals("table")
            && GIVEN_BY_A_TABLE.stream().allMatch(field -> before.get(field) == now.get(field));
  }

  /** The parts of the register as people call them, by id. */
  private static Map<String, String> parts(InvestigationRecord record) {
    Map<String, String> parts = new HashMap<>();
    for (RegisteredPart part : record.parts()) {
      parts.putIfAbsent(part.id(), part.name().isBlank() ? part.number() : part.name());
    }
    return parts;
  }

  private static Clause clause(Cell cell, Map<String, String> parts) {
    return switch (cell.kind()) {
      case "working" -> new Clause.Working(cell.id(), cell.number(), cell.text());
      case "readings" -> new Clause.Readings(cell.id(), cell.number(), cell.readings());
      case "fits" -> new Clause.Fields(cell.id(), cell.number(), FitLines.of(cell, parts));
      case "table" -> new Clause.Table(cell.id(), cell.number(), TableParts.of(cell.table()));
      case "java" ->
          new Clause.Java(
              cell.id(), cell.number(), cell.source().path("gives").asText(""), cell.text());
      default -> new Clause.Fields(cell.id(), cell.number(), CauseLines.of(cell));
    };
  }

  static GraphSettings settings(Settings settings) {
    UnitSystem system =
        !settings.units().equals("imperial")
            ? UnitSystem.METRIC
            : settings.terms().equals("american") ? UnitSystem.AMERICAN : UnitSystem.IMPERIAL;
    return new GraphSettings(
        system,
        DecisionRule.of(settings.rule()),
        settings.coverage() > 0 ? settings.coverage() : GraphSettings.STANDARD.coverage(),
        settings.stage(),
        Terms.of(settings.terms()));
  }
}
