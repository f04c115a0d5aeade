package endfloat.review;

import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.RecordGraph;
import endfloat.engine.Shown;
import endfloat.engine.Stages;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.record.AtStage;
import endfloat.record.InvestigationRecord;
import endfloat.record.TitleBlock;
import endfloat.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Two records side by side, or two states of one: readings, figures, verdicts, formulas and texts.
 *
 * <p>A difference is clear only where it is larger than its own expanded uncertainty. Errors that
 * both sides share cancel in it; {@link SharedRoots} says which those are.
 *
 * @param sameEngine whether both sides are states of one record
 * @param shared instruments whose errors both sides share
 * @param notShared instruments of one id that are another instrument or calibration, each with why
 * @param rows figures in the order of the left side, those of the right side alone after them
 * @param tables of both, row by row; their columns are not among the rows
 * @param formulas lines of workings that read otherwise, and those of one side only
 * @param texts of title block, settings, notes, readings and instruments that read otherwise
 */
public record Comparison(
    Side left,
    Side right,
    boolean sameEngine,
    List<String> shared,
    List<String> notShared,
    List<Row> rows,
    List<TableDifference> tables,
    List<Wording> formulas,
    List<Wording> texts) {

  /** One record, and what comes out of it at a stage. */
  public record Side(InvestigationRecord record, ValueGraph graph) {
    /**
     * @param stage as found, as left; empty for the one that the record is at
     * @throws StageNotReadException if nothing is read at it
     */
    static Side of(InvestigationRecord record, String stage) {
      Side side = new Side(record, RecordGraph.of(record).graph());
      if (stage.isBlank() || stage.equals(side.stage())) {
        return side;
      }
      Set<String> stages = side.stages();
      if (!stages.contains(stage)) {
        throw new StageNotReadException(stage, stages);
      }
      return new Side(record, RecordGraph.of(AtStage.of(record, stage)).graph());
    }

    /** The stage that it is compared at. */
    public String stage() {
      return settings().stage();
    }

    /** The stages at which anything is read. */
    public Set<String> stages() {
      return Stages.of(graph);
    }

    GraphSettings settings() {
      return graph.settings();
    }
  }

  /** How a difference stands. */
  public enum Standing {
    /** Larger than its own uncertainty; of texts, that they are not the same. */
    CLEAR("clear"),
    /** There, but no larger than its own uncertainty. */
    NOT_CLEAR("not clear"),
    NONE("none"),
    ONLY_LEFT("only left"),
    ONLY_RIGHT("only right"),
    /** Values of different kinds. */
    NOT_COMPARABLE("not comparable");

    private final String word;

    Standing(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * One value of a side.
   *
   * @param element of a series or a record of results; empty for a figure of its own
   * @param text as a sheet prints it
   */
  public record Point(Figure figure, Optional<Figure.Element> element, Value value, String text) {
    /** The expanded uncertainty [SI]. */
    public double expanded(GraphSettings settings) {
      return settings.expanded(
          element.map(Figure.Element::standardUncertainty).orElse(figure.standardUncertainty()),
          element.map(Figure.Element::degreesOfFreedom).orElse(figure.degreesOfFreedom()));
    }

    /** Verdicts on it. */
    public List<Judgement> judgements() {
      return element.map(Figure.Element::judgements).orElse(figure.judgements());
    }

    /** The worst verdict on it. */
    public Optional<Verdict> verdict() {
      return element.isPresent() ? element.get().verdict() : figure.verdict();
    }

    /** As a sheet shows it, where it is a number. */
    public Optional<Shown> shown(GraphSettings settings) {
      return element.isPresent()
          ? Shown.of(figure, element.get(), settings)
          : Shown.of(figure, settings);
    }

    /** Its unit on a sheet. */
    public Unit unit(GraphSettings settings) {
      return element.isPresent()
          ? FigureUnit.of(figure, element.get(), settings)
          : FigureUnit.of(figure, settings);
    }
  }

  /**
   * One value of both sides.
   *
   * @param name of the figure
   * @param label what it is called, with field or station
   * @param clause number of its clause on the side that has it, the left one first
   * @param reading whether it was read and not computed
   * @param difference right less left with its expanded uncertainty, where both are numbers
   */
  public record Row(
      String name,
      String label,
      String clause,
      boolean reading,
      Map<String, String> station,
      Optional<Point> left,
      Optional<Point> right,
      Optional<Shown> difference,
      Standing standing) {

    /** Whether the verdict is another one. */
    public boolean isJudgedOtherwise() {
      return !left.flatMap(Point::verdict).equals(right.flatMap(Point::verdict));
    }
  }

  /**
   * A text that reads otherwise.
   *
   * @param clause its number; empty for the head of the record
   * @param left empty where only the right side has it
   */
  public record Wording(String clause, String what, String left, String right) {}

  /** Works both records out and compares them. */
  public static Comparison of(InvestigationRecord left, InvestigationRecord right) {
    return of(left, "", right, "");
  }

  /**
   * Works both records out, each at a stage, and compares them.
   *
   * @param stageLeft as found, as left; empty for the one that the record is at
   * @throws StageNotReadException if nothing is read at one of the stages
   */
  public static Comparison of(
      InvestigationRecord left, String stageLeft, InvestigationRecord right, String stageRight) {
    Side one = Side.of(left, stageLeft);
    Side other = Side.of(right, stageRight);
    boolean sameEngine = isSameRecord(left.titleBlock(), right.titleBlock());
    SharedRoots roots = SharedRoots.of(one, other, sameEngine);
    ComparedFigures figures = ComparedFigures.of(one, other, roots);
    return new Comparison(
        one,
        other,
        sameEngine,
        roots.shared(),
        roots.notShared(),
        figures.rows(),
        ComparedTables.of(one, other, figures),
        ComparedTexts.formulas(one, other),
        ComparedTexts.texts(left, right));
  }

  /** States of one record bear its number and the serial number of its engine. */
  private static boolean isSameRecord(TitleBlock left, TitleBlock right) {
    return !left.recordNumber().isBlank()
        && left.recordNumber().equals(right.recordNumber())
        && left.engineSerial().equals(right.engineSerial());
  }

  /** How many values differ clearly. */
  public long clear() {
    return rows.stream().filter(row -> row.standing() == Standing.CLEAR).count()
        + tables.stream().mapToLong(TableDifference::clear).sum();
  }

  /** How many verdicts are others. */
  public long judgedOtherwise() {
    return rows.stream().filter(Row::isJudgedOtherwise).count()
        + tables.stream().mapToLong(TableDifference::judgedOtherwise).sum();
  }

  /** Whether nothing differs. */
  public boolean isEqual() {
    return formulas.isEmpty()
        && texts.isEmpty()
        && tables.stream().allMatch(TableDifference::isEqual)
        && rows.stream()
            .allMatch(row -> row.standing() == Standing.NONE && !row.isJudgedOtherwise());
  }
}
