package endfloat.report;

import endfloat.catalogue.Catalogue;
import endfloat.record.InvestigationRecord;
import endfloat.working.Parser;
import endfloat.working.Token;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The calculations that the workings of a record call. */
final class CalculationsUsed {
  private CalculationsUsed() {}

  /** Their names, in the order in which they are first called. */
  static Set<String> names(InvestigationRecord record) {
    Set<String> names = new LinkedHashSet<>();
    record.cells().stream()
        .filter(cell -> cell.kind().equals("working"))
        .forEach(cell -> called(cell.text(), names));
    return names;
  }

  private static void called(String text, Set<String> into) {
    String[] lines = text.split("\n", -1);
    for (Token token : Parser.parse(text).tokens()) {
      String line = lines[token.span().line() - 1];
      int to = Math.min(line.length(), token.span().to() - 1);
      String word = line.substring(Math.min(to, token.span().from() - 1), to);
      if (Catalogue.library().find(word).isPresent()) {
        into.add(word);
      }
    }
  }

  /** Pairs of a calculation's name and one of its cautions. */
  static List<String[]> cautions(InvestigationRecord record) {
    List<String[]> cautions = new ArrayList<>();
    for (String name : names(record)) {
      for (String caution : Catalogue.library().find(name).orElseThrow().cautions()) {
        cautions.add(new String[] {name, caution});
      }
    }
    return cautions;
  }
}
