package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;

/** Keys by which rows of a clause are told apart. */
final class Keys {
  private Keys() {}

  /** The id of a row, else its other mark, else its place; never one that is taken already. */
  static String own(JsonNode row, String mark, int place, Set<String> taken) {
    String wanted = Texts.text(row, "id");
    if (!isKey(wanted)) {
      wanted = Texts.text(row, mark);
    }
    if (!isKey(wanted)) {
      wanted = Integer.toString(place + 1);
    }
    String key = wanted;
    for (int n = 2; !taken.add(key); n++) {
      key = wanted + "-" + n;
    }
    return key;
  }

  private static boolean isKey(String text) {
    return text.matches("[A-Za-z0-9_-]{1,64}");
  }
}
