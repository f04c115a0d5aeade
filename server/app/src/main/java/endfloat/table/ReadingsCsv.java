package endfloat.table;

import endfloat.table.Column.Aspect;
import endfloat.table.Column.Field;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Readings as CSV. The first row has heads: {@code name [unit]}, with a station {@code
 * name[cylinder=3,plane=top] [mm]}, the part's temperature {@code name.at [degC]}, the instrument
 * {@code name.instrument}. Repeats run down; an empty field was not taken. Fields are parted by
 * commas, or by semicolons or tabs where the heads are; rows before the heads may be empty.
 */
public final class ReadingsCsv {
  private static final int MOST_ROWS = 100_000;
  private static final int MOST_PROBLEMS = 200;

  /** How a spreadsheet marks a number as text; the number stands in it unchanged. */
  private static final Pattern MARKED = Pattern.compile("=\"([^\"]*)\"|'(.*)");

  private static final Pattern FRACTION = Pattern.compile("[+-]?(\\d{1,4} )?\\d{1,4}/\\d{1,4}");

  private final DecimalMark decimal;
  private final List<String> problems = new ArrayList<>();
  private final List<Optional<Column>> columns = new ArrayList<>();

  private ReadingsCsv(DecimalMark decimal) {
    this.decimal = decimal;
  }

  /** Reads a file; what is wrong with it is listed in the table, all of it. */
  public static ReadingsTable read(byte[] file, DecimalMark decimal) {
    TextOfFile text = TextOfFile.of(file);
    ReadingsCsv csv = new ReadingsCsv(decimal);
    csv.problems.addAll(text.problems());
    if (csv.problems.isEmpty()) {
      csv.readAll(text.text());
    }
    List<Column> good = csv.columns.stream().flatMap(Optional::stream).toList();
    return new ReadingsTable(good, csv.firstProblems(), text.notices());
  }

  private List<String> firstProblems() {
    if (problems.size() <= MOST_PROBLEMS) {
      return List.copyOf(problems);
    }
    List<String> first = new ArrayList<>(problems.subList(0, MOST_PROBLEMS));
    first.add("and " + (problems.size() - MOST_PROBLEMS) + " more");
    return List.copyOf(first);
  }

  private void readAll(String text) {
    char parting = parting(text);
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(parting).setIgnoreEmptyLines(false).get();
    int row = 0;
    boolean headed = false;
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord record : parser) {
        row++;
        if (!headed) {
          headed = record.stream().anyMatch(field -> !field.isBlank());
          if (headed) {
            heads(record, parting);
          }
        } else if (row > MOST_ROWS) {
          problems.add("the file has more than " + MOST_ROWS + " rows");
          return;
        } else {
          fields(record, row);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      problems.add("row " + (row + 1) + ": a quote is opened and not closed, or stands in a word");
    }
    if (!headed && problems.isEmpty()) {
      problems.add("the file is empty");
    }
  }

  private static char parting(String text) {
    String heads = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    int depth = 0;
    boolean tab = false;
    for (char c : heads.toCharArray()) {
      depth += c == '[' ? 1 : c == ']' ? -1 : 0;
      if (c == ';' && depth <= 0) {
        return ';';
      }
      tab |= c == '\t';
    }
    return tab ? '\t' : ',';
  }

  private void heads(CSVRecord record, char parting) {
    Map<List<Object>, String> seen = new HashMap<>();
    for (String head : joined(record, parting)) {
      int number = columns.size() + 1;
      if (head.isBlank()) {
        columns.add(Optional.empty());
        continue;
      }
      try {
        Column column = Head.parse(number, head);
        String before =
            seen.put(List.of(column.name(), column.labels(), column.aspect()), column.place());
        if (before != null) {
          problems.add(column.place() + ": the same as " + before);
        }
        columns.add(Optional.of(column));
      } catch (Head.UnreadableException e) {
        problems.add("column " + number + ", " + head.strip() + ": " + e.getMessage());
        columns.add(Optional.empty());
      }
    }
    if (columns.stream().allMatch(Optional::isEmpty) && problems.isEmpty()) {
      problems.add("row 1: there are no heads; the first row names the readings");
    }
  }

  /** A station's labels have commas of their own, which part no columns. */
  private static List<String> joined(CSVRecord record, char parting) {
    List<String> heads = new ArrayList<>();
    String open = null;
    for (String field : record) {
      String head = open == null ? field : open + parting + field;
      boolean closed = head.lastIndexOf('[') <= head.lastIndexOf(']');
      open = closed ? null : head;
      if (closed) {
        heads.add(head);
      }
    }
    if (open != null) {
      heads.addAll(Arrays.asList(open.split(String.valueOf(parting), -1)));
    }
    return heads;
  }

  private static String unmarked(String text) {
    Matcher marked = MARKED.matcher(text);
    if (!marked.matches()) {
      return text;
    }
    return (marked.group(1) == null ? marked.group(2) : marked.group(1)).strip();
  }

  /** A fraction is one of an inch, and of nothing else. */
  private static boolean isOfInches(Column column, String text) {
    return column.aspect() == Aspect.VALUE
        && column.unit().equals("in")
        && FRACTION.matcher(text).matches();
  }

  private void fields(CSVRecord record, int row) {
    for (int i = 0; i < record.size(); i++) {
      String text = unmarked(record.get(i).strip());
      if (text.isEmpty()) {
        continue;
      }
      if (i >= columns.size() || columns.get(i).isEmpty()) {
        if (i >= columns.size() || problems.isEmpty()) {
          problems.add("row " + row + ", column " + (i + 1) + ": '" + text + "' has no head");
        }
        continue;
      }
      Column column = columns.get(i).orElseThrow();
      try {
        boolean asTyped = column.aspect() == Aspect.INSTRUMENT || isOfInches(column, text);
        column.fields().add(new Field(row, asTyped ? text : StrictNumber.read(text, decimal)));
      } catch (StrictNumber.NotANumberException e) {
        problems.add(column.place() + ", row " + row + ": " + e.getMessage());
      }
    }
  }
}
