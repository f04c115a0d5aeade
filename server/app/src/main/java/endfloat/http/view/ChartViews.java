package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.picture.ChartPicture;
import java.util.List;

/** A chart as the page shows it: the picture and its numbers as text. */
final class ChartViews {
  private ChartViews() {}

  /**
   * {@code {svg, description, heads, rows, notes, problem?: {at, message, wayOut, severity, ...}}}.
   */
  static ObjectNode of(ChartPicture picture) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("svg", picture.svg()).put("description", picture.description());
    texts(picture.heads(), view.putArray("heads"));
    ArrayNode rows = view.putArray("rows");
    picture.rows().forEach(row -> texts(row, rows.addArray()));
    texts(picture.notes(), view.putArray("notes"));
    picture
        .problem()
        .ifPresent(
            problem ->
                view.set(
                    "problem", ProblemViews.view(problem.problem()).put("at", problem.field())));
    return view;
  }

  private static void texts(List<String> texts, ArrayNode into) {
    texts.forEach(into::add);
  }

  /** What is wrong with it, as a problem of its clause. */
  static List<ClauseProblem> problems(String clause, ChartPicture picture) {
    return picture
        .problem()
        .map(p -> List.of(new ClauseProblem(clause, p.field(), p.problem())))
        .orElse(List.of());
  }
}
