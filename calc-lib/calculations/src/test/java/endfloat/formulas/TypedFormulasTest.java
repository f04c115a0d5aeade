package endfloat.formulas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.OutOfRangeException;
import endfloat.quantities.Measured;
import endfloat.quantities.Trade;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.quantity.Length;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The typed face of the catalogue. */
class TypedFormulasTest {
  @TempDir java.nio.file.Path folder;

  /**
   * Published: 0.9675 mm for 600 mm of 2.15e-5 1/K over 75 K, by the definition of the mean
   * coefficient (check A03-length-al).
   */
  @Test
  void givesWhatTheCatalogueGives() {
    Measured<Length> growth =
        Thermal.thermalGrowth(
            Measured.of(600, "mm", Length.class),
            Measured.of(2.15e-5, "1/K", Trade.Expansion.class),
            Measured.of(75, "K", Trade.TemperatureDifference.class));
    assertEquals(0.9675, growth.in("mm"), 1e-9);
  }

  /**
   * Published: 145.28 degC, Callister and Rethwisch's coefficients (check A03-loose-temperature).
   */
  @Test
  void givesATemperatureAsATemperature() {
    double loose =
        Thermal.looseTemperature(
                Measured.of(60.000, "mm", Length.class),
                Measured.of(60.060, "mm", Length.class),
                Measured.of(2.6e-5, "1/K", Trade.Expansion.class),
                Measured.of(1.8e-5, "1/K", Trade.Expansion.class))
            .in("degC");
    assertEquals(145.281884239544, loose, 0.01);
  }

  /** By the product rule: u = α ΔT u(L) from one source, L ΔT u(α) from the other. */
  @Test
  void carriesTheGradientOfEverySource() {
    Measured<Length> growth =
        Thermal.thermalGrowth(
            Measured.ofSi(0.6, Length.class, Map.of("rule", 1e-4)),
            Measured.ofSi(2.15e-5, Trade.Expansion.class, Map.of("alloy", 1e-6)),
            Measured.of(75, "K", Trade.TemperatureDifference.class));
    assertEquals(2.15e-5 * 75 * 1e-4, growth.gradient().get("rule"), 1e-15);
    assertEquals(0.6 * 75 * 1e-6, growth.gradient().get("alloy"), 1e-12);
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThrows(
        OutOfRangeException.class,
        () ->
            Thermal.thermalGrowth(
                Measured.of(-1, "mm", Length.class),
                Measured.of(2.15e-5, "1/K", Trade.Expansion.class),
                Measured.of(75, "K", Trade.TemperatureDifference.class)));
  }

  @Test
  void aMassForALengthDoesNotCompile() {
    assertEquals(List.of(), errors("Length", "mm"));
    List<String> found = errors("Mass", "kg");
    assertFalse(found.isEmpty());
    assertTrue(found.get(0).contains("Mass"), found.get(0));
  }

  private List<String> errors(String kind, String unit) {
    String source =
        "import endfloat.formulas.*; import endfloat.quantities.*; import javax.measure.quantity.*;"
            + " class Given { Object a = Thermal.thermalGrowth(Measured.of(1, \""
            + unit
            + "\", "
            + kind
            + ".class), Measured.of(1e-5, \"1/K\", Trade.Expansion.class),"
            + " Measured.of(1, \"K\", Trade.TemperatureDifference.class)); }";
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    ToolProvider.getSystemJavaCompiler()
        .getTask(
            null,
            null,
            found,
            List.of("-proc:none", "-d", folder.toString()),
            null,
            List.of(
                new SimpleJavaFileObject(
                    URI.create("string:///Given.java"), JavaFileObject.Kind.SOURCE) {
                  @Override
                  public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                    return source;
                  }
                }))
        .call();
    return found.getDiagnostics().stream().map(d -> d.getMessage(Locale.ROOT)).toList();
  }
}
