package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * JSON Pointer (RFC 6901) on trees that are shared: a change copies the way down and nothing else.
 */
final class Pointer {
  /**
   * @param tree the changed tree
   * @param backAt pointer at which the way back puts {@code backValue}
   * @param backValue what stood there; null removes
   * @param touched pointer of what is now another thing than before
   */
  record Put(JsonNode tree, String backAt, JsonNode backValue, String touched) {}

  private Pointer() {}

  static List<String> steps(String pointer) {
    if (!pointer.startsWith("/") || pointer.length() > 500) {
      throw new EditRefusedException(
          "'" + pointer + "' points nowhere", "send a JSON Pointer such as /text");
    }
    List<String> steps = new ArrayList<>();
    for (String step : pointer.substring(1).split("/", -1)) {
      steps.add(step.replace("~1", "/").replace("~0", "~"));
    }
    return steps;
  }

  static String join(List<String> steps) {
    StringBuilder pointer = new StringBuilder();
    steps.forEach(step -> pointer.append('/').append(step.replace("~", "~0").replace("/", "~1")));
    return pointer.toString();
  }

  /** Whether one of the two places holds the other. */
  static boolean overlap(String one, String other) {
    return one.equals(other) || one.startsWith(other + "/") || other.startsWith(one + "/");
  }

  static JsonNode get(JsonNode tree, String pointer) {
    JsonNode node = tree;
    for (String step : steps(pointer)) {
      node = node.isArray() ? node.path(index(step, node.size(), false)) : node.path(step);
    }
    return node;
  }

  /** Puts a value, or removes what is there where it is null. */
  static Put put(JsonNode tree, String pointer, JsonNode value) {
    return put(tree, steps(pointer), 0, value);
  }

  private static Put put(JsonNode node, List<String> steps, int depth, JsonNode value) {
    String step = steps.get(depth);
    boolean last = depth == steps.size() - 1;
    if (node instanceof ObjectNode) {
      if (last) {
        return field(node, steps, step, value);
      }
      Put below = put(existing(node.get(step), steps, depth), steps, depth + 1, value);
      ObjectNode copy = Trees.shallow(node);
      copy.set(step, below.tree());
      return new Put(copy, below.backAt(), below.backValue(), below.touched());
    }
    if (node instanceof ArrayNode) {
      int index = index(step, node.size(), last);
      if (last) {
        return element(node, steps, index, value);
      }
      Put below = put(existing(node.get(index), steps, depth), steps, depth + 1, value);
      ArrayNode copy = Trees.shallowList(node);
      copy.set(index, below.tree());
      return new Put(copy, below.backAt(), below.backValue(), below.touched());
    }
    throw nothingAt(steps, depth);
  }

  private static JsonNode existing(JsonNode node, List<String> steps, int depth) {
    if (node == null || node instanceof NullNode) {
      throw nothingAt(steps, depth + 1);
    }
    return node;
  }

  private static Put field(JsonNode node, List<String> steps, String name, JsonNode value) {
    String at = join(steps);
    JsonNode before = node.get(name);
    if (before == null && value == null) {
      throw nothingAt(steps, steps.size());
    }
    ObjectNode copy = Trees.shallow(node);
    if (value == null) {
      copy.remove(name);
    } else {
      copy.set(name, value);
    }
    return new Put(copy, at, before, at);
  }

  private static Put element(JsonNode node, List<String> steps, int index, JsonNode value) {
    String list = join(steps.subList(0, steps.size() - 1));
    String at = list + "/" + index;
    ArrayNode copy = Trees.shallowList(node);
    if (value == null) {
      if (index >= node.size()) {
        throw nothingAt(steps, steps.size());
      }
      copy.remove(index);
      // what came after it moved up: the whole list is another, and goes back as a whole
      return new Put(copy, list, node, list);
    }
    if (index == node.size()) {
      copy.add(value);
      return new Put(copy, at, null, at);
    }
    copy.set(index, value);
    return new Put(copy, at, node.get(index), at);
  }

  private static int index(String step, int size, boolean mayAppend) {
    if (mayAppend && step.equals("-")) {
      return size;
    }
    boolean digits =
        !step.isEmpty() && step.length() < 8 && step.chars().allMatch(c -> c >= '0' && c <= '9');
    int index = digits ? Integer.parseInt(step) : Integer.MAX_VALUE;
    if (index > (mayAppend ? size : size - 1)) {
      throw new EditRefusedException(
          "there is no element " + step + " in a list of " + size,
          "the list may have changed meanwhile; look at it again");
    }
    return index;
  }

  private static EditRefusedException nothingAt(List<String> steps, int depth) {
    return new EditRefusedException(
        "there is nothing at " + join(steps.subList(0, Math.min(depth, steps.size()))),
        "it may have been removed meanwhile; look at the clause again");
  }
}
