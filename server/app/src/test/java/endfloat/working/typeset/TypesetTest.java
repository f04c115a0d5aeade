package endfloat.working.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import endfloat.working.Line;
import endfloat.working.Parser;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

class TypesetTest {
  /** Elements of MathML Core (W3C Candidate Recommendation, 2025), those that we use. */
  private static final Set<String> CORE =
      Set.of(
          "math", "mrow", "mi", "mn", "mo", "mtext", "mspace", "mfrac", "msqrt", "mroot", "msup",
          "msub", "mpadded", "mtable", "mtr", "mtd");

  private static final Set<String> CORE_ATTRIBUTES =
      Set.of(
          "alttext",
          "aria-label",
          "displaystyle",
          "mathvariant",
          "stretchy",
          "height",
          "depth",
          "width");

  private final Typeset typeset = new Typeset(Catalogue.library());

  private static Line line(String text) {
    return Parser.parse(text).lines().get(0);
  }

  private String formula(String text) {
    return typeset.formula(line(text));
  }

  /** Letters as they are seen, subscripts after _, fractions in ( ), powers after ^. */
  private static String seen(String markup) {
    return seen(parsed(markup)).replace('\u00a0', ' ');
  }

  private static Element parsed(String markup) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(markup)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new AssertionError(markup, e);
    }
  }

  private static String seen(Node node) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      return node.getNodeValue();
    }
    StringBuilder all = new StringBuilder();
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      String between =
          child.getPreviousSibling() == null
              ? ""
              : switch (node.getNodeName()) {
                case "mfrac" -> " / ";
                case "msup" -> "^";
                case "msub" -> "_";
                default -> "";
              };
      all.append(between).append(seen(child));
    }
    return switch (node.getNodeName()) {
      case "mspace" -> " ";
      case "mfrac" -> "{" + all + "}";
      case "msqrt" -> "√{" + all + "}";
      default -> all.toString();
    };
  }

  @Test
  void aNameHasItsIndexBelowTheLineAndGreekByName() {
    assertEquals("lash_hot", seen(Typeset.name("lash_hot")));
    assertEquals("α_block", seen(Typeset.name("alpha_block")));
    assertEquals("d_1", seen(Typeset.name("d1")));
    assertEquals("t_2 hot", seen(Typeset.name("t2_hot")));
    assertEquals("_x", seen(Typeset.name("_x")));
    assertEquals("lash<sub>hot</sub>", Typeset.nameHtml("lash_hot"));
    assertEquals("lash<sub>loosest</sub>", Typeset.nameHtml("lash_loosest"));
    assertEquals("α<sub>block cold</sub>", Typeset.nameHtml("alpha_block_cold"));
  }

  @Test
  void aNameOfManyWordsOrWhoseLastWordIsTheQuantityIsNoLetterWithAnIndex() {
    for (String name :
        List.of(
            "may_come_out",
            "bore_less_journal",
            "t_block_less_t_cold",
            "pressure_angle",
            "block_height",
            "clear_circumference")) {
      assertEquals(name, Typeset.nameHtml(name));
      assertEquals(name, parsed(Typeset.name(name)).getTextContent());
    }
    assertEquals("d<sub>pitch</sub>", Typeset.nameHtml("d_pitch"), "below a letter it may stand");
  }

  @Test
  void aQuotientIsAFractionAndARootARoot() {
    assertEquals("{a + b / 2 c}".replace(" + ", "+"), seen(formula("y = (a + b) / (2 * c)")));
    assertEquals("√{x^2+y^2}", seen(formula("y = sqrt(x^2 + y^2)")));
    assertEquals("√{x^2+(y+z)^2}", seen(formula("y = hypot(x, y + z)")));
  }

  @Test
  void bracketsStandWhereTheOrderNeedsThem() {
    assertEquals("a−(b−c)", seen(formula("y = a - (b - c)")));
    assertEquals("a−b−c", seen(formula("y = a - b - c")));
    assertEquals("(a+b) c", seen(formula("y = (a + b) * c")));
    assertEquals("−a^2+(−a)^2", seen(formula("y = -a^2 + (-a)^2")));
    assertEquals("(2 mm)^2", seen(formula("y = (2 mm)^2")));
    assertEquals("(sin α)^2", seen(formula("y = sin(alpha)^2")));
    assertEquals("a−(−b)", seen(formula("y = a - -b")));
    assertEquals("({a / b})^2", seen(formula("y = (a / b)^2")));
  }

  @Test
  void theArgumentOfASineIsNeverJoinedToTheNextFactor() {
    assertEquals("2 tan 20° sin 45°", seen(formula("y = 2 * tan(20 deg) * sin(45 deg)")));
    assertEquals("sin(α) b", seen(formula("y = sin(alpha) * b")));
    assertEquals("b sin α", seen(formula("y = b * sin(alpha)")));
  }

  @Test
  void twoNumbersSideBySideHaveASignBetween() {
    assertEquals("2×3 x×4", seen(formula("y = 2 * 3 * x * 4")));
  }

  @Test
  void numbersHaveTheirUnitsAndPowersOfTen() {
    assertEquals("480.0 mm±0.1 mm (k=2)", seen(formula("y = 480.0 mm ± 0.1 mm (k = 2)")));
    assertEquals("23.0×10^−6/K", seen(formula("y = 23.0e-6 1/K")));
    assertEquals("20 °C", seen(formula("y = 20 degC")));
    assertEquals("1{15 / 16} in", seen(formula("y = 1 15/16 in")));
    assertEquals("5 N·m", seen(formula("y = 5 N.m")));
  }

  @Test
  void aCallWhoseRelationIsKnownIsSetAsThatRelation() {
    assertEquals(
        "a (b−c) L",
        seen(formula("y = thermal_growth(L, a, b - c)")).replace("L a (b−c)", "a (b−c) L"));
    String lash =
        seen(
            formula(
                "y = backlash_from_axial_shift(g, pressure_angle: 20 deg, pitch_angle: 45 deg)"));
    assertTrue(lash.contains("2 g tan 20° sin 45°"), lash);
  }

  @Test
  void aCallWithoutARelationNamesItsArguments() {
    assertEquals("iso fit(25 mm, “H7/g6”)", seen(formula("y = iso_fit(25 mm, \"H7/g6\")")));
    assertEquals(
        "f(x, pitch angle: 45°).kind", seen(formula("y = f(x, pitch_angle: 45 deg).kind")));
    assertEquals("max_plane(bore)", seen(formula("y = max(bore, over: \"plane\")")));
    assertEquals("bore_cylinder 3", seen(formula("y = pick(bore, cylinder: 3)")));
  }

  @Test
  void numbersArePutInForNames() {
    Map<String, String> shown =
        Map.of("a", "480.0 mm", "b", "-11.5e-6 1/K", "fit.least", "0.02 mm");
    Line line = line("y = a * b * (c + 2 mm) + fit.least");
    assertEquals(
        "480.0 mm×(−11.5×10^−6/K)×(c+2 mm)+0.02 mm", seen(typeset.numbers(line, shown::get)));
  }

  @Test
  void anInputHasNoNumbersToPutIn() {
    assertEquals("", typeset.numbers(line("a = 5 mm ± 0.1 mm"), n -> "1 mm"));
    assertEquals("", typeset.numbers(line("a = b + 1 mm"), n -> null), "the formula said twice");
  }

  @Test
  void aNegativeFigureIsBracketedBesideASign() {
    Line line = line("y = a - b + b^2");
    assertEquals(
        "−1 mm−(−1 mm)+(−1 mm)^2",
        seen(typeset.numbers(line, n -> "-1 mm")),
        "taking away a negative value must not read as two signs");
  }

  @Test
  void limitsCorrelationsAndSolvesAreSet() {
    assertEquals("0.10≤lash_hot≤0.30 mm", seen(formula("limit lash_hot: 0.10 .. 0.30 mm")));
    assertEquals("d≤3 mm", seen(formula("limit d: at most 3 mm")));
    assertEquals("d=80±0.02 mm", seen(formula("limit d: 80 ± 0.02 mm")));
    assertEquals("r(a,b)=0.8", seen(formula("correlate a, b: 0.8")));
    assertEquals(
        "l=1 mm solved for s between 1 mm and 2 mm",
        seen(formula("s = solve l = 1 mm for s between 1 mm and 2 mm")));
  }

  @Test
  void everyFormulaIsSaidInWords() {
    assertEquals(
        "lash cold plus (2 times growth)",
        parsed(formula("y = lash_cold + 2 * growth")).getAttribute("aria-label"));
    assertEquals(
        "d is at least 1 mm and at most 2 mm",
        parsed(formula("limit d: 1 mm .. 2 mm")).getAttribute("alttext"));
  }

  @Test
  void whatAPersonWroteCannotBecomeMarkup() {
    String markup = formula("y = f(\"</mtext><script>alert(1)</script>\" , x: \"a\u0007&\")");
    assertFalse(markup.contains("<script"));
    assertTrue(seen(markup).contains("<script>alert(1)</script>"));
    assertFalse(Typeset.nameHtml("a_b").contains("<script"));
    Line line = line("y = a");
    assertFalse(typeset.numbers(line, n -> "<img src=x>").contains("<img"));
  }

  @Test
  void onlyMathMlCoreIsWritten() {
    for (String text :
        List.of(
            "y = if a > b then 5 mm else if a < b then 3/8 in else [1, 2] * cbrt(x)",
            "y = exp(-x) + log10(x) + abs(y) + asin(z) + not_a_word(q, r: 2).s_t",
            "y = a and not (b or c = d)",
            "limit fit.least: 1 .. 2 mm \"x\" (condition: \"hot\")",
            "y = 5 mm ± 2 % (k = 2, dof = 12)",
            "y = solve a = b, c = d for e between 1 and 2, f between 3 and 4")) {
      core(parsed(formula(text)));
      core(
          parsed(
              typeset.numbers(line(text + " "), n -> "0.3 mm").isEmpty()
                  ? formula(text)
                  : typeset.numbers(line(text), n -> "0.3 mm")));
    }
  }

  private static void core(Element element) {
    assertTrue(CORE.contains(element.getNodeName()), element.getNodeName());
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      String attribute = element.getAttributes().item(i).getNodeName();
      assertTrue(CORE_ATTRIBUTES.contains(attribute), attribute);
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        core(inner);
      }
    }
  }

  @Test
  void everyRelationOfTheLibraryCanBeSet() {
    Catalogue.library().all().stream()
        .flatMap(c -> c.formula().stream())
        .forEach(
            f -> core(parsed(typeset.expression(Parser.expression(f).expression().orElseThrow()))));
  }
}
