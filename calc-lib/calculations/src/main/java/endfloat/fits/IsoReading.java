package endfloat.fits;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One transcription of a table of ISO 286, kept as a text file beside the class: a row of size
 * ranges by their upper ends [mm], then a row of values [um] for each name; NaN where it has none.
 */
record IsoReading(double[] sizes, Map<String, double[]> rows) {

  /**
   * @param file name of the text file in the package
   */
  static IsoReading of(String file) {
    double[] sizes = new double[0];
    Map<String, double[]> rows = new LinkedHashMap<>();
    for (String line : lines(file)) {
      String[] words = line.split(" ", -1);
      double[] values = new double[words.length - 1];
      for (int i = 0; i < values.length; i++) {
        values[i] = words[i + 1].equals("-") ? Double.NaN : Double.parseDouble(words[i + 1]);
      }
      if (words[0].equals("sizes")) {
        sizes = values;
      } else {
        rows.put(words[0], values);
      }
    }
    return new IsoReading(sizes, rows);
  }

  /** Lines of a text file in the package, without blank lines and comments. */
  static List<String> lines(String file) {
    List<String> lines = new ArrayList<>();
    try (InputStream stream = IsoReading.class.getResourceAsStream(file);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          lines.add(line.strip());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table " + file, e);
    }
    return lines;
  }

  double value(String row, int column) {
    double[] values = rows.get(row);
    return values == null ? Double.NaN : values[column];
  }
}
