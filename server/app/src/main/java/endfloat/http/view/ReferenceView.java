package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Check;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Part;
import endfloat.catalogue.Result;
import endfloat.catalogue.Titles;
import endfloat.catalogue.ValidRange;
import endfloat.definition.Default;
import endfloat.engine.GraphSettings;
import endfloat.engine.Shown;
import endfloat.picture.drawing.Drawings;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitPreference;
import endfloat.units.UnitSystem;
import endfloat.units.UnitTable;
import endfloat.working.CatalogueSearch;
import endfloat.working.Line;
import endfloat.working.Parser;
import endfloat.working.Terms;
import endfloat.working.TradeWords;
import endfloat.working.typeset.Typeset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The catalogue as the reference page shows it: in one system of units, in one country's words. */
public final class ReferenceView {
  private final Catalogue catalogue;
  private final CatalogueSearch search;
  private final Typeset typeset;

  public ReferenceView(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.search = new CatalogueSearch(catalogue);
    this.typeset = new Typeset(catalogue);
  }

  /**
   * How it is read.
   *
   * @param units whose units stand first
   * @param terms whose words are used
   */
  public record Reader(UnitSystem units, Terms terms) {

    /** By the words of an address: {@code imperial}, {@code american}; all else is the other. */
    public static Reader of(String units, String terms) {
      Terms side = Terms.of(terms);
      UnitSystem system =
          !"imperial".equals(units)
              ? UnitSystem.METRIC
              : side == Terms.AMERICAN ? UnitSystem.AMERICAN : UnitSystem.IMPERIAL;
      return new Reader(system, side);
    }

    GraphSettings settings() {
      GraphSettings standard = GraphSettings.STANDARD;
      return new GraphSettings(
          units, standard.rule(), standard.coverage(), standard.stage(), terms);
    }
  }

  /**
   * {@code {calculations: [{name, subject, title, heading, summary}], meant: [{typed, also}],
   * total}}, the best found first, or by subject where nothing is looked for.
   */
  public ObjectNode list(String typed, Reader reader) {
    ObjectNode view = JsonNodeFactory.instance.objectNode().put("total", catalogue.all().size());
    ArrayNode list = view.putArray("calculations");
    List<Calculation> found = search.find(typed);
    if (typed.isBlank()) {
      found =
          found.stream()
              .sorted(
                  Comparator.comparingInt((Calculation one) -> Subjects.place(one.subject()))
                      .thenComparingInt(one -> Titles.place(one.name())))
              .toList();
    }
    for (Calculation one : found) {
      ObjectNode entry = list.addObject().put("name", one.name()).put("subject", one.subject());
      entry.put("title", Subjects.title(one.subject()));
      entry.put("heading", reader.terms().say(Titles.of(one.name())));
      entry.put("summary", reader.terms().say(one.summary()));
      texts(entry, "terms", one.terms());
    }
    ArrayNode meant = view.putArray("meant");
    TradeWords.otherwise(typed)
        .forEach((word, also) -> texts(meant.addObject().put("typed", word), "also", also));
    ArrayNode tables = view.putArray("tables");
    LookupTables.TITLES.forEach(
        (name, title) ->
            tables.addObject().put("name", name).put("title", reader.terms().say(title)));
    return view;
  }

