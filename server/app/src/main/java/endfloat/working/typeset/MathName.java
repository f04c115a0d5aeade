package endfloat.working.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A name as it is set. Which one of several it is, as in {@code lash_cold} or {@code bore_2},
 * stands below the line, and so do figures at the end of its first part; Greek letters may be
 * written out. A name of more words, or one whose second word is the quantity itself, as in {@code
 * pressure_angle}, is no letter with an index: it stands as it was typed. This is the one place
 * where that is decided.
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

  /** Letters that one word below the line may have. */
  private static final int LONGEST = 9;

  /** Letters that two words below a single letter may have, with the blank between them. */
  private static final int LONGEST_TWO = 14;

  /** Words for what is measured, which tell nothing from its like. */
  private static final Set<String> QUANTITIES =
      Set.of(
          "angle",
          "area",
          "backlash",
          "bore",
          "change",
          "clearance",
          "depth",
          "diameter",
          "drop",
          "float",
          "force",
          "gap",
          "growth",
          "height",
          "interference",
          "lash",
          "length",
          "limit",
          "load",
          "mass",
          "number",
          "pitch",
          "pressure",
          "radius",
          "rate",
          "ratio",
          "size",
          "slope",
          "span",
          "speed",
          "stress",
          "thickness",
          "torque",
          "travel",
          "wear",
          "weight",
          "width");

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
    List<String> words =
        underscore > 0
            ? Stream.of(name.substring(underscore + 1).split("_", -1))
                .filter(word -> !word.isEmpty())
                .toList()
            : List.of();
    if (!isIndex(words, first.length() == 1 || GREEK.containsKey(first))) {
      return new MathName(name, List.of());
    }
    words.forEach(word -> below.add(GREEK.getOrDefault(word, word)));
    return new MathName(GREEK.getOrDefault(first, first), List.copyOf(below));
  }

  /** Whether words are short enough to stand below, and tell which one of several it is. */
  private static boolean isIndex(List<String> words, boolean belowALetter) {
    int letters = String.join(" ", words).length();
    return switch (words.size()) {
      case 0 -> true;
      case 1 -> letters <= LONGEST && (belowALetter || !QUANTITIES.contains(words.get(0)));
      case 2 -> belowALetter && letters <= LONGEST_TWO;
      default -> false;
    };
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
