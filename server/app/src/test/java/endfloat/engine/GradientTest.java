package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class GradientTest {
  private static Root root(String id) {
    return new Root(id, Root.Kind.INPUT, id, "", Double.POSITIVE_INFINITY);
  }

  @Test
  void whatIsTakenFromItselfLeavesNothingAtAll() {
    Gradient x = Gradient.combine(1, Gradient.of(root("a"), 0.3), 1, Gradient.of(root("b"), 1e-9));
    Gradient difference = Gradient.combine(1, x, -1, x);
    assertTrue(difference.isEmpty());
    assertEquals(0.0, Correlations.NONE.standardUncertainty(difference));
  }

  @Test
  void aRootIsKnownByItsIdAndNotByTheObject() {
    Gradient twice =
        Gradient.combine(1, Gradient.of(root("a"), 0.3), 1, Gradient.of(root("a"), 0.3));
    assertEquals(1, twice.size());
    assertEquals(0.6, twice.part(root("a")));
  }

  /** A thousand sums in a thousand orders are one gradient, bit for bit in each entry. */
  @Property(tries = 200)
  void theOrderOfRootsIsTheirOwn(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(max = 30) Integer> ids,
      @ForAll @DoubleRange(min = -5, max = 5) double slope) {
    List<Integer> distinct = new ArrayList<>(ids.stream().distinct().toList());
    Gradient forward = Gradient.NONE;
    for (int id : distinct) {
      forward = Gradient.combine(1, forward, slope, Gradient.of(root("r" + id), id + 1));
    }
    java.util.Collections.reverse(distinct);
    Gradient backward = Gradient.NONE;
    for (int id : distinct) {
      backward = Gradient.combine(slope, Gradient.of(root("r" + id), id + 1), 1, backward);
    }
    assertTrue(forward.sameAs(backward), forward + " / " + backward);
  }
}