  /** One calculation with its worked example worked out now. */
  public ObjectNode of(Calculation calculation, Reader reader) {
    ObjectNode view = CatalogueView.of(catalogue, calculation);
    Terms terms = reader.terms();
    view.put("title", Subjects.title(calculation.subject()));
    view.put("heading", terms.say(Titles.of(calculation.name())));
    view.put("summary", terms.say(calculation.summary()));
    view.put("description", terms.say(calculation.description()));
    view.put("nameMath", Typeset.name(calculation.name()));
    formula(calculation).ifPresent(math -> view.put("formulaMath", math));
    Drawings.of(calculation.name())
        .ifPresent(drawing -> view.put("drawing", terms.say(drawing.caption())));
    texts(view, "cautions", calculation.cautions().stream().map(terms::say).toList());
    ArrayNode parameters = view.putArray("parameters");
    calculation.parameters().forEach(one -> parameters.add(parameter(one, reader)));
    ArrayNode results = view.putArray("results");
    calculation.results().forEach(one -> results.add(result(one, reader)));
    view.put("line", CallText.line(calculation)).put("stops", CallText.stops(calculation));
    List<Check> checks = catalogue.checks(calculation.name());
    if (!checks.isEmpty()) {
      view.set("example", ExampleView.of(checks.get(0), reader.settings()));
    }
    return view;
  }

  private Optional<String> formula(Calculation calculation) {
    return calculation
        .formula()
        .map(text -> Parser.parse("value = " + text).lines())
        .filter(lines -> lines.size() == 1 && lines.get(0) instanceof Line.Definition)
        .map(lines -> typeset.formula(lines.get(0)));
  }

  static ObjectNode parameter(Parameter parameter, Reader reader) {
    ObjectNode view = CatalogueView.parameter(parameter);
    view.put("symbol", Typeset.name(parameter.name()));
    view.put("description", reader.terms().say(parameter.description()));
    Optional<Unit> shown = shown(parameter.unit(), reader);
    shown.ifPresent(unit -> view.put("unit", unit.print()));
    parameter.range().ifPresent(range -> view.put("range", text(range, shown)));
    parameter
        .fallback()
        .filter(Default.NOT_GIVEN::equals)
        .ifPresent(none -> view.put("default", "may be left out"));
    parameter.part().ifPresent(part -> view.set("part", part(part, reader)));
    return view;
  }

  private static ObjectNode part(Part part, Reader reader) {
    ObjectNode view = JsonNodeFactory.instance.objectNode().put("name", part.name());
    ArrayNode components = view.putArray("components");
    part.components().forEach(one -> components.add(parameter(one, reader)));
    return view;
  }

  private static ObjectNode result(Result result, Reader reader) {
    ObjectNode view = CatalogueView.result(result);
    if (!result.name().isEmpty()) {
      view.put("symbol", Typeset.name(result.name()));
    }
    view.put("description", reader.terms().say(result.description()));
    shown(result.unit(), reader).ifPresent(unit -> view.put("unit", unit.print()));
    return view;
  }

  /** The unit on this side; empty for texts, pure numbers and unit variables. */
  private static Optional<Unit> shown(String unit, Reader reader) {
    if (unit.isEmpty() || unit.equals("1") || unit.startsWith("<")) {
      return Optional.empty();
    }
    try {
      return Optional.of(UnitPreference.shown(UnitTable.find(unit), reader.units()));
    } catch (UnitException e) {
      return Optional.empty();
    }
  }

  /** A range as it is defined, or in the unit shown where that is another. */
  private static String text(ValidRange range, Optional<Unit> shown) {
    if (shown.isEmpty() || range.text().endsWith(" " + shown.get().symbol())) {
      return range.text();
    }
    Unit unit = shown.get();
    boolean low = !Double.isInfinite(range.least());
    boolean high = !Double.isInfinite(range.greatest());
    String least = low ? Shown.withUnit(range.least(), unit) : "";
    String greatest = high ? Shown.withUnit(range.greatest(), unit) : "";
    if (low && high) {
      return (range.leastIncluded() ? "" : "> ")
          + least
          + " .. "
          + (range.greatestIncluded() ? "" : "< ")
          + greatest;
    }
    return low
        ? (range.leastIncluded() ? ">= " : "> ") + least
        : (range.greatestIncluded() ? "<= " : "< ") + greatest;
  }

  private static void texts(ObjectNode view, String field, List<String> texts) {
    ArrayNode into = view.putArray(field);
    texts.forEach(into::add);
  }
}
