package endfloat.picture;

import java.util.HashMap;
import java.util.Map;

/**
 * How a stroke gets its look. On the page by its class and the style sheet, so that no style stands
 * in the markup; in a printed document by presentation attributes, because there is no style sheet.
 */
public final class Ink {
  /** By class. */
  public static final Ink PAGE = new Ink(Map.of());

  private final Map<String, Map<String, String>> attributes;

  private Ink(Map<String, Map<String, String>> attributes) {
    this.attributes = attributes;
  }

  /**
   * By presentation attributes.
   *
   * @param attributes for each class name the SVG presentation attributes that stand for it
   */
  public static Ink print(Map<String, Map<String, String>> attributes) {
    return new Ink(Map.copyOf(attributes));
  }

  /**
   * By both: a style sheet, where there is one, overrides the attributes, so one picture serves the
   * page and the printed document.
   */
  public static Ink both(Map<String, Map<String, String>> attributes) {
    Map<String, Map<String, String>> named = new HashMap<>();
    attributes.forEach(
        (className, look) -> {
          Map<String, String> all = new HashMap<>(look);
          all.put("class", className);
          named.put(className, Map.copyOf(all));
        });
    return new Ink(Map.copyOf(named));
  }

  /** What to write on an element of this class. */
  Map<String, String> of(String className) {
    if (this == PAGE) {
      return Map.of("class", className);
    }
    Map<String, String> look = attributes.get(className);
    if (look == null) {
      throw new IllegalStateException("no print look for the class " + className);
    }
    return look;
  }
}
