package endfloat.browser;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A record of 500 lines in 50 workings. Line 1 of each working rests on a reading of its own and on
 * one that all share; each further line rests on the line before it; the last has a limit.
 */
final class SheetOfManyLines {
  static final int WORKINGS = 50;
  static final int LINES = 10;

  private SheetOfManyLines() {}

  /** Writes it into a file of this name. */
  static Path write(Path file) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    ObjectNode record = mapper.createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record
        .putObject("title_block")
        .put("title", "Five hundred lines")
        .put("record_number", "W6-500");
    ObjectNode gauge = record.putArray("instruments").addObject();
    gauge.put("id", "DG-02").put("name", "Plunger dial gauge").put("offset", "0.006 mm");
    gauge.put("resolution", "0.01 mm").put("coverage", 2);
    ArrayNode cells = record.putArray("cells");
    readings(cells.addObject());
    for (int working = 0; working < WORKINGS; working++) {
      working(cells.addObject(), working);
    }
    return Files.writeString(
        file, mapper.writerWithDefaultPrettyPrinter().writeValueAsString(record));
  }

  private static void readings(ObjectNode cell) {
    cell.put("id", "readings").put("kind", "readings").put("title", "Readings");
    ArrayNode readings = cell.putArray("readings");
    reading(readings.addObject(), "shared", "0.10");
    for (int working = 0; working < WORKINGS; working++) {
      reading(readings.addObject(), "taken_" + working, "0.20");
    }
  }

  private static void reading(ObjectNode reading, String name, String taken) {
    reading.put("name", name).put("what", "Travel at the gauge").put("unit", "mm");
    reading.put("instrument", "DG-02");
    reading.putArray("entries").addObject().putArray("taken").add(taken);
  }

  private static void working(ObjectNode cell, int working) {
    cell.put("id", "w" + working).put("kind", "working").put("title", "Working " + working);
    StringBuilder text = new StringBuilder();
    String before = "taken_" + working + " + shared";
    for (int line = 0; line < LINES; line++) {
      String name = "step_" + working + "_" + line;
      text.append(name).append(" [mm] = ").append(before).append('\n');
      before = name + " + 0.01 mm";
    }
    String last = "step_" + working + "_" + (LINES - 1);
    text.append("limit ").append(last).append(": 0.10 .. 0.60 mm");
    cell.put("text", text.toString());
  }
}
