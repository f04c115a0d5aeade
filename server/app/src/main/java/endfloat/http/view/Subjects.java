package endfloat.http.view;

import java.util.List;
import java.util.Map;

/** The subjects of the library as a reader knows them, in the order of the bench. */
final class Subjects {
  private static final List<Map.Entry<String, String>> NAMES =
      List.of(
          Map.entry("thermal", "Heat and growth"),
          Map.entry("materials", "Materials"),
          Map.entry("fits", "Limits, fits and chains"),
          Map.entry("bench", "Wear, end float, shims, timing"),
          Map.entry("gears", "Gears"),
          Map.entry("joints", "Press and shrink fits"),
          Map.entry("shafts", "Shafts"),
          Map.entry("plates", "Plates and end walls"),
          Map.entry("alignment", "Alignment and dowels"),
          Map.entry("contact", "Contact of curved bodies"),
          Map.entry("instruments", "Instruments"),
          Map.entry("vibration", "Vibration"),
          Map.entry("statistics", "Columns, lines and scatter"),
          Map.entry("evidence", "Evidence"));

  private Subjects() {}

  /** Its place in that order; what is not named comes last. */
  static int place(String subject) {
    for (int i = 0; i < NAMES.size(); i++) {
      if (NAMES.get(i).getKey().equals(subject)) {
        return i;
      }
    }
    return NAMES.size();
  }

  static String title(String subject) {
    int place = place(subject);
    return place < NAMES.size()
        ? NAMES.get(place).getValue()
        : Character.toUpperCase(subject.charAt(0)) + subject.substring(1);
  }
}
