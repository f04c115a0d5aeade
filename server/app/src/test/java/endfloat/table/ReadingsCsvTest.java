package endfloat.table;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.table.Column.Aspect;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsCsvTest {
  private static ReadingsTable read(String text) {
    return ReadingsCsv.read(text.getBytes(StandardCharsets.UTF_8), DecimalMark.POINT);
  }

  private static List<String> texts(Column column) {
    return column.fields().stream().map(Column.Field::text).toList();
  }

  @Test
  void readsHeadsStationsTemperaturesAndInstruments() {
    ReadingsTable table =
        read(
            "slip [mm],bore[cylinder=3,plane=top] [mm],bore[cylinder=3,plane=top].at [degC],"
                + "bore.instrument,ratio\n"
                + "0.00,82.012,20.5,BG-01,2\n"
                + "0.01,,,,\n");
    assertEquals(List.of(), table.problems());
    assertEquals(5, table.columns().size());
    Column slip = table.columns().get(0);
    assertEquals(List.of("0.00", "0.01"), texts(slip), "digits as typed");
    Column bore = table.columns().get(1);
    assertEquals(Map.of("cylinder", "3", "plane", "top"), bore.labels());
    assertEquals("mm", bore.unit());
    assertEquals(List.of("82.012"), texts(bore), "an empty field was not taken");
    assertEquals(Aspect.TEMPERATURE, table.columns().get(2).aspect());
    assertEquals("degC", table.columns().get(2).unit());
    assertEquals(Aspect.INSTRUMENT, table.columns().get(3).aspect());
    assertEquals(List.of("BG-01"), texts(table.columns().get(3)));
    assertEquals("", table.columns().get(4).unit());
  }

  @Test
  void readsAMarkOfOrderCarriageReturnsQuotesAndRaggedEnds() {
    ReadingsTable table =
        read(
            "\ufeff\"bore[cylinder=3,plane=top] [mm]\",\"t [degC]\"\r\n\"82.012\",20.5\r\n82.013\r\n");
    assertEquals(List.of(), table.problems());
    assertEquals(List.of("82.012", "82.013"), texts(table.columns().get(0)));
    assertEquals(List.of("20.5"), texts(table.columns().get(1)));
  }

  @Test
  void saysWhenItHadToReadLatin1() {
    byte[] file = "gap [µm]\n12\n".getBytes(Charset.forName("ISO-8859-1"));
    ReadingsTable table = ReadingsCsv.read(file, DecimalMark.POINT);
    assertEquals("µm", table.columns().get(0).unit());
    assertEquals(List.of("the file is not UTF-8; it was read as Latin-1"), table.notices());
  }

  @Test
  void readsTheDecimalCommaWhereItIsChosen() {
    byte[] file = "lash [mm];t [degC]\n0,134;20\n0,1;\n".getBytes(StandardCharsets.UTF_8);
    ReadingsTable table = ReadingsCsv.read(file, DecimalMark.COMMA);
    assertEquals(List.of(), table.problems());
    assertEquals(List.of("0.134", "0.1"), texts(table.columns().get(0)));
  }

  @Test
  void listsEveryProblemByColumnAndRow() {
    ReadingsTable table =
        read(
            "lash [mm],t.when [degC],lash [mm],x y,slip[tooth] [mm]\n"
                + "\"0,134\",20,0.1,1,2\n"
                + "worn,20,0.1,1,2,7\n");
    assertEquals(
        List.of(
            "column 2, t.when [degC]: after the point stands at or instrument, not when",
            "column 3, lash [mm]: the same as column 1, lash [mm]",
            "column 4, x y: no head of a reading; write it as dial [mm] or dial[tooth=4] [mm]",
            "column 5, slip[tooth] [mm]: no head of a reading; write it as dial [mm] or dial[tooth=4]"
                + " [mm]",
            "column 1, lash [mm], row 2: '0,134' has a comma: write 0.134, or choose the decimal"
                + " comma",
            "column 1, lash [mm], row 3: 'worn' is not a number; leave the field empty where nothing"
                + " was taken",
            "row 3, column 6: '7' has no head"),
        table.problems());
  }

  @Test
  void refusesFilesThatAreNoTables() {
    assertEquals(List.of("the file is empty"), read("").problems());
    assertEquals(
        List.of("column 1, 1: no head of a reading; write it as dial [mm] or dial[tooth=4] [mm]"),
        read("\n1\n").problems());
    assertEquals(List.of("the file is empty"), read("\n,,\n").problems());
    assertEquals(
        List.of("row 2: a quote is opened and not closed, or stands in a word"),
        read("lash [mm]\n\"0.1\n0.2\n").problems());
    assertEquals(
        List.of("the file is no plain text; save it as CSV in UTF-8"),
        ReadingsCsv.read("lash\n1".getBytes(StandardCharsets.UTF_16LE), DecimalMark.POINT)
            .problems());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.0120|0.0120",
        "-3|-3",
        "+3|3",
        "\u22123.5|-3.5",
        "1e-3|1e-3",
        "05|05",
        "12.50E+2|12.50e+2"
      })
  void keepsTheDigitsAsTyped(String typed, String kept) {
    assertEquals(kept, StrictNumber.read(typed, DecimalMark.POINT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,0123", "1,234.5", "1.234,5", ".5", "5.", "1 234", "0x1F", "1d", "NaN", "1/2", "--1",
        "1.2.3", "½"
      })
  void refusesWhatCouldBeReadInTwoWays(String typed) {
    assertThrows(
        StrictNumber.NotANumberException.class, () -> StrictNumber.read(typed, DecimalMark.POINT));
  }

  @Property(tries = 300)
  void meansTheNumberThatWasWritten(
      @ForAll @BigRange(min = "-1000000", max = "1000000") @Scale(6) BigDecimal number) {
    String plain = number.toPlainString();
    assertEquals(0, new BigDecimal(StrictNumber.read(plain, DecimalMark.POINT)).compareTo(number));
    assertEquals(
        StrictNumber.read(plain, DecimalMark.POINT),
        StrictNumber.read(plain.replace('.', ','), DecimalMark.COMMA));
  }

  @Property(tries = 500)
  void readsAnyTextWithoutFailing(@ForAll String text) {
    ReadingsTable table = read(text);
    assertTrue(table.columns().size() <= text.length());
  }

  /**
   * What a spreadsheet, or whoever fills it in, makes of a file; the values are lost in none of it.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "lash [mm],bore [mm]\n=\"0.134\",=\"60.02\"\n",
        "lash [mm],bore [mm]\n'0.134,'60.02\n",
        "lash [mm]\tbore [mm]\n0.134\t60.02\n",
        "\n,\nlash [mm],bore [mm]\n0.134,60.02\n",
        "\"lash [mm]\";\"bore [mm]\"\r\n\"0.134\";\"60.02\"\r\n",
      })
  void whatASpreadsheetMakesOfAFileIsRead(String csv) {
    ReadingsTable table = ReadingsCsv.read(csv.getBytes(UTF_8), DecimalMark.POINT);
    assertEquals(List.of(), table.problems());
    assertEquals(
        List.of("0.134", "60.02"),
        table.columns().stream().map(column -> column.fields().get(0).text()).toList());
  }

  @Test
  void aFractionIsReadInAColumnOfInchesAndInNoOther() {
    ReadingsTable inches =
        ReadingsCsv.read("bore [in]\n1 15/16\n3/64\n".getBytes(UTF_8), DecimalMark.POINT);
    assertEquals(List.of(), inches.problems());
    assertEquals("1 15/16", inches.columns().get(0).fields().get(0).text());
    ReadingsTable metric = ReadingsCsv.read("bore [mm]\n3/64\n".getBytes(UTF_8), DecimalMark.POINT);
    assertEquals(
        List.of(
            "column 1, bore [mm], row 2: '3/64' is a fraction: write it in a column of inches,"
                + " [in], or as a decimal"),
        metric.problems());
  }

  @ParameterizedTest
  @CsvSource({
    "0.134 mm, 'has a unit with it: the unit stands in the head, another unit in a column of its own'",
    "5.3 thou, 'has a unit with it: the unit stands in the head, another unit in a column of its own'",
    ".15, 'has no digit before its point: write 0.15'",
    "0.I34, 'is not a number; leave the field empty where nothing was taken'",
  })
  void aSlipIsSaidAsWhatItIs(String field, String words) {
    ReadingsTable table =
        ReadingsCsv.read(("lash [mm]\n" + field + "\n").getBytes(UTF_8), DecimalMark.POINT);
    assertEquals(List.of("column 1, lash [mm], row 2: '" + field + "' " + words), table.problems());
  }
}
