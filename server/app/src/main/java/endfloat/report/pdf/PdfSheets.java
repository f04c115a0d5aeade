package endfloat.report.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.w3c.dom.Document;

/** A page of well-formed markup as sheets of a PDF: tagged, with its faces inside (PDF/A-3a). */
final class PdfSheets {
  /** Held, because the logging of the JDK forgets the level of a logger nobody holds. */
  private static final List<Logger> QUIET =
      List.of(Logger.getLogger("org.apache.fontbox"), Logger.getLogger("org.apache.pdfbox"));

  /** One at a time: faces are read as they are used, and two would take the memory of two. */
  private static final ReentrantLock TURN = new ReentrantLock(true);

  static {
    XRLog.setLoggingEnabled(false);
    QUIET.forEach(logger -> logger.setLevel(Level.SEVERE));
    FontMappers.set(new OnlyOwnFaces());
  }

  private PdfSheets() {}

  /** What is done to the document before it is written. */
  interface Finish {
    void on(PDDocument document) throws IOException;
  }

  static byte[] of(String xhtml, Stop stop, Finish finish) {
    waitForTurn(stop);
    try (PDDocument document = new PDDocument()) {
      PdfRendererBuilder builder = builder(PdfMarkup.read(xhtml), document, stop);
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.layout();
        SheetBounds.hold(renderer.getRootBox());
        stop.check();
        renderer.createPDFWithoutClosing();
        sayLinks(document);
        finish.on(document);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 18);
        document.save(out);
        return out.toByteArray();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the PDF cannot be made", e);
    } finally {
      TURN.unlock();
    }
  }

  /** A link has words for those who hear the sheet (ISO 14289-1, 7.18.5). */
  private static void sayLinks(PDDocument document) throws IOException {
    for (PDPage page : document.getPages()) {
      for (PDAnnotation one : page.getAnnotations()) {
        if (one.getContents() == null) {
          one.setContents("to another place in this document");
        }
      }
    }
  }

  private static void waitForTurn(Stop stop) {
    try {
      do {
        stop.check();
      } while (!TURN.tryLock(100, TimeUnit.MILLISECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Stop.StoppedException();
    }
  }

  private static PdfRendererBuilder builder(Document page, PDDocument document, Stop stop)
      throws IOException {
    String css = PdfMarkup.elements(page, "style").get(0).getTextContent();
    PdfRendererBuilder builder =
        new PdfRendererBuilder()
            .withW3cDocument(page, null)
            .usePDDocument(document)
            .withProducer("Endfloat")
            .usePdfAConformance(PdfAConformance.PDFA_3_A)
            .usePdfUaAccessibility(true)
            .useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData())
            .useSVGDrawer(new PictureDrawer(new PictureLooks(css)))
            .useMathMLDrawer(new FormulaDrawer())
            .useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
            .usePageSupplier(
                (to, width, height, number, shadow) -> {
                  stop.check();
                  PDPage sheet = new PDPage(new PDRectangle(width, height));
                  to.addPage(sheet);
                  return sheet;
                });
    for (Face face : Face.values()) {
      face.into(document, builder);
    }
    return builder;
  }
}
