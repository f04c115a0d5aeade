package endfloat.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** How the generated entries hand arguments to methods. */
final class Arguments {
  private Arguments() {}

  /** The constant that the words of the language stand for; null where not given. */
  static <E extends Enum<E>> E choice(Class<E> type, Object words) {
    return words == null
        ? null
        : Enum.valueOf(type, ((String) words).toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  static String word(Enum<?> constant) {
    return constant == null ? null : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @SuppressWarnings("unchecked")
  static <T> List<T> parts(Object components, Function<Object[], T> constructor) {
    return ((List<Object[]>) components).stream().map(constructor).toList();
  }
}
