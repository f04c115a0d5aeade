package endfloat.bench;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.List;

/** How far a shaft can move along its axis. */
public final class EndFloat {
  private EndFloat() {}

  /**
   * End float, the whole travel from stop to stop.
   *
   * @param cold at 20 degC
   * @param hot at the temperatures of the links
   * @param change hot less cold
   * @param between the two thrust faces
   * @param state float left, bound where the hot float is not above zero, or bound cold
   */
  public record Travel(
      @In("mm") double cold,
      @In("mm") double hot,
      @In("mm") double change,
      String between,
      State state) {}

  /** Whether the shaft can still move. */
  public enum State {
    FLOAT_LEFT,
    BOUND,
    /** Free when hot, but not to be put together or turned cold; or sides are exchanged. */
    BOUND_COLD
  }

  /**
   * End float of a shaft cold and hot, from the lengths between its two thrust faces: what the
   * housing holds apart less what the shaft fills.
   *
   * <p>Links go once round the loop from one stop to the other: housing, covers, panels and shims
   * that hold the stops apart; shaft, collars, spacers, wheels and washers that fill the room. With
   * a measured cold float the links give only the change.
   *
   * @param links lengths of the loop, each with its own material and temperature
   * @param faceOne the thrust face at one end, by name
   * @param faceTwo the thrust face at the other end, by name
   * @param measured end float measured at 20 degC; not given: it is worked out from the lengths
   * @return the float; a hot float not above zero means bound, it is never a working clearance
   */
  @Calculates(
      source =
          "derived: chain of lengths, each growing freely from 20 degC (ISO 1) by its own mean"
              + " coefficient",
      cautions = {
        "Levering a shaft: keep clear of the other end, and under an engine only when it stands on"
            + " supports.",
        "Stop to stop: for the float to one side of a position, take the links on that side only.",
        "One temperature for a whole block is an assumption; shafts on the oil side run hotter.",
        "Float of a bevel or helical gear adds to its backlash: 2 e tan a sin d, or e tan b."
      },
      terms = {"end play", "endplay", "axial clearance", "thrust", "crankshaft", "stack"})
  public static Travel endFloat(
      List<FloatLink> links,
      String faceOne,
      String faceTwo,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double measured) {
    if (links.isEmpty()) {
      throw new RefusedException("no link is given: name the lengths between the two faces");
    }
    if (faceOne.isBlank() || faceTwo.isBlank() || faceOne.strip().equals(faceTwo.strip())) {
      throw new RefusedException("name the two thrust faces between which the shaft floats");
    }
    boolean bothSides =
        links.stream().map(FloatLink::side).distinct().count() == FloatLink.Side.values().length;
    if (!bothSides) {
      throw new RefusedException("the loop needs links of the housing and of the shaft");
    }
    double cold =
        Double.isNaN(measured) ? links.stream().mapToDouble(FloatLink::signed).sum() : measured;
    double change = links.stream().mapToDouble(FloatLink::growth).sum();
    double hot = cold + change;
    return new Travel(
        cold,
        hot,
        change,
        "from " + faceOne.strip() + " to " + faceTwo.strip(),
        hot <= 0 ? State.BOUND : cold <= 0 ? State.BOUND_COLD : State.FLOAT_LEFT);
  }
}
