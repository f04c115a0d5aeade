package endfloat.picture.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Which calculation has which line drawing; several share one. */
public final class Drawings {
  private static final Map<String, Maker> MAKERS = new LinkedHashMap<>();

  private Drawings() {}

  /**
   * A finished drawing.
   *
   * @param svg with classes for the page, no style of its own
   * @param caption what it shows, for those who cannot see it
   * @param names arguments that it names
   */
  public record Drawing(String svg, String caption, Set<String> names) {}

  private record Maker(String caption, Consumer<Sketch> draw, List<String> calculations) {}

  static {
    GearDrawings.addTo(Drawings::put);
    AlignmentDrawings.addTo(Drawings::put);
    ShaftDrawings.addTo(Drawings::put);
    FitDrawings.addTo(Drawings::put);
    BenchDrawings.addTo(Drawings::put);
  }

  /** Takes a caption, what draws it, and the calculations it is for. */
  interface Register {
    void put(String caption, Consumer<Sketch> draw, String... calculations);
  }

  private static void put(String caption, Consumer<Sketch> draw, String... calculations) {
    Maker maker = new Maker(caption, draw, List.copyOf(Arrays.asList(calculations)));
    for (String calculation : calculations) {
      if (MAKERS.put(calculation, maker) != null) {
        throw new IllegalStateException(calculation + " has two drawings");
      }
    }
  }

  /** Names of the calculations that have one. */
  public static List<String> calculations() {
    return new ArrayList<>(MAKERS.keySet());
  }

  /** The drawing of a calculation; none where there is nothing to draw. */
  public static Optional<Drawing> of(String calculation) {
    Maker maker = MAKERS.get(calculation);
    if (maker == null) {
      return Optional.empty();
    }
    Sketch sketch = new Sketch(maker.caption());
    maker.draw().accept(sketch);
    return Optional.of(new Drawing(sketch.finished(), maker.caption(), sketch.names()));
  }

  /** Calculations that share the drawing of one, itself too. */
  public static List<String> sharing(String calculation) {
    Maker maker = MAKERS.get(calculation);
    return maker == null ? List.of() : maker.calculations();
  }
}
