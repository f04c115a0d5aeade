package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.CauseSizes;
import endfloat.evidence.BigEnough;
import java.util.Locale;

/**
 * A board of causes as the page shows it: for each cause whether it is big enough, as a word. No
 * probability is shown beside a cause: it would be read as that of the cause.
 */
final class CauseViews {
  private CauseViews() {}

  /** {@code {observed, needed, unexplained, causes: [{key, figure, enough, standing}]}}. */
  static ObjectNode of(CauseSizes sizes) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("observed", sizes.observed()).put("needed", sizes.needed());
    view.put("unexplained", sizes.unexplained());
    ArrayNode causes = view.putArray("causes");
    for (CauseSizes.Adds adds : sizes.causes()) {
      ObjectNode one = causes.addObject();
      one.put("key", adds.cause().key()).put("figure", adds.figure());
      one.put("enough", adds.enough().map(size -> word(size.answer())).orElse(""));
      one.put("standing", adds.cause().isOpen() ? "open" : "ruled out");
    }
    return view;
  }

  private static String word(BigEnough.Answer answer) {
    return answer.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
