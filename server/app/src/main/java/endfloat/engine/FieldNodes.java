package endfloat.engine;

import endfloat.working.Expression;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Parser;
import endfloat.working.Span;
import endfloat.working.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Makes nodes of lines that are entered by fields: the same nodes as those of a working. */
final class FieldNodes {
  private static final Pattern BARE = Pattern.compile("\\s*[-+\u2212]?[0-9]+(?:\\.[0-9]+)?\\s*");
  private static final Span START = new Span(1, 1, 2);

  private final String clause;
  private final int place;

  private FieldNodes(String clause, int place) {
    this.clause = clause;
    this.place = place;
  }

  /**
   * @param place of the line among those of its clause, from 0
   */
  static List<Node> of(String clause, int place, FieldLine line) {
    FieldNodes nodes = new FieldNodes(clause, place);
    if (line instanceof FieldLine.Stated stated) {
      return List.of(nodes.stated(stated));
    }
    if (line instanceof FieldLine.Bounds bounds) {
      return List.of(nodes.bounds(bounds));
    }
    if (line instanceof FieldLine.Unmeasured) {
      return List.of();
    }
    return List.of(
        line instanceof FieldLine.Reaches reaches
            ? nodes.reaches(reaches)
            : nodes.remainder((FieldLine.Remainder) line));
  }

  private Node stated(FieldLine.Stated line) {
    String head = line.unit().isBlank() ? "value" : "value [" + line(line.unit().text()) + "]";
    String entered = withUnit(line.text().text(), line.unit().text());
    String text = head + " = " + entered;
    int unitFrom = "value [".length() + 1;
    int from = head.length() + " = ".length() + 1;
    List<FieldPlaces.Stretch> stretches = new ArrayList<>();
    if (!line.unit().isBlank()) {
      stretches.add(new FieldPlaces.Stretch(line.unit().at(), unitFrom, from));
    }
    stretches.add(new FieldPlaces.Stretch(line.text().at(), from, from + entered.length()));
    Working working = Parser.parse(text);
    Piece piece = new Piece(place, text);
    FieldPlaces fields = new FieldPlaces(line(line.text().text()), stretches);
    List<LineProblem> errors = errors(working.problems());
    if (working.lines().size() != 1 || !(working.lines().get(0) instanceof Line.Definition)) {
      if (errors.isEmpty()) {
        errors = List.of(LineProblem.error(START, "This is no value.", "Write one expression."));
      }
      return placed(new BrokenNode(clause, piece, line.name(), errors), fields);
    }
    if (!errors.isEmpty()) {
      return placed(new BrokenNode(clause, piece, line.name(), errors), fields);
    }
    Line.Definition parsed = (Line.Definition) working.lines().get(0);
    Node node =
        new DefinitionNode(
            clause,
            piece,
            new Line.Definition(
                parsed.span(),
                line.name(),
                parsed.nameSpan(),
                parsed.unit(),
                parsed.value(),
                parsed.solve(),
                parsed.spread(),
                line.title()));
    node.remarks(
        working.problems().stream()
            .filter(p -> p.severity() != LineProblem.Severity.ERROR)
            .toList());
    return placed(node, fields);
  }

  /** Both ends stand in one line, the upper behind the lower, so that every column is one place. */
  private Node bounds(FieldLine.Bounds line) {
    String low = withUnit(line.low().text(), line.unit());
    String between = low.isBlank() ? "" : " .. ";
    String high = withUnit(line.high().text(), line.unit());
    int highFrom = low.length() + between.length();
    Parser.Formula lower = Parser.expression(low.isBlank() ? "0" : low);
    Parser.Formula upper = Parser.expression(" ".repeat(highFrom) + (high.isBlank() ? "0" : high));
    List<FieldPlaces.Stretch> stretches = new ArrayList<>();
    List<LineProblem> errors = new ArrayList<>();
    if (!low.isBlank()) {
      stretches.add(new FieldPlaces.Stretch(line.low().at(), 1, 1 + low.length()));
      errors.addAll(errors(lower.problems()));
    }
    if (!high.isBlank()) {
      stretches.add(
          new FieldPlaces.Stretch(line.high().at(), highFrom + 1, highFrom + 1 + high.length()));
      errors.addAll(errors(upper.problems()));
    }
    String text = low + between + high;
    Piece piece = new Piece(place, text);
    FieldPlaces fields = new FieldPlaces(text, stretches);
    if (!errors.isEmpty()) {
      return placed(BrokenNode.ofLimit(clause, piece, line.decides(), errors), fields);
    }
    Map<String, String> notes = new LinkedHashMap<>();
    note(notes, "condition", line.condition());
    note(notes, "state", line.state());
    note(notes, "rule", line.rule().text());
    Span whole = new Span(1, 1, Math.max(2, text.length() + 1));
    Line.Limit limit =
        new Line.Limit(
            whole,
            new Expression.Place(START, line.name(), List.of()),
            low.isBlank() ? Optional.empty() : lower.expression(),
            high.isBlank() ? Optional.empty() : upper.expression(),
            Optional.empty(),
            line.authority(),
            Map.copyOf(notes),
            "");
    return placed(new LimitNode(clause, piece, limit, line.decides()), fields);
  }

  private Node reaches(FieldLine.Reaches line) {
    Line.Limit limit =
        new Line.Limit(
            START,
            new Expression.Place(START, line.name(), List.of()),
            Optional.of(new Expression.Place(START, line.other(), List.of())),
            Optional.empty(),
            Optional.empty(),
            "",
            Map.of(),
            "");
    return placed(
        new LimitNode(clause, new Piece(place, ""), limit, false),
        new FieldPlaces("", List.of(new FieldPlaces.Stretch(line.at(), 1, 2))));
  }

  private Node remainder(FieldLine.Remainder line) {
    Expression left = new Expression.Place(START, line.of(), List.of());
    for (String one : line.less()) {
      left =
          new Expression.Binary(
              START,
              Expression.BinaryOperator.SUBTRACT,
              left,
              new Expression.Place(START, one, List.of()));
    }
    Optional<Line.DeclaredUnit> unit = Optional.empty();
    if (!line.unit().isBlank()) {
      Working declared = Parser.parse("value [" + line(line.unit().text()) + "] = 0");
      if (declared.lines().size() == 1
          && declared.lines().get(0) instanceof Line.Definition definition) {
        unit = definition.unit();
      }
    }
    Line.Definition definition =
        new Line.Definition(
            START,
            line.name(),
            START,
            unit,
            Optional.of(left),
            Optional.empty(),
            Optional.empty(),
            line.title());
    return placed(
        new DefinitionNode(clause, new Piece(place, ""), definition),
        new FieldPlaces("", List.of(new FieldPlaces.Stretch(line.unit().at(), 1, 2))));
  }

  private static Node placed(Node node, FieldPlaces fields) {
    node.fields(fields);
    return node;
  }

  private static List<LineProblem> errors(List<LineProblem> problems) {
    return problems.stream().filter(p -> p.severity() == LineProblem.Severity.ERROR).toList();
  }

  private static void note(Map<String, String> notes, String name, String text) {
    if (!text.isBlank()) {
      notes.put(name, text.strip());
    }
  }

  /** A field is one line, whatever was pasted into it. */
  private static String line(String text) {
    return text.replaceAll("\\s", " ");
  }

  /** A bare number in a row with a unit is in that unit. */
  private static String withUnit(String text, String unit) {
    String one = line(text);
    return BARE.matcher(one).matches() && !unit.isBlank() ? one.strip() + " " + unit.strip() : one;
  }
}
