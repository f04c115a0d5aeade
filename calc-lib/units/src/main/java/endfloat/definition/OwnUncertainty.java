package endfloat.definition;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An argument that says how uncertain another one is. Left out, it is what the sheet knows of that
 * one; a person who forgets it is not told that an uncertain value is exact. The {@link Default}
 * says it in words: {@code "standard uncertainty of x"}, {@code "expanded uncertainty of x"},
 * {@code "correlation of x and y"}. Where no sheet is asked the method is handed NaN.
 *
 * @param kind of number
 * @param of name of the argument that is meant, as the language writes it
 * @param and of the other one, for a correlation; else empty
 */
public record OwnUncertainty(Kind kind, String of, String and) {
  private static final Pattern WORDS =
      Pattern.compile(
          "(standard uncertainty|expanded uncertainty|correlation) of (\\w+)(?: and (\\w+))?");

  /** Which number. */
  public enum Kind {
    STANDARD,
    EXPANDED,
    CORRELATION
  }

  /** The one that a default names; empty where it is a value, or none. */
  public static Optional<OwnUncertainty> of(String fallback) {
    Matcher words = WORDS.matcher(fallback);
    if (!words.matches()) {
      return Optional.empty();
    }
    Kind kind =
        switch (words.group(1)) {
          case "standard uncertainty" -> Kind.STANDARD;
          case "expanded uncertainty" -> Kind.EXPANDED;
          default -> Kind.CORRELATION;
        };
    return (kind == Kind.CORRELATION) == (words.group(3) != null)
        ? Optional.of(
            new OwnUncertainty(kind, words.group(2), words.group(3) == null ? "" : words.group(3)))
        : Optional.empty();
  }

  /**
   * Whether a default is no value of the language: the method is handed NaN, or null for a text.
   */
  public static boolean isLeftOut(String fallback) {
    return fallback.equals(Default.NOT_GIVEN) || of(fallback).isPresent();
  }
}
