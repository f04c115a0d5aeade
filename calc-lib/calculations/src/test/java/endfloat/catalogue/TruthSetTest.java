package endfloat.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which entries of the truth set the checks of the library hold. */
class TruthSetTest {

  /** {@code id -> names of the calculations whose checks carry it}. */
  private static Map<String, List<String>> held() {
    Map<String, List<String>> held = new LinkedHashMap<>();
    for (Calculation calculation : Catalogue.library().all()) {
      for (Check check : Catalogue.library().checks(calculation.name())) {
        held.computeIfAbsent(check.id(), id -> new ArrayList<>()).add(calculation.name());
      }
    }
    return held;
  }

  private static List<String[]> entries() throws IOException {
    try (var in = TruthSetTest.class.getResourceAsStream("truth-set.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(line -> line.split(" "))
          .toList();
    }
  }

  @Test
  void everyEntryIsHeldByACheck() throws IOException {
    Map<String, List<String>> held = held();
    List<String> missing =
        entries().stream().map(e -> e[1]).filter(id -> !held.containsKey(id)).toList();
    assertEquals(List.of(), missing);
  }
}
