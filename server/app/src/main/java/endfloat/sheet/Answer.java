package endfloat.sheet;

import java.util.Optional;

/** What becomes of an edit. */
public sealed interface Answer {
  /** Id of the edit. */
  String edit();

  /**
   * The edit is on the disk and will not be lost.
   *
   * @param revision of the record with it
   */
  record Kept(String edit, long revision) implements Answer {}

  /**
   * The edit was not made; the record is as it was.
   *
   * @param reason a sentence
   * @param wayOut what to do, a sentence
   * @param mine what the edit would have put, where somebody else changed the same place since
   * @param theirs what stands there now
   * @param revision of the record; send it as {@code seen} to put one's own over theirs
   */
  record Refused(
      String edit,
      String reason,
      String wayOut,
      Optional<String> mine,
      Optional<String> theirs,
      long revision)
      implements Answer {}
}
