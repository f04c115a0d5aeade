package endfloat.cli;

import endfloat.http.view.PaperView;
import endfloat.report.FormPage;
import endfloat.report.PaperSize;
import endfloat.report.SheetOnPaper;
import endfloat.report.pdf.PdfForm;
import endfloat.report.pdf.Stop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat form RECORD --out FILE}: the readings as a blank form for the bench. */
@Command(
    name = "form",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Writes the readings of a record as a blank form to print.",
      "By instrument and part, with boxes to write in. Nothing that was measured stands on it."
    })
final class FormCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record, or a pattern.")
  private Path record;

  @Mixin private OnPaper paper;

  @Option(names = "--limits", description = "Print the limits of each reading beside its boxes.")
  private boolean limits;

  FormCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    SheetOnPaper sheet = PaperView.of(RecordFile.read(record));
    PaperFile.write(paper.out, record, form(sheet, paper.size()));
    PaperFile.tell(paper.out, streams, paper.json);
    return Exit.DONE;
  }

  private byte[] form(SheetOnPaper sheet, PaperSize size) {
    return paper.pdf
        ? PdfForm.of(sheet, size, limits, Stop.NEVER)
        : FormPage.html(sheet, size, limits).getBytes(StandardCharsets.UTF_8);
  }
}
