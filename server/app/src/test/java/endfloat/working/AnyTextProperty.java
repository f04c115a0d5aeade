package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is typed is read or refused in words, never thrown at, and harms no line beside it. */
class AnyTextProperty {
  private static final Corpus CORPUS = new Corpus();
  private static final KindChecker CHECKER = new KindChecker(KnownNames.LIBRARY);

  @Property(tries = 5000)
  void anyTextIsReadOrRefused(@ForAll("texts") String text) {
    held(text);
  }

  @Property(tries = 5000)
  void anyLineWithAPieceTakenOutOrPutInIsReadOrRefused(
      @ForAll("lines") String line,
      @ForAll("pieces") String piece,
      @ForAll double a,
      @ForAll double b) {
    int from = (int) (Math.abs(a % 1) * line.length());
    int to = Math.min(line.length(), from + (int) (Math.abs(b % 1) * 4));
    held(line.substring(0, from) + piece + line.substring(to));
  }

  @Property(tries = 2000)
  void aLineInErrorLeavesTheLinesAroundItAlone(@ForAll("texts") String text) {
    String line = text.replace('\n', ' ');
    Working working = Parser.parse("before = 1 mm\n" + line + "\nafter [mm] = 2 mm");
    List<String> names =
        working.lines().stream()
            .filter(Line.Definition.class::isInstance)
            .map(l -> ((Line.Definition) l).name())
            .toList();
    assertTrue(
        names.contains("before") && names.contains("after"),
        () -> line.codePoints().mapToObj(Integer::toHexString).toList().toString());
  }

  @Property(tries = 3000)
  void aWorkingReadPieceByPieceIsTheWorkingReadWhole(@ForAll("workings") String text) {
    List<String> whole = Parser.parse(text).lines().stream().map(Written::line).toList();
    List<String> pieces =
        Piece.of(text).stream()
            .flatMap(p -> Parser.parse(text.substring(p.from(), p.to())).lines().stream())
            .map(Written::line)
            .toList();
    assertEquals(whole, pieces, text);
    int lines = 0;
    for (Piece piece : Piece.of(text)) {
      assertEquals(lines, piece.firstLine());
      lines += text.substring(piece.from(), piece.to()).split("\n", -1).length;
    }
    assertEquals(text.split("\n", -1).length, lines);
  }

  @Provide
  Arbitrary<String> workings() {
    return Arbitraries.oneOf(
            lines(), texts(), Arbitraries.of("a = max(", "b = (1 +", "c = 5 mm)", "\n"))
        .list()
        .ofMaxSize(8)
        .map(l -> String.join("\n", l));
  }

  private static void held(String text) {
    Working working = Parser.parse(text);
    int lines = text.split("\n", -1).length;
    for (LineProblem problem : working.problems()) {
      assertFalse(problem.message().isEmpty());
      assertFalse(problem.wayOut().isEmpty(), problem.message());
      assertTrue(problem.span().line() >= 1 && problem.span().line() <= lines);
      assertTrue(problem.span().from() >= 1 && problem.span().to() > problem.span().from());
    }
    for (Line line : working.lines()) {
      Checked checked = CHECKER.check(line, CORPUS.names);
      assertEquals(
          checked instanceof Checked.Refused,
          checked.problems().stream().anyMatch(p -> p.severity() == LineProblem.Severity.ERROR));
      assertEquals(List.of(), Parser.parse(Written.line(line)).problems(), Written.line(line));
    }
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMaxLength(30),
        pieces().list().ofMaxSize(14).map(l -> String.join("", l)),
        pieces().list().ofMaxSize(14).map(l -> String.join(" ", l)));
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(
        "a",
        "d",
        "bore",
        "fit",
        "=",
        "+",
        "-",
        "*",
        "/",
        "^",
        "±",
        "(",
        ")",
        "[",
        "]",
        ",",
        ":",
        ".",
        "..",
        "<",
        ">=",
        "!=",
        "0",
        "5",
        "0.10",
        "3/8",
        "1 15/16",
        "1e-6",
        "mm",
        "in",
        "degC",
        "1/K",
        "N.m",
        "rpm",
        "%",
        "°",
        "\"H7\"",
        "\"",
        "--",
        " -- x",
        "\n",
        "if",
        "then",
        "else",
        "and",
        "not",
        "limit ",
        "solve",
        "for",
        "between",
        "at",
        "least",
        "correlate",
        "sin(",
        "max(",
        "pick(",
        "normal(",
        "thermal_growth(",
        "over:",
        "k",
        "dof",
        "(k = 2)",
        "[mm]",
        "pi",
        "e",
        "\t",
        "\r\n",
        "\u00a0",
        "µ",
        "²",
        "🙂",
        "\u0000",
        "\ud83d");
  }

  @Provide
  Arbitrary<String> lines() {
    return Arbitraries.of(CORPUS.cases.stream().map(Corpus.Case::line).toList());
  }
}
