package endfloat.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What common instruments may be wrong by while they have no certificate, so that one can begin
 * without. The table is {@code instruments.txt}; a line says its source and how it is known.
 */
public final class CommonInstruments {
  private static final List<Common> TABLE = table();

  private CommonInstruments() {}

  /**
   * One kind of instrument.
   *
   * @param limit error limit as typed text: a length, a temperature difference, or per cent of the
   *     indication
   * @param division the step of the indication, or empty
   * @param known {@code read}, {@code memory} or {@code common practice}
   */
  public record Common(String kind, String limit, String division, String source, String known) {}

  /** All of them, in the order of the table. */
  public static List<Common> all() {
    return TABLE;
  }

  private static List<Common> table() {
    try (InputStream in = CommonInstruments.class.getResourceAsStream("instruments.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\\s*\\|\\s*", -1))
          .map(field -> new Common(field[0], field[1], field[2], field[3], field[4]))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of instruments", e);
    }
  }
}
