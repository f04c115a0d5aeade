package endfloat.sheet;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.FileStore;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.RecordPlace;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Two pages that edit one sheet in turns drawn at random, each with its own, often outdated, sight
 * of it; and beside them the model of what was acknowledged.
 */
final class TwoClients {
  static final RecordPlace PLACE = RecordPlace.on(Path.of("/shelf"), new RecordId("mesh"));

  static final byte[] FIRST =
      InvestigationRecord.read(
              ("{\"format\":\"endfloat-record\",\"version\":1,\"title_block\":{\"title\":\"Mesh\"},"
                      + "\"cells\":[{\"id\":\"a\",\"kind\":\"note\",\"text\":\"first\"},"
                      + "{\"id\":\"b\",\"kind\":\"working\",\"text\":\"x = 1 mm\"}]}")
                  .getBytes(StandardCharsets.UTF_8))
          .write();

  private final Random random;
  private final List<Edit> sent = new ArrayList<>();
  private final long[] seen = new long[2];

  /** States that a crash may leave: all acknowledged edits, and perhaps one that was not. */
  private final List<SheetModel> possible = new ArrayList<>();

  private SheetModel acknowledged;
  private int count;
  private int edits;

  TwoClients(Random random, InvestigationRecord record, long revision) {
    this.random = random;
    this.acknowledged = new SheetModel(SheetModel.of(record), revision);
    this.possible.add(acknowledged);
  }

  /** A minute passes at every look, so that no two edits count as typing in one go. */
  static Clock clock() {
    return new Clock() {
      private long minutes;

      @Override
      public ZoneId getZone() {
        return ZoneOffset.UTC;
      }

      @Override
      public Clock withZone(ZoneId zone) {
        return this;
      }

      @Override
      public Instant instant() {
        return Instant.ofEpochSecond(60L * minutes++);
      }
    };
  }

  static OpenSheet open(FileStore files, Clock clock) throws IOException {
    return OpenSheet.open(files, PLACE, clock, Runnable::run, Optional.empty());
  }

  SheetModel acknowledged() {
    return acknowledged;
  }

  /** How many edits were acknowledged. */
  int edits() {
    return edits;
  }

  /** Takes one of the possible states as what is; false where it is none of them. */
  boolean settle(Snapshot found) {
    List<SheetModel.Line> lines = SheetModel.of(found.record());
    for (SheetModel model : possible) {
      if (model.lines().equals(lines) && model.revision() == found.revision()) {
        acknowledged = model;
        possible.clear();
        possible.add(acknowledged);
        return true;
      }
    }
    return false;
  }

  List<List<SheetModel.Line>> possibleLines() {
    return possible.stream().map(SheetModel::lines).toList();
  }

  /** One turn of one of the two. */
  void turn(OpenSheet sheet) {
    int client = random.nextInt(2);
    if (random.nextInt(4) == 0) {
      seen[client] = sheet.snapshot().revision();
    }
    boolean again = !sent.isEmpty() && random.nextInt(12) == 0;
    Edit edit = again ? sent.get(random.nextInt(sent.size())) : edit(client);
    long before = sheet.snapshot().revision();
    SheetModel after = acknowledged.copy();
    boolean could = again || after.make(edit);
    Answer answer = sheet.apply(edit);
    boolean made = sheet.snapshot().revision() == before + 1;
    if (answer instanceof Answer.Kept kept) {
      if (made) {
        if (again) {
          // it was refused when first sent
          after = acknowledged.copy();
          could = after.make(edit);
        }
        if (!could) {
          throw new AssertionError("kept an edit that cannot be made: " + edit);
        }
        acknowledged = after;
        edits++;
        possible.clear();
        possible.add(acknowledged);
        seen[client] = kept.revision();
      } else if (could && !again && !after.lines().equals(acknowledged.lines())) {
        throw new AssertionError("acknowledged and not made: " + edit);
      }
    } else {
      if (made) {
        throw new AssertionError("made and not acknowledged: " + edit);
      }
      if (!again && could) {
        possible.add(after);
      } else if (again) {
        SheetModel second = acknowledged.copy();
        try {
          if (second.make(edit)) {
            possible.add(second);
          }
        } catch (IndexOutOfBoundsException gone) {
          // its clause is gone, so it cannot have been made
        }
      }
    }
    sent.add(edit);
    if (!SheetModel.of(sheet.snapshot().record()).equals(acknowledged.lines())) {
      throw new AssertionError(
          "after " + edit + " the sheet is " + SheetModel.of(sheet.snapshot().record()));
    }
  }

  private Edit edit(int client) {
    count++;
    List<SheetModel.Line> lines = acknowledged.lines();
    String some = lines.isEmpty() ? "" : lines.get(random.nextInt(lines.size())).id();
    String after = random.nextInt(3) == 0 ? "" : some;
    int dice = lines.isEmpty() ? 6 : random.nextInt(12);
    Change change =
        switch (dice) {
          case 6, 7 -> Change.add("n" + count, note(count), "", after);
          case 8 -> Change.delete(some);
          case 9 -> Change.move(some, "", after.equals(some) ? "" : after);
          case 10 -> Change.undo();
          case 11 -> Change.redo();
          default -> Change.put(some, "/text", new TextNode("text " + count));
        };
    return new Edit(
        "e" + random.nextLong(), "person " + client, "page " + client, "", seen[client], change);
  }

  private static ObjectNode note(int count) {
    return JsonNodeFactory.instance.objectNode().put("kind", "note").put("text", "new " + count);
  }
}
