package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/** Reads text in the working language. Never throws on what a person may type. */
public final class Parser {
  private final SourceText source;
  private final LineBuilder lines;
  private final WorkingGrammar grammar = new WorkingGrammar(null);
  private final List<LineProblem> problems = new ArrayList<>();

  private Parser(SourceText source) {
    this.source = source;
    this.lines = new LineBuilder(source);
    grammar.removeErrorListeners();
    grammar.setErrorHandler(new BailErrorStrategy());
    grammar.getInterpreter().setPredictionMode(PredictionMode.SLL);
  }

  /** Every statement of a working; each stands or falls by itself. */
  public static Working parse(String text) {
    SourceText source = new SourceText(text);
    LineReader reader = new LineReader(source);
    Parser parser = new Parser(source);
    List<Line> lines = new ArrayList<>();
    for (Statement statement : reader.statements()) {
      parser
          .read(statement, () -> parser.lines.line(parser.grammar.line(), statement))
          .ifPresent(lines::add);
    }
    return new Working(
        List.copyOf(lines), List.copyOf(parser.problems), List.copyOf(reader.painted()));
  }

  /** One expression, such as the default of an argument or the figure of a note. */
  public static Formula expression(String text) {
    SourceText source = new SourceText(text);
    LineReader reader = new LineReader(source);
    Parser parser = new Parser(source);
    List<Statement> statements = reader.statements();
    Optional<Expression> expression = Optional.empty();
    if (statements.size() == 1) {
      expression =
          parser.read(
              statements.get(0),
              () -> parser.lines.trees().expression(parser.grammar.lone().expression()));
    } else {
      parser.problems.add(
          LineProblem.error(
              source.span(0, source.end(1)),
              statements.isEmpty() ? "There is no formula" : "There is more than one line",
              "Write one formula"));
    }
    return new Formula(expression, List.copyOf(parser.problems), List.copyOf(reader.painted()));
  }

  /**
   * An expression that stands alone.
   *
   * @param expression empty where it could not be read
   */
  public record Formula(
      Optional<Expression> expression, List<LineProblem> problems, List<Token> tokens) {}

  private <T> Optional<T> read(Statement statement, java.util.function.Supplier<T> rule) {
    try {
      if (statement.refusal().isPresent()) {
        throw statement.refusal().get();
      }
      grammar.setInputStream(new LineTokens(statement.tokens()));
      return Optional.of(rule.get());
    } catch (Refusal e) {
      add(e);
    } catch (ParseCancellationException e) {
      add(Syntax.refusal(statement, (RecognitionException) e.getCause()));
    }
    return Optional.empty();
  }

  private void add(Refusal e) {
    problems.add(LineProblem.error(source.span(e.from(), e.to()), e.getMessage(), e.wayOut()));
  }
}
