package endfloat.cli;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Check;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import endfloat.http.view.CatalogueView;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code endfloat catalogue [NAME]}: the calculations, or one of them with all that is known of it.
 */
@Command(
    name = "catalogue",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Lists the calculations, or shows one: arguments, ranges, source, worked example.")
final class CatalogueCommand implements Callable<Integer> {
  private final Streams streams;
  private final Catalogue catalogue = Catalogue.library();

  @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "A calculation.")
  private String name;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CatalogueCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (name == null) {
      list();
    } else {
      show(calculation());
    }
    return Exit.DONE;
  }

  private Calculation calculation() {
    return catalogue
        .find(name)
        .orElseThrow(
            () -> {
              String near = String.join(", ", catalogue.nearest(name));
              return new BadInputException(
                  "There is no calculation " + name + ".",
                  near.isEmpty()
                      ? "See endfloat catalogue for all of them."
                      : "Nearest names: " + near + ".");
            });
  }

  private void list() {
    if (json) {
      Json.print(streams.out(), CatalogueView.list(catalogue));
      return;
    }
    TextTable table = new TextTable();
    catalogue.all().forEach(one -> table.row(one.name(), one.subject(), one.summary()));
    table.print(streams.out());
  }

  private void show(Calculation calculation) {
    if (json) {
      Json.print(streams.out(), CatalogueView.of(catalogue, calculation));
      return;
    }
    PrintStream out = streams.out();
    out.println(calculation.name() + ": " + calculation.summary());
    if (!calculation.description().isBlank()) {
      out.println();
      out.println(calculation.description().strip());
    }
    out.println();
    out.println("Arguments");
    TextTable arguments = new TextTable().indent("  ");
    calculation.parameters().forEach(one -> arguments.row(row(one)));
    arguments.print(out);
    out.println();
    out.println("Results");
    TextTable results = new TextTable().indent("  ");
    for (Result one : calculation.results()) {
      String label = one.name().isEmpty() ? "(the value)" : "." + one.name();
      results.row(label, inBrackets(one.unit()), one.description());
    }
    results.print(out);
    out.println();
    out.println("Source: " + calculation.source());
    calculation.cautions().forEach(caution -> out.println("Caution: " + caution));
    catalogue.checks(calculation.name()).stream().findFirst().ifPresent(this::example);
  }

  private static String[] row(Parameter parameter) {
    String needed = parameter.fallback().map(value -> "default " + value).orElse("");
    String range = parameter.range().map(valid -> valid.text()).orElse("");
    String choices = String.join(" | ", parameter.choices());
    return new String[] {
      parameter.name(),
      inBrackets(parameter.unit()),
      range + choices,
      needed,
      parameter.description()
    };
  }

  private static String inBrackets(String unit) {
    return unit.isEmpty() || unit.equals("1") ? "" : "[" + unit + "]";
  }

  private void example(Check check) {
    streams.out().println();
    streams.out().println("Worked example (" + check.source() + ")");
    check.lines().forEach(line -> streams.out().println("  " + line));
    for (Check.Expectation expectation : check.expectations()) {
      if (expectation instanceof Check.Numbers numbers) {
        String values = String.join(", ", numbers.values());
        streams.out().println("  gives " + numbers.place() + " = " + values + " " + numbers.unit());
      } else if (expectation instanceof Check.Words words) {
        streams.out().println("  gives " + words.place() + " = \"" + words.text() + "\"");
      }
    }
  }
}
