package endfloat.report.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws on a sheet of the PDF; y counts downward from the origin, in units of its own. */
final class Pen {
  private final PdfBoxOutputDevice device;
  private final RenderingContext context;
  private final double x;
  private final double y;
  private final double unit;

  /**
   * @param x where the origin is [dots of the device]
   * @param unit [dots of the device]
   */
  Pen(RenderingContext context, double x, double y, double unit) {
    this.device = (PdfBoxOutputDevice) context.getOutputDevice();
    this.context = context;
    this.x = x;
    this.y = y;
    this.unit = unit;
  }

  private Shape placed(Shape shape) {
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.scale(unit, unit);
    return place.createTransformedShape(shape);
  }

  void fill(Shape shape, FSColor colour, double opacity) {
    device.setColor(colour);
    if (opacity >= 1) {
      device.fill(placed(shape));
      return;
    }
    see(opacity);
    device.fill(placed(shape));
    see(1);
  }

  private void see(double opacity) {
    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
    state.setNonStrokingAlphaConstant((float) opacity);
    device.getCurrentPage().setExtGState(state);
  }

  /**
   * @param dashes lengths in units by turns; null for an unbroken stroke
   */
  void stroke(Shape shape, FSColor colour, double width, float[] dashes) {
    device.setColor(colour);
    Stroke before = device.getStroke();
    float[] scaled = dashes == null ? null : dashes.clone();
    for (int i = 0; scaled != null && i < scaled.length; i++) {
      scaled[i] *= (float) unit;
    }
    device.setStroke(
        new BasicStroke(
            (float) (width * unit), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, scaled, 0));
    device.draw(placed(shape));
    device.setStroke(before);
  }

  /**
   * A text that can be searched and copied.
   *
   * @param size of the type in units
   * @param stretch how many times higher than it is by itself
   */
  void text(
      Face face,
      String text,
      double left,
      double line,
      double size,
      double stretch,
      FSColor colour) {
    FontSpecification font = new FontSpecification();
    font.families = new String[] {face.family()};
    font.size = (float) (size * unit);
    font.fontWeight = IdentValue.FONT_WEIGHT_400;
    font.fontStyle = IdentValue.NORMAL;
    font.variant = IdentValue.NORMAL;
    device.setFont(context.getFont(font));
    device.setColor(colour);
    double atX = x + left * unit;
    double atY = y + line * unit;
    if (stretch == 1) {
      device.drawString(text, (float) atX, (float) atY, null);
      return;
    }
    // the layout's device cannot stretch a text: its outline is drawn, the text itself unseen
    AffineTransform higher = AffineTransform.getTranslateInstance(left, line);
    higher.scale(size, -size * stretch);
    fill(higher.createTransformedShape(face.outline(text)), colour, 1);
    device.getCurrentPage().setRenderingMode(RenderingMode.NEITHER);
    device.drawString(text, (float) atX, (float) atY, null);
    device.getCurrentPage().setRenderingMode(RenderingMode.FILL);
  }
}
