package endfloat.table;

import endfloat.table.ReadTable.ReadColumn;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table out of a file or of what was pasted: the first row has heads with units, numbers are read
 * by {@link StrictNumber}, an empty field is a missing value. What is wrong is listed by row and
 * column, and then nothing of the file is used.
 */
public final class TableReader {
  /** A field longer than this is a quote that was never closed, or no value. */
  static final int LONGEST_FIELD = 2000;

  private static final FieldKind[] KINDS = FieldKind.values();

  static final int MOST_ROWS = 1_000_000;
  private static final int MOST_COLUMNS = 1000;

  /** From here on it is said what so many rows cost. */
  private static final int MANY_ROWS = 200_000;

  private static final int MOST_PROBLEMS = 200;

  /** Offending rows listed of one column. */
  private static final int MOST_OF_A_COLUMN = 20;

  private final TableAsked asked;
  private final List<Offence> problems = new ArrayList<>();
  private final List<String> notices = new ArrayList<>();
  private int more;

  private TableReader(TableAsked asked) {
    this.asked = asked;
  }

  /** Reads the bytes of a file of separated values. */
  public static ReadTable read(byte[] file, TableAsked asked) {
    TableReader reader = new TableReader(asked);
    TextOfFile text = TextOfFile.of(file, asked.encoding());
    text.problems().forEach(p -> reader.problem(Offence.ofFile(p)));
    reader.notices.addAll(text.notices());
    return reader.problems.isEmpty() ? reader.read(text.text()) : reader.done(List.of());
  }

  /** Reads what was pasted from elsewhere: tabs between the fields where there are any. */
  public static ReadTable paste(String text, TableAsked asked) {
    return new TableReader(asked).read(text);
  }

  /** Reads fields that were split already, the first row being the heads. */
  static ReadTable of(FieldGrid grid, TableAsked asked, List<String> notices) {
    TableReader reader = new TableReader(asked);
    reader.notices.addAll(notices);
    return reader.read(grid);
  }

  private ReadTable read(String text) {
    char separator = asked.separator().orElseGet(() -> SeparatedText.separator(text));
    SeparatedText.Split split = SeparatedText.split(text, separator);
    if (split.problem().isPresent()) {
      problem(split.problem().get());
      return done(List.of());
    }
    return read(split.grid());
  }

  private ReadTable read(FieldGrid grid) {
    if (grid.rows() == 0 || isBlank(grid, 0)) {
      problem(
          Offence.ofFile(
              grid.rows() == 0
                  ? "there is nothing in it"
                  : "there are no heads: the first row names the columns, such as lash [thou]"));
      return done(List.of());
    }
    if (grid.rows() - 1 > MOST_ROWS) {
      problem(
          Offence.ofFile(
              "it has " + (grid.rows() - 1) + " rows; a table takes " + MOST_ROWS + " at most"));
      return done(List.of());
    }
    List<TableHead> heads = heads(grid);
    int[] rows = rows(grid, heads.size());
    if (!problems.isEmpty()) {
      return done(List.of());
    }
    int[][] counts = counted(grid, rows, heads.size());
    List<ReadColumn> columns = new ArrayList<>();
    for (int column = 0; column < heads.size(); column++) {
      columns.add(column(grid, rows, column, heads.get(column), counts[column]));
    }
    if (rows.length > MANY_ROWS) {
      notices.add(
          rows.length
              + " rows: the record grows to some "
              + Math.max(1, grid.letters().length * 2L / 1_000_000)
              + " MB, and after a change of this table the sheet takes a few seconds");
    }
    return done(columns);
  }

  private static boolean isBlank(FieldGrid grid, int row) {
    for (int column = 0; column < grid.size(row); column++) {
      if (!grid.isEmpty(row, column)) {
        return false;
      }
    }
    return true;
  }

  private List<TableHead> heads(FieldGrid grid) {
    List<TableHead> heads = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    int count = grid.size(0);
    while (count > 0 && grid.getOrEmpty(0, count - 1).isEmpty()) {
      count--;
    }
    if (count > MOST_COLUMNS) {
      problem(Offence.ofRow(1, "there are " + count + " columns; a table takes " + MOST_COLUMNS));
      return heads;
    }
    for (int column = 0; column < count; column++) {
      TableHead head = TableHead.of(grid.getOrEmpty(0, column));
      int number = column + 1;
      head.problem().ifPresent(p -> problem(new Offence(1, number, head.written(), p)));
      Integer before = head.name().isEmpty() ? null : seen.putIfAbsent(head.name(), number);
      if (before != null) {
        problem(
            new Offence(
                1, number, head.written(), "column " + before + " has the same head; rename one"));
      }
      if (head.isRenamed() && head.problem().isEmpty()) {
        notices.add("column " + number + ", " + head.written() + ", is named " + head.name());
      }
      heads.add(head);
    }
    return heads;
  }

