package endfloat.working;

import java.util.ArrayList;
import java.util.List;

/** Some of a series: those at which a condition holds, or those of one group after another. */
final class Selections {
  private final Checking checking;

  Selections(Checking checking) {
    this.checking = checking;
  }

  /** {@code only(x, where: condition)}. */
  Typed only(Expression.Call call) {
    Given given = Given.of(call, List.of("x", "where"));
    given.require(call, List.of("x", "where"));
    Operand of = checking.operand(given.byName().get("x").value());
    if (!(of.kind() instanceof Kind.Series series)) {
      throw new KindException(
          of.span(),
          "only chooses from a series, and this is " + KindWords.a(of.kind()),
          "Give it a column of a table or a reading with stations");
    }
    Operand where = checking.operand(given.byName().get("where").value());
    if (!(where.element() instanceof Kind.Truth)) {
      throw new KindException(
          where.span(),
          "where takes a condition, and this is " + KindWords.a(where.element()),
          "Compare it with something, such as wear.batch = \"B2\"");
    }
    alongside(of, where, "A condition");
    return new Typed.Only(
        call.span(),
        new Kind.Series(series.element(), series.axes(), List.of()),
        of.typed(),
        where.typed());
  }

  /** What tells the groups of a series apart. */
  static Operand beside(Operand of, Operand by) {
    if (!(by.element() instanceof Kind.Words)
        && !(by.element() instanceof Kind.Date)
        && !(by.element() instanceof Kind.Truth)) {
      throw new KindException(
          by.span(),
          "by takes texts, and this is " + KindWords.a(by.element()),
          "Group by a column of texts, dates or yes and no; make ranges with if ... then");
    }
    alongside(of, by, "What it goes by");
    return by;
  }

  private static void alongside(Operand of, Operand other, String said) {
    if (!(other.kind() instanceof Kind.Series)) {
      throw new KindException(
          other.span(),
          said + " has to be a series over the same rows, and this is " + KindWords.a(other.kind()),
          "Name a column of the same table");
    }
    SeriesRules.spread(Kinds.NUMBER, List.of(of, other));
    if (((Kind.Series) other.kind()).axes().size() > ((Kind.Series) of.kind()).axes().size()) {
      throw new KindException(
          other.span(),
          said + " has more stations than the series",
          "Reduce it first, such as max(x, over: \"plane\")");
    }
  }

  /** The axes of the groups, one a column that they are told by. */
  static List<String> axes(List<Operand> by) {
    List<String> axes = new ArrayList<>();
    for (Operand one : by) {
      String axis = axis(one);
      if (axes.contains(axis)) {
        throw new KindException(
            one.span(),
            "Groups cannot go by two columns that are called " + axis,
            "Give one of them a line of its own under another name");
      }
      axes.add(axis);
    }
    return List.copyOf(axes);
  }

  /** The head of the column. */
  private static String axis(Operand by) {
    if (by.typed() instanceof Typed.Name name) {
      return name.name().substring(name.name().lastIndexOf('.') + 1);
    }
    return "group";
  }

  /** A share of all values, as a number. */
  static Operand share(Operand share) {
    if (!Kinds.isNumber(share.kind()) || Kinds.isSeries(share.kind())) {
      throw new KindException(
          share.span(),
          "The share of a quantile is a pure number, and this is " + KindWords.a(share.kind()),
          "Write 0.9 or 90 %");
    }
    if (share.typed() instanceof Typed.Constant c && !(c.si() > 0 && c.si() < 1)) {
      throw new KindException(
          share.span(),
          "The share of a quantile lies between 0 and 1",
          "Write 0.9 or 90 %; min and max give the ends");
    }
    return share;
  }
}
