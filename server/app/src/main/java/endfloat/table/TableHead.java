package endfloat.table;

import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Head of a column of a file: {@code lash [thou]}.
 *
 * @param written as the file has it, blanks around it left out
 * @param name the same as a name of the working language
 * @param unit in brackets; empty for none
 * @param problem that keeps it from being one
 */
record TableHead(String written, String name, String unit, Optional<String> problem) {
  private static final Pattern FORM = Pattern.compile("([^\\[\\]]*?)\\s*(?:\\[([^\\[\\]]*)\\])?");
  private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{Nd}_]*");

  static TableHead of(String written) {
    Matcher form = FORM.matcher(written);
    if (!form.matches()) {
      return new TableHead(
          written, "", "", Optional.of("this is no head; write a name and its unit, lash [thou]"));
    }
    String unit = form.group(2) == null ? "" : form.group(2).strip();
    String name = name(form.group(1));
    Optional<String> problem = Optional.empty();
    if (name.isEmpty()) {
      problem = Optional.of("the head has no name; write one, such as lash" + after(unit));
    } else if (!unit.isEmpty()) {
      try {
        UnitTable.find(unit);
      } catch (UnitException e) {
        problem = Optional.of(e.getMessage() + "; " + e.wayOut());
      }
    }
    return new TableHead(written, name, unit, problem);
  }

  private static String after(String unit) {
    return unit.isEmpty() ? "" : " [" + unit + "]";
  }

  /** Blanks and signs become {@code _}; what begins with a digit gets one before it. */
  private static String name(String words) {
    String name = words.strip().replaceAll("[^\\p{L}\\p{Nd}]+", "_").replaceAll("^_+|_+$", "");
    if (!name.isEmpty() && !NAME.matcher(name).matches()) {
      name = "_" + name;
    }
    return name;
  }

  /** Whether the name is another than the file has. */
  boolean isRenamed() {
    return !written.startsWith(name);
  }
}
