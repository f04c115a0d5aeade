package endfloat.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.view.PaperView;
import endfloat.record.DiskFiles;
import endfloat.record.Photographs;
import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import endfloat.report.SheetOnPaper;
import endfloat.report.pdf.Attached;
import endfloat.report.pdf.PdfReport;
import endfloat.report.pdf.Stop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code endfloat report RECORD [--pdf] --out FILE}: the record on paper, in one file. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      // the first line alone stands in the list of commands
      "Writes the report of a record as one file that opens by itself and prints.",
      "HTML, or PDF with the record inside as an attached file."
    },
    footer = {"", "Exit code 1: a verdict is outside; 2: something on the sheet is in error."})
final class ReportCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record.")
  private Path record;

  @Mixin private OnPaper paper;

  ReportCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    SheetOnPaper sheet =
        PaperView.of(RecordFile.read(record), Photographs.beside(new DiskFiles(), record));
    PaperFile.write(paper.out, record, report(sheet, paper.size()));
    JsonNode summary = sheet.view().path("summary");
    if (paper.json) {
      ObjectNode printed = JsonNodeFactory.instance.objectNode().put("out", paper.out.toString());
      printed.set("summary", summary);
      Json.print(streams.out(), printed);
    } else {
      streams.out().println("Written: " + paper.out);
    }
    if (summary.path("errors").asInt() > 0) {
      streams.err().println("note: the sheet has errors; the report says where.");
      return Exit.BAD_INPUT;
    }
    return summary.path("outside").asInt() > 0 ? Exit.OUTSIDE : Exit.DONE;
  }

  private byte[] report(SheetOnPaper sheet, PaperSize size) {
    if (!paper.pdf) {
      return ReportPage.html(sheet, size).getBytes(StandardCharsets.UTF_8);
    }
    Attached file = new Attached(record.getFileName().toString(), RecordFile.bytes(record));
    return PdfReport.of(sheet, size, file, Stop.NEVER);
  }
}
