package endfloat.working;

import endfloat.units.Unit;
import org.antlr.v4.runtime.CommonToken;

/** A token of the grammar, with the unit where it is one. */
final class Lexeme extends CommonToken {
  private static final long serialVersionUID = 1L;

  private final transient Unit unit;

  /**
   * @param text as the grammar takes it; not always as typed (µ in a name)
   * @param from offset of its first letter in the working
   * @param to offset after its last
   */
  Lexeme(int type, String text, int from, int to, Unit unit) {
    super(type, text);
    setStartIndex(from);
    setStopIndex(to - 1);
    this.unit = unit;
  }

  int from() {
    return getStartIndex();
  }

  int to() {
    return getStopIndex() + 1;
  }

  Unit unit() {
    return unit;
  }
}
