package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.catalogue.Catalogue;
import endfloat.units.Unit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pound of mass where a force belongs is refused with the unit that was meant. */
class PoundsTest {
  private static final Scope NO_NAMES =
      new Scope() {
        @Override
        public Optional<Kind> kindOf(String name) {
          return Optional.empty();
        }

        @Override
        public Collection<String> names() {
          return List.of();
        }

        @Override
        public Optional<Unit> unitOf(String name) {
          return Optional.empty();
        }
      };

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {
        "torque [N.m] = 40 lb.ft > lb is a mass, lbf is a force; write lbf.ft.",
        "stress [MPa] = 30000 lb/in^2 > lb is a mass, lbf is a force; write lbf/in^2.",
        "torque [lb.ft] = 54 N.m > lb is a mass, lbf is a force; write lbf.ft.",
        "rise [K] = 20 C > C is a charge, degC is a temperature; write degC.",
        "size [mm] = 3 s > Declare it [s], or mend the right side."
      })
  void areToldFromPoundsOfForce(String line, String wayOut) {
    Checked checked =
        new KindChecker(Catalogue.library()).check(Parser.parse(line).lines().get(0), NO_NAMES);
    assertEquals(List.of(wayOut), checked.problems().stream().map(LineProblem::wayOut).toList());
  }
}
