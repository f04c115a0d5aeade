package endfloat.working;

import endfloat.catalogue.Catalogue;
import endfloat.working.Completion.Option;
import endfloat.working.grammar.WorkingGrammar;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands before a place of a working, and so what may follow. */
final class CompletionPlace {
  private static final int MOST = 80;
  private static final Pattern MARK =
      Pattern.compile("(?:^|\\n)[ \\t]*[\\p{L}_][\\p{L}\\d_]*[ \\t]*\\[([^\\]\\n]*)$");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?:^|[^\\p{L}\\d_.])\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?[ \\t]*"
              + "((?:1/)?[\\p{L}%°][\\p{L}\\d_%°^./()·-]*|)$");
  private static final Pattern FIELD =
      Pattern.compile(
          "([\\p{L}_][\\p{L}\\d_]*(?:\\.[\\p{L}_][\\p{L}\\d_]*)*)\\.([\\p{L}_][\\p{L}\\d_]*)?$");

  private final String before;
  private final CompletionOptions options;
  private final List<Lexeme> lexemes;

  CompletionPlace(String text, int offset, Scope scope, Catalogue catalogue) {
    this.before = text.substring(0, offset);
    this.options = new CompletionOptions(scope, catalogue);
    this.lexemes = lexemes(before);
  }

  /** Tokens of the statement at hand, the word being written and EOF left out. */
  private static List<Lexeme> lexemes(String before) {
    int from = before.length() - partial(before).length();
    List<Statement> statements =
        new LineReader(new SourceText(before.substring(0, from))).statements();
    if (statements.isEmpty() || before.substring(0, from).endsWith("\n")) {
      return List.of();
    }
    Statement last = statements.get(statements.size() - 1);
    boolean newLine = before.indexOf('\n', last.to()) >= 0 && depth(last.tokens()) == 0;
    return newLine ? List.of() : last.tokens().subList(0, last.tokens().size() - 1);
  }

  private static int depth(List<Lexeme> tokens) {
    int depth = 0;
    for (Lexeme token : tokens) {
      depth +=
          switch (token.getType()) {
            case WorkingGrammar.OPEN, WorkingGrammar.LIST_OPEN -> 1;
            case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> -1;
            default -> 0;
          };
    }
    return depth;
  }

  /** The letters of a name straight before the place. */
  private static String partial(String before) {
    int from = before.length();
    while (from > 0 && Letters.inName(before.charAt(from - 1))) {
      from--;
    }
    while (from < before.length() && Letters.isDigit(before.charAt(from))) {
      from++;
    }
    return before.substring(from);
  }

  Completion completion() {
    int quote = openQuote();
    if (quote >= 0) {
      return filtered(before.substring(quote + 1), options.texts(call(), limitNote()));
    }
    if (inComment()) {
      return new Completion(before.length(), List.of());
    }
    Matcher mark = MARK.matcher(before);
    if (mark.find()) {
      return filtered(lastSymbol(mark.group(1)), options.units());
    }
    Matcher field = FIELD.matcher(before);
    if (field.find() && !options.fields(field.group(1)).isEmpty()) {
      return filtered(partial(before), options.fields(field.group(1)));
    }
    Matcher unit = UNIT.matcher(before);
    if (unit.find()) {
      List<Option> units = new ArrayList<>(options.units());
      if (before.endsWith(" ") || unit.group(1).isEmpty()) {
        return filtered("", units);
      }
      units.addAll(options.words(following()));
      return filtered(lastSymbol(unit.group(1)), units);
    }
    return filtered(partial(before), written());
  }

  private List<Option> written() {
    if (lexemes.isEmpty()) {
      List<Option> first = new ArrayList<>(options.words(List.of("limit", "correlate")));
      first.addAll(options.names());
      return first;
    }
    int last = lexemes.get(lexemes.size() - 1).getType();
    if (lexemes.get(0).getType() == WorkingGrammar.LIMIT && lexemes.size() == 1) {
      return options.names();
    }
    if (last == WorkingGrammar.AT) {
      return options.words(List.of("least", "most"));
    }
    boolean correlate = lexemes.get(0).getType() == WorkingGrammar.CORRELATE;
    if (correlate
        && (lexemes.size() == 1 || (lexemes.size() == 3 && last == WorkingGrammar.COMMA))) {
      return options.names();
    }
    if (Syntax.endsOperand(last)) {
      return options.words(following());
    }
    if (last == WorkingGrammar.UNITMARK
        || last == WorkingGrammar.REMARK_OPEN
        || last == WorkingGrammar.NOTE_OPEN) {
      return List.of();
    }
    List<Option> all = new ArrayList<>();
    if (lexemes.get(0).getType() == WorkingGrammar.LIMIT && last == WorkingGrammar.COLON) {
      all.addAll(options.words(List.of("at least", "at most")));
    }
    Call call = call();
    if (call != null && (last == WorkingGrammar.OPEN || last == WorkingGrammar.COMMA)) {
      all.addAll(options.arguments(call.function(), call.given(), call.position()));
    }
    all.addAll(options.names());
    all.addAll(options.functions());
    all.addAll(
        options.words(last == WorkingGrammar.EQUAL ? List.of("if", "solve") : List.of("not")));
    return all;
  }

  private List<String> following() {
    return new WordsThatFollow(lexemes, options::isTruth).words();
  }

  /**
   * The call around the place.
   *
   * @param given names of arguments written already
   * @param position how many arguments stand before the place
   * @param argument name of the argument at the place, empty where it is given by position
   * @param first the first argument where it is a plain name
   */
  record Call(String function, Set<String> given, int position, String argument, String first) {}

  private Call call() {
    int depth = 0;
    for (int i = lexemes.size() - 1; i >= 0; i--) {
      switch (lexemes.get(i).getType()) {
        case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> depth++;
        case WorkingGrammar.LIST_OPEN -> depth = Math.max(0, depth - 1);
        case WorkingGrammar.OPEN -> {
          if (depth == 0) {
            return i > 0 && lexemes.get(i - 1).getType() == WorkingGrammar.FUNCTION
                ? call(i)
                : null;
          }
          depth--;
        }
        default -> {}
      }
    }
    return null;
  }

  private Call call(int open) {
    Set<String> given = new HashSet<>();
    int position = 0;
    int depth = 0;
    String argument = "";
    for (Lexeme token : lexemes.subList(open + 1, lexemes.size())) {
      switch (token.getType()) {
        case WorkingGrammar.OPEN, WorkingGrammar.LIST_OPEN -> depth++;
        case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> depth--;
        case WorkingGrammar.COMMA -> {
          position += depth == 0 ? 1 : 0;
          argument = depth == 0 ? "" : argument;
        }
        case WorkingGrammar.ARGUMENT -> {
          given.add(token.getText());
          argument = depth == 0 ? token.getText() : argument;
        }
        default -> {}
      }
    }
    String first = open + 1 < lexemes.size() ? lexemes.get(open + 1).getText() : "";
    return new Call(lexemes.get(open - 1).getText(), given, position, argument, first);
  }

  /** Offset of a quote that is open at the place; -1 where none is. */
  private int openQuote() {
    int line = before.lastIndexOf('\n') + 1;
    int open = -1;
    for (int i = line; i < before.length(); i++) {
      if (before.charAt(i) == '"') {
        open = open < 0 ? i : -1;
      }
    }
    return open;
  }

  private boolean inComment() {
    int line = before.lastIndexOf('\n') + 1;
    return Pattern.compile("(?:^|[ \\t])--+(?:[ \\t]|$)").matcher(before.substring(line)).find();
  }

  /** {@code condition}, {@code state} or {@code rule} in the remark of a limit. */
  private String limitNote() {
    Matcher note = Pattern.compile("(condition|state|rule)\\s*:\\s*\"[^\"]*$").matcher(before);
    return !lexemes.isEmpty() && lexemes.get(0).getType() == WorkingGrammar.LIMIT && note.find()
        ? note.group(1)
        : "";
  }

  private static String lastSymbol(String run) {
    Matcher symbol = Pattern.compile("[\\p{L}%°][\\p{L}\\d_%°]*$").matcher(run);
    return symbol.find() ? symbol.group() : "";
  }

  private Completion filtered(String partial, List<Option> all) {
    String small = partial.toLowerCase(Locale.ROOT);
    List<Option> begins = new ArrayList<>();
    List<Option> holds = new ArrayList<>();
    for (Option option : all) {
      String label = option.label().toLowerCase(Locale.ROOT);
      if (label.startsWith(small)) {
        begins.add(option);
      } else if (label.contains("_" + small)
          || option.detail().toLowerCase(Locale.ROOT).contains(small)) {
        holds.add(option);
      }
    }
    begins.addAll(holds);
    return new Completion(
        before.length() - partial.length(),
        List.copyOf(begins.subList(0, Math.min(MOST, begins.size()))));
  }
}
