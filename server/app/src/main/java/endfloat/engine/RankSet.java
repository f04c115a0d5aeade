package endfloat.engine;

import java.util.Arrays;

/** Which places of the order are to be worked out again, taken from the lowest up. */
final class RankSet {
  private long[] words = new long[16];
  private int lowest = Integer.MAX_VALUE;
  private int count;

  boolean isEmpty() {
    return count == 0;
  }

  void add(int rank) {
    int word = rank >> 6;
    if (word >= words.length) {
      words = Arrays.copyOf(words, Math.max(word + 1, 2 * words.length));
    }
    long bit = 1L << rank;
    if ((words[word] & bit) == 0) {
      words[word] |= bit;
      count++;
      lowest = Math.min(lowest, rank);
    }
  }

  /** Takes the lowest out; -1 where none is left. */
  int take() {
    if (count == 0) {
      return -1;
    }
    int word = lowest >> 6;
    while (words[word] == 0) {
      word++;
    }
    int rank = (word << 6) + Long.numberOfTrailingZeros(words[word]);
    words[word] &= words[word] - 1;
    count--;
    lowest = count == 0 ? Integer.MAX_VALUE : rank + 1;
    return rank;
  }
}
