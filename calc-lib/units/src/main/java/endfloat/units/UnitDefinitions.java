package endfloat.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads {@code units.txt}, each unit from those before it. This stands before the first page, so it
 * is written in loops: streams and joined strings cost more here than the table itself.
 */
final class UnitDefinitions {
  private static final Map<String, String> PREFIXES =
      Map.of(
          "n", "nano", "u", "micro", "m", "milli", "c", "centi", "d", "deci", "da", "deca", "h",
          "hecto", "k", "kilo", "M", "mega", "G", "giga");
  private static final Map<String, Integer> POWERS =
      Map.of("n", -9, "u", -6, "m", -3, "c", -2, "d", -1, "da", 1, "h", 2, "k", 3, "M", 6, "G", 9);

  /** One line of the table, for those who list it. */
  record Definition(Atom atom, List<String> aliases, String ucum, String meaning) {}

  /** By symbol, alias and UCUM code. */
  final Map<String, Atom> byName = new LinkedHashMap<>();

  final List<Definition> definitions = new ArrayList<>();

  UnitDefinitions() {
    try (InputStream in = UnitDefinitions.class.getResourceAsStream("units.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          define(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of units", e);
    }
  }

  private void define(String line) {
    String[] cell = line.split("\\|", -1);
    for (int i = 0; i < cell.length; i++) {
      cell[i] = cell[i].strip();
    }
    String symbol = cell[0];
    UnitSystem system =
        cell[5].isEmpty() ? null : UnitSystem.valueOf(cell[5].toUpperCase(Locale.ROOT));
    Atom atom = atom(symbol, cell[6].isEmpty() ? symbol : cell[6], cell[3], system);
    List<String> aliases = words(cell[1]);
    List<String> codes = words(cell[2]);
    Definition base = new Definition(atom, aliases, codes.isEmpty() ? "" : codes.get(0), cell[7]);
    add(base, codes);
    for (String prefix : words(cell[4])) {
      prefixed(prefix, base, codes);
    }
  }

  private void prefixed(String prefix, Definition base, List<String> codes) {
    Atom one = base.atom();
    String symbol = prefix.concat(one.symbol());
    Factor factor = Factor.of(BigDecimal.ONE.scaleByPowerOfTen(POWERS.get(prefix)));
    Atom atom =
        new Atom(
            symbol,
            (prefix.equals("u") ? "µ" : prefix).concat(one.printed()),
            one.dimension(),
            one.factor().times(factor),
            null,
            symbol,
            one.system());
    // A prefix goes before a sign (kΩ, ml), not before a word.
    List<String> signs = new ArrayList<>();
    for (String alias : base.aliases()) {
      if (alias.length() == 1) {
        signs.add(prefix.concat(alias));
      }
    }
    List<String> ucum = new ArrayList<>();
    for (String code : codes) {
      ucum.add(prefix.concat(code));
    }
    String meaning = PREFIXES.get(prefix).concat(base.meaning());
    add(new Definition(atom, signs, ucum.isEmpty() ? "" : ucum.get(0), meaning), ucum);
  }

  private void add(Definition definition, List<String> codes) {
    definitions.add(definition);
    name(definition.atom().symbol(), definition.atom());
    for (String alias : definition.aliases()) {
      name(alias, definition.atom());
    }
    for (String code : codes) {
      byName.putIfAbsent(code, definition.atom());
    }
  }

  private void name(String name, Atom atom) {
    if (byName.put(name, atom) != null) {
      throw new IllegalStateException("the table of units has \"" + name + "\" twice");
    }
  }

  private static List<String> words(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split(" ", -1));
  }

  private Atom atom(String symbol, String printed, String is, UnitSystem system) {
    String[] word = is.split(" ", -1);
    if (word[0].equals("base")) {
      Dimension dimension = base(word[1]);
      return new Atom(symbol, printed, dimension, Factor.ONE, null, symbol, system);
    }
    if (word[0].equals("point")) {
      Factor factor = Factor.of(word[2].equals("K") ? "1" : "5/9");
      BigDecimal offset = new BigDecimal(word[1]);
      return new Atom(symbol, printed, Dimension.TEMPERATURE, factor, offset, word[2], system);
    }
    ExactUnit of = new ExactUnit(UnitText.read(word[1], byName::get));
    Factor factor = Factor.of(word[0]).times(of.factor());
    return new Atom(symbol, printed, of.dimension(), factor, null, symbol, system);
  }

  private static Dimension base(String name) {
    return switch (name) {
      case "length" -> Dimension.LENGTH;
      case "mass" -> Dimension.MASS;
      case "time" -> Dimension.TIME;
      case "temperature" -> Dimension.TEMPERATURE;
      case "current" -> Dimension.CURRENT;
      case "angle" -> Dimension.ANGLE;
      case "none" -> Dimension.NONE;
      default -> throw new IllegalStateException("no base " + name);
    };
  }
}
