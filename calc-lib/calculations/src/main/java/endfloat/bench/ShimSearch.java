package endfloat.bench;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The search behind {@link ShimPack}. Shims of one thickness are interchangeable and form a group;
 * a pack takes so many of each group. The groups are halved, all part packs of each half listed,
 * and whole packs found by matching sums.
 *
 * <p>A pack is a word of one bit a shim. The first pack takes shims of a group from its low end,
 * the second from its high end: two packs can be had together just if their words share no bit.
 */
final class ShimSearch {
  private static final int MOST_PARTS = 4_000_000;
  private static final int MOST_PACKS = 20_000_000;

  private final long[] thickness;
  private final int most;
  private final List<Integer> order = new ArrayList<>();
  private final List<int[]> groups = new ArrayList<>(); // first bit, size
  private final Parts left;
  private final Parts[] right; // by the most pieces they may have

  /** Part packs of half the groups. */
  private static final class Parts {
    long[] sums = new long[64];
    long[] low = new long[64];
    long[] high = new long[64];
    byte[] pieces = new byte[64];
    int size;

    void add(long sum, long lowWord, long highWord, int count) {
      if (size == sums.length) {
        if (size >= MOST_PACKS) {
          throw new RefusedException(
              "so many packs come equally near that the choice would take too long; allow fewer"
                  + " shims a pack");
        }
        sums = Arrays.copyOf(sums, 2 * size);
        low = Arrays.copyOf(low, 2 * size);
        high = Arrays.copyOf(high, 2 * size);
        pieces = Arrays.copyOf(pieces, 2 * size);
      }
      sums[size] = sum;
      low[size] = lowWord;
      high[size] = highWord;
      pieces[size++] = (byte) count;
    }

    /** Those with few enough pieces, by sum. */
    Parts upTo(int count) {
      List<Integer> places = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        if (pieces[i] <= count) {
          places.add(i);
        }
      }
      places.sort((a, b) -> Long.compare(sums[a], sums[b]));
      Parts parts = new Parts();
      for (int i : places) {
        parts.add(sums[i], low[i], high[i], pieces[i]);
      }
      return parts;
    }

