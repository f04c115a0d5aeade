package endfloat.working.typeset;

import endfloat.catalogue.Catalogue;
import endfloat.working.Expression;
import endfloat.working.References;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Sets one expression; brackets stand only where the order of the signs needs them. */
final class ExpressionMath {
  /** How tightly a sign holds its operands, from the loosest. */
  private enum Hold {
    BRANCH,
    OR,
    AND,
    NOT,
    COMPARE,
    SUM,
    PRODUCT,
    SIGN,
    POWER,
    ALONE
  }

  private final Catalogue catalogue;
  private final UnaryOperator<String> shown;
  private final FunctionMath functions;

  /**
   * @param shown gives the figure to put in for a name; null to leave the name
   */
  ExpressionMath(Catalogue catalogue, UnaryOperator<String> shown) {
    this.catalogue = catalogue;
    this.shown = shown;
    this.functions = new FunctionMath(this);
  }

  String set(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      return MathNumber.set(literal.digits(), literal.unit());
    }
    if (expression instanceof Expression.Text text) {
      return Markup.text("“" + text.text() + "”");
    }
    if (expression instanceof Expression.Place place) {
      return place(place, false);
    }
    if (expression instanceof Expression.Call call) {
      return call(call);
    }
    if (expression instanceof Expression.Unary unary) {
      return unary(unary);
    }
    if (expression instanceof Expression.Binary binary) {
      return binary(binary);
    }
    if (expression instanceof Expression.Comparison comparison) {
      return comparison(comparison);
    }
    if (expression instanceof Expression.Conditional conditional) {
      return conditional(conditional);
    }
    return listing((Expression.Listing) expression);
  }

  private String place(Expression.Place place, boolean beside) {
    String path =
        place.fields().isEmpty()
            ? place.name()
            : place.name() + "." + String.join(".", place.fields());
    String figure = place.name().equals("pi") ? null : shown.apply(path);
    if (figure != null) {
      return MathNumber.shown(figure, !beside);
    }
    return fields(MathName.of(place.name()).markup(), place.fields());
  }

  /** The expression with its names left as they are. */
  String named(Expression expression) {
    return new ExpressionMath(catalogue, name -> null).set(expression);
  }

  /** Results of a record stand after it with a point. */
  static String fields(String of, List<String> fields) {
    if (fields.isEmpty()) {
      return of;
    }
    StringBuilder row = new StringBuilder(of);
    for (String field : fields) {
      row.append(Markup.text(".")).append(MathName.of(field).markup());
    }
    return Markup.row(row.toString());
  }

  private String call(Expression.Call call) {
    return Substitution.of(catalogue, call)
        .map(this::set)
        .orElseGet(() -> fields(functions.set(call), call.fields()));
  }

  private Hold hold(Expression expression) {
    if (expression instanceof Expression.Conditional) {
      return Hold.BRANCH;
    }
    if (expression instanceof Expression.Comparison) {
      return Hold.COMPARE;
    }
    if (expression instanceof Expression.Unary unary) {
      return unary.operator() == Expression.UnaryOperator.NOT ? Hold.NOT : Hold.SIGN;
    }
    if (expression instanceof Expression.Binary binary) {
      return switch (binary.operator()) {
        case OR -> Hold.OR;
        case AND -> Hold.AND;
        case ADD, SUBTRACT -> Hold.SUM;
        case MULTIPLY, DIVIDE -> Hold.PRODUCT;
        case POWER -> Hold.POWER;
      };
    }
    if (expression instanceof Expression.Call call) {
      return Substitution.of(catalogue, call).map(this::hold).orElse(Hold.ALONE);
    }
    return Hold.ALONE;
  }

  /** The expression, in brackets where it holds less tightly than its place asks. */
  private String held(Expression expression, Hold least) {
    if (hold(expression).compareTo(least) < 0) {
      return Markup.bracketed(set(expression));
    }
    return expression instanceof Expression.Place place && least.compareTo(Hold.SUM) > 0
        ? place(place, true)
        : set(expression);
  }

  private String unary(Expression.Unary unary) {
    return switch (unary.operator()) {
      case NOT -> Markup.row(Markup.text("not "), held(unary.operand(), Hold.NOT));
      case MINUS -> Markup.row(Markup.sign("\u2212"), held(unary.operand(), Hold.POWER));
      case PLUS -> Markup.row(Markup.sign("+"), held(unary.operand(), Hold.POWER));
    };
  }

  private String binary(Expression.Binary binary) {
    return switch (binary.operator()) {
      case OR -> words(binary, " or ", Hold.OR);
      case AND -> words(binary, " and ", Hold.AND);
      case ADD -> signed(binary, "+", Hold.SUM);
      case SUBTRACT -> signed(binary, "\u2212", Hold.PRODUCT);
      case MULTIPLY -> product(binary);
      case DIVIDE -> Markup.element("mfrac", set(binary.left()), set(binary.right()));
      case POWER -> power(binary);
    };
  }

  private String words(Expression.Binary binary, String word, Hold hold) {
    return Markup.row(held(binary.left(), hold), Markup.text(word), held(binary.right(), Hold.NOT));
  }

  private String signed(Expression.Binary binary, String sign, Hold right) {
    boolean again = startsWithSign(binary.right());
    String after = again ? Markup.bracketed(set(binary.right())) : held(binary.right(), right);
    return Markup.row(held(binary.left(), Hold.SUM), Markup.sign(sign), after);
  }

  private static boolean startsWithSign(Expression expression) {
    return expression instanceof Expression.Unary
        || (expression instanceof Expression.Binary binary
            && binary.operator() == Expression.BinaryOperator.MULTIPLY
            && startsWithSign(binary.left()));
  }

  /** Factors side by side; × where a number follows, and everywhere once numbers are put in. */
  private String product(Expression.Binary binary) {
    List<Expression> factors = new ArrayList<>();
    Expression rest = binary;
    while (rest instanceof Expression.Binary product
        && product.operator() == Expression.BinaryOperator.MULTIPLY) {
      factors.add(0, product.right());
      rest = product.left();
    }
    factors.add(0, rest);
    boolean numbers = hasFigure(binary);
    StringBuilder row = new StringBuilder();
    for (int i = 0; i < factors.size(); i++) {
      Expression factor = factors.get(i);
      if (i > 0) {
        boolean times = numbers || beginsWithNumber(factor);
        row.append(times ? Markup.sign("×") : Markup.space());
      }
      row.append(factor(factor, i == 0, i + 1 < factors.size()));
    }
    return Markup.row(row.toString());
  }

  private String factor(Expression factor, boolean first, boolean followed) {
    if (followed && factor instanceof Expression.Call call) {
      return Substitution.of(catalogue, call)
          .map(e -> held(e, Hold.PRODUCT))
          .orElseGet(() -> fields(functions.closed(call), call.fields()));
    }
    if (!first && startsWithSign(factor)) {
      return Markup.bracketed(set(factor));
    }
    return held(factor, first ? Hold.PRODUCT : Hold.SIGN);
  }

  /** Two numbers side by side would read as one. */
  private boolean beginsWithNumber(Expression expression) {
    if (expression instanceof Expression.Literal) {
      return true;
    }
    if (expression instanceof Expression.Binary binary) {
      return switch (binary.operator()) {
        case DIVIDE -> true;
        case MULTIPLY, POWER -> beginsWithNumber(binary.left());
        default -> false;
      };
    }
    return expression instanceof Expression.Call call
        && Substitution.of(catalogue, call).map(this::beginsWithNumber).orElse(false);
  }

  /** Whether a figure is put in for a name of the expression. */
  boolean hasFigure(Expression expression) {
    return References.of(expression).stream().anyMatch(n -> shown.apply(n) != null);
  }

  private String power(Expression.Binary binary) {
    boolean plain =
        hold(binary.left()) == Hold.ALONE
            && !(binary.left() instanceof Expression.Literal literal && literal.unit().isPresent())
            && !(binary.left() instanceof Expression.Call)
            && !hasFigure(binary.left());
    String base = set(binary.left());
    return Markup.element(
        "msup", plain ? base : Markup.bracketed(base), Markup.row(set(binary.right())));
  }

  private String comparison(Expression.Comparison comparison) {
    StringBuilder row = new StringBuilder(held(comparison.operands().get(0), Hold.SUM));
    for (int i = 0; i < comparison.operators().size(); i++) {
      row.append(Markup.sign(sign(comparison.operators().get(i))));
      row.append(held(comparison.operands().get(i + 1), Hold.SUM));
    }
    return Markup.row(row.toString());
  }

  static String sign(Expression.Comparator comparator) {
    return switch (comparator) {
      case LESS -> "<";
      case AT_MOST -> "≤";
      case GREATER -> ">";
      case AT_LEAST -> "≥";
      case EQUAL -> "=";
      case UNEQUAL -> "≠";
    };
  }

  private String conditional(Expression.Conditional conditional) {
    List<String> rows = new ArrayList<>();
    Expression rest = conditional;
    while (rest instanceof Expression.Conditional branch) {
      rows.add(caseRow(set(branch.then()), Markup.text("if ") + set(branch.condition())));
      rest = branch.otherwise();
    }
    rows.add(caseRow(set(rest), Markup.text("else")));
    return Markup.row(
        "<mo stretchy=\"true\">{</mo>", Markup.element("mtable", String.join("", rows)));
  }

  private static String caseRow(String value, String condition) {
    return Markup.element(
        "mtr", Markup.element("mtd", value), Markup.element("mtd", Markup.row(condition)));
  }

  private String listing(Expression.Listing listing) {
    List<String> elements = listing.elements().stream().map(this::set).toList();
    return Markup.row(
        "<mo stretchy=\"true\">[</mo>",
        String.join(Markup.sign(","), elements),
        "<mo stretchy=\"true\">]</mo>");
  }
}
