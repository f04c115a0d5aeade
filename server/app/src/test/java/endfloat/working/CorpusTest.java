package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every line of corpus.txt is accepted or refused as it says there, with the words it says. */
class CorpusTest {
  private static final Corpus CORPUS = new Corpus();

  @TestFactory
  Stream<DynamicTest> linesAreAcceptedAndRefusedForTheReasonGiven() {
    return CORPUS.cases.stream().map(c -> DynamicTest.dynamicTest(c.toString(), () -> check(c)));
  }

  @Test
  void holdsAtLeastThreeHundredLines() {
    assertTrue(CORPUS.cases.size() >= 300);
    assertTrue(CORPUS.cases.stream().filter(c -> c.verdict().equals("no")).count() >= 150);
  }

  private static void check(Corpus.Case expected) {
    Working working = Parser.parse(expected.line());
    List<LineProblem> problems = new ArrayList<>(working.problems());
    Checked checked = null;
    if (problems.isEmpty()) {
      assertEquals(1, working.lines().size(), "one line is read as one line");
      checked = new KindChecker(KnownNames.LIBRARY).check(working.lines().get(0), CORPUS.names);
      problems.addAll(checked.problems());
    }
    boolean refused = problems.stream().anyMatch(p -> p.severity() == LineProblem.Severity.ERROR);
    switch (expected.verdict()) {
      case "no" -> {
        assertTrue(refused, "must be refused");
        said(problems, expected.expected());
        assertFalse(problems.get(0).wayOut().isEmpty(), "every refusal says what to do");
        assertTrue(problems.get(0).span().from() >= 1);
      }
      case "hint" -> {
        assertFalse(refused, problems.toString());
        said(problems, expected.expected());
      }
      default -> {
        assertEquals(List.of(), problems);
        kind(checked, expected.expected());
      }
    }
  }

  private static void said(List<LineProblem> problems, String parts) {
    String all = problems.get(0).message() + " " + problems.get(0).wayOut();
    for (String part : parts.split("&&", -1)) {
      assertTrue(all.contains(part.strip()), () -> "\"" + part.strip() + "\" is not in: " + all);
    }
  }

  private static void kind(Checked checked, String expected) {
    if (!expected.startsWith("= ")) {
      return;
    }
    Kind kind =
        checked instanceof Checked.Value value ? value.kind() : ((Checked.Solved) checked).kind();
    assertEquals(expected.substring(2), KindWords.words(kind));
  }
}
