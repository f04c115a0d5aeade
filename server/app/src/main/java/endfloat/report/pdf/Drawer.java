package endfloat.report.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** What the layout asks to draw an element that is no text. Faces come with the document. */
abstract class Drawer implements SVGDrawer {

  /** The element as it will be drawn; width and height as the style sheet has them, or negative. */
  abstract SVGImage image(
      Element element, Box box, CssContext context, double width, double height);

  @Override
  public final SVGImage buildSVGImage(
      Element element, Box box, CssContext context, double width, double height, double dots) {
    return image(element, box, context, width, height);
  }

  @Override
  public final void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {}

  @Override
  public final void addFontFile(File file, String family, Integer weight, FontStyle style) {}

  @Override
  public final void close() {}

  /** A picture of a size [dots of the device]. */
  abstract static class Image implements SVGImage {
    private final int width;
    private final int height;

    Image(int width, int height) {
      this.width = width;
      this.height = height;
    }

    @Override
    public int getIntrinsicWidth() {
      return width;
    }

    @Override
    public int getIntrinsicHeight() {
      return height;
    }
  }
}
