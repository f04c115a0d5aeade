package endfloat.http;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The names under which this server may be spoken to. A browser led here by a foreign name (DNS
 * rebinding) or by a foreign page sends that name in Host or Origin, and is refused.
 */
final class Hosts {
  static final List<String> LOOPBACK = List.of("127.0.0.1", "localhost", "[::1]");

  private final List<String> names;

  /**
   * @param names hosts without a port, or whole origins such as {@code https://bench.example:8443}
   *     where something stands in front of this server
   */
  Hosts(List<String> names) {
    this.names = List.copyOf(names);
  }

  /** Whether the Host header names this server; the port must be the one it listens on. */
  boolean allowsHost(String host, int port) {
    return host != null && hosts(port).contains(host.toLowerCase(Locale.ROOT));
  }

  /** Whether a page of this origin may speak to the server; a request without one may. */
  boolean allowsOrigin(String origin, int port) {
    return origin == null || origins(port).contains(origin.toLowerCase(Locale.ROOT));
  }

  private Set<String> hosts(int port) {
    Set<String> hosts = new LinkedHashSet<>();
    for (String name : names) {
      hosts.add(isOrigin(name) ? name.substring(name.indexOf("://") + 3) : name + ":" + port);
      if (port == 80 && !isOrigin(name)) {
        hosts.add(name);
      }
    }
    return hosts;
  }

  private Set<String> origins(int port) {
    Set<String> origins = new LinkedHashSet<>();
    for (String name : names) {
      origins.add(isOrigin(name) ? name : "http://" + name + ":" + port);
      if (port == 80 && !isOrigin(name)) {
        origins.add("http://" + name);
      }
    }
    return origins;
  }

  private static boolean isOrigin(String name) {
    return name.contains("://");
  }
}
