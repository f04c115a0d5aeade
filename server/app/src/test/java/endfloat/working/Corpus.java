package endfloat.working;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The accepted and refused lines of corpus.txt. */
final class Corpus {
  final KnownNames names = new KnownNames();
  final List<Case> cases = new ArrayList<>();

  /** One line and what must be said of it. */
  record Case(int number, String verdict, String line, String expected) {
    @Override
    public String toString() {
      return "line " + number + " of corpus.txt: " + line;
    }
  }

  Corpus() {
    try (InputStream in = Corpus.class.getResourceAsStream("corpus.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      int number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        if (!line.isBlank() && !line.startsWith("#")) {
          read(number, line.split("\\|", -1));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(int number, String[] columns) {
    String verdict = columns[0].strip();
    switch (verdict) {
      case "given" -> names.give(columns[1].strip());
      case "series" -> names.series(columns[1].strip(), columns[2].strip(), columns[3].strip());
      case "table" -> names.table(columns[1].strip(), columns[2].strip());
      case "yes", "no", "hint" ->
          cases.add(
              new Case(number, verdict, columns[1].strip().replace('⏎', '\n'), columns[2].strip()));
      default ->
          throw new AssertionError("line " + number + " of corpus.txt begins with " + verdict);
    }
  }
}
