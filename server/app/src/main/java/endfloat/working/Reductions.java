package endfloat.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Greatest, mean and the like: of several values, or of one series over its stations. */
final class Reductions {
  /** A plain list has no axes; its elements are counted from 1 under this name. */
  static final String PLACE = "place";

  private static final Set<BuiltIn> OF_SERIES_ONLY =
      Set.of(BuiltIn.SUM, BuiltIn.COUNT, BuiltIn.SD, BuiltIn.QUANTILE, BuiltIn.FIRST, BuiltIn.LAST);

  private final Checking checking;

  Reductions(Checking checking) {
    this.checking = checking;
  }

  /** Arguments of a function that takes any number of values by position. */
  List<Operand> several(Expression.Call call) {
    List<Operand> operands = new ArrayList<>();
    for (Expression.Argument argument : call.arguments()) {
      if (argument.name().isPresent()) {
        throw new KindException(
            argument.span(),
            call.function() + " has no argument \"" + argument.name().get() + "\" here",
            "Give the values one after another");
      }
      Operand operand = checking.operand(argument.value());
      SumRules.numeric(operand);
      operands.add(operand);
    }
    return operands;
  }

  /** One kind for all of them. */
  Kind common(List<Operand> operands) {
    Operand first = operands.get(0);
    Kind kind = first.element();
    for (Operand operand : operands.subList(1, operands.size())) {
      kind = SumRules.common(first, operand, SumRules.Act.TOGETHER);
      first = first.isZero() ? operand : first;
    }
    return kind;
  }

  Typed reduced(Expression.Call call, BuiltIn function) {
    if (call.arguments().isEmpty()) {
      throw new KindException(
          call.nameSpan(), call.function() + " lacks its values", "Write them in the brackets");
    }
    Operand first = checking.operand(call.arguments().get(0).value());
    if (function == BuiltIn.QUANTILE) {
      return ofSeries(call, function, first);
    }
    boolean named =
        call.arguments().subList(1, call.arguments().size()).stream()
            .anyMatch(a -> a.name().isPresent());
    if (named || call.arguments().size() == 1) {
      return ofSeries(call, function, first);
    }
    if (OF_SERIES_ONLY.contains(function)) {
      throw new KindException(
          call.arguments().get(1).span(),
          call.function() + " takes one series",
          "Put the values in a list: " + call.function() + "([...])");
    }
    List<Operand> operands = several(call);
    Kind kind = result(function, common(operands), operands.get(0));
    return new Typed.Apply(
        call.span(),
        SeriesRules.spread(kind, operands),
        function,
        operands.stream().map(Operand::typed).toList());
  }

  private Typed ofSeries(Expression.Call call, BuiltIn function, Operand first) {
    boolean quantile = function == BuiltIn.QUANTILE;
    Given given =
        Given.of(call, quantile ? List.of("x", "share", "over", "by") : List.of("x", "over", "by"));
    if (quantile) {
      given.require(call, List.of("x", "share"));
    }
    if (!(first.kind() instanceof Kind.Series series)) {
      throw new KindException(
          first.span(),
          call.function() + " of one value: this is " + KindWords.a(first.kind()),
          "Give it a series, or several values");
    }
    boolean dates = series.element() instanceof Kind.Date;
    if (!dates
        && function != BuiltIn.COUNT
        && function != BuiltIn.FIRST
        && function != BuiltIn.LAST) {
      SumRules.numeric(first);
    }
    Kind element =
        dates ? DateRules.reduced(function, first) : result(function, series.element(), first);
    List<String> over =
        Optional.ofNullable(given.byName().get("over"))
            .map(a -> axes(a.value(), series))
            .orElse(List.of());
    List<Operand> by =
        Optional.ofNullable(given.byName().get("by"))
            .map(a -> groups(a.value(), first))
            .orElse(List.of());
    if (!by.isEmpty() && !over.isEmpty()) {
      throw new KindException(
          call.span(), call.function() + " goes over an axis or by groups, not both", "Take one");
    }
    Optional<Typed> share =
        Optional.ofNullable(given.byName().get("share"))
            .map(a -> Selections.share(checking.operand(a.value())).typed());
    return new Typed.Reduce(
        call.span(),
        !by.isEmpty()
            ? new Kind.Series(element, Selections.axes(by), List.of())
            : remaining(element, series, over, over.isEmpty()),
        function,
        first.typed(),
        over,
        by.stream().map(Operand::typed).toList(),
        share);
  }

