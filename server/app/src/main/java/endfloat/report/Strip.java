package endfloat.report;

import endfloat.record.InvestigationRecord;
import endfloat.record.TitleBlock;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The title block as it goes on from sheet to sheet: two lines at the left and two at the right, at
 * head and foot.
 *
 * @param title of the record
 * @param engine type, serial and hours
 * @param number of the record, with its revision
 * @param document what it is, of which day, in which state
 * @param signed who prepared, checked and approved it
 * @param hash of its source, shortened
 */
record Strip(
    String title, String engine, String number, String document, String signed, String hash) {

  static Strip of(InvestigationRecord record) {
    TitleBlock block = record.titleBlock();
    return new Strip(
        block.title(),
        joined(", ", block.engineType(), block.engineSerial(), block.hoursSinceOverhaul()),
        joined(" ", block.recordNumber(), said("rev ", block.revision())),
        joined(", ", block.document(), block.date(), block.state()),
        joined(
            "; ",
            "Prepared: " + or(block.prepared()),
            "checked: " + or(block.checked()),
            "approved: " + or(block.approved())),
        "Source hash " + record.sourceHash().substring(0, 12));
  }

  /** As a browser names its window. */
  String named() {
    return joined(" ", number, title);
  }

  private static String said(String word, String text) {
    return text.isBlank() ? "" : word + text;
  }

  private static String or(String name) {
    return name.isBlank() ? "\u2013" : name;
  }

  private static String joined(String between, String... texts) {
    return Stream.of(texts).filter(t -> !t.isBlank()).collect(Collectors.joining(between));
  }
}
