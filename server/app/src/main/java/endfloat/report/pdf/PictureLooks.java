package endfloat.report.pdf;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * What the style sheet says of the strokes of pictures, by class: the layout's own reading of it
 * stops at the picture's edge.
 */
final class PictureLooks {
  private static final Pattern RULE = Pattern.compile("\\.([a-z-]+)\\s*\\{([^}]*)\\}");
  private static final Pattern FONT = Pattern.compile("([0-9.]+)px (.*)");
  private static final Set<String> NAMES =
      Set.of(
          "fill",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-dasharray",
          "font-size",
          "font-family");

  private final Map<String, Map<String, String>> byClass = new HashMap<>();

  PictureLooks(String css) {
    Matcher rule = RULE.matcher(css);
    while (rule.find()) {
      Map<String, String> look = new HashMap<>();
      for (String one : rule.group(2).split(";")) {
        int colon = one.indexOf(':');
        if (colon > 0) {
          property(one.substring(0, colon).strip(), one.substring(colon + 1).strip(), look);
        }
      }
      byClass.computeIfAbsent(rule.group(1), c -> new HashMap<>()).putAll(look);
    }
  }

  private static void property(String name, String value, Map<String, String> into) {
    Matcher font = FONT.matcher(value);
    if (name.equals("font") && font.matches()) {
      into.put("font-size", font.group(1));
      into.put("font-family", font.group(2));
    } else if (NAMES.contains(name) || name.equals("opacity")) {
      into.put(name, value);
    }
  }

  /** The look of an element: its group's, its own attributes over it, its class over both. */
  Map<String, String> of(Element element, Map<String, String> inherited) {
    Map<String, String> look = new HashMap<>(inherited);
    look.remove("opacity");
    for (String name : NAMES) {
      if (element.hasAttribute(name)) {
        look.put(name, element.getAttribute(name));
      }
    }
    if (element.hasAttribute("opacity")) {
      look.put("opacity", element.getAttribute("opacity"));
    }
    for (String name : element.getAttribute("class").split(" ")) {
      look.putAll(byClass.getOrDefault(name, Map.of()));
    }
    return look;
  }
}
