package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.FitSchedule;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.LimitShown;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rows of a schedule of fits as the page shows them: limits in the unit shown, and advice. */
final class FitViews {
  private final InvestigationRecord record;
  private final ValueGraph graph;

  FitViews(InvestigationRecord record, ValueGraph graph) {
    this.record = record;
    this.graph = graph;
  }

  /** {@code {rows: [{figure, new, worn, standing, advice, sizes: [...]}]}}. */
  ObjectNode of(Cell cell) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    ArrayNode rows = view.putArray("rows");
    for (FitSchedule.Standing standing : FitSchedule.of(cell, graph)) {
      ObjectNode row = rows.addObject();
      measured(standing.figure(), standing.asNew(), row);
      row.put("advice", advice(standing));
      ArrayNode sizes = row.putArray("sizes");
      for (FitSchedule.SizeStanding size : standing.sizes()) {
        ObjectNode one = sizes.addObject();
        measured(size.figure(), size.asNew(), one);
        size.used()
            .ifPresent(used -> one.put("used", String.format(Locale.ROOT, "%.0f %%", 100 * used)));
      }
    }
    return view;
  }

  private void measured(String name, Optional<Judgement> asNew, ObjectNode into) {
    into.put("figure", name);
    Optional<Figure> figure = graph.figure(name);
    if (figure.isEmpty()) {
      return;
    }
    GraphSettings settings = graph.source().settings();
    Unit unit = FigureUnit.of(figure.get(), settings);
    asNew.ifPresent(limits -> into.set("new", ends(limits, unit)));
    for (Judgement deciding : figure.get().judgements()) {
      into.set(deciding.state().equals("new") ? "new" : "worn", ends(deciding, unit));
    }
    // used, and still as a new part may be; or worn, though not too much
    Optional<Verdict> verdict = figure.get().verdict();
    if (asNew.isPresent() && verdict.filter(Verdict.WITHIN::equals).isPresent()) {
      boolean fresh = asNew.get().verdict() == Verdict.WITHIN;
      into.put("standing", fresh ? "as new" : "worn, may stay");
    }
  }

  private static ObjectNode ends(Judgement limit, Unit unit) {
    LimitShown ends = LimitShown.of(limit, unit);
    return JsonNodeFactory.instance
        .objectNode()
        .put("low", ends.low())
        .put("high", ends.high())
        .put("unit", ends.unit());
  }

  private String advice(FitSchedule.Standing standing) {
    FitSchedule.Renewal renewal = standing.renewal();
    List<String> names =
        renewal.sizes().stream().map(at -> name(standing.row().sizes().get(at).of(), at)).toList();
    String parts = String.join(" and ", names);
    return switch (renewal.advice()) {
      case NONE -> "";
      case PAST_LIMIT ->
          "Renew "
              + parts
              + ": past "
              + (names.size() > 1 ? "their worn limits." : "its worn limit.");
      case WORN_BUT_FIT_HOLDS ->
          "The fit holds, though "
              + parts
              + (names.size() > 1 ? " are past their own worn limits." : " is past its own.")
              + " It may stay only where the authority lets either part wear while the fit holds.";
      case MORE_WORN ->
          "Fit out, both parts in. Renew "
              + parts
              + ": it has used more of its wear allowance ("
              + used(standing)
              + ").";
      case NOT_DECIDED ->
          "Fit out. Which part to renew cannot be told from the sizes entered here.";
    };
  }

  private String used(FitSchedule.Standing standing) {
    List<FitSchedule.SizeStanding> sizes = standing.sizes();
    return java.util.stream.IntStream.range(0, sizes.size())
        .mapToObj(
            at ->
                String.format(
                    Locale.ROOT,
                    "%s %.0f %%",
                    name(sizes.get(at).size().of(), at),
                    100 * sizes.get(at).used().orElse(0)))
        .collect(Collectors.joining(", "));
  }

  /** A part by its name in the register. */
  private String name(String part, int at) {
    return record.parts().stream()
        .filter(one -> one.id().equals(part))
        .map(one -> one.name().isBlank() ? one.number() : one.name())
        .filter(name -> !name.isBlank())
        .findFirst()
        .orElse(part.isBlank() ? "part " + (at + 1) : part);
  }
}
