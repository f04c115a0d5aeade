package endfloat.working;

import java.util.Arrays;

/** The text of a working and where its lines begin. */
final class SourceText {
  private final String text;
  private final int[] starts;

  SourceText(String text) {
    this.text = text;
    int[] found = new int[16];
    int count = 1;
    for (int i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) {
      if (count == found.length) {
        found = Arrays.copyOf(found, 2 * count);
      }
      found[count++] = i + 1;
    }
    starts = Arrays.copyOf(found, count);
  }

  String text() {
    return text;
  }

  /** Line of an offset, counted from 1. */
  int line(int offset) {
    int at = Arrays.binarySearch(starts, offset);
    return at >= 0 ? at + 1 : -at - 1;
  }

  /** Offset of the first letter of a line counted from 1. */
  int start(int line) {
    return starts[line - 1];
  }

  int end(int line) {
    return line < starts.length ? starts[line] - 1 : text.length();
  }

  /**
   * Offsets as a span; one that reaches into later lines ends with its first.
   *
   * @param to after the last letter
   */
  Span span(int from, int to) {
    int line = line(from);
    int start = starts[line - 1];
    int end = Math.min(to, Math.max(end(line), from));
    return new Span(line, from - start + 1, Math.max(end, from) - start + 1);
  }
}
