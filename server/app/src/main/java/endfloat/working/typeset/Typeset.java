package endfloat.working.typeset;

import endfloat.catalogue.Catalogue;
import endfloat.working.Expression;
import endfloat.working.Line;
import endfloat.working.References;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;

/** Sets lines of a working as mathematics. The result is one {@code math} element, or empty. */
public final class Typeset {
  private final Catalogue catalogue;

  public Typeset(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The right side of a definition, the whole of a limit or a correlation. */
  public String formula(Line line) {
    return math(line, new ExpressionMath(catalogue, name -> null), Spoken.line(line));
  }

  /**
   * The line with its numbers put in; empty where no name of it has one to put in.
   *
   * @param shown gives the figure of a name, or of a result such as {@code fit.pressure}, as the
   *     sheet shows it, {@code 0.335 mm}; null where there is none, then the name stands
   */
  public String numbers(Line line, UnaryOperator<String> shown) {
    if (References.of(line).isEmpty()) {
      return "";
    }
    AtomicBoolean anyPut = new AtomicBoolean();
    UnaryOperator<String> put =
        name -> {
          String number = shown.apply(name);
          anyPut.compareAndSet(false, number != null);
          return number;
        };
    String numbers =
        math(line, new ExpressionMath(catalogue, put), Spoken.line(line) + ", with its numbers");
    return anyPut.get() ? numbers : "";
  }

  /** One expression, such as a figure in a note. */
  public String expression(Expression expression) {
    return wrapped(
        new ExpressionMath(catalogue, name -> null).set(expression), Spoken.of(expression));
  }

  /** A name on the left of a line. */
  public static String name(String name) {
    return wrapped(MathName.of(name).markup(), MathName.spoken(name));
  }

  /** A name in running text: {@code lash<sub>hot</sub>}. */
  public static String nameHtml(String name) {
    return MathName.of(name).html();
  }

  private static String wrapped(String inner, String spoken) {
    String said = XmlText.escaped(spoken);
    return "<math alttext=\"" + said + "\" aria-label=\"" + said + "\">" + inner + "</math>";
  }

  /** On a line of its own, so that fractions have their full size. */
  private static String displayed(String inner, String spoken) {
    return wrapped(inner, spoken).replaceFirst("<math ", "<math displaystyle=\"true\" ");
  }

  private static String math(Line line, ExpressionMath maths, String spoken) {
    if (line instanceof Line.Definition definition) {
      return displayed(definition(definition, maths), spoken);
    }
    if (line instanceof Line.Limit limit) {
      return displayed(limit(limit, maths), spoken);
    }
    Line.Correlate correlate = (Line.Correlate) line;
    String pair =
        Markup.bracketed(
            MathName.of(correlate.first()).markup()
                + Markup.sign(",")
                + MathName.of(correlate.second()).markup());
    return displayed(
        Markup.row("<mi>r</mi>", pair, Markup.sign("="), maths.set(correlate.coefficient())),
        spoken);
  }

  private static String definition(Line.Definition definition, ExpressionMath maths) {
    if (definition.solve().isPresent()) {
      return solve(definition.solve().get(), maths);
    }
    String value = maths.set(definition.value().orElseThrow());
    return definition
        .spread()
        .map(s -> Markup.row(value, Markup.sign("±"), maths.set(s.half()), note(s, maths)))
        .orElse(value);
  }

  private static String note(Line.Spread spread, ExpressionMath maths) {
    List<String> notes = new ArrayList<>();
    spread
        .coverage()
        .ifPresent(k -> notes.add(Markup.row("<mi>k</mi>", Markup.sign("="), maths.set(k))));
    spread
        .degrees()
        .ifPresent(d -> notes.add(Markup.row("<mi>ν</mi>", Markup.sign("="), maths.set(d))));
    return notes.isEmpty()
        ? ""
        : Markup.space() + Markup.bracketed(String.join(Markup.sign(","), notes));
  }

  private static String solve(Line.Solve solve, ExpressionMath maths) {
    List<String> equations = new ArrayList<>();
    for (Line.Equation equation : solve.equations()) {
      equations.add(
          Markup.row(maths.set(equation.left()), Markup.sign("="), maths.set(equation.right())));
    }
    List<String> unknowns = new ArrayList<>();
    for (Line.Unknown unknown : solve.unknowns()) {
      unknowns.add(
          Markup.row(
              MathName.of(unknown.name()).markup(),
              Markup.text(" between "),
              maths.set(unknown.low()),
              Markup.text(" and "),
              maths.set(unknown.high())));
    }
    return Markup.row(
        String.join(Markup.sign(","), equations),
        Markup.text(" solved for "),
        String.join(Markup.sign(","), unknowns));
  }

  private static String limit(Line.Limit limit, ExpressionMath maths) {
    String place = maths.set(limit.place());
    if (limit.tolerance().isPresent()) {
      Line.Tolerance tolerance = limit.tolerance().get();
      return Markup.row(
          place,
          Markup.sign("="),
          maths.set(tolerance.nominal()),
          Markup.sign("±"),
          maths.set(tolerance.half()));
    }
    String low = limit.low().map(l -> maths.set(l) + Markup.sign("≤")).orElse("");
    String high = limit.high().map(h -> Markup.sign("≤") + maths.set(h)).orElse("");
    return Markup.row(low, place, high);
  }
}
