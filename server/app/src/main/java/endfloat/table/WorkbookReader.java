package endfloat.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * A sheet of an Office Open XML workbook (ECMA-376) as a table. A workbook keeps numbers as
 * doubles: each comes in with the shortest decimal that is the same double. Of a formula its last
 * result counts.
 */
public final class WorkbookReader {
  private static final Pattern NO_FIELD = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*\\]|[\\\\_*].");

  private WorkbookReader() {}

  /** Whether these bytes are a workbook: a ZIP archive by its first bytes. */
  public static boolean isWorkbook(byte[] file) {
    return file.length > 4 && file[0] == 'P' && file[1] == 'K' && file[2] == 3 && file[3] == 4;
  }

  /**
   * Reads the sheet that is asked for, else the only one with anything in it. Where there are
   * several and none is named, nothing is read: a guess would take in the wrong one.
   */
  public static ReadTable read(byte[] file, TableAsked asked) {
    try (ReadableWorkbook workbook = open(file)) {
      List<Sheet> sheets = filled(workbook);
      List<String> names = sheets.stream().map(Sheet::getName).toList();
      if (asked.sheet().isPresent()) {
        int at = names.indexOf(asked.sheet().get());
        return at < 0
            ? refused(
                "there is no sheet " + asked.sheet().get() + " with anything in it" + has(names))
            : table(sheets.get(at), asked);
      }
      return switch (sheets.size()) {
        case 0 -> TableReader.of(new FieldGrid(""), asked, List.of());
        case 1 -> table(sheets.get(0), asked);
        default -> refused("several sheets have something in them, say which one" + has(names));
      };
    } catch (IOException | ExcelReaderException | IllegalArgumentException e) {
      return refused("the workbook cannot be read; save the sheet as CSV in UTF-8");
    }
  }

  /** Names of the sheets with anything in them; none where the workbook cannot be read. */
  public static List<String> sheets(byte[] file) {
    try (ReadableWorkbook workbook = open(file)) {
      return filled(workbook).stream().map(Sheet::getName).toList();
    } catch (IOException | ExcelReaderException | IllegalArgumentException e) {
      return List.of();
    }
  }

  private static ReadableWorkbook open(byte[] file) throws IOException {
    return new ReadableWorkbook(new ByteArrayInputStream(file), new ReadingOptions(true, false));
  }

  private static List<Sheet> filled(ReadableWorkbook workbook) throws IOException {
    List<Sheet> filled = new ArrayList<>();
    for (Sheet sheet : workbook.getSheets().toList()) {
      try (Stream<Row> rows = sheet.openStream()) {
        if (rows.anyMatch(WorkbookReader::isFilled)) {
          filled.add(sheet);
        }
      }
    }
    return filled;
  }

  private static boolean isFilled(Row row) {
    return row.stream().anyMatch(cell -> cell != null && !text(cell).isBlank());
  }

  private static String has(List<String> names) {
    return names.isEmpty() ? "" : ": " + String.join(", ", names);
  }

  private static ReadTable refused(String why) {
    return new ReadTable(List.of(), List.of(Offence.ofFile(why)), 0, List.of());
  }

  private static ReadTable table(Sheet sheet, TableAsked asked) throws IOException {
    return TableReader.of(grid(sheet), asked.with(DecimalMark.POINT), List.of());
  }

  private static FieldGrid grid(Sheet sheet) throws IOException {
    StringBuilder text = new StringBuilder();
    List<int[]> rows = new ArrayList<>();
    try (Stream<Row> all = sheet.openStream()) {
      all.forEach(row -> row(row, text, rows));
    }
    while (!rows.isEmpty() && isBlank(rows.get(rows.size() - 1))) {
      rows.remove(rows.size() - 1);
    }
    int widest = rows.stream().mapToInt(row -> row.length - 1).max().orElse(0);
    FieldGrid grid = new FieldGrid(text.toString());
    for (int[] row : rows) {
      // a workbook does not keep the empty end of a row
      for (int i = 0; i < widest; i++) {
        int from = row[Math.min(i, row.length - 1)];
        grid.field(from, i + 1 < row.length ? row[i + 1] : from);
      }
      grid.endRow();
    }
    return grid;
  }

  private static boolean isBlank(int[] row) {
    return row[0] == row[row.length - 1];
  }

  private static void row(Row row, StringBuilder text, List<int[]> rows) {
    // rows without a cell are not in the file
    while (rows.size() < row.getRowNum() - 1) {
      rows.add(new int[] {text.length(), text.length()});
    }
    int[] ends = new int[row.getCellCount() + 1];
    ends[0] = text.length();
    for (int i = 0; i < row.getCellCount(); i++) {
      Cell cell = row.getCell(i);
      text.append(cell == null ? "" : text(cell));
      ends[i + 1] = text.length();
    }
    rows.add(ends);
  }

  private static String text(Cell cell) {
    return switch (cell.getType()) {
      case NUMBER -> number(cell);
      case BOOLEAN -> Boolean.TRUE.equals(cell.asBoolean()) ? "yes" : "no";
      case FORMULA -> formula(cell);
      case EMPTY -> "";
      default -> cell.getText();
    };
  }

  private static String formula(Cell cell) {
    String raw = cell.getRawValue();
    return raw == null ? "" : plain(raw);
  }

  private static String number(Cell cell) {
    String format = cell.getDataFormatString();
    // colours, words and fillers of a format may have these letters too: [Red], "dd"
    boolean date =
        format != null
            && !format.contains("General")
            && NO_FIELD.matcher(format).replaceAll("").matches("(?i).*[yd].*");
    if (date) {
      var when = cell.asDate();
      return when.toLocalTime().equals(LocalTime.MIDNIGHT)
          ? when.toLocalDate().toString()
          : when.toString();
    }
    return plain(cell.getRawValue());
  }

  /** The shortest decimal of the double that is kept. */
  private static String plain(String raw) {
    try {
      String shortest = new BigDecimal(Double.toString(Double.parseDouble(raw))).toPlainString();
      return shortest.endsWith(".0") ? shortest.substring(0, shortest.length() - 2) : shortest;
    } catch (NumberFormatException e) {
      return raw;
    }
  }
}
