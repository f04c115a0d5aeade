package endfloat.cli;

import endfloat.report.PaperSize;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** What every command that puts a record on paper is asked. */
final class OnPaper {
  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The file to write; an older one of that name is replaced.")
  Path out;

  @Option(names = "--pdf", description = "Write PDF; else HTML.")
  boolean pdf;

  @Option(names = "--letter", description = "For Letter paper; else A4.")
  private boolean letter;

  @Option(names = "--json", description = "Print JSON.")
  boolean json;

  PaperSize size() {
    return letter ? PaperSize.LETTER : PaperSize.A4;
  }
}
