package endfloat.table;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.table.ReadTable.ReadColumn;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tables as they come, good and bad. RFC 4180 for quotes and line ends; the rest is our own rule.
 */
class TableReaderTest {
  private static final String FLEET =
      "engine,hours [h],lash [thou],fitted,failed\r\n"
          + "W6-101,412,0.0120,2026-03-02,no\r\n"
          + "W6-102,,18,2026-03-09,yes\r\n";

  private static ReadTable read(String text) {
    return TableReader.read(text.getBytes(StandardCharsets.UTF_8), TableAsked.PLAIN);
  }

  private static List<String> said(ReadTable table) {
    return table.problems().stream().map(Offence::text).toList();
  }

  private static void holdsTheFleet(ReadTable table) {
    assertEquals(List.of(), said(table));
    assertEquals(2, table.rows());
    assertEquals(
        List.of(
            FieldKind.TEXT, FieldKind.NUMBER, FieldKind.NUMBER, FieldKind.DATE, FieldKind.TRUTH),
        table.columns().stream().map(ReadColumn::kind).toList());
    ReadColumn hours = table.columns().get(1);
    assertEquals("h", hours.unit());
    assertEquals(1, hours.missing());
    assertArrayEquals(new double[] {412, Double.NaN}, hours.numbers());
    ReadColumn lash = table.columns().get(2);
    assertEquals("lash", lash.head());
    assertEquals("0.0120", lash.texts().get(0));
    assertArrayEquals(new double[] {0.012, 18}, lash.numbers());
  }

