package endfloat.picture;

import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.LimitShown;
import endfloat.engine.Question;
import endfloat.engine.QuestionRefusedException;
import endfloat.engine.Shown;
import endfloat.engine.Sweep;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.picture.AgainstDrawing.Crossing;
import endfloat.picture.AgainstDrawing.Edge;
import endfloat.picture.AgainstDrawing.Point;
import endfloat.record.ChartClause;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A result against one input or reading: the curve, its uncertainty, and where it meets limits. */
final class AgainstChart {
  private static final int POINTS = 41;

  private final ChartClause clause;
  private final ValueGraph graph;
  private final GraphSettings settings;
  private final Question asked;
  private final Sweep sweep;
  private final Unit unit;
  private final Unit inputUnit;
  private final List<String> notes = new ArrayList<>();

  AgainstChart(ChartClause clause, ValueGraph graph) {
    this.clause = clause;
    this.graph = graph;
    this.settings = graph.settings();
    this.asked = Question.of(graph, "/of", clause.of());
    this.sweep = Sweep.of(asked, "/input", clause.input());
    this.unit = FigureUnit.of(asked, settings);
    this.inputUnit = FigureUnit.of(sweep.inputUnit(), sweep.inputKind(), settings);
  }

  ChartPicture.Drawn drawn(Runnable between) {
    double from = end("/from", clause.from());
    double to = end("/to", clause.to());
    if (!(from < to)) {
      throw Question.refused(
          "/to", "The chart ends where it begins, or before.", "Write the lower end first.");
    }
    int points = clause.points() < 2 ? POINTS : clause.points();
    List<Point> curve = new ArrayList<>();
    Optional<QuestionRefusedException> missing = Optional.empty();
    for (int i = 0; i < points; i++) {
      between.run();
      double x = i == points - 1 ? to : from + (to - from) * i / (points - 1);
      try {
        curve.add(point(sweep.at(x)));
      } catch (QuestionRefusedException e) {
        missing = Optional.of(e);
        curve.add(null);
      }
    }
    if (curve.stream().filter(p -> p != null).count() < 2) {
      throw missing.orElseThrow();
    }
    missing.ifPresent(e -> notes.add("Part of the curve has no value: " + e.problem().message()));
    List<Edge> edges = edges();
    List<Crossing> crossings = crossings(curve, edges);
    Optional<Point> now = now(from, to);
    String title = clause.of().strip() + " against " + sweep.name();
    AgainstDrawing drawing =
        new AgainstDrawing(
            curve,
            edges,
            crossings,
            now,
            verdict(),
            new AgainstDrawing.Words(
                clause.of().strip() + suffix(unit),
                sweep.name() + suffix(inputUnit),
                now.map(p -> "now " + text(p.si(), p.expanded())).orElse(""),
                description(title, curve, edges, crossings, now)));
    drawing.leftOut().forEach(edge -> notes.add("The " + edge.words() + " lies beyond the chart."));
    notes.add(
        "Band: expanded uncertainty, k = "
            + plain(settings.coverage())
            + "; "
            + sweep.name()
            + " at each place with the uncertainty that it has now. Hatching: outside the limits.");
    return new ChartPicture.Drawn(
        drawing.svg(),
        description(title, curve, edges, crossings, now),
        List.of(sweep.name(), clause.of().strip()),
        rows(drawing.ticks(), crossings, now),
        List.copyOf(notes));
  }

  private static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private static String suffix(Unit unit) {
    return unit.print().equals("1") ? "" : ", " + unit.print();
  }

  /** An end of the axis, in SI; a bare number is in the unit of the input. */
  private double end(String field, String text) {
    if (text.isBlank()) {
      throw Question.refused(field, "The chart has no end here.", "Write a value with its unit.");
    }
    boolean bare = text.strip().matches("[-\u2212]?[0-9]+(?:\\.[0-9]+)?");
    String symbol = sweep.inputUnit().map(Unit::symbol).orElse("1");
    Question question =
        Question.of(graph, field, bare && !symbol.equals("1") ? text.strip() + " " + symbol : text);
    if (!sameKind(question.kind(), sweep.inputKind().orElseThrow())) {
      throw Question.refused(
          field,
          "This is not of the same kind as " + sweep.name() + ".",
          "Write a value in " + inputUnit.print() + ".");
    }
    return question.number().si();
  }

  private static boolean sameKind(Kind a, Kind b) {
    return a instanceof Kind.Quantity x && b instanceof Kind.Quantity y
        ? x.dimension().same(y.dimension())
        : a.getClass() == b.getClass();
  }

  private Point point(Sweep.Point at) {
    double expanded = settings.expanded(at.standardUncertainty(), at.degreesOfFreedom());
    double half = Math.abs(unit.interval().fromSi(expanded));
    return new Point(inputUnit.fromSi(at.x()), unit.fromSi(at.value()), half, at.value(), expanded);
  }

