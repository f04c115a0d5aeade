package endfloat.processor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.lang.model.element.Element;

/** No calculation without a value from outside the project. */
final class CheckDemand {
  private final Path folder;

  CheckDemand(Path folder) {
    this.folder = folder;
  }

  void of(String calculation, Element element) {
    Path file = folder.resolve(calculation + ".check");
    String text;
    try {
      text = Files.readString(file);
    } catch (IOException e) {
      throw new DefinitionException(
          element,
          "calculation "
              + calculation
              + " has no check file checks/"
              + calculation
              + ".check; write one with a value from outside the project and its source");
    }
    demand(text, "(?m)^source: *\\S.*$", "a source: line", calculation, element);
    demand(
        text,
        "(?m)^knowledge: *(verified|memory|derived|common-practice)\\b.*$",
        "a knowledge: line (verified, memory, derived or common-practice)",
        calculation,
        element);
    demand(text, "(?m)^expect +\\S.*$", "an expect line", calculation, element);
  }

  private static void demand(
      String text, String pattern, String what, String calculation, Element element) {
    if (!java.util.regex.Pattern.compile(pattern).matcher(text).find()) {
      throw new DefinitionException(element, "checks/" + calculation + ".check lacks " + what);
    }
  }
}
