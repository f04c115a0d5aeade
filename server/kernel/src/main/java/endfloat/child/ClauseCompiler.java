package endfloat.child;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The JDK's compiler, in memory. The same text is compiled once. */
final class ClauseCompiler {
  private static final int KEPT = 32;

  private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
  private final StandardJavaFileManager files =
      compiler == null ? null : compiler.getStandardFileManager(null, Locale.ROOT, null);
  private final Map<String, Map<String, byte[]>> done =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Map<String, byte[]>> eldest) {
          return size() > KEPT;
        }
      };

  /** What the compiler found wrong, at lines and columns of the clause. */
  static final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    RefusedException(List<Problem> problems) {
      super(problems.get(0).message());
      this.problems = problems;
    }

    List<Problem> problems() {
      return problems;
    }
  }

  /** Class files by name. */
  Map<String, byte[]> compiled(String text) throws RefusedException {
    Map<String, byte[]> known = done.get(text);
    if (known != null) {
      return known;
    }
    if (compiler == null) {
      throw new RefusedException(
          List.of(new Problem(1, 1, 2, "This Java has no compiler.", "Install a JDK.")));
    }
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    Memory memory = new Memory(files);
    boolean compiled =
        compiler
            .getTask(
                null,
                memory,
                found,
                List.of("-proc:none", "-g:lines,vars,source", "-Xlint:none", "-implicit:none"),
                null,
                List.of(new Source(text)))
            .call();
    if (!compiled) {
      throw new RefusedException(problems(found, text));
    }
    done.put(text, memory.classes());
    return memory.classes();
  }

  private static List<Problem> problems(DiagnosticCollector<JavaFileObject> found, String text) {
    String[] lines = text.split("\n", -1);
    List<Problem> problems = new ArrayList<>();
    for (Diagnostic<? extends JavaFileObject> one : found.getDiagnostics()) {
      if (one.getKind() == Diagnostic.Kind.ERROR) {
        problems.add(CompilerWords.problem(one, lines));
      }
    }
    return problems.isEmpty()
        ? List.of(new Problem(1, 1, 2, "This cannot be compiled.", ""))
        : problems;
  }

  private static final class Source extends SimpleJavaFileObject {
    private final String text;

    Source(String text) {
      super(URI.create("string:///" + ClauseText.CLASS + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }

  private static final class Memory extends ForwardingJavaFileManager<JavaFileManager> {
    private final Map<String, ByteArrayOutputStream> written = new LinkedHashMap<>();

    Memory(JavaFileManager files) {
      super(files);
    }

    Map<String, byte[]> classes() {
      Map<String, byte[]> classes = new LinkedHashMap<>();
      written.forEach((name, bytes) -> classes.put(name, bytes.toByteArray()));
      return classes;
    }

    @Override
    public JavaFileObject getJavaFileForOutput(
        Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
      return new SimpleJavaFileObject(URI.create("mem:///" + name + kind.extension), kind) {
        @Override
        public OutputStream openOutputStream() {
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          written.put(name, bytes);
          return bytes;
        }
      };
    }
  }
}
