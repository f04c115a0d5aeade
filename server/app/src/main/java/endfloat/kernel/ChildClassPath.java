package endfloat.kernel;

import java.io.File;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a kernel has on its class path: the jars or folders of these classes and no others, so that
 * the source of a clause sees the calculation library and not the server.
 */
final class ChildClassPath {
  private static final List<String> MARKS =
      List.of(
          "endfloat/child/Child",
          "endfloat/catalogue/Catalogue",
          "endfloat/units/Unit",
          "javax/measure/Quantity",
          "io/github/spencerpark/jupyter/messages/Message",
          "com/google/gson/Gson",
          "org/zeromq/ZMQ",
          "com/neilalexander/jnacl/NaCl",
          "org/apache/commons/math3/util/FastMath",
          "tech/tablesaw/api/Table",
          "it/unimi/dsi/fastutil/ints/IntArrayList",
          "org/roaringbitmap/RoaringBitmap",
          "com/google/common/collect/ImmutableList",
          "com/univocity/parsers/csv/CsvParser",
          "io/github/classgraph/ClassGraph",
          "org/slf4j/Logger");

  private ChildClassPath() {}

  static String text() {
    Set<String> places = new LinkedHashSet<>();
    ClassLoader loader = ChildClassPath.class.getClassLoader();
    for (String mark : MARKS) {
      String name = mark + ".class";
      URL found = loader.getResource(name);
      if (found != null) {
        places.add(place(found, name));
      }
    }
    // Data lies beside classes where the build has not packed them yet.
    URL checks = loader.getResource("endfloat/units/units.txt");
    if (checks != null) {
      places.add(place(checks, "endfloat/units/units.txt"));
    }
    return String.join(File.pathSeparator, places);
  }

  private static String place(URL found, String name) {
    try {
      if (found.openConnection() instanceof JarURLConnection jar) {
        return Path.of(jar.getJarFileURL().toURI()).toString();
      }
      Path file = Path.of(new URI(found.toString()));
      for (int i = 0; i < name.split("/").length; i++) {
        file = file.getParent();
      }
      return file.toString();
    } catch (java.io.IOException | java.net.URISyntaxException e) {
      throw new IllegalStateException("cannot find where " + name + " lies", e);
    }
  }
}
