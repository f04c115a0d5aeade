package endfloat.report;

import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.TitleBlock;

/**
 * The readings of a record as a blank form for the bench: what to read with which instrument, boxes
 * to write in, room to sketch. Nothing that was measured stands on it.
 */
public final class FormPage {
  private static final String LEAD =
      "Write what the instrument shows, in the unit printed. Leave a box empty where nothing was"
          + " taken; strike a wrong reading through once, write the right one beside it and say why."
          + " The number in the ring is the turn of the reading on the page: enter them in that"
          + " order.";

  private FormPage() {}

  /** The form of a sheet; limits stand on it where they are asked for only. */
  public static String html(SheetOnPaper sheet, PaperSize paper, boolean limits) {
    return page(sheet, PageLook.form(paper, strip(sheet.record())), "", limits);
  }

  /**
   * The same with ways onward above it, for a reader whom Endfloat serves.
   *
   * @param id of the record
   */
  public static String served(SheetOnPaper sheet, PaperSize paper, boolean limits, RecordId id) {
    String ways = OnwardFromPaper.ofForm(id, paper, limits);
    return page(sheet, PageLook.form(paper, strip(sheet.record())), ways, limits);
  }

  /** The same markup for the layout that makes a PDF of it. */
  public static String forSheets(SheetOnPaper sheet, PaperSize paper, boolean limits) {
    return page(sheet, PageLook.formForSheets(paper, strip(sheet.record())), "", limits);
  }

  private static String page(SheetOnPaper sheet, String css, String before, boolean limits) {
    TitleBlock block = sheet.record().titleBlock();
    Markup out = new Markup();
    out.made(before);
    out.start("main", "class", "report form");
    head(out, block);
    out.element("p", "lead", LEAD);
    new FormReadings(out, sheet, limits).write();
    new SketchSpace(out).write();
    return Paper.page(
        "Blank form " + block.title(),
        "",
        "Readings to take at the bench",
        css,
        out.end().finished());
  }

  private static void head(Markup out, TitleBlock block) {
    out.start("table", "class", "title").element("caption", "unseen", "Title block");
    out.start("tbody").start("tr").start("td", "colspan", "2").element("span", "cap", "Readings");
    out.element("h1", "", block.title()).end();
    field(out, "Record number", "");
    field(out, "Rev", "");
    out.end().start("tr");
    field(out, "Engine type", block.engineType());
    field(out, "Engine serial", "");
    field(out, "Since overhaul", "");
    field(out, "Date", "");
    out.end().start("tr");
    field(out, "Owner", "");
    field(out, "Read by", "");
    field(out, "Written down by", "");
    field(out, "Temperature of the room", "");
    out.end().end().end();
  }

  private static void field(Markup out, String caption, String text) {
    out.start("td", "class", text.isBlank() ? "blank" : null).element("span", "cap", caption);
    out.some("span", "f", text).end();
  }

  /** On every sheet: what it belongs to must be written on each, they come apart at the bench. */
  private static Strip strip(InvestigationRecord record) {
    TitleBlock block = record.titleBlock();
    String from = (block.recordNumber() + " rev " + block.revision()).strip();
    return new Strip(
        block.title(),
        "Engine serial  ______________________",
        "Record number  ________________",
        "Date  ________________",
        "Blank form of " + (block.recordNumber().isBlank() ? "a new record" : from),
        "Source hash " + record.sourceHash().substring(0, 12));
  }
}
