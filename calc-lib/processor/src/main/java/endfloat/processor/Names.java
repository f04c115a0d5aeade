package endfloat.processor;

import java.util.Locale;

/** Java's names and those of the working language. */
final class Names {
  private Names() {}

  /**
   * {@code backlashFromAxialShift} to {@code backlash_from_axial_shift}, {@code teeth1} to {@code
   * teeth_1}; {@code t1} stays.
   */
  static String snake(String camel) {
    return camel
        .replaceAll("([a-z0-9])([A-Z])", "$1_$2")
        .replaceAll("([a-z]{2})([0-9])", "$1_$2")
        .toLowerCase(Locale.ROOT);
  }

  /** {@code LEFT_OUT} to {@code left out}. */
  static String words(String constant) {
    return constant.replace('_', ' ').toLowerCase(Locale.ROOT);
  }

  static String capital(String subject) {
    return subject.substring(0, 1).toUpperCase(Locale.ROOT) + subject.substring(1);
  }

  /** A Java string literal. */
  static String literal(String text) {
    return '"'
        + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n").replace("\r", "")
        + '"';
  }
}
