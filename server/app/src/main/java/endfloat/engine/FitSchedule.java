package endfloat.engine;

import endfloat.definition.RefusedException;
import endfloat.fits.FitVerdict;
import endfloat.record.Cell;
import endfloat.record.FitRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the rows of a schedule of fits come to: which part, if any, is to be renewed. */
public final class FitSchedule {
  private FitSchedule() {}

  /**
   * One row as it stands.
   *
   * @param figure name of the figure measured; there is none where nothing was entered
   * @param asNew how it stands to the limits of new parts, where the worn limit decides
   * @param sizes in the order of the row
   */
  public record Standing(
      FitRow row,
      String figure,
      Optional<Judgement> asNew,
      List<SizeStanding> sizes,
      Renewal renewal) {}

  /**
   * The size of one part.
   *
   * @param used share of its wear allowance: 0 at the new limit, 1 at the worn one; empty where its
   *     limits do not say
   */
  public record SizeStanding(
      FitRow.Size size, String figure, Optional<Judgement> asNew, OptionalDouble used) {}

  /** Which part is to be renewed, and why. */
  public enum Advice {
    /** Nothing is to be renewed, or nothing can be said yet. */
    NONE,
    /** Parts past their own worn limits, and the fit past its own. */
    PAST_LIMIT,
    /** Parts past their own worn limits while the fit holds: some authorities let them be. */
    WORN_BUT_FIT_HOLDS,
    /** Both parts in, the fit out: the one that has used more of its wear allowance. */
    MORE_WORN,
    /** The fit is out, and the sizes entered do not say whose fault it is. */
    NOT_DECIDED
  }

  /**
   * Which part of a fit to renew.
   *
   * @param sizes positions in the row of the parts that the advice is about
   */
  public record Renewal(Advice advice, List<Integer> sizes) {
    static final Renewal NONE = new Renewal(Advice.NONE, List.of());
  }

  /** The rows of a clause of fits. */
  public static List<Standing> of(Cell cell, ValueGraph graph) {
    List<Standing> all = new ArrayList<>();
    for (FitRow row : cell.fits()) {
      String name = FitLines.fit(cell.id(), row);
      List<SizeStanding> sizes = new ArrayList<>();
      for (int i = 0; i < row.sizes().size(); i++) {
        String size = FitLines.size(cell.id(), row, i);
        sizes.add(
            new SizeStanding(row.sizes().get(i), size, asNew(graph, size), used(graph, size)));
      }
      all.add(
          new Standing(
              row, name, asNew(graph, name), List.copyOf(sizes), renewal(name, sizes, graph)));
    }
    return all;
  }

  private static Optional<Judgement> asNew(ValueGraph graph, String name) {
    return graph.comparisons(name).stream().min(java.util.Comparator.comparing(Judgement::verdict));
  }

  private static Optional<Verdict> verdict(ValueGraph graph, String name) {
    return graph.figure(name).flatMap(Figure::verdict);
  }

  private static OptionalDouble used(ValueGraph graph, String name) {
    Optional<Figure> figure =
        graph
            .figure(name)
            .filter(f -> f.value().filter(Value.Scalar.class::isInstance).isPresent());
    Optional<Judgement> fresh = asNew(graph, name);
    if (figure.isEmpty() || fresh.isEmpty() || figure.get().judgements().size() != 1) {
      return OptionalDouble.empty();
    }
    Judgement limits = fresh.get();
    Judgement worn = figure.get().judgements().get(0);
    // an end that wear leaves alone stays as new: the other one says which way wear goes
    double wornLimit = worn.high() > limits.high() ? worn.high() : worn.low();
    boolean whole = Double.isFinite(limits.low()) && Double.isFinite(limits.high());
    boolean oneWay =
        worn.high() > limits.high() != worn.low() < limits.low() && Double.isFinite(wornLimit);
    if (!whole || !oneWay) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(
          FitVerdict.fitVerdict(limits.low(), limits.high(), wornLimit, figure.get().si(), 0)
              .used());
    } catch (RefusedException e) {
      return OptionalDouble.empty();
    }
  }

  private static Renewal renewal(String name, List<SizeStanding> sizes, ValueGraph graph) {
    Optional<Verdict> fit = verdict(graph, name);
    List<Integer> past = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      if (verdict(graph, sizes.get(i).figure()).filter(Verdict.OUTSIDE::equals).isPresent()) {
        past.add(i);
      }
    }
    boolean out = fit.filter(Verdict.OUTSIDE::equals).isPresent();
    if (!past.isEmpty()) {
      boolean holds = fit.filter(Verdict.WITHIN::equals).isPresent();
      return new Renewal(holds ? Advice.WORN_BUT_FIT_HOLDS : Advice.PAST_LIMIT, past);
    }
    if (!out) {
      return Renewal.NONE;
    }
    boolean known =
        sizes.size() > 1
            && sizes.stream()
                .allMatch(
                    s ->
                        s.used().isPresent()
                            && verdict(graph, s.figure())
                                .filter(Verdict.WITHIN::equals)
                                .isPresent());
    if (!known) {
      return new Renewal(Advice.NOT_DECIDED, List.of());
    }
    int most = 0;
    boolean alike = false;
    for (int i = 1; i < sizes.size(); i++) {
      int order =
          Double.compare(sizes.get(i).used().getAsDouble(), sizes.get(most).used().getAsDouble());
      alike = order == 0 || (alike && order < 0);
      most = order > 0 ? i : most;
    }
    return alike
        ? new Renewal(Advice.NOT_DECIDED, List.of())
        : new Renewal(Advice.MORE_WORN, List.of(most));
  }
}
