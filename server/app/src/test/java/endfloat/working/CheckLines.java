package endfloat.working;

import endfloat.catalogue.Check;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines of the library's checks, read as a person would write them. */
final class CheckLines {
  private CheckLines() {}

  /** What was refused of the checks of one calculation, but for those that expect it. */
  static List<String> refused(String calculation) {
    List<String> refused = new ArrayList<>();
    for (Check check : KnownNames.LIBRARY.checks(calculation)) {
      boolean expected = check.expectations().stream().anyMatch(Check.Refusal.class::isInstance);
      KnownNames names = new KnownNames();
      readings(check, names);
      for (String line : check.text().lines().toList()) {
        try {
          names.give(line);
        } catch (AssertionError e) {
          if (!expected) {
            refused.add(check.id() + ": " + e.getMessage());
          }
          break;
        }
      }
    }
    return refused;
  }

  private static void readings(Check check, KnownNames names) {
    Map<String, Map<String, Set<String>>> axes = new LinkedHashMap<>();
    Map<String, String> units = new LinkedHashMap<>();
    for (Check.Station station : check.readings()) {
      units.put(station.name(), station.unit());
      Map<String, Set<String>> known =
          axes.computeIfAbsent(station.name(), n -> new LinkedHashMap<>());
      station
          .at()
          .forEach((a, label) -> known.computeIfAbsent(a, x -> new LinkedHashSet<>()).add(label));
    }
    axes.forEach(
        (name, known) -> {
          List<String> said = new ArrayList<>();
          known.forEach((axis, labels) -> said.add(axis + "=" + String.join(",", labels)));
          names.series(name, units.get(name), String.join(" ", said));
        });
  }
}
