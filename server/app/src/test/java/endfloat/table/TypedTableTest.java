package endfloat.table;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.table.TypedTable.Group;
import endfloat.table.TypedTable.Key;
import endfloat.table.TypedTable.Typed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Order, choice, groups and joins of typed columns, against plain Java. */
class TypedTableTest {
  private static final TypedTable FLEET =
      TypedTable.of(
          List.of(
              Typed.texts("batch", List.of("B2", "B1", "", "B1", "B10")),
              Typed.numbers("lash", new double[] {12, Double.NaN, 9, 18, 12}),
              Typed.texts("engine", List.of("a", "b", "c", "d", "e"))));

  @Test
  void missingValuesStandLastWhicheverWayAnOrderGoes() {
    assertArrayEquals(new int[] {2, 0, 4, 3, 1}, FLEET.sorted(List.of(Key.of("lash"))));
    assertArrayEquals(new int[] {3, 0, 4, 2, 1}, FLEET.sorted(List.of(Key.of("lash down"))));
    assertArrayEquals(
        new int[] {3, 1, 4, 0, 2}, FLEET.sorted(List.of(Key.of("batch"), Key.of("lash down"))));
    assertArrayEquals(new int[] {0, 1, 2, 3, 4}, FLEET.sorted(List.of()));
  }

  @Test
  void chosenRowsKeepTheirNumbers() {
    boolean[] passes = {true, false, true, true, false};
    assertArrayEquals(new int[] {2, 0, 3}, FLEET.sorted(List.of(Key.of("lash")), passes));
    assertEquals(3, FLEET.chosen(passes).rows());
    assertArrayEquals(new int[] {}, FLEET.sorted(List.of(), new boolean[5]));
  }

  @Test
  void groupsStandInTheOrderOfTheirLabels() {
    List<Group> groups = FLEET.groups(List.of("batch"));
    assertEquals(
        List.of(List.of("B1"), List.of("B10"), List.of("B2")),
        groups.stream().map(Group::labels).toList());
    assertArrayEquals(new int[] {1, 3}, groups.get(0).rows());
    TypedTable.Summary b1 = FLEET.summary("lash", groups.get(0).rows()).orElseThrow();
    assertEquals(new TypedTable.Summary(1, 1, 18, Double.NaN, 18, 18), b1);
    TypedTable.Summary all = FLEET.summary("lash").orElseThrow();
    assertEquals(12.75, all.mean(), 1e-12);
    assertEquals(Math.sqrt((0.5625 * 2 + 14.0625 + 27.5625) / 3), all.sd(), 1e-12);
    assertTrue(FLEET.summary("batch").isEmpty());
    assertEquals(List.of("batch", "lash", "engine"), FLEET.heads());
  }

  @Test
  void rowsOfTwoTablesAreJoinedByWhatTheyShare() {
    TypedTable other =
        TypedTable.of(List.of(Typed.texts("batch", List.of("B1", "B9", "B2", "B1"))));
    List<String> pairs =
        FLEET.joined("batch", other, "batch").stream().map(Arrays::toString).toList();
    assertEquals(List.of("[0, 2]", "[1, 0]", "[1, 3]", "[3, 0]", "[3, 3]"), pairs);
  }

  @Test
  void aHundredThousandRowsComeInTheOrderOfPlainJava() {
    Random random = new Random(6);
    double[] lash = random.doubles(100_000).map(x -> Math.rint(x * 500)).toArray();
    List<String> batch = new ArrayList<>();
    for (int i = 0; i < lash.length; i++) {
      batch.add("B" + random.nextInt(50));
    }
    TypedTable table =
        TypedTable.of(List.of(Typed.numbers("lash", lash), Typed.texts("batch", batch)));
    int[] expected =
        IntStream.range(0, lash.length)
            .boxed()
            .sorted(
                Comparator.<Integer, String>comparing(batch::get)
                    .thenComparing(i -> -lash[i])
                    .thenComparing(i -> i))
            .mapToInt(Integer::intValue)
            .toArray();
    assertArrayEquals(expected, table.sorted(List.of(Key.of("batch"), Key.of("lash down"))));
  }
}
