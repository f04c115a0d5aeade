package endfloat.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A face that a PDF embeds, under the name by which the style sheet asks for it; sizes in em. Its
 * tables are read as they are needed: one thread at a time may use a face, as {@link PdfSheets}
 * sees to.
 */
enum Face {
  LETTERING("Endfloat Lettering", "endfloat-lettering", 400, FontStyle.NORMAL),
  MATHS("Endfloat Maths", "endfloat-maths", 400, FontStyle.NORMAL),
  TEXT("Source Serif 4", "endfloat-text-regular", 400, FontStyle.NORMAL),
  BOLD("Source Serif 4", "endfloat-text-bold", 700, FontStyle.NORMAL),
  ITALIC("Source Serif 4", "endfloat-text-italic", 400, FontStyle.ITALIC),
  SOURCE("Source Code Pro", "endfloat-source-regular", 400, FontStyle.NORMAL);

  private final String family;
  private final int weight;
  private final FontStyle style;
  private final TrueTypeFont outlines;
  private final CmapLookup glyphs;
  private final double em;

  Face(String family, String file, int weight, FontStyle style) {
    this.family = family;
    this.weight = weight;
    this.style = style;
    try (InputStream in = Face.class.getResourceAsStream("/web/fonts/" + file + ".ttf")) {
      outlines = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // two letters drawn as one could not be found or copied as two
      outlines.setEnableGsub(false);
      glyphs = outlines.getUnicodeCmapLookup();
      em = outlines.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the face " + file, e);
    }
  }

  String family() {
    return family;
  }

  TrueTypeFont outlines() {
    return outlines;
  }

  /** Embeds what is used of it. */
  void into(PDDocument document, PdfRendererBuilder builder) throws IOException {
    PDType0Font font = PDType0Font.load(document, outlines, true);
    builder.useFont(new PDFontSupplier(font), family, weight, style, true);
  }

  boolean has(int codePoint) {
    return glyphs.getGlyphId(codePoint) != 0;
  }

  /** How far the pen moves over a text [em]. */
  double width(String text) {
    double width = 0;
    for (int codePoint : text.codePoints().toArray()) {
      width += advance(codePoint);
    }
    return width;
  }

  private double advance(int codePoint) {
    try {
      return outlines.getAdvanceWidth(glyphs.getGlyphId(codePoint)) / em;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private GlyphData glyph(int codePoint) {
    try {
      return outlines.getGlyph().getGlyph(glyphs.getGlyphId(codePoint));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How far the ink of a text reaches above and below its line [em]; both positive outward. */
  Reach reach(String text) {
    double above = -1;
    double below = -1;
    for (int codePoint : text.codePoints().toArray()) {
      GlyphData glyph = glyph(codePoint);
      if (glyph != null) {
        above = Math.max(above, glyph.getBoundingBox().getUpperRightY() / em);
        below = Math.max(below, -glyph.getBoundingBox().getLowerLeftY() / em);
      }
    }
    return above < 0 && below < 0 ? new Reach(0, 0) : new Reach(above, below);
  }

  record Reach(double above, double below) {}

  /** The outline of a text [em], y upward. */
  Path2D outline(String text) {
    Path2D all = new Path2D.Double();
    double x = 0;
    for (int codePoint : text.codePoints().toArray()) {
      GlyphData glyph = glyph(codePoint);
      GeneralPath path = glyph == null ? new GeneralPath() : glyph.getPath();
      AffineTransform place = AffineTransform.getTranslateInstance(x, 0);
      place.scale(1 / em, 1 / em);
      all.append(path.getPathIterator(place), false);
      x += advance(codePoint);
    }
    return all;
  }
}
