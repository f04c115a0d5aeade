package endfloat.processor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** One source run through the processor in memory: what it wrote, and what was refused where. */
record Compiled(
    String source,
    Map<String, String> written,
    List<Diagnostic<? extends JavaFileObject>> diagnostics) {

  /** The catalogue's model lies in a later artifact; its names are enough here. */
  private static final String MODEL =
      "package endfloat.catalogue; class Calculation {} class Part {}";

  private static final String TYPED =
      "package endfloat.catalogue; public class TypedCall { public interface Part {} }";

  static Compiled of(List<String> options, String source) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
    Map<String, ByteArrayOutputStream> written = new HashMap<>();
    List<String> all = new ArrayList<>(options);
    all.addAll(
        List.of("-proc:only", "--release", "17", "-cp", System.getProperty("java.class.path")));
    JavaFileManager files =
        new ForwardingJavaFileManager<>(
            compiler.getStandardFileManager(diagnostics, Locale.ROOT, StandardCharsets.UTF_8)) {
          @Override
          public JavaFileObject getJavaFileForOutput(
              Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
            return new Memory(name, kind, written);
          }
        };
    JavaCompiler.CompilationTask task =
        compiler.getTask(
            null,
            files,
            diagnostics,
            all,
            null,
            List.of(
                new Source("Gap", source),
                new Source("Calculation", MODEL),
                new Source("TypedCall", TYPED)));
    task.setProcessors(List.of(new CalculationProcessor()));
    task.call();
    Map<String, String> texts = new HashMap<>();
    written.forEach((name, bytes) -> texts.put(name, bytes.toString(StandardCharsets.UTF_8)));
    return new Compiled(source, texts, diagnostics.getDiagnostics());
  }

  List<String> errors() {
    return diagnostics.stream()
        .filter(d -> d.getKind() == Diagnostic.Kind.ERROR)
        .map(d -> d.getMessage(Locale.ROOT))
        .toList();
  }

  String generated(String type) {
    return written.get(type);
  }

  /** Demands an error with these words, placed at this name, and that nothing was generated. */
  void refusesAt(String name, String words) {
    assertTrue(
        diagnostics.stream()
            .anyMatch(
                d ->
                    d.getKind() == Diagnostic.Kind.ERROR
                        && d.getMessage(Locale.ROOT).contains(words)
                        && source.startsWith(name, (int) d.getPosition())),
        () -> "no error \"" + words + "\" at " + name + ", but " + errors());
    assertTrue(written.isEmpty(), () -> "written all the same: " + written.keySet());
  }

  private static final class Source extends SimpleJavaFileObject {
    private final String text;

    Source(String name, String text) {
      super(URI.create("string:///" + name + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }

  private static final class Memory extends SimpleJavaFileObject {
    private final String name;
    private final Map<String, ByteArrayOutputStream> written;

    Memory(String name, Kind kind, Map<String, ByteArrayOutputStream> written) {
      super(URI.create("memory:///" + name.replace('.', '/') + kind.extension), kind);
      this.name = name;
      this.written = written;
    }

    @Override
    public OutputStream openOutputStream() {
      return written.computeIfAbsent(name, n -> new ByteArrayOutputStream());
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return written.get(name).toString(StandardCharsets.UTF_8);
    }
  }
}
