package endfloat.gears;

/**
 * Contact of a pinion in a ring, in the transverse section, and where tips foul.
 *
 * @param tip1 radius over the pinion's tips [m]
 * @param base1 base radius of the pinion [m]
 * @param tip2 radius inside the ring's tips [m]
 * @param base2 base radius of the ring [m]
 * @param centres working centre distance [m]
 * @param angle working pressure angle, transverse [rad]
 */
record RingPath(
    double teeth1,
    double teeth2,
    double tip1,
    double base1,
    double tip2,
    double base2,
    double centres,
    double angle) {

  private static double reach(double tip, double base) {
    return Math.sqrt(Math.max(0, tip * tip - base * base));
  }

  /** Distance along the line of action from the ring's base tangent point to the pinion's [m]. */
  private double betweenTangents() {
    return centres * StrictMath.sin(angle);
  }

  /** ε_α; contact begins at the ring's tip, where there is an involute of the pinion. */
  double ratio() {
    double inner = Math.max(reach(tip2, base2), betweenTangents());
    double length = reach(tip1, base1) + betweenTangents() - inner;
    return length * teeth1 / (2 * StrictMath.PI * base1);
  }

  String interference() {
    if (tip2 < base2 || reach(tip2, base2) < betweenTangents()) {
      return "tip of the ring reaches below the pinion's base circle";
    }
    return fouls() ? "tips foul away from the line of centres" : "none";
  }

  /**
   * Whether the pinion's tip runs into the ring's where the tip circles cross: there it must not be
   * ahead of the ring's flank, both turning from the place of contact at the pitch point.
   */
  private boolean fouls() {
    if (tip2 >= centres + tip1) {
      return false;
    }
    double cos1 = (tip2 * tip2 - tip1 * tip1 - centres * centres) / (2 * centres * tip1);
    double cos2 = (centres * centres + tip2 * tip2 - tip1 * tip1) / (2 * centres * tip2);
    if (Math.abs(cos1) > 1 || Math.abs(cos2) > 1) {
      return false;
    }
    double working = Involute.inv(angle);
    double pinion = StrictMath.acos(cos1) + Involute.inv(StrictMath.acos(base1 / tip1)) - working;
    double ring = StrictMath.acos(cos2);
    double flank = Involute.inv(StrictMath.acos(base2 / tip2));
    return pinion * teeth1 / teeth2 + working - flank < ring;
  }
}
