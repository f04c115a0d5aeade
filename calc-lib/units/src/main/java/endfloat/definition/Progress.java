package endfloat.definition;

/** Told by long work how far it is; its answer says whether to go on. */
@FunctionalInterface
public interface Progress {
  Progress IGNORED = fraction -> true;

  /**
   * @param fraction done so far, 0 to 1
   * @return false if the work has been cancelled and must stop
   */
  boolean reached(double fraction);
}
