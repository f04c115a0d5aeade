package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * In which order and choice the rows of a table are shown. It changes no figure.
 *
 * @param sort heads, most important first; {@code lash down} for the greatest first
 * @param filter condition of the working language; empty shows every row
 * @param group heads of the columns whose equal values stand together
 */
public record TableOrder(List<String> sort, String filter, List<String> group) {

  static TableOrder of(JsonNode view) {
    return new TableOrder(
        Texts.list(view, "sort"), Texts.text(view, "filter"), Texts.list(view, "group"));
  }
}
