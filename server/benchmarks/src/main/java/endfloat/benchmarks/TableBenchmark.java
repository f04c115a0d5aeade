package endfloat.benchmarks;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import endfloat.table.FieldKind;
import endfloat.table.ReadTable;
import endfloat.table.ReadTable.ReadColumn;
import endfloat.table.TableAsked;
import endfloat.table.TableReader;
import endfloat.table.TypedTable;
import endfloat.table.TypedTable.Key;
import endfloat.table.TypedTable.Typed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A file of 100,000 rows of 8 columns (four of numbers, two of texts, a date, a truth): read with
 * every rule kept and its numbers in arrays, beside a reader of CSV that makes strings and {@code
 * Double.parseDouble}; then put in order, chosen from, grouped.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
public class TableBenchmark {
  static final int ROWS = 100_000;
  private static final int[] NUMBERS = {0, 1, 2, 3};

  final byte[] file = file(ROWS);
  private final ReadTable read = TableReader.read(file, TableAsked.PLAIN);
  private final TypedTable table = typed(read);
  private final boolean[] passes = passes(read);

  /** Rows of a fleet as a shop would have them; the same at every run. */
  static byte[] file(int rows) {
    Random random = new Random(6);
    StringBuilder text =
        new StringBuilder("hours [h],lash [mm],t_oil [degC],load [%],engine,batch,fitted,failed\n");
    for (int row = 0; row < rows; row++) {
      text.append(random.nextInt(3000)).append('.').append(random.nextInt(10)).append(',');
      text.append(String.format(Locale.ROOT, "0.%03d", random.nextInt(400))).append(',');
      text.append(60 + random.nextInt(50)).append('.').append(random.nextInt(10)).append(',');
      text.append(random.nextInt(101)).append(',');
      text.append("W6-").append(100 + random.nextInt(900)).append(',');
      text.append('B').append(random.nextInt(40)).append(',');
      text.append(String.format(Locale.ROOT, "2026-%02d-%02d", 1 + row % 12, 1 + row % 28));
      text.append(',').append(random.nextInt(20) == 0 ? "yes" : "no").append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static TypedTable typed(ReadTable read) {
    List<Typed> columns = new ArrayList<>();
    for (ReadColumn column : read.columns()) {
      columns.add(
          column.kind() == FieldKind.NUMBER
              ? Typed.numbers(column.head(), column.numbers())
              : Typed.texts(column.head(), column.texts()));
    }
    return TypedTable.of(columns);
  }

  private static boolean[] passes(ReadTable read) {
    double[] lash = read.columns().get(1).numbers();
    boolean[] passes = new boolean[lash.length];
    for (int row = 0; row < lash.length; row++) {
      passes[row] = lash[row] > 0.2;
    }
    return passes;
  }

  /** The file with our rule: kinds found, every field checked, numbers as doubles. */
  @Benchmark
  public double readStrictly() {
    ReadTable now = TableReader.read(file, TableAsked.PLAIN);
    double sum = 0;
    for (int column : NUMBERS) {
      for (double number : now.columns().get(column).numbers()) {
        sum += number;
      }
    }
    return sum;
  }

  /** The same file by FastCSV: strings of all fields, numbers by parseDouble. */
  @Benchmark
  public double fastCsv() {
    return fastCsv(true);
  }

  /** Strings of all fields and no number. */
  @Benchmark
  public double fastCsvStringsOnly() {
    return fastCsv(false);
  }

  private double fastCsv(boolean numbers) {
    double sum = 0;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder().ofCsvRecord(new String(file, StandardCharsets.UTF_8))) {
      boolean heads = true;
      for (CsvRecord record : reader) {
        if (heads) {
          heads = false;
          continue;
        }
        for (int column = 0; column < record.getFieldCount(); column++) {
          String field = record.getField(column);
          sum += numbers && column < NUMBERS.length ? Double.parseDouble(field) : field.length();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sum;
  }

  /** The limit: every byte looked at once. */
  @Benchmark
  public int bytePass() {
    int fields = 0;
    for (byte one : file) {
      fields += one == ',' || one == '\n' ? 1 : 0;
    }
    return fields;
  }

  /** In order by a column of texts and, down, by one of numbers. */
  @Benchmark
  public int[] sort() {
    return table.sorted(List.of(Key.of("batch"), Key.of("lash down")));
  }

  /** Half of the rows, in order by a number. */
  @Benchmark
  public int[] filterAndSort() {
    return table.sorted(List.of(Key.of("hours")), passes);
  }

  /** Forty groups, each with mean, deviation, least and greatest. */
  @Benchmark
  public double group() {
    double sum = 0;
    for (TypedTable.Group group : table.groups(List.of("batch"))) {
      sum += table.summary("lash", group.rows()).orElseThrow().mean();
    }
    return sum;
  }

  /** Columns as they come from a record, put in: what comes before the first order. */
  @Benchmark
  public TypedTable putIn() {
    return typed(read);
  }
}
