package endfloat.child;

import com.google.gson.Gson;
import endfloat.clause.Shown;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.messages.MessageContext;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

/** What a clause shows, as messages; without a request it is dropped. */
final class PublishedOutputs implements Shown {
  static final String PROGRESS = "application/vnd.endfloat.progress+json";
  static final String TABLE = "application/vnd.endfloat.table+json";
  static final String SVG = "image/svg+xml";

  private static final Gson GSON = new Gson();
  private static final long TELL_EVERY_NANOS = 50_000_000;

  private final Outputs outputs;
  private final MessageContext request;
  private long told = System.nanoTime();

  PublishedOutputs(Outputs outputs, MessageContext request) {
    this.outputs = outputs;
    this.request = request;
  }

  @Override
  public void progress(double fraction) {
    long now = System.nanoTime();
    if (now - told < TELL_EVERY_NANOS) {
      return;
    }
    told = now;
    DisplayData data = new DisplayData(Math.round(100 * fraction) + " %");
    data.putData(PROGRESS, GSON.toJson(Map.of("fraction", Math.max(0, Math.min(1, fraction)))));
    display(data);
  }

  @Override
  public void text(String text) {
    display(new DisplayData(text));
  }

  @Override
  public void svg(String svg) {
    DisplayData data = new DisplayData("(chart)");
    data.putData(SVG, svg);
    display(data);
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    StringJoiner plain = new StringJoiner("\n");
    plain.add(String.join("\t", heads));
    rows.forEach(row -> plain.add(String.join("\t", row)));
    DisplayData data = new DisplayData(plain.toString());
    data.putData(TABLE, GSON.toJson(Map.of("heads", heads, "rows", rows)));
    display(data);
  }

  private void display(DisplayData data) {
    if (request != null) {
      outputs.display(request, data);
    }
  }
}
