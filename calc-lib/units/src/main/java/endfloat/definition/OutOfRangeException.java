package endfloat.definition;

/**
 * A value lies outside the range where a calculation holds. The fields are in SI, so that a surface
 * can say it again in the reader's unit.
 */
public final class OutOfRangeException extends RefusedException {
  private static final long serialVersionUID = 1L;

  private final String quantity;
  private final double given;
  private final double least;
  private final double greatest;
  private final String unit;
  private final String wayOut;

  /**
   * @param quantity name of the argument in the working language
   * @param given the value [SI]
   * @param least lower end of the range [SI], negative infinity where there is none
   * @param greatest upper end of the range [SI], infinity where there is none
   * @param unit symbol of the unit that the definition names
   * @param wayOut what to do, a sentence; may be empty
   */
  public OutOfRangeException(
      String quantity, double given, double least, double greatest, String unit, String wayOut) {
    super(message(quantity, given, least, greatest, wayOut));
    this.quantity = quantity;
    this.given = given;
    this.least = least;
    this.greatest = greatest;
    this.unit = unit;
    this.wayOut = wayOut;
  }

  private static String message(
      String quantity, double given, double least, double greatest, String wayOut) {
    String limits =
        Double.isInfinite(greatest)
            ? "at least " + least
            : Double.isInfinite(least) ? "at most " + greatest : least + " to " + greatest;
    return quantity
        + " = "
        + given
        + " [SI] is outside "
        + limits
        + (wayOut.isEmpty() ? "" : "; " + wayOut);
  }

  public String quantity() {
    return quantity;
  }

  public double given() {
    return given;
  }

  public double least() {
    return least;
  }

  public double greatest() {
    return greatest;
  }

  public String unit() {
    return unit;
  }

  public String wayOut() {
    return wayOut;
  }
}
