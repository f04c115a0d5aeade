package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.StringJoiner;

/**
 * A place in the tree as a reader finds it on the sheet.
 *
 * @param where {@code clause 2.1, reading lash, entry 3}; empty at the top
 * @param field the field there; empty where the place is a thing of its own
 */
record Place(String where, String field) {

  static Place of(JsonNode tree, List<String> steps) {
    StringJoiner where = new StringJoiner(", ");
    String clause = "";
    String field = "";
    JsonNode node = tree;
    int i = 0;
    while (i < steps.size()) {
      String step = steps.get(i);
      node = node.path(step);
      boolean element = node.isArray() && i + 1 < steps.size() && isIndex(steps.get(i + 1));
      if (!element) {
        if (!field.isEmpty()) {
          where.add(field.replace('_', ' '));
        }
        field = step;
        i++;
        continue;
      }
      int index = Integer.parseInt(steps.get(i + 1));
      node = node.path(index);
      i += 2;
      if (step.equals("cells")) {
        clause += (clause.isEmpty() ? "" : ".") + (index + 1);
        if (i >= steps.size() || !steps.get(i).equals("cells")) {
          where.add("clause " + clause);
        }
      } else if (node.isContainerNode() || isThing(step)) {
        where.add(thing(step, index, node));
      } else {
        // an element of a list of texts goes by the name of the list
        field = step;
      }
    }
    return new Place(where.toString(), field);
  }

  private static boolean isThing(String field) {
    return switch (field) {
      case "readings",
          "entries",
          "instruments",
          "materials",
          "parts",
          "figures",
          "remarks",
          "limits" ->
          true;
      default -> false;
    };
  }

  private static String thing(String list, int index, JsonNode node) {
    return switch (list) {
      case "readings" -> named("reading", Texts.text(node, "name"), index);
      case "figures" -> named("result", Texts.text(node, "name"), index);
      case "instruments" -> named("instrument", Texts.text(node, "id"), index);
      case "materials" -> named("material", Texts.text(node, "name"), index);
      case "parts" -> named("part", Texts.text(node, "id"), index);
      case "entries" -> "entry " + (index + 1);
      case "remarks" -> "remark " + (index + 1);
      case "limits" -> "limit " + (index + 1);
      default -> list.replace('_', ' ') + " " + (index + 1);
    };
  }

  private static String named(String what, String name, int index) {
    return what + " " + (name.isEmpty() ? String.valueOf(index + 1) : name);
  }

  private static boolean isIndex(String step) {
    return step.length() < 10 && step.chars().allMatch(Character::isDigit);
  }
}
