package endfloat.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import endfloat.report.pdf.FormulaPiece.Letters;
import endfloat.report.pdf.FormulaPiece.Rule;
import endfloat.working.Parser;
import endfloat.working.typeset.Typeset;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Formulas as they are set for the PDF. */
class FormulaSettingTest {

  private static List<FormulaAtom> atoms(String line) throws Exception {
    String math = new Typeset(Catalogue.library()).formula(Parser.parse(line).lines().get(0));
    Element element =
        DocumentBuilderFactory.newDefaultNSInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(math.getBytes(StandardCharsets.UTF_8)))
            .getDocumentElement();
    return FormulaSetting.of(FormulaSetting.children(element), true);
  }

  private static FormulaPiece set(String line) throws Exception {
    List<FormulaPiece> all = FormulaAtom.lines(atoms(line), 1_000);
    return all.stream().reduce(FormulaPiece.NOTHING, FormulaPiece::then);
  }

  private static Letters letters(FormulaPiece piece, String text) {
    return piece.marks().stream()
        .filter(mark -> mark instanceof Letters one && one.text().equals(text))
        .map(mark -> (Letters) mark)
        .findFirst()
        .orElseThrow(() -> new AssertionError(text + " is not in " + piece));
  }

  /** OpenType specification 1.9, the MATH table: MathConstants, values in units of the em. */
  @Test
  void measuresAreThoseOfTheFace() throws IOException {
    TrueTypeFont face = Face.MATHS.outlines();
    ByteBuffer table = ByteBuffer.wrap(face.getTableBytes(face.getTableMap().get("MATH")));
    int constants = table.getShort(4);
    double em = face.getUnitsPerEm();
    assertEquals(table.getShort(constants) / 100.0, FormulaSetting.SCRIPT);
    assertEquals(table.getShort(constants + 2) / 100.0, FormulaSetting.SCRIPT_OF_SCRIPT);
    double[][] places = {
      {1, FormulaSetting.AXIS},
      {4, FormulaSetting.SUB_DOWN},
      {7, FormulaSetting.SUP_UP},
      {13, FormulaSetting.AFTER_SCRIPT},
      {32, FormulaSetting.TIGHT_GAP},
      {33, FormulaSetting.GAP},
      {34, FormulaSetting.STROKE}
    };
    for (double[] place : places) {
      // a value and the offset of its corrections, two bytes each, after four numbers
      double value = table.getShort(constants + 8 + 4 * (int) place[0]) / em;
      assertEquals(value, place[1], 1e-9, "constant " + place[0]);
    }
  }

  @Test
  void aFractionStandsAboutTheAxisWithItsBarBetween() throws Exception {
    FormulaPiece piece = set("x = a / b");
    Rule bar =
        piece.marks().stream()
            .filter(mark -> mark instanceof Rule)
            .map(mark -> (Rule) mark)
            .findFirst()
            .orElseThrow();
    assertEquals(FormulaSetting.AXIS, bar.y() + bar.thickness() / 2, 1e-9);
    // a and b are slanted letters of the mathematical alphabet
    Letters over = letters(piece, Character.toString(0x1D44E));
    Letters under = letters(piece, Character.toString(0x1D44F));
    assertTrue(over.y() > bar.y() + bar.thickness());
    double top = under.y() + Face.MATHS.reach(under.text()).above();
    assertTrue(top < bar.y() - FormulaSetting.GAP + 1e-9, "the gap that the face asks for");
    assertEquals(1, over.size(), "full size on a line of its own");
  }

  @Test
  void bracketsGrowWithAFractionAndNotWithAnIndex() throws Exception {
    assertEquals(1, letters(set("x = 2 * (a_low + b)"), "(").stretch());
    assertTrue(letters(set("x = 2 * (a / b + 1) "), "(").stretch() > 1.5);
  }

  @Test
  void anIndexStandsBelowAndSmallerAPowerAbove() throws Exception {
    FormulaPiece piece = set("y = t_cold + x ^ 2");
    Letters index = letters(piece, "cold");
    assertEquals(FormulaSetting.SCRIPT, index.size());
    assertTrue(index.y() < 0);
    assertTrue(letters(piece, "2").y() > 0);
  }

  @Test
  void nothingIsLostWhereAFormulaIsBroken() throws Exception {
    String line =
        "x = a_long_name + max(b_long_name, c_long_name) - sin(d_long_name) * e_long_name";
    for (double room : new double[] {4, 8, 12, 1_000}) {
      List<FormulaPiece> pieces = FormulaAtom.lines(atoms(line), room);
      String all =
          pieces.stream()
              .flatMap(piece -> piece.marks().stream())
              .filter(mark -> mark instanceof Letters)
              .map(mark -> ((Letters) mark).text())
              .collect(Collectors.joining());
      assertEquals(words(line), all.replace("\u00a0", ""), "room of " + room);
    }
    assertTrue(FormulaAtom.lines(atoms(line), 8).size() > 3);
  }

  private static String words(String line) throws Exception {
    return set(line).marks().stream()
        .filter(mark -> mark instanceof Letters)
        .map(mark -> ((Letters) mark).text())
        .collect(Collectors.joining())
        .replace("\u00a0", "");
  }
}
