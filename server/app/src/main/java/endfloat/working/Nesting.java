package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * How deep a line goes, counted in its tokens before the parser sees them: brackets, signs, not, ^
 * and if. The parser calls itself that often and its stack is finite.
 */
final class Nesting {
  private static final int DEEPEST = 100;
  private static final int MOST_TERMS = 1000;

  /** Depth of the line around each open bracket. */
  private final Deque<Integer> around = new ArrayDeque<>();

  /** Signs, not and ^ that wait for their operand. */
  private int prefixes;

  private int branches;
  private int terms;
  private int base;

  int brackets() {
    return around.size() / 3;
  }

  void count(Lexeme token, int before) {
    switch (token.getType()) {
      case WorkingGrammar.OPEN,
          WorkingGrammar.LIST_OPEN,
          WorkingGrammar.NOTE_OPEN,
          WorkingGrammar.REMARK_OPEN -> {
        around.push(base);
        around.push(prefixes);
        around.push(branches);
        base = base + prefixes + branches + 1;
        prefixes = 0;
        branches = 0;
      }
      case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> {
        if (!around.isEmpty()) {
          branches = around.pop();
          prefixes = around.pop();
          base = around.pop();
        }
      }
      case WorkingGrammar.POWER, WorkingGrammar.NOT -> prefixes++;
      case WorkingGrammar.PLUS, WorkingGrammar.MINUS -> {
        if (Syntax.endsOperand(before)) {
          prefixes = 0;
        } else {
          prefixes++;
        }
      }
      case WorkingGrammar.IF -> branches++;
      case WorkingGrammar.COMMA -> {
        prefixes = 0;
        branches = 0;
      }
      case WorkingGrammar.NUMBER, WorkingGrammar.NAME, WorkingGrammar.TEXT ->
          terms += before == 0 ? 0 : 1;
      case WorkingGrammar.UNIT, WorkingGrammar.FUNCTION, WorkingGrammar.DOT -> {}
      default -> prefixes = 0;
    }
    if (base + prefixes + branches > DEEPEST) {
      throw new Refusal(
          token.from(),
          token.to(),
          "This line is nested more than " + DEEPEST + " deep",
          "Give its inner parts names and lines of their own");
    }
    if (terms > MOST_TERMS) {
      throw new Refusal(
          token.from(),
          token.to(),
          "This line has more than " + MOST_TERMS + " terms",
          "Share it out over several lines, or put the values into a table");
    }
  }
}
