package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.Map;
import java.util.Set;

/** The words of the language; all else may be a name. */
final class LineWords {
  private static final Map<String, Integer> TYPES =
      Map.ofEntries(
          Map.entry("if", WorkingGrammar.IF),
          Map.entry("then", WorkingGrammar.THEN),
          Map.entry("else", WorkingGrammar.ELSE),
          Map.entry("and", WorkingGrammar.AND),
          Map.entry("or", WorkingGrammar.OR),
          Map.entry("not", WorkingGrammar.NOT),
          Map.entry("limit", WorkingGrammar.LIMIT),
          Map.entry("solve", WorkingGrammar.SOLVE),
          Map.entry("for", WorkingGrammar.FOR),
          Map.entry("between", WorkingGrammar.BETWEEN),
          Map.entry("at", WorkingGrammar.AT),
          Map.entry("least", WorkingGrammar.LEAST),
          Map.entry("most", WorkingGrammar.MOST),
          Map.entry("correlate", WorkingGrammar.CORRELATE));

  private LineWords() {}

  static Set<String> all() {
    return TYPES.keySet();
  }

  static boolean isWord(String text) {
    return text.length() <= 9 && TYPES.containsKey(text);
  }

  /** Type of a word, or NAME for any other text. */
  static int type(String text) {
    Integer type = text.length() > 9 ? null : TYPES.get(text);
    return type == null ? WorkingGrammar.NAME : type;
  }
}
