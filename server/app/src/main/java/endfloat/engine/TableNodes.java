package endfloat.engine;

import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Parser;
import endfloat.working.Span;
import endfloat.working.Working;
import java.util.List;

/** Makes the nodes of what a table gives. */
final class TableNodes {
  private static final Span START = new Span(1, 1, 2);

  private TableNodes() {}

  /**
   * @param place of the part among those of its clause, from 0
   */
  static List<Node> of(String clause, int place, TablePart part) {
    if (part instanceof TablePart.Typed typed) {
      return List.of(new ColumnNode(clause, typed));
    }
    if (part instanceof TablePart.Derived derived) {
      List<Node> nodes = FieldNodes.of(clause, place, derived.line());
      for (Node node : nodes) {
        node.column(true);
        if (node instanceof DefinitionNode column) {
          derived.rows().ifPresent(column::rows);
          column.rowsOf(derived.first());
        }
      }
      return nodes;
    }
    if (part instanceof TablePart.Whole whole) {
      return List.of(new TableNode(clause, whole));
    }
    return List.of(
        part instanceof TablePart.Limit limit
            ? limit(clause, place, limit)
            : wrong(clause, place, (TablePart.Wrong) part));
  }

  private static Node limit(String clause, int place, TablePart.Limit limit) {
    String text = limit.text().replaceAll("\\s", " ");
    FieldPlaces fields = entered("/limits/" + limit.at(), text);
    Piece piece = new Piece(place, text);
    Working working = Parser.parse(text);
    List<LineProblem> errors =
        working.problems().stream()
            .filter(p -> p.severity() == LineProblem.Severity.ERROR)
            .toList();
    if (!errors.isEmpty()) {
      return placed(new BrokenNode(clause, piece, "", errors), fields);
    }
    if (working.lines().size() != 1 || !(working.lines().get(0) instanceof Line.Limit line)) {
      LineProblem none =
          LineProblem.error(
              START,
              "This is no limit.",
              "Write it as limit wear.lash: at most 15 thou \"document, page\".");
      return placed(new BrokenNode(clause, piece, "", List.of(none)), fields);
    }
    Node node = placed(new LimitNode(clause, piece, line), fields);
    node.remarks(working.problems());
    return node;
  }

  private static Node wrong(String clause, int place, TablePart.Wrong part) {
    LineProblem problem = LineProblem.error(START, part.message(), part.wayOut());
    return placed(
        new BrokenNode(clause, new Piece(place, ""), "", List.of(problem)), entered(part.at(), ""));
  }

  private static FieldPlaces entered(String at, String text) {
    return new FieldPlaces(
        text, List.of(new FieldPlaces.Stretch(at, 1, Math.max(2, text.length() + 1))));
  }

  private static Node placed(Node node, FieldPlaces fields) {
    node.fields(fields);
    return node;
  }
}
