package endfloat.working;

import java.util.LinkedHashSet;
import java.util.Set;

/** Which names an expression reads. */
public final class References {
  private References() {}

  public static Set<String> of(Expression expression) {
    Set<String> names = new LinkedHashSet<>();
    collect(expression, names);
    return names;
  }

  private static void collect(Expression expression, Set<String> names) {
    if (expression instanceof Expression.Place place) {
      names.add(place.name());
    } else if (expression instanceof Expression.Call call) {
      call.arguments().forEach(a -> collect(a.value(), names));
    } else if (expression instanceof Expression.Unary unary) {
      collect(unary.operand(), names);
    } else if (expression instanceof Expression.Binary binary) {
      collect(binary.left(), names);
      collect(binary.right(), names);
    } else if (expression instanceof Expression.Comparison comparison) {
      comparison.operands().forEach(o -> collect(o, names));
    } else if (expression instanceof Expression.Conditional conditional) {
      collect(conditional.condition(), names);
      collect(conditional.then(), names);
      collect(conditional.otherwise(), names);
    } else if (expression instanceof Expression.Listing listing) {
      listing.elements().forEach(e -> collect(e, names));
    }
  }
}
