package endfloat.sheet;

import java.util.List;

/** Hears of a sheet, one call after the other, outside its lock. */
public interface SheetListener {
  /** An edit was kept. */
  void changed(SheetChange change);

  /** The whole record is another one: the one on disk was taken over. */
  default void replaced(Snapshot now) {}

  /** Somebody came, went, or is in another clause. */
  default void present(List<Presence> all) {}

  /** The file on disk was changed by something else; a person must choose. */
  default void conflict(DiskConflict conflict) {}

  /** Something the reader should know, a sentence. */
  default void notice(String text) {}
}