  private List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    List<Judgement> limits = sweep.limits();
    if (limits.size() < asked.judgements().size()) {
      notes.add("A limit that moves with " + sweep.name() + " is not drawn.");
    }
    for (Judgement limit : limits) {
      LimitShown ends = LimitShown.of(limit, unit);
      String of = limit.condition().isEmpty() ? "" : ", " + limit.condition();
      if (!Double.isNaN(limit.low())) {
        String text = ends.low();
        edges.add(
            new Edge(
                unit.fromSi(limit.low()), limit.low(), text, "lower limit " + text + of, false));
      }
      if (!Double.isNaN(limit.high())) {
        String text = ends.high();
        edges.add(
            new Edge(
                unit.fromSi(limit.high()), limit.high(), text, "upper limit " + text + of, true));
      }
    }
    return edges;
  }

  private List<Crossing> crossings(List<Point> curve, List<Edge> edges) {
    List<Crossing> crossings = new ArrayList<>();
    for (Edge edge : edges) {
      for (int i = 1; i < curve.size(); i++) {
        Point a = curve.get(i - 1);
        Point b = curve.get(i);
        if (a == null || b == null) {
          continue;
        }
        double before = a.si() - edge.si();
        double after = b.si() - edge.si();
        if (before == 0 ? i == 1 && after != 0 : before < 0 != after < 0 || after == 0) {
          crossing(edge, inputUnit.toSi(a.x()), inputUnit.toSi(b.x())).ifPresent(crossings::add);
        }
      }
    }
    return crossings;
  }

  /** Between two places by halving, so that nothing is asked of the shape but that it crosses. */
  private Optional<Crossing> crossing(Edge edge, double low, double high) {
    try {
      boolean rises = sweep.at(high).value() > edge.si();
      double a = low;
      double b = high;
      for (int i = 0; i < 60 && b - a > 1e-13 * Math.max(Math.abs(a), Math.abs(b)); i++) {
        double middle = (a + b) / 2;
        boolean above = sweep.at(middle).value() > edge.si();
        a = above == rises ? a : middle;
        b = above == rises ? middle : b;
      }
      Sweep.Point at = sweep.at((a + b) / 2);
      double expanded =
          at.slope() == 0
              ? Double.NaN
              : Math.abs(
                  settings.expanded(at.standardUncertainty(), at.degreesOfFreedom()) / at.slope());
      double half = Math.abs(inputUnit.interval().fromSi(expanded));
      boolean stated = Double.isFinite(half);
      Shown shown = Shown.expanded(at.x(), stated ? expanded : 0, inputUnit);
      return Optional.of(
          new Crossing(
              edge,
              inputUnit.fromSi(at.x()),
              stated ? half : 0,
              "passes " + edge.text() + " at " + shown.text()));
    } catch (QuestionRefusedException e) {
      return Optional.empty();
    }
  }

  private Optional<Point> now(double from, double to) {
    double x = sweep.now().si();
    return x < from || x > to ? Optional.empty() : Optional.of(point(sweep.at(x)));
  }

  private Optional<Verdict> verdict() {
    return asked.place().flatMap(p -> graph.figure(p.name())).flatMap(Figure::verdict);
  }

  private String text(double si, double expanded) {
    return Shown.expanded(si, expanded, unit).text();
  }

  private String at(double x) {
    return Shown.of(inputUnit.toSi(x), 0, inputUnit, settings).text();
  }

  private String description(
      String title,
      List<Point> curve,
      List<Edge> edges,
      List<Crossing> crossings,
      Optional<Point> now) {
    List<Point> there = curve.stream().filter(p -> p != null).toList();
    Point first = there.get(0);
    Point last = there.get(there.size() - 1);
    StringBuilder words = new StringBuilder(title);
    words
        .append(": ")
        .append(text(first.si(), first.expanded()))
        .append(" at ")
        .append(at(first.x()));
    words.append(", ").append(text(last.si(), last.expanded())).append(" at ").append(at(last.x()));
    now.ifPresent(
        p ->
            words
                .append("; now ")
                .append(text(p.si(), p.expanded()))
                .append(" at ")
                .append(at(p.x())));
    edges.forEach(edge -> words.append("; ").append(edge.words()));
    crossings.forEach(crossing -> words.append("; ").append(crossing.words()));
    return words.append('.').toString();
  }

  private List<List<String>> rows(
      List<BigDecimal> ticks, List<Crossing> crossings, Optional<Point> now) {
    List<List<String>> rows = new ArrayList<>();
    for (BigDecimal tick : ticks) {
      double x = inputUnit.toSi(tick.toPlainString());
      String result;
      try {
        Sweep.Point point = sweep.at(x);
        result =
            text(
                point.value(),
                settings.expanded(point.standardUncertainty(), point.degreesOfFreedom()));
      } catch (QuestionRefusedException e) {
        result = e.problem().message();
      }
      rows.add(List.of(Shown.of(x, 0, inputUnit, settings).text(), result));
    }
    now.ifPresent(p -> rows.add(List.of("now " + at(p.x()), text(p.si(), p.expanded()))));
    crossings.forEach(c -> rows.add(List.of(c.words(), c.edge().words())));
    return rows;
  }
}
