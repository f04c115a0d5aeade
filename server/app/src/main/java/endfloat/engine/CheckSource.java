package endfloat.engine;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import endfloat.catalogue.Check;
import endfloat.record.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A published check of a calculation as clauses: its readings, then its lines. */
public final class CheckSource {
  /** Id of the clause that holds the lines. */
  public static final String LINES = "work";

  private CheckSource() {}

  public static GraphSource of(Check check, GraphSettings settings) {
    List<Clause> clauses = new ArrayList<>();
    if (!check.readings().isEmpty()) {
      clauses.add(new Clause.Readings("readings", "1", List.of(reading(check.readings()))));
    }
    clauses.add(new Clause.Working(LINES, "2", check.text()));
    return new GraphSource(clauses, List.of(), settings);
  }

  private static Reading reading(List<Check.Station> stations) {
    Check.Station first = stations.get(0);
    List<Reading.Entry> entries =
        stations.stream()
            .map(s -> new Reading.Entry(s.at(), List.of(s.taken()), "", "", "", Optional.empty()))
            .toList();
    return new Reading(
        first.name(),
        "",
        first.unit(),
        "",
        "",
        "",
        "",
        "",
        List.copyOf(first.at().keySet()),
        entries,
        JsonNodeFactory.instance.objectNode());
  }
}
