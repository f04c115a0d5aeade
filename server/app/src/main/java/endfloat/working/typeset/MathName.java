package endfloat.working.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A name as it is set: what follows the first underscore, and figures at the end of the first part,
 * stand below the line; Greek letters may be written out.
 */
record MathName(String base, List<String> below) {
  private static final Map<String, String> GREEK =
      Map.ofEntries(
          Map.entry("alpha", "α"),
          Map.entry("beta", "β"),
          Map.entry("gamma", "γ"),
          Map.entry("delta", "δ"),
          Map.entry("epsilon", "ε"),
          Map.entry("zeta", "ζ"),
          Map.entry("eta", "η"),
          Map.entry("theta", "θ"),
          Map.entry("iota", "ι"),
          Map.entry("kappa", "κ"),
          Map.entry("lambda", "λ"),
          Map.entry("mu", "μ"),
          Map.entry("nu", "ν"),
          Map.entry("xi", "ξ"),
          Map.entry("pi", "π"),
          Map.entry("rho", "ρ"),
          Map.entry("sigma", "σ"),
          Map.entry("tau", "τ"),
          Map.entry("upsilon", "υ"),
          Map.entry("phi", "φ"),
          Map.entry("chi", "χ"),
          Map.entry("psi", "ψ"),
          Map.entry("omega", "ω"),
          Map.entry("Gamma", "Γ"),
          Map.entry("Delta", "Δ"),
          Map.entry("Theta", "Θ"),
          Map.entry("Lambda", "Λ"),
          Map.entry("Xi", "Ξ"),
          Map.entry("Pi", "Π"),
          Map.entry("Sigma", "Σ"),
          Map.entry("Phi", "Φ"),
          Map.entry("Psi", "Ψ"),
          Map.entry("Omega", "Ω"));

  static MathName of(String name) {
    int underscore = name.indexOf('_');
    String first = underscore > 0 ? name.substring(0, underscore) : name;
    List<String> below = new ArrayList<>();
    int letters = first.length();
    while (letters > 0 && Character.isDigit(first.charAt(letters - 1))) {
      letters--;
    }
    boolean figures = letters > 0 && letters < first.length() && first.charAt(0) != '_';
    if (figures) {
      below.add(first.substring(letters));
      first = first.substring(0, letters);
    }
    if (underscore > 0) {
      for (String part : name.substring(underscore + 1).split("_", -1)) {
        if (!part.isEmpty()) {
          below.add(GREEK.getOrDefault(part, part));
        }
      }
    }
    return new MathName(GREEK.getOrDefault(first, first), List.copyOf(below));
  }

  String markup() {
    String set =
        base.codePointCount(0, base.length()) == 1 && isGreek(base.charAt(0))
            ? Markup.upright(base)
            : "<mi>" + XmlText.escaped(base) + "</mi>";
    if (below.isEmpty()) {
      return set;
    }
    // the subscript keeps one height whether or not a letter of the name reaches below the line
    String level = "<mpadded height=\".72em\" depth=\"0\">" + set + "</mpadded>";
    return Markup.element("msub", level, Markup.text(String.join(" ", below)));
  }

  private static boolean isGreek(char c) {
    return Character.UnicodeBlock.GREEK.equals(Character.UnicodeBlock.of(c));
  }

  String html() {
    String set = XmlText.escaped(base);
    return below.isEmpty()
        ? set
        : set + "<sub>" + XmlText.escaped(String.join(" ", below)) + "</sub>";
  }

  /** The words of a name, for those who hear it. */
  static String spoken(String name) {
    return name.replace('_', ' ').strip();
  }
}
