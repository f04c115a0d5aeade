package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.List;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;

/** Says in words where the order of a line breaks off, and what would mend it. */
final class Syntax {
  private final List<Lexeme> tokens;
  private final int at;

  private Syntax(Statement statement, int at) {
    this.tokens = statement.tokens();
    this.at = at;
  }

  static Refusal refusal(Statement statement, RecognitionException cause) {
    return new Syntax(statement, cause.getOffendingToken().getTokenIndex()).refusal();
  }

  private Lexeme token(int index) {
    return tokens.get(Math.min(Math.max(index, 0), tokens.size() - 1));
  }

  private int type(int index) {
    return index < 0 || index >= tokens.size() ? 0 : tokens.get(index).getType();
  }

  private String text(int index) {
    return token(index).getText();
  }

  private Refusal refused(String message, String wayOut) {
    Lexeme token = token(at);
    Lexeme where = token.getType() == Token.EOF && at > 0 ? token(at - 1) : token;
    return new Refusal(where.from(), where.to(), message, wayOut);
  }

  private Refusal refusal() {
    int first = type(0);
    if (first == WorkingGrammar.LIMIT) {
      return limit();
    }
    if (first == WorkingGrammar.CORRELATE) {
      return refused("This line correlates two inputs", "Write it as correlate a, b: 0.8");
    }
    if (at == 0) {
      return beginning();
    }
    if (first == WorkingGrammar.NAME && at <= 2 && type(1) != WorkingGrammar.EQUAL) {
      return afterName();
    }
    int open = openBracket();
    int here = type(at);
    if (here == Token.EOF && open >= 0 && endsOperand(type(at - 1))) {
      return new Refusal(
          token(open).from(),
          token(open).to(),
          "This bracket is not closed",
          "Close it with " + (type(open) == WorkingGrammar.LIST_OPEN ? "]" : ")"));
    }
    if (contains(WorkingGrammar.SOLVE) && !contains(WorkingGrammar.FOR)) {
      return refused(
          "solve does not say for what", "Write it as solve a = b for x between 1 mm and 2 mm");
    }
    if (contains(WorkingGrammar.SOLVE) && endsOperand(type(at - 1)) && open < 0) {
      return refused("This line solves", "Write it as solve a = b for x between 1 mm and 2 mm");
    }
    if (contains(WorkingGrammar.IF)
        && endsOperand(type(at - 1))
        && open < 0
        && (here == Token.EOF || here == WorkingGrammar.ELSE || here == WorkingGrammar.THEN)) {
      return refused("if needs its then and its else", "Write it as if a > b then x else y");
    }
    return endsOperand(type(at - 1)) ? afterOperand(here, open) : noOperand(here);
  }

  private Refusal limit() {
    boolean place = type(1) == WorkingGrammar.NAME;
    if (at == 1 || (at == 2 && !place)) {
      return refused("limit does not say of what", "Write it as limit lash: 0.10 .. 0.30 mm");
    }
    if (contains(WorkingGrammar.AT) && type(at - 1) == WorkingGrammar.AT) {
      return refused("After at stands least or most", "Write at least or at most");
    }
    if (type(at) == WorkingGrammar.EQUAL || !contains(WorkingGrammar.COLON)) {
      return refused(
          "After the name of what is limited stands a colon",
          "Write it as limit lash: 0.10 .. 0.30 mm");
    }
    if (type(at) == Token.EOF && endsOperand(type(at - 1)) && openBracket() < 0) {
      return refused(
          "This limit has one end only",
          "Write 0.10 .. 0.30 mm, 0.20 ± 0.05 mm, at least 0.10 mm or at most 0.30 mm");
    }
    if (type(at) == WorkingGrammar.LESS
        || type(at) == WorkingGrammar.AT_MOST
        || type(at) == WorkingGrammar.GREATER
        || type(at) == WorkingGrammar.AT_LEAST) {
      return refused("A limit is not a comparison", "Write at least 0.10 mm or at most 0.30 mm");
    }
    return refused(
        "This limit cannot be read",
        "Write it as limit lash: 0.10 .. 0.30 mm \"drawing, sheet 3\" (condition: \"hot\")");
  }

  private Refusal beginning() {
    Lexeme token = token(0);
    if (LineWords.isWord(token.getText()) && token.getType() != WorkingGrammar.TEXT) {
      return refused(
          "\"" + token.getText() + "\" is a word of the language", "Choose another name");
    }
    if (token.getType() == WorkingGrammar.FUNCTION) {
      return refused(
          "A line begins with the name of what it gives",
          "Write it as result = " + token.getText() + "(...)");
    }
    return refused(
        "A line begins with the name of what it gives",
        "Write it as name [mm] = ..., or begin it with -- and a blank for a comment");
  }

  private Refusal afterName() {
    String name = text(0);
    int next = type(1);
    if (next == WorkingGrammar.NAME && type(2) != 0) {
      return refused(
          "A name has no blanks", "Write " + name + "_" + text(1) + ", or = after the name");
    }
    if (next == WorkingGrammar.COLON) {
      return refused(
          "After the name stands =, not a colon",
          "Write = for a value, or limit " + name + ": ... for a limit");
    }
    if (next == WorkingGrammar.DOT) {
      return refused("A name on the left has no point", "Write " + name + "_" + text(2));
    }
    if (next == WorkingGrammar.UNITMARK) {
      return refused("After the unit mark stands =", "Write = and then the value");
    }
    return refused(
        "After the name stands =",
        "Write it as " + name + " = ..., or begin the line with -- and a blank for a comment");
  }

