package endfloat.report;

/** Formulas as the sheet sets them, made fit for a file that is read as XML too. */
final class Formulas {
  private static final String NAMESPACE = "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" ";

  private Formulas() {}

  static String inXml(String math) {
    return math.replace("<math ", NAMESPACE);
  }
}
