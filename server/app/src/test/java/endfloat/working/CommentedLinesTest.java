package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class CommentedLinesTest {
  private final KnownNames names = KnownNames.of("d = 80 mm");

  private List<Integer> lines(String text) {
    return CommentedLines.in(text, names).stream().map(p -> p.span().line()).toList();
  }

  @Test
  void aCommentThatIsALineOverKnownNamesIsWarnedOf() {
    assertEquals(List.of(2), lines("a = d\n-- b = 2 * d\n-- in all: d = what the drawing says"));
    assertEquals(List.of(1), lines("a = d -- limit d: 1 .. 2 mm"));
  }

  @Test
  void aRemarkIsLeftAlone() {
    assertEquals(List.of(), lines("a = d -- drawing, sheet 3\n-- bore = measured twice\n-- see d"));
  }
}
