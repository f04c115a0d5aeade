package endfloat.report.pdf;

import com.openhtmltopdf.layout.PaintingInfo;
import com.openhtmltopdf.render.Box;
import java.awt.Rectangle;

/**
 * Keeps what a table paints below its own upper edge.
 *
 * <p>A letter or a border that reaches a hair above a table which begins a sheet would count as ink
 * on the sheet before: the layout then sets its head there once more, outside any table, and fails.
 */
final class SheetBounds {
  private SheetBounds() {}

  static void hold(Box box) {
    if (box.getPaintingInfo() != null) {
      hold(box.getPaintingInfo(), box.getAbsY());
    }
    box.getChildren().forEach(SheetBounds::hold);
  }

  private static void hold(PaintingInfo painted, int top) {
    Rectangle bounds = painted.getAggregateBounds();
    int above = top - bounds.y;
    if (above > 0) {
      painted.setAggregateBounds(
          new Rectangle(bounds.x, top, bounds.width, Math.max(0, bounds.height - above)));
    }
  }
}
