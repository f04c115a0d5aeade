package endfloat.materials;

import endfloat.definition.RefusedException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The materials on file: names and values from two text files beside the class. */
final class MaterialTable {
  static final MaterialTable LIBRARY = new MaterialTable();

  /** Name on file by every spelling of it. */
  private final Map<String, String> spellings = new HashMap<>();

  /** The material whose values a condition shares. */
  private final Map<String, String> shared = new LinkedHashMap<>();

  private final Map<String, Map<String, StoredValue>> values = new HashMap<>();

  private MaterialTable() {
    lines("names.txt").forEach(this::name);
    Map<String, StoredValue.Source> sources = new HashMap<>();
    for (String[] cell : lines("values.txt")) {
      if (cell[0].equals("source")) {
        sources.put(cell[1], new StoredValue.Source(cell[2], cell[3]));
      } else {
        values
            .computeIfAbsent(known(cell[0]), m -> new HashMap<>())
            .put(cell[1], StoredValue.of(cell, sources.get(cell[6])));
      }
    }
  }

  private void name(String[] cell) {
    shared.put(cell[0], cell[1]);
    spell(cell[0], cell[0]);
    for (String other : cell[2].split(";", -1)) {
      if (!other.isBlank()) {
        spell(other.strip(), cell[0]);
      }
    }
  }

  private void spell(String spelling, String material) {
    String other = spellings.putIfAbsent(key(spelling), material);
    if (other != null && !other.equals(material)) {
      throw new IllegalStateException(spelling + " names both " + other + " and " + material);
    }
  }

  private static List<String[]> lines(String file) {
    List<String[]> lines = new ArrayList<>();
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                MaterialTable.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          String[] cells = line.split("\\|", -1);
          for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].strip();
          }
          lines.add(cells);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of materials " + file, e);
    }
    return lines;
  }

  /** Case, blanks, dashes and the two spellings of aluminium and grey make no difference. */
  static String key(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replace("aluminum", "aluminium")
        .replace("gray", "grey")
        .replaceAll("[\\s\\-–_/,]+", "");
  }

  /** Names on file in their order. */
  List<String> names() {
    return List.copyOf(shared.keySet());
  }

  Optional<String> find(String name) {
    return Optional.ofNullable(spellings.get(key(name)));
  }

  /**
   * The name on file of a material.
   *
   * @throws RefusedException if it is not on file; names the nearest
   */
  String known(String name) {
    String known = spellings.get(key(name));
    if (known == null) {
      List<String> near = NearestMaterial.of(key(name), spellings);
      throw new RefusedException(
          "no material \""
              + name
              + "\" on file"
              + (near.isEmpty() ? "" : "; near it are: " + String.join(", ", near))
              + ". Enter its values in the record, or take a material on file");
    }
    return known;
  }

  /** A value of a material or of the one whose values it shares. */
  Optional<StoredValue> value(String material, String property) {
    return owner(material, property).map(owner -> values.get(owner).get(property));
  }

  /** The material itself or the one whose value it shares; empty where none is on file. */
  Optional<String> owner(String material, String property) {
    if (values.getOrDefault(material, Map.of()).containsKey(property)) {
      return Optional.of(material);
    }
    String like = shared.get(material);
    return like.isEmpty() ? Optional.empty() : owner(known(like), property);
  }

  /** Conditions of a material that have a value of their own. */
  List<String> conditionsWith(String material, String property) {
    return shared.keySet().stream()
        .filter(
            m ->
                shared.get(m).equals(material)
                    && values.getOrDefault(m, Map.of()).containsKey(property))
        .toList();
  }
}