    /** First place whose sum is not below. */
    int from(long sum) {
      int at = Arrays.binarySearch(sums, 0, size, sum);
      if (at < 0) {
        return -at - 1;
      }
      while (at > 0 && sums[at - 1] == sum) {
        at--;
      }
      return at;
    }
  }

  ShimSearch(long[] thickness, int most) {
    this.thickness = thickness;
    this.most = most;
    for (int i = 0; i < thickness.length; i++) {
      order.add(i);
    }
    order.sort((a, b) -> Long.compare(thickness[a], thickness[b]));
    for (int i = 0; i < order.size(); i++) {
      boolean same = i > 0 && thickness[order.get(i)] == thickness[order.get(i - 1)];
      if (same) {
        groups.get(groups.size() - 1)[1]++;
      } else {
        groups.add(new int[] {i, 1});
      }
    }
    // every other group, so that each half spans thin and thick
    left = parts(0);
    Parts all = parts(1);
    right = new Parts[most + 1];
    for (int count = 0; count <= most; count++) {
      right[count] = all.upTo(count);
    }
  }

  long thinnest() {
    return thickness[order.get(0)];
  }

  long thickest() {
    long sum = 0;
    for (int i = 0; i < Math.min(most, order.size()); i++) {
      sum += thickness[order.get(order.size() - 1 - i)];
    }
    return sum;
  }

  private Parts parts(int half) {
    Parts parts = new Parts();
    extend(parts, half, 0, 0, 0, 0);
    return parts;
  }

  private void extend(Parts parts, int group, long sum, long low, long high, int pieces) {
    if (group >= groups.size()) {
      if (parts.size >= MOST_PARTS) {
        throw new RefusedException(
            "the stock is too large for packs of that many shims; allow fewer a pack");
      }
      parts.add(sum, low, high, pieces);
      return;
    }
    int first = groups.get(group)[0];
    int size = groups.get(group)[1];
    long one = thickness[order.get(first)];
    for (int count = 0; count <= Math.min(size, most - pieces); count++) {
      long word = (1L << count) - 1;
      extend(
          parts,
          group + 2,
          sum + count * one,
          low | word << first,
          high | word << (first + size - count),
          pieces + count);
    }
  }

  /** Least miss that one pack could have if it had the stock to itself. */
  private long leastMiss(long target) {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < left.size; i++) {
      Parts others = right[most - left.pieces[i]];
      long rest = target - left.sums[i];
      int at = others.from(rest);
      if (at < others.size) {
        least = Math.min(least, others.sums[at] - rest);
      }
      if (at > 0) {
        least = Math.min(least, rest - others.sums[at - 1]);
      }
    }
    return least;
  }

  /** Every pack within the bound, nearest first, then fewest pieces. */
  private Parts within(long target, long bound) {
    Parts found = new Parts();
    for (int i = 0; i < left.size; i++) {
      Parts others = right[most - left.pieces[i]];
      long rest = target - left.sums[i];
      for (int at = others.from(rest - bound);
          at < others.size && others.sums[at] <= rest + bound;
          at++) {
        found.add(
            Math.abs(others.sums[at] - rest),
            left.low[i] | others.low[at],
            left.high[i] | others.high[at],
            left.pieces[i] + others.pieces[at]);
      }
    }
    return sorted(found);
  }

  /** By miss, then pieces, then the word itself, so that the choice never depends on the search. */
  private static Parts sorted(Parts found) {
    Integer[] places = new Integer[found.size];
    Arrays.setAll(places, i -> i);
    Arrays.sort(
        places,
        (a, b) -> {
          int byMiss = Long.compare(found.sums[a], found.sums[b]);
          int byPieces = Integer.compare(found.pieces[a], found.pieces[b]);
          return byMiss != 0
              ? byMiss
              : byPieces != 0 ? byPieces : Long.compareUnsigned(found.low[a], found.low[b]);
        });
    Parts sorted = new Parts();
    for (int i : places) {
      sorted.add(found.sums[i], found.low[i], found.high[i], found.pieces[i]);
    }
    return sorted;
  }

  /** Places in the stock of the shims of each pack. */
  List<List<Integer>> best(long[] targets) {
    long bound = 0;
    for (long target : targets) {
      bound = Math.max(bound, leastMiss(target));
    }
    if (targets.length == 1) {
      return List.of(shims(within(targets[0], bound).low[0]));
    }
    while (true) {
      long[] pair = pair(within(targets[0], bound), within(targets[1], bound));
      if (pair.length > 0) {
        return List.of(shims(pair[0]), shims(pair[1]));
      }
      bound = bound == 0 ? 1 : 2 * bound;
    }
  }

  /** The best two packs that share no shim; empty if every two do. */
  private static long[] pair(Parts first, Parts second) {
    long worst = Long.MAX_VALUE;
    int pieces = Integer.MAX_VALUE;
    long[] pair = {};
    for (int i = 0; i < first.size && first.sums[i] <= worst; i++) {
      for (int j = 0; j < second.size; j++) {
        long miss = Math.max(first.sums[i], second.sums[j]);
        int count = first.pieces[i] + second.pieces[j];
        if (miss > worst || (second.sums[j] == worst && count >= pieces)) {
          break;
        }
        boolean better = miss < worst || count < pieces;
        if (better && (first.low[i] & second.high[j]) == 0) {
          worst = miss;
          pieces = count;
          pair = new long[] {first.low[i], second.high[j]};
        }
      }
    }
    return pair;
  }

  private List<Integer> shims(long word) {
    List<Integer> shims = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      if ((word >> i & 1) == 1) {
        shims.add(order.get(i));
      }
    }
    Collections.reverse(shims);
    return shims;
  }
}
