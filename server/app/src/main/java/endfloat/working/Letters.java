package endfloat.working;

/** Which letters make names, units and blanks. */
final class Letters {
  private Letters() {}

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** A blank within a line. */
  static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f' || c == '\u2009' || c == '\r';
  }

  static boolean startsName(char c) {
    return c == '_' || isLetter(c);
  }

  static boolean inName(char c) {
    return isDigit(c) || startsName(c);
  }

  static boolean startsUnit(char c) {
    return c == '%' || c == '°' || c == '℃' || c == '℉' || isLetter(c);
  }

  static boolean inUnit(char c) {
    return isDigit(c) || c == '_' || "⁰¹²³⁴⁵⁶⁷⁸⁹⁻".indexOf(c) >= 0 || isLetter(c);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z')
        || (c >= 'A' && c <= 'Z')
        || (c > 127 && Character.isLetter(c) && c != 'ª' && c != 'º');
  }

  /** One spelling for letters that look the same: micro is mu, the ohm sign is omega. */
  static String name(String typed) {
    if (typed.equals("π")) {
      return "pi";
    }
    for (int i = 0; i < typed.length(); i++) {
      if (typed.charAt(i) > 127) {
        return typed.replace('\u00b5', 'μ').replace('\u2126', 'Ω').replace('\u212a', 'K');
      }
    }
    return typed;
  }
}
