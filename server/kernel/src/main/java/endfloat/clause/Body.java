package endfloat.clause;

import endfloat.quantities.Measured;
import java.util.List;
import javax.measure.Quantity;
import tech.tablesaw.api.Table;

/** What the source of a clause stands in: what it reads and gives are fields of a subclass. */
public abstract class Body {
  private Shown shown;

  /** Runs the source. */
  public abstract void run() throws Exception;

  /** Called once, before {@link #run}. */
  public final void showsTo(Shown place) {
    shown = place;
  }

  /**
   * Says how far the work is; ends it where it has been cancelled.
   *
   * @param fraction done, 0 to 1
   */
  protected final void progress(double fraction) throws InterruptedException {
    if (Thread.interrupted()) {
      throw new InterruptedException();
    }
    shown.progress(fraction);
  }

  /** A value of a unit of the working language, such as {@code quantity(3, "mm", Length.class)}. */
  protected static <Q extends Quantity<Q>> Measured<Q> quantity(
      double value, String unit, Class<Q> kind) {
    return Measured.of(value, unit, kind);
  }

  /** Shows a table under the clause. */
  protected final void show(Table table) {
    shown.table(table.columnNames(), TableText.rows(table));
  }

  /** Shows a text under the clause. */
  protected final void show(String text) {
    shown.text(text);
  }

  /** Shows a value under the clause, such as a quantity with its unit. */
  protected final void show(Object value) {
    shown.text(String.valueOf(value));
  }

  /** Shows numbers under the clause. */
  protected final void show(double... numbers) {
    shown.text(java.util.Arrays.toString(numbers));
  }

  /** Shows a chart under the clause. */
  protected final void chart(Plot plot) {
    shown.svg(plot.svg());
  }

  /** Shows a chart under the clause: an SVG document as text. */
  protected final void chart(String svg) {
    shown.svg(svg);
  }

  /** Shows a table of texts under the clause. */
  protected final void table(List<String> heads, List<List<String>> rows) {
    shown.table(heads, rows);
  }
}
