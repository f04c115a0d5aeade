package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Which words of the language may stand behind a value that is whole. */
final class WordsThatFollow {
  private static final Set<Integer> OPENING =
      Set.of(
          WorkingGrammar.OPEN,
          WorkingGrammar.LIST_OPEN,
          WorkingGrammar.NOTE_OPEN,
          WorkingGrammar.REMARK_OPEN);
  private static final Set<Integer> CLOSING =
      Set.of(WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE);

  /** What makes a yes or no of the part it stands in. */
  private static final Set<Integer> DECIDING =
      Set.of(
          WorkingGrammar.LESS,
          WorkingGrammar.AT_MOST,
          WorkingGrammar.GREATER,
          WorkingGrammar.AT_LEAST,
          WorkingGrammar.EQUAL,
          WorkingGrammar.UNEQUAL,
          WorkingGrammar.NOT,
          WorkingGrammar.AND,
          WorkingGrammar.OR);

  private final List<Lexeme> line;
  private final Predicate<String> isTruth;

  /**
   * @param line tokens of the statement up to the place
   * @param isTruth whether a name is a yes or no
   */
  WordsThatFollow(List<Lexeme> line, Predicate<String> isTruth) {
    this.line = line;
    this.isTruth = isTruth;
  }

  /** The words, as a rule none or two. */
  List<String> words() {
    int open = open();
    if (open >= 0) {
      int kind = line.get(open).getType();
      return kind == WorkingGrammar.OPEN || kind == WorkingGrammar.LIST_OPEN
          ? inExpression(part(open + 1, true))
          : List.of();
    }
    int solve = place(WorkingGrammar.SOLVE);
    if (solve >= 0) {
      return inSolve(solve);
    }
    int equal = place(WorkingGrammar.EQUAL);
    boolean definition = equal == 1 || equal == 2;
    boolean spread = place(WorkingGrammar.PLUS_MINUS) >= 0;
    return definition && !spread ? inExpression(part(equal + 1, false)) : List.of();
  }

  /** The bracket that is open at the place; -1 for none. */
  private int open() {
    int depth = 0;
    for (int i = line.size() - 1; i >= 0; i--) {
      if (CLOSING.contains(line.get(i).getType())) {
        depth++;
      } else if (OPENING.contains(line.get(i).getType()) && depth-- == 0) {
        return i;
      }
    }
    return -1;
  }

  /** The first place outside brackets where a token stands; -1 for none. */
  private int place(int type) {
    int depth = 0;
    for (int i = 0; i < line.size(); i++) {
      int here = line.get(i).getType();
      depth += OPENING.contains(here) ? 1 : CLOSING.contains(here) ? -1 : 0;
      if (depth == 0 && here == type) {
        return i;
      }
    }
    return -1;
  }

  /** Tokens from a place on, without those in brackets of their own. */
  private List<Lexeme> part(int from, boolean sinceComma) {
    List<Lexeme> part = new ArrayList<>();
    int depth = 0;
    for (Lexeme token : line.subList(from, line.size())) {
      int type = token.getType();
      depth -= CLOSING.contains(type) ? 1 : 0;
      if (depth == 0) {
        if (sinceComma && type == WorkingGrammar.COMMA) {
          part.clear();
        } else {
          part.add(token);
        }
      }
      depth += OPENING.contains(type) ? 1 : 0;
    }
    return part;
  }

  private List<String> inSolve(int solve) {
    int wanted = place(WorkingGrammar.FOR);
    List<Lexeme> part = part((wanted < 0 ? solve : wanted) + 1, true);
    if (wanted < 0) {
      return has(part, WorkingGrammar.EQUAL) ? List.of("for") : List.of();
    }
    if (part.size() == 1) {
      return List.of("between");
    }
    return has(part, WorkingGrammar.BETWEEN) && !has(part, WorkingGrammar.AND)
        ? List.of("and")
        : List.of();
  }

  private static boolean has(List<Lexeme> part, int type) {
    return part.stream().anyMatch(token -> token.getType() == type);
  }

  private List<String> inExpression(List<Lexeme> part) {
    Deque<Integer> open = new ArrayDeque<>();
    List<Lexeme> last = new ArrayList<>();
    for (Lexeme token : part) {
      switch (token.getType()) {
        case WorkingGrammar.IF -> open.push(WorkingGrammar.IF);
        case WorkingGrammar.THEN -> {
          open.poll();
          open.push(WorkingGrammar.THEN);
        }
        case WorkingGrammar.ELSE -> open.poll();
        default -> {
          last.add(token);
          continue;
        }
      }
      last.clear();
    }
    boolean decided = decides(last);
    List<String> words = new ArrayList<>();
    if (!open.isEmpty() && open.peek() == WorkingGrammar.THEN) {
      words.add("else");
    } else if (!open.isEmpty() && decided) {
      words.add("then");
    }
    if (decided) {
      words.addAll(List.of("and", "or"));
    }
    return words;
  }

  /** Whether a part can be a yes or no; of a call nobody knows here. */
  private boolean decides(List<Lexeme> part) {
    if (part.stream().anyMatch(token -> DECIDING.contains(token.getType()))) {
      return true;
    }
    Lexeme last = part.isEmpty() ? null : part.get(part.size() - 1);
    return last != null
        && part.size() == 1
        && last.getType() == WorkingGrammar.NAME
        && isTruth.test(last.getText());
  }
}