  /** One column, or several in a list: {@code by: [wear.batch, wear.engine]}. */
  private List<Operand> groups(Expression written, Operand of) {
    List<Expression> columns =
        written instanceof Expression.Listing listing ? listing.elements() : List.of(written);
    return columns.stream().map(column -> Selections.beside(of, checking.operand(column))).toList();
  }

  /** The series of what is left when some axes are gone; a scalar when all are. */
  private static Kind remaining(Kind element, Kind.Series series, List<String> gone, boolean all) {
    List<String> axes = new ArrayList<>(series.axes());
    axes.removeAll(gone);
    if (all || axes.isEmpty()) {
      return element;
    }
    List<Integer> places = axes.stream().map(series.axes()::indexOf).toList();
    Set<List<String>> labels = new LinkedHashSet<>();
    for (List<String> station : series.labels()) {
      labels.add(places.stream().map(station::get).toList());
    }
    return new Kind.Series(element, axes, List.copyOf(labels));
  }

  private static List<String> axes(Expression written, Kind.Series series) {
    List<String> names = new ArrayList<>();
    List<Expression> texts =
        written instanceof Expression.Listing listing ? listing.elements() : List.of(written);
    for (Expression text : texts) {
      if (!(text instanceof Expression.Text name)) {
        throw new KindException(
            text.span(),
            "over names an axis as a text",
            "Write over: \"" + series.axes().stream().findFirst().orElse("plane") + "\"");
      }
      names.add(axis(name.text(), name.span(), series));
    }
    return List.copyOf(names);
  }

  /** The axis of that name; {@code row} is the numbered rows of a table, {@code wear.row}. */
  private static String axis(String name, Span span, Kind.Series series) {
    List<String> ofTables =
        series.axes().stream().filter(axis -> axis.endsWith("." + name)).toList();
    if (!series.axes().contains(name) && ofTables.size() == 1) {
      return ofTables.get(0);
    }
    if (!series.axes().contains(name)) {
      throw new KindException(
          span,
          "There is no axis \"" + name + "\" in this series",
          series.axes().isEmpty()
              ? "It is a plain list: write pick(x, place: 2)"
              : Nearest.wayOut(name, series.axes(), "It has " + String.join(", ", series.axes())));
    }
    return name;
  }

  private static Kind result(BuiltIn function, Kind element, Operand operand) {
    return switch (function) {
      case COUNT -> Kinds.NUMBER;
      case RANGE, SD -> element instanceof Kind.Temperature ? Kinds.KELVIN : element;
      case SUM -> {
        if (element instanceof Kind.Temperature) {
          throw new KindException(
              operand.span(),
              "Temperatures are points on a scale and have no sum",
              "Take the mean, or sum differences");
        }
        yield element;
      }
      default -> element;
    };
  }

