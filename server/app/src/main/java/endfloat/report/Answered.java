package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * What came out, beside the words of the finding: every limit that is not kept or not proven to be.
 */
final class Answered {
  /** Beyond, they stand without strips, and then only with their clauses. */
  private static final int DRAWN = 4;

  private static final int MOST = 5;

  private final Markup out;
  private final SheetOnPaper sheet;
  private boolean done;

  Answered(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  /** A limit that is not kept, or not proven to be. */
  private record Judged(JsonNode figure, JsonNode shown, JsonNode limit) {}

  /** Writes them at the first call, if there is room beside what follows. */
  void once(boolean room) {
    List<Judged> all = done || !room ? List.of() : judged();
    done = true;
    if (all.isEmpty()) {
      return;
    }
    out.start("div", "class", "answered").element("p", "cap", "Not within limits");
    for (Judged one : all.subList(0, Math.min(MOST, all.size()))) {
      one(one, all.size() <= DRAWN);
    }
    int more = all.size() - MOST;
    out.some("p", "under", more > 0 ? more + " more, each in its clause" : "");
    out.end();
  }

  private List<Judged> judged() {
    List<Judged> judged = new ArrayList<>();
    for (String verdict : new String[] {"outside", "not proven"}) {
      for (JsonNode figure : sheet.view().path("figures")) {
        gather(figure, figure, verdict, judged);
        figure.path("elements").forEach(element -> gather(figure, element, verdict, judged));
      }
    }
    return judged;
  }

  private static void gather(JsonNode figure, JsonNode shown, String verdict, List<Judged> into) {
    for (JsonNode limit : shown.path("limits")) {
      if (limit.path("verdict").asText().equals(verdict)) {
        into.add(new Judged(figure, shown, limit));
      }
    }
  }

  private void one(Judged one, boolean drawn) {
    out.start("div", "class", "judged").start("p", "class", "of");
    String clause = one.figure().path("cell").asText();
    out.start("a", "href", "#clause-" + clause).text(sheet.number(clause)).end().text(" ");
    String title = one.figure().path("title").asText();
    if (title.isEmpty()) {
      out.start("span", "class", "nm");
      out.name(one.figure().path("name").asText()).end();
    } else {
      out.text(title);
    }
    if (one.shown() != one.figure()) {
      out.text(", " + Bands.place(one.shown()));
    }
    out.end().start("p", "class", "value");
    String u = one.shown().path("u").asText();
    String unit = one.shown().path("unit").asText();
    out.element("span", "val", one.shown().path("value").asText());
    out.text((u.isEmpty() ? "" : " ± " + u) + (unit.isEmpty() ? "" : " " + unit)).end();
    VerdictMark.write(out, one.limit().path("verdict").asText());
    out.element("span", "ends", Answers.ends(one.limit()));
    if (drawn && one.limit().has("strip")) {
      out.made(one.limit().get("strip").asText());
    }
    out.end();
  }
}
