package endfloat.shafts;

import endfloat.definition.RefusedException;

/**
 * A beam's section as bending knows it.
 *
 * @param secondMoment I [m⁴]
 * @param modulus Z of the section [m³]; NaN where only I is known
 */
record BeamSection(double secondMoment, double modulus) {

  /** The one section that is given: round, rectangular or by its moments. */
  static BeamSection of(
      double diameter,
      double bore,
      double width,
      double depth,
      double secondMoment,
      double sectionModulus) {
    boolean round = !Double.isNaN(diameter);
    boolean rectangle = !Double.isNaN(width) || !Double.isNaN(depth);
    boolean moments = !Double.isNaN(secondMoment);
    if ((round ? 1 : 0) + (rectangle ? 1 : 0) + (moments ? 1 : 0) != 1) {
      throw new RefusedException(
          "Give one section: diameter (and bore), or width and depth, or second_moment (and"
              + " section_modulus for the stress).");
    }
    if (!round && bore != 0) {
      throw new RefusedException(
          "A bore goes with a diameter; give another section by its moments.");
    }
    if (!moments && !Double.isNaN(sectionModulus)) {
      throw new RefusedException(
          "section_modulus goes with second_moment; a round or rectangular section has its own.");
    }
    if (round) {
      Segment segment = new Segment(1, diameter, bore);
      segment.holdHollow();
      return new BeamSection(segment.secondMoment(), 2 * segment.secondMoment() / diameter);
    }
    if (rectangle) {
      if (Double.isNaN(width) || Double.isNaN(depth)) {
        throw new RefusedException("A rectangular section needs both width and depth.");
      }
      double square = width * depth * depth;
      return new BeamSection(square * depth / 12, square / 6);
    }
    return new BeamSection(secondMoment, sectionModulus);
  }
}