  Typed pick(Expression.Call call) {
    if (call.arguments().isEmpty() || call.arguments().get(0).name().isPresent()) {
      throw new KindException(
          call.nameSpan(), "pick does not say from what", "Write it as pick(x, cylinder: 3)");
    }
    Operand of = checking.operand(call.arguments().get(0).value());
    Map<String, String> labels = new LinkedHashMap<>();
    Optional<String> stage = Optional.empty();
    List<Expression.Argument> wanted = call.arguments().subList(1, call.arguments().size());
    // the stations of another stage are not those that are known here
    boolean elsewhere =
        !hasAxis(of, "stage")
            && wanted.stream().anyMatch(a -> a.name().filter("stage"::equals).isPresent());
    for (Expression.Argument argument : wanted) {
      String axis =
          argument
              .name()
              .orElseThrow(
                  () ->
                      new KindException(
                          argument.span(),
                          "pick names the axis of each station",
                          "Write it as pick(x, cylinder: 3)"));
      if (axis.equals("stage") && !hasAxis(of, "stage")) {
        stage = Optional.of(stage(of, argument));
      } else if (label(of, axis, argument, elsewhere, labels) != null) {
        throw new KindException(argument.span(), axis + " is given twice", "Give it once");
      }
    }
    if (labels.isEmpty() && stage.isEmpty()) {
      throw new KindException(
          call.nameSpan(), "pick does not say which", "Write it as pick(x, cylinder: 3)");
    }
    return new Typed.Pick(call.span(), picked(of, labels, stage, call), of.typed(), labels, stage);
  }

  private static boolean hasAxis(Operand operand, String axis) {
    return operand.kind() instanceof Kind.Series series && series.axes().contains(axis);
  }

  private static String stage(Operand of, Expression.Argument argument) {
    if (!(of.typed() instanceof Typed.Name)) {
      throw new KindException(
          of.span(), "A stage is that of a reading", "Name the reading alone: pick(x, stage: ...)");
    }
    if (!(argument.value() instanceof Expression.Text text)) {
      throw new KindException(
          argument.value().span(), "A stage is a text", "Write stage: \"as found\"");
    }
    return text.text();
  }

  /** Puts the label wanted on an axis among the others; what was wanted there before, or null. */
  private static String label(
      Operand of,
      String written,
      Expression.Argument argument,
      boolean elsewhere,
      Map<String, String> into) {
    if (!(of.kind() instanceof Kind.Series series)) {
      throw new KindException(
          of.span(),
          "pick chooses stations, and this is " + KindWords.a(of.kind()),
          "Leave pick out");
    }
    Span name = argument.span();
    if (series.axes().isEmpty() && written.equals(PLACE)) {
      return into.put(PLACE, text(argument.value()));
    }
    String axis =
        axis(written, new Span(name.line(), name.from(), name.from() + written.length()), series);
    String label = text(argument.value());
    int place = series.axes().indexOf(axis);
    List<String> known = series.labels().stream().map(l -> l.get(place)).distinct().toList();
    if (!elsewhere && !known.isEmpty() && !known.contains(label)) {
      throw new KindException(
          argument.value().span(),
          "There is no " + axis + " " + label + " in this series",
          "It has " + String.join(", ", known.subList(0, Math.min(known.size(), 12))));
    }
    return into.put(axis, label);
  }

  private static String text(Expression written) {
    if (written instanceof Expression.Text text) {
      return text.text();
    }
    if (Operand.isBareLiteral(written)) {
      return Operand.digits(written);
    }
    throw new KindException(
        written.span(),
        "A station is a number or a text as the reading has it",
        "Write 3 or \"top\"");
  }

  private static Kind picked(
      Operand of, Map<String, String> labels, Optional<String> stage, Expression.Call call) {
    if (!(of.kind() instanceof Kind.Series series)) {
      return of.kind();
    }
    if (series.axes().isEmpty() && labels.containsKey(PLACE)) {
      return series.element();
    }
    Kind.Series all =
        stage.isPresent() ? new Kind.Series(series.element(), series.axes(), List.of()) : series;
    List<List<String>> left =
        all.labels().stream()
            .filter(
                station ->
                    labels.entrySet().stream()
                        .allMatch(
                            l -> station.get(all.axes().indexOf(l.getKey())).equals(l.getValue())))
            .toList();
    if (!all.labels().isEmpty() && left.isEmpty()) {
      throw new KindException(
          call.span(), "No station has all of these labels", "Check them against the reading");
    }
    return remaining(
        all.element(),
        new Kind.Series(all.element(), all.axes(), left),
        List.copyOf(labels.keySet()),
        false);
  }
}
