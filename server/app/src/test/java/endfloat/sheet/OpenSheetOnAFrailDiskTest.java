package endfloat.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.sheet.FrailDisk.Failure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Nothing acknowledged is lost, and nothing is ever half there, wherever the disk fails. */
class OpenSheetOnAFrailDiskTest {
  private static final int TURNS = 14;

  /**
   * Every operation of a script of edits and saves fails once, in each way, before each kind of
   * end.
   */
  @Test
  void losesNothingWhereverTheDiskFails() {
    int runs = 0;
    for (long seed = 1; seed <= 3; seed++) {
      long operations = run(seed, Long.MAX_VALUE, Failure.ONCE, false);
      for (Failure how : Failure.values()) {
        for (boolean powerCut : new boolean[] {false, true}) {
          for (long n = 1; n <= operations; n++) {
            run(seed, n, how, powerCut);
            runs++;
          }
        }
      }
    }
    assertTrue(runs > 300, "only " + runs + " operations failed");
  }

  @Property(tries = 200)
  void losesNothingInAnyInterleaving(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 160) int n,
      @ForAll Failure how,
      @ForAll boolean powerCut) {
    run(seed, n, how, powerCut);
  }

  /**
   * Three lives of a sheet, the disk failing in each; answers how many operations the first took.
   */
  private static long run(long seed, long failAt, Failure how, boolean powerCut) {
    String which =
        "seed " + seed + ", operation " + failAt + ", " + how + ", power cut " + powerCut;
    Random random = new Random(seed);
    Clock clock = TwoClients.clock();
    FrailDisk disk = new FrailDisk(random);
    disk.plant(TwoClients.PLACE.file(), TwoClients.FIRST);
    TwoClients clients = new TwoClients(random, InvestigationRecord.read(TwoClients.FIRST), 0);
    long operations = 0;
    try {
      for (int life = 0; life < 3; life++) {
        disk.failAt(failAt, how);
        live(disk, clients, clock, random);
        operations = life == 0 ? disk.operations() : operations;
        disk = powerCut ? disk.afterPowerCut() : disk.afterKill();
        OpenSheet again = TwoClients.open(disk, clock);
        Snapshot found = again.snapshot();
        assertTrue(
            clients.settle(found),
            which
                + ", life "
                + life
                + ": found "
                + SheetModel.of(found.record())
                + ", possible "
                + clients.possibleLines());
        assertTrue(found.conflict().isEmpty(), which + ": took its own file for another's");
        again.close();
        if (life == 1) {
          disk = disk.afterKill();
        }
      }
    } catch (IOException | RecordException | AssertionError e) {
      throw new AssertionError(which + ": " + e.getMessage(), e);
    }
    return operations;
  }

  private static void live(FrailDisk disk, TwoClients clients, Clock clock, Random random)
      throws IOException {
    OpenSheet sheet;
    try {
      sheet = TwoClients.open(disk, clock);
    } catch (IOException e) {
      return;
    }
    for (int i = 0; i < TURNS; i++) {
      clients.turn(sheet);
      if (random.nextInt(5) == 0) {
        try {
          sheet.save();
        } catch (IOException e) {
          // it says so, and the edits are in the log
        }
      }
      if (random.nextInt(6) == 0) {
        sheet.lookAtDisk();
      }
    }
    if (random.nextBoolean()) {
      try {
        sheet.close();
      } catch (IOException e) {
        // as above
      }
    }
  }

  /**
   * Somebody else writes the file at any moment. Theirs is never overwritten unseen, mine is never
   * lost: whichever is not chosen is among the earlier states.
   */
  @Property(tries = 200)
  void losesNeitherMineNorTheirsWhenTheFileIsWrittenByOthers(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 200) int n, @ForAll boolean powerCut)
      throws IOException {
    Random random = new Random(seed);
    Clock clock = TwoClients.clock();
    FrailDisk disk = new FrailDisk(random);
    disk.plant(TwoClients.PLACE.file(), TwoClients.FIRST);
    TwoClients clients = new TwoClients(random, InvestigationRecord.read(TwoClients.FIRST), 0);
    for (int life = 0; life < 4; life++) {
      disk.failAt(n, Failure.ONCE);
      live(disk, clients, clock, random);
      disk = powerCut ? disk.afterPowerCut() : disk.afterKill();
      boolean written = random.nextBoolean();
      byte[] theirs = theirs(life);
      if (written) {
        disk.plant(TwoClients.PLACE.file(), theirs);
      }
      OpenSheet sheet = TwoClients.open(disk, clock);
      if (!written) {
        assertTrue(clients.settle(sheet.snapshot()), "seed " + seed + ", life " + life);
        continue;
      }
      List<SheetModel.Line> foreign = SheetModel.of(InvestigationRecord.read(theirs));
      if (sheet.snapshot().conflict().isPresent()) {
        assertTrue(clients.settle(sheet.snapshot()), "mine goes on, seed " + seed);
        if (random.nextBoolean()) {
          sheet.keepMine();
          assertTrue(isKept(disk, foreign), "theirs is kept, seed " + seed);
          continue;
        }
        List<SheetModel.Line> mine = SheetModel.of(sheet.snapshot().record());
        sheet.takeTheirs();
        assertTrue(isKept(disk, mine), "mine is kept, seed " + seed);
      } else {
        boolean kept = clients.edits() == 0;
        for (List<SheetModel.Line> mine : clients.possibleLines()) {
          kept |= isKept(disk, mine);
        }
        assertTrue(kept, "mine is kept, seed " + seed);
      }
      assertTrue(SheetModel.of(sheet.snapshot().record()).equals(foreign), "seed " + seed);
      clients = new TwoClients(random, sheet.snapshot().record(), sheet.snapshot().revision());
    }
  }

  private static byte[] theirs(int life) {
    String text = new String(TwoClients.FIRST, StandardCharsets.UTF_8);
    return text.replace("\"first\"", "\"by others " + life + "\"").getBytes(StandardCharsets.UTF_8);
  }

  private static boolean isKept(FrailDisk disk, List<SheetModel.Line> lines) throws IOException {
    for (Path state : TwoClients.PLACE.earlierStates(disk)) {
      byte[] bytes = disk.read(state).orElseThrow();
      if (SheetModel.of(InvestigationRecord.read(bytes)).equals(lines)) {
        return true;
      }
    }
    return false;
  }
}
