package endfloat.kernel;

import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Has a new kernel do what a first clause needs, so that the first clause does not wait for it. */
final class WarmUp {
  private static final int RUNS = 80;
  private static final int SECONDS = 30;

  private WarmUp() {}

  /**
   * @param goOn asked between runs; its no leaves the kernel as warm as it is
   */
  static void of(KernelProcess kernel, BooleanSupplier goOn) {
    Map<String, Object> reads =
        Map.of(
            "java",
            "readings",
            "form",
            "series",
            "type",
            "Length",
            "values",
            List.of(Map.of("si", 1e-3, "gradient", Map.of("a", 1e-6)), Map.of("si", 2e-3)));
    Map<String, Object> clause =
        Map.of(
            "reads",
            List.of(reads),
            "gives",
            List.of(
                Map.of("java", "mean", "form", "quantity", "type", "Length", "unit", "m"),
                Map.of("java", "table", "form", "table", "unit", "1", "columns", List.of("x"))),
            "trials",
            List.of(List.of(0, 0, 2e-3)));
    for (int i = 0; i < RUNS && goOn.getAsBoolean(); i++) {
      // another text each time: the compiler is what takes longest to get quick
      String source =
          "double sum = "
              + i
              + ";\nfor (Measured<Length> one : readings) { sum += one.in(\"mm\"); }\n"
              + "mean = quantity(sum / readings.size(), \"mm\", Length.class);\n"
              + "List<Measured<Length>> all = readings.stream().map(x -> x.times(2)).toList();\n"
              + "double[] squares = new double[readings.size()];\n"
              + "for (int i = 0; i < squares.length; i++) {\n"
              + "  squares[i] = StrictMath.hypot(all.get(i).in(\"mm\"), StrictMath.cos(i));\n}\n"
              + "java.util.function.DoubleUnaryOperator curve = a -> squares[0] + a;\n"
              + "chart(new Plot(\"x\", \"y\").curve(0, 1, curve));\n"
              + "table = Table.create(\"t\", DoubleColumn.create(\"x\", readings.in(\"mm\")));\n"
              + "show(\"warm\");";
      kernel.execute(source, Map.of(ClauseJson.KEY, clause), SECONDS, message -> {}, () -> true);
    }
  }
}
