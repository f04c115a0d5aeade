package endfloat.table;

/** What parts the whole from the fraction in a file. */
public enum DecimalMark {
  POINT('.'),
  COMMA(',');

  private final char mark;

  DecimalMark(char mark) {
    this.mark = mark;
  }

  char mark() {
    return mark;
  }
}
