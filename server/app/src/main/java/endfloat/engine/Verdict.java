package endfloat.engine;

import java.util.Optional;

/** What a limit says of a value, from the worst to the best. */
public enum Verdict {
  OUTSIDE("outside"),
  NOT_PROVEN("not proven"),
  WITHIN("within");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  static Verdict worse(Verdict a, Verdict b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  static Optional<Verdict> worst(Iterable<Judgement> judgements) {
    Verdict worst = null;
    for (Judgement judgement : judgements) {
      worst = worst == null ? judgement.verdict() : worse(worst, judgement.verdict());
    }
    return Optional.ofNullable(worst);
  }

  @Override
  public String toString() {
    return word;
  }
}
