package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * In which unit a sheet shows a figure; the tables are in {@code shown.txt}.
 *
 * <p>A torque that was typed in newton metres is never shown as energy, nor an energy as a torque:
 * a typed unit is exchanged for its neighbour in the other system, and only a result that nobody
 * gave a unit is shown by its dimension.
 */
public final class UnitPreference {
  private static final UnitPreference SHOWN = new UnitPreference();

  private final Map<UnitSystem, Map<Dimension, Unit>> results = new HashMap<>();
  private final Map<UnitSystem, Map<String, Unit>> exchanges = new HashMap<>();

  private UnitPreference() {
    for (UnitSystem system : UnitSystem.values()) {
      results.put(system, new HashMap<>());
      exchanges.put(system, new HashMap<>());
    }
    try (InputStream in = UnitPreference.class.getResourceAsStream("shown.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          read(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of units shown", e);
    }
  }

  private void read(String line) {
    if (line.indexOf('<') > 0) {
      String[] pair = line.split("<", -1);
      exchange(UnitSystem.METRIC, pair[0], pair[1]);
      return;
    }
    String[] cell = line.split("[|>]", -1);
    String american = cell[cell.length - 1];
    if (line.indexOf('>') > 0) {
      exchange(UnitSystem.IMPERIAL, cell[0], cell[1]);
      exchange(UnitSystem.AMERICAN, cell[0], american);
    } else {
      result(UnitSystem.METRIC, cell[0]);
      result(UnitSystem.IMPERIAL, cell[1]);
      result(UnitSystem.AMERICAN, american);
    }
  }

  private void exchange(UnitSystem system, String typed, String shown) {
    Unit from = UnitTable.find(typed.strip());
    Unit to = UnitTable.find(shown.strip());
    if (!from.dimension().equals(to.dimension())
        || exchanges.get(system).put(from.symbol(), to) != null) {
      throw new IllegalStateException("the table of units shown is wrong at " + typed);
    }
  }

  private void result(UnitSystem system, String symbol) {
    Unit unit = UnitTable.find(symbol.strip());
    if (results.get(system).put(unit.dimension(), unit) != null) {
      throw new IllegalStateException("the table of units shown has " + symbol + " twice");
    }
  }

  /**
   * The unit in which to show a figure.
   *
   * @param typed the unit it was typed or declared in
   * @param system of the sheet
   */
  public static Unit shown(Unit typed, UnitSystem system) {
    if (system == UnitSystem.AS_TYPED) {
      return typed;
    }
    Map<String, Unit> exchange = SHOWN.exchanges.get(system);
    Unit whole = exchange.get(typed.symbol());
    if (whole != null) {
      return whole;
    }
    List<Item> items = new ArrayList<>();
    boolean changed = false;
    for (Item item : ((ExactUnit) typed).items()) {
      Unit other = exchange.get(item.atom().symbol());
      List<Item> parts = other == null ? List.of() : ((ExactUnit) other).items();
      if (parts.isEmpty() || belongs(item.atom().system(), system)) {
        items.add(item);
      } else {
        changed = true;
        for (Item part : parts) {
          items.add(
              new Item(
                  interval(part.atom()),
                  part.exponent() * item.exponent(),
                  part.root() * item.root()));
        }
      }
    }
    return changed ? new ExactUnit(items) : typed;
  }

  private static boolean belongs(UnitSystem of, UnitSystem system) {
    return of == null
        || of == system
        || (of == UnitSystem.IMPERIAL && system == UnitSystem.AMERICAN);
  }

  /** In a product a temperature scale is its interval, and is written so. */
  private static Atom interval(Atom atom) {
    Unit interval = UnitTable.find(atom.interval());
    return atom.isPoint() ? ((ExactUnit) interval).items().get(0).atom() : atom;
  }

  /** The unit for a result that nobody gave one; a difference where it is a temperature. */
  public static Unit of(Dimension dimension, UnitSystem system) {
    Map<Dimension, Unit> units = SHOWN.results.get(ofResults(system));
    Unit unit = units.get(dimension);
    if (unit == null) {
      unit = units.get(dimension.withoutAngle());
    }
    if (unit != null) {
      return unit;
    }
    return dimension.withoutAngle().isNone() ? UnitTable.find("1") : UnitTable.coherent(dimension);
  }

  /** A result that nobody gave a unit is metric unless a sheet says otherwise. */
  private static UnitSystem ofResults(UnitSystem system) {
    return system == UnitSystem.AS_TYPED ? UnitSystem.METRIC : system;
  }

  /** The temperature scale of a system. */
  public static Unit temperature(UnitSystem system) {
    return UnitTable.find(ofResults(system) == UnitSystem.METRIC ? "degC" : "degF");
  }
}
