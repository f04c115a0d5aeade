package endfloat.working;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Titles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Finds calculations by words of the trade, of either country. */
public final class CatalogueSearch {
  private static final int IN_NAME = 16;
  private static final int IN_TERMS = 8;
  private static final int IN_SUMMARY = 4;
  private static final int ELSEWHERE = 1;

  private final List<Entry> entries;

  private record Entry(
      Calculation calculation,
      List<String> name,
      List<String> terms,
      List<String> summary,
      List<String> rest) {

    static Entry of(Calculation calculation) {
      String rest =
          calculation.parameters().stream()
              .map(CatalogueSearch::said)
              .collect(Collectors.joining(" "));
      return new Entry(
          calculation,
          words(calculation.name()),
          words(Titles.of(calculation.name()) + " ; " + String.join(" ; ", calculation.terms())),
          words(calculation.summary()),
          words(calculation.subject() + " " + calculation.description() + " " + rest));
    }

    /** How well every word fits; 0 where one of them stands nowhere. */
    int fit(List<String> words) {
      int fit = 0;
      for (String word : words) {
        int best =
            begins(name, word)
                ? IN_NAME
                : begins(terms, word)
                    ? IN_TERMS
                    : begins(summary, word) ? IN_SUMMARY : begins(rest, word) ? ELSEWHERE : 0;
        if (best == 0) {
          return 0;
        }
        fit += best;
      }
      return fit;
    }
  }

  public CatalogueSearch(Catalogue catalogue) {
    this.entries = catalogue.all().stream().map(Entry::of).toList();
  }

  /** As written, for who has typed half a word, and as meant. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>(TradeWords.plain(text));
    words.addAll(TradeWords.of(text));
    return List.copyOf(words);
  }

  private static String said(Parameter parameter) {
    String parts =
        parameter.part().stream()
            .map(
                part ->
                    part.name()
                        + " "
                        + part.components().stream()
                            .map(Parameter::name)
                            .collect(Collectors.joining(" ")))
            .collect(Collectors.joining(" "));
    return parameter.name() + " " + parameter.description() + " " + parts;
  }

  private static boolean begins(List<String> words, String beginning) {
    return words.stream().anyMatch(word -> word.startsWith(beginning));
  }

  /** The calculations in which every typed word stands, the best first; all where none is typed. */
  public List<Calculation> find(String typed) {
    List<String> words = TradeWords.of(typed);
    List<Entry> found = new ArrayList<>();
    for (Entry entry : entries) {
      if (words.isEmpty() || entry.fit(words) > 0) {
        found.add(entry);
      }
    }
    if (!words.isEmpty()) {
      found.sort(Comparator.comparingInt((Entry entry) -> -entry.fit(words)));
    }
    return found.stream().map(Entry::calculation).toList();
  }
}
