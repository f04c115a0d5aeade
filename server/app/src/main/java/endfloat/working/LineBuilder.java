package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.tree.TerminalNode;

/** From the parser's tree of a statement to a {@link Line}. */
final class LineBuilder {
  private static final Set<String> REMARKS = Set.of("condition", "state", "rule");

  private final SourceText source;
  private final TreeBuilder trees;

  LineBuilder(SourceText source) {
    this.source = source;
    this.trees = new TreeBuilder(source);
  }

  TreeBuilder trees() {
    return trees;
  }

  Line line(WorkingGrammar.LineContext context, Statement statement) {
    Span span = source.span(statement.from(), statement.to());
    if (context.definition() != null) {
      return definition(context.definition(), span, statement.comment());
    }
    if (context.limit() != null) {
      return limit(context.limit(), span, statement.comment());
    }
    WorkingGrammar.CorrelateContext correlate = context.correlate();
    TerminalNode first = correlate.NAME(0);
    TerminalNode second = correlate.NAME(1);
    return new Line.Correlate(
        span,
        first.getText(),
        trees.span(first.getSymbol()),
        second.getText(),
        trees.span(second.getSymbol()),
        trees.sum(correlate.sum()),
        statement.comment());
  }

  private Line definition(WorkingGrammar.DefinitionContext context, Span span, String comment) {
    Lexeme name = (Lexeme) context.NAME().getSymbol();
    if (name.getText().equals("pi")) {
      throw new Refusal(
          name.from(), name.to(), "pi is the ratio of a circle", "Choose another name");
    }
    Optional<Line.DeclaredUnit> unit =
        Optional.ofNullable(context.UNITMARK())
            .map(TerminalNode::getSymbol)
            .map(Lexeme.class::cast)
            .map(m -> new Line.DeclaredUnit(trees.span(m), m.getText(), m.unit()));
    return new Line.Definition(
        span,
        name.getText(),
        trees.span(name),
        unit,
        Optional.ofNullable(context.expression()).map(trees::expression),
        Optional.ofNullable(context.solve()).map(this::solve),
        Optional.ofNullable(context.spread()).map(this::spread),
        comment);
  }

  private Line.Spread spread(WorkingGrammar.SpreadContext context) {
    Map<String, Expression> notes = new LinkedHashMap<>();
    for (WorkingGrammar.NoteContext note : context.note()) {
      String name = note.NAME().getText();
      if (!name.equals("k") && !name.equals("dof")) {
        throw refusal(
            note,
            "After ± only k and dof say more",
            "Write (k = 2), (dof = 12) or (k = 2, dof = 12)");
      }
      if (notes.put(name, trees.sum(note.sum())) != null) {
        throw refusal(note, name + " is given twice", "Give it once");
      }
    }
    return new Line.Spread(
        trees.span(context),
        half(context.sum()),
        Optional.ofNullable(notes.get("k")),
        Optional.ofNullable(notes.get("dof")));
  }

  /**
   * {@code a ± b + c}: c is part of the uncertainty to the grammar, of the value to most readers.
   */
  private Expression half(WorkingGrammar.SumContext context) {
    if (context.product().size() > 1) {
      throw refusal(
          context,
          "All that follows ± is the uncertainty, so a sum after it can be read two ways",
          "Put the sum in brackets, or give the uncertain value a line of its own");
    }
    return trees.sum(context);
  }

  private static Refusal refusal(ParserRuleContext at, String message, String wayOut) {
    return new Refusal(((Lexeme) at.start).from(), ((Lexeme) at.stop).to(), message, wayOut);
  }

  private Line.Solve solve(WorkingGrammar.SolveContext context) {
    List<Line.Equation> equations =
        context.equation().stream()
            .map(e -> new Line.Equation(trees.sum(e.sum(0)), trees.sum(e.sum(1))))
            .toList();
    List<Line.Unknown> unknowns =
        context.unknown().stream()
            .map(
                u ->
                    new Line.Unknown(
                        u.NAME().getText(),
                        trees.span(u.NAME().getSymbol()),
                        trees.sum(u.sum(0)),
                        trees.sum(u.sum(1))))
            .toList();
    return new Line.Solve(trees.span(context), equations, unknowns);
  }

  private Line limit(WorkingGrammar.LimitContext context, Span span, String comment) {
    WorkingGrammar.BoundsContext bounds = context.bounds();
    Expression first = trees.sum(bounds.sum(0));
    Optional<Expression> low = Optional.empty();
    Optional<Expression> high = Optional.empty();
    Optional<Line.Tolerance> tolerance = Optional.empty();
    if (bounds.PLUS_MINUS() != null) {
      tolerance = Optional.of(new Line.Tolerance(first, half(bounds.sum(1))));
    } else if (bounds.UP_TO() != null) {
      low = Optional.of(first);
      high = Optional.of(trees.sum(bounds.sum(1)));
    } else if (bounds.LEAST() != null) {
      low = Optional.of(first);
    } else {
      high = Optional.of(first);
    }
    return new Line.Limit(
        span,
        trees.place(context.place()),
        low,
        high,
        tolerance,
        context.TEXT() == null ? "" : context.TEXT().getText(),
        remarks(context.remark()),
        comment);
  }

  private Map<String, String> remarks(List<WorkingGrammar.RemarkContext> remarks) {
    Map<String, String> said = new LinkedHashMap<>();
    for (WorkingGrammar.RemarkContext remark : remarks) {
      String name = remark.ARGUMENT().getText();
      if (!REMARKS.contains(name)) {
        throw refusal(
            remark,
            "\"" + name + "\" is nothing that a limit says",
            "Write (condition: \"hot\", state: \"new\", rule: \"guarded\")");
      }
      String word = remark.TEXT().getText();
      Optional<String> wayOut = LimitWords.wayOut(name, word);
      if (wayOut.isPresent()) {
        throw refusal(remark, LimitWords.refused(name, word), wayOut.get());
      }
      if (said.put(name, remark.TEXT().getText()) != null) {
        throw refusal(remark, name + " is given twice", "Give it once");
      }
    }
    return java.util.Collections.unmodifiableMap(said);
  }
}
