package endfloat.fits;

import endfloat.definition.RefusedException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a drawing writes in one go: a nominal size with a tolerance class or a fit, such as {@code
 * 25 H7} or {@code 50 H7/g6}.
 *
 * @param size nominal size [m]
 * @param designation the rest
 */
record SizedClass(double size, String designation) {
  private static final Pattern FORM =
      Pattern.compile("[Øø⌀]?\\s*(\\d+(?:\\.\\d+)?)\\s*(mm|in)?\\s*([A-Za-z].*)");

  /** The size is in mm unless the text says in. */
  static SizedClass parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      throw new RefusedException(
          "\"" + text + "\" is no size with its tolerance class; write it like \"25 H7\"");
    }
    double number = Double.parseDouble(matcher.group(1));
    boolean inches = "in".equals(matcher.group(2));
    return new SizedClass(inches ? number * 254 / 1e4 : number / 1000, matcher.group(3));
  }
}
