package endfloat.table;

import endfloat.table.Column.Aspect;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Heads of columns: {@code name[axis=label,...].at [unit]}. */
final class Head {
  private static final Pattern FORM =
      Pattern.compile(
          "([\\p{L}_][\\p{L}\\p{Nd}_]*)"
              + "(?:\\[([^\\[\\]]*=[^\\[\\]]*)\\])?"
              + "(?:\\.(\\w+))?"
              + "\\s*(?:\\[([^\\[\\]=]*)\\])?");

  private Head() {}

  /** A head cannot be read. */
  static final class UnreadableException extends Exception {
    private static final long serialVersionUID = 1L;

    UnreadableException(String message) {
      super(message);
    }
  }

  static Column parse(int number, String head) throws UnreadableException {
    Matcher form = FORM.matcher(head.strip());
    if (!form.matches()) {
      throw new UnreadableException(
          "no head of a reading; write it as dial [mm] or dial[tooth=4] [mm]");
    }
    Aspect aspect = aspect(form.group(3));
    String unit = form.group(4) == null ? "" : form.group(4).strip();
    if (aspect == Aspect.INSTRUMENT && !unit.isEmpty()) {
      throw new UnreadableException("an instrument has no unit; leave [" + unit + "] out");
    }
    return new Column(
        number, head, form.group(1), labels(form.group(2)), aspect, unit, new ArrayList<>());
  }

  private static Aspect aspect(String word) throws UnreadableException {
    if (word == null) {
      return Aspect.VALUE;
    }
    return switch (word) {
      case "at" -> Aspect.TEMPERATURE;
      case "instrument" -> Aspect.INSTRUMENT;
      default ->
          throw new UnreadableException("after the point stands at or instrument, not " + word);
    };
  }

  private static Map<String, String> labels(String text) throws UnreadableException {
    Map<String, String> labels = new LinkedHashMap<>();
    if (text == null) {
      return labels;
    }
    for (String label : text.split(",", -1)) {
      int equals = label.indexOf('=');
      String axis = equals < 0 ? "" : label.substring(0, equals).strip();
      String value = equals < 0 ? "" : label.substring(equals + 1).strip();
      if (axis.isEmpty() || value.isEmpty()) {
        throw new UnreadableException("a station is written [axis=label], as [tooth=4]");
      }
      if (labels.put(axis, value) != null) {
        throw new UnreadableException("the axis " + axis + " stands there twice");
      }
    }
    return Collections.unmodifiableMap(labels);
  }
}
