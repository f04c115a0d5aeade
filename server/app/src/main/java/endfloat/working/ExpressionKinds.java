package endfloat.working;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the kind of every part of an expression, and resolves it. */
final class ExpressionKinds {
  /** Symbols that stand below the stroke of usual units, so that no one reads a value there. */
  private static final Set<String> OFTEN_BELOW =
      Set.of(
          "m", "cm", "mm", "in", "ft", "s", "min", "h", "K", "kg", "N", "rad", "rev", "deg", "kW");

  private final Checking checking;
  private final ProductRules products;
  private final FunctionKinds functions;
  private final CallKinds calls;

  ExpressionKinds(Checking checking) {
    this.checking = checking;
    this.products = new ProductRules(checking);
    this.functions = new FunctionKinds(checking);
    this.calls = new CallKinds(checking);
  }

  Typed typed(Expression written) {
    if (written instanceof Expression.Literal literal) {
      Kind kind = literal.unit().map(Kinds::of).orElse(Kinds.NUMBER);
      literal.unit().ifPresent(u -> hintAtName(literal, u.symbol()));
      return new Typed.Constant(literal.span(), kind, literal.si());
    }
    if (written instanceof Expression.Place place) {
      return new Places(checking).typed(place);
    }
    if (written instanceof Expression.Binary binary) {
      return binary(binary);
    }
    if (written instanceof Expression.Unary unary) {
      return unary(unary);
    }
    if (written instanceof Expression.Call call) {
      return BuiltIn.named(call.function()).isPresent() || FunctionKinds.isSpecial(call.function())
          ? functions.typed(call)
          : calls.typed(call);
    }
    if (written instanceof Expression.Comparison comparison) {
      return comparison(comparison);
    }
    if (written instanceof Expression.Conditional conditional) {
      return conditional(conditional);
    }
    if (written instanceof Expression.Listing listing) {
      return listing(listing);
    }
    return new Typed.Words(written.span(), ((Expression.Text) written).text());
  }

  /** {@code 20 mm/d} is millimetres a day, also where the record has a value d. */
  private void hintAtName(Expression.Literal literal, String unit) {
    int stroke = unit.lastIndexOf('/');
    String below = stroke > 0 ? unit.substring(stroke + 1) : "";
    if (!below.isEmpty()
        && !OFTEN_BELOW.contains(below)
        && checking.scope.kindOf(below).isPresent()) {
      checking.hint(
          literal.span(),
          "\"" + below + "\" in " + literal.digits() + " " + unit + " is the unit, not the value",
          "Put a blank on both sides of the stroke for the value: / " + below);
    }
  }

  private Typed binary(Expression.Binary binary) {
    return switch (binary.operator()) {
      case ADD, SUBTRACT -> {
        Operand left = checking.operand(binary.left());
        Operand right = checking.operand(binary.right());
        boolean plus = binary.operator() == Expression.BinaryOperator.ADD;
        Kind kind = SumRules.sum(left, right, plus);
        yield apply(binary.span(), kind, plus ? BuiltIn.ADD : BuiltIn.SUBTRACT, left, right);
      }
      case MULTIPLY, DIVIDE -> products.product(binary);
      case POWER -> products.power(binary);
      case AND, OR -> {
        Operand left = truth(binary.left());
        Operand right = truth(binary.right());
        Kind kind = SeriesRules.spread(Kinds.TRUTH, List.of(left, right));
        boolean and = binary.operator() == Expression.BinaryOperator.AND;
        yield apply(binary.span(), kind, and ? BuiltIn.AND : BuiltIn.OR, left, right);
      }
    };
  }

  static Typed apply(Span span, Kind kind, BuiltIn function, Operand left, Operand right) {
    return new Typed.Apply(span, kind, function, List.of(left.typed(), right.typed()));
  }

  private Operand truth(Expression written) {
    Operand operand = checking.operand(written);
    if (!(operand.element() instanceof Kind.Truth)) {
      throw new KindException(
          written.span(),
          "A condition is wanted, and this is " + KindWords.a(operand.element()),
          "Compare it with something: =, <, <=, >, >=, !=");
    }
    return operand;
  }

  private Typed unary(Expression.Unary unary) {
    if (unary.operator() == Expression.UnaryOperator.NOT) {
      Operand operand = truth(unary.operand());
      return new Typed.Apply(unary.span(), operand.kind(), BuiltIn.NOT, List.of(operand.typed()));
    }
    Optional<Expression.Literal> literal = Operand.literal(unary);
    // A bracket ends behind its literal: -(20 degC) is no literal, and a temperature has no
    // opposite.
    if (literal.isPresent() && literal.get().span().to() == unary.span().to()) {
      return signedLiteral(unary);
    }
    Operand operand = checking.operand(unary.operand());
    SumRules.numeric(operand);
    if (unary.operator() == Expression.UnaryOperator.PLUS) {
      return operand.typed();
    }
    if (Kinds.isTemperature(operand.kind())) {
      throw new KindException(
          unary.span(),
          "A temperature is a point on a scale and has no opposite",
          "Take a difference of two temperatures first");
    }
    return new Typed.Apply(unary.span(), operand.kind(), BuiltIn.NEGATE, List.of(operand.typed()));
  }