  @Test
  void headsHaveUnitsAndColumnsKinds() {
    holdsTheFleet(read(FLEET));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\r\n", "\n", "\r"})
  void linesMayEndAnyWay(String end) {
    holdsTheFleet(read(FLEET.replace("\r\n", end)));
    holdsTheFleet(read(FLEET.strip().replace("\r\n", end)));
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void fieldsMayBePartedByCommasSemicolonsOrTabs(String separator) {
    holdsTheFleet(read(FLEET.replace(",", separator)));
    holdsTheFleet(TableReader.paste(FLEET.replace(",", separator), TableAsked.PLAIN));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
  void aMarkAtTheStartTellsTheEncoding(String name) {
    Charset charset = Charset.forName(name);
    holdsTheFleet(TableReader.read(("\ufeff" + FLEET).getBytes(charset), TableAsked.PLAIN));
  }

  @Test
  void whatIsNotUtf8IsReadAsLatin1AndSaid() {
    ReadTable table =
        TableReader.read("gap [µm]\n12\n".getBytes(StandardCharsets.ISO_8859_1), TableAsked.PLAIN);
    assertEquals("µm", table.columns().get(0).unit());
    assertEquals(List.of("the file is not UTF-8; it was read as Latin-1"), table.notices());
    byte[] utf16 = FLEET.getBytes(StandardCharsets.UTF_16LE);
    assertEquals(
        List.of("the file is no plain text; save it as CSV in UTF-8"),
        said(TableReader.read(utf16, TableAsked.PLAIN)));
    holdsTheFleet(TableReader.read(utf16, TableAsked.PLAIN.in(StandardCharsets.UTF_16LE)));
  }

  @Test
  void quotesHoldSeparatorsQuotesAndLineEnds() {
    ReadTable table =
        read("part,what\r\n\"W6-21, left\",\"a \"\"tight\"\" fit\r\nsaid twice\"\r\n");
    assertEquals(List.of(), said(table));
    assertEquals("W6-21, left", table.columns().get(0).texts().get(0));
    assertEquals("a \"tight\" fit\r\nsaid twice", table.columns().get(1).texts().get(0));
    assertEquals(
        List.of("row 2: a quote is opened and not closed, or stands in a word"),
        said(read("lash\n\"0.1\n0.2\n")));
  }

  @Test
  void aDecimalCommaIsReadOnlyWhereItIsSaid() {
    String text = "lash [mm];n\n0,0123;1\n0,5;2\n";
    assertEquals(
        List.of(
            "row 2, column 1, lash [mm]: '0,0123' has a comma: write 0.0123, or choose the decimal"
                + " comma",
            "row 3, column 1, lash [mm]: '0,5' has a comma: write 0.5, or choose the decimal comma"),
        said(read(text)));
    ReadTable table = TableReader.paste(text, TableAsked.PLAIN.with(DecimalMark.COMMA));
    assertEquals(List.of(), said(table));
    assertEquals("0.0123", table.columns().get(0).texts().get(0));
    assertArrayEquals(new double[] {0.0123, 0.5}, table.columns().get(0).numbers());
  }

  @Test
  void theRowsThatDoNotFitTheirColumnAreListed() {
    ReadTable table =
        read("hours,date,failed\n1,2026-03-02,yes\nworn,2026-02-30,perhaps\n3,2026-03-04,no\n");
    assertEquals(
        List.of(
            "row 3, column 1, hours: 'worn' is not a number; leave the field empty where nothing was"
                + " taken; most of this column are numbers: correct it, or say that the column is"
                + " text",
            "row 3, column 2, date: '2026-02-30' is not a date such as 2026-03-02; most of this"
                + " column are dates: correct it, or say that the column is text",
            "row 3, column 3, failed: 'perhaps' is not yes or no; most of this column are truths:"
                + " correct it, or say that the column is text"),
        said(table));
    // what was understood is shown, so that another kind can be said; none of it may be used
    assertFalse(table.isWhole());
    ReadTable asText =
        TableReader.paste(
            "hours\n1\nworn\n3\n", TableAsked.PLAIN.withKinds(Map.of("hours", FieldKind.TEXT)));
    assertEquals(List.of("1", "worn", "3"), asText.columns().get(0).texts());
  }

  @Test
  void rowsOfAnotherLengthAreListed() {
    assertEquals(
        List.of(
            "row 2: it has 1 field where there are 2 heads",
            "row 4: it has 3 fields where there are 2 heads"),
        said(read("a,b\n1\n1,2\n1,2,3\n1,2,\n")));
    ReadTable table = read("a,b\n1,2\n\n3,4\n");
    assertEquals(List.of("1 empty line left out"), table.notices());
    assertEquals(2, table.rows());
  }

  @Test
  void badHeadsAreListed() {
    assertEquals(
        List.of(
            "row 1, column 2, lash [thos]: "
                + said(read("lash [thos]\n1\n"))
                    .get(0)
                    .substring("row 1, column 1, lash [thos]: ".length()),
            "row 1, column 3, a: column 1 has the same head; rename one",
            "row 1, column 4: the head has no name; write one, such as lash"),
        said(read("a,lash [thos],a,,b\n1,2,3,4,5\n")));
    assertEquals(List.of("there is nothing in it"), said(read("")));
    assertEquals(
        List.of("there are no heads: the first row names the columns, such as lash [thou]"),
        said(read("\n1\n")));
  }

  @Test
  void aHeadThatIsNoNameOfTheLanguageBecomesOneAndThatIsSaid() {
    ReadTable table = read("Hours since overhaul [h],3rd\n1,2\n");
    assertEquals(
        List.of("Hours_since_overhaul", "_3rd"),
        table.columns().stream().map(ReadColumn::head).toList());
    assertEquals(2, table.notices().size());
  }

  @Test
  void aHugeFieldIsNoValue() {
    String text = "a\n" + "x".repeat(100_000) + "\nb\n";
    assertEquals(
        List.of("row 2, column 1, a: the field has 100000 letters; a value has 2000"),
        said(read(text)));
  }

  @Test
  void aUnitBelongsToNumbers() {
    ReadTable table = read("batch [mm]\nB1\n");
    assertFalse(table.isWhole());
    assertEquals(
        List.of(
            "row 2, column 1, batch [mm]: 'B1' is not a number; leave the field empty where nothing"
                + " was taken"),
        said(table));
  }

  @Test
  void onlyTheFirstOfManyProblemsAreListed() {
    ReadTable table = read("lash [mm]\n" + "x\n".repeat(1000));
    assertEquals(21, table.problems().size());
    assertEquals(
        "1000 fields of column 1, lash [mm], do not fit; the first are listed",
        said(table).get(20));
    assertEquals(980, table.more());
  }

  @Provide
  Arbitrary<String> numberLike() {
    return Arbitraries.strings().withChars("0123456789.,eE+-\u2212 x").ofMaxLength(24);
  }

  /** The quick test of a number answers as the rule does, and its value is Java's own. */
  @Property(tries = 3000)
  void theQuickRuleIsTheRule(@ForAll("numberLike") String text) {
    for (DecimalMark mark : DecimalMark.values()) {
      String one = text.strip();
      char[] letters = one.toCharArray();
      boolean is = StrictNumber.isOne(letters, 0, letters.length, mark);
      double value = StrictNumber.value(letters, 0, letters.length, mark);
      try {
        String read = StrictNumber.read(one, mark);
        assertTrue(is, one);
        assertEquals(Double.parseDouble(read), value, one);
      } catch (StrictNumber.NotANumberException e) {
        assertFalse(is, one);
        assertTrue(Double.isNaN(value), one);
      }
    }
  }

  @Provide
  Arbitrary<String> plainText() {
    return Arbitraries.strings().withChars("ab1.,;\n\r\t ").ofMinLength(1).ofMaxLength(40);
  }

  /** Without quotes both ways of splitting are one. */
  @Property(tries = 3000)
  void theQuickSplitIsTheSplit(@ForAll("plainText") String text) {
    FieldGrid quick = SeparatedText.plain(text, ',');
    FieldGrid other = SeparatedText.quoted(text, ',').grid();
    assertEquals(rows(other), rows(quick), text.replace("\r", "<r>").replace("\n", "<n>"));
  }

  private static String rows(FieldGrid grid) {
    StringBuilder all = new StringBuilder();
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.size(row); column++) {
        all.append('<').append(grid.get(row, column)).append('>');
      }
      all.append('|');
    }
    return all.toString();
  }
}
