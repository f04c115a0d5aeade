package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Formulas with units and uncertainty against values from outside the project; id and source stand
 * beside each in {@code published-formulas.check}.
 */
class PublishedFormulasTest {
  static Stream<PublishedChecks.Published> published() {
    return PublishedChecks.read("published-formulas.check").stream();
  }

  @ParameterizedTest
  @MethodSource("published")
  void comesOutAsPublished(PublishedChecks.Published published) {
    published.hold();
  }

  @Test
  void noneIsLost() {
    assertEquals(58, published().count());
  }
}
