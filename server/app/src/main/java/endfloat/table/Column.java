package endfloat.table;

import java.util.List;
import java.util.Map;

/**
 * One column of a table of readings.
 *
 * @param number from 1, as the file has it
 * @param head as it stands in the file
 * @param name of the reading
 * @param labels of the station, by axis; empty where the head names none
 * @param aspect what the fields are
 * @param unit as it stands in the head; empty where there is none
 * @param fields that are not blank, in order
 */
public record Column(
    int number,
    String head,
    String name,
    Map<String, String> labels,
    Aspect aspect,
    String unit,
    List<Field> fields) {

  /** What a column tells of a reading. */
  public enum Aspect {
    /** Its value; repeats run down. Fields are decimal text with a point. */
    VALUE,
    /** {@code name.at}: temperature of the part. Fields are decimal text with a point. */
    TEMPERATURE,
    /** {@code name.instrument}: id of the instrument. Fields are text. */
    INSTRUMENT
  }

  /**
   * One field that is not blank.
   *
   * @param row from 1, the heads being row 1
   */
  public record Field(int row, String text) {}

  /** As a message names it: {@code column 3, dial[tooth=4]}. */
  public String place() {
    return "column " + number + ", " + head.strip();
  }
}
