package endfloat.working;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.grammar.WorkingGrammar;
import endfloat.working.grammar.WorkingGrammar.PrimaryContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/** From the parser's tree of an expression to ours. */
final class TreeBuilder {
  private static final Unit ONE = UnitTable.find("1");

  private final SourceText source;

  TreeBuilder(SourceText source) {
    this.source = source;
  }

  Span span(ParserRuleContext context) {
    return source.span(((Lexeme) context.start).from(), ((Lexeme) context.stop).to());
  }

  Span span(Token token) {
    Lexeme lexeme = (Lexeme) token;
    return source.span(lexeme.from(), lexeme.to());
  }

  private Span span(ParserRuleContext first, ParserRuleContext last) {
    return source.span(((Lexeme) first.start).from(), ((Lexeme) last.stop).to());
  }

  private static int type(ParseTree node) {
    return ((TerminalNode) node).getSymbol().getType();
  }

  Expression expression(WorkingGrammar.ExpressionContext context) {
    if (context.IF() == null) {
      return or(context.or());
    }
    return new Expression.Conditional(
        span(context),
        or(context.or()),
        expression(context.expression(0)),
        expression(context.expression(1)));
  }

  private Expression or(WorkingGrammar.OrContext context) {
    Expression left = and((WorkingGrammar.AndContext) context.getChild(0));
    for (int i = 2; i < context.getChildCount(); i += 2) {
      WorkingGrammar.AndContext next = (WorkingGrammar.AndContext) context.getChild(i);
      left =
          new Expression.Binary(span(context, next), Expression.BinaryOperator.OR, left, and(next));
    }
    return left;
  }

  private Expression and(WorkingGrammar.AndContext context) {
    Expression left = not((WorkingGrammar.NotContext) context.getChild(0));
    for (int i = 2; i < context.getChildCount(); i += 2) {
      WorkingGrammar.NotContext next = (WorkingGrammar.NotContext) context.getChild(i);
      left =
          new Expression.Binary(
              span(context, next), Expression.BinaryOperator.AND, left, not(next));
    }
    return left;
  }

  private Expression not(WorkingGrammar.NotContext context) {
    if (context.getChildCount() == 2) {
      return new Expression.Unary(
          span(context),
          Expression.UnaryOperator.NOT,
          not((WorkingGrammar.NotContext) context.getChild(1)));
    }
    return comparison((WorkingGrammar.ComparisonContext) context.getChild(0));
  }

  private Expression comparison(WorkingGrammar.ComparisonContext context) {
    Expression first = sum((WorkingGrammar.SumContext) context.getChild(0));
    if (context.getChildCount() == 1) {
      return first;
    }
    List<Expression> operands = new ArrayList<>();
    List<Expression.Comparator> operators = new ArrayList<>();
    operands.add(first);
    for (int i = 1; i < context.getChildCount(); i += 2) {
      operators.add(comparator(type(context.getChild(i).getChild(0))));
      operands.add(sum((WorkingGrammar.SumContext) context.getChild(i + 1)));
    }
    return new Expression.Comparison(span(context), List.copyOf(operands), List.copyOf(operators));
  }

  private static Expression.Comparator comparator(int type) {
    return switch (type) {
      case WorkingGrammar.LESS -> Expression.Comparator.LESS;
      case WorkingGrammar.AT_MOST -> Expression.Comparator.AT_MOST;
      case WorkingGrammar.GREATER -> Expression.Comparator.GREATER;
      case WorkingGrammar.AT_LEAST -> Expression.Comparator.AT_LEAST;
      case WorkingGrammar.EQUAL -> Expression.Comparator.EQUAL;
      default -> Expression.Comparator.UNEQUAL;
    };
  }

  Expression sum(WorkingGrammar.SumContext context) {
    Expression left = product((WorkingGrammar.ProductContext) context.getChild(0));
    for (int i = 2; i < context.getChildCount(); i += 2) {
      WorkingGrammar.ProductContext next = (WorkingGrammar.ProductContext) context.getChild(i);
      Expression.BinaryOperator operator =
          type(context.getChild(i - 1)) == WorkingGrammar.PLUS
              ? Expression.BinaryOperator.ADD
              : Expression.BinaryOperator.SUBTRACT;
      left = new Expression.Binary(span(context, next), operator, left, product(next));
    }
    return left;
  }

