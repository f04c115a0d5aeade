package endfloat.report.pdf;

import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import endfloat.report.SheetOnPaper;
import endfloat.report.ShippedRecords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * Times of the demonstration's report as PDF, beside headless Chromium printing the same report in
 * the same run; no test, run by {@code server/benchmarks/report-pdf}.
 */
class ReportPdfTimes {
  private static final Path RECORD = Path.of("../../notebooks/w6-bevel-mesh.json");
  private static final int RUNS = 9;
  private static final int WARMING = 10;

  @Test
  void firstAndWarmBesideABrowser() throws Exception {
    SheetOnPaper sheet = ShippedRecords.sheet(RECORD);
    Attached record = new Attached("record.json", ShippedRecords.bytes(RECORD));
    double first = made(sheet, record);
    for (int i = 0; i < WARMING; i++) {
      made(sheet, record);
    }
    Path page = Files.createTempFile("report", ".html");
    Files.writeString(page, ReportPage.html(sheet, PaperSize.A4));
    printed(page);
    double[] ours = new double[RUNS];
    double[] browser = new double[RUNS];
    // by turns, so that what else the machine does falls on both
    for (int i = 0; i < RUNS; i++) {
      ours[i] = made(sheet, record);
      browser[i] = printed(page);
    }
    double warm = median(ours);
    double chromium = median(browser);
    System.out.printf(
        Locale.ROOT,
        "report.pdf first %.0f ms, warm %.0f ms; Chromium %.0f ms; ratio first %.2f, warm %.2f%n",
        first,
        warm,
        chromium,
        first / chromium,
        warm / chromium);
  }

  private static double made(SheetOnPaper sheet, Attached record) {
    long begin = System.nanoTime();
    PdfReport.of(sheet, PaperSize.A4, record, Stop.NEVER);
    return (System.nanoTime() - begin) / 1e6;
  }

  private static double printed(Path page) throws IOException, InterruptedException {
    Path out = Files.createTempFile("printed", ".pdf");
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(
                List.of(
                    "chromium",
                    "--headless=new",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-background-networking",
                    "--no-pdf-header-footer",
                    "--print-to-pdf=" + out,
                    page.toUri().toString()))
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS) || Files.size(out) == 0) {
      throw new IOException("the browser did not print");
    }
    return (System.nanoTime() - begin) / 1e6;
  }

  private static double median(double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