  /** Which rows of the grid are rows of the table; those that are not whole are problems. */
  private int[] rows(FieldGrid grid, int columns) {
    int[] rows = new int[grid.rows() - 1];
    int count = 0;
    int blank = 0;
    int ragged = 0;
    for (int row = 1; row < grid.rows(); row++) {
      int size = grid.size(row);
      while (size > columns && grid.isEmpty(row, size - 1)) {
        size--;
      }
      if (columns > 1 && grid.size(row) == 1 && isBlank(grid, row)) {
        blank++;
        continue;
      }
      if (size != columns && ++ragged <= MOST_OF_A_COLUMN) {
        problem(
            Offence.ofRow(
                row + 1,
                "it has "
                    + size
                    + (size == 1 ? " field" : " fields")
                    + " where there are "
                    + columns
                    + " heads"));
      }
      rows[count++] = row;
    }
    left(ragged, "rows have another number of fields than there are heads");
    if (blank > 0) {
      notices.add(blank + (blank == 1 ? " empty line" : " empty lines") + " left out");
    }
    return Arrays.copyOf(rows, count);
  }

  private void left(int count, String words) {
    if (count > MOST_OF_A_COLUMN) {
      more += count - MOST_OF_A_COLUMN;
      problems.add(Offence.ofFile(count + " " + words + "; the first are listed"));
    }
  }

  /** How many fields of each column look like which kind. */
  private int[][] counted(FieldGrid grid, int[] rows, int columns) {
    int[][] counts = new int[columns][KINDS.length];
    char[] letters = grid.letters();
    for (int row : rows) {
      for (int column = 0; column < columns; column++) {
        int from = grid.from(row, column);
        int to = grid.to(row, column);
        if (from < to) {
          counts[column][FieldKind.of(letters, from, to, asked.decimal()).ordinal()]++;
        }
      }
    }
    return counts;
  }

  private ReadColumn column(FieldGrid grid, int[] rows, int column, TableHead head, int[] counts) {
    FieldKind given = asked.kinds().get(head.written());
    FieldKind kind =
        given != null ? given : head.unit().isEmpty() ? mostly(counts) : FieldKind.NUMBER;
    if (kind != FieldKind.NUMBER && !head.unit().isEmpty()) {
      problem(
          new Offence(
              1,
              column + 1,
              head.written(),
              "a unit belongs to numbers, and this is a column of " + kind.word() + "s"));
    }
    int known = Arrays.stream(counts).sum();
    if (kind == FieldKind.TEXT || counts[kind.ordinal()] < known) {
      offences(grid, rows, column, head, kind, given != null || !head.unit().isEmpty());
    }
    return new ReadColumn(
        head.name(),
        head.written(),
        head.unit(),
        kind,
        rows.length - known,
        new ReadTable.Texts(grid, rows, column, kind == FieldKind.NUMBER, asked.decimal()));
  }

  private void offences(
      FieldGrid grid, int[] rows, int column, TableHead head, FieldKind kind, boolean sure) {
    int offending = 0;
    for (int row : rows) {
      int from = grid.from(row, column);
      int length = grid.to(row, column) - from;
      if (length > LONGEST_FIELD) {
        if (++offending <= MOST_OF_A_COLUMN) {
          problem(
              new Offence(
                  row + 1,
                  column + 1,
                  head.written(),
                  "the field has " + length + " letters; a value has " + LONGEST_FIELD));
        }
      } else if (length > 0
          && kind != FieldKind.TEXT
          && FieldKind.of(grid.letters(), from, from + length, asked.decimal()) != kind
          && ++offending <= MOST_OF_A_COLUMN) {
        problem(
            new Offence(
                row + 1, column + 1, head.written(), wrong(grid.get(row, column), kind, sure)));
      }
    }
    left(offending, "fields of column " + (column + 1) + ", " + head.written() + ", do not fit");
  }

  private String wrong(String text, FieldKind kind, boolean sure) {
    String why;
    if (kind == FieldKind.NUMBER) {
      try {
        StrictNumber.read(text, asked.decimal());
        why = "'" + text + "' is no number";
      } catch (StrictNumber.NotANumberException e) {
        why = e.getMessage();
      }
    } else {
      why = "'" + text + "' is not " + kind.words();
    }
    return sure
        ? why
        : why
            + "; most of this column are "
            + kind.word()
            + "s: correct it, or say that the column is text";
  }

  /** The kind that most fields of a column look like. */
  private static FieldKind mostly(int[] counts) {
    int known = Arrays.stream(counts).sum();
    for (FieldKind kind : KINDS) {
      if (2 * counts[kind.ordinal()] > known) {
        return kind;
      }
    }
    return FieldKind.TEXT;
  }

  private void problem(Offence offence) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(offence);
    } else {
      more++;
    }
  }

  private ReadTable done(List<ReadColumn> columns) {
    return new ReadTable(List.copyOf(columns), List.copyOf(problems), more, List.copyOf(notices));
  }

  /** The encoding of a name as a person gives it; empty for one that is not known. */
  public static Optional<Charset> encoding(String name) {
    return TextOfFile.encoding(name);
  }
}
