package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Scalar;
import endfloat.working.Kind;
import endfloat.working.Span;
import endfloat.working.Typed;
import java.util.List;
import java.util.function.Function;

/** Makes terms of checked expressions. */
final class Planner {
  private final Function<String, Slot> names;
  private final Function<Span, String> source;
  private final String owner;

  /**
   * @param names where each name is found
   * @param source the text that stands at a place
   * @param owner what the expression belongs to; a call belongs to it too, so that a call typed
   *     twice in one line is one call
   */
  Planner(Function<String, Slot> names, Function<Span, String> source, String owner) {
    this.names = names;
    this.source = source;
    this.owner = owner;
  }

  Term plan(Typed typed) {
    if (typed instanceof Typed.Constant constant) {
      return new Term.Fixed(constant.span(), Scalar.exact(constant.si()));
    }
    if (typed instanceof Typed.Name name) {
      return new Term.Named(name.span(), names.apply(name.name()));
    }
    if (typed instanceof Typed.Apply apply) {
      return new ApplyTerm(apply.span(), apply.function(), all(apply.arguments()));
    }
    if (typed instanceof Typed.Calculate calculate) {
      return new CalculateTerm(
          calculate.span(),
          calculate.calculation(),
          all(calculate.arguments()),
          calculate.calculation().name()
              + ":"
              + source.apply(calculate.span()).replaceAll("\\s+", " ")
              + ":"
              + owner,
          calculate.elementByElement());
    }
    if (typed instanceof Typed.Field field) {
      return new SeriesTerms.Field(field.span(), plan(field.of()), field.field());
    }
    if (typed instanceof Typed.Choose choose) {
      return new ConditionTerms.Choose(
          choose.span(), plan(choose.condition()), plan(choose.then()), plan(choose.otherwise()));
    }
    if (typed instanceof Typed.Compare compare) {
      return new ConditionTerms.Compare(
          compare.span(), all(compare.operands()), compare.operators());
    }
    return planWhole(typed);
  }

  Slot slot(String name) {
    return names.apply(name);
  }

  private Term planWhole(Typed typed) {
    if (typed instanceof Typed.Words words) {
      return new Term.Fixed(words.span(), new Value.Words(words.text()));
    }
    if (typed instanceof Typed.NotGiven absent) {
      return new Term.Fixed(absent.span(), Absent.ABSENT);
    }
    if (typed instanceof Typed.Reduce reduce) {
      return new SeriesTerms.Reduce(
          reduce.span(),
          reduce.function(),
          plan(reduce.series()),
          reduce.over(),
          axes(reduce.kind()),
          reduce.by().stream().map(this::plan).toList(),
          reduce.share().map(this::plan));
    }
    if (typed instanceof Typed.Only only) {
      return new SelectionTerms.Only(only.span(), plan(only.series()), plan(only.condition()));
    }
    if (typed instanceof Typed.Pick pick) {
      return new SeriesTerms.Pick(pick.span(), plan(pick.series()), pick.labels(), pick.stage());
    }
    if (typed instanceof Typed.ListOf list) {
      return new SeriesTerms.Listing(list.span(), all(list.elements()));
    }
    if (typed instanceof Typed.Build build) {
      boolean list = build.kind() instanceof Kind.Parts parts && parts.list();
      return new SeriesTerms.Build(
          build.span(), build.part().name(), all(build.components()), list);
    }
    throw new IllegalStateException("no term for " + typed);
  }

  /** Of what is left: the groups, where it goes by groups. */
  private static List<String> axes(Kind kind) {
    return kind instanceof Kind.Series series ? series.axes() : List.of();
  }

  private Term[] all(List<Typed> many) {
    Term[] terms = new Term[many.size()];
    for (int i = 0; i < terms.length; i++) {
      terms[i] = plan(many.get(i));
    }
    return terms;
  }

  static Span[] spans(Term[] terms) {
    Span[] spans = new Span[terms.length];
    for (int i = 0; i < spans.length; i++) {
      spans[i] = terms[i].span();
    }
    return spans;
  }
}
