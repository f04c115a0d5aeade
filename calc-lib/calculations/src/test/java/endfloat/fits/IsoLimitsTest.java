package endfloat.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.RefusedException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The published cells are in checks/iso_limits.check and iso_fit.check; here the rules. */
class IsoLimitsTest {
  private static final Path LEFT_OUT = Path.of("ISO-286-LEFT-OUT.md");

  /** ISO 286-1:2010, Table 2, note: M6 over 250 to 315 mm is -9, not -11 (A02-hfd-M6). */
  @Test
  void keepsTheSpecialCaseOfM6() {
    assertEquals(-9e-6, IsoLimits.isoLimits(0.300, "M6").upperDeviation());
    assertEquals(0, IsoLimits.isoLimits(0.300, "M7").upperDeviation());
  }

  /** A02-shaft-18k6 and A02-hole-18.5H7: ranges are over .. up to and including. */
  @Test
  void countsTheEndOfARangeToIt() {
    assertEquals(12e-6, IsoLimits.isoLimits(0.018, "k6").upperDeviation());
    assertEquals(12e-6, IsoLimits.isoLimits(0.010 + 0.008, "k6").upperDeviation());
    assertEquals(21e-6, IsoLimits.isoLimits(0.0185, "H7").upperDeviation());
  }

  @Test
  void readsSizeAndClassInOneText() {
    assertEquals(IsoLimits.isoLimits(0.025, "H7"), IsoLimits.isoLimitsText("25 H7"));
    assertEquals(IsoLimits.isoLimits(0.025, "H7"), IsoLimits.isoLimitsText("25 mm H7"));
    assertEquals(IsoLimits.isoLimits(0.025, "H7"), IsoLimits.isoLimitsText("Ø25H7"));
    assertEquals(IsoLimits.isoLimits(0.0254, "js6"), IsoLimits.isoLimitsText("1 in js6"));
    assertEquals(IsoLimits.isoFit(0.05, "H7/p6"), IsoLimits.isoFitText("50 H7/p6"));
  }

  @Test
  void refusesWithTheReason() {
    assertEquals(
        "\"25\" is no size with its tolerance class; write it like \"25 H7\"",
        refusal(() -> IsoLimits.isoLimitsText("25")));
    assertEquals(
        "\"Q7\" is no tolerance class of ISO 286; write a letter and a grade, such as H7 for a hole"
            + " or g6 for a shaft",
        refusal(() -> IsoLimits.isoLimits(0.025, "Q7")));
    assertEquals(
        "\"g6/H7\" must name the hole first, in capitals, then the shaft, such as \"H7/g6\"",
        refusal(() -> IsoLimits.isoFit(0.025, "g6/H7")));
    assertEquals(
        "ISO 286-1 has no K2 at 25 mm: its delta is given for IT3 to IT8 only",
        refusal(() -> IsoLimits.isoLimits(0.025, "K2")));
    assertEquals(
        "ISO 286-1 ef for sizes over 18 to 24 mm is not certain here: the published copies differ;"
            + " take it from the standard",
        refusal(() -> IsoLimits.isoLimits(0.020, "ef7")));
    assertEquals(
        "ISO 286-1 gives no t for sizes over 18 to 24 mm",
        refusal(() -> IsoLimits.isoLimits(0.020, "t6")));
    assertThrows(OutOfRangeException.class, () -> IsoLimits.isoLimits(3.151, "H7"));
    assertThrows(RefusedException.class, () -> IsoLimits.isoLimits(0.025, "H19"));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(RefusedException.class, call).getMessage();
  }

  @Property(tries = 200)
  void holeHAndShaftHMirrorEachOther(
      @ForAll @DoubleRange(min = 1.1, max = 3150) double mm,
      @ForAll @IntRange(min = 1, max = 18) int grade) {
    double size = mm / 1000;
    IsoLimits.LimitsOfSize hole = IsoLimits.isoLimits(size, "H" + grade);
    IsoLimits.LimitsOfSize shaft = IsoLimits.isoLimits(size, "h" + grade);
    assertEquals(0, hole.lowerDeviation());
    assertEquals(hole.upperDeviation(), -shaft.lowerDeviation());
  }

  @Property(tries = 200)
  void aCoarserGradeIsWiderAndALargerSizeIsNotNarrower(
      @ForAll @DoubleRange(min = 1.1, max = 3000) double mm,
      @ForAll @IntRange(min = 1, max = 17) int grade) {
    double size = mm / 1000;
    double width = IsoLimits.isoLimits(size, "H" + grade).upperDeviation();
    assertTrue(width < IsoLimits.isoLimits(size, "H" + (grade + 1)).upperDeviation());
    assertTrue(width <= IsoLimits.isoLimits(size * 1.05, "H" + grade).upperDeviation());
  }

  /** What delta is for: hole basis and shaft basis give the same fit (ISO 286-1:2010, 4.3.2.5). */
  @Property(tries = 200)
  void deltaKeepsHoleBasisAndShaftBasisFitsEqual(
      @ForAll @DoubleRange(min = 3.1, max = 500) double mm,
      @ForAll @IntRange(min = 0, max = 3) int which) {
    double size = mm / 1000;
    String letter = List.of("p", "r", "s", "u").get(which);
    IsoLimits.Fit holeBasis = IsoLimits.isoFit(size, "H7/" + letter + "6");
    IsoLimits.Fit shaftBasis = IsoLimits.isoFit(size, letter.toUpperCase(Locale.ROOT) + "7/h6");
    assertEquals(holeBasis.leastClearance(), shaftBasis.leastClearance(), 1e-12);
    assertEquals(holeBasis.greatestClearance(), shaftBasis.greatestClearance(), 1e-12);
  }

  @Property(tries = 200)
  void lettersLieInOrder(@ForAll @DoubleRange(min = 1.1, max = 3150) double mm) {
    double size = mm / 1000;
    double before = Double.NEGATIVE_INFINITY;
    for (String letter : List.of("d", "e", "f", "g", "h", "m", "n", "p", "r", "s", "u")) {
      double upper = IsoLimits.isoLimits(size, letter + "6").upperDeviation();
      assertTrue(upper > before, letter);
      before = upper;
    }
  }

  /** Lets the list for developers never lag: delete the file and run this to write it anew. */
  @Test
  void theListOfWhatWasLeftOutIsUpToDate() throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("# ISO 286-1: what was left out, and where opinions differ\n\n");
    text.append("Written by IsoLimitsTest from the tables; not edited by hand. Values in um.\n");
    text.append(
        "The third opinion is the formula of ISO 286-1:1988, annex A, rounded by its rule,");
    text.append(" or a third reading of the cell.\n");
    text.append("A cell ships where two opinions agree.\n\n## Left out, refused by name\n\n");
    IsoTables.LIBRARY.leftOut().forEach(line -> text.append("- ").append(line).append('\n'));
    text.append(
        "- K, M, N, P to ZC in IT01 to IT2 over 3 to 500 mm: delta is tabulated for IT3 to");
    text.append(" IT8 only\n\n## Shipped, though one opinion differs\n\n");
    IsoTables.LIBRARY.differences().forEach(line -> text.append("- ").append(line).append('\n'));
    if (!Files.exists(LEFT_OUT)) {
      Files.writeString(LEFT_OUT, text, StandardCharsets.UTF_8);
      fail("the list was missing; it has been written anew: read it, then keep it");
    }
    assertEquals(text.toString(), Files.readString(LEFT_OUT, StandardCharsets.UTF_8));
  }
}
