package endfloat.report;

import endfloat.record.Instrument;
import endfloat.record.Reading;
import endfloat.record.RegisteredPart;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The readings of a form, instrument after instrument. */
final class FormReadings {
  private final Markup out;
  private final SheetOnPaper sheet;
  private final Optional<FormLimits> limits;
  private final FormBoxes boxes;

  FormReadings(Markup out, SheetOnPaper sheet, boolean limits) {
    this.out = out;
    this.sheet = sheet;
    this.limits = limits ? Optional.of(new FormLimits(out, sheet)) : Optional.empty();
    this.boxes = new FormBoxes(out, sheet.record().settings().stage());
  }

  void write() {
    int group = 0;
    for (var one : FormOrder.of(sheet.record()).entrySet()) {
      group++;
      out.start("section", "class", "part", "id", "instrument-" + group);
      instrument(one.getKey());
      int part = 0;
      for (Map.Entry<String, List<FormOrder.Asked>> of : one.getValue().entrySet()) {
        part++;
        out.start("section", "class", "clause", "id", "instrument-" + group + "-part-" + part);
        part(of.getKey());
        of.getValue().forEach(this::reading);
        out.end();
      }
      out.end();
    }
  }

  private void instrument(String mark) {
    Optional<Instrument> known =
        sheet.record().instruments().stream().filter(one -> one.id().equals(mark)).findFirst();
    out.start("h2").start("span", "class", "no").text(mark.isBlank() ? "–" : mark).end();
    out.text(known.map(FormReadings::name).orElse(mark.isBlank() ? "No instrument named" : ""));
    out.end();
    out.start("table", "class", "fields", "aria-label", "Instrument " + mark);
    out.start("tbody").start("tr");
    String step = known.map(Instrument::resolution).orElse("");
    String due = known.map(Instrument::due).orElse("");
    out.start("td", "class", "said").text(step.isBlank() ? "" : "Step " + step);
    out.some("span", "under", due.isBlank() ? "" : "Calibration due " + due).end();
    field("Another used: mark and certificate");
    field("Zero before");
    field("Zero after");
    out.end().end().end();
  }

  private static String name(Instrument one) {
    return one.name().isBlank() ? one.kind() : one.name();
  }

  private void part(String id) {
    Optional<RegisteredPart> known =
        sheet.record().parts().stream().filter(one -> one.id().equals(id)).findFirst();
    out.start("h3").text(id.isBlank() ? "No part named" : sheet.part(id)).end();
    out.start("table", "class", "fields", "aria-label", "Part " + sheet.part(id));
    out.start("tbody").start("tr");
    out.start("td", "class", "said");
    out.text(known.map(RegisteredPart::number).orElse(""));
    out.some("span", "under", known.map(RegisteredPart::position).orElse("")).end();
    field("Serial number");
    field("Temperature of the part");
    field("Read by, at");
    out.end().end().end();
  }

  private void field(String caption) {
    out.start("td", "class", "field").element("span", "cap", caption).end();
  }

  private void reading(FormOrder.Asked asked) {
    Reading reading = asked.reading();
    boolean grid = !reading.axes().isEmpty() && !reading.entries().isEmpty();
    String look =
        !grid
            ? "asked"
            : boxes.fitOneSheet(reading) ? "asked grid-asked whole" : "asked grid-asked";
    out.start("div", "class", look, "id", "turn-" + asked.turn());
    // named so, because a caption out of sight would count as a row of its widths
    out.start("table", "class", "asking", "aria-label", "Reading " + asked.turn());
    out.start("tbody").start("tr").start("th", "scope", "row", "class", "turn");
    out.element("span", "balloon", String.valueOf(asked.turn())).end();
    out.start("td");
    out.element("span", "what", reading.what().isBlank() ? "not described" : reading.what());
    out.start("span", "class", "under");
    boxes.symbol(reading);
    String more =
        Stream.of(asked.clause().number() + " " + asked.clause().title(), material(reading))
            .filter(text -> !text.isBlank())
            .collect(Collectors.joining("; "));
    out.text("; " + more).end();
    limits.ifPresent(all -> all.of(reading));
    out.end();
    if (!grid) {
      out.start("td", "class", "answer");
      boxes.single(reading);
      out.end();
    }
    out.end().end().end();
    if (grid) {
      boxes.stations(reading);
    }
    out.end();
  }

  private static String material(Reading reading) {
    return reading.material().isBlank()
        ? ""
        : reading.material() + ": will be corrected to 20 °C, note the part's temperature";
  }
}
