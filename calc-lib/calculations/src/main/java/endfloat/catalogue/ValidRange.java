package endfloat.catalogue;

/**
 * Where an argument is valid, in SI.
 *
 * @param text as the definition writes it, such as {@code 14.5 deg .. 30 deg}
 * @param least negative infinity where there is none
 * @param greatest infinity where there is none
 * @param leastIncluded whether the lower end is valid itself
 * @param greatestIncluded whether the upper end is valid itself
 */
public record ValidRange(
    String text, double least, double greatest, boolean leastIncluded, boolean greatestIncluded) {

  public boolean holds(double value) {
    return (leastIncluded ? value >= least : value > least)
        && (greatestIncluded ? value <= greatest : value < greatest);
  }
}