  /** A minus before a literal belongs to it, so that -40 degC is a temperature. */
  private static Typed signedLiteral(Expression.Unary unary) {
    Expression.Literal literal = Operand.literal(unary).orElseThrow();
    String digits = Operand.digits(unary);
    Kind kind = literal.unit().map(Kinds::of).orElse(Kinds.NUMBER);
    double si = literal.unit().map(u -> si(unary.span(), u, digits)).orElse(literal.si());
    boolean minus = digits.startsWith("-");
    double signed = literal.unit().isPresent() ? si : minus ? -si : si;
    if (Kinds.isTemperature(kind) && signed < 0) {
      throw new KindException(
          unary.span(), "This temperature is below absolute zero", "Check the number and its unit");
    }
    return new Typed.Constant(unary.span(), kind, signed);
  }

  private static double si(Span span, Unit unit, String digits) {
    try {
      return unit.toSi(digits);
    } catch (UnitException e) {
      throw new KindException(span, UnitReader.sentence(e), UnitReader.wayOut(e));
    }
  }

  private Typed comparison(Expression.Comparison comparison) {
    List<Operand> operands = comparison.operands().stream().map(checking::operand).toList();
    for (int i = 0; i < comparison.operators().size(); i++) {
      compare(operands.get(i), operands.get(i + 1), comparison.operators().get(i));
    }
    return new Typed.Compare(
        comparison.span(),
        SeriesRules.spread(Kinds.TRUTH, operands),
        operands.stream().map(Operand::typed).toList(),
        comparison.operators());
  }

  private static void compare(Operand left, Operand right, Expression.Comparator operator) {
    Kind kind = SumRules.common(left, right, SumRules.Act.COMPARE);
    boolean ordered =
        operator != Expression.Comparator.EQUAL && operator != Expression.Comparator.UNEQUAL;
    boolean number = kind instanceof Kind.Quantity || kind instanceof Kind.Temperature;
    if (kind instanceof Kind.Date) {
      return;
    }
    if (!number && (ordered || !(kind instanceof Kind.Words))) {
      throw new KindException(
          right.span(),
          "This compares " + KindWords.a(kind) + " with " + KindWords.a(kind),
          kind instanceof Kind.Words
              ? "Texts are only = or !=; dates of a column have an order"
              : "Write and, or, not");
    }
  }

  private Typed conditional(Expression.Conditional conditional) {
    Operand condition = truth(conditional.condition());
    Operand then = checking.operand(conditional.then());
    Operand otherwise = checking.operand(conditional.otherwise());
    Kind element = SumRules.common(then, otherwise, SumRules.Act.BRANCH);
    return new Typed.Choose(
        conditional.span(),
        SeriesRules.spread(element, List.of(condition, then, otherwise)),
        condition.typed(),
        then.typed(),
        otherwise.typed());
  }

  private Typed listing(Expression.Listing listing) {
    if (listing.elements().isEmpty()) {
      throw new KindException(
          listing.span(),
          "A list of nothing has no kind",
          "Write its values; [] stands only as an argument that may be left out");
    }
    List<Operand> elements = new ArrayList<>();
    for (Expression element : listing.elements()) {
      Operand operand = checking.operand(element);
      if (operand.kind() instanceof Kind.Parts parts && parts.list()) {
        throw new KindException(
            element.span(),
            "This is a list of " + parts.part() + " parts already",
            "Leave the brackets [ ] out");
      }
      if (Kinds.isSeries(operand.kind()) || operand.kind() instanceof Kind.Fields) {
        throw new KindException(
            element.span(),
            "A list holds single values, and this is " + KindWords.a(operand.kind()),
            operand.kind() instanceof Kind.Fields fields
                ? SumRules.instead(operand, fields)
                : "Reduce it first, such as mean(x), or use it without the list");
      }
      elements.add(operand);
    }
    Kind kind = elements.get(0).kind();
    Operand first = elements.get(0);
    for (Operand element : elements.subList(1, elements.size())) {
      kind = SumRules.common(first, element, SumRules.Act.LIST);
      first = first.isZero() ? element : first;
    }
    List<Typed> typed = elements.stream().map(Operand::typed).toList();
    if (kind instanceof Kind.Parts parts) {
      return new Typed.ListOf(listing.span(), new Kind.Parts(parts.part(), true), typed);
    }
    return new Typed.ListOf(
        listing.span(),
        new Kind.Series(kind, List.of(), Collections.nCopies(typed.size(), List.of())),
        typed);
  }
}