  private Refusal afterOperand(int here, int open) {
    return switch (here) {
      case WorkingGrammar.CLOSE ->
          open >= 0
              ? refused("This bracket closes a list", "Close the list with ] first")
              : refused("This bracket closes nothing", "Take it out, or open it before");
      case WorkingGrammar.LIST_CLOSE ->
          refused("] closes no list here", "Close the bracket with ) first");
      case WorkingGrammar.COMMA ->
          refused(
              "A comma stands only between the arguments of a function and in a list",
              "Write a point for decimals");
      case WorkingGrammar.UP_TO ->
          refused(
              "Two ends stand only in a limit",
              "Write it as limit " + text(0) + ": 0.10 .. 0.30 mm on a line of its own");
      case WorkingGrammar.PLUS_MINUS ->
          refused(
              "± stands once and last on the right of a line",
              "Give the uncertain value a line of its own");
      case WorkingGrammar.COLON ->
          refused("A colon stands only after the name of an argument", "Take it out");
      case WorkingGrammar.NUMBER,
          WorkingGrammar.NAME,
          WorkingGrammar.FUNCTION,
          WorkingGrammar.TEXT,
          WorkingGrammar.OPEN,
          WorkingGrammar.LIST_OPEN ->
          sideBySide();
      case WorkingGrammar.UNITMARK ->
          refused("A unit mark stands only after the name on the left", "Move it there");
      case Token.EOF -> refused("The line ends too early", "Write the rest of it");
      default -> refused("\"" + text(at) + "\" does not belong here", "Take it out");
    };
  }

  private Refusal sideBySide() {
    if (type(at) == WorkingGrammar.TEXT) {
      return refused("A text stands alone or in an argument", "Put a remark after -- and a blank");
    }
    boolean feet = text(at - 1).equals("ft") && type(at) == WorkingGrammar.NUMBER;
    if (feet) {
      return refused("Feet and inches are two values", "Write + between them");
    }
    if (type(at) == WorkingGrammar.NAME && UnitReader.isUnit(text(at))) {
      return refused(
          "Between " + said(at - 1) + " and " + said(at) + " a sign is missing",
          "Write * 1 "
              + text(at)
              + " for the unit, or * "
              + text(at)
              + " for a value of that name");
    }
    return refused(
        "Between " + said(at - 1) + " and " + said(at) + " a sign is missing",
        "Write *, +, - or / between them");
  }

  private String said(int index) {
    return switch (type(index)) {
      case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> "the bracket";
      case WorkingGrammar.OPEN, WorkingGrammar.LIST_OPEN -> "the next bracket";
      case WorkingGrammar.UNIT -> text(index - 1) + " " + text(index);
      default -> text(index);
    };
  }

  private Refusal noOperand(int here) {
    String before = type(at - 1) == WorkingGrammar.UNITMARK ? "]" : text(at - 1);
    String after = "Write a number, a name or a formula there";
    if (here == WorkingGrammar.ARGUMENT || here == WorkingGrammar.COLON) {
      return refused(
          "A colon stands only after the name of an argument of a function", "Take it out");
    }
    if (here == WorkingGrammar.SOLVE) {
      return refused("solve stands first on the right of a line", "Give it a line of its own");
    }
    if (here == WorkingGrammar.IF) {
      return refused("if inside a formula stands in brackets", "Write (if a > b then x else y)");
    }
    if (here == WorkingGrammar.NOT) {
      return refused("not before a part of a sum stands in brackets", "Write (not a)");
    }
    if (here == WorkingGrammar.TIMES && type(at - 1) == WorkingGrammar.TIMES) {
      return refused("* stands twice", "Write ^ for a power, * for a product");
    }
    if (here != Token.EOF && LineWords.isWord(text(at)) && here != WorkingGrammar.TEXT) {
      return refused(
          "\"" + text(at) + "\" is a word of the language and cannot stand here",
          "Choose another name for a value");
    }
    if (here == Token.EOF) {
      return refused("The line ends after \"" + before + "\"", after);
    }
    return refused("Between \"" + before + "\" and \"" + text(at) + "\" a value is missing", after);
  }

  private boolean contains(int type) {
    return tokens.stream().anyMatch(t -> t.getType() == type);
  }

  /** Index of the innermost bracket still open at the place; -1 where there is none. */
  private int openBracket() {
    int depth = 0;
    for (int i = at - 1; i >= 0; i--) {
      switch (type(i)) {
        case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> depth++;
        case WorkingGrammar.OPEN,
            WorkingGrammar.LIST_OPEN,
            WorkingGrammar.NOTE_OPEN,
            WorkingGrammar.REMARK_OPEN -> {
          if (depth == 0) {
            return i;
          }
          depth--;
        }
        default -> {}
      }
    }
    return -1;
  }

  /** Whether an operand may end with this token. */
  static boolean endsOperand(int type) {
    return switch (type) {
      case WorkingGrammar.NUMBER,
          WorkingGrammar.UNIT,
          WorkingGrammar.NAME,
          WorkingGrammar.TEXT,
          WorkingGrammar.CLOSE,
          WorkingGrammar.LIST_CLOSE ->
          true;
      default -> false;
    };
  }
}
