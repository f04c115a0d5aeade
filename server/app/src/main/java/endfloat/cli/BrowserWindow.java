package endfloat.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens a link in the browser of the machine; where there is none, the printed link has to do. */
final class BrowserWindow {
  private BrowserWindow() {}

  static void open(String link) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("mac")) {
      run("open", link);
    } else if (system.contains("win")) {
      run("rundll32", "url.dll,FileProtocolHandler", link);
    } else if (isSet("DISPLAY") || isSet("WAYLAND_DISPLAY")) {
      // Each asks the desktop for the browser its owner chose. java.awt.Desktop would load all of
      // AWT.
      for (String opener : List.of("xdg-open", "gio", "x-www-browser")) {
        if (opener.equals("gio") ? run(opener, "open", link) : run(opener, link)) {
          return;
        }
      }
    }
  }

  private static boolean isSet(String variable) {
    String value = System.getenv(variable);
    return value != null && !value.isEmpty();
  }

  private static boolean run(String... command) {
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