  private Expression product(WorkingGrammar.ProductContext context) {
    Expression left = sign((WorkingGrammar.SignContext) context.getChild(0));
    for (int i = 2; i < context.getChildCount(); i += 2) {
      WorkingGrammar.SignContext next = (WorkingGrammar.SignContext) context.getChild(i);
      Expression.BinaryOperator operator =
          type(context.getChild(i - 1)) == WorkingGrammar.TIMES
              ? Expression.BinaryOperator.MULTIPLY
              : Expression.BinaryOperator.DIVIDE;
      left = new Expression.Binary(span(context, next), operator, left, sign(next));
    }
    return left;
  }

  private Expression sign(WorkingGrammar.SignContext context) {
    if (context.getChildCount() == 1) {
      return power((WorkingGrammar.PowerContext) context.getChild(0));
    }
    return signed(
        span(context),
        type(context.getChild(0)),
        sign((WorkingGrammar.SignContext) context.getChild(1)));
  }

  private static Expression signed(Span span, int type, Expression operand) {
    return new Expression.Unary(
        span,
        type == WorkingGrammar.MINUS
            ? Expression.UnaryOperator.MINUS
            : Expression.UnaryOperator.PLUS,
        operand);
  }

  private Expression power(WorkingGrammar.PowerContext context) {
    Expression base = primary((PrimaryContext) context.getChild(0));
    if (context.getChildCount() == 1) {
      return base;
    }
    Expression exponent = exponent((WorkingGrammar.ExponentContext) context.getChild(2));
    return new Expression.Binary(span(context), Expression.BinaryOperator.POWER, base, exponent);
  }

  private Expression exponent(WorkingGrammar.ExponentContext context) {
    if (context.getChildCount() == 1) {
      return power((WorkingGrammar.PowerContext) context.getChild(0));
    }
    return signed(
        span(context),
        type(context.getChild(0)),
        exponent((WorkingGrammar.ExponentContext) context.getChild(1)));
  }

  private Expression primary(PrimaryContext context) {
    ParseTree first = context.getChild(0);
    if (first instanceof WorkingGrammar.CallContext call) {
      return call(call);
    }
    if (first instanceof WorkingGrammar.PlaceContext place) {
      return place(place);
    }
    return switch (type(first)) {
      case WorkingGrammar.NUMBER -> literal(context);
      case WorkingGrammar.TEXT ->
          new Expression.Text(span(context), ((TerminalNode) first).getSymbol().getText());
      case WorkingGrammar.LIST_OPEN ->
          new Expression.Listing(
              span(context), context.expression().stream().map(this::expression).toList());
      default -> expression(context.expression(0));
    };
  }

  private Expression literal(PrimaryContext context) {
    Lexeme number = (Lexeme) context.start;
    Lexeme unit = context.getChildCount() == 2 ? (Lexeme) context.stop : null;
    double si = si(number, unit == null ? ONE : unit.unit());
    return new Expression.Literal(
        span(context), number.getText(), Optional.ofNullable(unit).map(Lexeme::unit), si);
  }

  private double si(Lexeme number, Unit unit) {
    double si;
    try {
      si = unit.toSi(number.getText());
    } catch (UnitException e) {
      throw new Refusal(number.from(), number.to(), UnitReader.sentence(e), UnitReader.wayOut(e));
    }
    if (!Double.isFinite(si)) {
      throw new Refusal(
          number.from(), number.to(), "The number is too large", "Check its power of ten");
    }
    if (si == 0 && !isZero(number.getText())) {
      throw new Refusal(
          number.from(), number.to(), "The number is too small", "Check its power of ten");
    }
    return si;
  }

  private static boolean isZero(String digits) {
    for (int i = 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      if (c == 'e' || c == 'E' || c == '/') {
        break;
      }
      if (c >= '1' && c <= '9') {
        return false;
      }
    }
    return true;
  }

  private Expression call(WorkingGrammar.CallContext context) {
    Token function = context.start;
    List<Expression.Argument> arguments = new ArrayList<>();
    for (WorkingGrammar.ArgumentContext argument : context.argument()) {
      arguments.add(argument(argument));
    }
    return new Expression.Call(
        span(context),
        span(function),
        function.getText(),
        List.copyOf(arguments),
        names(context.NAME()));
  }

  private Expression.Argument argument(WorkingGrammar.ArgumentContext context) {
    Optional<String> name = Optional.ofNullable(context.ARGUMENT()).map(TerminalNode::getText);
    return new Expression.Argument(span(context), name, expression(context.expression()));
  }

  Expression.Place place(WorkingGrammar.PlaceContext context) {
    List<String> names = names(context.NAME());
    return new Expression.Place(
        span(context), names.get(0), List.copyOf(names.subList(1, names.size())));
  }

  private static List<String> names(List<TerminalNode> nodes) {
    return nodes.isEmpty() ? List.of() : nodes.stream().map(TerminalNode::getText).toList();
  }
}
