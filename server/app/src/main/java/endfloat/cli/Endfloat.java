package endfloat.cli;

import endfloat.engine.ProgramRunner;
import endfloat.http.MachineState;
import endfloat.kernel.JavaOnDemand;
import endfloat.kernel.KernelLimits;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** {@code endfloat [command]}; without a command it serves the shelf. */
@Command(
    name = "endfloat",
    version = "Endfloat 0.1.0",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Readings of an engine, workings with units and uncertainty, verdicts against limits.",
      "Without a command: serves your records and opens the shelf in the browser."
    },
    footer = {
      "",
      "Exit code: 0 done, 1 a verdict is outside or figures disagree, 2 the input cannot be used."
    })
public final class Endfloat implements Callable<Integer> {
  private final Streams streams;
  @Mixin private ServeOptions options = new ServeOptions();

  private Endfloat(Streams streams) {
    this.streams = streams;
  }

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] arguments) {
    ProgramRunner.set(new JavaOnDemand(MachineState.ofUser().folder(), KernelLimits.USUAL, false));
    System.exit(run(Streams.ofProcess(), arguments));
  }

  /** Runs one command on these streams; never throws and prints no stack trace. */
  static int run(Streams streams, String... arguments) {
    OptionalInt plain = PlainCommand.run(streams, arguments);
    return plain.isPresent() ? plain.getAsInt() : parsed(streams, arguments);
  }

  /** The same by way of the command line library. */
  static int parsed(Streams streams, String... arguments) {
    CommandLine line = new CommandLine(new Endfloat(streams));
    line.addSubcommand(new Serve(streams));
    line.addSubcommand(new Work(streams));
    line.addSubcommand(new AgreeCommand(streams));
    line.addSubcommand(new RerunCommand(streams));
    line.addSubcommand(new TableCommand(streams));
    line.addSubcommand(new CompareCommand(streams));
    line.addSubcommand(new ReportCommand(streams));
    line.addSubcommand(new FormCommand(streams));
    line.addSubcommand(new CatalogueCommand(streams));
    line.addSubcommand(new KernelCommand());
    line.addSubcommand(new Prepare());
    line.setOut(new PrintWriter(streams.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(streams.err(), true, StandardCharsets.UTF_8));
    line.setParameterExceptionHandler((e, given) -> misused(e));
    line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, parsed, streams));
    int code = line.execute(arguments);
    streams.out().flush();
    return code;
  }

  @Override
  public Integer call() {
    return Serve.serve(options, streams);
  }

  private static int misused(ParameterException e) {
    CommandLine command = e.getCommandLine();
    command.getErr().println("endfloat: " + e.getMessage());
    command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help.");
    return Exit.BAD_INPUT;
  }

  private static int failed(Exception e, ParseResult parsed, Streams streams) {
    ParseResult command = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
    String name = command.commandSpec().name();
    return Failure.tell(e, name, command.hasMatchedOption("--json"), streams);
  }
}
