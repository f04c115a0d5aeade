package endfloat.record;

import endfloat.record.RecordException.Reason;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Name of a record on the shelf: a file name that is safe on every system, without {@code .json}.
 */
public record RecordId(String text) implements Comparable<RecordId> {
  private static final Pattern SAFE = Pattern.compile("[\\p{L}\\p{Nd}_][\\p{L}\\p{Nd}_.-]{0,99}");

  /** Names that Windows takes for devices. */
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
          "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

  /**
   * @throws RecordException if the name is not safe
   */
  public RecordId {
    if (!isSafe(text)) {
      throw new RecordException(
          Reason.OFF_THE_SHELF,
          "'"
              + text
              + "' cannot be the name of a record: use letters, digits, - and _, at most 100");
    }
  }

  static boolean isSafe(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    String stem = lower.contains(".") ? lower.substring(0, lower.indexOf('.')) : lower;
    return SAFE.matcher(text).matches() && !text.endsWith(".") && !DEVICES.contains(stem);
  }

  /** A safe name made of a title: {@code W6-117, as found} gives {@code w6-117-as-found}. */
  static String slug(String title) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
            .replaceAll("^-+|-+$", "");
    String cut = plain.length() > 60 ? plain.substring(0, 60).replaceAll("-+$", "") : plain;
    return isSafe(cut) ? cut : "record-" + (cut.isEmpty() ? "1" : cut);
  }

  @Override
  public int compareTo(RecordId other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
