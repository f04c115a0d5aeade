package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.PlacedLines;
import endfloat.engine.SeriesText;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.typeset.Typeset;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Figures as the page shows them. */
final class FigureViews {
  /** Strips of all stations are drawn up to here; beyond, only that of the worst. */
  private static final int MOST_STRIPS = 12;

  /** Of a series of more values only the worst is sent, and how many there are. */
  private static final int MOST_ELEMENTS = 200;

  private final GraphSettings settings;
  private final PlacedLines lines;
  private final LimitViews limits;

  FigureViews(GraphSettings settings, PlacedLines lines) {
    this.settings = settings;
    this.lines = lines;
    this.limits = new LimitViews(settings);
  }

  ObjectNode view(Figure figure) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("name", figure.name()).put("cell", figure.clause());
    String set = Typeset.nameHtml(figure.name());
    if (figure.name().indexOf('.') < 0 && !set.equals(figure.name())) {
      view.put("set", set);
    }
    view.put("line", figure.span().line());
    view.put("state", figure.state().name().toLowerCase(Locale.ROOT));
    view.put("kind", figure.kind().map(FigureViews::word).orElse(""));
    view.put("verdict", word(figure.verdict()));
    if (!figure.given().isEmpty()) {
      // a name with a point is nobody's word for it: the field says what it is
      view.put(figure.name().indexOf('.') < 0 ? "given" : "title", figure.given());
    }
    figure.value().ifPresent(value -> value(figure, value, view));
    figure.problem().ifPresent(problem -> problem(problem, view));
    if (!figure.waitingOn().isEmpty()) {
      waiting(figure.waitingOn(), view.putArray("waitingOn"));
    }
    if (!figure.hints().isEmpty()) {
      ArrayNode hints = view.withArray("hints");
      figure.hints().forEach(hint -> hints.add(ProblemViews.view(hint)));
    }
    return view;
  }

  /**
   * What stands for a figure in running text: {@code 0.335 mm}; empty where it has no value.
   *
   * @param fields of a record of results, as in {@code fit.pressure}
   */
  Optional<String> text(Figure figure, List<String> fields) {
    if (fields.isEmpty()) {
      return figure.value().flatMap(value -> text(figure, value));
    }
    return figure.elements().stream()
        .filter(element -> element.field().equals(fields.get(0)))
        .findFirst()
        .flatMap(
            element ->
                Shown.of(figure, element, settings)
                    .map(FigureViews::withUnit)
                    .or(() -> words(element.value())));
  }

  private Optional<String> text(Figure figure, Value value) {
    if (value instanceof Value.Series && figure.elements().size() > MOST_ELEMENTS) {
      return Optional.of(figure.elements().size() + " values");
    }
    if (value instanceof Value.Series series && !figure.elements().isEmpty()) {
      return Optional.of(withUnit(inOnePlace(figure, series)));
    }
    return Shown.of(figure, settings).map(FigureViews::withUnit).or(() -> words(value));
  }

  private Shown inOnePlace(Figure figure, Value.Series series) {
    List<Shown> shown =
        figure.elements().stream()
            .flatMap(element -> Shown.of(figure, element, settings).stream())
            .toList();
    return SeriesText.of(
        series, figure.elements().stream().map(Figure.Element::value).toList(), shown);
  }

  private static Optional<String> words(Value value) {
    if (value instanceof Value.Words words) {
      return Optional.of(words.text());
    }
    if (value instanceof Value.Truth truth) {
      return Optional.of(truth.holds() ? "yes" : "no");
    }
    if (value instanceof Value.Fields fields) {
      return Optional.of(fields.names().size() + " results");
    }
    return Optional.empty();
  }

  private static String withUnit(Shown shown) {
    return withUnit(shown.value(), shown.unit());
  }

  private static String withUnit(String value, String unit) {
    return unit.isEmpty() ? value : unit.equals("°") ? value + unit : value + " " + unit;
  }

  private void value(Figure figure, Value value, ObjectNode view) {
    if (value instanceof Value.Scalar) {
      Shown shown = Shown.of(figure, settings).orElseThrow();
      shown(shown, view);
      LimitViews.Judged judged =
          new LimitViews.Judged(
              figure.si(),
              settings.expanded(figure.standardUncertainty(), figure.degreesOfFreedom()),
              FigureUnit.of(figure, settings),
              shown);
      limits(figure.name(), figure.judgements(), judged, true, view);
    } else if (value instanceof Value.Series || value instanceof Value.Fields) {
      if (figure.elements().size() > MOST_ELEMENTS) {
        worstOnly(figure, view);
        return;
      }
      elements(figure, view);
      if (value instanceof Value.Series series) {
        shown(inOnePlace(figure, series), view);
      }
    }
    words(value).ifPresent(words -> view.put("value", words));
  }

  private static void shown(Shown shown, ObjectNode view) {
    view.put("value", shown.value()).put("unit", shown.unit());
    if (!shown.uncertainty().isEmpty()) {
      view.put("u", shown.uncertainty());
    }
  }

  private void limits(
      String figure,
      List<Judgement> judgements,
      LimitViews.Judged judged,
      boolean drawn,
      ObjectNode view) {
    if (!judgements.isEmpty()) {
      ArrayNode list = view.putArray("limits");
      Optional<Judgement> asNew = drawn ? lines.asNew(figure) : Optional.empty();
      judgements.forEach(limit -> list.add(limits.view(limit, judged, drawn, asNew)));
    }
  }

  private void elements(Figure figure, ObjectNode view) {
    ArrayNode list = view.putArray("elements");
    Figure.Element worst = figure.worstElement().orElse(null);
    boolean all = figure.elements().size() <= MOST_STRIPS;
    int index = 0;
    for (Figure.Element element : figure.elements()) {
      if (element == worst) {
        view.put("worstElement", index);
      }
      list.add(element(figure, element, all || element == worst));
      index++;
    }
  }

  /** A long series: its worst element, how many there are, and how many have which verdict. */
  private void worstOnly(Figure figure, ObjectNode view) {
    ArrayNode list = view.putArray("elements");
    int count = figure.elements().size();
    view.put("count", count).put("value", count + " values");
    Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
    if (figure.judgements().size() <= count) {
      figure.judgements().forEach(one -> verdicts.merge(one.verdict(), 1, Integer::sum));
    } else {
      figure
          .elements()
          .forEach(e -> e.verdict().ifPresent(v -> verdicts.merge(v, 1, Integer::sum)));
    }
    figure
        .worstElement()
        .ifPresent(
            worst -> {
              view.put("worstElement", 0);
              list.add(element(figure, worst, true));
            });
    if (!verdicts.isEmpty()) {
      ObjectNode counts = view.putObject("counts");
      verdicts.forEach((verdict, many) -> counts.put(verdict.word(), many));
    }
  }

  private ObjectNode element(Figure figure, Figure.Element element, boolean drawn) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    if (!element.field().isEmpty()) {
      view.put("field", element.field());
    }
    ObjectNode labels = view.putObject("labels");
    element.labels().forEach(labels::put);
    view.put("verdict", word(element.verdict()));
    Optional<Shown> shown = Shown.of(figure, element, settings);
    if (shown.isPresent() && element.value() instanceof Value.Scalar scalar) {
      shown(shown.get(), view);
      LimitViews.Judged judged =
          new LimitViews.Judged(
              scalar.si(),
              settings.expanded(element.standardUncertainty(), element.degreesOfFreedom()),
              FigureUnit.of(figure, element, settings),
              shown.get());
      limits(figure.name(), element.judgements(), judged, drawn, view);
    } else if (element.value() instanceof Value.Series series) {
      listed(figure, element, series, view);
    } else {
      words(element.value()).ifPresent(words -> view.put("value", words));
    }
    return view;
  }

  /** A list among the results of a calculation: written out where it is short. */
  private void listed(Figure figure, Figure.Element element, Value.Series series, ObjectNode view) {
    shown(SeriesText.of(series, FigureUnit.of(figure, element, settings)), view);
  }

  private static void problem(LineProblem problem, ObjectNode view) {
    if (problem.severity() == LineProblem.Severity.ERROR) {
      view.set("error", ProblemViews.view(problem));
    } else {
      view.withArray("hints").add(ProblemViews.view(problem));
    }
  }

  private static void waiting(List<Figure.Waiting> on, ArrayNode list) {
    for (Figure.Waiting one : on) {
      list.addObject()
          .put("name", one.name())
          .put("cell", one.clause())
          .put("label", one.label())
          .put("line", one.line());
    }
  }

  static String word(Optional<Verdict> verdict) {
    return verdict.map(Verdict::word).orElse("");
  }

  private static String word(Kind kind) {
    if (kind instanceof Kind.Quantity) {
      return "quantity";
    }
    if (kind instanceof Kind.Temperature) {
      return "temperature";
    }
    if (kind instanceof Kind.Series) {
      return "series";
    }
    if (kind instanceof Kind.Words || kind instanceof Kind.Date) {
      return "text";
    }
    return kind instanceof Kind.Truth ? "truth" : "record";
  }
}
