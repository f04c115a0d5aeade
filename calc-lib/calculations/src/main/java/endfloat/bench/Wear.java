package endfloat.bench;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.units.Indexed;
import endfloat.units.Uncertain;
import java.util.Optional;

/** What diameters read in planes and directions say of a worn bore or journal. */
public final class Wear {
  private static final String SOURCE =
      "trade definition: two diameters in one plane, two along one direction; compare ISO 12181-1"
          + " and ISO 12180-1";
  private static final String TWO_POINT =
      "Ovality is the difference of two diameters: twice the ISO roundness deviation of a pure oval;"
          + " a three-lobed form does not show between two points.";

  private Wear() {}

  /**
   * Wear of bores or journals.
   *
   * @param ovality largest difference of two diameters in one plane; none from one direction
   * @param ovalityAt where that is
   * @param taper largest difference of two diameters along one direction; none from one plane
   * @param taperAt where that is
   * @param greatest diameter read
   * @param greatestAt where that is
   * @param least diameter read
   * @param leastAt where that is
   * @param wear diametral, of the worst place against the new size
   */
  public record Worn(
      @In("mm") Uncertain ovality,
      String ovalityAt,
      @In("mm") Uncertain taper,
      String taperAt,
      @In("mm") double greatest,
      String greatestAt,
      @In("mm") double least,
      String leastAt,
      @In("mm") Uncertain wear) {}

  /**
   * Ovality, taper, greatest and least diameter of bores, and the wear against the new size.
   *
   * <p>Readings carry an axis of planes and one of directions; with further axes (cylinder) the
   * worst is found over all and its place named.
   *
   * @param diameters readings with stations
   * @param newSize diameter when new; given, the wear is greatest diameter less this
   * @param planeAxis name of the axis of planes along the bore
   * @param directionAxis name of the axis of directions across it
   */
  @Calculates(
      source = SOURCE,
      cautions = TWO_POINT,
      terms = {"cylinder bore", "liner", "out-of-round", "taper", "ovality", "bore gauge"})
  public static Worn boreWear(
      @In("mm") @Range("> 0 mm") Indexed diameters,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double newSize,
      @Default("\"plane\"") String planeAxis,
      @Default("\"direction\"") String directionAxis) {
    Diameters read = new Diameters(diameters, planeAxis, directionAxis);
    return worn(read, read.at(read.greatest()) - newSize);
  }

  /**
   * Ovality, taper, greatest and least diameter of journals, and the wear against the new size.
   *
   * <p>Readings carry an axis of planes and one of directions; with further axes (journal) the
   * worst is found over all and its place named.
   *
   * @param diameters readings with stations
   * @param newSize diameter when new; given, the wear is this less the least diameter
   * @param planeAxis name of the axis of planes along the journal
   * @param directionAxis name of the axis of directions across it
   */
  @Calculates(
      source = SOURCE,
      cautions = TWO_POINT,
      terms = {"crankshaft", "crankpin", "main", "out-of-round", "taper", "ovality", "micrometer"})
  public static Worn journalWear(
      @In("mm") @Range("> 0 mm") Indexed diameters,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double newSize,
      @Default("\"plane\"") String planeAxis,
      @Default("\"direction\"") String directionAxis) {
    Diameters read = new Diameters(diameters, planeAxis, directionAxis);
    return worn(read, newSize - read.at(read.least()));
  }

  private static Uncertain size(Optional<Diameters.Difference> difference, String lacking) {
    return difference
        .map(one -> new Uncertain(one.size(), 0))
        .orElseGet(() -> Uncertain.absent(lacking));
  }

  private static Worn worn(Diameters read, double wear) {
    Optional<Diameters.Difference> ovality = read.ovality();
    Optional<Diameters.Difference> taper = read.taper();
    return new Worn(
        size(ovality, "ovality needs two directions in one plane"),
        ovality.map(Diameters.Difference::where).orElse(null),
        size(taper, "taper needs two planes along one direction"),
        taper.map(Diameters.Difference::where).orElse(null),
        read.at(read.greatest()),
        read.place(read.greatest()),
        read.at(read.least()),
        read.place(read.least()),
        Double.isNaN(wear)
            ? Uncertain.absent("no wear without the new size: give new_size from the schedule")
            : new Uncertain(wear, 0));
  }
}
