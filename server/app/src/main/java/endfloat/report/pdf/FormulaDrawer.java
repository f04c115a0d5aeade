package endfloat.report.pdf;

import com.openhtmltopdf.css.parser.FSColor;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import endfloat.report.pdf.FormulaPiece.Letters;
import endfloat.report.pdf.FormulaPiece.Mark;
import endfloat.report.pdf.FormulaPiece.Root;
import endfloat.report.pdf.FormulaPiece.Rule;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.w3c.dom.Element;

/** Draws formulas where the layout has put them. */
final class FormulaDrawer extends Drawer {

  @Override
  SVGImage image(Element math, Box box, CssContext context, double width, double height) {
    FormulaPiece piece = FormulaMarkup.piece(math);
    double em = context.getFontSize2D(box.getStyle().getFontSpecification());
    FSColor colour = box.getStyle().getColor();
    return new Image(
        (int) Math.ceil(piece.width() * em),
        (int) Math.ceil((piece.height() + piece.depth()) * em)) {
      @Override
      public void drawSVG(OutputDevice device, RenderingContext on, double x, double y) {
        Pen pen = new Pen(on, x, y + piece.height() * em, em);
        piece.marks().forEach(mark -> draw(pen, mark, colour));
      }
    };
  }

  private static void draw(Pen pen, Mark mark, FSColor colour) {
    if (mark instanceof Letters l) {
      pen.text(Face.MATHS, l.text(), l.x(), -l.y(), l.size(), l.stretch(), colour);
    } else if (mark instanceof Rule r) {
      pen.fill(
          new Rectangle2D.Double(r.x(), -r.y() - r.thickness(), r.width(), r.thickness()),
          colour,
          1);
    } else {
      root(pen, (Root) mark, colour);
    }
  }

  /** A short rise, a heavy stroke down, a light one up to the bar. */
  private static void root(Pen pen, Root root, FSColor colour) {
    double x = root.x();
    double foot = -root.y();
    double top = foot - root.height();
    double t = root.thickness();
    double knee = foot - Math.min(0.55 * root.height(), 0.62);
    double low = x + 0.52 * root.width();
    double right = x + root.width();
    Path2D hook = new Path2D.Double();
    hook.moveTo(x + 0.02 * root.width(), knee + 0.1);
    hook.lineTo(x + 0.26 * root.width(), knee - 0.02);
    hook.lineTo(low, foot - 2.2 * t);
    hook.lineTo(right - 0.7 * t, top);
    hook.lineTo(right + 0.3 * t, top);
    hook.lineTo(right + 0.3 * t, top + 0.4 * t);
    hook.lineTo(low + 0.35 * t, foot);
    hook.lineTo(low - 0.7 * t, foot);
    hook.lineTo(x + 0.17 * root.width(), knee + 0.09);
    hook.lineTo(x + 0.05 * root.width(), knee + 0.15);
    hook.closePath();
    pen.fill(hook, colour, 1);
  }
}
