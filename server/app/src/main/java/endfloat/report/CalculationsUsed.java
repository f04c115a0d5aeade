package endfloat.report;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.working.Parser;
import endfloat.working.Token;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The calculations that the workings of a record call, and what is to be minded with them. */
final class CalculationsUsed {
  /** A caution that holds for calls that leave an argument out. */
  private static final Pattern WITHOUT = Pattern.compile("Without (?:the )?([a-z][a-z0-9_]*) .*");

  /** A caution that sends to another calculation. */
  private static final Pattern SEE = Pattern.compile(".*\\bsee ([a-z][a-z0-9_]*)\\b.*");

  private CalculationsUsed() {}

  /** Their names, in the order in which they are first called. */
  static Set<String> names(InvestigationRecord record) {
    Set<String> names = new LinkedHashSet<>();
    workings(record).forEach(cell -> calls(cell.text()).forEach(call -> names.add(call.name())));
    return names;
  }

  private static List<Cell> workings(InvestigationRecord record) {
    return record.cells().stream().filter(cell -> cell.kind().equals("working")).toList();
  }

  /** A call in a text, and all that stands between its brackets. */
  private record Call(String name, String arguments) {}

  private static List<Call> calls(String text) {
    List<Call> calls = new ArrayList<>();
    String[] lines = text.split("\n", -1);
    int[] starts = new int[lines.length];
    for (int i = 1; i < lines.length; i++) {
      starts[i] = starts[i - 1] + lines[i - 1].length() + 1;
    }
    for (Token token : Parser.parse(text).tokens()) {
      String line = lines[token.span().line() - 1];
      int to = Math.min(line.length(), token.span().to() - 1);
      int from = Math.min(to, token.span().from() - 1);
      String word = line.substring(from, to);
      if (Catalogue.library().find(word).isPresent()) {
        calls.add(new Call(word, arguments(text, starts[token.span().line() - 1] + to)));
      }
    }
    return calls;
  }

  private static String arguments(String text, int from) {
    int depth = 0;
    for (int at = from; at < text.length(); at++) {
      depth += text.charAt(at) == '(' ? 1 : text.charAt(at) == ')' ? -1 : 0;
      if (depth <= 0 && !Character.isWhitespace(text.charAt(at))) {
        return text.substring(from, at);
      }
    }
    return text.substring(from);
  }

  /**
   * The cautions of each clause's calculations that apply, each once, where it is first called for.
   * One that begins "Without NAME" is for calls that do not give that argument; one that sends to
   * another calculation is heeded where the record uses that too.
   */
  static Map<String, List<String>> cautions(InvestigationRecord record) {
    Set<String> used = names(record);
    Set<String> said = new LinkedHashSet<>();
    Map<String, List<String>> byClause = new LinkedHashMap<>();
    for (Cell cell : workings(record)) {
      for (Call call : calls(cell.text())) {
        Calculation calculation = Catalogue.library().find(call.name()).orElseThrow();
        for (String caution : calculation.cautions()) {
          if (applies(caution, call, used) && said.add(caution)) {
            byClause.computeIfAbsent(cell.id(), any -> new ArrayList<>()).add(caution);
          }
        }
      }
    }
    return byClause;
  }

  private static boolean applies(String caution, Call call, Set<String> used) {
    Matcher without = WITHOUT.matcher(caution);
    if (without.matches()
        && call.arguments().matches("(?s).*\\b" + without.group(1) + "\\w*\\s*:.*")) {
      return false;
    }
    Matcher see = SEE.matcher(caution);
    return !see.matches() || !used.contains(see.group(1));
  }
}
