package endfloat.engine;

import endfloat.working.LineProblem;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line that cannot be read. Where it starts like a definition, its name waits for repair. */
final class BrokenNode extends Node {
  private static final Pattern DEFINED =
      Pattern.compile(
          "\\s*([\\p{L}_][\\p{L}\\p{N}_]*)\\s*(?:\\[[^\\]]*\\]\\s*)?=(?!=).*", Pattern.DOTALL);

  private static final Pattern LIMIT = Pattern.compile("\\s*limit\\b.*", Pattern.DOTALL);

  private final Piece piece;
  private final String name;
  private final boolean limit;
  private final List<LineProblem> problems;

  BrokenNode(String clause, Piece piece, List<LineProblem> problems) {
    this(clause, piece, started(piece), LIMIT.matcher(piece.text()).matches(), problems);
  }

  /** A line whose name is known whatever it reads like. */
  BrokenNode(String clause, Piece piece, String name, List<LineProblem> problems) {
    this(clause, piece, name, false, problems);
  }

  private BrokenNode(
      String clause, Piece piece, String name, boolean limit, List<LineProblem> problems) {
    super(clause, piece.firstLine());
    this.piece = piece;
    this.name = name;
    this.limit = limit;
    this.problems = problems;
  }

  /**
   * The limits of a field that cannot be read.
   *
   * @param decides whether their verdict would count
   */
  static BrokenNode ofLimit(
      String clause, Piece piece, boolean decides, List<LineProblem> problems) {
    return new BrokenNode(clause, piece, "", decides, problems);
  }

  /** Whether it was meant as a limit that decides. */
  boolean isLimit() {
    return limit;
  }

  private static String started(Piece piece) {
    Matcher start = DEFINED.matcher(piece.text());
    return start.matches() ? start.group(1) : "";
  }

  Piece piece() {
    return piece;
  }

  /** All that is wrong with it. */
  List<LineProblem> problems() {
    return problems;
  }

  @Override
  String name() {
    return name;
  }

  @Override
  Set<String> namesRead() {
    return Set.of();
  }

  @Override
  void check(ValueGraph graph) {
    throw new LineFailure(problems.get(0));
  }

  @Override
  Value evaluate(Frame frame) {
    throw new LineFailure(problems.get(0));
  }
}
