package endfloat.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Where a line or a reading stands in the graph: its clause, what it reads, solves for and gives.
 */
abstract class PlacedNode {
  private static final Set<String> WHOLE_NAME = Set.of("");

  private final String clause;
  private int offset;
  private int rank = -1;
  private long changedIn;
  private List<Slot> cycle = List.of();
  private Slot[] reads = {};
  private Slot[] seeks = {};
  private SolvedCircle circle;
  private Slot giving;
  private FieldPlaces fields;
  private boolean column;

  PlacedNode(String clause, int offset) {
    this.clause = clause;
    this.offset = offset;
  }

  /** The name it gives; empty for a limit or a correlation. */
  abstract String name();

  /** The names it reads. */
  abstract Set<String> namesRead();

  /**
   * Which fields of a name it reads first; an empty one where it reads the name as a whole. A field
   * that is a column of a table has a value of its own.
   */
  Set<String> fieldsRead(String name) {
    return WHOLE_NAME;
  }

  /** Whether it gives a column of a table. */
  boolean isColumn() {
    return column;
  }

  void column(boolean isOne) {
    column = isOne;
  }

  String clause() {
    return clause;
  }

  int offset() {
    return offset;
  }

  void moveTo(int line) {
    offset = line;
  }

  int rank() {
    return rank;
  }

  void rank(int place) {
    rank = place;
  }

  /** Number of the update that last changed it. */
  long changedIn() {
    return changedIn;
  }

  void changedIn(long update) {
    changedIn = update;
  }

  List<Slot> cycle() {
    return cycle;
  }

  void cycle(List<Slot> names) {
    cycle = names;
  }

  /** The fields of the clause that it stands in; null where it is a line or a reading. */
  FieldPlaces fields() {
    return fields;
  }

  void fields(FieldPlaces places) {
    fields = places;
  }

  /** Its own name's slot; null for a limit or a correlation. */
  Slot giving() {
    return giving;
  }

  void giving(Slot slot) {
    giving = slot;
  }

  Slot[] reads() {
    return reads;
  }

  void reads(Slot[] slots) {
    reads = slots;
  }

  /** Names of others that it solves for; their kinds must be known, not their values. */
  Slot[] seeks() {
    return seeks;
  }

  void seeks(Slot[] slots) {
    seeks = slots;
  }

  /** The circle that it closes as a solve; null for none. */
  SolvedCircle circle() {
    return circle;
  }

  void circle(SolvedCircle closed) {
    circle = closed;
  }

  /** Whether another is in the circle that this one closes, so that it comes after this one. */
  boolean leads(Node other) {
    return circle != null && (other == this || circle.holds(other));
  }

  /** What its value rests on: the lines of a circle that it closes are a matter of its own. */
  List<Slot> feeds() {
    return circle != null ? circle.needs() : Arrays.asList(reads);
  }

  /** Those that must come before it. */
  List<Node> restsOn() {
    List<Node> rests = new ArrayList<>(reads.length + seeks.length);
    for (Slot read : reads) {
      if (read.giver() != null) {
        rests.add(read.giver());
      }
    }
    for (Slot sought : seeks) {
      if (sought.giver() != null) {
        rests.add(sought.giver());
      }
    }
    return rests;
  }

  int countRests() {
    int count = 0;
    for (Slot read : reads) {
      count += read.giver() == null ? 0 : 1;
    }
    for (Slot sought : seeks) {
      count += sought.giver() == null ? 0 : 1;
    }
    return count;
  }
}
