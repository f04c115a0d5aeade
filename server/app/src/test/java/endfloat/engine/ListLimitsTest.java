package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Derived: 3 mm alone of 1, 2, 3 mm lies above 2.5 mm, and 1 mm alone below 1.5 mm. */
class ListLimitsTest {
  @Test
  void eachValueOfAPlainListHasItsOwnVerdict() {
    ValueGraph graph =
        ValueGraph.of(
            GraphSource.ofWorkings(
                "x = [1 mm, 2 mm, 3 mm]\nlimit x: at most 2.5 mm\nlimit x: at least 1.5 mm"));
    Figure x = graph.figure("x").orElseThrow();
    assertEquals(
        List.of("outside", "within", "outside"),
        x.elements().stream().map(e -> e.verdict().orElseThrow().word()).toList());
    assertEquals(List.of(2, 2, 2), x.elements().stream().map(e -> e.judgements().size()).toList());
    Value worst = x.worstElement().orElseThrow().value();
    assertEquals(0.001, ((Value.Scalar) worst).si(), "0.5 mm beyond on either side: the first");
  }
}
