package endfloat.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every calculation of the library by its name in the working language. */
public final class Catalogue {
  private static final Catalogue LIBRARY = new Catalogue(LibraryEntries.all());

  private final Map<String, Calculation> calculations = new TreeMap<>();
  private final Map<String, Part> parts = new TreeMap<>();

  /** A catalogue of the given calculations; {@link #library()} is the one that users have. */
  public Catalogue(Collection<Calculation> calculations) {
    for (Calculation calculation : calculations) {
      this.calculations.put(calculation.name(), calculation);
      calculation
          .parameters()
          .forEach(p -> p.part().ifPresent(part -> parts.put(part.name(), part)));
    }
  }

  public static Catalogue library() {
    return LIBRARY;
  }

  public Optional<Calculation> find(String name) {
    return Optional.ofNullable(calculations.get(name));
  }

  /**
   * The calculation that a call means. A call that begins with a text means {@code NAME_text} where
   * there is one: {@code iso_limits("25 H7")} beside {@code iso_limits(25 mm, "H7")}.
   *
   * @param textFirst whether the first argument of the call is a text
   */
  public Optional<Calculation> find(String name, boolean textFirst) {
    Optional<Calculation> takesText = textFirst ? find(name + "_text") : Optional.empty();
    return takesText.isPresent() ? takesText : find(name);
  }

  /** In the order of their names. */
  public Collection<Calculation> all() {
    return calculations.values();
  }

  /** The part that a constructor of the working language builds. */
  public Optional<Part> part(String constructor) {
    return Optional.ofNullable(parts.get(constructor));
  }

  /** Names of all constructors of parts. */
  public Collection<String> parts() {
    return parts.keySet();
  }

  /** At most three names nearest to a misspelt one, best first. */
  public List<String> nearest(String name) {
    return java.util.stream.Stream.concat(calculations.keySet().stream(), parts.keySet().stream())
        .filter(known -> EditDistance.between(name, known) <= Math.max(2, name.length() / 3))
        .sorted(Comparator.comparingInt(known -> EditDistance.between(name, known)))
        .limit(3)
        .toList();
  }

  /** The checks of a calculation; the first is its worked example. */
  public List<Check> checks(String name) {
    try (InputStream in =
        Catalogue.class.getResourceAsStream("/endfloat/checks/" + name + ".check")) {
      return in == null
          ? List.of()
          : CheckFile.read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
