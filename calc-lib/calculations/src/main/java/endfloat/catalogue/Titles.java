package endfloat.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each calculation is called where a person reads rather than types, in the words of the
 * trade.
 */
public final class Titles {
  private static final Map<String, String> GIVEN = read();

  private Titles() {}

  /** The title of a calculation; its name with blanks where none was written. */
  public static String of(String name) {
    String given = GIVEN.get(name);
    if (given != null) {
      return given;
    }
    String words = name.replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Its place among the titles, which stand as a person would look through them; else the last. */
  public static int place(String name) {
    int place = List.copyOf(GIVEN.keySet()).indexOf(name);
    return place < 0 ? GIVEN.size() : place;
  }

  /** All that were written, by the name of their calculation, in the order of the file. */
  static Map<String, String> given() {
    return GIVEN;
  }

  private static Map<String, String> read() {
    Map<String, String> titles = new LinkedHashMap<>();
    try (InputStream in = Titles.class.getResourceAsStream("/endfloat/catalogue/titles.txt")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> line.contains(" | "))
          .forEach(
              line -> {
                String[] pair = line.split(" \\| ", 2);
                if (titles.put(pair[0].strip(), pair[1].strip()) != null) {
                  throw new IllegalStateException("two titles for " + pair[0]);
                }
              });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return titles;
  }
}
