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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat report RECORD [--pdf] --out FILE}: the record on paper, in one file. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Writes the report of a record as one file that opens by itself and prints: HTML, or PDF with",
      "the record inside as an attached file."
    },
    footer = {"", "Exit code 1: a verdict is outside; 2: something on the sheet is in error."})
final class ReportCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record.")
  private Path record;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The report; an older one of that name is replaced.")
  private Path out;

  @Option(names = "--pdf", description = "Write PDF; else HTML.")
  private boolean pdf;

  @Option(names = "--letter", description = "For Letter paper; else A4.")
  private boolean letter;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ReportCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    SheetOnPaper sheet =
        PaperView.of(RecordFile.read(record), Photographs.beside(new DiskFiles(), record));
    PaperFile.write(out, record, report(sheet, letter ? PaperSize.LETTER : PaperSize.A4));
    JsonNode summary = sheet.view().path("summary");
    if (json) {
      ObjectNode printed = JsonNodeFactory.instance.objectNode().put("out", out.toString());
      printed.set("summary", summary);
      Json.print(streams.out(), printed);
    } else {
      streams.out().println("Written: " + out);
    }
    if (summary.path("errors").asInt() > 0) {
      streams.err().println("note: the sheet has errors; the report says where.");
      return Exit.BAD_INPUT;
    }
    return summary.path("outside").asInt() > 0 ? Exit.OUTSIDE : Exit.DONE;
  }

  private byte[] report(SheetOnPaper sheet, PaperSize paper) {
    if (!pdf) {
      return ReportPage.html(sheet, paper).getBytes(StandardCharsets.UTF_8);
    }
    Attached file = new Attached(record.getFileName().toString(), RecordFile.bytes(record));
    return PdfReport.of(sheet, paper, file, Stop.NEVER);
  }
}
